"""Sentences as they are spoken: every number in words; what is said is what is written."""

from collections.abc import Iterator
from typing import assert_never

from onewhole.languages.language import Language
from onewhole.notations.sentences.layout import laid_out
from onewhole.sentences.node import Counted, Label, Naming, Node, Said, Seam, Spot, Typed
from onewhole.sentences.sentence import Sentence


def spoken(sentence: Sentence) -> str:
    """Return the words to be spoken for a sentence, with its capital and full stop.

    >>> from onewhole.number.ladder import mixed
    >>> spoken(Sentence("en-US", ("take", Counted(5, mixed(6).units[1]))))
    'Take five sixths.'
    """
    return laid_out(sentence, _spoken)


def words_spoken(sentence: Sentence) -> int:
    """Count the words that are spoken.

    >>> words_spoken(Sentence("en-US", ("nothing is left",)))
    3
    """
    return len(spoken(sentence).split())


def _spoken(node: Node, language: Language) -> str:
    match node:
        case str():
            return node
        case Said(thing):
            return language.say(thing)
        case Counted(count, unit):
            return f"{language.count_words(count, unit)} {language.called(unit, count)}"
        case Naming(unit, many):
            return language.called(unit, 2 if many else 1)
        case Label(problem):
            return _label(problem, language)
        case Typed(typed, spots):
            return "".join(_typed(typed, spots, language))
        case Seam(inside):
            return inside
        case _:
            assert_never(node)


def _label(problem: str, language: Language) -> str:
    """Say a label: its digits as a number, and what follows by itself: three b."""
    rest = problem.lstrip("0123456789")
    digits = problem[: len(problem) - len(rest)]
    return " ".join(filter(None, (language.count_words(int(digits)) if digits else "", rest)))


def _typed(typed: str, spots: tuple[Spot, ...], language: Language) -> Iterator[str]:
    """Say a typed text: its numbers in words, everything else as it stands."""
    at = 0
    for spot in spots:
        yield typed[at : spot.start]
        said, more = language.say_before(spot.thing, typed[spot.end :])
        yield said
        at = spot.end + more
    yield typed[at:]
