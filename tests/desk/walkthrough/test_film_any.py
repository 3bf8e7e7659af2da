"""Any problem of grade 4 has a film, and one that has none stops no other."""

from collections.abc import Iterator

import pytest

from onewhole.desk.walkthrough.board import board
from onewhole.desk.walkthrough.film import FilmWishes, told, unfilmed
from onewhole.desk.walkthrough.film_plan import FilmPlan
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.cue import Write
from onewhole.walkthroughs.layout import BoardError
from onewhole.walkthroughs.on_board import on_board
from onewhole.walkthroughs.shape import Shape
from tests.kit.saying import written


def wide_problems() -> Iterator[str]:
    """Yield sums and differences as large as grade 4 has them: 1,000,000, hundredths, measures, mixed."""
    for first, second in (
        ("4006", "1278"),
        ("1204", "387"),
        ("8000", "2345"),
        ("2876", "1234"),
        ("70003", "28456"),
        ("999999", "888888"),
        ("1000000", "345678"),
        ("12.05", "3.8"),
        ("900.01", "89.99"),
        ("1000.5", "777.77"),
        ("845 3/100", "279 98/100"),
        ("912 1/12", "348 11/12"),
        ("300 1/8", "123 5/6"),
        ("100 yd 0 ft 1 in", "39 yd 2 ft 11 in"),
        ("12 h 5 min", "7 h 48 min"),
        ("215 ft 2 in", "98 ft 11 in"),
    ):
        yield f"{first} - {second}"
        yield f"{first} + {second}"
        yield f"{second} + ? = {first}"
        yield f"{first} ? {second}"
    for large in (100, 1001, 30030, 499_999, 600_006, 1_000_000):
        for less in (99, 607, 8_765, 49_999, 98_989):
            if less < large:
                yield f"{large} - {less}"
                yield f"{large} + {less} + {less}"


@pytest.mark.parametrize("asked", list(wide_problems()))
def test_no_working_is_too_long_for_the_board(asked: str) -> None:
    """Every line of every working has its place in both shapes, with a picture beside it or not."""
    script, timeline = told(WorkedSheet(read_sheet(f"1. {asked}")), FilmWishes(mistake=True))
    assert [chapter.label for chapter in script.chapters] == ["", "1", ""]
    for shape in Shape:
        boards = on_board(timeline, shape)
        writes = [act for chapter in boards.chapters for cue in chapter.cues for act in cue.cue.acts]
        assert all(act.place for act in writes if isinstance(act, Write))


LONG = " + ".join(["1 3/4"] * 60)


@pytest.mark.more("desk/walkthrough/test_film.py")
def test_one_problem_that_cannot_be_filmed_stops_no_other() -> None:
    """It is told by its label; the film speaks of the others alone, in the command and in the browser."""
    sheet = read_sheet(f"1. 7 2/6 - 3 5/6\n2. {LONG}\n3. 52 - 27")
    _, timeline = told(WorkedSheet(sheet), FilmWishes())
    assert [chapter.label for chapter in timeline.chapters] == ["", "1", "3", ""]
    assert "There are 2 problems tonight." in written(timeline.chapters[0].cues[0].cue.says)
    (note,) = unfilmed(sheet, timeline)
    assert note == (
        "Problem 2 is not filmed: a line of it is too long for the board. "
        "Take smaller numbers or fewer steps for it."
    )
    assert note in board(sheet, FilmPlan()).notes


def test_a_page_of_nothing_else_is_refused() -> None:
    """Where no problem is left, the refusal names the problem."""
    with pytest.raises(BoardError, match=r"problem 2"):
        told(WorkedSheet(read_sheet(f"2. {LONG}")), FilmWishes())
