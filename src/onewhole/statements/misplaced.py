"""What does not belong into a problem: a clock time by itself, and dollars beside cents."""

from typing import assert_never

from onewhole.number.quantity import Quantity
from onewhole.number.unit import CENT, DOLLAR, Kind, KindError
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.clock_sides import between_times, has_clock, time_asked
from onewhole.statements.expression import Sum, quantities
from onewhole.statements.rounding import Rounding
from onewhole.statements.sides import sides
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Relation,
    Statement,
)

#: Customary and metric kinds. That grades 3 to 5 stay within one system: 4.MD.A.1, 5.MD.A.1 (CCSSM 2010).
_SYSTEMS = (
    (Kind.LENGTH, Kind.METRIC_LENGTH),
    (Kind.WEIGHT, Kind.MASS),
    (Kind.VOLUME, Kind.METRIC_VOLUME),
)


def check_clock(found: Statement) -> None:
    """Refuse a time of day anywhere but with "to", or with a time that is added or taken away.

    Raises KindError.
    """
    match found:
        case Question(asked):
            alone = not between_times(asked) and time_asked(asked) is None
            misplaced = has_clock(asked) and alone
        case Comparison(left, right, sign):
            worked = isinstance(left, Sum) and sign is Relation.EQUAL
            misplaced = not worked and (has_clock(left) or has_clock(right))
        case MissingNumber() | AnotherName() | Rounding() | Ordering() | AskedInWords():
            misplaced = any(map(has_clock, sides(found)))
        case _:
            assert_never(found)
    if misplaced:
        msg = "a clock time stands here by itself"
        raise KindError(msg, remedy="Write 9:45 to 11:20, 9:45 + 1 h 35 min, or 11:20 - 45 min.")


def check_units(found: Statement) -> None:
    """Refuse units that do not go together: $ and ¢, 1/2 h and 15 min, feet and meters.

    Source of $ or ¢: 2.MD.C.8, CCSSM (2010); that no problem has both is our own.

    Raises KindError.
    """
    numbers = [number for side in sides(found) for number in quantities(side)]
    marks = {number.ladder.mark for number in numbers}
    if {DOLLAR, CENT} <= marks:
        msg = "$ and ¢ do not stand in one problem"
        raise KindError(msg, remedy="Write every amount with $, such as $0.75 for 75¢.")
    kinds = {number.kind for number in numbers}
    if Kind.NUMBER in kinds and len(kinds) > 1 and any(_broken(number) for number in numbers):
        msg = "a fraction or a decimal of one unit stands beside another unit"
        raise KindError(msg, remedy="Write both in one unit: 30 min + 15 min for 1/2 h + 15 min.")
    if any({customary, metric} <= kinds for customary, metric in _SYSTEMS):
        msg = "customary and metric units do not stand in one problem"
        raise KindError(msg, remedy="Use feet and inches, or meters and centimeters, but not both.")


def _broken(number: Quantity) -> bool:
    """Say whether a number is a fraction or a decimal of a unit: 1/2 h, 2.5 m."""
    return number.kind is Kind.NUMBER and number.ladder.mark not in {"", DOLLAR}
