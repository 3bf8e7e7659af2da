"""An amount that counts something, in Spanish: 1 tira, 2 1/6 tiras, 5/6 de una tira, 5 pies y 2 pulgadas."""

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import Nodes, listed
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, with_mark
from onewhole.number.unit import DOLLAR, unit_marked
from onewhole.sentences.node import Counted, Naming, Said, Thing


def measured(quantity: Quantity, words: ClassWords) -> Nodes:
    """Name an amount with its unit, one or many; a number counts what the class calls a whole.

    >>> from onewhole.languages.spanish.making import told
    >>> from onewhole.languages.spanish.words import read_whole
    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_quantity
    >>> strip = read_whole("una tira")
    >>> text_of(told(measured(read_quantity("2 1/6"), strip), "y", measured(read_quantity("5/6"), strip)))
    '2 1/6 tiras y 5/6 de una tira.'
    """
    if quantity.ladder.clock:
        return (Said(quantity),)
    if quantity.ladder.style is Style.MEASURE:
        pairs = zip(quantity.amounts, quantity.ladder.units, strict=True)
        return listed([(Counted(count, unit),) for count, unit in pairs])
    if quantity.ladder.mark:
        return _of_unit(quantity)
    if one_thing(quantity):
        return (Counted(1, a_whole(words)),)
    if 0 < quantity.value < 1 or (quantity.value == 1 and quantity.ladder.style is Style.MIXED):
        return (Said(quantity), *of_one(words))
    return (Said(quantity), Naming(a_whole(words)))


def _of_unit(quantity: Quantity) -> Nodes:
    """Name an amount of one unit: 5 5/8 pulgadas, 5/8 de pulgada, $3.25."""
    unit = unit_marked(quantity.ladder.mark)
    if unit.mark == DOLLAR:
        return (Said(quantity),)
    plain = with_mark(quantity, "")
    if quantity.ladder.style is Style.MIXED and quantity.counts[0] is None:
        return (Said(plain), "de", Naming(unit, many=False))
    return (Said(plain), Naming(unit, many=not one_thing(plain)))


def one_thing(quantity: Quantity) -> bool:
    """Say whether a number is written with the digit 1 and nothing else."""
    if quantity.ladder.style is Style.MEASURE or quantity.counts[0] is None:
        return False
    return [count for count in quantity.counts if count is not None] == [1]


def of_one(words: ClassWords) -> Nodes:
    """Say that an amount is a part of one: de una tira."""
    return ("de una" if words.feminine else "de un", Naming(a_whole(words), many=False))


def a_whole(words: ClassWords) -> Thing:
    """Return what the class calls a whole, as a thing."""
    return Thing(words.whole, words.wholes, feminine=words.feminine)
