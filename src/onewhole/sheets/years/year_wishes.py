"""A year as a teacher types it: a setting a line, as at the top of a sheet."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from datetime import date
from difflib import get_close_matches

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.sheets.header import MOST_MINUTES
from onewhole.sheets.typed_lines import lines_of, setting_in
from onewhole.sheets.wishes import MOST_PROBLEMS
from onewhole.sheets.years.table import WEEKS, YEAR_WEEKS

#: As they are typed, Monday first; two letters and more of one are enough.
WEEKDAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
_LETTERS = 2
#: A page has at least so many problems: some of the topic, and room for what comes back.
FEWEST_PROBLEMS = 4
#: More days than these without school are a slip of the keys.
LONGEST_FREE = 60
FIRST_YEAR, LAST_YEAR = 2000, 2999
#: More mistakes than these are counted and not told.
MOST_TOLD = 20


class YearError(InputError):
    """A year cannot be planned as it is typed. ``mistakes`` are all that is wrong, line by line."""

    mistakes: tuple[InputError, ...] = ()


class WeeksMoved(Struct, frozen=True):
    """The topics usually taught from one week to another begin in the week ``to`` instead."""

    first: int
    last: int
    to: int


class YearWishes(Struct, frozen=True):
    """A year: its grade, the day it begins, on which weekdays pages go home, and when there is no school.

    ``free`` are the days without school, ``minutes`` and ``problems`` what a page may have. The topics of
    weeks that are ``left_out`` are not planned; ``moves`` are done one after another.
    """

    first_day: date
    grade: int = 4
    weekdays: frozenset[int] = frozenset(range(5))
    free: frozenset[date] = frozenset()
    minutes: int = 20
    problems: int = 10
    moves: tuple[WeeksMoved, ...] = ()
    left_out: tuple[int, ...] = ()


def read_year(typed: str, file: str | None = None) -> YearWishes:
    r"""Read a year as typed; every setting but the first day may be left out.

    ``file`` is the name the teacher knows the text by. Raises YearError with every mistake, each with its
    line and column.

    >>> read_year("first day: 2026-09-08\nnights: Mon Tue Thu\nno school: 2026-11-26 to 2026-11-27").minutes
    20
    """
    found, mistakes, seen = YearWishes(date.min), list[InputError](), dict[str, int]()
    for number, line in enumerate(lines_of(typed), start=1):
        if not line.strip() or line.lstrip().startswith("#"):
            continue
        try:
            found = _with_line(found, line, number, seen)
        except InputError as mistake:
            mistakes.append(mistake)
    if "first day" not in seen:
        remedy = "Write it as: first day: 2026-09-08"
        mistakes.append(YearError("the first day of the year is not there", line=1, column=1, remedy=remedy))
    if mistakes:
        raise gathered(mistakes, file)
    return found


def gathered(mistakes: Sequence[InputError], file: str | None) -> YearError:
    """Make one refusal of all the mistakes in a year."""
    placed = [one.placed(file=file) for one in mistakes]
    if len(placed) == 1:
        (only,) = placed
        found = YearError(only.what, file=file, line=only.line, column=only.column, remedy=only.remedy)
    else:
        told = "\n".join(f"  {one}" for one in placed[:MOST_TOLD])
        more = f"\n  and {len(placed) - MOST_TOLD} more" if len(placed) > MOST_TOLD else ""
        found = YearError(f"{len(placed)} things in this year need a change:\n{told}{more}")
    found.mistakes = tuple(placed)
    return found


def write_year(year: YearWishes) -> str:
    r"""Write a year so that it reads back the same.

    >>> write_year(YearWishes(date(2026, 9, 8), grade=5)).splitlines()[:2]
    ['grade: 5', 'first day: 2026-09-08']
    """
    lines = [
        f"grade: {year.grade}",
        f"first day: {year.first_day.isoformat()}",
        f"nights: {' '.join(WEEKDAYS[day][:3] for day in sorted(year.weekdays))}",
        f"minutes: {year.minutes}",
        f"problems: {year.problems}",
        *(f"no school: {_span(first, last)}" for first, last in _spans(year.free)),
        *(f"move: {_weeks_span(one)} to {one.to}" for one in year.moves),
    ]
    if year.left_out:
        lines.append(f"leave out: {', '.join(map(str, year.left_out))}")
    return "\n".join(lines) + "\n"


def _spans(free: frozenset[date]) -> Iterator[tuple[date, date]]:
    first: date | None = None
    for ordinal in sorted(day.toordinal() for day in free):
        day = date.fromordinal(ordinal)
        first = first or day
        if date.fromordinal(ordinal + 1) not in free:
            yield first, day
            first = None


def _span(first: date, last: date) -> str:
    return first.isoformat() if first == last else f"{first.isoformat()} to {last.isoformat()}"


def _weeks_span(one: WeeksMoved) -> str:
    return str(one.first) if one.first == one.last else f"{one.first}-{one.last}"


def _with_line(found: YearWishes, line: str, number: int, seen: dict[str, int]) -> YearWishes:
    said = setting_in(line)
    if said is None:
        what, remedy = "this line is no setting of a year", f"Write a name, a colon and a value: {_NAMES}."
        raise YearError(what, line=number, column=1, remedy=remedy)
    name = " ".join(said["name"].lower().split())
    begins = said.start("name") + 1
    if name not in _READ:
        near = get_close_matches(name, _READ, n=1)
        remedy = f"Did you mean {near[0]}?" if near else f"The settings of a year are: {_NAMES}."
        raise YearError(f"there is no setting “{said['name']}”", line=number, column=begins, remedy=remedy)
    if name in seen and name not in _SEVERAL:
        what = f"“{name}” stands on line {seen[name]} already"
        raise YearError(what, line=number, column=begins, remedy="Keep one of the two lines.")
    seen.setdefault(name, number)
    value = said["value"]
    lead = said.start("value") + len(value) - len(value.lstrip())
    try:
        return _READ[name](found, value.strip())
    except InputError as mistake:
        placed = mistake if mistake.column else YearError(mistake.what, column=1, remedy=mistake.remedy)
        raise placed.placed(line=number, columns=lead) from None


def _parts(value: str) -> Iterator[tuple[int, str]]:
    """Yield what stands between commas, each with the column it begins in."""
    at = 0
    for part in value.split(","):
        if part.strip():
            yield at + len(part) - len(part.lstrip()) + 1, part.strip()
        at += len(part) + 1


def _count(said: str, name: str, least: int, most: int, column: int = 1) -> int:
    if not (said.isascii() and said.isdigit() and len(said) <= 4 and least <= int(said) <= most):
        what, remedy = f"“{said[:30]}” is no {name}", f"Write a number from {least} to {most}."
        raise YearError(what, column=column, remedy=remedy)
    return int(said)


def _day(said: str, column: int = 1) -> date:
    try:
        day = date.fromisoformat(said)
    except ValueError:
        day = date.min
    if not FIRST_YEAR <= day.year <= LAST_YEAR:
        what, remedy = f"“{said[:30]}” is not a day of a school year", "Write it as 2026-09-08."
        raise YearError(what, column=column, remedy=remedy)
    return day


def _grade(found: YearWishes, said: str) -> YearWishes:
    return replace(
        found, grade=_count(said, "grade that a year is planned for", min(YEAR_WEEKS), max(YEAR_WEEKS))
    )


def _first_day(found: YearWishes, said: str) -> YearWishes:
    return replace(found, first_day=_day(said))


def _nights(found: YearWishes, said: str) -> YearWishes:
    days = set()
    for column, word in _words(said.replace(",", " ")):
        named = [at for at, day in enumerate(WEEKDAYS) if day.casefold().startswith(word.casefold())]
        if len(word) < _LETTERS or len(named) != 1:
            what = f"“{word[:30]}” is no day of the week"
            raise YearError(what, column=column, remedy="Write days as Mon Tue Wed Thu Fri.")
        days.add(named[0])
    if not days:
        raise YearError("no night of the week is named", column=1, remedy="Write days as Mon Tue Thu.")
    return replace(found, weekdays=frozenset(days))


def _words(said: str) -> Iterator[tuple[int, str]]:
    at = 0
    for word in said.split(" "):
        if word:
            yield at + 1, word
        at += len(word) + 1


def _no_school(found: YearWishes, said: str) -> YearWishes:
    free = set(found.free)
    for column, part in _parts(said):
        first, between, last = part.partition(" to ")
        begins = _day(first.strip(), column)
        after = column + len(first) + len(between)
        ends = _day(last.strip(), after) if between else begins
        if not 0 <= (ends - begins).days <= LONGEST_FREE:
            many = max(0, (ends - begins).days + 1)
            what = f"from {begins.isoformat()} to {ends.isoformat()} there are {many} days"
            remedy = f"Write the earlier day first, and at most {LONGEST_FREE} days at once."
            raise YearError(what, column=column, remedy=remedy)
        free |= {date.fromordinal(at) for at in range(begins.toordinal(), ends.toordinal() + 1)}
    if not said:
        raise YearError("no day is named", column=1, remedy="Write days as 2026-11-26 to 2026-11-27.")
    return replace(found, free=frozenset(free))


def _minutes(found: YearWishes, said: str) -> YearWishes:
    return replace(found, minutes=_count(said, "number of minutes", 5, MOST_MINUTES))


def _problems(found: YearWishes, said: str) -> YearWishes:
    return replace(found, problems=_count(said, "number of problems", FEWEST_PROBLEMS, MOST_PROBLEMS))


def _move(found: YearWishes, said: str) -> YearWishes:
    weeks, between, to = said.partition(" to ")
    if not between:
        raise YearError(
            f"“{said[:30]}” says not where to",
            column=1,
            remedy="Write weeks as 18-25 to 9, or one as 26 to 12.",
        )
    first, _, last = weeks.partition("-")
    begins = _week(first, 1)
    ends = _week(last, len(first) + 2) if last else begins
    if ends < begins:
        raise YearError(
            f"week {ends} is before week {begins}", column=1, remedy="Write the earlier one first."
        )
    return replace(
        found, moves=(*found.moves, WeeksMoved(begins, ends, _week(to, len(weeks) + len(between) + 1)))
    )


def _week(said: str, column: int) -> int:
    return _count(said.strip(), "week", 1, WEEKS, column)


def _leave_out(found: YearWishes, said: str) -> YearWishes:
    weeks = (_week(part, column) for column, part in _parts(said))
    return replace(found, left_out=tuple(sorted({*found.left_out, *weeks})))


_READ: Mapping[str, Callable[[YearWishes, str], YearWishes]] = {
    "grade": _grade,
    "first day": _first_day,
    "nights": _nights,
    "no school": _no_school,
    "minutes": _minutes,
    "problems": _problems,
    "move": _move,
    "leave out": _leave_out,
}
_NAMES = ", ".join(_READ)
#: Settings that may stand on several lines.
_SEVERAL = frozenset({"no school", "move"})
