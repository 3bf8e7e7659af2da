"""What may be written beside a drawing: an amount. How it is worded belongs to languages and notations."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit


@dataclass(frozen=True, slots=True)
class Count:
    """So many of a unit, to be written beside a drawing: 6 sixths, 3 strips."""

    count: int
    unit: Unit


Caption = Quantity | Count
