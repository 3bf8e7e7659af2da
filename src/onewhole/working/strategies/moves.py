"""Steps that several strategies share. They count in rungs only, so they work on any ladder."""

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, trimmed, usual_in_parts, whole
from onewhole.statements.expression import Expression, Over, minus, plus
from onewhole.working.fact import hard_difference, hard_sum
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.parting import Parting
from onewhole.working.reasons.regrouping import (
    AreWorth,
    FullGroups,
    MakesLarger,
    OneIsWorth,
    OpensOne,
    OpensToMatch,
    PutTogether,
    WrittenTogether,
)
from onewhole.working.reasons.taking import AddedUnitByUnit, InAll, Left, TakenUnitByUnit


def one_on(quantity: Quantity, rung: int, count: int = 1) -> Quantity:
    """Return so many of one rung's unit, written by itself."""
    counts = tuple([count if at == rung else 0 for at in range(len(quantity.counts))])
    return Quantity(quantity.ladder, counts).only(rung)


def something(*parts: Quantity) -> tuple[Quantity, ...]:
    """Leave out parts equal to 0, unless all of them are."""
    return tuple([part for part in parts if part.parts]) or parts[-1:]


def parted(
    top: Quantity,
    parts: tuple[Quantity, Quantity, Quantity],
    changed: Quantity,
    joined: Quantity,
    pieces: Quantity | None = None,
) -> Parting:
    """Part a number into what stays above, the middle part that changes, and what stays below.

    ``pieces`` is what the changed part makes with the part below it; it counts where there is a part on
    either side.
    """
    upper, _, lower = parts
    kept = something(*parts)
    between = bool(upper.parts and lower.parts)
    return Parting(top, kept, 1 if upper.parts else 0, changed, pieces if between else None, joined)


def opened(state: PairState, rung: int, times: int = 1) -> PairState:
    """Regroup so many of a rung's unit of the first number and write the three lines that say so."""
    first, units = state.first, state.first.ladder.units
    unit, small = units[rung], units[rung + 1]
    loose = times * first.ladder.ratios[rung]
    have, need = first.amounts[rung + 1], state.second.amounts[rung + 1]
    fewer = Quantity(first.ladder, tuple([n - times * (at == rung) for at, n in enumerate(first.amounts)]))
    upper, lower = fewer.only(*range(rung + 1)), fewer.only(*range(rung + 1, len(units)))
    whole_ones, pieces = one_on(first, rung, times), one_on(first, rung + 1, loose)
    after = first.regroup(rung, times)
    parts = (upper, whole_ones, lower)
    parting = parted(trimmed(first), parts, pieces, trimmed(after), after.only(*range(rung + 1, len(units))))
    why, worth = (
        (OpensOne(unit, small, have, need, parting), OneIsWorth(unit, small, loose))
        if times == 1
        else (OpensToMatch(unit, small, times, parting), AreWorth(unit, small, times, loose))
    )
    state = state.say(state.joined(*something(upper, whole_ones, lower)), why, aside=True)
    state = state.say(state.joined(*something(upper, pieces, lower)), worth, aside=True)
    reason = PutTogether(small, loose, have, after.amounts[rung + 1])
    state = state.now(first=after)
    return state.say(state.joined(trimmed(after)), reason)


#: So many units are opened one after another; where more are needed, all of them at once.
ONE_BY_ONE = 3


def enough_at(state: PairState, rung: int) -> PairState:
    """Regroup until the first number has at least as many of a rung's unit as the second."""
    worths = state.first.ladder.worths
    while (lacks := state.second.amounts[rung] - state.first.amounts[rung]) > 0:
        giver = max(at for at in range(rung) if state.first.amounts[at])
        needed = min(-(-lacks * worths[rung] // worths[giver]), state.first.amounts[giver])
        state = opened(state, giver, needed if needed > ONE_BY_ONE else 1)
    return state


def enough_of_each(state: PairState) -> PairState:
    """Regroup where the first number has too few of a unit, from the smallest unit up."""
    for rung in reversed(range(1, len(state.first.counts))):
        state = enough_at(state, rung)
    return state


def unit_by_unit(state: PairState) -> PairState:
    """Take (or add) each unit by itself: wholes from wholes, sixths from sixths."""
    first, second, taken = state.first, state.second, state.taken
    pairs = tuple(zip(first.amounts, second.amounts, strict=True))
    counts = tuple([a - b if taken else a + b for a, b in pairs])
    facts = [hard_difference(a, b) if taken else hard_sum(a, b) for a, b in pairs]
    used = tuple([unit for unit, pair in zip(first.ladder.units, pairs, strict=True) if any(pair)])
    reason = TakenUnitByUnit(used) if taken else AddedUnitByUnit(used)
    says = _apart(first, second, taken=taken)
    state = state.say(says, reason, aside=True, facts=facts)
    return state.now(result=Quantity(first.ladder, counts))


def _apart(first: Quantity, second: Quantity, *, taken: bool) -> Expression:
    if first.ladder.style is Style.MIXED and not first.amounts[0] and not second.amounts[0]:
        tops = whole(first.amounts[1]), whole(second.amounts[1])
        return Over(minus(*tops) if taken else plus(*tops), whole(first.ladder.denominator))
    groups: list[Expression] = []
    for rung, (a, b) in enumerate(zip(first.amounts, second.amounts, strict=True)):
        if a and b:
            parts = first.only(rung), second.only(rung)
            groups.append(minus(*parts) if taken else plus(*parts))
        elif a or b:
            groups.append(first.only(rung) if a else second.only(rung))
    return plus(*groups) if groups else trimmed(first)


#: So many full groups are not put together one rung at a time: 1230 hundredths are written 12.30 at once.
LONG = 10


def as_found(state: PairState) -> PairState:
    """Say what is left (or there is in all), in the units in which it was found."""
    result = trimmed(state.found())
    return state.say(result, Left(result) if state.taken else InAll(result))


def usual_form(state: PairState) -> PairState:
    """Say what is left (or there is in all), and put full groups together into the next larger unit."""
    state, result = as_found(state), state.found()
    for rung in reversed(range(1, len(result.counts))):
        times = result.amounts[rung] // result.ladder.ratios[rung - 1]
        if times and (len(result.counts) == 2 or times < LONG):
            state, result = _composed(state, result, rung, times)
    answer = usual_in_parts(result.ladder, result.parts)
    return state.say(answer, WrittenTogether(answer)).now(result=answer)


def _composed(state: PairState, result: Quantity, rung: int, times: int) -> tuple[PairState, Quantity]:
    units, ratio = result.ladder.units, result.ladder.ratios[rung - 1]
    rest = Quantity(
        result.ladder, tuple(n - (at == rung) * times * ratio for at, n in enumerate(result.amounts))
    )
    upper, lower = rest.only(*range(rung)), rest.only(*range(rung, len(units)))
    groups = one_on(result, rung, times * ratio)
    after = result.compose(rung - 1, times)
    parts = (upper, groups, lower)
    parting = parted(trimmed(result), parts, one_on(result, rung - 1, times), trimmed(after))
    full = FullGroups(units[rung - 1], units[rung], ratio, times, parting)
    state = state.say(plus(*something(*parts)), full, aside=True)
    made = MakesLarger(units[rung - 1], units[rung], times, times * ratio)
    return state.say(trimmed(after), made), after


def total(state: PairState, *parts: Quantity) -> PairState:
    """Put parts on the state's ladder together into the result, with a fact beside a hard sum."""
    ladder = state.first.ladder
    spread = [part.on(ladder) for part in parts]
    counts = tuple([sum(column) for column in zip(*[part.amounts for part in spread], strict=True)])
    return state.now(result=Quantity(ladder, counts))
