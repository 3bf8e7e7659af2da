"""Pieces that English sentences are made of: whole sentences, lists, counted units and amounts."""

from collections.abc import Sequence

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.words import TAG
from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Counted, Naming, Node, Said, Thing
from onewhole.sentences.sentence import End, Sentence, Sentences

Nodes = tuple[Node, ...]

PIECE = Thing("piece", "pieces", None)


def told(*nodes: Node | Nodes, end: End = End.STOP) -> Sentences:
    """Make one English sentence of nodes and runs of nodes.

    >>> told("nothing is left")[0].nodes
    ('nothing is left',)
    """
    flat = [part for node in nodes for part in (node if isinstance(node, tuple) else (node,))]
    return (Sentence(TAG, tuple(flat), end),)


def asked(*nodes: Node | Nodes) -> Sentences:
    """Make one English question.

    >>> asked("where did it go")[0].end
    <End.ASKS: '?'>
    """
    return told(*nodes, end=End.ASKS)


def thing(unit: Unit, words: ClassWords | None) -> Unit | Thing:
    """Return a unit, or what the class calls it: a whole of a mixed number by the class's own word."""
    return Thing(words.whole, words.wholes) if unit == ONE and words else unit


def some(count: int, unit: Unit, words: ClassWords | None = None) -> Counted:
    """Count a unit: 5 sixths, 1 ten; with the class's words also 3 strips.

    >>> some(3, ONE, ClassWords("strip", "strips")).unit.many
    'strips'
    """
    return Counted(count, thing(unit, words))


def a_single(unit: Unit, words: ClassWords | None = None) -> Counted:
    """Count one of a unit, in a word: one whole, one ten."""
    return Counted(1, thing(unit, words), spelt=True)


def bare(count: int) -> Said:
    """Write a number that counts nothing named."""
    return Said(whole(count))


def one_of(unit: Unit, words: ClassWords | None = None) -> Naming:
    """Name a unit in the singular: sixth, ten, whole."""
    return Naming(thing(unit, words), many=False)


def units(unit: Unit, words: ClassWords | None = None) -> Naming:
    """Name a unit in the plural: sixths, tens, wholes."""
    return Naming(thing(unit, words))


def listed(parts: Sequence[Nodes], joiner: str = "and") -> Nodes:
    """Join runs of nodes: a, b and c.

    >>> listed([("a",), ("b",), ("c",)])
    ('a', ',', 'b', 'and', 'c')
    """
    found: list[Node] = []
    for at, part in enumerate(parts):
        if at:
            found.append(joiner if at == len(parts) - 1 else ",")
        found += part
    return tuple(found)


def amount(quantity: Quantity, words: ClassWords) -> Nodes:
    """Name an amount: 3 wholes and 3 sixths, 2 feet and 7 inches; whole numbers and decimals in digits,
    and by their places where a place is overfull: 25 tenths.

    >>> from onewhole.number.ladder import mixed
    >>> [counted.count for counted in amount(Quantity(mixed(6), (3, 1)), ClassWords()) if counted != "and"]
    [3, 1]
    """
    if _bare(quantity):
        return (Said(quantity),)
    named = words if quantity.ladder.style is Style.MIXED else None
    return listed([(some(count, unit, named),) for count, unit in _parts(quantity)])


def single(quantity: Quantity) -> bool:
    """Say whether an amount takes "is" and not "are": one thing, or a bare number.

    >>> from onewhole.number.ladder import mixed
    >>> single(Quantity(mixed(6), (None, 1))), single(Quantity(mixed(6), (1, 1)))
    (True, False)
    """
    return _bare(quantity) or [count for count, _ in _parts(quantity)] == [1]


def _bare(quantity: Quantity) -> bool:
    """Say whether an amount is a number in digits, with no unit beside it."""
    return quantity.ladder.style in {Style.PLACES, Style.DECIMAL} and in_digits(quantity)


def _parts(quantity: Quantity) -> tuple[tuple[int, Unit], ...]:
    """Return what is counted, unit by unit."""
    if quantity.ladder.style in {Style.PLACES, Style.DECIMAL}:
        return named_places(quantity)
    pairs = zip(quantity.counts, quantity.ladder.units, strict=True)
    return tuple((count, unit) for count, unit in pairs if count is not None)
