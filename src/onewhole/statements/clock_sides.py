"""Reading times of day: 9:45 to 11:20, 9:45 + 1 h 35 min, 11:20 - 45 min."""

from collections.abc import Callable

from onewhole.number.clock import HALF_DAYS, HOUR, clock, face_minutes, later_same_face
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.statements.cursor import Cursor
from onewhole.statements.expression import Expression, Sum, kind, quantities, value
from onewhole.statements.gap import Gap
from onewhole.statements.tokens import TokenKind

UNTIL = frozenset({"to", "until", "till"})
FROM = frozenset({"from"})
#: The words of a problem about times of day.
CLOCK_WORDS = UNTIL | FROM | {"noon", "midnight"}
NOON = 12
_REMEDY = "Write 9:45 to 11:20, 9:45 + 1 h 35 min, or 11:20 - 45 min."

#: The parts of a side with their signs.
Side = tuple[tuple[Expression | Gap, bool], ...]


def clock_time(cursor: Cursor) -> Quantity:
    """Read a time of day: an hour from 1 to 12, two digits for the minutes, a.m. or p.m. where it is said."""
    spelt = cursor.here.text.lower().replace(" ", "").replace(".", "")
    hour, minutes = (int(digits) for digits in (spelt.partition(":")[0], spelt.partition(":")[2][:2]))
    half = spelt.partition(":")[2][2:]
    if not 1 <= hour <= NOON:
        cursor.refuse("a clock shows the hours from 1 to 12", "Write 1:15 p.m. for 13:15.")
    if half in {"noon", "midnight"} and (hour, minutes) != (NOON, 0):
        cursor.refuse("noon and midnight are at 12:00", "Write 12:00 noon, or a.m. or p.m.")
    cursor.take()
    late = half in {"pm", "noon"}
    hours = hour % NOON + NOON * late if half else hour
    return clock(hours * HOUR + minutes, halves=bool(half))


def clock_side(cursor: Cursor, first: Quantity, read_part: Callable[[Cursor], Expression | Gap]) -> Side:
    """Read what stands after a time of day: to another one, or how much later or earlier."""
    if any(cursor.word_ahead(0, frozenset({word})) for word in UNTIL):
        cursor.take()
        return _between(cursor, first, read_part(cursor))
    parts: list[tuple[Expression | Gap, bool]] = [(first, False)]
    while cursor.here.sort in {TokenKind.PLUS, TokenKind.MINUS}:
        taken = cursor.take().sort is TokenKind.MINUS
        place = cursor.here
        part = read_part(cursor)
        if isinstance(part, Quantity) and part.ladder.clock and taken and len(parts) == 1:
            return _between(cursor, part, first)
        if isinstance(part, Gap) or not _duration(part):
            cursor.refuse_at(place, "only a time in hours and minutes goes with a clock time", _REMEDY)
        parts.append((part, taken))
    change = sum(
        -value(part) if taken else value(part) for part, taken in parts[1:] if not isinstance(part, Gap)
    )
    return ((_enough(first, int(change)), False), *parts[1:])


def _enough(first: Quantity, change: int) -> Quantity:
    """Return the first time that shows the same and leaves a time of day after a change in minutes."""
    halves = first.ladder == HALF_DAYS
    least = (0 if halves else HOUR) - change
    return clock(later_same_face(first.parts, least, halves=halves), halves=halves)


def _between(cursor: Cursor, start: Quantity, end: Expression | Gap) -> Side:
    if not isinstance(end, Quantity) or not end.ladder.clock:
        cursor.refuse("a clock time is missing after “to”", _REMEDY)
    if start.ladder != end.ladder:
        cursor.refuse("one time has a.m. or p.m. and the other has not", "Say it of both times, or of none.")
    halves = start.ladder == HALF_DAYS
    later = later_same_face(end.parts, start.parts, halves=halves)
    return ((clock(later, halves=halves), False), (start, True))


def _duration(part: Expression) -> bool:
    numbers = quantities(part)
    minutes = all(one.ladder.style is Style.MEASURE and one.ladder.finest >= 1 for one in numbers)
    return kind(part) is Kind.TIME and minutes and not any(one.ladder.clock for one in numbers)


def between_times(asked: Expression) -> bool:
    """Say whether it is asked how long it is from one time of day to another."""
    match asked:
        case Sum((first, second)):
            return _is_clock(first.part) and _is_clock(second.part) and second.taken
        case _:
            return False


def time_asked(asked: Expression) -> Quantity | None:
    """Return the time of day from which a later or an earlier one is asked for; None for anything else."""
    match asked:
        case Sum((first, *rest)) if isinstance(first.part, Quantity) and first.part.ladder.clock:
            alone = not any(one.ladder.clock for term in rest for one in quantities(term.part))
            return first.part if alone else None
        case _:
            return None


def _is_clock(part: Expression) -> bool:
    return isinstance(part, Quantity) and part.ladder.clock


def as_read(asked: Expression) -> bool:
    """Say whether a problem with times of day is what would be read from it again: 1:15 after 11:40 is 13:15.

    True of every other problem.
    """
    if not has_clock(asked) or not isinstance(asked, Sum):
        return True
    first = asked.terms[0]
    if between_times(asked):
        end, start = (term.part for term in asked.terms)
        assert isinstance(end, Quantity)
        assert isinstance(start, Quantity)
        halves = start.ladder == HALF_DAYS
        later = later_same_face(face_minutes(end), start.parts, halves=halves)
        return start.ladder == end.ladder and face_minutes(start) == start.parts and later == end.parts
    assert isinstance(first.part, Quantity)
    change = int(value(asked) - first.part.value)
    return _enough(clock_of(first.part), change) == first.part


def clock_of(time: Quantity) -> Quantity:
    """Return the time of day that is read from what a clock shows."""
    return clock(face_minutes(time), halves=time.ladder == HALF_DAYS)


def has_clock(asked: Expression) -> bool:
    """Say whether a time of day stands anywhere in it."""
    return any(one.ladder.clock for one in quantities(asked))
