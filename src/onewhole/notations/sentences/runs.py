"""Sentences as words and formulas in turn, for a page that sets its math."""

from collections.abc import Iterable, Iterator

from onewhole.languages.language import Language
from onewhole.notations.sentences.layout import pieces
from onewhole.notations.sentences.text import node_text
from onewhole.notations.text import text
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.sentences.node import Node, Said, Typed
from onewhole.sentences.sentence import Sentence
from onewhole.statements.writable import Writable


def runs(sentences: Iterable[Sentence], *, every: bool = False) -> tuple[str | Writable, ...]:
    """Return sentences as words and formulas in turn; a number that is only digits stays among the words.

    ``every`` number is a formula where it stands in a column of them.

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
        for piece in (*between, *pieces(sentence, _every if every else _set)):
            for run in (piece,) if isinstance(piece, str) else piece:
                if isinstance(run, str) and found and isinstance(found[-1], str):
                    found[-1] += run
                elif run != "":
                    found.append(run)
    return tuple(found)


def _set(node: Node, language: Language) -> str | tuple[str | Writable, ...]:
    match node:
        case Said(thing) if not _plain(thing):
            return (thing,)
        case Typed(spots=spots) if spots:
            return tuple(_typed(node))
        case _:
            return node_text(node, language)


def _every(node: Node, language: Language) -> str | tuple[str | Writable, ...]:
    return (node.thing,) if isinstance(node, Said) else _set(node, language)


def _typed(node: Typed) -> Iterator[str | Writable]:
    """Set the fractions of a typed text; what would be written otherwise than it was typed stays as it is."""
    at = 0
    for spot in node.spots:
        if not _plain(spot.thing) and text(spot.thing) == node.text[spot.start : spot.end]:
            yield node.text[at : spot.start]
            yield spot.thing
            at = spot.end
    yield node.text[at:]


def _plain(thing: Writable) -> bool:
    """Say whether a number needs no math: whole numbers and decimals in digits, measures, places in words."""
    if not isinstance(thing, Quantity):
        return False
    return thing.ladder.style is not Style.MIXED
