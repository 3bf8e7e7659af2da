"""The room on the pupil page is measured from the working."""

import re
from fractions import Fraction
from pathlib import Path

import pytest

from lab.spaces import additions, subtractions
from onewhole.findings.in_page import HigherThanPage, Severity, severity
from onewhole.languages.english.in_page import found_in_page, page_mended
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.problems.taught import as_taught
from onewhole.sheets.audit import audit
from onewhole.sheets.header import Header, Paper, Print
from onewhole.sheets.reading import MOST_PROBLEMS, read_sheet
from onewhole.sheets.room import (
    FRAME_MM,
    ROW_OF_NUMBERS_MM,
    SCALE,
    RoomError,
    column_width,
    page_height,
    page_width,
)
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import AnotherName, Comparison, MissingNumber, Ordering, Question
from onewhole.working.strategies.table import STRATEGIES
from tests.kit.sheets import room_of, worked_sheet

LOOK = Path(__file__).parents[2] / "src" / "onewhole" / "writers" / "look" / "ink.typ"
PROBLEMS = (
    "7 2/6 - 3 5/6", "9 7/12 - 4 9/12", "4 - 1 4/3", "3 3/8 - 2 5/6", "2 4/5 + 1 3/5", "12 3/100 - 9 99/100",
    "4 1/4 + 3 1/4 - 2 3/4", "52 - 27", "304 - 128", "5.2 - 2.75", "5 ft 2 in - 2 ft 7 in", "5/6 ? 7/8",
    "7 2/6 = 6 ?/6", "9 - ? = 3 1/2", "2/3 - 2/3", "3 x 2/5",
    "12/18 simplest", "11/4 as a mixed number", "100 in = ? yd ? ft ? in", "3 ft = ? in",
)  # fmt: skip


def second_road(line: str) -> tuple[int, int]:
    """Measure a line from its plain text alone: millimetres wide, lines high."""
    stacked = re.compile(r"\(?(?:(\d+|\?)|\(([^()]*)\))/(\d+|\?)")
    width, high = 0, 1
    for match in stacked.finditer(line):
        top = match[1] or match[2]
        width += max(_wide(top), _wide(match[3])) + 2
        high = 2
    return width + _wide(stacked.sub("", line)), high


def _wide(plain: str) -> int:
    widths = {" ": 3, ".": 3, "?": 8, "(": 4, ")": 4}
    return sum(6 if sign in "0123456789+-x=<>" else widths.get(sign, 5) for sign in plain)


@pytest.mark.parametrize("strategy", STRATEGIES, ids=lambda strategy: str(strategy.key))
@pytest.mark.parametrize("size", list(Print), ids=str)
def test_every_working_fits_the_box_left_for_it(strategy: object, size: Print) -> None:
    """Line under line, each as wide and high as its plain text says, by every strategy, in both prints."""
    key = str(getattr(strategy, "key", "")).replace("_", " ")
    head = f"strategy: {key}\nprint: {size.value}\n\n"
    typed = "\n".join(f"{at}. {one}" for at, one in enumerate(PROBLEMS, start=1))
    sheet = read_sheet(head + typed)
    for problem in sheet.problems:
        box = room_of(problem, sheet)
        working = as_taught(problem.statement, sheet.header.strategy)
        if working is None:
            continue
        lines = [text(line.says) for line in working.brief()[1:]]
        match problem.statement:
            case Question() | AnotherName():
                lines = [f"= {line}" for line in lines]
            case Comparison():
                lines = [line.replace("?", "=") for line in lines]
            case MissingNumber() | Ordering() | Rounding() | AskedInWords():
                pass
        measured = [second_road(line) for line in lines]
        inner = (box.width_mm - FRAME_MM) / SCALE[size]
        high = 0
        for width, tall in measured:
            high += tall * (1 if width <= inner else 2)
        assert high <= box.lines
        assert box.height_mm == box.lines * box.pitch_mm
        assert box.width_mm <= page_width(sheet.header)


def test_a_whole_space_fits_one_of_two_columns() -> None:
    """Every problem of thirds and twelfths up to 1 11/12, worked unit by unit, on both papers."""
    for paper in Paper:
        narrow = column_width(Header(paper=paper))
        typed = tuple(map(text, (*subtractions([3, 12], 1), *additions([3, 12], 1))))
        for first in range(0, len(typed), MOST_PROBLEMS):
            page = "\n".join(f"{at}. {one}" for at, one in enumerate(typed[first : first + MOST_PROBLEMS], 1))
            sheet = read_sheet(f"paper: {paper.value}\n\n{page}")
            assert max(room_of(problem, sheet).width_mm for problem in sheet.problems) <= narrow


@pytest.mark.parametrize(
    ("typed", "lines"),
    [("7 2/6 - 3 5/6", 4), ("5 4/6 - 2 1/6", 2), ("9 - 2", 1), ("3 3/8 - 2 5/6", 6), ("5/6 ? 7/8", 2)],
)
def test_lines(typed: str, lines: int) -> None:
    """Two lines of writing for a line with a fraction, one for any other; the printed problem is left out."""
    sheet = read_sheet(f"1. {typed}")
    assert room_of(sheet.problems[0], sheet).lines == lines
    assert room_of(sheet.problems[0], sheet).height_mm == 9 * lines


def test_a_story_leaves_room_for_its_equation() -> None:
    """A pupil writes the equation of a word problem first."""
    sheet = read_sheet("1. 5 1/3 - 2 2/3\n2. 5 1/3 - 2 2/3 | A kite takes 2 2/3 of 5 1/3 strips.")
    plain, story = (room_of(problem, sheet) for problem in sheet.problems)
    assert story.lines == plain.lines + 2


def test_pictures() -> None:
    """Four strips in a row as many as the largest number needs; a number line is always the same."""
    sheet = read_sheet("picture: strip\n\n1. 3 1/4 - 1 2/4\n2. 9 1/4 - 1 2/4\n3. 52 - 27\n4. 99 1/4 - 1 2/4")
    heights = [
        found.picture and found.picture.height_mm for found in (room_of(one, sheet) for one in sheet.problems)
    ]
    assert heights == [21, 45, None, 45]
    line = read_sheet("picture: number line\n\n1. 3 1/4 - 1 2/4\n2. 52 - 27")
    assert {room_of(one, line).picture for one in line.problems} == {room_of(line.problems[0], line).picture}
    assert room_of(line.problems[0], line).across_mm > column_width(line.header)


def test_a_picture_for_stories_leaves_the_others_alone() -> None:
    """No other problem gets a box, and as many columns stand side by side as without a picture."""
    story = "2. 4 1/4 - 1 3/4 | Of 4 1/4 yards 1 3/4 are cut. What is left?"
    typed = f"1. 3 1/4 - 1 2/4\n{story}\n3. 6 - 2 1/3\n4. 5 - 1/3"
    all_of_them, alone = (read_sheet(f"picture: strip{more}\n\n{typed}") for more in ("", " for stories"))
    for sheet, pictured in ((all_of_them, "1234"), (alone, "2")):
        assert [one.label for one in sheet.problems if room_of(one, sheet).picture] == list(pictured)
    assert (worked_sheet(f"picture: strip\n\n{typed}").columns, WorkedSheet(alone).columns) == (1, 2)


def test_amounts_that_are_drawn_have_the_place_that_they_take() -> None:
    """Two strips in a row; a problem that no strips suit has none."""
    sheet = read_sheet(
        "picture: amounts\n\n1. 3 1/4 - 1 2/4\n2. 7 2/6 - 3 5/6\n3. 52 - 27\n4. 1 3/100 - 5/100"
    )
    heights = [
        found.picture and float(found.picture.height_mm)
        for found in (room_of(one, sheet) for one in sheet.problems)
    ]
    assert heights == [pytest.approx(25.0), pytest.approx(39.4), None, None]


def test_large_print_is_larger() -> None:
    """Everything by four thirds, within the same paper."""
    small, large = (read_sheet(f"print: {size}\n\n1. 7 2/6 - 3 5/6") for size in ("ordinary", "large"))
    one, other = room_of(small.problems[0], small), room_of(large.problems[0], large)
    assert (other.height_mm, other.pitch_mm) == (one.height_mm * Fraction(4, 3), Fraction(12))
    assert other.width_mm - FRAME_MM == (one.width_mm - FRAME_MM) * Fraction(4, 3)


@pytest.mark.parametrize(
    ("typed", "across", "down"),
    [
        ("52 - 27", 4, 4),
        ("304 - 128", 5, 4),
        ("1000000 - 345678", 9, 4),
        ("1234 + 2876 + 777", 6, 5),
        ("95 + 17", 5, 4),
        ("12.05 - 3.8", 6, 4),
        ("120 + 45 - 78", 5, 8),
        ("? + 128 = 304", 5, 4),
        ("1000000 - ? = 345678", 9, 4),
        ("? + 3.8 = 12.05", 6, 4),
    ],
)
def test_columns_are_measured_in_squares(typed: str, across: int, down: int) -> None:
    """A square for the sign, one a digit, one to spare; rows for what is above, the numbers, the answer."""
    sheet = read_sheet(f"1. {typed}")
    found = room_of(sheet.problems[0], sheet)
    assert found.square_mm == 9
    assert (found.width_mm, found.height_mm) == (Fraction(9 * across), Fraction(9 * down))
    assert room_of(sheet.problems[0], read_sheet(f"strategy: regroup first\n\n1. {typed}")).square_mm is None


@pytest.mark.parametrize(
    ("head", "problem", "wanted"),
    [
        ("", "7 2/6 - 3 5/6", 2),
        ("columns: 1\n\n", "7 2/6 - 3 5/6", 1),
        ("columns: 2\n\n", "304 - 128", 2),
        ("", "304 - 128", 2),
        ("", "1000000 - 345678", 2),
        ("strategy: regroup first\n\n", "304 - 128", 1),
        ("print: large\n\n", "7 2/6 - 3 5/6", 1),
        ("picture: strip\n\n", "7 2/6 - 3 5/6", 1),
    ],
)
def test_columns(head: str, problem: str, wanted: int) -> None:
    """The header's, or two where most problems fit."""
    assert worked_sheet(f"{head}1. {problem}").columns == wanted


@pytest.mark.parametrize(
    ("typed", "how"),
    [
        ("999999999 1/999 - 888888888 999999999/1000", "wide"),
        (f"5 - 2 | Room 12 flies kites. {'The wind is strong today. ' * 90}How many are left?", "high"),
    ],
)
def test_what_does_not_fit_the_paper(typed: str, how: str) -> None:
    """Is refused with the label and what to do."""
    sheet = read_sheet(f"print: large\n7. {typed}")
    with pytest.raises(RoomError, match=f"problem 7 is too {how}") as refused:
        room_of(sheet.problems[0], sheet)
    assert refused.value.line == 2
    assert refused.value.remedy


LONG = (
    " + ".join(f"1/{bottom}" for bottom in range(2, 11)),
    "plot 1 1/2: 2, 2 3/4: 1, 3 1/8: 3, 3 3/8 in: 2; share",
)


@pytest.mark.parametrize("size", list(Print), ids=str)
@pytest.mark.parametrize("picture", ["", "picture: number line"])
@pytest.mark.parametrize("typed", LONG)
def test_a_page_stops_for_no_problem(typed: str, picture: str, size: Print) -> None:
    """A working higher than a page ends with it, its picture falls away, and the teacher is told."""
    worked = worked_sheet(f"print: {size.value}\n{picture}\n7. {typed}")
    room = worked.rooms["7"]
    assert room.height_mm < page_height(worked.header)
    assert room.height_mm == room.lines * room.pitch_mm
    if room.whole:
        return
    assert room.missing > 0
    assert room.unpictured == bool(picture)
    (found,) = [one for one in audit(worked).findings if isinstance(one, HigherThanPage)]
    assert (found.labels, found.missing, found.unpictured) == (("7",), room.missing, room.unpictured)
    assert severity(found) is Severity.NOTE
    said = text_of(found_in_page(found))
    assert said.startswith(f"Problem 7 needs more room than a page: {room.missing} lines are missing")
    assert ("picture" in said) == room.unpictured


def test_the_first_problem_stands_under_the_title() -> None:
    """Its room ends with that page; the teacher is told what is missing."""
    typed = "plot 1/4: 2, 1/2: 3, 5/8 in: 1; total"
    worked = worked_sheet(f"1. {typed}\n2. 7/8 - 3/8\n3. {typed}")
    first, later = worked.rooms["1"], worked.rooms["3"]
    assert (first.lines + first.missing, later.missing) == (later.lines, 0)
    assert later.lines > first.lines >= later.lines / 2
    (found,) = [one for one in audit(worked).findings if isinstance(one, HigherThanPage)]
    assert text_of(found_in_page(found)) == (
        f"Problem 1 needs more room than there is under the title: {first.missing} lines are missing."
    )
    assert text_of(page_mended(found)) == (
        "Put a shorter problem first, or let the rest be written on other paper."
    )


def test_a_picture_gives_way_to_the_lines() -> None:
    """Where the lines alone have room on the page, only the place for the picture falls away."""
    worked = worked_sheet(
        "print: large\npicture: number line\n\n1. 7/8 - 3/8\n2. 1/2 + 1/3 + 1/4 + 1/5 + 1/6"
    )
    room = worked.rooms["2"]
    assert (room.missing, room.unpictured, room.picture) == (0, True, None)
    (found,) = [one for one in audit(worked).findings if isinstance(one, HigherThanPage)]
    assert text_of(found_in_page(found)) == (
        "Problem 2 needs more room than a page: it has no place for a picture."
    )
    assert text_of(page_mended(found)) == "Let it be drawn on other paper."


def _millimetres(written: str) -> Fraction:
    return Fraction(written.removesuffix("mm"))


@pytest.mark.parametrize("size", list(Print), ids=str)
def test_the_printed_page_has_the_same_figures(size: Print) -> None:
    """Paper, sides, ends and the gap between columns stand in the look of the pages too."""
    look = LOOK.read_text(encoding="utf-8")
    (row,) = re.findall(rf"{size.value}: \((.*?)\),?\n", look, re.DOTALL)
    told = dict(re.findall(r"(side|top|bottom): ([0-9.]+mm)", row))
    inks = r"gap: if sizes.large \{ (?P<large>[0-9.]+mm) \}.*else \{ (?P<ordinary>[0-9.]+mm) \}"
    gap = re.search(inks, look)
    assert gap is not None
    for paper in Paper:
        found = re.search(rf"{paper.value}: \(.*?width: ([0-9.]+mm), height: ([0-9.]+mm)\)", look)
        assert found is not None
        header = Header(paper=paper, print=size)
        width = _millimetres(found[1]) - 2 * _millimetres(told["side"])
        assert page_width(header) == width
        assert page_height(header) == _millimetres(found[2]) - _millimetres(told["top"]) - _millimetres(
            told["bottom"]
        )
        assert column_width(header) == (width - _millimetres(gap[size.value])) / 2


def test_a_long_row_of_numbers_stays_on_the_paper() -> None:
    """Eight mixed numbers in order take more than one row, and a short row takes what it needs."""
    long = ", ".join(f"{12 - at} {at + 1}/10" for at in range(8))
    sheet = read_sheet(f"1. order {long}\n2. order 2/3, 1/2, 3/4")
    eight, three = (room_of(problem, sheet).answer for problem in sheet.problems)
    assert three.width_mm < eight.width_mm == ROW_OF_NUMBERS_MM * SCALE[sheet.header.print]
    assert eight.height_mm > three.height_mm
    assert eight.width_mm < page_width(sheet.header)
