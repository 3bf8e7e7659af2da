"""What a page has so that it can be read from a photo: marks in its corners, and whose page it is."""

from onewhole.languages.table import spoken_by
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.problems.numbers import numbers_of
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.header import CornerMarks
from onewhole.sheets.open_marks import squares
from onewhole.sheets.page_marks import MOST_MARKED, PageMarks, corner_marks, page_key
from onewhole.sheets.pupil_marks import pupil_marks
from onewhole.sheets.room import over_a_line
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.printed import Json

#: So many boxes for a code that is written by hand: a letter and two digits.
LETTERS = 3


def marked(worked: WorkedSheet) -> Json:
    """Return what a sheet's page has more where it has marks in its corners; nothing where it has none.

    The marks are given for as many pages as they can tell apart, four a page.
    """
    if worked.header.marks is CornerMarks.NONE:
        return {}
    key = page_key(worked.sheet)
    pages = [corner_marks(PageMarks(key, page)) for page in range(1, MOST_MARKED + 1)]
    page = spoken_by(worked.header.words).page
    return {
        "marks": [[squares(mark) for mark in corners] for corners in pages],
        "letters": LETTERS,
        "code": page.code,
        "footer": page.cross_out,
    }


def of_pupil(code: str) -> Json:
    """Return what one pupil's copy of a page has: the code, in words and as two small marks.

    >>> of_pupil("K03")["code"]
    'K03'
    """
    return {"code": code, "marks": [squares(mark) for mark in pupil_marks(code)]}


def read_at(problem: WorkedProblem, marks: CornerMarks) -> Json:
    """Return how the place of an answer is read from a photo: its label, windows, the unit beside it.

    There are windows for a problem with fractions alone, whatever its answer. A unit is printed where there
    is one and no other in problem and answer.
    """
    if marks is CornerMarks.NONE:
        return {}
    found: Json = {"reads": problem.label}
    if not over_a_line(problem.problem, marks):
        return found
    right = problem.answer
    if not isinstance(right, Quantity):
        return found
    ladders = [number.ladder for number in (*numbers_of(problem.statement), right)]
    if marks is CornerMarks.WINDOWS and any(ladder.style is Style.MIXED for ladder in ladders):
        found["windows"] = True
    units = {unit.mark for ladder in ladders for unit in ladder.units}
    return found | ({"unit": units.pop()} if len(units) == 1 else {})
