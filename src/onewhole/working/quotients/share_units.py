"""Sharing out the largest units, regrouping what is left into smaller ones, and going on: on every ladder.

7 / 4, 52 / 4, 5 ft 2 in / 2 and 5.2 / 4 are worked in the same way.

Sources: 3.OA.A.2 (equal shares), 4.NBT.B.6 and 5.NBT.B.6 (strategies based on place value), 5.NF.B.3 and
5.NF.B.7.a (pieces are cut), 5.NBT.B.7 (decimals), CCSSM (2010).
"""

from msgspec.structs import replace

from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, usual, usual_in_parts, whole
from onewhole.statements.expression import WithRemainder, value
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.quotient_way import QuotientStep, QuotientWay
from onewhole.working.quotients.shared_ladder import cut, to_share
from onewhole.working.reasons.dividing import DigitsRunOn, LeftOver, LeftRegrouped, PiecesCut, SharedOut
from onewhole.working.reasons.taking import InAll
from onewhole.working.reasons.unsuited import NotSharedOut, TooFewToShare, Unsuited
from onewhole.working.strategies.moves import one_on


def out_of_units(state: QuotientState) -> QuotientState:
    """Share every unit out, the largest first, and regroup what is left of it."""
    by = _shares(state)
    number = to_share(state.left, by)
    if number.ladder.style is Style.MIXED is not state.left.ladder.style:
        runs_on = DigitsRunOn(state.left, number)
        state = replace(state, left=number)
        state = state.say(state.standing(), runs_on)
    state = replace(state, left=Quantity(number.ladder, number.amounts))
    for rung, unit in enumerate(state.left.ladder.units):
        have = state.left.amounts[rung]
        each, over = divmod(have, by)
        if each:
            part = one_on(state.left, rung, each)
            rest = tuple([over if at == rung else n for at, n in enumerate(state.left.amounts)])
            state = replace(state, left=Quantity(state.left.ladder, rest))
            says, reason = (
                state.standing(part),
                SharedOut(unit, have, by, each, over, named=state.named),
            )
            state = replace(state.say(says, reason), done=(*state.done, part))
        if over and rung + 1 < len(state.left.counts):
            state = _regrouped(state, rung, by if not each else None)
    return _rest(state, by)


def _shares(state: QuotientState) -> int:
    if state.shares is None:
        msg = "the right number does not say among how many it is shared"
        raise ValueError(msg)
    return state.shares


def _regrouped(state: QuotientState, rung: int, few: int | None) -> QuotientState:
    """Regroup all that is left of a unit into the next smaller one."""
    left, units = state.left, state.left.ladder.units
    count = left.amounts[rung]
    after = left.regroup(rung, count)
    made = count * left.ladder.ratios[rung]
    reason = LeftRegrouped(
        units[rung], units[rung + 1], count, made, after.amounts[rung + 1], few, state.named
    )
    state = replace(state, left=after)
    return state.say(state.standing(), reason)


def _rest(state: QuotientState, by: int) -> QuotientState:
    """Put together what each share has, with the pieces cut or the remainder where something is left."""
    if not state.left.parts:
        return _together(state)
    if state.left.ladder.style is Style.MIXED:
        return _together(_pieces(state, by))
    left = usual_in_parts(state.left.ladder, state.left.parts)
    return state.say(
        result := WithRemainder(_sum(state), left, state.right), LeftOver(left, state.right)
    ).ends(result)


def _pieces(state: QuotientState, by: int) -> QuotientState:
    """Cut each piece that is left into as many parts as are needed, and share those out."""
    left = Quantity(state.left.ladder, (None, state.left.amounts[-1]))
    into = cut(left, by)
    finer = mixed(left.ladder.denominator * into, left.ladder.mark)
    pieces = Quantity(finer, (None, left.parts * into))
    old, new = left.ladder.units[-1], finer.units[-1]
    state = replace(state, left=pieces)
    state = state.say(state.standing(), PiecesCut(old, new, left.parts, into))
    each = Quantity(finer, (None, pieces.parts // by))
    state = replace(state, left=Quantity(finer, (None, 0)))
    state = state.say(
        state.standing(each), SharedOut(new, pieces.parts, by, each.parts, 0, named=state.named)
    )
    return replace(state, done=(*state.done, each))


def _together(state: QuotientState) -> QuotientState:
    """Write all that each share has as one number."""
    if not state.done:
        state = state.say(
            _sum(state), SharedOut(state.left.ladder.units[-1], 0, _shares(state), 0, 0, named=state.named)
        )
    result = _sum(state)
    return state.say(result, InAll(result)).ends(result)


def _sum(state: QuotientState) -> Quantity:
    """Return what each share has in all, written the usual way on the ladder of the smallest units."""
    ladder = state.left.ladder
    amount = sum((part.value for part in state.done), value(whole(0)))
    if ladder.style is not Style.MIXED:
        return usual_in_parts(ladder, int(amount / ladder.finest))
    for part in state.done:
        if part.ladder.style is Style.MIXED and part.ladder.finest < ladder.finest:
            ladder = part.ladder
    return usual(ladder, amount)


def _unsuited(state: QuotientState) -> Unsuited | None:
    if state.shares is None:
        return NotSharedOut()
    if state.wholes and 0 < state.left.parts < state.shares:
        return TooFewToShare(state.left, state.right)
    return None


def _offered(_: QuotientState) -> bool:
    return True


SHARE_UNITS = QuotientWay(
    key="share_units",
    name="Share out the largest units, regroup what is left",
    steps=(QuotientStep("out_of_units", out_of_units),),
    unsuited=_unsuited,
    offered=_offered,
)
