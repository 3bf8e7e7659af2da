"""A message: words with holes. A node of a sentence goes into a hole, so that numbers stay numbers."""

from collections.abc import Callable, Mapping, Sequence
from functools import cache
from string import Formatter

from msgspec import Struct

from onewhole.languages.class_words import ClassWords
from onewhole.number.quantity import whole
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Counted, Naming, Node, Said, Seam, Thing
from onewhole.sentences.sentence import End, Sentence, Sentences

Nodes = tuple[Node, ...]
#: What goes into a hole: a part of a sentence, or whether the second of two words is meant.
Hole = Node | Nodes | bool


def nodes_of(message: str, holes: Mapping[str, Hole]) -> Nodes:
    """Put nodes into the holes of a message.

    ``{left}`` takes what is left, ``{many:sobra/sobram}`` chooses one of two words. Words between bars are
    where a long sentence may end, and what begins the next one then: ``|, por isso/por isso|``. Raises
    KeyError for a hole that the meaning does not fill.

    >>> nodes_of("{many:sobra/sobram} {left}|, e|", {"many": True, "left": ("pouco",)})
    ('sobram', 'pouco', Seam(joined=', e', parted=''))
    """
    found: list[Node] = []
    for words, name, choice in _parsed(message):
        found += words
        if not name:
            continue
        filled = holes[name]
        if choice:
            found.append(choice.split("/")[bool(filled)])
        elif isinstance(filled, tuple):
            found += filled
        elif not isinstance(filled, bool):
            found.append(filled)
    return tuple(found)


@cache
def _parsed(message: str) -> tuple[tuple[Nodes, str, str], ...]:
    return tuple(
        (_words(text), name or "", choice or "") for text, name, choice, _ in Formatter().parse(message)
    )


def _words(text: str) -> Nodes:
    found: list[Node] = []
    for at, part in enumerate(text.split("|")):
        if at % 2:
            joined, _, parted = part.partition("/")
            found.append(Seam(joined, parted))
        elif part.strip():
            found.append(part.strip())
    return tuple(found)


class Teller(Struct, frozen=True):
    """How a language tells: its tag, the word that joins the last of several, and which words are feminine.

    ``verbs`` are, by what a class says for regrouping, "we regroup" and "to regroup".
    """

    tag: str
    joins: str
    is_feminine: Callable[[Unit | Thing], bool]
    verbs: Mapping[str, tuple[str, str]]

    def told(self, *messages: str, **holes: Hole) -> Sentences:
        """Make a sentence of each message."""
        return tuple(Sentence(self.tag, nodes_of(message, holes)) for message in messages)

    def asked(self, message: str, **holes: Hole) -> Sentences:
        """Make a question of a message."""
        return (Sentence(self.tag, nodes_of(message, holes), End.ASKS),)

    def regroups(self, words: ClassWords, what: Node) -> Nodes:
        """Say with the class's verb that we regroup something."""
        return (self.verbs[words.regroup][0], what)

    def listed(self, parts: Sequence[Nodes]) -> Nodes:
        """Join parts of a sentence: a, b and c."""
        found: list[Node] = []
        for at, part in enumerate(parts):
            found += [self.joins if at == len(parts) - 1 else ","] if at else []
            found += part
        return tuple(found)


def named(unit: Unit, words: ClassWords | None) -> Unit | Thing:
    """Return a unit, or the class's thing for one whole."""
    return Thing(words.whole, words.wholes, feminine=words.feminine) if unit == ONE and words else unit


def some(count: int, unit: Unit, words: ClassWords | None = None) -> Counted:
    """Count a unit; with the class's words also what it calls a whole."""
    return Counted(count, named(unit, words))


def one(unit: Unit, words: ClassWords | None = None) -> Counted:
    """Count one of a unit, in a word."""
    return Counted(1, named(unit, words), spelt=True)


def many(unit: Unit, words: ClassWords | None = None) -> Naming:
    """Name a unit in the plural."""
    return Naming(named(unit, words))


def bare(count: int) -> Said:
    """Write a count of nothing."""
    return Said(whole(count))
