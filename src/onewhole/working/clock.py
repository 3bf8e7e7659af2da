"""A working with times of day: it is worked in hours and minutes from midnight, and shown on the clock."""

from dataclasses import replace

from onewhole.number.clock import HOUR, on_clock
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.statements.clock_sides import between_times, time_asked
from onewhole.statements.expression import Expression, Sum, Term
from onewhole.working.checks import Agreed, Check, Estimate, Undone
from onewhole.working.line import Line
from onewhole.working.reasons.jumping import CountedUp, JumpedTo, JumpedToWhole, JumpedWholes
from onewhole.working.reasons.taking import InAll, Left, SoFar, UnitsTaken
from onewhole.working.working import Working

#: The ways that go with clock times, by their keys, the usual one first.
BETWEEN = ("count_up", "regroup_first", "wholes_first")
LATER, EARLIER = ("jump_on", "units_apart"), ("wholes_first", "regroup_first")


def clock_ways(asked: Expression) -> tuple[str, ...]:
    """Return the keys of the ways that suit a problem with times of day; none for any other problem.

    Common practice, no source: from hour to hour, as 3.MD.A.1 shows it on a number line.
    """
    if between_times(asked):
        return BETWEEN
    if time_asked(asked) is None or not isinstance(asked, Sum):
        return ()
    return EARLIER if all(term.taken for term in asked.terms[1:]) else LATER


def on_the_clock(working: Working, asked: Expression) -> Working:
    """Write the points of a working as times of day: the hours that are counted up to, the time later on."""
    if between_times(asked) and isinstance(asked, Sum):
        (first, _) = (term.part for term in asked.terms)
        like = first if isinstance(first, Quantity) else None
        if like is None:
            return working
        lines = tuple(_stops(line, like) for line in working.lines)
        return replace(working, lines=lines, checks=tuple(_how_long(check, like) for check in working.checks))
    like = time_asked(asked)
    if like is None or not isinstance(working.answer, Quantity):
        return working
    lines = tuple(_point(line, like) for line in working.lines)
    checks = tuple(_check(check, like) for check in working.checks)
    return replace(working, lines=lines, answer=on_clock(working.answer, like), checks=checks)


def _how_long(check: Check, like: Quantity) -> Check:
    """Write the easy hours of an estimate as times of day; from one hour to itself nothing is told."""
    match check:
        case Estimate(easy=Sum((Term(first), Term(second)))) if first == second:
            return replace(check, easy=None, about=None)
        case Estimate(easy=Sum() as easy):
            return replace(check, easy=_all(easy, like))
        case _:
            return check


def _check(check: Check, like: Quantity) -> Check:
    """Write the time of day that a check is about as one."""
    match check:
        case Estimate(Sum((Term(Quantity() as number), *rest)), Quantity() as about, low, high):
            first = Term(on_clock(number, like))
            about, low, high = (on_clock(one, like) for one in (about, low, high))
            return Estimate(Sum((first, *rest)), about, low, high)
        case Estimate(low=low, high=high):
            return replace(check, low=on_clock(low, like), high=on_clock(high, like))
        case Agreed(answer=answer):
            return replace(check, answer=on_clock(answer, like))
        case Undone(links=(Sum((Term(Quantity() as number), *rest)), *links)):
            return replace(check, links=(Sum((Term(on_clock(number, like)), *rest)), *links))
        case _:
            return check


def _stops(line: Line, like: Quantity) -> Line:
    """Write the hours between which it is counted up as times of day."""
    if isinstance(line.because, Left):
        return replace(line, because=InAll(line.because.result))
    if not isinstance(line.because, CountedUp):
        return line
    because = replace(
        line.because,
        start=on_clock(line.because.start, like),
        end=on_clock(line.because.end, like),
        stops=tuple(on_clock(stop, like) for stop in line.because.stops),
    )
    match line.says:
        case Quantity() | Sum() as says:
            return replace(line, says=_all(says, like), because=because)
        case _:
            return replace(line, because=because)


def _point(line: Line, like: Quantity) -> Line:
    """Write the time of day with which a line begins as one, and the times that its reason names."""
    match line.because:
        case JumpedTo(reached) | InAll(reached) | Left(reached) | SoFar(reached):
            line = replace(line, because=JumpedTo(on_clock(reached, like)))
        case UnitsTaken() if isinstance(line.says, Sum) and isinstance(line.says.terms[0].part, Quantity):
            line = replace(line, because=JumpedTo(on_clock(line.says.terms[0].part, like)))
        case JumpedWholes(start) | JumpedToWhole(start):
            line = replace(line, because=replace(line.because, start=on_clock(start, like)))
        case _:
            pass
    landed = isinstance(line.because, JumpedTo)
    match line.says:
        case Quantity() as number if landed or _whole_minutes(number):
            return replace(line, says=on_clock(number, like))
        case Sum((Term(Quantity() as number), *rest)) if landed or _whole_minutes(number):
            return replace(line, says=Sum((Term(on_clock(number, like)), *rest)))
        case _:
            return line


def _whole_minutes(number: Quantity) -> bool:
    """Say whether a duration can be shown on a clock: an hour or later, no minutes left to be regrouped."""
    if number.kind is not Kind.TIME or number.ladder.style is not Style.MEASURE or number.value < HOUR:
        return False
    counts = zip(number.amounts, number.ladder.units, strict=True)
    return all(count < HOUR for count, unit in counts if unit.size < HOUR)


def _all(says: Expression, like: Quantity) -> Expression:
    """Write every number as a time of day."""
    match says:
        case Quantity():
            return on_clock(says, like)
        case Sum(terms):
            return Sum(tuple(Term(_all(term.part, like), term.taken) for term in terms))
        case _:
            return says
