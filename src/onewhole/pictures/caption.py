"""What may be written beside a drawing: an amount. How it is worded belongs to languages and notations."""

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


class Count(Struct, frozen=True):
    """So many of a unit, to be written beside a drawing: 6 sixths, 3 strips."""

    count: int
    unit: Unit


class Groups(Struct, frozen=True):
    """So many equal parts, written beside a drawing as a factor: 33 ×; None where how many is asked for."""

    count: int | None


Caption = Quantity | Count
