"""One line as a row of pieces: numbers, signs, words, and brackets exactly where the tree needs them."""

from collections.abc import Iterable, Iterator
from enum import StrEnum
from typing import assert_never

from msgspec import Struct

from onewhole.number.digits import in_digits
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Ladder, Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.with_minus import WithMinus
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Term,
    Times,
    WithRemainder,
)
from onewhole.statements.factor_question import FactorQuestion, WordAnswer
from onewhole.statements.gap import Gap, type_hole
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing, ListSort
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    NumberRow,
    Ordering,
    Question,
    Relation,
)
from onewhole.statements.whole_groups import GroupsAsk, WholeGroups
from onewhole.statements.wording import FactorWords, FromEnd, GroupWords, OfPlot, Phrase, ToNearest, Wording
from onewhole.statements.writable import Writable


class Sign(StrEnum):
    """What may stand between numbers, in its plain spelling."""

    PLUS = "+"
    MINUS = "-"
    TIMES = "x"
    DIVIDE = "\N{DIVISION SIGN}"
    REMAINDER = "r"
    EQUALS = "="
    LESS = "<"
    GREATER = ">"
    ABOUT = "\N{ALMOST EQUAL TO}"
    COMMA = ","
    WHICH = "?"  # which of < = > belongs here is asked
    OPEN = "("
    CLOSE = ")"
    OVER = "/"
    UNTIL = "to"  # from one time of day to another


class Blanks(Struct, frozen=True):
    """A measure of which every count is missing: ? ft ? in."""

    units: Ladder


Number = Quantity | Gap | Impossible | WithMinus | Blanks
#: A number, a sign, or words: the form in which a number is wanted, what is asked of it.
FlatPiece = Number | Sign | NumberForm | Wording
Piece = FlatPiece | Over

#: One part of a mixed number: its count, the hole, or None where nothing is written.
Part = int | type_hole | None

_RELATIONS = {Relation.LESS: Sign.LESS, Relation.EQUAL: Sign.EQUALS, Relation.GREATER: Sign.GREATER}


def row(thing: Writable) -> tuple[Piece, ...]:
    """Return the pieces of a line from left to right; a fraction being worked is one piece.

    >>> from onewhole.statements.reading import read_expression
    >>> [str(piece) for piece in row(read_expression("3 - (2 - 1)")) if isinstance(piece, Sign)]
    ['-', '(', '-', ')']
    """
    return tuple(_row(thing))


def flat(thing: Writable) -> tuple[FlatPiece, ...]:
    """Return the pieces of a line with fractions being worked written with brackets too: (44 - 23)/6."""
    return tuple(_flat(row(thing)))


def _row(thing: Writable) -> Iterator[Piece]:
    match thing:
        case Quantity() | Gap() | Impossible() | WithMinus() | Over():
            yield thing
        case Sum((Term(Quantity() as end), Term(Quantity() as start, taken=True))) if end.ladder.clock and (
            start.ladder.clock
        ):
            yield from (start, Sign.UNTIL, end)
        case Sum(terms):
            for at, term in enumerate(terms):
                if at:
                    yield Sign.MINUS if term.taken else Sign.PLUS
                yield from _bracketed(term.part, Sum)
        case Times(left, right):
            yield from _bracketed(left, Sum)
            yield Sign.TIMES
            yield from _bracketed(right, Sum, Times, Quotient)
        case Quotient(left, right):
            yield from _bracketed(left, Sum)
            yield Sign.DIVIDE
            yield from _bracketed(right, Sum, Times, Quotient)
        case InBrackets(inside):
            yield from _in_brackets(inside)
        case WithRemainder(quotient, left):
            yield from (quotient, Sign.REMAINDER, left)
        case Relation() | WordAnswer():
            yield _RELATIONS[thing] if isinstance(thing, Relation) else FactorWords[thing.name]
        case Question(asked):
            yield from _row(asked)
        case Comparison(left, right, sign):
            yield from _row(left)
            yield Sign.WHICH if sign is None else _RELATIONS[sign]
            yield from _row(right)
        case Ordering(parts, falling):
            yield Phrase.ORDER
            yield from _listed(parts, Sign.COMMA)
            yield FromEnd(falling)
        case NumberRow(parts, signs):
            yield from _listed(parts, *(_RELATIONS[sign] for sign in signs) if signs else (Sign.COMMA,))
        case MissingNumber():
            sides = (_gap_side(thing), _row(thing.rest))
            first, second = sides if thing.gap_left else reversed(sides)
            yield from first
            yield Sign.EQUALS
            yield from second
        case AnotherName(number, wanted):
            yield number
            yield from (Sign.EQUALS, Blanks(wanted)) if isinstance(wanted, Ladder) else (wanted,)
        case Rounding():
            yield from _rounding(thing)
        case AskedInWords():
            yield from _in_words(thing)
        case _:
            assert_never(thing)


#: The words that ask whether one number is a factor or a multiple of another, and those that say yes and no.
_OF_FACTOR = (Phrase.FACTOR_OF, FactorWords.IS_FACTOR_OF, FactorWords.NO_FACTOR_OF)
_OF_MULTIPLE = (Phrase.MULTIPLE_OF, FactorWords.IS_MULTIPLE_OF, FactorWords.NO_MULTIPLE_OF)
#: The words that ask something of things in groups, and those before the number that answers.
_OF_GROUPS = {
    GroupsAsk.NEEDED: (GroupWords.NEEDED, Phrase.GROUPS_NEEDED),
    GroupsAsk.FULL: (GroupWords.FULL, Phrase.GROUPS_FULL),
    GroupsAsk.LEFT: (GroupWords.LEFT, Phrase.GROUPS_LEFT),
}


def _in_words(thing: Listing | FactorQuestion | PlotQuestion | WholeGroups) -> Iterator[Piece]:
    """Write what is asked in words, of a line plot without the plot itself: it is drawn above or beside."""
    match thing:
        case PlotQuestion(_, asks, among):
            yield OfPlot(asks, among.bound if among else None)
            yield from (among.value,) if among else ()
        case Listing(sort, number, most):
            yield Phrase.FACTORS if sort is ListSort.FACTORS else Phrase.MULTIPLES
            yield number
            yield from () if most is None else (Sign.UNTIL, most)
        case FactorQuestion(step=None):
            yield from _prime_or_not(thing)
        case FactorQuestion(_, step, gives):
            assert step is not None
            asked, yes, no = _OF_FACTOR if thing.of_factor else _OF_MULTIPLE
            first, second = thing.numbers
            is_one = no if gives is WordAnswer.NO else yes
            yield from (
                (asked, second, FactorWords.OR_NOT, first) if gives is None else (first, is_one, second)
            )
        case WholeGroups(asks=asks, gives=Quantity() as gives):
            _, answers = _OF_GROUPS[asks]
            yield from (answers, gives)
        case WholeGroups(about=about, asks=asks):
            words, _ = _OF_GROUPS[asks]
            yield from (*_row(about), Sign.COMMA, words)
        case _:
            assert_never(thing)


def _prime_or_not(thing: FactorQuestion) -> Iterator[Piece]:
    if thing.gives is None:
        yield from (Phrase.PRIME_OR_COMPOSITE, thing.number)
    else:
        yield from (thing.number, FactorWords[f"IS_{thing.gives.name}"])


def _rounding(thing: Rounding) -> Iterator[Piece]:
    """Write what is asked, what the number lies between, or what it is rounded to."""
    if thing.gives is not None:
        yield thing.number
        yield Sign.EQUALS if thing.gives.value == thing.number.value else Sign.ABOUT
        yield thing.gives
    elif thing.between is not None:
        low, high = thing.between
        yield low
        yield Sign.LESS if low.value < thing.number.value else Sign.EQUALS
        yield thing.number
        yield Sign.LESS
        yield high
    else:
        yield Phrase.ROUND
        yield thing.number
        yield ToNearest(thing.to)


def _listed(parts: tuple[Quantity, ...], *signs: Sign) -> Iterator[Piece]:
    """Write numbers in a row with the signs between them, or with one sign again and again."""
    for at, part in enumerate(parts):
        if at:
            yield signs[(at - 1) % len(signs)]
        yield part


def _gap_side(thing: MissingNumber) -> Iterator[Piece]:
    parts: list[tuple[Expression | Gap, bool]] = list(thing.beside)
    parts.insert(thing.before, (thing.gap, thing.gap_taken))
    for at, (part, taken) in enumerate(parts):
        if at:
            yield Sign.MINUS if taken else Sign.PLUS
        yield from (part,) if isinstance(part, Gap) else _bracketed(part, Sum)


def _bracketed(part: Expression, *wanted: type) -> Iterator[Piece]:
    """Write a part, in brackets if it is of a kind that wants them here."""
    if not isinstance(part, wanted):
        yield from _row(part)
        return
    yield from _in_brackets(part)


def _in_brackets(part: Expression) -> Iterator[Piece]:
    yield Sign.OPEN
    yield from _row(part)
    yield Sign.CLOSE


def _flat(pieces: Iterable[Piece]) -> Iterator[FlatPiece]:
    for piece in pieces:
        if not isinstance(piece, Over):
            yield piece
            continue
        yield from _flat(_in_brackets(piece.top))
        yield Sign.OVER
        if _plain_digits(piece.bottom):
            yield from _flat(_row(piece.bottom))
        else:
            yield from _flat(_in_brackets(piece.bottom))


def _plain_digits(part: Expression) -> bool:
    return isinstance(part, Quantity) and part.ladder.style is Style.PLACES and in_digits(part)
