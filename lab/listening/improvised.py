"""A part of a film told in a teacher's own way: other words, another order, a slip, a correction.

How often each happens is our own choice: more of everything than a teacher would, to show what is lost.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from random import Random
from typing import Final

from onewhole.languages.english.listening import PIECES, SMALL
from onewhole.languages.english.words import piece_name
from onewhole.notations.sentences.listened import Listened, NumberHeard, PlainWord

BEFORE: Final = (
    "okay,",
    "so,",
    "um,",
    "all right,",
    "now,",
    "well,",
    "let's see,",
    "and,",
    "you see,",
    "alright everybody,",
)
BESIDE: Final = (
    "watch what happens here.",
    "does that make sense?",
    "let me write that down for you.",
    "I like this one a lot.",
    "take your time with it.",
    "look at the picture while I draw.",
    "my pencil is a little short today.",
    "can everybody see that?",
)
OTHERS: Final = {
    "minus": ("take away", "subtract", "less"),
    "equals": ("is", "gives us", "is the same as"),
    "regroup": ("trade", "open up", "break up"),
    "then": ("and then", "after that"),
    "take": ("let's take", "we take"),
    "left": ("left over", "left for us"),
    "so": ("and so", "that means"),
}
CORRECTING: Final = ("no,", "sorry, I mean", "no wait,", "oops,")
#: In a hundred: a word before a sentence, a sentence of one's own, a sentence left out, two sentences of a
#: step in another order, another word, a word left out, a number corrected at once.
FILLED, OWN, LEFT_OUT, TURNED, OTHER, DROPPED, CORRECTED = 45, 12, 5, 12, 35, 3, 4


@dataclass(frozen=True, slots=True)
class Uttered:
    """One breath: what is said; its step and sentence of the script, or None; the slip in it, in words."""

    words: str
    place: tuple[int, int] | None
    slip: tuple[str, ...] | None = None


def improvised(steps: Sequence[Sequence[Sequence[Listened]]], chance: Random, slips: int) -> list[Uttered]:
    """Tell a part in other words, with so many slips that are not corrected."""
    numbers = [
        (step, sentence, at)
        for step, sentences in enumerate(steps)
        for sentence, said in enumerate(sentences)
        for at, one in enumerate(said)
        if isinstance(one, NumberHeard) and otherwise(one.words, Random(0))
    ]
    wrong = set(chance.sample(numbers, min(slips, len(numbers))))
    told: list[Uttered] = []
    for step, sentences in enumerate(steps):
        order = list(range(len(sentences)))
        if len(order) > 1 and chance.randrange(100) < TURNED:
            at = chance.randrange(len(order) - 1)
            order[at], order[at + 1] = order[at + 1], order[at]
        for sentence in order:
            has = {at for one, other, at in wrong if (one, other) == (step, sentence)}
            if not has and chance.randrange(100) < LEFT_OUT:
                continue
            if chance.randrange(100) < OWN:
                told.append(Uttered(chance.choice(BESIDE), None))
            if chance.randrange(100) < FILLED:
                told.append(Uttered(chance.choice(BEFORE), None))
            told.append(_told(sentences[sentence], (step, sentence), has, chance))
    return told


def _told(said: Sequence[Listened], place: tuple[int, int], wrong: set[int], chance: Random) -> Uttered:
    words: list[str] = []
    slip: tuple[str, ...] | None = None
    for at, one in enumerate(said):
        match one:
            case NumberHeard(number):
                if at in wrong:
                    slip = otherwise(number, chance)
                    assert slip is not None, "only a number that can be said otherwise is"
                    words += slip
                elif chance.randrange(100) < CORRECTED and (first := otherwise(number, chance)):
                    words += [*first, ",", chance.choice(CORRECTING), *number]
                else:
                    words += number
            case PlainWord(word):
                if word in OTHERS and chance.randrange(100) < OTHER:
                    words.append(chance.choice(OTHERS[word]))
                elif len(said) < 4 or chance.randrange(100) >= DROPPED:
                    words.append(word)
    return Uttered(" ".join(words).replace(" ,", ",") + ".", place, slip)


def otherwise(words: Sequence[str], chance: Random) -> tuple[str, ...] | None:
    """Say one count or name of pieces of a number otherwise; None for what has neither.

    >>> otherwise(("six", "fifths"), Random(1)) != ("six", "fifths")
    True
    """
    places = [at for at, word in enumerate(words) if word in SMALL or word in PIECES]
    if not places:
        return None
    at = chance.choice(places)
    word = words[at]
    if word in SMALL:
        count = SMALL.index(word)
        others = [other for other in range(max(1, count - 3), min(19, count + 3) + 1) if other != count]
        new = SMALL[chance.choice(others)]
    else:
        one = PIECES[word]
        new = chance.choice(
            [piece_name(parts) for parts in (3, 4, 5, 6, 8, 10, 12) if piece_name(parts, 1) != one]
        )
    return (*words[:at], new, *words[at + 1 :])
