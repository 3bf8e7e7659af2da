"""Measures whose last unit a child left away: 1 h 35, 5 ft 3, 2 lb 4."""

from collections.abc import Iterator, Sequence

from onewhole.errors import InputError, OnewholeError
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import MEASURES, Unit
from onewhole.problems.answer import answer
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_answer


def with_last_unit(text: str, problem: Problem) -> str | None:
    """Return a text with the unit that was left away at its end.

    It is the next smaller unit that the problem, or its answer, counts in; None where it has none, and where
    nothing was left away. Common practice, no source.

    >>> from onewhole.statements.reading import read_statement
    >>> time = Problem("1", read_statement("1 h 50 min - 15 min"), "1 h 50 min - 15 min")
    >>> with_last_unit("1 h 35", time), with_last_unit("1 ft 35", time), with_last_unit("35", time)
    ('1 h 35 min', None, None)
    """
    counted = _units(problem) if text.rstrip()[-1:].isdigit() else ()
    return next(_ended(text, [unit for unit in MEASURES if unit in counted]), None)


def lacks_last_unit(text: str) -> bool:
    """Say whether a text is a measure but for a unit at its end, whichever that is.

    >>> lacks_last_unit("5 ft 3"), lacks_last_unit("5 ft 3 in"), lacks_last_unit("5 3")
    (True, False, False)
    """
    return next(_ended(text, MEASURES), None) is not None


def _ended(text: str, units: Sequence[Unit]) -> Iterator[str]:
    """Yield the texts with one of these units, the larger first, behind a last number that has none."""
    if not text.rstrip()[-1:].isdigit():
        return
    for unit in units:
        ended = f"{text.rstrip()} {unit.mark}"
        try:
            read = read_answer(ended.rpartition("=")[2])
        except InputError:
            continue
        if isinstance(read, Quantity) and read.ladder.style is Style.MEASURE and len(read.ladder.units) > 1:
            yield ended


def _units(problem: Problem) -> frozenset[Unit]:
    """Return the units in which the numbers of a problem are counted, and its answer; none for a clock."""
    numbers = list(numbers_of(problem.statement))
    try:
        right = answer(problem.statement)
    except OnewholeError:
        right = None
    if isinstance(right, Quantity):
        numbers.append(right)
    measured = (one.ladder for one in numbers if one.ladder.style is Style.MEASURE and not one.ladder.clock)
    return frozenset(unit for ladder in measured for unit in ladder.units)
