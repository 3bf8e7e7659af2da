"""The area model: a rectangle with the two numbers as sides, cut where they are split or into equal parts."""

from collections.abc import Iterator
from fractions import Fraction
from functools import reduce
from itertools import accumulate, pairwise
from math import ceil

from msgspec import Struct

from onewhole.number.ladder import Style, joined
from onewhole.number.quantity import Quantity, usual
from onewhole.number.unit import Kind
from onewhole.pictures.description import Description, PartProduct, SidesOf
from onewhole.pictures.limits import LEAST_PART, NotDrawnError
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words
from onewhole.statements.expression import Expression
from onewhole.statements.statement import Question
from onewhole.working.products.made import made
from onewhole.working.products.partial_products import sides
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.work_product import factors
from onewhole.working.reasons.multiplying import (
    KnownProduct,
    OneFractionEach,
    PartsMultiplied,
    PlacesMultiplied,
    SplitToMultiply,
    TopsAndBottoms,
    UnitTimes,
)
from onewhole.working.steps.work_steps import times_sum
from onewhole.working.working import Working

#: The rectangle at most, the room for the numbers beside it, and the height of digits, in millimetres.
WIDE, TALL, BESIDE, ABOVE, DIGITS = Fraction(92), Fraction(58), Fraction(22), Fraction(14), Fraction(6)
#: One side of a whole or of a one at most, and the room behind and below the rectangle.
ONE_AT_MOST, END = Fraction(36), 4
#: The room that a digit takes across, and what a number takes down.
ROOM_DIGIT, ROOM_DOWN = 5, 9
#: A narrower cut is not seen. As many lines as can be counted. Common practice, no source.
MOST_LINES = 24


class TooNarrowError(NotDrawnError):
    """A part of a side would be too narrow to be seen: the 4 of 386 x 24, where all is in proportion."""

    def __init__(self) -> None:
        """Say so."""
        msg = "one part is too small to be seen beside the others"
        super().__init__(msg, remedy="Choose another picture, or none.")


def area(working: Working) -> Picture:
    """Draw a product as a rectangle in true proportion, a scene for every line.

    Fractions lie in their whole, which is dotted; so many small ones are drawn one by one. Raises
    NotDrawnError for anything but a product, and for parts too narrow to be seen.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.products.partial_products import PARTIAL_PRODUCTS
    >>> from onewhole.working.work import work
    >>> drawn = area(work(read_statement("24 x 36"), PARTIAL_PRODUCTS)).scenes[-1]
    >>> [(piece.shape.width / piece.shape.height) for piece in drawn.pieces if piece.name == "product"]
    [Fraction(3, 2)]
    """
    asked = working.statement.asked if isinstance(working.statement, Question) else None
    product = factors(asked) if asked is not None else None
    if asked is not None and (drawing := _of_sum(asked)) is not None:
        last = len(working.lines) - 1
        scenes = tuple(drawing.scene(cut=True, found=at == last) for at in range(last + 1))
        return Picture(PictureKind.AREA, scenes)
    if product is None:
        msg = "only products are drawn as an area"
        raise NotDrawnError(msg, remedy="Choose another picture, or none.")
    drawing = _AreaDrawing.of(product, working.strategy)
    return Picture(PictureKind.AREA, tuple(_scenes(drawing, working)))


def too_narrow(working: Working) -> bool:
    """Say whether a product has no area model because a part of a side would be too narrow to be seen.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.products.partial_products import PARTIAL_PRODUCTS
    >>> from onewhole.working.work import work
    >>> [too_narrow(work(read_statement(asked), PARTIAL_PRODUCTS)) for asked in ("386 x 24", "120 x 24")]
    [True, False]
    """
    try:
        area(working)
    except TooNarrowError:
        return True
    except NotDrawnError:
        return False
    return False


def _scenes(drawing: "_AreaDrawing", working: Working) -> Iterator[Scene]:
    cut = found = False
    for line in working.lines:
        cut = cut or isinstance(line.because, SplitToMultiply | OneFractionEach)
        found = found or isinstance(
            line.because, PartsMultiplied | TopsAndBottoms | UnitTimes | KnownProduct | PlacesMultiplied
        )
        yield drawing.scene(cut=cut or found, found=found)


class _AreaDrawing(Struct, frozen=True):
    """A rectangle laid out: its parts across and down, and how many millimetres a one is long.

    ``pieces`` says into how many parts each one is cut across and down; (0, 0) where it is not cut.
    """

    product: ProductState
    across: tuple[Quantity, ...]
    down: tuple[Quantity, ...]
    one: Fraction
    pieces: tuple[int, int]

    @classmethod
    def of(cls, product: ProductState, way: str) -> "_AreaDrawing":
        """Lay a product out; the left number stands at the side, the right one above.

        A longer left number lies across where a part of it would be too narrow down the side: 120 x 24.
        """
        try:
            return cls._laid(product, way)
        except TooNarrowError:
            if not product.left.plain or product.left.value <= product.right.value:
                raise
            return cls._laid(ProductState(product.right, product.left), way)

    @classmethod
    def _laid(cls, product: ProductState, way: str) -> "_AreaDrawing":
        """Lay a product out as it stands."""
        split = way == "partial_products"
        down, across = sides(product) if split else ((product.left,), (product.right,))
        wide, tall = _span(product.right), _span(product.left)
        if not wide or not tall:
            msg = "nothing is drawn of no area"
            raise NotDrawnError(msg, remedy="Choose another picture, or none.")
        one = min(WIDE / wide, TALL / tall, ONE_AT_MOST)
        pieces = (
            (0, 0) if split and not _fraction(product) else (_pieces(product.right), _pieces(product.left))
        )
        if max(wide * pieces[0], tall * pieces[1]) > MOST_LINES:
            pieces = (0, 0)
        narrow = [one * part.value for part in (*across, *down)]
        if pieces[0]:
            narrow += [one / pieces[0], one / pieces[1]]
        if min(narrow) < LEAST_PART:
            raise TooNarrowError
        return cls(product, across, down, one, pieces)

    def scene(self, *, cut: bool, found: bool) -> Scene:
        """Return the rectangle with its cuts, and with its products."""
        one = self.one
        left, right = self.product.left, self.product.right
        wide, tall = one * _span(right), one * _span(left)
        whole = Box(BESIDE, ABOVE, wide, tall)
        shown = Box(BESIDE, ABOVE, one * right.value, one * left.value)
        pieces = [Piece("product", shown, Look.FILLED if found else Look.PLAIN)]
        if (shown.width, shown.height) != (wide, tall):
            pieces.insert(0, Piece("wholes", whole, Look.DOTTED))
        if cut:
            pieces += self._cuts(whole)
        pieces += self._sides(cut=cut)
        beyond, below = self._outside()
        if found:
            pieces += self._products(beyond, below)
        return Scene(
            BESIDE + max(wide + beyond, _room(right)) + END,
            ABOVE + tall + max(below, Fraction(END)),
            tuple(pieces),
            tuple(self._told(found=found)),
        )

    def _cuts(self, whole: Box) -> Iterator[Piece]:
        one = self.one
        foot, end = whole.y + whole.height, whole.x + whole.width
        across, down = self.pieces
        for at in range(1, int(whole.width / one * across)) if across else ():
            x = whole.x + one * at / across
            yield Piece(f"column/{at}", Stroke(x, whole.y, x, foot))
        for at in range(1, int(whole.height / one * down)) if down else ():
            y = whole.y + one * at / down
            yield Piece(f"row/{at}", Stroke(whole.x, y, end, y))
        if across:
            return
        for at, x in enumerate(_starts(self.across, one)[1:-1]):
            yield Piece(f"column/{at}", Stroke(whole.x + x, whole.y, whole.x + x, foot))
        for at, y in enumerate(_starts(self.down, one)[1:-1]):
            yield Piece(f"row/{at}", Stroke(whole.x, whole.y + y, end, whole.y + y))

    def _sides(self, *, cut: bool) -> Iterator[Piece]:
        one = self.one
        across = self.across if cut else (self.product.right,)
        down = self.down if cut else (self.product.left,)
        for at, (part, (start, end)) in enumerate(zip(across, pairwise(_starts(across, one)), strict=True)):
            yield Piece(f"above/{at}", Words(BESIDE + (start + end) / 2, ABOVE / 2, part, DIGITS))
        for at, (part, (start, end)) in enumerate(zip(down, pairwise(_starts(down, one)), strict=True)):
            yield Piece(f"beside/{at}", Words(BESIDE / 2, ABOVE + (start + end) / 2, part, DIGITS))

    def _products(self, beyond: Fraction, below: Fraction) -> Iterator[Piece]:
        """Write each product in its part; beside the last column or below the last row for want of room."""
        if self.pieces[0]:
            return
        rows, columns = _starts(self.down, self.one), _starts(self.across, self.one)
        for row, (upper, lower) in enumerate(pairwise(rows)):
            for column, (start, end) in enumerate(pairwise(columns)):
                number = made(self.down[row], self.across[column])
                x, y = BESIDE + (start + end) / 2, ABOVE + (upper + lower) / 2
                wide, high = end - start >= _room(number), lower - upper >= ROOM_DOWN
                if beyond and end == columns[-1]:
                    x, wide, high = BESIDE + end + beyond / 2, True, True
                elif below and lower == rows[-1]:
                    y, high = ABOVE + lower + below / 2, True
                if wide and high:
                    yield Piece(f"part/{row}/{column}", Words(x, y, number, DIGITS))

    def _outside(self) -> tuple[Fraction, Fraction]:
        """Return the room right of the rectangle for products of a narrow column, and below it for a low row.

        0 where the last column or row is wide or high enough.
        """
        if self.pieces[0]:
            return Fraction(0), Fraction(0)
        rooms = [_room(made(part, self.across[-1])) for part in self.down]
        places = [(upper + lower) / 2 for upper, lower in pairwise(_starts(self.down, self.one))]
        apart = all(other - one >= ROOM_DOWN for one, other in pairwise(places))
        narrow = self.one * self.across[-1].value < max(rooms) and apart
        low = self.one * self.down[-1].value < ROOM_DOWN
        return max(rooms) if narrow else Fraction(0), Fraction(ROOM_DOWN if low else 0)

    def _told(self, *, found: bool) -> Iterator[Description]:
        yield SidesOf(self.product.left, self.product.right)
        if found:
            for one in self.down:
                for other in self.across:
                    yield PartProduct(one, other, made(one, other))


def of_sum(asked: Expression) -> tuple[Quantity, tuple[Quantity, ...]] | None:
    """Return a number and the parts of the sum that it is multiplied by: 3 x (20 + 7); None for all else.

    >>> from onewhole.statements.reading import read_expression
    >>> times, parts = of_sum(read_expression("3 x (20 + 7)"))
    >>> times.parts, [part.parts for part in parts]
    (3, [20, 7])
    """
    if (found := times_sum(asked)) is None:
        return None
    times, terms = found
    parts = tuple([term.part for term in terms if isinstance(term.part, Quantity) and not term.taken])
    return (times, parts) if len(parts) == len(terms) else None


def _of_sum(asked: Expression) -> _AreaDrawing | None:
    """Lay a number times a sum out, cut where the parts of the sum meet."""
    if (found := of_sum(asked)) is None:
        return None
    times, parts = found
    total = usual(
        reduce(joined, [part.ladder for part in parts]), sum((part.value for part in parts), Fraction(0))
    )
    wide, tall = total.value, times.value
    if not times.plain or not tall or total.kind is not Kind.NUMBER or total.ladder.mark:
        return None
    one = min(WIDE / wide, TALL / tall, ONE_AT_MOST)
    if min(one * tall, *[one * part.value for part in parts]) < LEAST_PART:
        raise TooNarrowError
    return _AreaDrawing(ProductState(times, total), parts, (times,), one, (0, 0))


def _starts(parts: tuple[Quantity, ...], one: Fraction) -> tuple[Fraction, ...]:
    return tuple(accumulate([one * part.value for part in parts], initial=Fraction(0)))


def _span(number: Quantity) -> int:
    """Return how many ones or wholes a number reaches into."""
    return ceil(number.value)


def _fraction(product: ProductState) -> bool:
    return Style.MIXED in {product.left.ladder.style, product.right.ladder.style}


def _pieces(number: Quantity) -> int:
    """Return into how many parts each one is cut along a side."""
    return (
        number.ladder.denominator
        if number.ladder.style is Style.MIXED
        else (1 / min(number.ladder.finest, Fraction(1))).numerator
    )


def _room(number: Quantity) -> Fraction:
    """Return how much room a number takes across."""
    if number.ladder.style is Style.MIXED:
        return Fraction(
            ROOM_DIGIT * (len(str(number.counts[0] or "")) + len(str(number.ladder.denominator)) + 1)
        )
    return Fraction(ROOM_DIGIT * (len(number.counts) + 1))
