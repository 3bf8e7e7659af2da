"""Moves that several strategies share, in the language of rungs: they work on any ladder."""

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, trimmed, usual_in_parts, whole
from onewhole.statements.expression import Expression, Over, minus, plus
from onewhole.working.bench import Bench
from onewhole.working.fact import hard_difference, hard_sum
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
    """Leave out parts that are worth nothing, unless nothing else is left."""
    return tuple([part for part in parts if part.parts]) or parts[-1:]


def opened(bench: Bench, rung: int, times: int = 1) -> Bench:
    """Regroup so many of a rung's unit of the first number and write the three lines that say so."""
    first, units = bench.first, bench.first.ladder.units
    unit, small = units[rung], units[rung + 1]
    loose = times * first.ladder.ratios[rung]
    have, need = first.amounts[rung + 1], bench.second.amounts[rung + 1]
    fewer = Quantity(first.ladder, tuple([n - times * (at == rung) for at, n in enumerate(first.amounts)]))
    upper, lower = fewer.only(*range(rung + 1)), fewer.only(*range(rung + 1, len(units)))
    why, worth = (
        (OpensOne(unit, small, have, need), OneIsWorth(unit, small, loose))
        if times == 1
        else (OpensToMatch(unit, small, times), AreWorth(unit, small, times, loose))
    )
    whole_ones, pieces = one_on(first, rung, times), one_on(first, rung + 1, loose)
    bench = bench.say(bench.joined(*something(upper, whole_ones, lower)), why, aside=True)
    bench = bench.say(bench.joined(*something(upper, pieces, lower)), worth, aside=True)
    after = first.regroup(rung, times)
    reason = PutTogether(small, loose, have, after.amounts[rung + 1])
    bench = bench.now(first=after)
    return bench.say(bench.joined(trimmed(after)), reason)


#: So many units are opened one after another; where more are needed, all of them at once.
ONE_BY_ONE = 3


def enough_at(bench: Bench, rung: int) -> Bench:
    """Regroup until the first number has at least as many of a rung's unit as the second."""
    worths = bench.first.ladder.worths
    while (lacks := bench.second.amounts[rung] - bench.first.amounts[rung]) > 0:
        giver = max(at for at in range(rung) if bench.first.amounts[at])
        needed = min(-(-lacks * worths[rung] // worths[giver]), bench.first.amounts[giver])
        bench = opened(bench, giver, needed if needed > ONE_BY_ONE else 1)
    return bench


def enough_of_each(bench: Bench) -> Bench:
    """Regroup where the first number has too few of a unit, from the smallest unit up."""
    for rung in reversed(range(1, len(bench.first.counts))):
        bench = enough_at(bench, rung)
    return bench


def unit_by_unit(bench: Bench) -> Bench:
    """Take (or add) each unit by itself: wholes from wholes, sixths from sixths."""
    first, second, taken = bench.first, bench.second, bench.taken
    pairs = tuple(zip(first.amounts, second.amounts, strict=True))
    counts = tuple([a - b if taken else a + b for a, b in pairs])
    facts = [hard_difference(a, b) if taken else hard_sum(a, b) for a, b in pairs]
    used = tuple([unit for unit, pair in zip(first.ladder.units, pairs, strict=True) if any(pair)])
    reason = TakenUnitByUnit(used) if taken else AddedUnitByUnit(used)
    says = _apart(first, second, taken=taken)
    bench = bench.say(says, reason, aside=True, facts=facts)
    return bench.now(result=Quantity(first.ladder, counts))


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


def as_found(bench: Bench) -> Bench:
    """Say what is left (or there is in all), in the units in which it was found."""
    result = trimmed(bench.found())
    return bench.say(result, Left(result) if bench.taken else InAll(result))


def usual_form(bench: Bench) -> Bench:
    """Say what is left (or there is in all), and put full groups together into the next larger unit."""
    bench, result = as_found(bench), bench.found()
    for rung in reversed(range(1, len(result.counts))):
        times = result.amounts[rung] // result.ladder.ratios[rung - 1]
        if times and (len(result.counts) == 2 or times < LONG):
            bench, result = _composed(bench, result, rung, times)
    answer = usual_in_parts(result.ladder, result.parts)
    return bench.say(answer, WrittenTogether(answer)).now(result=answer)


def _composed(bench: Bench, result: Quantity, rung: int, times: int) -> tuple[Bench, Quantity]:
    units, ratio = result.ladder.units, result.ladder.ratios[rung - 1]
    rest = Quantity(
        result.ladder, tuple(n - (at == rung) * times * ratio for at, n in enumerate(result.amounts))
    )
    upper, lower = rest.only(*range(rung)), rest.only(*range(rung, len(units)))
    groups = one_on(result, rung, times * ratio)
    full = FullGroups(units[rung - 1], units[rung], ratio, times)
    bench = bench.say(plus(*something(upper, groups, lower)), full, aside=True)
    after = result.compose(rung - 1, times)
    made = MakesLarger(units[rung - 1], units[rung], times, times * ratio)
    return bench.say(trimmed(after), made), after


def total(bench: Bench, *parts: Quantity) -> Bench:
    """Put parts on the bench's ladder together into the result, with a fact beside a hard sum."""
    ladder = bench.first.ladder
    spread = [part.on(ladder) for part in parts]
    counts = tuple([sum(column) for column in zip(*[part.amounts for part in spread], strict=True)])
    return bench.now(result=Quantity(ladder, counts))
