"""What the page for home says in Spanish: what the class does tonight, in short sentences, to usted."""

from collections.abc import Collection, Sequence
from fractions import Fraction

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import a_single, listed, regroups, the, to_regroup, told
from onewhole.languages.told import acts_told
from onewhole.number.ladder import TEN
from onewhole.number.unit import ONE, Unit
from onewhole.problems.needs import Operation
from onewhole.sentences.node import Counted
from onewhole.sentences.sentence import Sentences

_ACTS = {
    Operation.SUBTRACT: "restamos un número de otro",
    Operation.ADD: "sumamos números",
    Operation.COMPARE: "vemos qué número es mayor",
    Operation.ORDER: "ponemos números en orden",
    Operation.FIND: "buscamos un número que falta",
    Operation.ROUND: "redondeamos números",
    Operation.READ: "leemos diagramas de puntos",
    Operation.MULTIPLY: "multiplicamos",
    Operation.DIVIDE: "repartimos en partes iguales",
    Operation.RENAME: "escribimos números de otra forma",
}


def tonight_told(done: Collection[Operation]) -> Sentences:
    """Say what is done with tonight's numbers.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(tonight_told([Operation.ADD, Operation.SUBTRACT]))
    'Esta noche restamos un número de otro. En algunos, sumamos números.'
    """
    first, *rest = [act for operation, act in _ACTS.items() if operation in done] or [_ACTS[Operation.RENAME]]
    others = (told("en algunos,", listed(acts, "o")) for acts in acts_told(rest))
    return told("esta noche", first) + tuple(one for said in others for one in said)


def opening_told(parts: int, words: ClassWords) -> Sequence[Sentences]:
    """Say how a whole of so many parts is opened, and that tens are opened likewise; a paragraph each."""
    pieces = Counted(parts, Unit(Fraction(1, parts)), spelt=True)
    ten = Unit(Fraction(TEN))
    opened = (
        *told("a veces no hay suficientes partes para quitar"),
        *told("entonces", regroups(words, a_single(ONE, words)), ": se corta en partes iguales"),
        *told(a_single(ONE, words), "tiene", pieces),
    )
    alike = (
        *told("es igual con", the(ten)),
        *told(a_single(ten), "tiene", Counted(TEN, ONE, spelt=True)),
        *told("solo escribimos el número de otra forma"),
    )
    return opened, alike


def wording_told(words: ClassWords, *, taken: bool, added: bool) -> Sentences:
    """Say what regrouping is called in class, and what it was called when today's parents learnt it."""
    known: Sentences = ()
    if taken:
        known = told("tal vez usted lo conoce como pedir prestado")
    elif added:
        known = told("tal vez usted lo conoce como llevar")
    return known + told("en clase decimos", to_regroup(words), ": la cantidad no cambia")


def closing_told() -> Sentences:
    """Say what a family need not do, and when to stop."""
    return (
        *told("no hace falta que usted lo enseñe"),
        *told("escuchar ayuda"),
        *told("si toma mucho tiempo, paren ahí y mándenos una nota"),
    )
