"""What slips when numbers are listed, and how an answer with a remainder is written."""

from fractions import Fraction
from random import Random

from onewhole.misconceptions.attempt import Outcome
from onewhole.number.quantity import whole
from onewhole.statements.expression import WithRemainder
from onewhole.statements.listing import Listing
from onewhole.statements.statement import NumberRow
from onewhole.working.quotients.remainder_shared import RemainderForm, both_shared, remainder_shared


def list_slipped(asked: Listing, meant: NumberRow, at: int, chance: Random) -> NumberRow:
    """Return a list in which a fact is off: line ``at`` of the working, counted from 1, is where it happens.

    Of a pair of factors either both numbers are missed, or the second is one off. Who counts on goes on from
    the wrong number. Where another list was meant one of its numbers is missed.

    >>> from onewhole.statements.listing import ListSort
    >>> asked = Listing(ListSort.MULTIPLES, whole(7), whole(30))
    >>> meant = NumberRow(tuple(map(whole, asked.found)))
    >>> [one.parts for one in list_slipped(asked, meant, 1, Random(2)).parts]
    [7, 14, 22, 29]
    """
    numbers = [one.parts for one in meant.parts]
    if tuple(numbers) != asked.found:
        del numbers[chance.randrange(len(numbers))]
    elif asked.most is not None:
        numbers = _counted_on(asked.number.parts, asked.most.parts, chance)
    else:
        first, second = asked.pairs[min(at, len(asked.pairs)) - 1]
        numbers = [one for one in numbers if one not in {first, second}]
        if chance.random() < _WRITTEN_OFF:
            numbers = sorted({*numbers, first, second + chance.choice((-1, 1))} - {0})
    return NumberRow(tuple(map(whole, numbers or [1])))


#: How often a pair of factors that is not right is written with a fact one off, and not missed; our
#: assumption.
_WRITTEN_OFF = 0.5


def _counted_on(step: int, most: int, chance: Random) -> list[int]:
    """Count on with one step that is one off."""
    found, number, off = [step], step, chance.randrange(1, max(2, most // step))
    while number <= most:
        number += step + (chance.choice((-1, 1)) if len(found) == off else 0)
        found.append(number)
    return found[:-1]


def any_list(asked: Listing, chance: Random) -> NumberRow:
    """Return a list of the usual length that nothing leads to."""
    end = asked.most.parts if asked.most else asked.number.parts
    size = min(len(asked.found), end)
    return NumberRow(tuple(map(whole, sorted(chance.sample(range(1, end + 1), size)))))


def with_remainder(amount: Fraction, like: WithRemainder) -> Outcome:
    """Write another amount as a number and a remainder of the same divisor; without one where none is left.

    >>> with_remainder(Fraction(23, 4), WithRemainder(whole(21), whole(3), whole(4))).left.parts
    3
    """
    assert like.by is not None
    by = like.by.parts
    parts = int(amount * by)
    return WithRemainder(whole(parts // by), whole(parts % by), like.by) if parts % by else whole(parts // by)


def as_the_class_writes(wrote: Outcome, form: RemainderForm | None) -> Outcome:
    """Write a remainder as a class does: kept, as a fraction, or as a decimal where there is a short one."""
    if not isinstance(wrote, WithRemainder) or form is None or wrote.by is None:
        return wrote
    if wrote.left.parts >= wrote.by.parts:
        return wrote
    shared = remainder_shared(wrote, form)
    return shared.found() if shared else wrote


def other_forms(wrote: Outcome) -> tuple[Outcome, ...]:
    """Return how else an answer with a remainder is written: the remainder shared too."""
    if not isinstance(wrote, WithRemainder) or wrote.by is None or wrote.left.parts >= wrote.by.parts:
        return ()
    return both_shared(wrote)
