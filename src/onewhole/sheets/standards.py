"""What the standards of grades 3 to 5 expect, as notes on a page: never a block.

The codes are those of *Common Core State Standards for Mathematics* (2010), "CCSSM" here; the wording is our
own. The K-numbers are our own; K15, no result below zero, is K4 for every kind of number. Each says whether
its source was read, is remembered, or is our own judgement.
"""

from collections.abc import Callable, Mapping
from enum import Enum
from typing import assert_never

from msgspec import Struct

from onewhole.findings.standard import GRADE_3, GRADE_4, LARGEST_IN_GRADE_3, LARGEST_WHOLE, StandardCode
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.answer import answer
from onewhole.problems.needs import REGROUPED, Needs, Operation, runs_below_zero
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.problems.standard_code import standard_code
from onewhole.problems.zeros import has_zeros
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import PictureSetting
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Times,
    WithRemainder,
    value,
)
from onewhole.statements.rounding import Rounding
from onewhole.statements.sides import sides


class Provenance(Enum):
    """How a rule reached us."""

    READ = "read"
    MEMORY = "from memory"
    OWN = "our own judgement"


class Standard(Struct, frozen=True):
    """One check: its code, where its rule comes from, and how the rule reached us."""

    code: StandardCode
    source: str
    provenance: Provenance


class StandardNote(Struct, frozen=True):
    """A standard that a page, or some of its problems, does not meet or that is good to know about it.

    ``labels`` are those of the problems; none means that the whole page is meant.
    """

    standard: Standard
    labels: tuple[str, ...] = ()


#: Legal arithmetic, outside what grade 4 is expected to meet: follows from the footnote.
ODD_ONES = frozenset({7, 9, 11})
TENTHS_AND_HUNDREDTHS = (10, 100)
HUNDREDTHS = 100
#: Grade 3 rounds to tens and hundreds. Source: 3.NBT.A.1, CCSSM (read).
HUNDRED = 100
#: So many problems of a sort say something about a page; our own.
SEVERAL = 4

_NF4, _READ = "CCSSM, footnote to grade 4 fractions", Provenance.READ

STANDARDS = (
    Standard(StandardCode.GRADE_4_DENOMINATORS, _NF4, _READ),
    Standard(StandardCode.GRADE_3_DENOMINATORS, "CCSSM, footnote to grade 3 fractions", _READ),
    Standard(StandardCode.LIKE_DENOMINATORS, "CCSSM 4.NF.B.3, 4.NF.C.5", _READ),
    Standard(StandardCode.NOT_BELOW_ZERO, "CCSSM 6.NS (implied)", Provenance.MEMORY),
    Standard(StandardCode.ANY_FORM, "CCSSM 4.NF, 5.NF.A.1 (its sample leaves 23/12)", _READ),
    Standard(StandardCode.STORY_WITH_PICTURE, "CCSSM 4.NF.B.3.d", _READ),
    Standard(StandardCode.ONE_WHOLE, "CCSSM 4.NF.B.3.a, 4.NF.B.3.d", _READ),
    Standard(StandardCode.LARGEST_NUMBER, "CCSSM, footnote to grade 4 base ten", _READ),
    Standard(StandardCode.UNLIKE_IS_GRADE_5, "CCSSM 5.NF.A.1, footnote to 4.NF.C.5", _READ),
    Standard(
        StandardCode.TIMES_IS_GRADE_5,
        "CCSSM 4.NF.B.4 (read), 5.NF.B.4 (from memory)",
        Provenance.MEMORY,
    ),
    Standard(
        StandardCode.BOTH_KINDS,
        "our own rule; CCSSM never parts 4.NF.B.3.c by regrouping (read)",
        Provenance.OWN,
    ),
    Standard(StandardCode.ODD_DENOMINATORS, _NF4, _READ),
    Standard(StandardCode.STRIP_OF_HUNDREDTHS, "our own judgement", Provenance.OWN),
    Standard(StandardCode.LARGEST_SUM_OF_GRADE_3, "CCSSM 3.NBT.A.2", _READ),
    Standard(StandardCode.ZEROS_TO_CROSS, "our own judgement", Provenance.OWN),
    Standard(StandardCode.UNEQUAL_LENGTHS, "our own judgement", Provenance.OWN),
    Standard(StandardCode.TIMES_IN_GRADE_3, "CCSSM 3.OA.C.7, 3.NBT.A.3", _READ),
    Standard(StandardCode.TIMES_IN_GRADE_4, "CCSSM 4.NBT.B.5", _READ),
    Standard(StandardCode.ROUNDING_PLACES, "CCSSM 3.NBT.A.1, 4.NBT.A.3, 5.NBT.A.4", _READ),
    Standard(
        StandardCode.EXACTLY_HALFWAY,
        "CCSSM 3.NBT.A.1, 4.NBT.A.3, 5.NBT.A.4 (no rule there); Ohio's published scoring, grades 3 to 5",
        _READ,
    ),
    Standard(StandardCode.TWO_ARE_COMPARED, "CCSSM 4.NBT.A.2, 4.NF.C.7", _READ),
    Standard(StandardCode.SMALLER_UNITS_ONLY, "CCSSM 4.MD.A.1, 5.MD.A.1", _READ),
    Standard(StandardCode.DECIMALS_ARE_GRADE_4, "CCSSM 4.NF.C.6", _READ),
)


def notes(worked: WorkedSheet) -> tuple[StandardNote, ...]:
    r"""Return a note for every standard that has something to say about a page, K1 first.

    >>> from onewhole.sheets.reading import read_sheet
    >>> found = notes(WorkedSheet(read_sheet("1. 3 2/7 - 1 5/7\n2. 4 6/7 - 2 1/7")))
    >>> [(note.standard.code.value, note.labels) for note in found]
    [('K1', ('1', '2')), ('K12', ('1', '2'))]
    """
    sheet, seen = worked.sheet, {one.label: one.needs for one in worked.problems}
    found: list[StandardNote] = []
    for standard in STANDARDS:
        check = _CHECKS[standard.code]
        if isinstance(check, _OfPage):
            if check.says(sheet, seen):
                found.append(StandardNote(standard))
            continue
        labels = tuple(one.label for one in sheet.problems if check(one, seen[one.label], sheet))
        if labels:
            found.append(StandardNote(standard, labels))
    return tuple(found)


# What each check asks of one problem -----------------------------------------------------------------------


def _grade_4_denominators(_: Problem, wanted: Needs, sheet: Sheet) -> bool:
    return sheet.header.grade == 4 and not GRADE_4.issuperset(wanted.denominators)


def _grade_3_denominators(_: Problem, wanted: Needs, sheet: Sheet) -> bool:
    return sheet.header.grade == 3 and not GRADE_3.issuperset(wanted.denominators)


def _unlike(_: Problem, wanted: Needs, sheet: Sheet) -> bool:
    """Say whether unlike denominators are joined below grade 5, besides tenths and hundredths."""
    joins = {Operation.ADD, Operation.SUBTRACT} & set(wanted.operations)
    several = len(wanted.denominators) > 1 and wanted.denominators != TENTHS_AND_HUNDREDTHS
    return sheet.header.grade < 5 and bool(joins) and several


def _below_zero(problem: Problem, _: Needs, sheet: Sheet) -> bool:
    return sheet.header.grade < 6 and any(map(runs_below_zero, sides(problem.statement)))


def _without_picture(problem: Problem, wanted: Needs, sheet: Sheet) -> bool:
    beside = sheet.header.picture_beside(story=True)
    return bool(problem.story) and bool(wanted.denominators) and beside is PictureSetting.NONE


def _whole_not_named(problem: Problem, wanted: Needs, sheet: Sheet) -> bool:
    """Say whether neither word of the class for the whole stands in a story about fractions."""
    told, words = problem.story.casefold(), sheet.header.words
    return (
        bool(told and wanted.denominators)
        and not any(number.ladder.mark for number in numbers_of(problem.statement))
        and words.whole.casefold() not in told
        and words.wholes.casefold() not in told
    )


def _large(problem: Problem, _: Needs, sheet: Sheet) -> bool:
    found = answer(problem.statement)
    every = (*numbers_of(problem.statement), *((found,) if isinstance(found, Quantity) else ()))
    return sheet.header.grade <= 4 and any(
        number.kind is Kind.NUMBER and number.value > LARGEST_WHOLE for number in every
    )


def _fraction_times_fraction(problem: Problem, _: Needs, sheet: Sheet) -> bool:
    return sheet.header.grade < 5 and any(map(_multiplies_fractions, sides(problem.statement)))


def _multiplies_fractions(side: Expression) -> bool:
    match side:
        case Quantity():
            return False
        case Sum(terms):
            return any(_multiplies_fractions(term.part) for term in terms)
        case Times(left, right):
            both = value(left).denominator > 1 and value(right).denominator > 1
            return both or _multiplies_fractions(left) or _multiplies_fractions(right)
        case Over(top, bottom):
            return _multiplies_fractions(top) or _multiplies_fractions(bottom)
        case Quotient(left, right):
            return _multiplies_fractions(left) or _multiplies_fractions(right)
        case InBrackets(inside):
            return _multiplies_fractions(inside)
        case WithRemainder():
            return False
        case _:
            assert_never(side)


def _odd_denominators(_: Problem, wanted: Needs, sheet: Sheet) -> bool:
    return sheet.header.grade <= 4 and not ODD_ONES.isdisjoint(wanted.denominators)


def _strip_of_hundredths(problem: Problem, wanted: Needs, sheet: Sheet) -> bool:
    beside = sheet.header.picture_beside(story=bool(problem.story))
    return wanted.regrouping and HUNDREDTHS in wanted.denominators and beside is PictureSetting.STRIP


def _other_places(problem: Problem, _: Needs, sheet: Sheet) -> bool:
    """Say whether a whole number is rounded in grade 3 to more than hundreds, or a decimal before grade 5."""
    asked = problem.statement
    if not isinstance(asked, Rounding) or asked.to.kind is not Kind.NUMBER:
        return False
    if asked.number.ladder.style is Style.DECIMAL:
        return sheet.header.grade < 5
    return sheet.header.grade == 3 and asked.to.size > HUNDRED


def _halfway(_: Problem, wanted: Needs, __: Sheet) -> bool:
    return wanted.halfway


def _large_for_grade_3(problem: Problem, wanted: Needs, sheet: Sheet) -> bool:
    found = answer(problem.statement)
    every = (*numbers_of(problem.statement), *((found,) if isinstance(found, Quantity) else ()))
    joins = {Operation.ADD, Operation.SUBTRACT} & set(wanted.operations)
    return (
        sheet.header.grade <= 3
        and bool(joins)
        and all(one.ladder.style is Style.PLACES for one in every)
        and any(one.value > LARGEST_IN_GRADE_3 for one in every)
    )


def _times_in_grade_3(problem: Problem, _: Needs, sheet: Sheet) -> bool:
    return sheet.header.grade <= 3 and standard_code(problem.statement, 3) in {"4.NBT.B.5", "5.NBT.B.5"}


def _times_in_grade_4(problem: Problem, _: Needs, sheet: Sheet) -> bool:
    return sheet.header.grade == 4 and standard_code(problem.statement) == "5.NBT.B.5"


def _ordered(_: Problem, wanted: Needs, __: Sheet) -> bool:
    return Operation.ORDER in wanted.operations


def _larger_units(problem: Problem, _: Needs, sheet: Sheet) -> bool:
    """Say whether a measure is to be written in a larger unit than any that it has."""
    if sheet.header.grade > 4 or standard_code(problem.statement) != "4.MD.A.1":
        return False
    found, numbers = answer(problem.statement), numbers_of(problem.statement)
    if not isinstance(found, Quantity) or len(numbers) != 1:
        return False
    return found.ladder.units[0].size > numbers[0].ladder.units[0].size


def _decimals_in_grade_3(problem: Problem, _: Needs, sheet: Sheet) -> bool:
    numbers = numbers_of(problem.statement)
    return sheet.header.grade <= 3 and any(
        one.ladder.style is Style.DECIMAL and not one.ladder.mark for one in numbers
    )


# ... and of a whole page -----------------------------------------------------------------------------------


def _form_demanded(sheet: Sheet, _: Mapping[str, Needs]) -> bool:
    return sheet.header.mixed_form or sheet.header.simplest_form


def _one_kind_only(_: Sheet, seen: Mapping[str, Needs]) -> bool:
    """Say whether the sums and differences of a page all need regrouping, or none does.

    Line plots and several steps are about something else.
    """
    other = {Operation.MULTIPLY, Operation.DIVIDE, Operation.READ}
    worked = [
        one.regrouping
        for one in seen.values()
        if REGROUPED & set(one.operations) and not other & set(one.operations)
    ]
    return len(worked) > 1 and len(set(worked)) == 1


def _zeros_all_or_none(sheet: Sheet, seen: Mapping[str, Needs]) -> bool:
    """Say whether zeros are crossed in none of several differences of whole numbers, or in all."""
    crossed = [
        has_zeros(one.statement)
        for one in _in_places(sheet, seen, Operation.SUBTRACT)
        if seen[one.label].regrouping
    ]
    return len(crossed) >= SEVERAL and len(set(crossed)) == 1


def _equally_long(sheet: Sheet, seen: Mapping[str, Needs]) -> bool:
    """Say whether all numbers of several problems in columns are equally long."""
    asked = [
        one for operation in (Operation.ADD, Operation.SUBTRACT) for one in _in_places(sheet, seen, operation)
    ]
    return len(asked) >= SEVERAL and all(
        len({number.ladder for number in numbers_of(one.statement)}) == 1 for one in asked
    )


def _in_places(sheet: Sheet, seen: Mapping[str, Needs], operation: Operation) -> list[Problem]:
    """Return the problems in whole numbers in which this alone is done."""
    return [
        one
        for one in sheet.problems
        if seen[one.label].operations == (operation,)
        and all(number.ladder.style is Style.PLACES for number in numbers_of(one.statement))
    ]


class _OfPage(Struct, frozen=True):
    """A check of a whole page, by what each of its problems needs."""

    says: Callable[[Sheet, Mapping[str, Needs]], bool]


_CHECKS: Mapping[StandardCode, Callable[[Problem, Needs, Sheet], bool] | _OfPage] = {
    StandardCode.GRADE_4_DENOMINATORS: _grade_4_denominators,
    StandardCode.GRADE_3_DENOMINATORS: _grade_3_denominators,
    StandardCode.LIKE_DENOMINATORS: _unlike,
    StandardCode.NOT_BELOW_ZERO: _below_zero,
    StandardCode.ANY_FORM: _OfPage(_form_demanded),
    StandardCode.STORY_WITH_PICTURE: _without_picture,
    StandardCode.ONE_WHOLE: _whole_not_named,
    StandardCode.LARGEST_NUMBER: _large,
    StandardCode.UNLIKE_IS_GRADE_5: _unlike,
    StandardCode.TIMES_IS_GRADE_5: _fraction_times_fraction,
    StandardCode.BOTH_KINDS: _OfPage(_one_kind_only),
    StandardCode.ODD_DENOMINATORS: _odd_denominators,
    StandardCode.STRIP_OF_HUNDREDTHS: _strip_of_hundredths,
    StandardCode.LARGEST_SUM_OF_GRADE_3: _large_for_grade_3,
    StandardCode.ZEROS_TO_CROSS: _OfPage(_zeros_all_or_none),
    StandardCode.UNEQUAL_LENGTHS: _OfPage(_equally_long),
    StandardCode.TIMES_IN_GRADE_3: _times_in_grade_3,
    StandardCode.TIMES_IN_GRADE_4: _times_in_grade_4,
    StandardCode.ROUNDING_PLACES: _other_places,
    StandardCode.EXACTLY_HALFWAY: _halfway,
    StandardCode.TWO_ARE_COMPARED: _ordered,
    StandardCode.SMALLER_UNITS_ONLY: _larger_units,
    StandardCode.DECIMALS_ARE_GRADE_4: _decimals_in_grade_3,
}
