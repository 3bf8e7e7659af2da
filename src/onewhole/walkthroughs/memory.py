"""What has been said so far, so that nothing is said a dozen times and no sentence is too long."""

from collections import Counter
from dataclasses import dataclass, field
from enum import Enum

from msgspec.structs import replace

from onewhole.notations.sentences.speech import words_spoken
from onewhole.sentences.node import Seam
from onewhole.sentences.sentence import End, Sentence, Sentences
from onewhole.statements.expression import Expression
from onewhole.working.reason import Reason

#: No sentence of a walkthrough is longer; our own aim for a nine-year-old's ear.
MOST_WORDS = 20
#: A sentence of more words than SHORT is said at most MOST_OFTEN times in one film; our own choice.
SHORT = 5
MOST_OFTEN = 4


class Once(Enum):
    """What is told once in a film."""

    TENS = "opening is as with tens"
    FORMS = "no form is demanded"
    CHECK = "an answer is checked"
    COLUMNS = "how numbers stand in columns"
    POINTS = "how points stand in columns"


@dataclass(slots=True)
class Memory:
    """The sentences said so far and the reasons already explained; grows while a script is written."""

    said: Counter[Sentence] = field(default_factory=Counter)
    reasons: set[type[Reason]] = field(default_factory=set)
    kinds: dict[tuple[str | type[Reason], ...], list[str]] = field(default_factory=dict)
    told: set[Once | Expression] = field(default_factory=set)

    def once(self, what: Once | Expression) -> bool:
        """Say whether this is the first time that something, or a hard fact, is told, and remember it."""
        first = what not in self.told
        self.told.add(what)
        return first

    def tell(self, sentences: Sentences, *, always: bool = False) -> Sentences:
        """Return the sentences to say, long ones cut, without those that were said often enough."""
        found = cut(sentences)
        kept = tuple(part for part in found if always or not self._worn(part))
        self.said.update(kept)
        return kept

    def pick(self, at: int, *phrasings: Sentences) -> Sentences:
        """Say one of several phrasings: by turns, the next one where one is worn or would have to be cut.

        Where every one would have to be cut, nothing is said: what stands on the board is read there.
        """
        turn = at % len(phrasings)
        order = [one for one in (*phrasings[turn:], *phrasings[:turn]) if fits(one)]
        if not order:
            return ()
        fresh = (one for one in order if not any(self._worn(part) for part in one))
        return self.tell(next(fresh, order[0]))

    def _worn(self, sentence: Sentence) -> bool:
        return self.said[sentence] >= MOST_OFTEN and words_spoken(sentence) > SHORT


def fits(sentences: Sentences) -> bool:
    """Say whether none of some sentences is longer than 20 spoken words."""
    return all(words_spoken(sentence) <= MOST_WORDS for sentence in sentences)


def cut(sentences: Sentences) -> Sentences:
    """Cut what is said into sentences of at most 20 spoken words, each at the last seam that makes it so.

    What has no seam stays whole, and so does what somebody typed.

    >>> from onewhole.sentences.node import Said
    >>> from onewhole.statements.reading import read_expression
    >>> asked = Said(read_expression("143 - 57"))
    >>> steps = (Seam(":"), asked, Seam(", then", "then"), asked, Seam(", then", "then"), asked)
    >>> long = Sentence("en-US", ("for", asked, ", think of adding", *steps))
    >>> [len(part.nodes) for part in cut((long,))]
    [7, 2]
    """
    return tuple(part for sentence in sentences for part in _parts(sentence))


def _parts(sentence: Sentence) -> Sentences:
    if words_spoken(sentence) <= MOST_WORDS:
        return (sentence,)
    halves = [_halves(sentence, at, node) for at, node in enumerate(sentence.nodes) if isinstance(node, Seam)]
    good = [pair for pair in halves if words_spoken(pair[0]) <= MOST_WORDS]
    if not halves:
        return (sentence,)
    first, rest = good[-1] if good else halves[0]
    return (first, *_parts(rest))


def _halves(sentence: Sentence, at: int, seam: Seam) -> tuple[Sentence, Sentence]:
    """End a sentence at a seam and go on in the next one."""
    begun = (seam.parted,) if seam.parted else ()
    first = replace(sentence, nodes=sentence.nodes[:at], end=End.STOP)
    return first, replace(sentence, nodes=(*begun, *sentence.nodes[at + 1 :]))
