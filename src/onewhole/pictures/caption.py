"""What may be written beside a drawing: an amount. How it is worded belongs to languages and notations."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class Count:
    """So many of a unit, to be written beside a drawing: 6 sixths, 3 strips."""

    count: int
    unit: Unit


@dataclass(frozen=True, slots=True)
class Groups:
    """So many equal parts, written beside a drawing as a factor: 33 ×; None where how many is asked for."""

    count: int | None


Caption = Quantity | Count
