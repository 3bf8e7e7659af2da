"""Slips of the tongue: numbers that were said otherwise than the board writes them."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
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
#: A number stands in its place beside a word or number of the script that is at most so many before or behind
#: it there; so many words that belong to nothing may lie between.
NEAR, BETWEEN = 2, 2
#: In a part that is not followed a sentence counts where so many hundredths of it were heard.
SENTENCE = 70
#: A part is followed when so many numbers of its script were heard at their place, of all of them in
#: hundredths, and so many of those as they are written.
FOUND, AS_WRITTEN = 50, 60


@dataclass(frozen=True, slots=True)
class HeardOtherwise:
    """A number that seems to be said otherwise: what was said, what the board writes, when.

    ``heard`` are the words around it with what was said, ``written`` those with what is written, to be
    listened to once more between ``start`` and ``end``: each with all the words around it, and without
    those beside it that belong to nothing and may be a piece of the number.
    """

    said: tuple[str, ...]
    board: str
    at: Fraction
    start: Fraction
    end: Fraction
    heard: tuple[tuple[str, ...], ...]
    written: tuple[tuple[str, ...], ...]


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
    steps: Sequence[Sequence[Sequence[Listened]]], heard: Sequence[HeardWord], *, whole: bool = True
) -> tuple[HeardOtherwise, ...]:
    """Return the numbers that seem to be said otherwise than they are written, in the order of the times.

    No doubt: a number that was put right or said once more afterwards, one far from its neighbors in the
    script, numbers of a step in another order, and one of which more than a count or a name of pieces is
    different. ``whole`` says whether the part was followed; else only sentences count that were heard well by
    themselves, with every other number in them as it is written.
    """
    items = script_items(steps)
    return tuple(_doubts(items, _placed(items, heard), whole=whole))


def _doubts(
    items: Sequence[ScriptItem], heard: Sequence[HeardWord], *, whole: bool
) -> Iterator[HeardOtherwise]:
    numbers = numbers_heard(items, heard)
    near = [one for one in numbers if one.item != FREE and _in_place(one, heard)]
    last = {one.item: one for one in near}
    for number in near:
        if number is not last[number.item] or not (whole or _alone(number, items, heard, near)):
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


def _placed(items: Sequence[ScriptItem], heard: Sequence[HeardWord]) -> tuple[HeardWord, ...]:
    """Give words the place that they stand in.

    What is said twice in a step is heard at either place: words that stand between two others go between them
    where the script says the same there. A free number goes right behind the word before it where a number
    stands that is heard nowhere.
    """
    heard = _straightened(items, heard)
    placed = list(heard)
    had = {word.item for word in heard}
    for number in numbers_heard(items, heard):
        if number.item != FREE or number.first == 0:
            continue
        before = heard[number.first - 1].item
        places = range(before + 1, min(before + 1 + NEAR, len(items))) if before != FREE else range(0)
        place = next((at for at in places if isinstance(items[at].said, NumberHeard)), FREE)
        if place != FREE and place not in had and items[place].sentence == items[before].sentence:
            had.add(place)
            for at in range(number.first, number.last):
                placed[at] = replace(heard[at], item=place)
    return tuple(placed)


def _straightened(items: Sequence[ScriptItem], heard: Sequence[HeardWord]) -> tuple[HeardWord, ...]:
    """Put runs of words that stand out of order to a place between their neighbors that says the same."""
    runs = _runs(heard)
    had = {word.item for word in heard}
    made = list(heard)
    for before, run, after in zip(runs, runs[1:], runs[2:], strict=False):
        low, high = made[before[-1]].item, heard[after[0]].item
        places = [heard[at].item for at in run]
        if low < places[0] and places[-1] < high:
            continue
        for by in range(low + 1 - places[0], high - places[-1]):
            moved = {place + by for place in places}
            if not moved & had and all(items[place].said == items[place + by].said for place in places):
                had |= moved
                for at in run:
                    made[at] = replace(heard[at], item=heard[at].item + by)
                break
    return tuple(made)


def _runs(heard: Sequence[HeardWord]) -> list[list[int]]:
    """Return the runs of words that follow each other in the script too: of each its places in ``heard``."""
    runs: list[list[int]] = []
    for at, word in enumerate(heard):
        if word.item == FREE:
            continue
        if runs and 0 <= word.item - heard[runs[-1][-1]].item <= NEAR:
            runs[-1].append(at)
        else:
            runs.append([at])
    return runs


def _in_place(number: HeardNumber, heard: Sequence[HeardWord]) -> bool:
    """Say whether one of the words beside a number stands beside it in the script too."""
    before = reversed(heard[max(0, number.first - 1 - BETWEEN) : number.first])
    after = heard[number.last : number.last + 1 + BETWEEN]
    left = next((word.item for word in before if word.item != FREE), None)
    right = next((word.item for word in after if word.item != FREE), None)
    return (left is not None and 0 < number.item - left <= NEAR) or (
        right is not None and 0 < right - number.item <= NEAR
    )


def _alone(
    number: HeardNumber,
    items: Sequence[ScriptItem],
    heard: Sequence[HeardWord],
    numbers: Sequence[HeardNumber],
) -> bool:
    """Say whether a number's sentence was heard well by itself: much of it, its other numbers as written."""
    place = (items[number.item].step, items[number.item].sentence)
    mine = {at for at, one in enumerate(items) if (one.step, one.sentence) == place}
    said = {word.item for word in heard if word.item in mine}
    others = [one for one in numbers if one.item in mine and one.item != number.item]
    right = all(one.parts == number_parts(_words(items[one.item])) for one in others)
    return bool(others) and right and 100 * len(said) >= SENTENCE * len(mine)


def _form(parts: tuple[str, ...]) -> tuple[bool, ...]:
    return tuple(part in PIECES.values() for part in parts)


def _put_right(
    number: HeardNumber, wanted: tuple[str, ...], numbers: Sequence[HeardNumber], heard: Sequence[HeardWord]
) -> bool:
    """Say whether the right number follows: at its place, in free words, or at once elsewhere."""
    said = heard[number.last - 1].end
    for other in numbers:
        if other.parts != wanted or other is number:
            continue
        if other.item == number.item:
            return True
        later = heard[other.first].start - said
        if other.item == FREE and 0 <= later <= CORRECTED:
            return True
        if 0 <= later <= STUMBLE and heard[number.last].item not in _next(number):
            return True
    return False


def _next(number: HeardNumber) -> range:
    """Return what follows a number in its script."""
    return range(number.item + 1, number.item + 1 + NEAR)


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
    loose = [at for at in range(before, number.first) if _belongs(heard[at : number.first])]
    behind = [at for at in range(number.last, after) if _belongs(heard[number.last : at + 1])]
    lefts, rights = [left], [right]
    if loose:
        lefts.append(tuple(one.word for one in heard[before : min(loose)] if one.word != SOUND))
    if behind:
        rights.append(tuple(one.word for one in heard[max(behind) + 1 : after] if one.word != SOUND))
    return HeardOtherwise(
        number.words,
        said.shown,
        heard[number.first].start,
        heard[before].start,
        heard[after - 1].end,
        tuple((*one, *number.words, *other) for one in lefts for other in rights),
        tuple((*one, *said.words, *other) for one in lefts for other in rights),
    )


def _belongs(words: Sequence[HeardWord]) -> bool:
    """Say whether some words belong to nothing in the script."""
    return all(word.item == FREE for word in words)
