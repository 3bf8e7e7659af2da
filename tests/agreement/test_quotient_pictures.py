"""Pictures of quotients counted by looking: every scene holds all that was there, and what each share has.

The space is that of `test_quotients`; a disc or strip counts what the number above its column says, a jump
is as long as it is drawn, and a rectangle as large.
"""

from collections import Counter
from fractions import Fraction
from itertools import chain

from msgspec.structs import replace

from onewhole.number.quantity import Quantity, whole
from onewhole.pictures.choosing import chosen, picture
from onewhole.pictures.columns import SQUARE
from onewhole.pictures.labels import across
from onewhole.pictures.limits import BOARD, PAGE
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Hop, Look, Piece, Scene, Stroke, Wedge, Words
from onewhole.pictures.shares_state import GIVEN_OUT
from onewhole.statements.expression import Quotient
from onewhole.statements.statement import Question
from onewhole.working.questions import suiting
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.agreement.test_quotients import SPACES, Pair
from tests.kit.drawn import inside
from tests.kit.exact import amount
from tests.kit.how_much import sample

EVERY = sample(9, 9, 1)


def test_every_picture_of_a_quotient_adds_up() -> None:
    """On a page and on a board: what is drawn, counted anew, is what the problem says."""
    kinds: Counter[PictureKind | None] = Counter()
    for left, right in list(chain.from_iterable(space() for space in SPACES.values()))[::EVERY]:
        for way in suiting(Question(Quotient(left, right))):
            working = work(Question(Quotient(left, right)), way)
            for paper in (PAGE, BOARD):
                drawn = picture(working, None, paper)
                kinds[drawn.kind if drawn else None] += 1
                if drawn is not None:
                    assert len(drawn.scenes) == len(working.lines)
                    _counted(drawn, working, (left, right))
                    _counted(replace(drawn, scenes=(drawn.telling,)), working, (left, right))
    assert set(kinds) >= {PictureKind.SHARES, PictureKind.AREA, PictureKind.LINE}
    assert kinds[None] < sum(kinds.values()) / 2


def test_small_numbers_are_all_pictured() -> None:
    """Up to 144 by up to 12 every way that is offered first has its picture."""
    for by in range(1, 13):
        for number in range(1, 12 * by + 1, sample(5, 5, 1)):
            working = work(asked := Question(Quotient(whole(number), whole(by))), suiting(asked)[0])
            assert chosen(working) is not None, asked


def _counted(drawn: Picture, working: Working, asked: Pair) -> None:
    for scene in drawn.scenes:
        match drawn.kind:
            case PictureKind.SHARES:
                assert _inside(scene)
                _shares(scene, working, asked)
            case PictureKind.AREA:
                _rectangle(scene, asked)
            case PictureKind.LINE:
                _jumps(scene, asked)
            case PictureKind.COLUMNS:
                _long_division(scene, asked)
            case _:
                raise AssertionError(drawn.kind)


def _shares(scene: Scene, working: Working, asked: Pair) -> None:
    """Add up what lies above and in each row; all rows are alike and no two units touch one another."""
    assert working.strategy in GIVEN_OUT
    left, right = asked
    rows = [_box(piece) for piece in scene.pieces if piece.name.startswith("share/")]
    assert len(rows) == right.parts
    worths = [piece.shape for piece in scene.pieces if piece.name.startswith("worth/")]
    lines = sorted(x.x for x in _strokes(scene, "between/"))
    there = [Fraction(0)] * (len(rows) + 1)
    for piece in scene.pieces:
        if piece.look is not Look.FILLED:
            continue
        x, y = _middle(piece)
        caption = worths[sum(line < x for line in lines)]
        assert isinstance(caption, Words)
        assert isinstance(caption.caption, Quantity)
        row = next((at for at, box in enumerate(rows) if box.y < y < box.y + box.height), len(rows))
        there[row] += amount(caption.caption)
    assert len(set(there[: len(rows)])) == 1
    assert sum(there) == amount(left)
    numbers = [piece.shape for piece in scene.pieces if piece.name.startswith("has/")]
    captions = [one.caption for one in numbers if isinstance(one, Words)]
    assert {amount(told) for told in captions if isinstance(told, Quantity)} <= {there[0]}


def _rectangle(scene: Scene, asked: Pair) -> None:
    """Every part is as wide as the number above it, and as large as that many times the divisor."""
    left, right = asked
    (all_of_it,) = [_box(piece) for piece in scene.pieces if piece.name == "all"]
    assert all_of_it.width / all_of_it.height == amount(left) / amount(right) / amount(right)
    above = {
        piece.name.split("/")[1]: piece.shape for piece in scene.pieces if piece.name.startswith("above/")
    }
    for piece in scene.pieces:
        if piece.name.startswith("part/"):
            box, told = _box(piece), above[piece.name.split("/")[1]]
            assert isinstance(told, Words)
            assert isinstance(told.caption, Quantity)
            assert box.width / box.height == amount(told.caption) / amount(right)


def _jumps(scene: Scene, asked: Pair) -> None:
    """All jumps are of whole groups, measured by the numbers under the line, one behind the other from 0."""
    _, right = asked
    ticks = [piece.shape for piece in scene.pieces if piece.name.startswith("whole/")]
    words = [one for one in ticks if isinstance(one, Words)]
    places = [(one.x, amount(one.caption)) for one in words if isinstance(one.caption, Quantity)]
    (start, low), (end, high) = min(places), max(places)
    one = (end - start) / (high - low)
    hops = [piece.shape for piece in scene.pieces if isinstance(piece.shape, Hop)]
    here = start - low * one
    for hop in hops:
        assert hop.x == here
        assert ((hop.to_x - hop.x) / one / amount(right)).denominator == 1
        here = hop.to_x


def _long_division(scene: Scene, asked: Pair) -> None:
    """The digits above, each by its place on the paper, times the divisor are all that is taken away."""
    written = [piece for piece in scene.pieces if isinstance(piece.shape, Words)]
    ones = max(one.shape.x for one in written if one.name.startswith("number/"))

    def worth(row: str) -> Fraction:
        there = [one.shape for one in written if one.name.startswith(row) and isinstance(one.shape, Words)]
        digits = [(one.caption, (ones - one.x) / SQUARE) for one in there]
        return sum(
            (n.value * Fraction(10) ** int(at) for n, at in digits if isinstance(n, Quantity)), Fraction(0)
        )

    assert worth("quotient/") * asked[1].parts == worth("taken/")


def _inside(scene: Scene) -> bool:
    """Say whether all that is drawn lies on the paper, and every number as wide as it is written."""
    drawn = tuple([piece for piece in scene.pieces if not isinstance(piece.shape, Words)])
    words = [piece.shape for piece in scene.pieces if isinstance(piece.shape, Words)]
    return inside(replace(scene, pieces=drawn)) and all(
        one.x - across(one.caption) / 2 >= 0 and one.x + across(one.caption) / 2 <= scene.width
        for one in words
        if isinstance(one.caption, Quantity)
    )


def _box(piece: Piece) -> Box:
    assert isinstance(piece.shape, Box)
    return piece.shape


def _strokes(scene: Scene, name: str) -> list[Stroke]:
    return [
        piece.shape
        for piece in scene.pieces
        if isinstance(piece.shape, Stroke) and piece.name.startswith(name)
    ]


def _middle(piece: Piece) -> tuple[Fraction, Fraction]:
    match piece.shape:
        case Box(x, y, width, height):
            return x + width / 2, y + height / 2
        case Wedge(x=x, y=y):
            return x, y
        case _:
            raise AssertionError(piece)
