"""In columns: the digits under each other, place by place from right to left.

A column that has too few gets ten of its unit for one of the next column; where that column has none, one is
regrouped further left first. In adding, ten of a unit are carried to the next column as one. Three and more
numbers are added at once. A line says what the columns that are still open are worth, with every digit that
is written below the others, and the last column ends with the answer; a pupil writes the digits only.

Source: the standard algorithm of 4.NBT.B.4, for whole numbers up to 1,000,000 (footnote to grade 4 of Number
and Operations in Base Ten); for decimals it is a written method as 5.NBT.B.7 asks for; CCSSM (2010). That the
sums and differences inside a column need no help follows 2.OA.B.2 (known from memory by the end of grade 2).
"""

from msgspec.structs import replace

from onewhole.number.ladder import TEN, Ladder, Style, places
from onewhole.number.quantity import Quantity, landmark, trimmed, usual_in_parts
from onewhole.statements.expression import Expression, Sum, Term
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.columns import ColumnAdded, ColumnOpened, ColumnTaken
from onewhole.working.reasons.unsuited import NoColumns, Unsuited
from onewhole.working.strategies.moves import as_found, one_on
from onewhole.working.strategy import Act, Step, Strategy


def in_places(ladder: Ladder) -> bool:
    """Say whether numbers on a ladder stand in columns: two places or more, each worth ten of the next.

    >>> from onewhole.number.ladder import measure, places
    >>> in_places(places(2)), in_places(places(1)), in_places(measure("ft", "in"))
    (True, False, False)
    """
    return ladder.style in {Style.PLACES, Style.DECIMAL} and len(ladder.units) > 1


def column_by_column(state: PairState) -> PairState:
    """Take away or add the columns, from the smallest unit on."""
    if not state.taken:
        return _added(state)
    written: tuple[Quantity, ...] = ()
    for rung in reversed(range(len(state.first.counts))):
        state = _enough(state, rung, written)
        state, written = _taken(state, rung, written)
    return state.now(result=_answer(state))


def _answer(state: PairState) -> Quantity:
    parts = state.first.parts - state.second.parts
    if not state.taken:
        parts = sum(number.parts for number in (state.first, state.second, *state.more))
    return usual_in_parts(state.first.ladder, parts)


def _enough(state: PairState, rung: int, written: tuple[Quantity, ...]) -> PairState:
    """Regroup from the nearest column that has any, until the column has enough; a line for each opening."""
    first, second, units = state.first, state.second, state.first.ladder.units
    have, need = first.amounts[rung], second.amounts[rung]
    if have >= need:
        return state
    giver = max(at for at in range(rung) if first.amounts[at])
    for at in range(giver, rung):
        opened = state.first.regroup(at)
        left, now = opened.amounts[at], opened.amounts[at + 1]
        why = ColumnOpened(units[at], units[at + 1], units[rung], have, need, left, now, at == giver)
        state = state.now(first=opened)
        state = state.say(_still(state, rung + 1, written), why, aside=True)
    return state


def _taken(
    state: PairState, rung: int, written: tuple[Quantity, ...]
) -> tuple[PairState, tuple[Quantity, ...]]:
    """Take one column away and write what is left of it."""
    first, second = state.first, state.second
    have, gone = first.amounts[rung], second.amounts[rung]
    if written and not any(first.amounts[: rung + 1]):
        return state, written
    written = (one_on(first, rung, have - gone), *written)
    reason = ColumnTaken(first.ladder.units[rung], have, gone, _blank(second, rung))
    if not any(first.amounts[:rung]):
        return state.say(_answer(state), reason), written
    return state.say(_still(state, rung, written), reason, aside=True), written


def _still(state: PairState, columns: int, written: tuple[Quantity, ...]) -> Expression:
    """Write what the columns that are still open are worth, and what is written below the others."""
    first, second = _left_part(state.first, columns), _left_part(state.second, columns)
    terms = [Term(first)] if first.parts else []
    terms += [Term(second, taken=True)] if second.parts else []
    return _row([*terms, *map(Term, written)])


def _left_part(number: Quantity, columns: int) -> Quantity:
    """Return what stands in so many columns from the left, with a count of ten or more as it is: 11 ones."""
    before = len(number.counts) - number.ladder.after
    if number.ladder.style is Style.PLACES or columns > before:
        return number.only(*range(columns))
    return trimmed(
        Quantity(places(before, number.ladder.mark), (*number.amounts[:columns], *(0,) * (before - columns)))
    )


def _row(terms: list[Term]) -> Expression:
    return Sum(tuple(terms)) if len(terms) > 1 else terms[0].part


def _added(state: PairState) -> PairState:
    numbers = (state.first, state.second, *state.more)
    ladder = state.first.ladder
    written: tuple[Term, ...] = ()
    carried = 0
    outer = min(_front(number) for number in numbers)
    for rung in reversed(range(outer, len(ladder.units))):
        unit = ladder.units[rung]
        digits = tuple([number.amounts[rung] for number in numbers if not _blank(number, rung)])
        reason = ColumnAdded(unit, replace(unit, size=unit.size * TEN), digits, carried, rung == outer)
        up, digit = (0, reason.total) if reason.outermost else divmod(reason.total, TEN)
        written = (Term(landmark(ladder, digit * ladder.worths[rung])), *written)
        open_columns = [Term(part) for number in numbers if (part := _left_part(number, rung)).parts]
        more = [Term(one_on(state.first, rung - 1, up))] if up else []
        if rung == outer:
            state = state.say(_answer(state), reason)
        else:
            state = state.say(_row([*open_columns, *more, *written]), reason, aside=True)
        carried = up
    return state.now(result=_answer(state))


def _front(number: Quantity) -> int:
    """Return the rung of the first digit that is written: the ones at least."""
    ones = len(number.counts) - 1 - number.ladder.after
    return next((at for at, count in enumerate(number.amounts[:ones]) if count), ones)


def _blank(number: Quantity, rung: int) -> bool:
    return rung < _front(number)


def _unsuited(state: PairState) -> Unsuited | None:
    if not in_places(state.first.ladder):
        return NoColumns()
    numbers = (state.first, state.second, *state.more)
    return NoColumns() if any(max(trimmed(one).amounts) >= TEN for one in numbers) else None


COLUMNS = Strategy(
    key="columns",
    name="In columns",
    act=Act.EITHER,
    partner="regroup_first",
    steps=(Step("column_by_column", column_by_column), Step("answer", as_found)),
    unsuited=_unsuited,
    offered=in_places,
    at_once=True,
)
