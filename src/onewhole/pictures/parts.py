"""A whole and its parts, one of them missing: what a problem with a blank says about them."""

from fractions import Fraction

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression, Sum, value, without_brackets
from onewhole.statements.gap import HOLE, type_hole
from onewhole.statements.statement import MissingNumber, Question, Statement, gap_amount
from onewhole.working.products.equal_jumps import so_many
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.share_then_times import SHARE_THEN_TIMES, fraction_first
from onewhole.working.products.work_product import factors
from onewhole.working.steps.work_steps import has_steps

#: As many numbers can be read under a bar. Common practice, no source.
MOST_SHARES = 7


class Share(Struct, frozen=True):
    """The whole or one of its parts: as the problem writes it, a blank as a hole, and its amount.

    It is cut into so many equal ``shares`` where the problem says so.
    """

    written: Quantity | type_hole
    amount: Fraction
    shares: int = 1


class PartWhole(Struct, frozen=True):
    """A whole and its parts in the order of the problem; exactly one of all these is the blank.

    Raises ValueError when the parts together are not the whole.
    """

    whole: Share
    parts: tuple[Share, ...]

    def __post_init__(self) -> None:
        """Refuse parts that do not make the whole."""
        if sum(part.amount for part in self.parts) != self.whole.amount:
            msg = "the parts together are the whole"
            raise ValueError(msg)

    @property
    def smallest(self) -> Fraction:
        """Return how much of the whole the smallest part is; 0 where the whole is nothing."""
        least = min(part.amount for part in self.parts)
        return least / self.whole.amount if least else least


def part_whole(statement: Statement) -> PartWhole | None:
    """Return the whole and the parts of a problem with a number missing; None where it does not say both.

    What something is taken from is the whole: 9 - ? = 3 1/2 and ? - 2 = 3. Where numbers are added, their sum
    is: 3 + ? = 5 1/4. What is left may be several numbers: 7 - ? = 2 + 3.

    >>> from onewhole.statements.reading import read_statement
    >>> found = part_whole(read_statement("9 - ? = 3 1/2"))
    >>> found.whole.amount, [part.amount for part in found.parts]
    (Fraction(9, 1), [Fraction(11, 2), Fraction(7, 2)])
    """
    if isinstance(statement, Question):
        return _in_steps(statement.asked) or _part_of(statement.asked)
    if not isinstance(statement, MissingNumber) or not statement.gap.alone:
        return None
    rest, terms = _share(statement.rest), _terms(statement)
    if terms is None or len(terms) == 1:
        return None
    more = _more(statement.rest) if rest is None else ()
    added, taken = ([share for share, gone in terms if gone is wanted] for wanted in (False, True))
    if not taken:
        return None if rest is None else PartWhole(rest, tuple(added))
    left = (rest,) if rest else more
    return PartWhole(added[0], (*taken, *left)) if len(added) == 1 and left else None


def _in_steps(asked: Expression) -> PartWhole | None:
    """Return what is added, or taken from one number, where some of it is taken several times: 2 + 3 x 4.

    Each number is a part as often as it is taken; what the whole comes to, or what is left, is the blank.
    """
    if not isinstance(asked, Sum) or not has_steps(asked):
        return None
    found = [(_each(term.part), term.taken) for term in asked.terms]
    if not all(parts for parts, _ in found) or value(asked) <= 0:
        return None
    added, taken = (
        [part for parts, gone in found if gone is wanted for part in parts] for wanted in (False, True)
    )
    if len(added) + len(taken) > MOST_SHARES:
        return None
    if not taken:
        return PartWhole(Share(HOLE, value(asked)), tuple(added))
    return PartWhole(added[0], (*taken, Share(HOLE, value(asked)))) if len(added) == 1 else None


def _part_of(asked: Expression) -> PartWhole | None:
    """Return an amount and the part of it that is asked for, each cut into its equal shares: 3/4 of 2 ft.

    Of 1 1/2 x 2 ft the amount is a part, as often as it is taken whole, and what is left of it another.
    """
    product = factors(asked)
    if product is None or SHARE_THEN_TIMES.unsuited(product) is not None:
        return None
    product = fraction_first(product)
    taken, shares = product.left.parts, product.left.ladder.denominator
    amount = product.right.value
    if not 0 < taken < shares:
        return _taken_whole(product, *divmod(taken, shares))
    rest = shares - taken
    parts = (
        Share(HOLE, amount * taken / shares, taken),
        Share(_some(product, rest), amount * rest / shares, rest),
    )
    return PartWhole(Share(product.right, amount, shares), parts)


def _taken_whole(product: ProductState, times: int, rest: int) -> PartWhole | None:
    """Return an amount as often as it is taken whole, and a part of it; their sum is asked for."""
    shares, amount = product.left.ladder.denominator, product.right.value
    if not times or not rest or times >= MOST_SHARES:
        return None
    parts = [Share(product.right, amount)] * times
    parts.append(Share(_some(product, rest), amount * rest / shares))
    return PartWhole(Share(HOLE, sum((part.amount for part in parts), Fraction(0))), tuple(parts))


def _some(product: ProductState, shares: int) -> Quantity:
    """Return so many equal shares of an amount."""
    taken = Quantity(product.left.ladder, (None, shares))
    return SHARE_THEN_TIMES.run(ProductState(taken, product.right)).found()


def _each(part: Expression) -> tuple[Share, ...]:
    """Return a number as often as it is taken; nothing where that is too often, or it is to be worked."""
    bare = without_brackets(part)
    if isinstance(bare, Sum):
        inner = [_each(term.part) for term in bare.terms if not term.taken]
        every = len(inner) == len(bare.terms) and all(inner)
        return tuple([share for shares in inner for share in shares]) if every else ()
    numbers = (bare,) if isinstance(bare, Quantity) else so_many(bare)
    return tuple([Share(number, number.value) for number in numbers if number.value])


def _more(rest: Expression) -> tuple[Share, ...]:
    """Return the numbers that are added on the other side: 7 - ? = 2 + 3."""
    terms = rest.terms if isinstance(rest, Sum) else ()
    found = tuple(_share(term.part) for term in terms if not term.taken)
    return tuple(one for one in found if one) if len(found) == len(terms) and all(found) else ()


def _share(written: object) -> Share | None:
    return Share(written, written.value) if isinstance(written, Quantity) else None


def _terms(asked: MissingNumber) -> list[tuple[Share, bool]] | None:
    """Return what is added or taken on the side of the blank, in order; None where a term is no number."""
    found: list[tuple[Share, bool]] = []
    for part, taken in asked.beside:
        share = _share(part)
        if share is None:
            return None
        found.append((share, taken))
    found.insert(asked.before, (Share(HOLE, gap_amount(asked)), asked.gap_taken))
    return found
