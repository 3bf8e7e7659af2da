"""What becomes of a remainder: it stays, or it is shared too, as a fraction or as a decimal."""

from enum import StrEnum

from onewhole.number.ladder import Style, decimal, mixed
from onewhole.number.quantity import Quantity, usual
from onewhole.statements.expression import WithRemainder, plus, value
from onewhole.working.quotients.long_division import with_point
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.share_units import out_of_units
from onewhole.working.quotients.shared_ladder import places_needed
from onewhole.working.reasons.dividing import LeftSharedToo
from onewhole.working.reasons.taking import InAll


class RemainderForm(StrEnum):
    """What becomes of what is left over when whole numbers are divided: 21 r 3, 21 3/4 or 21.75.

    4.NBT.B.6 asks for quotients with remainders, 5.NF.B.3 for the fraction, 5.NBT.B.7 for decimals (CCSSM
    2010).
    """

    REMAINDER = "remainder"
    FRACTION = "fraction"
    DECIMAL = "decimal"


def remainder_shared(
    found: WithRemainder, wanted: RemainderForm, *, in_columns: bool = False
) -> QuotientState | None:
    """Share a remainder too, line by line; None where it stays, and where that gives no such number.

    A remainder of a measure or of money stays, and so does one whose decimal has more than three places.
    ``in_columns`` goes on behind the point as a long division does.

    >>> from onewhole.number.quantity import whole
    >>> remainder_shared(WithRemainder(whole(21), whole(3), whole(4)), RemainderForm.DECIMAL).found().counts
    (2, 1, 7, 5)
    """
    quotient, left, by = found.quotient, found.left, found.by
    if (
        by is None
        or quotient.ladder.style is not Style.PLACES
        or left.ladder.mark
        or left.kind is not by.kind
    ):
        return None
    match wanted:
        case RemainderForm.REMAINDER:
            return None
        case RemainderForm.FRACTION:
            return as_fraction(quotient, left, by)
        case RemainderForm.DECIMAL:
            after = places_needed(left, by.parts)
            if after is None:
                return None
            if in_columns:
                return with_point(found, after)
            left = left.on(decimal(len(left.counts), after))
            return out_of_units(QuotientState(left, by, done=(quotient,), counting=True))


def both_shared(found: WithRemainder) -> tuple[Quantity, ...]:
    """Return a quotient with its remainder shared too, as a fraction and as a decimal where there is one.

    >>> from onewhole.number.quantity import whole
    >>> [form.counts for form in both_shared(WithRemainder(whole(21), whole(3), whole(4)))]
    [(21, 3), (2, 1, 7, 5)]
    """
    shared = (remainder_shared(found, wanted) for wanted in (RemainderForm.FRACTION, RemainderForm.DECIMAL))
    results = [state.found() for state in shared if state]
    return tuple([one for one in results if isinstance(one, Quantity)])


def as_fraction(quotient: Quantity, left: Quantity, by: Quantity) -> QuotientState:
    """Share a remainder as a fraction, in two lines; it has the unit of the quotient.

    >>> from onewhole.number.quantity import whole
    >>> as_fraction(whole(3, "lb"), whole(2, "lb"), whole(7)).found().counts
    (3, 2)
    """
    fraction = Quantity(mixed(by.parts, quotient.ladder.mark), (None, left.parts))
    result = usual(fraction.ladder, value(plus(quotient, fraction)))
    state = QuotientState(left, by).say(plus(quotient, fraction), LeftSharedToo(left.parts, by.parts))
    return state.say(result, InAll(result)).ends(result)
