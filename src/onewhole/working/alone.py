"""Working a number that is written another way: 6/8 as 3/4, 26 in as 2 ft 2 in, 3/4 as 0.75."""

from onewhole.number.another_name import another_name
from onewhole.number.ladder import Style, joined, mixed
from onewhole.number.name_wanted import named_as
from onewhole.number.quantity import Quantity, overfull, trimmed, usual
from onewhole.number.unit import Kind
from onewhole.statements.expression import plus
from onewhole.statements.statement import AnotherName, Question
from onewhole.working.equal_pieces import recut
from onewhole.working.line import Line, without_repeats
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.regrouping import AreWorth, PutTogether
from onewhole.working.reasons.renaming import (
    EachIsWhole,
    LastPlaceNames,
    NothingOf,
    OverOne,
    PointPlaces,
    SimplestAlready,
)
from onewhole.working.strategies.moves import one_on, something, usual_form
from onewhole.working.working import Working

KEY = "write_another_way"
IN_STEPS = "join_in_steps"


def work_alone(question: Question, number: Quantity) -> Working:
    """Work a number that stands alone: lead it to its other name (:mod:`onewhole.number.another_name`).

    A number without one stays as it is, on the one line that it has.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("26 in = ?")
    >>> work_alone(asked, asked.asked).answer.counts
    (2, 2)
    """
    name = another_name(number)
    return _led(question, number, number if name is None else name)


def work_named(asked: AnotherName) -> Working:
    """Lead a number to the name that is wanted of it (:mod:`onewhole.number.name_wanted`).

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_statement
    >>> [text(line.says) for line in work_named(read_statement("3/4 as a decimal")).lines]
    ['3/4', '(3 x 25)/(4 x 25)', '75/100', '0.75']
    """
    return _led(asked, asked.number, named_as(asked.number, asked.wanted))


def joined_in_steps(asked: AnotherName) -> Working | None:
    """Join the pieces by one prime factor after another; None where one step is all that there is.

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_statement
    >>> [text(line.says) for line in joined_in_steps(read_statement("12/18 simplest")).lines]
    ['12/18', '6/9', '2/3']
    """
    name = named_as(asked.number, asked.wanted)
    if name.ladder.style is not Style.MIXED or (overfull(asked.number) and name.counts[0] is not None):
        return None
    if asked.number.ladder.style is not Style.MIXED or name.counts[0] != asked.number.counts[0]:
        return None
    lines = recut(asked.number, name.ladder.denominator, in_steps=True)
    if len(lines) < 2:
        return None
    return Working(IN_STEPS, asked, (Line(asked.number), *lines), name)


def _led(statement: Question | AnotherName, number: Quantity, name: Quantity) -> Working:
    if number == name:
        return Working(KEY, statement, (Line(number), *_named_already(statement, number)), name)
    return Working(KEY, statement, without_repeats((Line(number), *_lines(number, name))), name)


def _named_already(statement: Question | AnotherName, number: Quantity) -> tuple[Line, ...]:
    """Say of a fraction in simplest form why it is in it."""
    if not isinstance(statement, AnotherName):
        return ()
    return (Line(number, SimplestAlready(number.amounts[-1], number.ladder.denominator)),)


def _lines(number: Quantity, name: Quantity) -> tuple[Line, ...]:
    if number.kind is not Kind.NUMBER:
        return _in_units(number, name)
    match number.ladder.style, name.ladder.style:
        case Style.PLACES, _:
            return (Line(name, OverOne(number.parts)),)
        case Style.DECIMAL, Style.PLACES:
            return (Line(name, NothingOf(number.ladder.units[-1])),)
        case Style.MIXED, Style.DECIMAL:
            lines = _in_pieces(number, _on_pieces_of(name, number))
            return (*lines, Line(name, PointPlaces(name.ladder.units[-1], name.ladder.after)))
        case Style.MIXED, _:
            return _in_pieces(number, name)
        case _:
            return (Line(name, LastPlaceNames(name.ladder.units[-1])),)


def _on_pieces_of(name: Quantity, number: Quantity) -> Quantity:
    """Return a decimal as a fraction: one fraction where the number is one, else with its wholes."""
    ladder = mixed((1 / name.ladder.finest).numerator, name.ladder.mark)
    counted = usual(ladder, name.value)
    one = number.counts[0] is None and counted.ladder == ladder
    return Quantity(ladder, (None, name.parts)) if one else counted


def _in_pieces(number: Quantity, name: Quantity) -> tuple[Line, ...]:
    """Open the wholes or put full groups together as the name has it, then join pieces or cut them again."""
    lines: tuple[Line, ...] = ()
    one_fraction = name.ladder.style is Style.MIXED and name.counts[0] is None
    now = number
    if number.ladder.denominator == 1:
        return (Line(name, EachIsWhole()),)
    if one_fraction and number.counts[0] is not None:
        lines = _opened(number)
        now = Quantity(number.ladder, (None, number.parts))
    elif not one_fraction and overfull(number):
        lines = _filled(number)
        now = usual(number.ladder, number.value)
    if now == name or now.ladder.style is not Style.MIXED:
        return lines
    if not now.amounts[-1] and not one_fraction:
        return (*lines, Line(name, NothingOf(now.ladder.units[-1])))
    return (*lines, *recut(now, name.ladder.denominator))


def _filled(number: Quantity) -> tuple[Line, ...]:
    """Put full groups together into the next larger unit."""
    return usual_form(PairState(number, number, taken=False, result=number)).lines


def _opened(number: Quantity) -> tuple[Line, ...]:
    """Open every larger unit, so that all is counted in the smallest."""
    large, small = number.ladder.units
    had, more = number.amounts
    worth = number.parts - more
    says = plus(*something(one_on(number, 1, worth), one_on(number, 1, more)))
    opened = Line(says, AreWorth(large, small, had, worth), aside=bool(more))
    all_of_it = one_on(number, 1, number.parts)
    return (opened, Line(all_of_it, PutTogether(small, worth, more, number.parts))) if more else (opened,)


def _in_units(number: Quantity, name: Quantity) -> tuple[Line, ...]:
    """Open units that are not wanted, put full groups together where larger ones are, and end as wanted."""
    now = number.on(joined(number.ladder, name.ladder))
    kept = name.ladder.units
    lines: tuple[Line, ...] = ()
    for rung, (large, small) in enumerate(zip(now.ladder.units, now.ladder.units[1:], strict=False)):
        if large not in kept and now.amounts[rung]:
            times, loose = now.amounts[rung], now.amounts[rung] * now.ladder.ratios[rung]
            upper, lower = (now.only(*rungs) for rungs in (range(rung), range(rung + 1, len(now.counts))))
            more = now.amounts[rung + 1]
            after = now.regroup(rung, times)
            says = plus(*something(upper, one_on(now, rung + 1, loose), lower))
            lines += (Line(says, AreWorth(large, small, times, loose), aside=bool(more)),)
            if more:
                together = PutTogether(small, loose, more, after.amounts[rung + 1])
                lines += (Line(trimmed(after), together),)
            now = after
    if not number.parts:
        lines = (Line(name, AreWorth(number.ladder.units[0], kept[-1], 0, 0)),)
    elif trimmed(now) != trimmed(name):
        lines += _filled(now)
    if lines and lines[-1].says != name:
        lines = (*lines[:-1], Line(name, lines[-1].because))
    return lines
