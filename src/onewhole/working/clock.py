"""A working with times of day: it is worked in hours and minutes from midnight, and shown on the clock."""

from msgspec.structs import replace

from onewhole.number.clock import HOUR, on_clock
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.statements.clock_sides import between_times, time_asked
from onewhole.statements.expression import Expression, Sum, Term, plus
from onewhole.working.checks import Agreed, Check, Estimate, Undone
from onewhole.working.line import Line
from onewhole.working.reasons.jumping import CountedUp, JumpedTo, JumpedToWhole, JumpedWholes
from onewhole.working.reasons.taking import AddedUnitByUnit, InAll, Left, SoFar, TakenUnitByUnit, UnitsTaken
from onewhole.working.working import Working

#: The ways that go with clock times, by their keys, the usual one first.
BETWEEN = ("count_up", "regroup_first", "wholes_first")
#: Reasons of a line that does something with each unit by itself.
BY_UNITS = TakenUnitByUnit | AddedUnitByUnit | UnitsTaken
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
        case Agreed(answer=Quantity() as answer):
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
        case JumpedTo(reached) | InAll(reached) | Left(reached) | SoFar(reached) if _on_a_face(reached):
            line = replace(line, because=JumpedTo(on_clock(reached, like)))
        case UnitsTaken() if isinstance(line.says, Sum) and isinstance(line.says.terms[0].part, Quantity):
            line = replace(line, because=JumpedTo(on_clock(line.says.terms[0].part, like)))
        case JumpedWholes(start) | JumpedToWhole(start):
            line = replace(line, because=replace(line.because, start=on_clock(start, like)))
        case _:
            pass
    landed = isinstance(line.because, JumpedTo)
    match line.says:
        case Quantity() as number if landed or _shows_minutes(number):
            return replace(line, says=on_clock(number, like))
        case Quantity() as number if _first_hour(number):
            return replace(line, says=plus(on_clock(Quantity(like.ladder, (0, 0)), like), number))
        case Sum((Term(Quantity() as number), *rest)) if (
            landed or _whole_minutes(number) or isinstance(line.because, JumpedWholes | JumpedToWhole)
        ):
            return replace(line, says=Sum((Term(on_clock(number, like)), *rest)))
        case Sum((Term(first), *_)) as says if _first_hour(first):
            return replace(line, says=_from_midnight(says, like, apart=isinstance(line.because, BY_UNITS)))
        case _:
            return line


def _from_midnight(says: Sum, like: Quantity, *, apart: bool) -> Sum:
    """Begin with midnight where only minutes are written: 12:00 a.m. + 70 min - 30 min is a time of day.

    ``apart`` keeps what is done with the minutes together, as beside any other hour.
    """
    midnight = Term(on_clock(Quantity(like.ladder, (0, 0)), like))
    return Sum((midnight, Term(says)) if apart else (midnight, *says.terms))


def _first_hour(first: Expression) -> bool:
    """Say whether a line begins with minutes and no hours, as it does in the first hour after midnight."""
    if not isinstance(first, Quantity) or first.ladder.clock:
        return False
    counts = zip(first.amounts, first.ladder.units, strict=True)
    return all(not count or unit.size < HOUR for count, unit in counts)


def _shows_minutes(number: Quantity) -> bool:
    """Say whether a duration can be shown on a clock as a time of the first hour or of a later one."""
    return _whole_minutes(number) or (_first_hour(number) and _on_a_face(number))


def _whole_minutes(number: Quantity) -> bool:
    """Say whether a duration can be shown on a clock: an hour or later, no minutes left to be regrouped."""
    if number.kind is not Kind.TIME or number.ladder.style is not Style.MEASURE or number.value < HOUR:
        return False
    return _on_a_face(number)


def _on_a_face(number: Quantity) -> bool:
    """Say whether there are no minutes left to be regrouped."""
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
