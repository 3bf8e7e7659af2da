"""Slips of the tongue: numbers that were said otherwise than the board writes them."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from onewhole.languages.english.listening import CORRECTING, PIECES, SMALL
from onewhole.notations.sentences.listened import Listened, NumberHeard
from onewhole.walkthroughs.listening.grammar import FREE, SOUND
from onewhole.walkthroughs.listening.words import (
    HeardNumber,
    HeardWord,
    ScriptItem,
    number_parts,
    numbers_heard,
    script_items,
)

#: Who says the right number within so many seconds after a wrong one has corrected it.
CORRECTED: Final = Fraction(6)
#: Who stumbles within so many seconds and words behind a number may have corrected it.
STUMBLE, SOON = Fraction(3, 2), 3
#: ... and who makes a sound that is no known word within so many.
AT_ONCE: Final = Fraction(3, 20)
#: Words to either side of a number that are listened to once more with it.
AROUND: Final = 2
#: A part is followed when so many numbers of its script were heard at their place, of all of them in
#: hundredths, and so many of those as they are written.
FOUND, AS_WRITTEN = 50, 60


@dataclass(frozen=True, slots=True)
class HeardOtherwise:
    """A number that seems to be said otherwise: what was said, what the board writes, when.

    ``heard`` and ``written`` are the words around it with the one and with the other, to be listened to once
    more between ``start`` and ``end``.
    """

    said: tuple[str, ...]
    board: str
    at: Fraction
    start: Fraction
    end: Fraction
    heard: tuple[str, ...]
    written: tuple[str, ...]


def followed(steps: Sequence[Sequence[Sequence[Listened]]], heard: Sequence[HeardWord]) -> bool:
    """Say whether what was heard is this script: most of its numbers were found, most of them as written."""
    items = script_items(steps)
    wanted = {at: one.said.words for at, one in enumerate(items) if isinstance(one.said, NumberHeard)}
    found = [number for number in numbers_heard(items, heard) if number.item != FREE]
    if not wanted:
        placed = {word.item for word in heard if word.item != FREE}
        return 100 * len(placed) >= FOUND * len(items)
    right = sum(number.parts == number_parts(wanted[number.item]) for number in found)
    places = {number.item for number in found}
    return 100 * len(places) >= FOUND * len(wanted) and 100 * right >= AS_WRITTEN * len(found)


def doubts(
    steps: Sequence[Sequence[Sequence[Listened]]], heard: Sequence[HeardWord]
) -> tuple[HeardOtherwise, ...]:
    """Return the numbers that seem to be said otherwise than they are written, in the order of the times.

    No doubt: a number that was put right afterwards, numbers of a step in another order, and one of which
    more than a count or a name of pieces is different.
    """
    return tuple(_doubts(script_items(steps), heard))


def _doubts(items: Sequence[ScriptItem], heard: Sequence[HeardWord]) -> Iterator[HeardOtherwise]:
    numbers = numbers_heard(items, heard)
    for number in numbers:
        if number.item == FREE:
            continue
        item = items[number.item]
        assert isinstance(item.said, NumberHeard), "a place of a number holds one"
        wanted = number_parts(item.said.words)
        if number.parts == wanted or _form(number.parts) != _form(wanted):
            continue
        if _put_right(number, wanted, numbers, heard) or _elsewhere(number, items, numbers):
            continue
        if _broken_off(number, heard):
            continue
        yield _doubt(number, item.said, heard)


def _form(parts: tuple[str, ...]) -> tuple[bool, ...]:
    return tuple(part in PIECES.values() for part in parts)


def _put_right(
    number: HeardNumber, wanted: tuple[str, ...], numbers: Sequence[HeardNumber], heard: Sequence[HeardWord]
) -> bool:
    """Say whether the right number follows: at the same place of the script, or in free words soon after."""
    said = heard[number.last - 1].end
    for other in numbers:
        if other.parts != wanted or other is number:
            continue
        if other.item == number.item:
            return True
        if other.item == FREE and 0 <= heard[other.first].start - said <= CORRECTED:
            return True
    return False


def _broken_off(number: HeardNumber, heard: Sequence[HeardWord]) -> bool:
    """Say whether speech stumbles right behind the number, so that it may have been put right unheard."""
    said = heard[number.last - 1].end
    for word in heard[number.last : number.last + SOON]:
        if word.item != FREE or word.start - said > STUMBLE:
            return False
        if word.word in CORRECTING or word.word in SMALL:
            return True
        if word.word == SOUND and word.start - said <= AT_ONCE:
            return True
    return False


def _elsewhere(number: HeardNumber, items: Sequence[ScriptItem], numbers: Sequence[HeardNumber]) -> bool:
    """Say whether this is another number of its step, which was not said at its own place."""
    right = {
        other.item
        for other in numbers
        if other.item != FREE and other.parts == number_parts(_words(items[other.item]))
    }
    return any(
        at != number.item
        and one.step == items[number.item].step
        and at not in right
        and number_parts(_words(one)) == number.parts
        for at, one in enumerate(items)
        if isinstance(one.said, NumberHeard)
    )


def _words(item: ScriptItem) -> tuple[str, ...]:
    return item.said.words if isinstance(item.said, NumberHeard) else ()


def _doubt(number: HeardNumber, said: NumberHeard, heard: Sequence[HeardWord]) -> HeardOtherwise:
    before, after = max(0, number.first - AROUND), min(len(heard), number.last + AROUND)
    left = tuple(one.word for one in heard[before : number.first] if one.word != SOUND)
    right = tuple(one.word for one in heard[number.last : after] if one.word != SOUND)
    return HeardOtherwise(
        number.words,
        said.shown,
        heard[number.first].start,
        heard[before].start,
        heard[after - 1].end,
        (*left, *number.words, *right),
        (*left, *said.words, *right),
    )
