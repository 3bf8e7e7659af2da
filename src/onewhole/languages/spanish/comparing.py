"""Which of two numbers is more, and which number is missing, in Spanish."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import (
    SO,
    Nodes,
    a_single,
    agree,
    amount,
    bare,
    some,
    the,
    thing,
    told,
    units,
    verb,
)
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.comparing import (
    AgainstHalf,
    AgainstOne,
    AllInPiecesToCompare,
    AsFractions,
    AsManyMissing,
    AsManyPieces,
    Comparing,
    CountDecides,
    Deciding,
    Finding,
    GapRead,
    MadeComparable,
    MoreAndLarger,
    MoreBesideWholes,
    OnlyOneIsMore,
    PartTaken,
    PiecesOfOneSize,
    PlaceDecides,
    SameCountToCompare,
    SameNumber,
    SamePlacesToCompare,
    SameSizeToCompare,
    TakenAndLeft,
    UndoneToFind,
    WholesDecide,
    WholesSame,
    WithWholes,
)

#: So many larger places are named one by one.
NAMED = 2
_DECIDES: Nodes = (Seam(", y"), "eso decide")


def comparing(reason: Comparing, words: ClassWords) -> Sentences:
    """Say how two numbers are compared, or how a missing number is found.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(comparing(CountDecides(mixed(4).units[1], 1, 3), ClassWords()))
    '1 cuarto es menos que 3 cuartos.'
    """
    if isinstance(reason, Deciding):
        return _deciding(reason, words)
    if isinstance(reason, MadeComparable):
        return _made(reason, words)
    if isinstance(reason, Finding):
        return _finding(reason, words)
    assert_never(reason)


def _deciding(reason: Deciding, words: ClassWords) -> Sentences:
    match reason:
        case WholesDecide(unit, first, second):
            return told(_more(unit, first, second, words), _DECIDES)
        case PlaceDecides(place, first, second, above):
            return _same_above(above, words) + told(_more(place, first, second), _DECIDES)
        case SameNumber(number):
            return told("los dos son", Said(number))
        case OnlyOneIsMore(more):
            return told(Said(more), "es más que nada")
        case MoreBesideWholes(unit, count, number, more):
            both = ("los dos tienen", some(count, unit, words))
            return told(both, Seam(", y"), Said(number), "tiene", Said(more), "más")
        case PiecesOfOneSize(small, first, second):
            return told("las partes son del mismo tamaño") + told(_more(small, first, second))
        case AsManyPieces(count, first, second):
            there = ("hay", bare(count), "parte" if count == 1 else "partes", "en cada número")
            return told(there) + told(_larger(first, second), _DECIDES)
        case AgainstOne(unit, first, second):
            return _against_one(first, unit, words) + _against_one(second, unit, words)
        case AgainstHalf(first, second):
            return _against_half(first) + _against_half(second)
        case AsManyMissing():
            return _missing(reason, words)
        case MoreAndLarger(more, less):
            counts = (Said(more), "tiene más partes que", Said(less))
            return told(counts, Seam(", y"), _larger(more.ladder.units[1], less.ladder.units[1]))
        case CountDecides(small, first, second):
            return told(_more(small, first, second))
        case _:
            assert_never(reason)


def _made(reason: MadeComparable, words: ClassWords) -> Sentences:
    both = "escribimos los dos números"
    match reason:
        case WithWholes(wholes):
            return told("escribimos cada número con sus", units(wholes, words))
        case AsFractions():
            return told("escribimos el decimal como fracción")
        case WholesSame(unit, count):
            return told("los dos tienen", some(count, unit, words), SO, "comparamos las fracciones")
        case SameSizeToCompare(small):
            return told(both, "con partes del mismo tamaño", Seam(":"), units(small))
        case SamePlacesToCompare(small):
            return told(both, "hasta", the(small))
        case SameCountToCompare(count):
            return told(both, "con la misma cantidad de partes", Seam(":"), bare(count))
        case AllInPiecesToCompare(small):
            return told("contamos todo en", units(small))
        case _:
            assert_never(reason)


def _finding(reason: Finding, words: ClassWords) -> Sentences:
    match reason:
        case UndoneToFind():
            return told("deshacemos lo que está junto al espacio en blanco, para que quede solo")
        case TakenAndLeft(whole, left):
            both = told("lo que se quita y lo que queda forman el total", ",", Said(whole))
            blank = "el espacio en blanco es el total menos lo que queda"
            return both + told("por eso", blank, ",", Said(left))
        case PartTaken(part) if not part.parts:
            return told("no se quita nada")
        case PartTaken(part):
            return told(verb("se quita", "se quitan", part), amount(part, words))
        case GapRead():
            return told("ahora los dos lados se parecen", SO, "podemos leer el número que falta")
        case _:
            assert_never(reason)


def _same_above(above: tuple[Unit, ...], words: ClassWords) -> Sentences:
    """Say which larger places are the same in both numbers."""
    if not above:
        return ()
    if len(above) > NAMED:
        return told("los lugares más grandes son iguales")
    first, *others = (the(unit, words) for unit in above)
    return told(first, *(("y", *other) for other in others), "son iguales")


def _more(unit: Unit, first: int, second: int, words: ClassWords | None = None) -> Nodes:
    """Say which of two counts is more; where there is none of one, the other stands first."""
    if not first:
        first, second = second, first
    more = "más que" if first > second else "menos que"
    than = some(second, unit, words) if second else units(unit, words)
    none = () if second else (agree("ninguna de las", "ninguno de los", thing(unit, words)),)
    return some(first, unit, words), "es" if first == 1 else "son", more, *none, than


def _larger(first: Unit, second: Unit) -> Nodes:
    """Say which of two pieces is larger, as the first of them is against the second."""
    size = "son más grandes que" if first.size > second.size else "son más pequeños que"
    return (*the(first), size, *the(second))


def _against_one(number: Quantity, unit: Unit, words: ClassWords) -> Sentences:
    """Say on which side of one whole a number lies; of the number 1 itself nothing."""
    one = a_single(unit, words)
    if number.value != 1:
        return told(Said(number), "es menos que" if number.value < 1 else "es más que", one)
    return told(Said(number), "es", one) if number.ladder.style is Style.MIXED else ()


def _against_half(number: Quantity) -> Sentences:
    """Say on which side of one half a fraction lies; of 1/2 itself nothing."""
    top, bottom = number.amounts[1], number.ladder.denominator
    if (top, bottom) == (1, 2):
        return ()
    half = ("la mitad de", bare(bottom), SO, Said(number))
    if 2 * top == bottom:
        return told(bare(top), "es", half, "es un medio")
    than = "menos que" if 2 * top < bottom else "más que"
    return told(bare(top), "es", than, half, "es", than, "un medio")


def _missing(reason: AsManyMissing, words: ClassWords) -> Sentences:
    """Say how much each number needs to make one whole, and which needs less."""
    first, second = reason.first, reason.second
    small, other = first.ladder.units[1], second.ladder.units[1]
    one = a_single(first.ladder.units[0], words)
    lacks = "le falta" if reason.missing == 1 else "le faltan"
    needs = told(
        ("a", Said(first), lacks, some(reason.missing, small), "para formar", one),
        Seam(", y"),
        ("a", Said(second), lacks, some(reason.missing, other)),
    )
    nearer = first if small.size < other.size else second
    return needs + told(_larger(small, other), SO, Said(nearer), "está más cerca de", one)
