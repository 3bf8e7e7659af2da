"""The beginning and the end of a film, in Spanish: what tonight is about, the big picture, and good night."""

from collections.abc import Sequence

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import PIECE, SO, Nodes, a_single, bare, regroups, some, told, units
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Counted, Label, Naming, Seam, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.sentences.typed import typed

#: What the first and the last part of a film are called.
TONIGHT, THE_END = "Esta noche", "Fin"

_PROBLEM = Thing("problema", "problemas", None)
_WHOLE = Thing("entero", "enteros")


def greeting_told(class_name: str) -> Sentences:
    """Greet a class by its name, or without one."""
    return told("hola", ",", typed(class_name)) if class_name else told("hola")


def date_told(date: str) -> Sentences:
    """Say what day it is."""
    return told("hoy es", typed(date))


def title_told(title: str) -> Sentences:
    """Say what the page is called."""
    return told("esta página se llama", typed(title))


def count_told(problems: int) -> Sentences:
    """Say how many problems there are."""
    return told("esta noche hay", Counted(problems, _PROBLEM))


def whole_told(words: ClassWords) -> Sentences:
    """Say what a whole is in this class."""
    return told(Counted(1, _WHOLE, spelt=True), "es", a_single(ONE, words))


def opened_told(
    count: int, every: int, small: Unit | None, large: Unit | None, words: ClassWords, *, lacking: bool
) -> Sentences:
    """Say in how many of all problems a larger unit is opened; None for units that are not the same in all.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> wholes, sixths = mixed(6).units
    >>> text_of(opened_told(7, 8, sixths, wholes, ClassWords("tira", "tiras", feminine=True), lacking=True))
    'En la mayoría no hay suficientes sextos, así que reagrupamos una tira.'
    """
    there = "no hay suficientes" if lacking else "necesitamos más"
    smaller = units(small) if small else Naming(PIECE)
    larger: Nodes = (a_single(large, words),) if large else ("una unidad más grande",)
    return told("en", *_how_many(count, every), there, smaller, SO, regroups(words, larger))


def column_opened_told(count: int, every: int, words: ClassWords) -> Sentences:
    """Say in how many of all problems a column has too few.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(column_opened_told(3, 8, ClassWords()))
    'En 3 de estos una columna no tiene suficientes, así que reagrupamos uno de la columna a su izquierda.'
    """
    lack = ("en", *_how_many(count, every), "una columna no tiene suficientes")
    return told(lack, SO, regroups(words, "uno de la columna a su izquierda"))


def one_adds_told(label: str) -> Sentences:
    """Warn of the one problem that adds."""
    return told("mira el signo del problema", Label(label), Seam(":"), "ahí se suma")


def one_takes_told(label: str) -> Sentences:
    """Warn of the one problem that takes away."""
    return told("mira el signo del problema", Label(label), Seam(":"), "ahí se resta")


def both_signs_told(added: int, taken: int) -> Sentences:
    """Warn of both signs on one page."""
    counted = ("se suma en", bare(added), "de los problemas", Seam(", y"), "se resta en", bare(taken))
    return told("mira los signos") + told(counted)


def try_told() -> Sentences:
    """Ask the family to try it first."""
    return told("paren aquí y traten de hacerlo")


def turn_told() -> Sentences:
    """Leave the answer to the family."""
    return told("ahora les toca a ustedes") + told("paren aquí y escriban la respuesta")


def film_closing_told() -> Sentences:
    """End the film."""
    return (
        told("ese", "fue el último")
        + told("si tu respuesta es otra", Seam(","), "busca el renglón donde cambia")
        + told("buenas noches y muy buen trabajo")
    )


def columns_told(*, pointed: bool) -> Sentences:
    """Say how numbers are written under each other; ``pointed`` where one of them has a point."""
    under = "punto debajo de punto" if pointed else "unidades con unidades, decenas con decenas"
    written = told("escribimos los números en columnas", Seam(":"), under)
    return written + told("trabajamos de derecha a izquierda")


def tens_told(large: Unit, small: Unit, tens: Sequence[Unit], words: ClassWords) -> Sentences:
    """Say that opening a unit is the same as opening a ten; ``tens`` are the ten and the one."""
    ten, one = tens
    worth = (a_single(large, words), "tiene", some((large.size / small.size).numerator, small))
    return (
        told("es igual que con las decenas")
        + told(a_single(ten), "tiene", some(10, one), Seam(", y"), worth)
        + told("la cantidad no cambia")
    )


def _how_many(count: int, every: int) -> Nodes:
    if count == every:
        return ("todos estos",)
    return ("la mayoría",) if 2 * count > every else (bare(count), "de estos")
