"""Pieces that Spanish sentences are made of: whole sentences, lists, counted units, amounts, what agrees."""

from collections.abc import Sequence

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.words import TAG, is_feminine
from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Counted, Naming, Node, Said, Seam, Thing
from onewhole.sentences.sentence import End, Sentence, Sentences

Nodes = tuple[Node, ...]

PIECE = Thing("parte", "partes", None, feminine=True)
#: Goes on with what follows from what was said.
SO = Seam(", así que", "por eso")

_VERBS = {
    "regroup": ("reagrupamos", "reagrupar"),
    "open": ("abrimos", "abrir"),
    "trade": ("cambiamos", "cambiar"),
    "rename": ("escribimos", "escribir"),
}
#: What follows the thing that is written in another way.
_OTHERWISE = "de otra forma"


def told(*nodes: Node | Nodes, end: End = End.STOP) -> Sentences:
    """Make one Spanish sentence of nodes and runs of nodes.

    >>> told("no queda nada")[0].nodes
    ('no queda nada',)
    """
    flat = [part for node in nodes for part in (node if isinstance(node, tuple) else (node,))]
    return (Sentence(TAG, tuple(flat), end),)


def asked(*nodes: Node | Nodes) -> Sentences:
    """Make one Spanish question; its first mark is the notation's.

    >>> asked("dónde está")[0].end
    <End.ASKS: '?'>
    """
    return told(*nodes, end=End.ASKS)


def regroups(words: ClassWords, what: Node | Nodes) -> Nodes:
    """Say with the class's verb that we regroup something: reagrupamos una tira.

    >>> regroups(ClassWords("tira", "tiras", "rename"), "todo")
    ('escribimos', 'todo', 'de otra forma')
    """
    last = (_OTHERWISE,) if words.regroup == "rename" else ()
    return (_VERBS[words.regroup][0], *(what if isinstance(what, tuple) else (what,)), *last)


def to_regroup(words: ClassWords) -> str:
    """Return the class's verb for regrouping by itself: reagrupar, escribir de otra forma.

    >>> to_regroup(ClassWords())
    'reagrupar'
    """
    verb = _VERBS[words.regroup][1]
    return f"{verb} {_OTHERWISE}" if words.regroup == "rename" else verb


def thing(unit: Unit, words: ClassWords | None) -> Unit | Thing:
    """Return a unit, or what the class calls it: a whole of a mixed number by the class's own word."""
    return Thing(words.whole, words.wholes, feminine=words.feminine) if unit == ONE and words else unit


def some(count: int, unit: Unit, words: ClassWords | None = None) -> Counted:
    """Count a unit: 5 sextos, 1 decena; with the class's words also 3 tiras."""
    return Counted(count, thing(unit, words))


def a_single(unit: Unit, words: ClassWords | None = None) -> Counted:
    """Count one of a unit, in a word: una tira, un pie."""
    return Counted(1, thing(unit, words), spelt=True)


def bare(count: int) -> Said:
    """Write a number that counts nothing named."""
    return Said(whole(count))


def units(unit: Unit, words: ClassWords | None = None) -> Naming:
    """Name a unit in the plural: sextos, decenas, tiras."""
    return Naming(thing(unit, words))


def the(unit: Unit, words: ClassWords | None = None) -> Nodes:
    """Name a unit in the plural with its article: los sextos, las decenas.

    >>> the(ONE)[0]
    'las'
    """
    return ("las" if is_feminine(thing(unit, words)) else "los", units(unit, words))


def agree(feminine: str, masculine: str, unit: Unit | Thing) -> str:
    """Choose the word that agrees with a unit or a thing.

    >>> agree("todas", "todos", ONE)
    'todas'
    """
    return feminine if is_feminine(unit) else masculine


def verb(one: str, many: str, amount: Quantity) -> str:
    """Choose the verb that agrees with an amount: queda 1 tira, quedan 3 tiras, queda 1/6, quedan 5/6.

    >>> from onewhole.statements.reading import read_quantity
    >>> [verb("queda", "quedan", read_quantity(typed)) for typed in ("1", "5/6", "1 5/6", "0.5", "1 ft")]
    ['queda', 'quedan', 'quedan', 'queda', 'queda']
    """
    return one if single(amount) else many


def listed(parts: Sequence[Nodes], joiner: str = "y") -> Nodes:
    """Join runs of nodes: a, b y c.

    >>> listed([("a",), ("b",), ("c",)])
    ('a', ',', 'b', 'y', 'c')
    """
    found: list[Node] = []
    for at, part in enumerate(parts):
        if at:
            found.append(joiner if at == len(parts) - 1 else ",")
        found += part
    return tuple(found)


def amount(quantity: Quantity, words: ClassWords) -> Nodes:
    """Name an amount: 3 enteros y 3 sextos, 2 pies y 7 pulgadas; whole numbers and decimals in digits, and
    by their places where a place is overfull: 25 décimos.
    """
    if _bare(quantity):
        return (Said(quantity),)
    named = words if quantity.ladder.style is Style.MIXED else None
    return listed([(some(count, unit, named),) for count, unit in _parts(quantity)])


def single(quantity: Quantity) -> bool:
    """Say whether an amount takes a verb in the singular: one thing, or a bare number of one or less."""
    if _bare(quantity):
        return 0 < quantity.value <= 1
    return [count for count, _ in _parts(quantity)] == [1]


def _bare(quantity: Quantity) -> bool:
    """Say whether an amount is a number in digits, with no unit beside it."""
    return quantity.ladder.style in {Style.PLACES, Style.DECIMAL} and in_digits(quantity)


def _parts(quantity: Quantity) -> tuple[tuple[int, Unit], ...]:
    """Return what is counted, unit by unit."""
    if quantity.ladder.style in {Style.PLACES, Style.DECIMAL}:
        return named_places(quantity)
    pairs = zip(quantity.counts, quantity.ladder.units, strict=True)
    return tuple((count, unit) for count, unit in pairs if count is not None)
