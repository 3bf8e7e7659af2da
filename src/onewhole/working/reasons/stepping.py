"""Several steps: which part of a problem is worked first, and why that one.

Source of the order: 5.OA.A.1 (brackets are worked first) and the note to 3.OA.D.8 (the usual order where no
brackets stand), CCSSM (2010).
"""

from enum import Enum, auto
from typing import TYPE_CHECKING

from msgspec import Struct

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Quotient, Sum, Times, WithRemainder

if TYPE_CHECKING:
    from onewhole.working.reason import Reason


class WhyFirst(Enum):
    """Why a part is worked before the others."""

    BRACKETS = auto()
    MULTIPLIED = auto()
    DIVIDED = auto()
    FROM_THE_LEFT = auto()
    ONLY_PART = auto()


#: One operation with two numbers.
OneStep = Sum | Times | Quotient


class StepDone(Struct, frozen=True):
    """A part is worked at once: 5 - 2 is 3."""

    why: WhyFirst
    part: OneStep
    result: Quantity | WithRemainder


class StepBegins(Struct, frozen=True):
    """A part is worked line by line; this is its first line, which follows ``because``."""

    why: WhyFirst
    part: OneStep
    because: "Reason"


class BarDivides(Struct, frozen=True):
    """The bar of a fraction divides what stands above it by what stands below it: ``divided``.

    Source: 5.NF.B.3 (a fraction as division), CCSSM (2010).
    """

    divided: Quotient


class TimesEachPart(Struct, frozen=True):
    """A number times a sum is that number times each part. Source: 3.OA.B.5, CCSSM (2010)."""

    times: Quantity


#: Every reason of several steps.
Stepping = StepDone | StepBegins | BarDivides | TimesEachPart
