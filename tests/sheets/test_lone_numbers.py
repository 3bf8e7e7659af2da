"""A number that stands alone: worked where one other name is meant, refused with its place elsewhere."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from onewhole.desk.marking.mark import mark
from onewhole.desk.page.print_pages import print_pages
from onewhole.desk.walkthrough.film import FilmWishes, told
from onewhole.marking.reading.mark import Verdict
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.sheets.document import SheetError
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.cue import Role
from onewhole.writers.key_page import key_page
from onewhole.writers.workings_page import workings_page
from tests.kit.sheets import worked_sheet

SIMPLEST, MIXED, BOTH = "simplest form: yes", "mixed form: yes", "simplest form: yes\nmixed form: yes"
#: What is typed, the settings, and the lines of its working; each worked out by hand.
WORKED = [
    ("6/8", "grade: 4", ["6/8", "3/4"]),
    ("12/18 = ?", "grade: 4", ["12/18", "2/3"]),
    ("12/18 = ?", BOTH, ["12/18", "2/3"]),
    ("2 6/8", MIXED, ["2 6/8", "2 3/4"]),
    ("11/4", "grade: 4", ["11/4", "2 3/4"]),
    ("8/4 = ?", "grade: 4", ["8/4", "2"]),
    ("14/8", "grade: 4", ["14/8", "1 6/8"]),
    ("14/8", SIMPLEST, ["14/8", "1 6/8", "1 3/4"]),
    ("1 5/4 = ?", "grade: 4", ["1 5/4", "2 1/4"]),
    ("1 1/2 = ?", "grade: 4", ["1 1/2", "3/2"]),
    ("0.75 = ?", "grade: 4", ["0.75", "75/100"]),
    ("0.75 = ?", SIMPLEST, ["0.75", "75/100", "3/4"]),
    ("3.50", "grade: 4", ["3.50", "3 50/100"]),
    ("26 in = ?", "grade: 4", ["26 in", "2 ft 2 in"]),
    ("2 ft = ?", "grade: 4", ["2 ft", "24 in"]),
    ("2 ft 2 in", "grade: 4", ["2 ft 2 in", "26 in"]),
    ("90 min = ?", BOTH, ["90 min", "1 h 30 min"]),
]


def _sheet(typed: str, setting: str) -> str:
    return f"{setting}\n\n1. {typed}\n2. 7 2/6 - 3 5/6\n"


@pytest.mark.parametrize(
    ("typed", "setting"),
    [
        *((typed, "grade: 4") for typed in ("5", "52 = ?", "3/4", "5 in = ?", "0", "1.0 = ?")),
        ("1 1/2 = ?", MIXED),
        ("3/4", SIMPLEST),
    ],
)
def test_refused_where_nothing_is_asked(typed: str, setting: str) -> None:
    """No one name is meant, or the page asks for the name that is given: told with its place and a remedy."""
    with pytest.raises(SheetError, match="this number stands alone") as caught:
        read_sheet(_sheet(typed, setting))
    (mistake,) = caught.value.mistakes
    assert (mistake.line, mistake.column) == (3, 4)
    assert "3/4 = ?/8" in str(mistake.remedy)


def test_a_unit_that_is_not_known_is_told_by_its_place() -> None:
    """A furlong is no unit here; the other problems of the sheet are read."""
    with pytest.raises(SheetError) as caught:
        read_sheet(_sheet("100 furlongs", "grade: 4"))
    (mistake,) = caught.value.mistakes
    assert (mistake.line, mistake.column) == (3, 8)


@pytest.mark.parametrize(("typed", "setting", "lines"), WORKED)
def test_key_working_film_and_marking_say_the_same(typed: str, setting: str, lines: list[str]) -> None:
    """Line by line to the other name; the number as it was given is sent back."""
    worked = worked_sheet(_sheet(typed, setting))
    one = worked.problems[0]
    assert one.working is not None
    assert [text(line.says) for line in one.working.brief()] == lines
    assert isinstance(one.answer, Quantity)
    assert one.working.answer == one.answer
    given, right = lines[0], lines[-1]
    assert text(one.answer) == right
    assert given not in [text(form) for form in one.forms]
    marks = mark(_sheet(typed, setting), f"pupil,1,2\nK01,{right},3 1/2\nK02,{given},3 1/2").marks
    verdicts = [pupil.marks[0].verdict for pupil in marks.pupils]
    assert verdicts == [Verdict.RIGHT, Verdict.FORM]
    assert right in [text(form) for form in marks.pupils[1].marks[0].renamed]
    script, _ = told(worked, FilmWishes())
    said = {cue.role: text_of(cue.says) for cue in script.chapters[1].cues}
    assert said[Role.ANSWER].endswith(f"So {given} = {right}.")
    assert f"is {given}" not in said.get(Role.FORMS, "")


def test_its_pages_print(tmp_path: Path) -> None:
    """Every page of a sheet with lone numbers of every sort is set, and the workings say what is done."""
    problems = "\n".join(f"{at}. {typed}" for at, (typed, _, _) in enumerate(WORKED, start=1))
    worked = WorkedSheet(read_sheet(problems))
    made = print_pages(worked.sheet, tmp_path, when=datetime(2026, 3, 5, tzinfo=UTC))
    assert {one.path.suffix for one in made} == {".pdf"}
    names = {problem["strategy"] for problem in workings_page(worked).data["problems"]}  # type: ignore[attr-defined]
    assert names == {"Write it another way"}
    assert len(key_page(worked).data["answers"]) == len(WORKED)  # type: ignore[arg-type]


def test_a_price_to_be_rounded_needs_no_label() -> None:
    """The first word says what to do with a number, and a price is one."""
    typed = "title: Prices\n\nround 3.46 to the nearest tenth\nround $3.46 to the nearest dollar\n"
    assert [problem.label for problem in read_sheet(typed).problems] == ["1", "2"]
