"""The words that do a picture's job, in Spanish: what is shown, cut, crossed out, left, jumped, compared."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.amounts import measured
from onewhole.languages.spanish.bar_told import bar_told
from onewhole.languages.spanish.in_plot import stack_told
from onewhole.languages.spanish.making import Nodes, bare, listed, some, told, units
from onewhole.languages.spanish.words import TAG, short
from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind, Unit
from onewhole.pictures.bar_description import (
    BarNumber,
    EachPart,
    EqualInBar,
    Lacking,
    SidesAndArea,
    SomeParts,
    TimesAsLong,
)
from onewhole.pictures.caption import Caption, Count
from onewhole.pictures.description import (
    Compared,
    CrossedOut,
    CutInto,
    Description,
    DividedInColumns,
    DivisionRow,
    EachHas,
    EqualJumps,
    Framed,
    Gathered,
    Halfway,
    JumpEnds,
    LiesBetween,
    Makes,
    MarkAt,
    OneJump,
    OnRuler,
    PartAmount,
    PartProduct,
    PlotFrom,
    RoundedTo,
    Shares,
    Shown,
    SidesOf,
    SplitInto,
    StackOf,
    StillThere,
    TimesInColumns,
    UnderEachOther,
    WholeAmount,
    WrittenAbove,
    WrittenBelow,
    WrittenOver,
    WrittenRows,
    amounts,
)
from onewhole.pictures.scene import Scene, Words
from onewhole.sentences.node import Counted, Said
from onewhole.sentences.sentence import Sentences
from onewhole.statements.expression import Quotient, Sum, Term, Times

#: Numbers that count no things: digits stand alone, and a one is called a unit.
BARE = ClassWords("unidad", "unidades", language=TAG, feminine=True)


def pictured(scene: Scene, words: ClassWords) -> Sentences:
    """Describe a scene in short sentences that hold every number of it.

    >>> from fractions import Fraction
    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.unit import ONE
    >>> cut = CutInto(Count(1, ONE), Count(6, Unit(Fraction(1, 6))))
    >>> tira = ClassWords("tira", "tiras", feminine=True)
    >>> text_of(pictured(Scene(Fraction(9), Fraction(9), (), (cut,)), tira))
    'Una tira se corta en 6 sextos.'
    """
    naming = scene_words(scene, words)
    found = tuple(sentence for each in scene.descriptions for sentence in _told(each, naming))
    return found or told("espacio para dibujar")


def scene_words(scene: Scene, words: ClassWords) -> ClassWords:
    """Return the words that units are named with in a scene: the class's, made short, or ones beside tens.

    Where tens are counted and nothing is cut into parts, a one is a one and not what the class calls a whole.

    >>> from onewhole.number.unit import ONE
    >>> scene_words(Scene(ONE.size, ONE.size, ()), ClassWords("tira de papel", "tiras de papel")).wholes
    'tiras'
    """
    written = [piece.shape.caption for piece in scene.pieces if isinstance(piece.shape, Words)]
    counted = [
        *(caption for caption in written if isinstance(caption, Quantity | Count)),
        *(caption for each in scene.descriptions for caption in amounts(each)),
    ]
    every = [unit for caption in counted for unit in _units(caption)]
    numbers = all(unit.kind is Kind.NUMBER and unit.size >= 1 for unit in every)
    return BARE if numbers and any(unit.size > 1 for unit in every) else short(words)


def _units(caption: Caption) -> tuple[Unit, ...]:
    return (caption.unit,) if isinstance(caption, Count) else caption.ladder.units


def _told(each: Description, words: ClassWords) -> Sentences:
    match each:
        case Shown(shown):
            return told(_does("se ve", "se ven", shown, words), _all(shown, words))
        case StillThere(left):
            return told(_does("queda", "quedan", left, words), _all(left, words))
        case CrossedOut(gone):
            return told(_does("se tacha", "se tachan", gone, words), _all(gone, words))
        case Gathered(there):
            return told(_does("se junta", "se juntan", there, words), _all(there, words))
        case Makes(small, made):
            return told(_amount(small, words), "forman", _amount(made, words))
        case CutInto(cut, parts):
            return told(_done_to(cut, words, "se corta en", "se cortan en"), _amount(parts, words))
        case SplitInto(number, into):
            return told(_done_to(number, words, "se separa en", "se separan en"), _all(into, words))
        case OneJump(length):
            return told("salto:", _amount(length, words))
        case JumpEnds(place):
            return told("el salto termina en", _amount(place, words))
        case EqualJumps(count, length, end):
            jumps = told(bare(count), "saltos iguales de", _amount(length, words))
            return jumps + told("el último salto termina en", _amount(end, words))
        case OnRuler(part):
            if part.size == 1:
                return told("una regla marcada en pulgadas")
            return told("una regla marcada en", units(part), "de pulgada")
        case Compared(first, second):
            relation = _relation(first, second, alone=_alone(_amount(first, words)))
            return told(_amount(first, words), relation, _amount(second, words))
        case MarkAt(mark):
            return told("marca en", Said(mark))
        case LiesBetween(number, low, high):
            return told(_amount(number, words), "está entre", _all((low, high), words))
        case Halfway(middle):
            return told("punto medio:", _amount(middle, words))
        case RoundedTo(neighbor):
            return told("más cerca:", _amount(neighbor, words))
        case Shares(count):
            return told("partes:", bare(count))
        case EachHas(has):
            return told("cada parte tiene:", _all(has, words))
        case UnderEachOther(numbers, taken):
            row = Sum(tuple(Term(number, taken=taken and at > 0) for at, number in enumerate(numbers)))
            return told("en columnas:", Said(row))
        case WrittenAbove(above, struck):
            where = "arriba de los dígitos tachados:" if struck else "arriba de las columnas:"
            return told(where, _all(above, BARE))
        case WrittenBelow(below):
            return told("escrito abajo:", _all(below, BARE))
        case TimesInColumns(above, below):
            return told("en columnas:", Said(Times(above, below)))
        case WrittenRows(numbers):
            return told("filas de abajo:", listed([(Said(number),) for number in numbers]))
        case DividedInColumns(number, by):
            return told("división larga:", Said(Quotient(number, by)))
        case WrittenOver(over):
            return told("escrito arriba:", _all(over, BARE))
        case DivisionRow(taken, left):
            away = told("se quita:", _amount(taken, BARE)) if taken else ()
            return away + (told("queda:", _amount(left, BARE)) if left else ())
        case SidesOf(left, right):
            return told("un rectángulo con los lados", Said(left), "y", Said(right))
        case PlotFrom(first, last):
            return told("un diagrama de puntos de", Said(first), "a", Said(last))
        case StackOf(value, count):
            return stack_told(value, count)
        case Framed(values):
            return told("enmarcado:", *listed([(Said(value),) for value in values]))
        case PartProduct(left, right, area):
            return told(Said(left), "por", Said(right), "es", Said(area))
        case WholeAmount(whole):
            return told("en total:", _known(whole, words))
        case (
            BarNumber() | EqualInBar() | EachPart() | SomeParts() | Lacking() | TimesAsLong() | SidesAndArea()
        ):
            return bar_told(each, lambda amount: _known(amount, words))
        case PartAmount(part):
            return told("una parte:", _known(part, words))
        case _:
            assert_never(each)


def _does(one: str, many: str, captions: tuple[Caption, ...], words: ClassWords) -> str:
    """Choose the verb that agrees with what is shown; of nothing, no verb but "no ... nada"."""
    if not captions:
        return f"no {one}"
    return one if len(captions) == 1 and _alone(_amount(captions[0], words)) else many


def _alone(nodes: Nodes) -> bool:
    """Say whether an amount is one thing, or a number of at most one."""
    match nodes:
        case (Counted(1, _),):
            return True
        case (Said(Quantity() as number), *_):
            return 0 < number.value <= 1
        case _:
            return False


def _known(amount: Quantity | None, words: ClassWords) -> Nodes:
    return ("todavía no se sabe",) if amount is None else _amount(amount, words)


def _all(captions: tuple[Caption, ...], words: ClassWords) -> Nodes:
    """Join amounts with "y"; a comma before it keeps those apart that have a "y" of their own."""
    parts = [_amount(caption, words) for caption in captions]
    if len(parts) < 2:
        return parts[0] if parts else ("nada",)
    own = any("y" in part for part in parts)
    return listed(parts, joiner=", y" if own else "y")


def _done_to(caption: Caption, words: ClassWords, one: str, many: str) -> Nodes:
    """Begin a sentence about what something is done to, with its verb."""
    match _amount(caption, words):
        case (Counted(1, unit),):
            return (Counted(1, unit, spelt=True), one)
        case nodes:
            return (*nodes, one if _alone(nodes) else many)


def _amount(caption: Caption, words: ClassWords) -> Nodes:
    match caption:
        case Count(count, unit):
            return (some(count, unit, words),)
        case Quantity():
            return _quantity(caption, words)
        case _:
            assert_never(caption)


def _quantity(quantity: Quantity, words: ClassWords) -> Nodes:
    """Name every unit of an amount where it is written in units; digits stay digits."""
    style = quantity.ladder.style
    if style is Style.MIXED:
        pairs = zip(quantity.counts, quantity.ladder.units, strict=True)
        return _and([some(count, unit, words) for count, unit in pairs if count is not None])
    if style is not Style.MEASURE and not in_digits(quantity):
        return _and([some(count, unit, words) for count, unit in named_places(quantity)])
    return (Said(quantity),) if words == BARE else measured(quantity, words)


def _and(counted: list[Counted]) -> Nodes:
    return listed([(one,) for one in counted], joiner="y")


def _relation(first: Caption, second: Caption, *, alone: bool) -> str:
    left, right = (
        caption.value if isinstance(caption, Quantity) else caption.count * caption.unit.size
        for caption in (first, second)
    )
    is_so = "es" if alone else "son"
    if left == right:
        return f"{is_so} lo mismo que"
    return f"{is_so} más que" if left > right else f"{is_so} menos que"
