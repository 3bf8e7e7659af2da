"""What the invented kite club wrote on the demo's pages, one CSV a night: `python -m tools.kite_club`.

The pages are the typed sheets in `src/onewhole/desk/classes/kite_club`; a night's answers stand beside its
page. Some pupils hold a steady idea that fades over the weeks; the others slip now and then. Run it after a
change of a page, of an error pattern or of the lab.
"""

import csv
from dataclasses import dataclass
from io import StringIO
from pathlib import Path
from random import Random

from lab.pupils import Kind, Pupil
from lab.steps import page_of
from onewhole.desk.page.sheets import sheet_in
from onewhole.sheets.document import Sheet

HERE = Path(__file__).parents[1] / "src" / "onewhole" / "desk" / "classes" / "kite_club"
#: Nights that the club has handed in; the page after them went home tonight.
MARKED = 9
PUPILS = 24
UNREAD = 0.01


@dataclass(frozen=True, slots=True)
class Idea:
    """A steady idea: which patterns, and the nights on which it begins to fade and is gone."""

    patterns: tuple[str, ...]
    fades: int
    gone: int

    def back(self, night: int) -> float:
        """Return how often the pupil works rightly on that night although the idea could act."""
        done = (night - self.fades) / max(1, self.gone - self.fades)
        return min(0.97, max(0.04, done))


#: The last night shows ideas that stay (gone far away), some that are halfway, some long gone.
IDEAS = {
    1: Idea(("A01", "P01"), 8, 15),
    2: Idea(("A04",), 7, 12),
    4: Idea(("A01",), 5, 8),
    6: Idea(("A02",), 9, 16),
    7: Idea(("A06",), 6, 9),
    9: Idea(("A01",), 9, 20),
    11: Idea(("A04",), 9, 14),
    13: Idea(("A02",), 5, 9),
    15: Idea(("A01",), 6, 11),
    17: Idea(("P05",), 1, 4),
    18: Idea(("A04",), 4, 8),
    20: Idea(("P05",), 2, 5),
    22: Idea(("A20", "A01"), 9, 18),
    23: Idea(("A19", "P01"), 3, 7),
}
#: Pupils who try something else on every problem, less so each week; and one who slips often.
SCATTERED, SHAKY = (5, 16), (10,)
#: Pupils away on a night.
ABSENT = {(9, 19), (6, 3), (4, 12), (2, 24)}


def answers(sheet: Sheet, night: int) -> str:
    """Return what the club wrote on the page of a night, as CSV text: the same each time."""
    made = StringIO()
    rows = csv.writer(made, lineterminator="\n")
    rows.writerow(("pupil", *(problem.label for problem in sheet.problems)))
    for number in range(1, PUPILS + 1):
        rows.writerow((f"K{number:02}", *_row(sheet, night, number)))
    return made.getvalue()


def _row(sheet: Sheet, night: int, number: int) -> tuple[str, ...]:
    chance = Random(f"unread {night} {number}")  # noqa: S311 - invented, the same each time
    if (night, number) in ABSENT:
        return ("",) * len(sheet.problems)
    cells = page_of(_pupil(number, night), sheet.problems, f"kite club {night}")
    return tuple(chance.choice(("smudge", "-", "?")) if chance.random() < UNREAD else cell for cell in cells)


def _pupil(number: int, night: int) -> Pupil:
    code = f"K{number:02}"
    if idea := IDEAS.get(number):
        back = idea.back(night)
        return Pupil(code, Kind.STEADY, idea.patterns, back=back, slip=0.01, blank=0.01, other_form=0.05)
    if number in SCATTERED:
        return Pupil(code, Kind.SCATTERED, slip=0.03, once=max(0.1, 0.6 - night * 0.05), air=0.3, blank=0.06)
    slip = 0.08 if number in SHAKY else 0.02 - night * 0.001
    return Pupil(code, Kind.SOUND, slip=slip, blank=0.015, other_form=0.06)


def main() -> None:
    """Write the files."""
    for night in range(1, MARKED + 1):
        text = answers(sheet_in(HERE / f"night{night:02}.txt"), night)
        (HERE / f"night{night:02}.csv").write_text(text, encoding="utf-8", newline="")


if __name__ == "__main__":
    main()
