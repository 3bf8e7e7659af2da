"""What a division asks, seen as a story: shared equally, measured out, or compared by times."""

from collections.abc import Mapping
from types import MappingProxyType

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.answer import answer
from onewhole.problems.story_question import Asks, StoryQuestion
from onewhole.problems.story_structure import Structure
from onewhole.statements.expression import Quotient, WithRemainder
from onewhole.statements.statement import Question
from onewhole.statements.whole_groups import GroupsAsk

#: How a division is told.
DIVIDING = (
    Structure.SHARING,
    Structure.MEASURING_OUT,
    Structure.TIMES_AS_MUCH,
    Structure.HOW_MANY_TIMES,
    Structure.AREA,
)


#: What a story asks of things in groups.
IN_GROUPS: Mapping[GroupsAsk, Asks] = MappingProxyType(
    {
        GroupsAsk.NEEDED: Asks.GROUPS_NEEDED,
        GroupsAsk.FULL: Asks.GROUPS_FULL,
        GroupsAsk.LEFT: Asks.THINGS_LEFT,
    }
)


def divided(first: Quantity, second: Quantity, *, shared_out: bool) -> StoryQuestion | None:
    """Return what one number divided by another asks; with ``shared_out`` nothing is left over.

    None where no structure fits: what is left of a measure is not told, nor a part of a group.

    >>> from onewhole.number.quantity import whole
    >>> [divided(whole(87), whole(4), shared_out=one).asks.name for one in (False, True)]
    ['DIVIDED_LEFT', 'DIVIDED']
    """
    left = isinstance(answer(Question(Quotient(first, second))), WithRemainder)
    shared = shared_out and first.plain and second.plain
    asks = Asks.DIVIDED_LEFT if left and not shared else Asks.DIVIDED
    found = StoryQuestion(asks, (first, second))
    return found if any(fits_dividing(found, one) for one in DIVIDING) else None


def fits_dividing(parts: StoryQuestion, structure: Structure) -> bool:
    """Say whether a story of that structure can tell a division.

    Shares are counted, and so are groups; a rectangle has whole sides.
    """
    first, second = parts.numbers
    even = parts.asks is Asks.DIVIDED and not parts.is_cut
    match structure:
        case Structure.SHARING:
            return shares(second) and (parts.asks is Asks.DIVIDED or not _measured(first))
        case Structure.MEASURING_OUT:
            return alike(first, second) and (even or parts.asks is Asks.DIVIDED_LEFT)
        case Structure.TIMES_AS_MUCH:
            return parts.asks is Asks.DIVIDED and shares(second)
        case Structure.HOW_MANY_TIMES:
            return parts.asks is Asks.DIVIDED and alike(first, second) and first.value > second.value
        case Structure.AREA:
            return even and shares(second) and first.plain
        case _:
            return False


def shares(number: Quantity) -> bool:
    """Say whether something can be shared among so many: a whole number above 1, without a unit."""
    return number.plain and number.value > 1


def alike(first: Quantity, second: Quantity) -> bool:
    """Say whether two numbers count or measure the same."""
    return first.kind is second.kind and bool(first.ladder.mark) == bool(second.ladder.mark)


def comes_out_even(number: Quantity, by: Quantity) -> bool:
    """Say whether a whole number shared among so many leaves nothing over."""
    return number.plain and shares(by) and number.value % by.value == 0


def _measured(number: Quantity) -> bool:
    """Say whether a number is a measure: what is left of one is shared too; no cent is cut."""
    return number.kind not in {Kind.NUMBER, Kind.MONEY}
