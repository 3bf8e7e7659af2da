"""Working a number that stands alone: it is written another way, 6/8 as 3/4 and 26 in as 2 ft 2 in."""

from onewhole.number.another_name import another_name
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, usual
from onewhole.statements.expression import plus
from onewhole.statements.statement import Question
from onewhole.working.line import Line, without_repeats
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.regrouping import AreWorth, PutTogether
from onewhole.working.reasons.renaming import FewestPieces, RenamedSameAmount
from onewhole.working.strategies.moves import one_on, something, usual_form
from onewhole.working.working import Working

KEY = "write_another_way"


def work_alone(question: Question, number: Quantity) -> Working:
    """Work a number that stands alone: lead it to its other name (:mod:`onewhole.number.another_name`).

    A number without one stays as it is, on the one line that it has.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("26 in = ?")
    >>> work_alone(asked, asked.asked).answer.counts
    (2, 2)
    """
    name = another_name(number)
    lines = () if name is None else _lines(number, name)
    return Working(KEY, question, without_repeats((Line(number), *lines)), name or number)


def _lines(number: Quantity, name: Quantity) -> tuple[Line, ...]:
    if usual(number.ladder, number.value) != number:
        return _filled(number)
    if number.ladder == name.ladder:
        return _opened(number, name)
    old, new = number.ladder.units[-1], name.ladder.units[-1]
    match number.ladder.style:
        case Style.DECIMAL:
            return (Line(name, RenamedSameAmount(new)),)
        case Style.MEASURE if len(number.ladder.units) > 1:
            return _opened(number, name)
        case Style.MEASURE if new.size < old.size:
            return (Line(name, AreWorth(old, new, number.parts, name.parts)),)
        case Style.MEASURE:
            return _filled(number.on(name.ladder))
        case _:
            return (Line(name, FewestPieces(old, new, (new.size / old.size).numerator)),)


def _filled(number: Quantity) -> tuple[Line, ...]:
    """Put full groups together into the next larger unit."""
    return usual_form(PairState(number, number, taken=False, result=number)).lines


def _opened(number: Quantity, name: Quantity) -> tuple[Line, ...]:
    """Open every larger unit, so that all is counted in the smallest."""
    large, small = number.ladder.units
    had, more = number.amounts
    worth = name.parts - more
    says = plus(*something(one_on(number, 1, worth), one_on(number, 1, more)))
    opened = Line(says, AreWorth(large, small, had, worth), aside=bool(more))
    return (opened, Line(name, PutTogether(small, worth, more, name.parts))) if more else (opened,)
