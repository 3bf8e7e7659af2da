"""The standard that a problem belongs to, by its code.

The codes are those of *Common Core State Standards for Mathematics* (2010), read; which problem belongs to
which is our own reading of their words, one code a problem. The grade of the sheet decides where two grades
ask for the same work.
"""

from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.about import About, Units, about
from onewhole.problems.needs import Needs, Operation, needs
from onewhole.problems.numbers import numbers_of
from onewhole.statements.expression import Expression, InBrackets, Times
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.line_plot import PlotAsk, PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.statement import AnotherName, Question, Statement
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.steps.work_steps import has_steps

THIRD, FIFTH = 3, 5
TENTHS_AND_HUNDREDTHS = (10, 100)
#: Decimals to hundredths are compared in grade 4, to thousandths in grade 5.
PLACES_OF_GRADE_4 = 2
#: Facts of two one-digit numbers, and a digit times 10 to 90: grade 3. Larger factors: four digits by one and
#: two by two in grade 4 (4.NBT.B.5).
FACTS, TENS, FOUR_DIGITS, TWO_DIGITS = 10, 90, 9999, 99


def standard_code(statement: Statement, grade: int = 4, *, story: bool = False) -> str:
    """Return the code of the standard that a problem belongs to, on a sheet of a grade.

    ``story`` says that it is told as a word problem: some have a code of their own.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("7 2/6 - 3 5/6")
    >>> standard_code(asked), standard_code(asked, story=True)
    ('4.NF.B.3.c', '4.NF.B.3.d')
    """
    if isinstance(statement, Question) and has_steps(statement.asked):
        return "3.OA.B.5" if _only_multiplied(statement.asked) else "5.OA.A.1"
    if isinstance(statement, PlotQuestion):
        return _of_plot(statement, grade)
    if isinstance(statement, Listing | FactorQuestion):
        return "4.OA.B.4"
    if isinstance(statement, WholeGroups):
        return "4.OA.A.3" if statement.by.parts < FACTS else "5.NBT.B.6"
    wanted, numbers = needs(statement), numbers_of(statement)
    found = about(statement, wanted)
    if {unit.mark for one in numbers for unit in one.ladder.units} == {"¢"}:
        return "2.MD.C.8"
    if found is not None and any(one.ladder.mark for one in numbers if one.kind is Kind.NUMBER):
        return _with_units(found, numbers, story=story)
    if found is None or found.operation is Operation.RENAME:
        return _another_name(statement, numbers, grade)
    joined = {Operation.ADD, Operation.SUBTRACT} & set(wanted.operations)
    match found.operation:
        case Operation.ROUND:
            return _rounded(found.units, grade)
        case Operation.MULTIPLY:
            return _times(found, numbers, grade, story=story)
        case Operation.DIVIDE:
            return _divided(found, numbers, grade)
        case Operation.FIND if not joined:
            return _another_name(statement, numbers, grade)
        case Operation.ADD | Operation.SUBTRACT | Operation.FIND:
            return _joined(found.units, wanted, numbers, grade, story=story)
        case _:
            return _compared(found.units, numbers)


def _of_plot(asked: PlotQuestion, grade: int) -> str:
    """Return the code of a line plot: a total is shared out in grade 5; grade 3 only reads it."""
    if grade >= FIFTH or asked.asks is PlotAsk.SHARE:
        return "5.MD.B.2"
    return "3.MD.B.4" if grade <= THIRD else "4.MD.B.4"


def _only_multiplied(asked: Expression) -> bool:
    """Say whether numbers are only multiplied: 3 x 5 x 2, an example of 3.OA.B.5."""
    match asked:
        case Times(left, right):
            return _only_multiplied(left) and _only_multiplied(right)
        case InBrackets(inside):
            return _only_multiplied(inside)
        case _:
            return isinstance(asked, Quantity)


def _another_name(statement: Statement, numbers: tuple[Quantity, ...], grade: int) -> str:
    units = _units(numbers)
    if units is Units.MEASURES:
        return "4.MD.A.1" if grade < FIFTH else "5.MD.A.1"
    if units is Units.DECIMALS or _wanted(statement) is NumberForm.DECIMAL:
        return "4.NF.C.6"
    if _wanted(statement) is NumberForm.SIMPLEST:
        return "4.NF.A.1"
    if units is Units.PLACES:
        return "3.NF.A.3.c"
    return "4.NF.B.3.b" if any(one.value >= 1 for one in numbers) else "4.NF.A.1"


def _wanted(statement: Statement) -> object:
    return statement.wanted if isinstance(statement, AnotherName) else None


def _units(numbers: tuple[Quantity, ...]) -> Units:
    """Return what numbers that are renamed are counted in."""
    if any(one.ladder.kind is not Kind.NUMBER for one in numbers):
        return Units.MEASURES
    styles = {one.ladder.style for one in numbers}
    if Style.DECIMAL in styles:
        return Units.DECIMALS
    return Units.PIECES if Style.MIXED in styles else Units.PLACES


def _rounded(units: Units, grade: int) -> str:
    match units:
        case Units.PLACES:
            return "3.NBT.A.1" if grade <= THIRD else "4.NBT.A.3"
        case Units.DECIMALS:
            return "5.NBT.A.4"
        case Units.MEASURES:
            return "4.MD.A.2"
        case Units.PIECES | Units.UNLIKE:
            return "5.NF.A.2"


def _compared(units: Units, numbers: tuple[Quantity, ...]) -> str:
    match units:
        case Units.PLACES:
            return "4.NBT.A.2"
        case Units.DECIMALS:
            longest = max(one.ladder.after for one in numbers)
            return "4.NF.C.7" if longest <= PLACES_OF_GRADE_4 else "5.NBT.A.3.b"
        case Units.MEASURES:
            return "4.MD.A.1"
        case Units.PIECES:
            return "3.NF.A.3.d"
        case Units.UNLIKE:
            tops = {one.amounts[-1] for one in numbers}
            one_top = len(tops) == 1 and all(one.value < 1 for one in numbers)
            return "3.NF.A.3.d" if one_top else "4.NF.A.2"


def _with_units(found: About, numbers: tuple[Quantity, ...], *, story: bool) -> str:
    """Return the code of measures and money: a bare part of them, 3/4 of 2 ft, is a part of an amount."""
    by = [one.value for one in numbers if one.ladder.style is Style.MIXED and not one.ladder.mark]
    if found.operation is not Operation.MULTIPLY or not by:
        return "4.MD.A.2"
    if max(by) > 1:
        return "5.NF.B.6"
    return "4.MD.A.2" if story else "5.NF.B.4.a"


def _times(found: About, numbers: tuple[Quantity, ...], grade: int, *, story: bool) -> str:
    if found.units is Units.MEASURES:
        return _with_units(found, numbers, story=story)
    if found.units is Units.DECIMALS:
        return "5.NBT.B.7"
    if found.units is Units.PLACES:
        return _whole_times(sorted(int(one.value) for one in numbers), grade)
    parts = [one for one in numbers if one.value.denominator > 1]
    if len(parts) > 1:
        return "5.NF.B.4.a"
    if any(one.value > 1 for one in parts):
        return "5.NF.B.6"
    if story:
        return "4.NF.B.4.c"
    return "4.NF.B.4.a" if any(one.amounts[-1] == 1 for one in parts) else "4.NF.B.4.b"


def _divided(found: About, numbers: tuple[Quantity, ...], grade: int) -> str:
    if found.units is Units.MEASURES:
        return "4.MD.A.2"
    if found.units is Units.DECIMALS:
        return "5.NBT.B.7"
    if found.units is not Units.PLACES:
        return _fractions_divided(numbers)
    number, by = int(numbers[0].value), int(numbers[-1].value)
    if grade <= THIRD and by <= FACTS and number <= FACTS * by and number % by == 0:
        return "3.OA.C.7"
    if 0 < number < by:
        return "5.NF.B.3"
    return "4.NBT.B.6" if by < FACTS and number <= FOUR_DIGITS else "5.NBT.B.6"


def _fractions_divided(numbers: tuple[Quantity, ...]) -> str:
    """Return the code of a unit fraction by a whole number, or of the other way round; else grade 6."""
    first, by = numbers[0].value, numbers[-1].value
    if by.denominator == 1 and first.numerator == 1:
        return "5.NF.B.7.a"
    if first.denominator == 1 and by.numerator == 1:
        return "5.NF.B.7.b"
    return "6.NS.A.1"


def _whole_times(factors: list[int], grade: int) -> str:
    less, more = factors[0], factors[-1]
    if grade <= THIRD and more <= FACTS:
        return "3.OA.C.7"
    if grade <= THIRD and less < FACTS and more <= TENS and more % FACTS == 0:
        return "3.NBT.A.3"
    fits = len(factors) == len((less, more)) and (
        (less < FACTS and more <= FOUR_DIGITS) or more <= TWO_DIGITS
    )
    return "4.NBT.B.5" if fits else "5.NBT.B.5"


def _joined(units: Units, wanted: Needs, numbers: tuple[Quantity, ...], grade: int, *, story: bool) -> str:
    match units:
        case Units.PLACES:
            return "3.NBT.A.2" if grade <= THIRD else "4.NBT.B.4"
        case Units.DECIMALS:
            return "5.NBT.B.7"
        case Units.MEASURES:
            return "4.MD.A.2"
        case Units.PIECES if story:
            return "4.NF.B.3.d"
        case Units.PIECES:
            return "4.NF.B.3.c" if any(one.value >= 1 for one in numbers) else "4.NF.B.3.a"
        case Units.UNLIKE if wanted.denominators == TENTHS_AND_HUNDREDTHS:
            return "4.NF.C.5"
        case Units.UNLIKE:
            return "5.NF.A.2" if story else "5.NF.A.1"
