"""The words that do a picture's job: what is shown, cut, crossed out, left, jumped and compared."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.amounts import measured
from onewhole.languages.english.bar_told import bar_told
from onewhole.languages.english.in_plot import stack_told
from onewhole.languages.english.making import Nodes, bare, listed, some, told, units
from onewhole.languages.english.words import short
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
from onewhole.sentences.node import Counted, Node, Said
from onewhole.sentences.sentence import Sentences
from onewhole.statements.expression import Quotient, Sum, Term, Times

#: Numbers that count no things: digits stand alone, and a one is called a one.
BARE = ClassWords("one", "ones")


def pictured(scene: Scene, words: ClassWords) -> Sentences:
    """Describe a scene in short sentences that hold every number of it.

    >>> from fractions import Fraction
    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.unit import ONE
    >>> cut = CutInto(Count(1, ONE), Count(6, Unit(Fraction(1, 6))))
    >>> text_of(pictured(Scene(Fraction(9), Fraction(9), (), (cut,)), ClassWords("strip", "strips")))
    'One strip is cut into 6 sixths.'
    """
    naming = scene_words(scene, words)
    found = tuple(sentence for each in scene.descriptions for sentence in _told(each, naming))
    return found or told("room to draw")


def scene_words(scene: Scene, words: ClassWords) -> ClassWords:
    """Return the words that units are named with in a scene: the class's, made short, or ones beside tens.

    Where tens are counted and nothing is cut into parts, a one is a one and not what the class calls a whole.

    >>> from onewhole.languages.english.words import words_for
    >>> from onewhole.number.unit import ONE
    >>> scene_words(Scene(ONE.size, ONE.size, ()), words_for("strip of paper")).wholes
    'strips'
    """
    written = [piece.shape.caption for piece in scene.pieces if isinstance(piece.shape, Words)]
    counted = [
        *(caption for caption in written if isinstance(caption, Quantity | Count)),
        *(caption for each in scene.descriptions for caption in amounts(each)),
    ]
    units = [unit for caption in counted for unit in _units(caption)]
    numbers = all(unit.kind is Kind.NUMBER and unit.size >= 1 for unit in units)
    return BARE if numbers and any(unit.size > 1 for unit in units) else short(words)


def _units(caption: Caption) -> tuple[Unit, ...]:
    return (caption.unit,) if isinstance(caption, Count) else caption.ladder.units


def _told(each: Description, words: ClassWords) -> Sentences:
    match each:
        case Shown(shown):
            return told("shown:", _all(shown, words))
        case StillThere(left):
            return told("left:", _all(left, words))
        case CrossedOut(gone):
            return told("crossed out:", _all(gone, words))
        case Gathered(there):
            return told("put together:", _all(there, words))
        case Makes(small, made):
            return told(_amount(small, words), "make", _amount(made, words))
        case CutInto(cut, parts):
            return told(_done_to(cut, words), "cut into", _amount(parts, words))
        case SplitInto(number, into):
            return told(_done_to(number, words), "split into", _all(into, words))
        case OneJump(length):
            return told("jump:", _amount(length, words))
        case JumpEnds(place):
            return told("the jump ends at", _amount(place, words))
        case EqualJumps(count, length, end):
            jumps = told(bare(count), "equal jumps of", _amount(length, words))
            return jumps + told("the last jump ends at", _amount(end, words))
        case OnRuler(part):
            return told(
                "a ruler marked in inches"
                if part.size == 1
                else ("a ruler marked in", units(part), "of an inch")
            )
        case Compared(first, second):
            return told(_amount(first, words), _relation(first, second), _amount(second, words))
        case MarkAt(mark):
            return told("marked:", Said(mark))
        case LiesBetween(number, low, high):
            return told(_amount(number, words), "lies between", _all((low, high), words))
        case Halfway(middle):
            return told("halfway:", _amount(middle, words))
        case RoundedTo(neighbor):
            return told("nearer:", _amount(neighbor, words))
        case Shares(count):
            return told("shares:", bare(count))
        case EachHas(has):
            return told("each share has:", _all(has, words))
        case UnderEachOther(numbers, taken):
            row = Sum(tuple(Term(number, taken=taken and at > 0) for at, number in enumerate(numbers)))
            return told("in columns:", Said(row))
        case WrittenAbove(above, struck):
            where = "above struck-out digits:" if struck else "above the columns:"
            return told(where, _all(above, BARE))
        case WrittenBelow(below):
            return told("written below:", _all(below, BARE))
        case TimesInColumns(above, below):
            return told("in columns:", Said(Times(above, below)))
        case WrittenRows(numbers):
            return told("rows below:", listed([(Said(number),) for number in numbers]))
        case DividedInColumns(number, by):
            return told("long division:", Said(Quotient(number, by)))
        case WrittenOver(over):
            return told("written above:", _all(over, BARE))
        case DivisionRow(taken, left):
            away = told("taken away:", _amount(taken, BARE)) if taken else ()
            return away + (told("left:", _amount(left, BARE)) if left else ())
        case SidesOf(left, right):
            return told("a rectangle with the sides", Said(left), "and", Said(right))
        case PlotFrom(first, last):
            return told("a line plot from", Said(first), "to", Said(last))
        case StackOf(value, count):
            return stack_told(value, count)
        case Framed(values):
            return told("framed:", *listed([(Said(value),) for value in values]))
        case PartProduct(left, right, area):
            return told(Said(left), "times", Said(right), "is", Said(area))
        case WholeAmount(whole):
            return told("in all:", _known(whole, words))
        case (
            BarNumber() | EqualInBar() | EachPart() | SomeParts() | Lacking() | TimesAsLong() | SidesAndArea()
        ):
            return bar_told(each, lambda amount: _known(amount, words))
        case PartAmount(part):
            return told("one part:", _known(part, words))
        case _:
            assert_never(each)


def _known(amount: Quantity | None, words: ClassWords) -> Nodes:
    return ("not known yet",) if amount is None else _amount(amount, words)


def _all(captions: tuple[Caption, ...], words: ClassWords) -> Nodes:
    """Join amounts with "and"; a comma before it keeps those apart that have an "and" of their own."""
    parts = [_amount(caption, words) for caption in captions]
    if len(parts) < 2:
        return parts[0] if parts else ("nothing",)
    own = len(parts) > 2 or any("and" in part for part in parts)
    return listed(parts, joiner=", and" if own else "and")


def _done_to(caption: Caption, words: ClassWords) -> Nodes:
    """Begin a sentence about what something is done to, with its verb."""
    match _amount(caption, words):
        case (Counted(1, unit),):
            return (Counted(1, unit, spelt=True), "is")
        case (Said(Quantity() as number), *rest) as nodes:
            below_one = 0 < number.value <= 1 and "of" in rest
            return (*nodes, "is" if below_one or not rest else "are")
        case nodes:
            return (*nodes, "are")


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
    nodes: list[Node] = []
    for one in counted:
        nodes += ["and", one] if nodes else [one]
    return tuple(nodes)


def _relation(first: Caption, second: Caption) -> str:
    left, right = (
        caption.value if isinstance(caption, Quantity) else caption.count * caption.unit.size
        for caption in (first, second)
    )
    if left == right:
        return "is the same as"
    return "is more than" if left > right else "is less than"
