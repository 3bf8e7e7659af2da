"""Slips of the tongue: numbers that were said otherwise than the board writes them."""

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from onewhole.languages.english.listening import CORRECTING, PIECES, SMALL, TENS
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
#: Counts that may be said for one another: not zero.
COUNTED: Final = SMALL[1:]
#: By how much what was said must fit better than what is written to be told, and than any other number, in
#: natural logarithms; and how well it must fit, for each second. Set on tuning voices only.
MARGIN, CLEAR, FITS = 60, 20, -600
#: So often a number like it must be said elsewhere to tell how a voice says it.
USUAL: Final = 2
#: A number stands in its place beside a word or number of the script that is at most so many before or behind
#: it there; so many words that belong to nothing may lie between.
NEAR, BETWEEN = 2, 2
#: In a part that is not followed a sentence counts where so many hundredths of it were heard.
SENTENCE = 70
#: A part is followed when so many numbers of its script were heard at their place, of all of them in
#: hundredths, and so many of those as they are written.
FOUND, AS_WRITTEN = 50, 60


class HeardOtherwise(Struct, frozen=True):
    """A number that was said otherwise: what was said, what the board writes, at which second."""

    said: tuple[str, ...]
    board: str
    at: Fraction


class NumberAsked(Struct, frozen=True):
    """A number that is listened to once more between two seconds: which of all wordings was said there?

    ``numbers`` are what may have been said: first the number as it is written, in each of its forms, then
    with one count or one name of pieces changed. ``wordings`` are these with the words around them.
    """

    number: HeardNumber
    written: NumberHeard
    start: Fraction
    end: Fraction
    numbers: tuple[tuple[str, ...], ...]
    wordings: tuple[tuple[str, ...], ...]

    @property
    def seconds(self) -> Fraction:
        """Return the seconds that are listened to."""
        return self.end - self.start


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


def questions(
    steps: Sequence[Sequence[Sequence[Listened]]], heard: Sequence[HeardWord], *, whole: bool = True
) -> tuple[NumberAsked, ...]:
    """Return every number of the script that was heard in its place, to be listened to once more.

    Of a number that was said again only the last time counts. ``whole`` says whether the part was followed;
    else only sentences count that were heard well by themselves, with every other number in them as it is
    written.
    """
    items = script_items(steps)
    heard = _placed(items, heard)
    near = [one for one in numbers_heard(items, heard) if one.item != FREE and _in_place(one, heard)]
    last = {one.item: one for one in near}
    return tuple(
        _question(number, items, heard)
        for number in near
        if number is last[number.item] and (whole or _alone(number, items, heard, near))
    )


def slips(
    steps: Sequence[Sequence[Sequence[Listened]]],
    heard: Sequence[HeardWord],
    asked: Sequence[NumberAsked],
    fits: Sequence[Sequence[int]],
) -> tuple[HeardOtherwise, ...]:
    """Return the numbers that were said otherwise, in the order of the times.

    ``fits`` says of each question how well each wording fits, in natural logarithms. No slip: a number that
    was put right or said once more afterwards, and numbers of a step in another order.
    """
    items = script_items(steps)
    heard = _placed(items, heard)
    numbers = numbers_heard(items, heard)
    answers = [_best(one, fit) for one, fit in zip(asked, fits, strict=True)]
    return tuple(
        HeardOtherwise(said, one.written.shown, heard[one.number.first].start)
        for at, (one, answer) in enumerate(zip(asked, answers, strict=True))
        if (said := _surely(one, answer, [*answers[:at], *answers[at + 1 :]]))
        and not _put_right(one.number, number_parts(one.written.words), numbers, heard)
        and not _broken_off(one.number, heard)
        and not _elsewhere(replace(one.number, words=said), items, numbers)
    )


#: How well each number fits in its best wording, by what it is compared by; the one that is written first.
HowWell = Mapping[tuple[str, ...], tuple[int, tuple[str, ...]]]


def _best(asked: NumberAsked, fits: Sequence[int]) -> HowWell:
    best: dict[tuple[str, ...], tuple[int, tuple[str, ...]]] = {}
    for words, fit in zip(asked.numbers, fits, strict=True):
        parts = number_parts(words)
        if parts not in best or fit > best[parts][0]:
            best[parts] = (fit, words)
    return best


def _surely(asked: NumberAsked, answer: HowWell, others: Sequence[HowWell]) -> tuple[str, ...]:
    """Return the number that was surely said in place of what is written; nothing where none was."""
    written = number_parts(asked.written.words)
    (fit, said), *rest = sorted(answer.values(), reverse=True)
    parts = number_parts(said)
    if parts == written or _form(parts) != _form(written) or fit < FITS * asked.seconds:
        return ()
    if any(fit - other < CLEAR for other, words in rest if number_parts(words) != written):
        return ()
    return said if fit - answer[written][0] >= MARGIN + _by_voice(written, parts, others) else ()


def _by_voice(written: tuple[str, ...], said: tuple[str, ...], others: Sequence[HowWell]) -> int:
    """Return by how much this voice seems to say one for the other wherever it says such a number.

    A voice whose fifths sound like eighths says so each time: that is no slip of the tongue.
    """
    changed = {(one, other) for one, other in zip(written, said, strict=True) if one != other}
    usual: list[int] = []
    for answer in others:
        (parts, (fit, _)), *rest = answer.items()
        usual += [
            other - fit
            for changes, (other, _) in rest
            if len(parts) == len(changes)
            and {(one, two) for one, two in zip(parts, changes, strict=True) if one != two} == changed
        ]
    return max(0, sorted(usual)[len(usual) // 2]) if len(usual) >= USUAL else 0


def changed(words: Sequence[str]) -> Iterator[tuple[str, ...]]:
    """Give a number with one count or one name of pieces changed, each name for one piece and for several.

    >>> ("seven", "fifths") in set(changed(("six", "fifths")))
    True
    """
    for at, word in enumerate(words):
        for kind in (COUNTED, TENS, tuple(PIECES)):
            if word in kind:
                for other in kind:
                    if PIECES.get(other, other) != PIECES.get(word, word):
                        yield from _forms((*words[:at], other, *words[at + 1 :]))


def _forms(words: Sequence[str]) -> Iterator[tuple[str, ...]]:
    """Give a number as it is said of one piece and of several: what is heard of either is the same."""
    yield tuple(words)
    if words[-1] in PIECES:
        for other, name in PIECES.items():
            if name == PIECES[words[-1]] and other != words[-1]:
                yield (*words[:-1], other)


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
        if other.parts != wanted or other == number:
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


def _question(number: HeardNumber, items: Sequence[ScriptItem], heard: Sequence[HeardWord]) -> NumberAsked:
    written = items[number.item].said
    assert isinstance(written, NumberHeard), "a place of a number holds one"
    before, after = number.first, number.last
    while before > max(0, number.first - AROUND) and heard[before - 1].word != SOUND:
        before -= 1
    while after < min(len(heard), number.last + AROUND) and heard[after].word != SOUND:
        after += 1
    left = tuple(one.word for one in heard[before : number.first])
    right = tuple(one.word for one in heard[number.last : after])
    numbers = tuple(dict.fromkeys([*_forms(written.words), *_forms(number.words), *changed(written.words)]))
    return NumberAsked(
        number,
        written,
        heard[before].start,
        heard[after - 1].end,
        numbers,
        tuple((*left, *one, *right) for one in numbers),
    )
