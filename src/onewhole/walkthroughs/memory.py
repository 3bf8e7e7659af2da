"""What has been said so far, so that nothing is said a dozen times and no sentence is too long."""

import re
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field

from onewhole.notations.aloud import MOST_WORDS, spoken_words
from onewhole.working.reason import Reason

#: A sentence of more words than SHORT is said at most MOST_OFTEN times in one film; our own choice.
SHORT = 5
MOST_OFTEN = 4

_SEAMS = (": ", ", so ", ", then ", ", and ", "; ", ", ", " so that ", " and then ", " because ", " and ")
_JOINERS = {
    ", so ": "so ",
    ", then ": "then ",
    " and then ": "then ",
    " because ": "because ",
    " and ": "and ",
}
_NUMBER_BEFORE = re.compile(r"\d$")
_END = re.compile(r"(?<=[^\s/][.?!])\s+")


@dataclass(slots=True)
class Memory:
    """The sentences said so far and the reasons already explained; grows while a script is written."""

    said: Counter[str] = field(default_factory=Counter)
    reasons: set[type[Reason]] = field(default_factory=set)
    kinds: dict[tuple[str | type[Reason], ...], list[str]] = field(default_factory=dict)
    told: set[str] = field(default_factory=set)

    def once(self, mark: str) -> bool:
        """Say whether this is the first time, and remember it."""
        first = mark not in self.told
        self.told.add(mark)
        return first

    def tell(self, *sentences: str, always: bool = False) -> tuple[str, ...]:
        """Return the sentences to say, long ones cut, without those that were said often enough."""
        found = [part for sentence in sentences for part in cut(sentence)]
        kept = tuple(part for part in found if always or not self._worn(part))
        self.said.update(kept)
        return kept

    def pick(self, at: int, *phrasings: str) -> tuple[str, ...]:
        """Say one of several phrasings: by turns, the next one where one is worn or would have to be cut.

        Where every one would have to be cut, nothing is said: what stands on the board is read there.
        """
        turn = at % len(phrasings)
        order = [one for one in (*phrasings[turn:], *phrasings[:turn]) if fits(one)]
        if not order:
            return ()
        fresh = (one for one in order if not any(self._worn(part) for part in cut(one)))
        return self.tell(next(fresh, order[0]))

    def _worn(self, sentence: str) -> bool:
        return self.said[sentence] >= MOST_OFTEN and spoken_words(sentence) > SHORT


def fits(sentences: str) -> bool:
    """Say whether none of some sentences is longer than 20 spoken words.

    >>> fits("That is 6 8/6 - 3 5/6."), fits("one two three " * 7)
    (True, False)
    """
    return all(spoken_words(one) <= MOST_WORDS for one in _END.split(sentences))


def cut(sentence: str) -> tuple[str, ...]:
    """Cut what is said into sentences of at most 20 spoken words, at a seam between its parts.

    A number is never cut. What has no seam stays whole, up to the last blank before its 21st word.

    >>> cut("For 146 - 57, think of adding: 57 + 3 = 60, then 60 + 86 = 146, then 3 + 86 = 89.")[0]
    'For 146 - 57, think of adding.'
    """
    return tuple(part for one in _END.split(sentence.strip()) for part in _parts(one) if part)


def _parts(sentence: str) -> Iterable[str]:
    if spoken_words(sentence) <= MOST_WORDS:
        return (sentence,)
    for seam in _SEAMS:
        places = [found.start() for found in re.finditer(re.escape(seam), sentence)]
        good = [
            at
            for at in places
            if 1 < spoken_words(sentence[:at]) <= MOST_WORDS and _apart(sentence, at, seam)
        ]
        if good:
            return _halves(sentence, good[-1], seam)
    blanks = [at for at, sign in enumerate(sentence) if sign == " " and _between_words(sentence, at)]
    good = [at for at in blanks if spoken_words(sentence[:at]) <= MOST_WORDS]
    return _halves(sentence, good[-1], " ") if good else (sentence,)


def _apart(sentence: str, at: int, seam: str) -> bool:
    """Say whether a seam parts two thoughts: " and " after a number may be inside one."""
    return seam != " and " or not _NUMBER_BEFORE.search(sentence[:at])


def _between_words(sentence: str, at: int) -> bool:
    return sentence[:at][-1:].isalpha() and sentence[at + 1 : at + 2].isalpha()


def _halves(sentence: str, at: int, seam: str) -> tuple[str, ...]:
    first, rest = sentence[:at], _JOINERS.get(seam, "") + sentence[at + len(seam) :]
    return (f"{first}.", *_parts(rest[:1].upper() + rest[1:]))
