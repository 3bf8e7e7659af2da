"""The pupil page leaves every problem its room and every answer its place."""

from collections.abc import Sequence
from fractions import Fraction
from itertools import product
from math import floor
from typing import cast

import pytest

from onewhole.languages.english.speech import say
from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Family
from onewhole.problems.answer import answer
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.problems.taught import as_taught
from onewhole.sheets.document import Sheet
from onewhole.sheets.handwriting import LINE_MM, written
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.room import (
    FRAME_MM,
    PICTURE_GAP_MM,
    SCALE,
    Room,
    column_width,
    page_width,
)
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import Question
from onewhole.statements.writable import Writable
from onewhole.writers.pupil_page import practice_page, pupil_page
from tests.kit import pdf
from tests.kit.pages import COMBINED, PAPERS, made, practice, practised, pressed, sheet
from tests.kit.sheets import room_of, worked_sheet

SHEETS = ("room12", "sorts", "drawn", "jumped")
HAIR = 0.15

everywhere = pytest.mark.parametrize(
    ("name", "paper", "size"), [(name, *both) for name, both in product(SHEETS, COMBINED)]
)


def lines_by_hand(problem: Problem, strategy_of: Sheet) -> Sequence[tuple[Writable, bool]]:
    """What a pupil writes of a problem's working, and whether an equals sign leads each line."""
    working = as_taught(problem.statement, strategy_of.header.strategy)
    if working is None:
        return [(problem.statement, False), (answer(problem.statement), True)]
    says = [line.says for line in working.brief()]
    chained = isinstance(problem.statement, Question)
    lines = [(one, chained and at > 0) for at, one in enumerate(says)]
    return lines if problem.story or len(lines) == 1 else lines[1:]


def frames(page: bytes) -> list[pdf.Box]:
    """The frames to write in, in reading order: large, and without words in them."""
    words = [sign for sign in pdf.signs(page) if sign.sign.isalpha()]
    large = [box for box in pdf.drawings(page) if box.width > 45 and box.height > 17.5]
    lines = answer_lines(page)
    own = [box for box in large if not any(_stands_on(box, line) for line in lines)]
    found = [box for box in own if not any(word.inside(box) for word in words)]
    return sorted(found, key=lambda box: (box.page, round(box.top), box.left))


def _stands_on(box: pdf.Box, line: pdf.Box) -> bool:
    """Whether a box is the frame over an answer line."""
    near = abs(box.bottom - line.bottom) < 0.6 and abs(box.left - line.left) < 0.6
    return near and box.page == line.page


def answer_lines(page: bytes) -> list[pdf.Box]:
    """The lines to write an answer on: dark, and shorter than a line of writing in any room."""
    found = [box for box in pdf.drawings(page) if box.height < 0.4 and 25 < box.width < 100]
    named = [sign for sign in pdf.signs(page) if sign.sign in {"N", "D"}]
    return [line for line in found if not any(_labels(sign, line) for sign in named)]


def _labels(sign: pdf.Box, line: pdf.Box) -> bool:
    """Whether a letter begins a word that stands in front of a line."""
    return sign.page == line.page and abs(sign.bottom - line.bottom) < 2 and 0 < line.left - sign.left < 22


@everywhere
def test_each_frame_holds_the_working_that_is_written_in_it(name: str, paper: str, size: str) -> None:
    """The frames of the PDF are no smaller than measured, and every line of every working fits by hand."""
    night = sheet(name, paper, size)
    drawn = frames(pressed(f"{name}/pupil", paper, size))
    assert len(drawn) == len(night.problems)
    scale = SCALE[night.header.print]
    for problem, frame in zip(night.problems, drawn, strict=True):
        needed = room_of(problem, night)
        assert frame.width >= needed.width_mm - HAIR, problem.label
        assert frame.height >= needed.height_mm - HAIR, problem.label
        wide, high = Fraction(floor(frame.width * 10), 10), Fraction(floor(frame.height * 10 + 1), 10)
        laid = [
            written(says, leads=leads, width=(wide - FRAME_MM) / scale)
            for says, leads in lines_by_hand(problem, night)
        ]
        assert all(part.width * scale <= wide - FRAME_MM for part in laid), problem.label
        assert sum(part.lines for part in laid) * LINE_MM * scale <= high, problem.label


@everywhere
def test_every_answer_fits_over_its_line(name: str, paper: str, size: str) -> None:
    """Over each answer line stands nothing for the height of the answer by hand, a stacked fraction too."""
    night, page = sheet(name, paper, size), pressed(f"{name}/pupil", paper, size)
    lines = answer_lines(page)
    for problem, frame in zip(night.problems, frames(page), strict=True):
        if not isinstance(problem.statement, Question):
            continue
        needed = room_of(problem, night)
        placed = (*_over(frame, needed, lines), *_under(frame, needed, lines))
        line = next(one for one in placed if _column(one, frame, night))
        lines.remove(line)
        high = float(needed.answer.height_mm) - 0.7
        free = pdf.Box(line.page, line.left + 0.5, line.bottom - high, line.right - 0.5, line.top - 0.1)
        assert line.width >= needed.answer.width_mm - HAIR, problem.label
        there = [box for box in (*pdf.signs(page), *pdf.drawings(page)) if box.meets(free)]
        assert all(_stands_on(box, line) for box in there), problem.label
    assert not lines


def _over(frame: pdf.Box, needed: Room, lines: list[pdf.Box]) -> list[pdf.Box]:
    """The answer lines right over a frame, or over the picture's place that stands on it."""
    picture = needed.picture
    tops = [frame.top, *([frame.top - float(picture.height_mm) - PICTURE_GAP_MM] if picture else [])]
    return [line for line in lines if any(0 < top - line.bottom < 3 for top in tops)]


def _under(frame: pdf.Box, needed: Room, lines: list[pdf.Box]) -> list[pdf.Box]:
    """The answer lines under a frame, with the answer between the two."""
    high = float(needed.answer.height_mm)
    return [line for line in lines if high < line.bottom - frame.bottom < high + 3]


def _column(line: pdf.Box, frame: pdf.Box, night: Sheet) -> bool:
    """Whether a line stands on the page of a frame and in its column."""
    wide = WorkedSheet(night).columns == 1 or frame.width > column_width(night.header) + 1
    right = frame.left + float((page_width if wide else column_width)(night.header)) + 1
    return line.page == frame.page and frame.left - 1 < line.left and line.right < right


@pytest.mark.parametrize(("paper", "size"), COMBINED)
def test_a_missing_number_or_sign_has_a_place_to_write_in(paper: str, size: str) -> None:
    """The box (a ring for a sign) in the formula is as large as the answer by hand."""
    night, page = sheet("sorts", paper, size), pressed("sorts/pupil", paper, size)
    boxes = [box for box in pdf.drawings(page) if box.height > 8 and box.width < 45 and box.left > 28]
    for problem in night.problems:
        if not isinstance(problem.statement, Question):
            needed = room_of(problem, night).answer
            fits = [box for box in boxes if box.width >= needed.width_mm and box.height >= needed.height_mm]
            assert fits, problem.label
            boxes.remove(min(fits, key=lambda box: box.width * box.height))


@everywhere
def test_what_is_spoken_is_what_is_asked(name: str, paper: str, size: str) -> None:
    """The formulas are the problems, a question with a blank behind it, and the fractions of a story."""
    night = sheet(name, paper, size)
    found = [words for tag, words in pdf.tags(pressed(f"{name}/pupil", paper, size)) if tag == "/Formula"]
    blank = {True: " equals blank", False: ""}
    assert found == [
        spoken
        for problem in night.problems
        for spoken in (
            map(say, numbers_of(problem.statement))
            if problem.story
            else (say(problem.statement) + blank[isinstance(problem.statement, Question)],)
        )
    ]


@pytest.mark.parametrize("paper", PAPERS)
def test_room_12_takes_two_pages(paper: str) -> None:
    """Room 12's page takes two pages in ordinary print, each practice page one, with or without a slip."""
    assert pdf.pages(pressed("room12/pupil", paper, "ordinary")) == 2
    for night in ("first", "later"):
        assert [pdf.pages(made(page)) for page in practice(paper, "ordinary", night)] == [1] * len(
            practised()
        )


@pytest.mark.parametrize(("paper", "size"), COMBINED)
def test_the_answer_line_goes_under_the_room_where_it_does_not_fit_beside(paper: str, size: str) -> None:
    """A long question has its answer line under its room, on the same page, with a word in front."""
    less = " - 1234.5" * (3 if size == "large" else 5)
    typed = f"1. 123456.5{less}\n2. 52 - 27"
    page = made(pupil_page(worked_sheet(f"paper: {paper}\nprint: {size}\ncolumns: 1\n\n{typed}")))
    long, short = frames(page)
    wide = [line for line in answer_lines(page) if 0 < line.top - long.bottom < 30 and line.page == long.page]
    near = [
        line for line in answer_lines(page) if 0 < short.top - line.bottom < 4 and line.page == short.page
    ]
    assert (len(wide), len(near)) == (1, 1)
    assert wide != near
    told = [text.count("Answer") for text in pdf.words(page)]
    assert told == [int(at == long.page) for at in range(pdf.pages(page))]


@pytest.mark.parametrize("paper", PAPERS)
def test_a_fraction_under_the_room_has_a_frame_close_to_it(paper: str) -> None:
    """Two lines of writing stand free over that line: the frame round them begins right under the room."""
    typed = f"paper: {paper}\n\n1. 12/18 in simplest form\n2. 1000000 - 234567\n"
    page = made(pupil_page(worked_sheet(typed)))
    line, plain = answer_lines(page)
    (frame,) = [box for box in pdf.drawings(page) if box.height > 15 and _stands_on(box, line)]
    room, *_ = frames(page)
    assert 1.5 < frame.top - room.bottom < 3.5
    assert abs(frame.width - line.width) < 1
    word = next(sign for sign in pdf.signs(page) if sign.sign == "A" and sign.right < line.left)
    assert abs((word.top + word.bottom) / 2 - (frame.top + frame.bottom) / 2) < 2
    assert not [box for box in pdf.drawings(page) if box.height > 8 and _stands_on(box, plain)]


@pytest.mark.parametrize("typed", ["5/6 ? 7/8", "0.45 ? 0.6", "345 ? 354", "2 ft ? 20 in", "$3.25 ? $3.05"])
def test_a_ring_keeps_its_distance(typed: str) -> None:
    """A ring stands as far from the number before it as from the one behind it, whatever the numbers are."""
    page = made(pupil_page(worked_sheet(f"1. {typed}")))
    (ring,) = [box for box in pdf.drawings(page) if 8 < box.width < 12 and abs(box.width - box.height) < 0.5]
    level = [
        sign for sign in pdf.signs(page) if ring.top - 3 < sign.bottom < ring.bottom + 3 and sign.sign != "."
    ]
    before = ring.left - max(sign.right for sign in level if sign.right < ring.left + 0.5)
    behind = min(sign.left for sign in level if sign.left > ring.right - 0.5) - ring.right
    assert 1.2 < before < 3
    assert 1.2 < behind < 3


def test_a_cent_is_as_high_as_its_digits() -> None:
    """The sign of cents comes from the font of the digits."""
    signs = pdf.signs(made(pupil_page(worked_sheet("1. 75¢ + 50¢"))))
    cent, digit = (next(sign for sign in signs if sign.sign == one) for one in "¢7")
    assert cent.height > 0.85 * digit.height


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ("7 2/6 - 3 5/6", "Cut and cross out."),
        ("2 4/5 + 1 3/5", "Cut and put together."),
        ("5/6 ? 7/8", "Cut, if it helps."),
    ],
)
def test_what_is_done_with_drawn_amounts(typed: str, words: str) -> None:
    """Nothing is crossed out where amounts are added or compared."""
    (item,) = _items(pupil_page(worked_sheet(f"picture: amounts\n\n1. {typed}")))
    picture = item["picture"]
    assert isinstance(picture, dict)
    assert picture["words"] == words


def test_a_story_is_printed_and_its_equation_is_not() -> None:
    """A word problem stands in words; the pupil writes the equation."""
    item = next(
        item for item in _items(pupil_page(WorkedSheet(sheet("sorts")))) if item.get("label") == "13."
    )
    parts = item["words"]
    assert isinstance(parts, list)
    assert [part for part in parts if isinstance(part, str)] == [
        "Room 12 has ",
        " strips of kite paper. A kite takes ",
        " strips. How much is left?",
    ]
    assert [part["alt"] for part in parts if not isinstance(part, str)] == [
        "five and one third",
        "two and two thirds",
    ]
    assert "formula" not in item


def _items(page: object) -> list[dict[str, object]]:
    data = getattr(page, "data", {})
    found: list[dict[str, object]] = data["items"]
    return found


def test_a_practice_page_is_called_by_its_kite_word() -> None:
    """A practice page shows its group's name and kite, and never a pattern's name, id or family."""
    first = practised()[0]
    page = practice_page(first.practice, first.whose, "delta")
    assert page.data["title"] == "Swifts: Practice"
    assert page.data["kite"] == "delta"
    for one in (*practice("letter", "ordinary"), *practice("letter", "ordinary", "later")):
        said = " ".join((*pdf.words(made(one)), *(words for _, words in pdf.tags(made(one))))).lower()
        for pattern in patterns():
            assert pattern.name.lower() not in said
            assert pattern.id.lower() not in said.split()
        for family in Family:
            assert family.value not in said


def _first_item(worked: WorkedSheet) -> dict[str, object]:
    """What stands first under the head of a page."""
    return cast("list[dict[str, object]]", pupil_page(worked).data["items"])[0]


@pytest.mark.parametrize(
    ("asked", "places"), [("304 - 128", 2), ("1000000 - 345678", 5), ("45.6 + 7.85", 3), ("$5 - $2.35", 2)]
)
def test_one_to_finish_in_columns(asked: str, places: int) -> None:
    """The first column is done, and every other digit of the answer has a dotted place of its own."""
    worked = WorkedSheet(read_sheet(f"to finish: {asked}\n\n1. 52 - 27"))
    first = _first_item(worked)
    assert first["kind"] == "example"
    assert str(first["svg"]).count("stroke-dasharray") == places
    assert first["words"] == "Here is one to finish:"


@pytest.mark.parametrize(
    ("asked", "lines"),
    [("7 2/6 - 3 5/6", 2), ("7 - 3", 1), ("5 ft 2 in - 2 ft 7 in", 2), ("2 x 3 x 4", 2), ("1 + 2 ? 4", 1)],
)
def test_one_to_finish_line_by_line(asked: str, lines: int) -> None:
    """All lines but the last; a problem that is not worked here stands alone."""
    worked = WorkedSheet(read_sheet(f"to finish: {asked}\n\n1. 52 - 27"))
    first = _first_item(worked)
    assert first["kind"] == "example"
    assert len(cast("list[object]", first["lines"])) == lines
