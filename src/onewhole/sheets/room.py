"""The room each problem needs on the pupil page, measured from its working."""

from collections.abc import Sequence
from fractions import Fraction
from math import ceil, floor
from typing import NoReturn, assert_never

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.number.ladder import Ladder
from onewhole.number.quantity import Quantity, whole
from onewhole.pictures.amounts import amounts
from onewhole.pictures.line_plot import plot_scene
from onewhole.pictures.scene import Scene
from onewhole.pictures.squared import SquaredState, ends
from onewhole.pictures.squares import WrittenState
from onewhole.pictures.written import squares_across
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.handwriting import BAR_MM, LINE_MM, written
from onewhole.sheets.header import CornerMarks, Header, Paper, PictureSetting, Print
from onewhole.sheets.story_pictures import story_picture
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Sum, Times
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import AnotherName, Comparison, MissingNumber, Ordering, Question
from onewhole.statements.whole_groups import WholeGroups
from onewhole.statements.writable import Writable
from onewhole.working.line import leads
from onewhole.working.working import Working

#: Width and height of the paper in millimetres. Source: ISO 216 (A4); 8.5 by 11 inches (US Letter).
PAPERS = {
    Paper.LETTER: (Fraction("215.9"), Fraction("279.4")),
    Paper.A4: (Fraction(210), Fraction(297)),
}
#: Empty paper at each side, and at top and bottom together. Margins of an inch in large print: American
#: Council of the Blind (2022); the others are our own. The Typst files of the printed page contain the same
#: figures.
SIDES = {Print.ORDINARY: Fraction(18), Print.LARGE: Fraction("25.4")}
ENDS = {Print.ORDINARY: Fraction(36), Print.LARGE: Fraction("51.4")}
#: What a page with marks in its corners keeps besides: the foot with the pupil's code, and a higher place for
#: the answer.
MARKED_MM = {Print.ORDINARY: 12, Print.LARGE: 16}
#: How large a line plot is drawn: its numbers are over 10 points, and over 18 in large print where it fits.
#: Below it is empty paper.
PLOT_SCALE = {Print.ORDINARY: Fraction(1), Print.LARGE: Fraction(8, 5)}
PLOT_GAP_MM = 6
#: Empty paper between two columns.
GAPS = {Print.ORDINARY: Fraction(8), Print.LARGE: Fraction(10)}
#: What a page keeps for the printed problem and an answer line under the room, and for each line of a story.
HEAD_MM = {Print.ORDINARY: 42, Print.LARGE: 56}
#: What the title of the first page takes.
TITLE_MM = {Print.ORDINARY: 48, Print.LARGE: 64}
STORY_MM = {Print.ORDINARY: 8, Print.LARGE: 11}
#: So many letters of a story surely fit on one line across the page.
STORY_LETTERS = {Print.ORDINARY: 60, Print.LARGE: 40}
#: How much larger a pupil who reads large print writes; our own.
SCALE = {Print.ORDINARY: Fraction(1), Print.LARGE: Fraction(4, 3)}
#: Empty paper between the frame of a room and what is written in it, both sides together.
FRAME_MM = 6
#: Between a room and the picture beside it.
PICTURE_GAP_MM = 4
#: The shortest line for an answer (its length does not tell the answer), and the narrowest box for a number
#: that is missing: two digits and a little air. Our own.
ANSWER_MM = 30
#: Numbers in order take one row as long as this, and then another.
ROW_OF_NUMBERS_MM = 120
#: Under the title of a page a working is begun only with room for so many lines; our own.
LEAST_LINES = 3
#: A room with this share of its lines ends with the first page, which would be empty without it; our own.
ENOUGH = Fraction(1, 2)
#: So many parts of a product are not added in the head. Common practice, no source.
MANY_PARTS = 3
BOX_MM = 14
#: Where photos are read, an answer has so much room, wide and high: enough to cross out and write beside it.
READ_MM = (60, 24)

#: Places to draw in; our own. Strips stand four in a row, more than 12 are not drawn.
STRIPS_IN_A_ROW = 4
MOST_STRIPS = 12
STRIP_MM = 12
PICTURE_MM = 72
LINE_PICTURE_MM = 27
#: So wide that the digits of a bar are over 10 points.
BAR_PICTURE_MM = 84
WORDS_MM = 9


class RoomError(InputError):
    """A problem does not fit the paper."""


class WorkPlace(Struct, frozen=True):
    """A place to draw in, in millimetres."""

    width_mm: Fraction
    height_mm: Fraction


class Room(Struct, frozen=True):
    """The room for one problem, in exact millimetres.

    ``width_mm`` and ``height_mm`` are the frame to write in: ``lines`` lines of writing, each ``pitch_mm``
    high. ``answer`` is the place for the answer outside the frame, high enough for a fraction where it has
    one: over a line beside or under the problem, or a box (a ring) in it where a number (a sign) is missing.
    ``picture`` is the place to draw in, beside the frame where both fit and over it where not, or None.
    ``square_mm`` is the side of the squares that the frame is ruled in where the class works in columns: a
    square a digit, and ``lines`` rows of them; None for lines. Where all of it is higher than a page, the
    picture is ``unpictured``, and ``missing`` lines are written on other paper; ``first`` says that they are
    missing because of the title.
    """

    width_mm: Fraction
    height_mm: Fraction
    lines: int
    pitch_mm: Fraction
    answer: WorkPlace
    picture: WorkPlace | None = None
    square_mm: Fraction | None = None
    missing: int = 0
    unpictured: bool = False
    first: bool = False

    @property
    def whole(self) -> bool:
        """Say whether all that the problem needs stands on the page."""
        return not (self.missing or self.unpictured)

    @property
    def across_mm(self) -> Fraction:
        """Return how wide frame and picture are side by side."""
        return self.width_mm + (PICTURE_GAP_MM + self.picture.width_mm if self.picture else 0)


def page_width(header: Header) -> Fraction:
    """Return the width between the margins in millimetres.

    >>> page_width(Header())
    Fraction(1799, 10)
    """
    return PAPERS[header.paper][0] - 2 * SIDES[header.print]


def page_height(header: Header) -> Fraction:
    """Return the height between the margins in millimetres."""
    return PAPERS[header.paper][1] - ENDS[header.print]


def column_width(header: Header) -> Fraction:
    """Return the width of one of two columns in millimetres.

    >>> column_width(Header(paper=Paper.A4))
    Fraction(83, 1)
    """
    return (page_width(header) - GAPS[header.print]) / 2


def room(worked: WorkedProblem, header: Header) -> Room:
    """Return the room that a problem needs.

    It holds every line that a pupil writes when the problem is worked as the class was taught (the problem
    itself is printed and not written, but a word problem's equation is), at a nine-year-old's size of
    handwriting (:mod:`onewhole.sheets.handwriting`; our own), so that nobody has to write above or sideways.
    A line that is too wide for the paper is broken before a sign. A working in columns is measured in
    squares, each as high as a line. Where it is higher than a page, the place for a picture falls away, and
    then lines do. Raises RoomError when a number is too long for the paper, or a story leaves no room.

    >>> from onewhole.sheets.reading import read_sheet
    >>> sheet = read_sheet("1. 7 2/6 - 3 5/6")
    >>> found = room(WorkedProblem(sheet.problems[0]), sheet.header)
    >>> found.lines, found.height_mm, found.answer.height_mm
    (4, Fraction(36, 1), Fraction(18, 1))
    """
    problem = worked.problem
    scale, most = SCALE[header.print], page_width(header)
    squares = _squares(worked.working)
    laid = [written(says, leads=leads, width=(most - FRAME_MM) / scale) for says, leads in _lines(worked)]
    lines, pitch = sum(part.lines for part in laid) + _added_up(worked), LINE_MM * scale
    width = max(part.width for part in laid) * scale + FRAME_MM
    if squares:
        across, lines = squares
        width = across * pitch
    found = Room(
        width,
        lines * pitch,
        lines,
        pitch,
        _answer(worked, header),
        _picture(worked, header),
        pitch if squares else None,
    )
    if width > most:
        _refuse(problem, "wide")
    high = page_height(header) - _head(problem, header)
    if high < pitch:
        _refuse(problem, "high")
    left = high - TITLE_MM[header.print]
    return _on_a_page(found, most, high, high if left < LEAST_LINES * pitch else left)


def on_first_page(found: Room, problem: Problem, header: Header) -> Room:
    """Return the room of a first problem: no higher than what the title leaves, so that it stands under it.

    One that keeps less than half of its lines, with squares or with a picture stays as it is.
    """
    left = page_height(header) - _head(problem, header) - TITLE_MM[header.print]
    lines = floor(left / found.pitch_mm)
    if found.height_mm <= left or lines < ENOUGH * found.lines or found.square_mm or found.picture:
        return found
    missing = found.missing + found.lines - lines
    return replace(found, lines=lines, height_mm=lines * found.pitch_mm, missing=missing, first=True)


def _on_a_page(found: Room, wide: Fraction, high: Fraction, left: Fraction) -> Room:
    """Return a room no higher than a page: without its picture, and with fewer lines, where need be.

    What does not fit whole takes what is ``left`` at most: of a first page where that is enough to begin on.
    """
    beside = 0 if found.picture is None else found.picture.height_mm
    if found.across_mm > wide and found.picture:
        beside += PICTURE_GAP_MM + found.height_mm
    if max(found.height_mm, beside) <= high:
        return found
    if found.height_mm <= high:
        return replace(found, picture=None, unpictured=True)
    lines = floor(left / found.pitch_mm)
    return replace(
        found,
        picture=None,
        unpictured=found.picture is not None,
        lines=lines,
        height_mm=lines * found.pitch_mm,
        missing=found.lines - lines,
    )


def _added_up(worked: WorkedProblem) -> int:
    """Return the lines in which the parts of a product are added up under one another: none for two."""
    asked = worked.statement
    if worked.working is None or not isinstance(asked, Question) or not isinstance(asked.asked, Times):
        return 0
    sums = [line.says for line in worked.working.brief() if isinstance(line.says, Sum)]
    plain = [one for one in sums if all(isinstance(term.part, Quantity) for term in one.terms)]
    parts = max((len(one.terms) for one in plain), default=0)
    return parts + 1 if parts >= MANY_PARTS else 0


def _squares(working: Working | None) -> tuple[int, int] | None:
    """Return how many squares a working in columns needs across and down; None for any other working.

    Across stand the sign and the digits, with one square to spare; down stand what is written small
    above (two rows of it in a square), the numbers and the answer, and all that a product or a division
    writes between them.
    """
    last = ends(working) if working else ()
    if not last:
        return None
    sizes = [_squares_of(state) for state in last]
    return max(across for across, _ in sizes), sum(down for _, down in sizes)


def _squares_of(state: SquaredState) -> tuple[int, int]:
    """Return the squares across and down of what stands in columns at the end, with one to spare.

    Beside a remainder none is spared: its own squares are empty until the last line.
    """
    if isinstance(state, WrittenState):
        small = sum(row.small for row in state.rows)
        across = max(state.squares + 1, squares_across(state))
        return across, len(state.rows) - small + ceil(Fraction(small, 2))
    above = max(len(column.above) for column in state.columns)
    return len(state.columns) + 2, len(state.numbers) + 1 + max(1, ceil(Fraction(above, 2)))


def _head(problem: Problem, header: Header) -> int:
    """Return the height kept for what is printed around the frame."""
    lines = ceil(Fraction(len(problem.story), STORY_LETTERS[header.print]))
    marked = 0 if header.marks is CornerMarks.NONE else MARKED_MM[header.print]
    plot = 0
    if isinstance(problem.statement, PlotQuestion):
        plot = ceil(plot_scene(problem.statement.plot).height * PLOT_SCALE[header.print]) + PLOT_GAP_MM
    return HEAD_MM[header.print] + lines * STORY_MM[header.print] + marked + plot


def _refuse(problem: Problem, how: str) -> NoReturn:
    msg = f"the working of problem {problem.label} is too {how} for the paper"
    raise RoomError(msg, line=problem.line, remedy="Use smaller numbers or fewer of them, or ordinary print.")


def _lines(worked: WorkedProblem) -> Sequence[tuple[Writable, bool]]:
    """Return what the pupil writes line by line, and whether an equals sign leads the line."""
    problem = worked.problem
    if worked.working is None:
        return [(problem.statement, False), (worked.answer, True)]
    lines = worked.working.brief()
    printed = 0 if problem.story or len(lines) == 1 else 1
    return [(line.says, leads(lines, at)) for at, line in enumerate(lines)][printed:]


def _answer(worked: WorkedProblem, header: Header) -> WorkPlace:
    """Return the place that the answer takes when it is written by hand."""
    scale, found = SCALE[header.print], written(worked.answer, leads=False)
    width, height = found.width, found.lines * LINE_MM
    match worked.statement:
        case Ordering() | Listing():
            rows = ceil(width / ROW_OF_NUMBERS_MM)
            width, height = min(max(width, ANSWER_MM), ROW_OF_NUMBERS_MM), rows * height
        case Question() | Rounding() | PlotQuestion() | FactorQuestion() | WholeGroups():
            width = max(width, ANSWER_MM)
        case AnotherName() if over_a_line(worked.problem, header.marks):
            width = max(width, ANSWER_MM)
        case AnotherName(wanted=Ladder()) if isinstance(worked.answer, Quantity):
            counts = [
                written(whole(count), leads=False) for count in worked.answer.counts if count is not None
            ]
            width = max(BOX_MM, *(one.width + BAR_MM for one in counts))
        case MissingNumber() | AnotherName():
            width = max(width + BAR_MM, BOX_MM)
        case Comparison():
            width = LINE_MM
        case _:
            assert_never(worked.statement)
    if header.marks is not CornerMarks.NONE and over_a_line(worked.problem, header.marks):
        width, height = max(width, READ_MM[0]), max(height, READ_MM[1])
    return WorkPlace(width * scale, height * scale)


def over_a_line(problem: Problem, marks: CornerMarks = CornerMarks.NONE) -> bool:
    """Say whether the answer to a problem stands over a line, and not in holes or a ring of the problem.

    With ``marks`` an answer in several units stands over one line, where it is read as one.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = Problem("1", read_statement("26 in = ? ft ? in"), "26 in = ? ft ? in")
    >>> over_a_line(asked), over_a_line(asked, CornerMarks.LINES)
    (False, True)
    """
    match problem.statement:
        case Question() | Rounding() | Ordering() | AskedInWords():
            return True
        case MissingNumber():
            return bool(problem.story)
        case AnotherName(wanted=Ladder(units=units)):
            return bool(problem.story) or (len(units) > 1 and marks is not CornerMarks.NONE)
        case AnotherName():
            return True
        case Comparison(sign=sign):
            return bool(problem.story or sign)
        case _:
            assert_never(problem.statement)


def _picture(worked: WorkedProblem, header: Header) -> WorkPlace | None:
    """Return the place to draw in: strips four in a row (only for fractions), or a number line.

    It is the place of a drawing where the amounts are drawn already.
    """
    scale = SCALE[header.print]
    beside = header.picture_beside(story=bool(worked.problem.story))
    match beside:
        case PictureSetting.NONE:
            return None
        case PictureSetting.LINE:
            return WorkPlace(PICTURE_MM * scale, LINE_PICTURE_MM * scale)
        case PictureSetting.STRIP:
            if not worked.needs.denominators:
                return None
            most: Fraction = max(number.value for number in numbers_of(worked.statement))
            rows = ceil(min(most, Fraction(MOST_STRIPS)) / STRIPS_IN_A_ROW)
            return WorkPlace(PICTURE_MM * scale, (max(1, rows) * STRIP_MM + WORDS_MM) * scale)
        case PictureSetting.AMOUNTS:
            drawn = amounts(worked.working) if worked.working else None
            if drawn is None:
                return None
            high = Fraction(drawn.height) * PICTURE_MM / Fraction(drawn.width)
            return WorkPlace(PICTURE_MM * scale, (high + WORDS_MM) * scale)
        case PictureSetting.BAR:
            bars = story_picture(worked, header)
            return _as_wide(bars.blank, BAR_PICTURE_MM * scale) if bars else None
        case _:
            assert_never(beside)


def _as_wide(drawn: Scene, width: Fraction) -> WorkPlace:
    """Return the place of a drawing of that width, with the words under it."""
    high = Fraction(drawn.height) * width / Fraction(drawn.width)
    return WorkPlace(width, high + WORDS_MM * width / PICTURE_MM)
