"""Sentences as they are listened for: plain words, and numbers that may have been said otherwise."""

from collections.abc import Iterator
from typing import assert_never

from msgspec import Struct

from onewhole.languages.language import Language
from onewhole.languages.table import LANGUAGES
from onewhole.notations.sentences.text import sentence_text
from onewhole.notations.text import text
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.number.with_minus import WithMinus
from onewhole.sentences.node import Counted, Label, Naming, Said, Seam, Spot, Thing, Typed
from onewhole.sentences.sentence import End, Sentence
from onewhole.statements.row import flat
from onewhole.statements.writable import Writable

#: Signs that are written at words and not heard.
_UNHEARD = '.,:;?!()"\N{LEFT DOUBLE QUOTATION MARK}\N{RIGHT DOUBLE QUOTATION MARK}'


class PlainWord(Struct, frozen=True):
    """A word of the script that is no number, in small letters."""

    word: str


class NumberHeard(Struct, frozen=True):
    """A number of the script: its words in small letters, and how the board writes it."""

    words: tuple[str, ...]
    shown: str


Listened = PlainWord | NumberHeard


def listened(sentence: Sentence) -> tuple[Listened, ...]:
    """Return what is listened for in a sentence, in order.

    >>> from onewhole.number.ladder import mixed
    >>> listened(Sentence("en-US", ("take", Counted(5, mixed(6).units[1]))))
    (PlainWord(word='take'), NumberHeard(words=('five', 'sixths'), shown='5 sixths'))
    """
    return tuple(_listened(sentence, LANGUAGES[sentence.language]))


def _listened(sentence: Sentence, language: Language) -> Iterator[Listened]:
    for node in sentence.nodes:
        match node:
            case str():
                yield from _plain(node)
            case Seam(joined):
                yield from _plain(joined)
            case Said(thing):
                yield from _line(thing, language)
            case Counted(count, Thing() as unit):
                yield NumberHeard(tuple(_words(language.count_words(count, unit))), str(count))
                yield from _plain(language.called(unit, count))
            case Counted(count, unit):
                words = f"{language.count_words(count, unit)} {language.called(unit, count)}"
                yield NumberHeard(tuple(_words(words)), _written(node, sentence))
            case Naming(Thing() as unit, many):
                yield from _plain(language.called(unit, 2 if many else 1))
            case Naming(unit, many):
                named = language.called(unit, 2 if many else 1)
                yield NumberHeard(tuple(_words(named)), named)
            case Label(problem):
                rest = problem.lstrip("0123456789")
                digits = problem[: len(problem) - len(rest)]
                if digits:
                    yield NumberHeard(tuple(_words(language.count_words(int(digits)))), problem)
                yield from _plain(rest)
            case Typed(typed, spots):
                yield from _plain(_typed(typed, spots, language))
            case _:
                assert_never(node)


def _line(thing: Writable, language: Language) -> Iterator[Listened]:
    """Give what is said of a line; its numbers come in the order in which they stand."""
    words = list(_words(language.say(thing)))
    at = 0
    for piece in flat(thing):
        if isinstance(piece, Quantity | WithMinus | Impossible):
            number = tuple(_words(language.say(piece)))
            start = next(
                (one for one in range(at, len(words)) if tuple(words[one : one + len(number)]) == number),
                None,
            )
            if start is not None:
                yield from map(PlainWord, words[at:start])
                yield NumberHeard(number, text(piece))
                at = start + len(number)
    yield from map(PlainWord, words[at:])


def _typed(typed: str, spots: tuple[Spot, ...], language: Language) -> str:
    """Say a typed text, its numbers in words: they are no part of a working and are not checked."""
    parts: list[str] = []
    at = 0
    for spot in spots:
        said, more = language.say_before(spot.thing, typed[spot.end :])
        parts += [typed[at : spot.start], said]
        at = spot.end + more
    return "".join((*parts, typed[at:]))


def _written(node: Counted, sentence: Sentence) -> str:
    """Write a count with its unit as it stands inside a sentence."""
    return sentence_text(Sentence(sentence.language, (node,), End.TYPED))


def _plain(words: str) -> Iterator[PlainWord]:
    return map(PlainWord, _words(words))


def _words(words: str) -> Iterator[str]:
    """Give the words in small letters, without the signs between them; a hyphen parts two."""
    for word in words.lower().replace("-", " ").replace("\N{RIGHT SINGLE QUOTATION MARK}", "'").split():
        if plain := word.strip(_UNHEARD):
            yield plain
