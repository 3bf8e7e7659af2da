"""Pictures of many workings, and what is counted on them."""

from collections.abc import Callable, Iterator
from fractions import Fraction

from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.picture import Picture
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Wedge, Words
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.questions import DoesNotSuitError
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.strategy import Strategy
from onewhole.working.work import work
from onewhole.working.working import Working

DIFFERENCES = (
    "7 2/6 - 3 5/6",
    "4 - 1 3/8",
    "4 5/8 - 1 3/8",
    "3 1/2 - 1 3/4",
    "3 3/4 - 1 1/2",
    "5 1/12 - 2 7/12",
    "12 1/3 - 11 2/3",
    "9 - 4",
    "1 5/3 - 2 1/3",
    "5/8 - 2/8",
    "5.2 - 2.7",
    "3.45 - 1.27",
    "5.2 - 2.75",
    "5 ft 2 in - 2 ft 7 in",
)
SUMS = (
    "2 4/5 + 1 3/5",
    "3/8 + 2/8",
    "1/2 + 1/3 + 1/4",
    "1 1/2 + 2 3/4",
    "4 + 2 1/6",
    "4.7 + 3.6",
    "2.45 + 1.75",
    "3 ft 8 in + 1 ft 9 in",
    "1 2/6 + 2 5/6 - 1 3/6",
    "0 0/3 + 2 2/3 - 1",
    "8 10/10 + 1 6/10 - 1",
)
OTHERS = (
    "2/3 ? 3/4",
    "1 2/3 ? 1 3/4",
    "2.3 ? 2.27",
    "3/4 = ?/12",
    "8/12 = ?/3",
    "7 2/6 = 6 ?/6",
    "? + 1 2/6 = 3 1/6",
)
PROBLEMS = (*DIFFERENCES, *SUMS, *OTHERS)


def worked(problem: str, strategy: Strategy) -> Working | None:
    """Work a problem, or return None where the strategy does not suit it."""
    try:
        return work(read_statement(problem), strategy)
    except DoesNotSuitError:
        return None


def workings(problems: tuple[str, ...] = PROBLEMS) -> Iterator[Working]:
    """Every problem by every strategy that suits it; what is no question by the first."""
    for problem in problems:
        for strategy in STRATEGIES:
            working = worked(problem, strategy)
            if working is not None:
                yield working
                if not isinstance(working.statement, Question):
                    break


def pictures(draw: Callable[[Working], Picture]) -> list[tuple[Working, Picture]]:
    """Every working of the walk that can be drawn so, with its picture."""
    found = []
    for working in workings():
        try:
            found.append((working, draw(working)))
        except NotDrawnError:
            continue
    return found


def size(piece: Piece) -> Fraction | None:
    """Return the area of a whole or part (of a disc in turns times radius squared), None for other shapes."""
    match piece.shape:
        case Box(width=width, height=height):
            return width * height
        case Wedge(radius=radius, sweep=sweep):
            return sweep * radius * radius
        case _:
            return None


def amount(scene: Scene, *looks: Look) -> Fraction:
    """Return how many wholes the pieces of some looks are, by their size against the largest piece."""
    sizes = [size(piece) for piece in scene.pieces if piece.look in looks]
    return sum((found for found in sizes if found), Fraction(0))


def inside(scene: Scene) -> bool:
    """Say whether every point of every piece lies on the paper."""
    return all(
        0 <= left <= right <= scene.width and 0 <= top <= foot <= scene.height
        for left, top, right, foot in (_edges(piece) for piece in scene.pieces)
    )


def _edges(piece: Piece) -> tuple[Fraction, Fraction, Fraction, Fraction]:
    match piece.shape:
        case Box(x, y, width, height):
            return x, y, x + width, y + height
        case Wedge(x=x, y=y, radius=radius):
            return x - radius, y - radius, x + radius, y + radius
        case Stroke(x, y, to_x, to_y):
            return min(x, to_x), min(y, to_y), max(x, to_x), max(y, to_y)
        case Words(x=x, y=y, size=tall):
            return x - 3 * tall, y - tall / 2, x + 3 * tall, y + tall / 2
        case _:
            msg = f"no such piece is drawn here: {piece.name}"
            raise TypeError(msg)
