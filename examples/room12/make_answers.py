"""Makes ``answers.csv``: what an invented class of 24 wrote on ``sheet.txt``.

The class is invented and the answers are written by the project's own error patterns, with slips, blanks and
cells that cannot be read, from a fixed seed. Run it in this folder after changing the sheet:

    python make_answers.py
"""

import csv
import random
from io import StringIO
from pathlib import Path

from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.sheets.reading import read_sheet
from onewhole.statements.statement import Statement
from onewhole.working.working import equal_forms

HERE = Path(__file__).parent
SEED = 12
PUPILS = 24
#: Steady ideas of some pupils; the others have none. "" works all right, with a slip now and then.
IDEAS = {
    1: "A01", 4: "A01", 9: "A01", 15: "A01",
    2: "A04", 11: "A04", 18: "A04",
    6: "A02", 13: "A02",
    7: "A06", 17: "A12", 23: "A19",
}  # fmt: skip
RANDOM = (5, 16)
ABSENT = 19
SLIP, BACK, BLANK, FORM = 0.05, 0.08, 0.03, 0.12


def answers(sheet: str) -> str:
    """Return what the class wrote on a typed sheet, as CSV text: the same for the same sheet, each time."""
    chance = random.Random(SEED)
    problems = read_sheet(sheet).problems
    made = StringIO()
    rows = csv.writer(made, lineterminator="\n")
    rows.writerow(["pupil", *(problem.label for problem in problems)])
    for number in range(1, PUPILS + 1):
        cells = [_cell(number, problem.statement, chance) for problem in problems]
        rows.writerow([f"K{number:02}", *cells])
    return made.getvalue()


def _cell(number: int, statement: Statement, chance: random.Random) -> str:
    if number == ABSENT:
        return ""
    luck = chance.random()
    if luck < BLANK:
        return chance.choice(["", "-", "smudge"])
    right = answer(statement)
    assert isinstance(right, Quantity)
    if luck < BLANK + SLIP:
        return _slipped(statement, right)
    idea = (
        chance.choice(["A01", "A07", "A13", "A15", "A17", "A24"])
        if number in RANDOM
        else IDEAS.get(number, "")
    )
    back = chance.random() < BACK
    slip = by_id(idea).slip(statement) if idea and not back else None
    if slip:
        return text(slip.wrote)
    forms = equal_forms(right)
    return text(chance.choice(forms)) if forms and chance.random() < FORM else text(right)


def _slipped(statement: Statement, right: Quantity) -> str:
    slip = by_id("A32").slip(statement)
    return text(slip.wrote) if slip else text(right)


if __name__ == "__main__":
    typed = (HERE / "sheet.txt").read_text(encoding="utf-8")
    (HERE / "answers.csv").write_text(answers(typed), encoding="utf-8", newline="")
