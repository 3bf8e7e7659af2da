"""Measuring out: both numbers are counted in one unit, and then it is asked how many groups there are.

2 / 1/3 is 6 thirds in groups of 1 third, 7 / 0.2 is 70 tenths in groups of 2 tenths, 5 ft / 4 in is 60 inches
in groups of 4 inches.

Sources: 5.NF.B.7.b (a whole number by a unit fraction) and 5.NBT.B.7, CCSSM (2010); counting both numbers in
one unit for any fraction is common practice, no source.
"""

from msgspec.structs import replace

from onewhole.number.ladder import Ladder, Style, decimal, joined, measure, mixed
from onewhole.number.quantity import Quantity, trimmed, usual, whole
from onewhole.number.unit import Kind
from onewhole.statements.expression import Quotient, WithRemainder
from onewhole.working.quotients.known_quotient import KNOWN_QUOTIENT
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.quotient_way import QuotientStep, QuotientWay
from onewhole.working.quotients.share_units import out_of_units
from onewhole.working.quotients.shared_ladder import places_needed
from onewhole.working.reasons.dividing import DividedIsFraction, GroupsOfUnits, InOneUnit, LeftOver
from onewhole.working.reasons.regrouping import WrittenTogether
from onewhole.working.reasons.unsuited import NoGroups, Unsuited


def in_one_unit(state: QuotientState) -> QuotientState:
    """Count both numbers in the smallest unit that one of them has."""
    ladder = joined(state.left.ladder, state.right.ladder)
    have, group = (number.on(ladder).parts for number in (state.left, state.right))
    left, right = _of_smallest(ladder, have), _of_smallest(ladder, group)
    unit = ladder.units[-1]
    pairs = ((state.left, left), (state.right, right))
    if changed := tuple([(old, new.parts) for old, new in pairs if old != new]):
        state = state.say(Quotient(left, right), InOneUnit(changed, unit))
    return QuotientState(left, right, state.lines)


def _of_smallest(ladder: Ladder, count: int) -> Quantity:
    """Write so many of the smallest unit of a ladder, and of no other."""
    match ladder.style:
        case Style.MIXED:
            return Quantity(ladder, (None, count))
        case Style.MEASURE:
            return Quantity(measure(ladder.units[-1].mark), (count,))
        case Style.PLACES:
            return whole(count, ladder.mark)
        case Style.DECIMAL:
            return trimmed(Quantity(ladder, (*(0,) * (len(ladder.units) - 1), count)))


def count_groups(state: QuotientState) -> QuotientState:
    """Divide the counts: of a measure with a remainder, of decimals as a decimal, and else as a fraction."""
    left, right = state.left, state.right
    groups, rest = divmod(left.parts, right.parts)
    counts = QuotientState(whole(left.parts), whole(right.parts), counting=True)
    reason = GroupsOfUnits(left.parts, right.parts, left.ladder.units[-1])
    state = state.say(Quotient(counts.left, counts.right), reason)
    if rest and left.kind is not Kind.NUMBER:
        over = Quantity(left.ladder, (rest,))
        result = WithRemainder(whole(groups), over, right)
        return state.say(result, LeftOver(over, right)).ends(result)
    found = _counted(counts, pointed=left.ladder.style is Style.DECIMAL)
    return QuotientState(left, right, (*state.lines, *found.lines)).ends(found.found())


def _counted(counts: QuotientState, *, pointed: bool) -> QuotientState:
    """Divide one count by another."""
    number, by = counts.left.parts, counts.right.parts
    if KNOWN_QUOTIENT.unsuited(counts) is None:
        return KNOWN_QUOTIENT.run(counts)
    if number % by == 0:
        return out_of_units(counts)
    after = places_needed(counts.left, by) if pointed else None
    if after is None:
        return _fraction(counts)
    ladder = decimal(len(counts.left.counts), after)
    return out_of_units(replace(counts, left=counts.left.on(ladder)))


def _fraction(counts: QuotientState) -> QuotientState:
    """Write one count over the other, and then the usual way."""
    number, by = counts.left.parts, counts.right.parts
    fraction = Quantity(mixed(by), (None, number))
    result = usual(fraction.ladder, fraction.value)
    state = counts.say(fraction, DividedIsFraction(number, by))
    return state.say(result, WrittenTogether(result)).ends(result)


def _unsuited(state: QuotientState) -> Unsuited | None:
    return NoGroups() if state.shares is not None else None


def _offered(_: QuotientState) -> bool:
    return True


MEASURE_OUT = QuotientWay(
    key="measure_out",
    name="Measure out: count both in one unit",
    steps=(QuotientStep("in_one_unit", in_one_unit), QuotientStep("count_groups", count_groups)),
    unsuited=_unsuited,
    offered=_offered,
)
