"""Split and join, as a number bond: a whole is parted off, cut up, and its pieces put together."""

from collections.abc import Iterator
from enum import IntEnum
from fractions import Fraction

from msgspec import Struct

from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, landmark
from onewhole.pictures.description import CutInto, Description, Gathered, Makes, Shown, SplitInto
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Piece, Scene, Stroke, Words
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Expression, Quotient, Sum
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import Comparison, MissingNumber, NumberRow, Ordering
from onewhole.working.line import Line
from onewhole.working.reasons.parting import Parting
from onewhole.working.reasons.regrouping import (
    AreWorth,
    FullGroups,
    MakesLarger,
    OneIsWorth,
    OpensOne,
    OpensToMatch,
    PutTogether,
)
from onewhole.working.working import Working

WIDTH, HEIGHT = Fraction(180), Fraction(100)
#: The first row's place from the top, the room from row to row, and the height of digits.
TOP, ROW, DIGITS = Fraction(10), Fraction(20), Fraction(6)
#: The height of a whole number's digits beside a fraction, whose own are smaller.
BESIDE_FRACTION = Fraction(15, 2)
#: A branch stops so far above and below the middle of a number.
CLEAR = Fraction(6)
#: How many places, such as 12 ones, a number may name in a row of so many numbers.
MOST_NAMED = {1: 3, 2: 2, 3: 1}

_PLACED = {Style.PLACES, Style.DECIMAL}


class SplitRows(IntEnum):
    """How far a tree has grown: its parts, what one of them changes to, and what they make together."""

    PARTS = 1
    CHANGE = 2
    ALL = 3


class Grown(Struct, frozen=True):
    """How a number is parted, as a tree, and how many of its rows stand at one line of the working."""

    tree: Parting
    rows: SplitRows


def grown(working: Working) -> tuple[Grown | None, ...]:
    """Return the tree of every line; None before there is one. Another opening starts another tree.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> [found and found.rows.value for found in grown(work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST))]
    [None, 1, 2, 3, 3, 3]
    """
    found: list[Grown | None] = []
    now: Grown | None = None
    for line in working.lines:
        match line.because:
            case OpensOne(parting=tree) | OpensToMatch(parting=tree) | FullGroups(parting=tree):
                now = Grown(tree, SplitRows.PARTS) if _drawable(tree) else now
            case OneIsWorth() | AreWorth() if now:
                now = Grown(now.tree, SplitRows.CHANGE)
            case PutTogether() | MakesLarger() if now:
                now = Grown(now.tree, SplitRows.ALL)
            case _:
                pass
        found.append(now)
    return tuple(found)


def _drawable(tree: Parting) -> bool:
    """Say whether a tree shows something: the change is written in another way, and each number has room."""
    unchanged = _only_digits(tree.parts[tree.at]) and _only_digits(tree.changed)
    room = MOST_NAMED[len(tree.parts)]
    named = (one for one in tree.parts if one.ladder.style in _PLACED and not in_digits(one))
    return not unchanged and all(len(named_places(one)) <= room for one in named)


def _only_digits(quantity: Quantity) -> bool:
    return quantity.ladder.style in _PLACED and in_digits(quantity)


def _side(line: Line) -> Expression:
    """Return what a line works on: the side without the gap, and of a quotient the number that is shared."""
    match line.says:
        case Comparison():
            return line.says.left
        case MissingNumber():
            return line.says.rest
        case Ordering() | NumberRow():
            return line.says.parts[0]
        case Rounding(number):
            return number
        case AskedInWords():
            return line.says.about
        case Quotient(Quantity() as shared, _):
            return shared
        case _:
            return line.says


def split(working: Working) -> Picture:
    """Draw how one is opened or made, as a tree that grows line by line.

    Raises NotDrawnError for a working that opens none and makes none.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> picture = split(work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST))
    >>> [type(each).__name__ for each in picture.scenes[-1].descriptions]
    ['Shown', 'SplitInto', 'CutInto', 'Gathered']
    """
    trees = grown(working)
    if not any(trees):
        msg = "nothing is opened or made in this working"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    scenes: list[Scene] = []
    known: list[Parting] = []
    for line, each in zip(working.lines, trees, strict=True):
        if each is None:
            scenes.append(_before(line, scenes))
            continue
        if each.tree not in known:
            known.append(each.tree)
        pieces = tuple(_pieces(each, f"tree{len(known)}"))
        scenes.append(Scene(WIDTH, HEIGHT, pieces, tuple(_descriptions(each))))
    return Picture(PictureKind.SPLIT, tuple(scenes))


def _before(line: Line, scenes: list[Scene]) -> Scene:
    """Show the numbers that a line works on, before one of them is parted; or what stood there."""
    says = _side(line)
    parts = [term.part for term in says.terms if not term.taken] if isinstance(says, Sum) else [says]
    numbers = tuple(part for part in parts if isinstance(part, Quantity))
    if scenes and len(numbers) != len(parts):
        return scenes[-1]
    names = [f"given/{at}" if at else "tree1/top" for at in range(len(numbers))]
    xs = [_place(at, len(numbers)) for at in range(len(numbers))]
    pieces = [Piece(name, _number(x, TOP, n)) for name, x, n in zip(names, xs, numbers, strict=True)]
    return Scene(WIDTH, HEIGHT, tuple(pieces), (Shown(numbers),))


def _place(at: int, count: int) -> Fraction:
    """Return the middle of one of so many equal columns."""
    return WIDTH * (2 * at + 1) / (2 * count)


def _pieces(each: Grown, name: str) -> Iterator[Piece]:
    """Draw the rows that stand: top, parts, change, pieces put together, and the number they all make."""
    tree = each.tree
    top, *rows = [TOP + ROW * row for row in range(5)]
    middle = WIDTH / 2
    yield Piece(f"{name}/top", _number(middle, top, tree.top))
    ends = [(_place(at, len(tree.parts)), rows[0]) for at in range(len(tree.parts))]
    for at, (part, spot) in enumerate(zip(tree.parts, ends, strict=True)):
        yield _branch(f"{name}/branch/{at}", (middle, top), spot)
        yield Piece(f"{name}/part/{at}", _number(*spot, part))
    if each.rows >= SplitRows.CHANGE:
        spot = (ends[tree.at][0], rows[1])
        yield _branch(f"{name}/change", ends[tree.at], spot)
        yield Piece(f"{name}/changed", _number(*spot, tree.changed))
        ends[tree.at] = spot
    if each.rows is not SplitRows.ALL:
        return
    if tree.pieces is not None:
        spot = ((ends[tree.at][0] + ends[-1][0]) / 2, rows[2])
        for at, end in enumerate(ends[tree.at :]):
            yield _branch(f"{name}/piece/{at}", end, spot)
        yield Piece(f"{name}/pieces", _number(*spot, tree.pieces))
        ends = [*ends[: tree.at], spot]
    for at, end in enumerate(ends):
        yield _branch(f"{name}/join/{at}", end, (middle, rows[3]))
    yield Piece(f"{name}/joined", _number(middle, rows[3], tree.joined))


def _number(x: Fraction, y: Fraction, number: Quantity) -> Words:
    """Write a number of the tree; its smallest digits can be read on a phone."""
    stacked = number.ladder.style is Style.MIXED and number.counts[1] is not None
    return Words(x, y, number, BESIDE_FRACTION if stacked else DIGITS)


def _branch(name: str, upper: tuple[Fraction, Fraction], lower: tuple[Fraction, Fraction]) -> Piece:
    """Draw a branch from below one number to above another."""
    return Piece(name, Stroke(upper[0], upper[1] + CLEAR, lower[0], lower[1] - CLEAR))


def _descriptions(each: Grown) -> Iterator[Description]:
    tree = each.tree
    part = tree.parts[tree.at]
    yield Shown((tree.top,))
    yield SplitInto(tree.top, tree.parts)
    if each.rows >= SplitRows.CHANGE:
        opened = landmark(part.ladder, part.parts) == part
        yield (CutInto if opened else Makes)(part, tree.changed)
    if each.rows is SplitRows.ALL:
        yield Gathered((tree.joined,))
