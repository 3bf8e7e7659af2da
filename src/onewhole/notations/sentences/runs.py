"""Sentences as words and formulas in turn, for a page that sets its math."""

from collections.abc import Iterable

from onewhole.languages.language import Language
from onewhole.notations.sentences.layout import pieces
from onewhole.notations.sentences.text import node_text
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.sentences.node import Node, Said
from onewhole.sentences.sentence import Sentence
from onewhole.statements.writable import Writable


def runs(sentences: Iterable[Sentence]) -> tuple[str | Writable, ...]:
    """Return sentences as words and formulas in turn; a number that is only digits stays among the words.

    >>> from onewhole.statements.reading import read_expression
    >>> asked = read_expression("7 - 3")
    >>> runs((Sentence("en-US", ("for", Said(asked), ", think of adding")),)) == (
    ...     "For ",
    ...     asked,
    ...     ", think of adding.",
    ... )
    True
    """
    found: list[str | Writable] = []
    for sentence in sentences:
        between = (" ",) if found else ()
        for piece in (*between, *pieces(sentence, _set)):
            if isinstance(piece, str) and found and isinstance(found[-1], str):
                found[-1] += piece
            elif piece != "":
                found.append(piece)
    return tuple(found)


def _set(node: Node, language: Language) -> str | Writable:
    if isinstance(node, Said) and not _plain(node.thing):
        return node.thing
    return node_text(node, language)


def _plain(thing: Writable) -> bool:
    """Say whether a number needs no math: whole numbers and decimals in digits, measures, places in words."""
    if not isinstance(thing, Quantity):
        return False
    return thing.ladder.style is not Style.MIXED
