"""Sentences in plain text: numbers in digits, as on the line."""

from collections.abc import Iterable
from typing import assert_never

from onewhole.languages.language import Language
from onewhole.notations.sentences.layout import joined, laid_out
from onewhole.notations.text import grouped, printed
from onewhole.sentences.node import Counted, Label, Naming, Node, Said, Seam, Typed
from onewhole.sentences.sentence import Sentence


def sentence_text(sentence: Sentence) -> str:
    """Write a sentence in plain text.

    >>> from onewhole.number.ladder import mixed
    >>> wholes, sixths = mixed(6).units
    >>> sentence_text(Sentence("en-US", (Counted(1, wholes, spelt=True), "is", Counted(6, sixths))))
    'One one is 6 sixths.'
    """
    return laid_out(sentence, node_text)


def text_of(sentences: Iterable[Sentence]) -> str:
    """Write sentences one after another in plain text.

    >>> text_of((Sentence("en-US", ("nothing is left",)), Sentence("en-US", ("well done",))))
    'Nothing is left. Well done.'
    """
    return joined(sentences, sentence_text)


def node_text(node: Node, language: Language) -> str:
    """Write one node in plain text."""
    match node:
        case str():
            return node
        case Said(thing):
            return printed(thing, language)
        case Counted(count, unit, spelt):
            number = language.count_words(count, unit) if spelt else grouped(str(count))
            return f"{number} {language.called(unit, count)}"
        case Naming(unit, many):
            return language.called(unit, 2 if many else 1)
        case Label(problem):
            return problem
        case Typed(typed):
            return typed
        case Seam(inside):
            return inside
        case _:
            assert_never(node)
