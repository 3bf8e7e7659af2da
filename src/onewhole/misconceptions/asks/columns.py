"""Questions about subtraction in columns: where there are too few, and which place is traded from."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression


class WhichColumnIsShort(Struct, frozen=True):
    """In which column of the top number are there too few, and what could be traded?"""

    top: Quantity


class TradeToGetMore(Struct, frozen=True):
    """There are too few of a place to take ``need``: what could be traded?"""

    top: Quantity
    place: Unit
    need: int


class TenMoreFrom(Struct, frozen=True):
    """Ten more of a place are needed: where do they come from?"""

    top: Quantity
    place: Unit


class ZeroToTrade(Struct, frozen=True):
    """A zero stands in the place to trade from: where can one be got?"""

    top: Quantity
    place: Unit


class InThisColumn(Struct, frozen=True):
    """One column with blocks: what is there, what goes, and what is left?"""

    problem: Expression
    place: Unit


class OneAndTenMore(Struct, frozen=True):
    """One of a place was there and ten more came: how many are there?"""

    place: Unit


class WhereDidItGo(Struct, frozen=True):
    """One of a place was crossed off: where did it go?"""

    place: Unit


class NothingBelow(Struct, frozen=True):
    """Nothing stands below a place of the top number: how many are to be taken there?"""

    top: Quantity
    place: Unit


class AnyToTake(Struct, frozen=True):
    """What is each digit of the bottom number worth, and is there any of a place to take?"""

    second: Quantity
    place: Unit


class FrontDigit(Struct, frozen=True):
    """Where is the one at the front of the top number, in what was written?"""

    top: Quantity
    place: Unit
    wrote: Quantity


class TradedFor(Struct, frozen=True):
    """One of the large place is traded: how many of the small one are got?"""

    large: Unit
    small: Unit


class LeftAfterTrade(Struct, frozen=True):
    """One of a place of the top number is traded: how many of that place are left?"""

    top: Quantity
    place: Unit


#: Every question about columns.
ColumnAsk = (
    WhichColumnIsShort
    | TradeToGetMore
    | TenMoreFrom
    | ZeroToTrade
    | InThisColumn
    | OneAndTenMore
    | WhereDidItGo
    | NothingBelow
    | AnyToTake
    | FrontDigit
    | TradedFor
    | LeftAfterTrade
)
