"""Reading what people type: problems, answers, and chains of equalities, with the place of every mistake."""

from typing import assert_never

from onewhole.errors import OnewholeError
from onewhole.number.impossible import Impossible
from onewhole.number.name_wanted import named_as
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind, KindError
from onewhole.number.with_minus import WithMinus
from onewhole.statements.asked_at_once import refuse_two_at_once
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.chain import Chain, Link
from onewhole.statements.clock_sides import (
    FROM,
    clock_side,
    clock_time,
)
from onewhole.statements.cursor import Cursor
from onewhole.statements.dividing_reading import divides, divisor_of, part_of, quotient, with_remainder
from onewhole.statements.expression import (
    Expression,
    Over,
    Sum,
    Term,
    Times,
    WithRemainder,
    alike_marks,
    in_brackets,
    kind,
    unit_mark,
    value,
    without_brackets,
)
from onewhole.statements.factor_reading import factor_question
from onewhole.statements.form_words import form_ahead, form_wanted
from onewhole.statements.gap import Gap
from onewhole.statements.groups_reading import whole_groups
from onewhole.statements.listing_reading import listing
from onewhole.statements.misplaced import check_clock, check_units
from onewhole.statements.numerals import blanks, blanks_ahead, numeral, signed
from onewhole.statements.ordering_reading import ordering
from onewhole.statements.plot_reading import plot_question
from onewhole.statements.rounding import Rounding, halfway
from onewhole.statements.rounding_reading import rounding, without_stop
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Relation,
    Statement,
    gap_amount,
    relation,
)
from onewhole.statements.tokens import ReadingError, Token, TokenKind, tokens

DEEPEST = 12

_SIGN_REMEDY = "Put a sign between the numbers: 7 2/6 - 3 5/6."
_Part = Expression | Gap


def read_statement(text: str, line: int = 1, column: int = 1) -> Statement:
    """Read one problem: a question, a comparison, an ordering, an equation with a number missing, a rounding.

    ``line`` and ``column`` say where the text begins in its file. Raises ReadingError with the place for
    text that is no problem, for a result below zero, and for a gap that nothing fits.

    >>> read_statement("7 2/6 - 3 5/6") == read_statement("7 2/6 \N{MINUS SIGN} 3 5/6 =")
    True
    """
    refuse_two_at_once(text, line, column)
    if (asked := ordering(text, line, column, read_quantity)) is not None:
        return asked
    if (listed := listing(text, line, column, read_quantity)) is not None:
        return listed
    if (worded := factor_question(text, line, column, read_quantity)) is not None:
        return worded
    if (plotted := plot_question(text, line, column, read_quantity)) is not None:
        return _sound(plotted, Token(TokenKind.WORD, "plot", line, column))
    if (grouped := whole_groups(text, line, column, read_expression)) is not None:
        return grouped
    cursor = Cursor(tokens(without_stop(text), line, column))
    start = cursor.here
    found: Statement | None = rounding(cursor)
    if found is None:
        left = _side(cursor)
        found = _statement(cursor, left)
    if not cursor.at_end():
        cursor.refuse("this does not belong to the problem", _SIGN_REMEDY)
    return _sound(found, start)


def read_expression(text: str, line: int = 1, column: int = 1) -> Expression:
    """Read a sum, difference, product or single number without a gap.

    >>> value(read_expression("(6 - 3) + (8/6 - 5/6)"))
    Fraction(7, 2)
    """
    return _read_side(Cursor(tokens(text, line, column)))


def _read_side(cursor: Cursor) -> Expression:
    start = cursor.here
    found = _without_gap(cursor, _side(cursor))
    if not cursor.at_end():
        cursor.refuse("this does not belong to the expression", _SIGN_REMEDY)
    return _weighed(found, start)


def read_quantity(text: str, line: int = 1, column: int = 1) -> Quantity:
    """Read one number: whole, mixed, fraction, decimal or measure.

    >>> read_quantity("3 and 5/6").counts
    (3, 5)
    """
    found = _read_side(Cursor(tokens(text, line, column, divides=False)))
    if not isinstance(found, Quantity):
        msg = "one number is wanted here, not a problem"
        raise ReadingError(msg, line=line, column=column, remedy="Write one number such as 3 5/6.")
    return found


#: What a cell that holds one answer is read as.
Answer = Quantity | Impossible | WithMinus | Relation | WithRemainder


def read_answer(text: str, line: int = 1, column: int = 1) -> Answer:
    """Read what a pupil wrote as an answer: a number, with minus signs or without, 3 3/0, or one of < = >.

    A remainder may stand behind the number: 21 r 3.

    >>> read_answer("3 3/0")
    Impossible(wholes=3, top=3)
    >>> read_answer("-1/-2").value
    Fraction(1, 2)
    >>> read_answer("21 R3").left.parts
    3
    """
    cursor = Cursor(tokens(text, line, column, divides=False))
    if cursor.ahead(1).sort is not TokenKind.END:
        cursor.took(TokenKind.EQUALS)
    found: Answer
    if cursor.here.sort in {TokenKind.COMPARE, TokenKind.EQUALS}:
        found = Relation(cursor.take().text)
    else:
        clock = clock_time(cursor) if cursor.here.sort is TokenKind.CLOCK else None
        read = clock or signed(cursor) or numeral(cursor, impossible=True)
        if isinstance(read, Gap):
            cursor.refuse_hole(
                "an answer has no missing part", "Leave the cell blank if nothing was written."
            )
        found = with_remainder(cursor, read) if isinstance(read, Quantity) else read
    if not cursor.at_end():
        cursor.refuse("an answer is one number", "Write one number such as 3 3/6.")
    return found


def read_chains(text: str, line: int = 1, column: int = 1) -> tuple[Chain, ...]:
    r"""Read equalities on one or many lines.

    A line that begins with = goes on from the line before, and so does a line after one that ends with =.

    >>> [len(chain.links) for chain in read_chains("7 2/6 - 3 5/6 = 6 8/6 - 3 5/6\n = 3 3/6")]
    [3]
    """
    chains: list[list[Link]] = []
    goes_on = False
    for number, row in enumerate(text.splitlines() or [""], start=line):
        cursor = Cursor(tokens(row, number, column if number == line else 1, divides=False))
        cursor.divisor = divisor_of(chains[-1][0].says) if chains else None
        if cursor.at_end():
            continue
        if not cursor.took(TokenKind.EQUALS) and not goes_on:
            chains.append([])
        elif not chains:
            cursor.refuse("nothing stands before the equals sign", "Write what was worked out first.")
        links, goes_on = _links(cursor)
        chains[-1].extend(links)
    if not chains:
        msg = "there is no equality to check"
        raise ReadingError(msg, line=line, column=column, remedy="Write for example 7 2/6 = 6 8/6.")
    for chain in chains:
        if len(chain) == 1:
            msg = "only one side of an equality stands here"
            remedy = "Write what it is equal to: 7 2/6 = 6 8/6."
            raise ReadingError(msg, line=chain[0].line, column=chain[0].column, remedy=remedy)
    return tuple(Chain(tuple(chain)) for chain in chains)


def _links(cursor: Cursor) -> tuple[list[Link], bool]:
    """Read one line of a chain, and say whether it ends with an equals sign."""
    found: list[Link] = []
    goes_on = True
    while goes_on and not cursor.at_end():
        found.append(_link(cursor))
        goes_on = cursor.took(TokenKind.EQUALS)
        if not goes_on and not cursor.at_end():
            cursor.refuse("an equals sign is missing", _SIGN_REMEDY)
    return found, goes_on


def _link(cursor: Cursor) -> Link:
    start = cursor.here
    says = _weighed(_without_gap(cursor, _side(cursor)), start)
    cursor.divisor = cursor.divisor or divisor_of(says)
    return Link(says, start.line, start.column)


_Side = tuple[tuple[_Part, bool], ...]


def _side(cursor: Cursor, depth: int = 0) -> _Side:
    """Read parts joined by + and -."""
    if cursor.word_ahead(0, FROM) and cursor.ahead(1).sort is TokenKind.CLOCK:
        cursor.take()
    first = _product(cursor, depth)
    if isinstance(first, Quantity) and first.ladder.clock:
        return clock_side(cursor, first, lambda here: _product(here, depth))
    parts: list[tuple[_Part, bool]] = [(first, False)]
    while cursor.here.sort in {TokenKind.PLUS, TokenKind.MINUS}:
        taken = cursor.take().sort is TokenKind.MINUS
        parts.append((_product(cursor, depth), taken))
    return tuple(parts)


def _product(cursor: Cursor, depth: int) -> _Part:
    found = _atom(cursor, depth)
    factors = 1
    while cursor.here.sort is TokenKind.TIMES or part_of(cursor, found) or divides(cursor, found):
        factors += 1
        if factors > DEEPEST:
            cursor.refuse("so many factors cannot be read", f"Multiply at most {DEEPEST} numbers.")
        divided = cursor.take().sort not in {TokenKind.TIMES, TokenKind.WORD}
        start = cursor.here
        other = _atom(cursor, depth)
        if isinstance(found, Gap) or isinstance(other, Gap):
            called = "quotient" if divided else "product"
            cursor.refuse_hole(
                f"a missing number in a {called} is not worked here", "Write a sum or a difference."
            )
        other = without_brackets(other)
        found = quotient(cursor, found, other, start) if divided else Times(found, other)
    return found


def _atom(cursor: Cursor, depth: int) -> _Part:
    if cursor.here.sort is TokenKind.CLOCK:
        return clock_time(cursor)
    if not cursor.took(TokenKind.OPEN):
        found = numeral(cursor)
        if isinstance(found, Impossible):
            cursor.refuse("a whole cannot be cut into 0 equal parts")
        return with_remainder(cursor, found) if isinstance(found, Quantity) else found
    if depth >= DEEPEST:
        cursor.refuse(
            "so many brackets cannot be read", f"Use at most {DEEPEST} brackets inside one another."
        )
    inside = _joined(_whole_side(cursor, _side(cursor, depth + 1)))
    if not cursor.took(TokenKind.CLOSE):
        cursor.refuse("a bracket is not closed", "Add the missing ).")
    if not cursor.took(TokenKind.SLASH):
        return in_brackets(inside)
    bottom = _atom(cursor, depth + 1)
    if isinstance(bottom, Gap):
        cursor.refuse_hole("a missing number is not read under a worked numerator", "Write ?/6 or 6 ?/6.")
    return Over(inside, without_brackets(bottom))


def _whole_side(cursor: Cursor, side: _Side) -> tuple[tuple[Expression, bool], ...]:
    found = tuple((part, taken) for part, taken in side if not isinstance(part, Gap))
    if len(found) != len(side):
        cursor.refuse_hole(
            "a missing number has no place in this problem",
            "Write ? only once, in an equation: 7 2/6 = 6 ?/6.",
        )
    return found


def _without_gap(cursor: Cursor, side: _Side) -> Expression:
    return _joined(_whole_side(cursor, side))


def _joined(parts: tuple[tuple[Expression, bool], ...]) -> Expression:
    if len(parts) == 1:
        return without_brackets(parts[0][0])
    return Sum(tuple(Term(part, taken) for part, taken in parts))


def _statement(cursor: Cursor, left: _Side) -> Statement:
    if cursor.at_end():
        return Question(_without_gap(cursor, left))
    if form_ahead(cursor):
        return AnotherName(_one_number(cursor, left), form_wanted(cursor))
    if cursor.here.sort is TokenKind.HOLE:
        cursor.take()
        return Comparison(_without_gap(cursor, left), _without_gap(cursor, _side(cursor)))
    if cursor.here.sort is TokenKind.COMPARE:
        sign = Relation(cursor.take().text)
        return Comparison(_without_gap(cursor, left), _without_gap(cursor, _side(cursor)), sign)
    if not cursor.took(TokenKind.EQUALS):
        cursor.refuse("a sign is missing", _SIGN_REMEDY)
    if cursor.at_end():
        return Question(_without_gap(cursor, left))
    if form_ahead(cursor, 1):
        cursor.took(TokenKind.HOLE)
        return AnotherName(_one_number(cursor, left), form_wanted(cursor))
    if blanks_ahead(cursor):
        return AnotherName(_one_number(cursor, left), blanks(cursor))
    return _equation(cursor, left, _side(cursor))


def _one_number(cursor: Cursor, left: _Side) -> Quantity:
    """Return the one number of a side that is to be written another way, or refuse the words after it."""
    number = _without_gap(cursor, left)
    if not isinstance(number, Quantity):
        msg = "only one number is written another way"
        cursor.refuse(msg, "Write one number before these words: 12/18 simplest, 3 ft = ? in.")
    return number


def _equation(cursor: Cursor, left: _Side, right: _Side) -> Statement:
    gaps = [part for part, _ in (*left, *right) if isinstance(part, Gap)]
    if not gaps:
        return Comparison(_without_gap(cursor, left), _without_gap(cursor, right), Relation.EQUAL)
    if len(gaps) > 1:
        cursor.refuse_hole("only one number can be missing", "Leave one ? and fill in the others.")
    gap_left = any(isinstance(part, Gap) for part, _ in left)
    with_gap, rest = (left, right) if gap_left else (right, left)
    if len(with_gap) == 1 and gaps[0].alone and not gap_left:
        return Question(_without_gap(cursor, rest))
    before = next(index for index, (part, _) in enumerate(with_gap) if isinstance(part, Gap))
    beside = tuple((part, taken) for part, taken in with_gap if not isinstance(part, Gap))
    whole_rest = _without_gap(cursor, rest)
    return MissingNumber(whole_rest, gaps[0], beside, before, with_gap[before][1], gap_left)


def _weighed(found: Expression, start: Token) -> Expression:
    try:
        value(found)
    except ZeroDivisionError:
        msg = "a whole cannot be cut into 0 equal parts"
        raise ReadingError(
            msg, line=start.line, column=start.column, remedy="Change the denominator."
        ) from None
    except OnewholeError as error:
        raise ReadingError(error.what, line=start.line, column=start.column, remedy=error.remedy) from error
    return found


def _sound(found: Statement, start: Token) -> Statement:
    """Refuse what has no meaning in this grade: unlike kinds, results below zero, gaps that nothing fits."""
    below = False
    try:
        check_clock(found)
        check_units(found)
        match found:
            case Question(asked):
                below = value(asked) < 0
                unit_mark(asked)
            case Comparison(left, right):
                below = min(value(left), value(right)) < 0
                relation(left, right)
                alike_marks([unit_mark(left), unit_mark(right)])
            case Ordering() | AskedInWords():
                pass
            case MissingNumber():
                below = value(found.rest) < 0
                measured = {kind(found.rest), *(kind(part) for part, _ in found.beside)}
                if len(measured) > 1 or (not found.gap.alone and measured != {Kind.NUMBER}):
                    msg = "the numbers of this equation measure different things"
                    raise KindError(msg, remedy="Give every number the same unit, or leave all units off.")
                alike_marks([unit_mark(found.rest), *(unit_mark(part) for part, _ in found.beside)])
                found.gap.filling(gap_amount(found))
            case AnotherName(number, wanted):
                named_as(number, wanted)
            case Rounding():
                halfway(found)
            case _:
                assert_never(found)
    except ZeroDivisionError:
        msg = "a whole cannot be cut into 0 equal parts"
        raise ReadingError(
            msg, line=start.line, column=start.column, remedy="Change the denominator."
        ) from None
    except OnewholeError as error:
        raise ReadingError(error.what, line=start.line, column=start.column, remedy=error.remedy) from error
    if below:
        msg = "the result is below zero: more is taken away than there is"
        remedy = "Put the larger number first. Numbers below zero come in grade 6."
        raise ReadingError(msg, line=start.line, column=start.column, remedy=remedy)
    return found
