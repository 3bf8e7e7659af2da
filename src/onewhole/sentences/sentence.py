"""A sentence: its language and its nodes. Only a notation turns it into text."""

from enum import Enum
from typing import NoReturn

from msgspec import Struct

from onewhole.sentences.node import Counted, Node, Said, Typed, check_words
from onewhole.statements.writable import Writable


class End(Enum):
    """A capital and a full stop, a capital and a question mark, or beginning and end as they were typed."""

    STOP = "."
    ASKS = "?"
    TYPED = ""


class Sentence(Struct, frozen=True):
    """A tree of words, numbers and units in one language (a BCP 47 tag such as ``en-US``).

    The capital, the full stop and the blanks between nodes belong to the notation. Several sentences are a
    tuple. Raises ValueError for no nodes, and for words that hold a digit or an operator.

    >>> from onewhole.number.ladder import mixed
    >>> from onewhole.sentences.node import Thing
    >>> nodes = (Counted(1, Thing("strip", "strips")), "is", Counted(6, mixed(6).units[1]))
    >>> [counted.count for counted in Sentence("en-US", nodes).numbers() if isinstance(counted, Counted)]
    [1, 6]
    """

    language: str
    nodes: tuple[Node, ...]
    end: End = End.STOP

    def __post_init__(self) -> None:
        """Refuse a sentence of nothing, and words with numbers in them."""
        if not self.nodes:
            msg = "a sentence says something"
            raise ValueError(msg)
        for node in self.nodes:
            if isinstance(node, str):
                check_words(node)

    def numbers(self) -> tuple[Counted | Writable, ...]:
        """Return every number in it, in order: counts with their unit, and what is written as on a line."""
        found: list[Counted | Writable] = []
        for node in self.nodes:
            match node:
                case Counted():
                    found.append(node)
                case Said(thing):
                    found.append(thing)
                case Typed(spots=spots):
                    found += [spot.thing for spot in spots]
                case _:
                    pass
        return tuple(found)

    def __str__(self) -> NoReturn:
        """Refuse to pass for text."""
        msg = "a sentence becomes text in a notation: onewhole.notations.sentences"
        raise TypeError(msg)

    def __format__(self, spec: str) -> NoReturn:
        """Refuse to pass for text."""
        str(self)
        raise AssertionError


Sentences = tuple[Sentence, ...]
