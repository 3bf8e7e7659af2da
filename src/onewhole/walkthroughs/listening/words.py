"""What was heard at a part: words with their times, and the numbers among them."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from typing import Final

from msgspec import Struct

from onewhole.languages.english.listening import DIGITS, JOINS, PIECES, SMALL, TENS, WHOLES
from onewhole.notations.sentences.listened import Listened, NumberHeard
from onewhole.walkthroughs.listening.grammar import FREE

#: A number in free words is one phrase as long as its words follow each other within so many seconds.
TOGETHER: Final = Fraction(2, 5)
_NUMBER_WORDS: Final = frozenset({*SMALL, *TENS, *PIECES})


class HeardWord(Struct, frozen=True):
    """A word, its place in the script (``FREE`` for none), and when it was said, in seconds."""

    word: str
    item: int
    start: Fraction
    end: Fraction


class HeardNumber(Struct, frozen=True):
    """A number that was said: at which place of the script (or ``FREE``), its words, which of all words."""

    item: int
    words: tuple[str, ...]
    first: int
    last: int

    @property
    def parts(self) -> tuple[str, ...]:
        """Return what the number is compared by."""
        return number_parts(self.words)


class ScriptItem(Struct, frozen=True):
    """A word or number of the script, in which step and which of the step's sentences it stands."""

    step: int
    sentence: int
    said: Listened


def script_items(steps: Sequence[Sequence[Sequence[Listened]]]) -> tuple[ScriptItem, ...]:
    """Return the words and numbers of a part one after another, as its grammar numbers them."""
    return tuple(
        ScriptItem(step, sentence, one)
        for step, sentences in enumerate(steps)
        for sentence, said in enumerate(sentences)
        for one in said
    )


def number_parts(words: Iterable[str]) -> tuple[str, ...]:
    """Return the parts of a number: one piece and several, and fourths and quarters, are the same.

    >>> number_parts(("five", "and", "four", "sixths")) == number_parts(("five", "wholes", "four", "sixth"))
    True
    >>> number_parts(("twenty", "one", "quarters"))
    ('twenty one', 'fourth')
    """
    parts: list[str] = []
    for word in words:
        if word == JOINS or word in WHOLES:
            continue
        if parts and parts[-1] in TENS and word in DIGITS:
            parts[-1] = f"{parts[-1]} {word}"
        else:
            parts.append(PIECES.get(word, word))
    return tuple(parts)


def numbers_heard(items: Sequence[ScriptItem], heard: Sequence[HeardWord]) -> tuple[HeardNumber, ...]:
    """Return every number that was said, in order."""
    return tuple(_numbers(items, heard))


def _numbers(items: Sequence[ScriptItem], heard: Sequence[HeardWord]) -> Iterator[HeardNumber]:
    at = 0
    while at < len(heard):
        item = heard[at].item
        end = at + 1
        if item != FREE and isinstance(items[item].said, NumberHeard):
            while end < len(heard) and heard[end].item == item:
                end += 1
            yield HeardNumber(item, tuple(one.word for one in heard[at:end]), at, end)
        elif item == FREE and heard[at].word in _NUMBER_WORDS:
            while end < len(heard) and _goes_on(heard[end - 1], heard[end]):
                end += 1
            if heard[end - 1].word == JOINS:
                end -= 1
            yield HeardNumber(FREE, tuple(one.word for one in heard[at:end]), at, end)
        at = end


def _goes_on(before: HeardWord, word: HeardWord) -> bool:
    near = word.start - before.end <= TOGETHER
    return near and word.item == FREE and (word.word in _NUMBER_WORDS or word.word == JOINS)
