"""A word problem typed as a story: its numbers found, and what it may ask. The teacher chooses."""

import re
from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations
from typing import assert_never

from msgspec import Struct

from onewhole.errors import OnewholeError
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.sentences.typed import loosened, typed
from onewhole.sheets.story_cues import StoryAsks, StoryCues, cues, names_a_thing, spelt_counts, spelt_numbers
from onewhole.statements.expression import Sum
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import Question, Statement
from onewhole.statements.tokens import LONGEST_TEXT
from onewhole.statements.whole_groups import GroupsAsk

#: So many numbers of a story are taken for amounts, and so many readings are offered.
MOST_NUMBERS, MOST_READINGS = 4, 6

#: A unit that no number of a problem has, after its number; a money sign before it.
_UNIT = re.compile(r"(?<=[\d\s\u00bc-\u00be\u2150-\u215e])[A-Za-z]{2,}\.?(?=[\s=+\u2212\u2013-]|$)|\$(?=\d)")
_NEXT_WORD = re.compile(r"\s*(?:of\s+)?(?:an?\s+|the\s+)?(?P<word>[a-z]+)")


class StoryReadings(Struct, frozen=True):
    """What a story may ask, the likeliest first; ``sure`` says that its words tell the first of them."""

    asked: tuple[Statement, ...]
    sure: bool

    def __bool__(self) -> bool:
        """Say whether there is any."""
        return bool(self.asked)


def story_readings(story: str) -> StoryReadings:
    """Return what the words of a story may ask, with the numbers that stand in them.

    A number that is part of a name (Room 12) is none of them, and where two amounts are of one thing (yards)
    those of other things (3 children) are left out. A unit is kept where every amount has one.

    >>> [
    ...     text(one)
    ...     for one in story_readings("Maya has 4 1/4 yards. She uses 1 3/4 yards. How much is left?").asked
    ... ]
    ['4 1/4 - 1 3/4', '4 1/4 + 1 3/4']
    """
    plain = re.sub(r"[^\S ]", " ", loosened(story[:LONGEST_TEXT]))
    found = cues(plain)
    every = _numbers(plain)
    numbers = _amounts(every)
    if not 2 <= len(numbers) <= MOST_NUMBERS:
        return StoryReadings((), sure=False)
    asked = tuple(_once(_readings(_alike(numbers), found)))
    told_at_once = found.told is StoryAsks.TOGETHER or len(numbers) == 2
    sure = bool(asked) and found.sure and told_at_once and len(numbers) == len(every)
    return StoryReadings(asked[:MOST_READINGS], sure)


def without_units(line: str) -> Statement | None:
    """Return the sum or difference that a line is without its unknown units; None where it is none.

    >>> text(without_units("4 5/8 cups - 1 7/8 cups")), text(without_units("$4.50 - $1.75"))
    ('4 5/8 - 1 7/8', '4.50 - 1.75')
    """
    plain = _UNIT.sub(" ", line[:LONGEST_TEXT])
    if plain == line:
        return None
    try:
        found = read_statement(plain)
    except OnewholeError:
        return None
    return found if isinstance(found, Question) and isinstance(found.asked, Sum) else None


class _Amount(Struct, frozen=True):
    """A number of a story, and the word after it."""

    start: int
    number: Quantity
    thing: str


def _numbers(story: str) -> tuple[_Amount, ...]:
    """Return the numbers of a story in its order, those that are part of a name left out."""
    spots = [
        (spot.start, spot.end, spot.thing)
        for spot in typed(story).spots
        if isinstance(spot.thing, Quantity) and not names_a_thing(story[: spot.start])
    ]
    for spelt in (spelt_numbers, spelt_counts):
        if spelt is spelt_counts and len(spots) > 1:
            break
        spots += [
            (one.start, one.end, read_quantity(one.digits))
            for one in spelt(story)
            if all(one.end <= start or one.start >= end for start, end, _ in spots)
        ]
    return tuple(
        _Amount(start, thing, _thing(story[end:]))
        for start, end, thing in sorted(spots, key=lambda one: one[0])
    )


def _thing(after: str) -> str:
    """Return the word after a number, the same for one and for several: yard and yards."""
    found = _NEXT_WORD.match(after.lower())
    return found["word"].removesuffix("s") if found else ""


def _amounts(numbers: Sequence[_Amount]) -> tuple[Quantity, ...]:
    """Return the numbers that are amounts of one thing; all of them where no two are."""
    things = [one.thing if one.number.kind is Kind.NUMBER else one.number.kind.name for one in numbers]
    shared = {thing for thing in things if thing and things.count(thing) > 1}
    if not shared:
        return tuple(one.number for one in numbers)
    kept = [
        one.number
        for one, thing in zip(numbers, things, strict=True)
        if thing in shared or _broken(one.number)
    ]
    return tuple(kept)


def _broken(number: Quantity) -> bool:
    """Say whether a number has a fraction: that is an amount, and no count of children."""
    return number.kind is Kind.NUMBER and number.value.denominator > 1


def _alike(numbers: Sequence[Quantity]) -> tuple[str, ...]:
    """Write the numbers as a problem has them: with units where every one has a unit, else all without."""
    if len({number.kind for number in numbers}) == 1:
        return tuple(map(text, numbers))
    return tuple(
        text(number) if number.kind is Kind.NUMBER or len(number.amounts) > 1 else str(number.amounts[0])
        for number in numbers
    )


def _readings(numbers: tuple[str, ...], found: StoryCues) -> Iterator[Statement]:
    """Yield what may be asked, the likeliest first; what no problem can ask is passed over."""
    apart = [*_apart(numbers), *(one for pair in _pairs(numbers) for one in _apart(pair))]
    together = [" + ".join(numbers), *(" + ".join(pair) for pair in _pairs(numbers))]
    which = [f"{first} ? {second}" for first, second in combinations(numbers, 2)][:1]
    products = [" x ".join(numbers)] if found.equal_shares and len(numbers) == 2 else []
    match found.told:
        case StoryAsks.TOGETHER:
            order = [*together, *apart]
        case StoryAsks.WHICH:
            order = [*which, *apart, *together]
        case StoryAsks.APART | None:
            order = [*apart, *together]
        case _:
            assert_never(found.told)
    if found.equal_shares:
        groups = _in_groups(numbers, found.groups)
        order = [*groups, *products, *order] if found.groups else [*products, *order, *groups]
    for typed_problem in order:
        try:
            yield read_statement(typed_problem)
        except OnewholeError:
            continue


def _in_groups(numbers: tuple[str, ...], told: GroupsAsk | None) -> list[str]:
    """Return what may be asked of things in groups, where one number says how many a group holds.

    The one that the words tell comes first.
    """
    if len(numbers) != 2:
        return []
    order = sorted(GroupsAsk, key=lambda one: one is not told)
    return [f"{' / '.join(numbers)}, {asks.value}" for asks in order]


def _pairs(numbers: tuple[str, ...]) -> tuple[tuple[str, ...], ...]:
    return tuple(combinations(numbers, 2)) if len(numbers) > 2 else ()


def _apart(numbers: Sequence[str]) -> Iterator[str]:
    """Yield the first number less the others, and where that is below zero the largest one less them."""
    first, *rest = numbers
    yield " - ".join(numbers)
    for at, larger in enumerate(rest):
        yield " - ".join((larger, first, *rest[:at], *rest[at + 1 :]))


def _once(found: Iterable[Statement]) -> Iterator[Statement]:
    seen: set[str] = set()
    for one in found:
        if text(one) not in seen:
            seen.add(text(one))
            yield one
