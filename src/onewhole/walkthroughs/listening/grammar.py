"""What may be said at a part of the film: its script with every number left open, and free words between.

A grammar is a graph: states, and arcs with a word or none. Its script runs straight through, word after word:
what is read as it stands is followed closely. Wherever a number begins or ends, and between sentences, speech
may leave the script for free words, sounds that are no known word, or another piece of the same step,
and come back: that is how a step told in another order, begun again or corrected is followed.
"""

from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import Final

from msgspec import Struct

from onewhole.languages.english.listening import (
    DIGITS,
    FILLERS,
    JOINS,
    LARGE,
    PIECES,
    SAME,
    SMALL,
    TENS,
    WHOLES,
)
from onewhole.notations.sentences.listened import Listened, NumberHeard, PlainWord

#: An arc that belongs to no item of the script.
FREE: Final = -1
#: A sound that is no known word.
SOUND: Final = "+sound+"

# Chances in millionths: our own choice, from tuning voices. They need not add up to one.
CERTAIN: Final = 1_000_000
NEXT: Final = 800_000
OTHER_WORD: Final = 200_000
SKIP: Final = 20_000
LEAVE: Final = 100_000
COME_BACK: Final = 50_000
FILLER: Final = 20
SAY_SOUND: Final = 400
MORE_SOUND: Final = 40_000
MOVE_ON: Final = 2_000
FREE_NUMBER: Final = 20_000
EXPECTED: Final = 300_000
OPEN: Final = 30_000


class Arc(Struct, frozen=True):
    """From one state to another with a word, or with none (""); ``item`` is the place in the script."""

    start: int
    end: int
    chance: int
    word: str = ""
    item: int = FREE


class Grammar(Struct, frozen=True):
    """Arcs from state 0 to state ``last``."""

    arcs: tuple[Arc, ...]
    last: int


class _Builder:
    """States and arcs under construction."""

    def __init__(self) -> None:
        self.arcs: list[Arc] = []
        self.states = 1

    def state(self) -> int:
        self.states += 1
        return self.states - 1

    def arc(self, start: int, end: int, chance: int, word: str = "", item: int = FREE) -> None:
        self.arcs.append(Arc(start, end, chance, word, item))


def grammar(steps: Sequence[Sequence[Sequence[Listened]]]) -> Grammar:
    """Return the grammar of a part: steps of sentences of words and numbers, the items numbered through."""
    made = _Builder()
    here, item = 0, 0
    for step in steps:
        here, item = _step(made, here, step, item)
    return Grammar(tuple(made.arcs), here)


def _step(made: _Builder, first: int, step: Sequence[Sequence[Listened]], item: int) -> tuple[int, int]:
    """Put one step behind state ``first``; return where it ends, and the next item's number."""
    hub = made.state()
    here = first
    made.arc(here, hub, LEAVE)
    for sentence in step:
        made.arc(hub, here, COME_BACK)
        before: int | None = None
        for at, one in enumerate(sentence):
            after = made.state()
            entries = [(here, NEXT)] if before is None else [(here, NEXT), (before, SKIP)]
            match one:
                case PlainWord(word):
                    _word(made, entries, after, word, item)
                case NumberHeard(words):
                    made.arc(here, hub, LEAVE)
                    made.arc(hub, here, COME_BACK)
                    _number(made, here, after, words, item)
                    made.arc(after, hub, LEAVE)
                    if at + 1 < len(sentence) and isinstance(sentence[at + 1], PlainWord):
                        made.arc(hub, after, COME_BACK)
            before, here = here, after
            item += 1
        made.arc(here, hub, LEAVE)
    last = made.state()
    made.arc(here, last, CERTAIN)
    own = {one.word for sentence in step for one in sentence if isinstance(one, PlainWord)}
    for word in sorted(own.union(FILLERS)):
        made.arc(hub, hub, FILLER, word)
    unknown = made.state()
    made.arc(hub, unknown, SAY_SOUND, SOUND)
    made.arc(unknown, unknown, MORE_SOUND, SOUND)
    made.arc(unknown, hub, CERTAIN)
    made.arc(unknown, last, SKIP)
    made.arc(hub, last, MOVE_ON, "<sil>")
    free = made.state()
    made.arc(hub, free, FREE_NUMBER)
    _number(made, free, hub, (), FREE)
    return last, item


def _word(made: _Builder, entries: Iterable[tuple[int, int]], end: int, word: str, item: int) -> None:
    """Put a word, and what may be said for it, between its entries (state, chance) and a state."""
    for start, chance in entries:
        made.arc(start, end, chance, word, item)
        for other in SAME.get(word, ()):
            here = start
            for at, part in enumerate(other, start=1):
                there = end if at == len(other) else made.state()
                likely = chance * OTHER_WORD // CERTAIN if at == 1 else CERTAIN
                made.arc(here, there, likely, part, item)
                here = there


def _number(made: _Builder, start: int, end: int, words: Sequence[str], item: int) -> None:
    """Put an open number between two states; the words of the script are likelier than others."""
    plain = all(word in SMALL or word in TENS or word in PIECES or word == JOINS for word in words)
    if plain and not any(one in TENS and other in PIECES for one, other in pairwise(words)):
        _mixed(made, start, end, frozenset(words), item)
    else:
        _as_written(made, start, end, words, item)


def _mixed(made: _Builder, start: int, end: int, likely: frozenset[str], item: int) -> None:
    """Wholes, wholes and pieces, pieces, or the name of pieces alone; each of any size."""
    inside, whole, joined, top = (made.state() for _ in range(4))
    made.arc(start, inside, CERTAIN)
    _count(made, inside, whole, likely, item)
    made.arc(whole, end, LEAVE if likely & PIECES.keys() or item == FREE else CERTAIN)
    for word in WHOLES:
        made.arc(whole, joined, OPEN, word, item)
    made.arc(whole, joined, NEXT if JOINS in likely else OPEN, JOINS, item)
    _count(made, joined, top, likely, item)
    for state in (whole, top):
        _pieces(made, state, end, likely, item)
    if item != FREE and not likely & {*SMALL, *TENS}:
        _pieces(made, inside, end, likely, item)


def _pieces(made: _Builder, start: int, end: int, likely: frozenset[str], item: int) -> None:
    names = {PIECES[word] for word in likely if word in PIECES}
    for word, name in PIECES.items():
        made.arc(start, end, EXPECTED if name in names else OPEN, word, item)


def _count(made: _Builder, start: int, end: int, likely: frozenset[str], item: int) -> None:
    for word in SMALL:
        made.arc(start, end, EXPECTED if word in likely else OPEN, word, item)
    ten = made.state()
    for word in TENS:
        made.arc(start, ten, EXPECTED if word in likely else OPEN, word, item)
    made.arc(ten, end, CERTAIN if not likely & {*DIGITS} else LEAVE)
    for word in DIGITS:
        made.arc(ten, end, EXPECTED if word in likely else OPEN, word, item)


def _as_written(made: _Builder, start: int, end: int, words: Sequence[str], item: int) -> None:
    """Keep the form of a number that is no mixed number; each count in it is open."""
    here = start
    for at, word in enumerate(words, start=1):
        there = end if at == len(words) else made.state()
        for other in _alike(word):
            made.arc(here, there, EXPECTED if other == word else OPEN, other, item)
        here = there


def _alike(word: str) -> Iterable[str]:
    for kind in (SMALL, TENS, LARGE, tuple(PIECES)):
        if word in kind:
            return kind
    return (word,)
