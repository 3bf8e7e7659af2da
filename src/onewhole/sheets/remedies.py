"""What one click may do about a finding of the audit, as something that a program can do."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import chain, islice
from typing import assert_never

from msgspec.structs import replace

from onewhole.errors import OnewholeError
from onewhole.findings.click import (
    AddProblem,
    AskInstead,
    Click,
    EasyToHard,
    GoTo,
    Help,
    LeaveOut,
    NewNumbers,
    SettingLine,
    SetTo,
    WithoutWords,
)
from onewhole.findings.in_page import (
    Alike,
    FallsBack,
    HardToRead,
    HigherThanPage,
    NumbersUntold,
    OutsideStandard,
    OverBudget,
    OverEvening,
    PageFinding,
    RightByLuck,
    Twins,
)
from onewhole.findings.standard import GRADE_3, GRADE_4, StandardCode
from onewhole.notations.text import text
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.needs import needs
from onewhole.problems.numbers import numbers_of, with_numbers
from onewhole.problems.parallel import of_the_other_sort
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.problems.zeros import has_zeros
from onewhole.sheets.audit import Audit
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import PictureSetting
from onewhole.sheets.settings import STORIES_ALONE
from onewhole.sheets.standards import notes
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.gap import Gap
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import MissingNumber, Statement

#: One that needs no regrouping and one that needs it, where a page's own numbers give none.
#: Differences with and without a zero to cross, and with numbers that are not equally long.
WITH_ZEROS, WITHOUT_ZEROS = ("504 - 136", "603 - 247", "802 - 365"), ("342 - 118", "561 - 223", "783 - 345")
UNEQUAL = ("342 - 18", "561 - 23", "783 - 45")
PLAIN, REGROUPS = map(read_statement, ("5 4/6 - 2 1/6", "9 5/8 - 4 6/8"))
#: So many problems of the other sort are looked at for one that is no twin.
LOOKED_AT = 10


def remedies(found: PageFinding, seen: Audit) -> tuple[Click, ...]:
    r"""Return what one click may do about a finding, the best first; there is always something.

    >>> from onewhole.sheets.audit import audit
    >>> from onewhole.sheets.reading import read_sheet
    >>> looked = audit(WorkedSheet(read_sheet("1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6")))
    >>> remedies(looked.findings[0], looked)
    (NewNumbers(labels=('2',)), LeaveOut(labels=('2',)))
    """
    return tuple(_Desk(found, seen).remedies())


@dataclass(frozen=True)
class _Desk:
    """A finding and the page it is about."""

    found: PageFinding
    seen: Audit

    @property
    def sheet(self) -> Sheet:
        return self.seen.page.sheet

    @cached_property
    def about(self) -> tuple[Problem, ...]:
        return tuple(one for one in self.sheet.problems if one.label in self.found.labels)

    def remedies(self) -> Iterator[Click]:
        match self.found:
            case Twins():
                yield from self._twins()
            case OverBudget(enough=enough):
                yield from self._fewer(self.sheet.problems[-1:])
                if enough is not None:
                    yield SetTo((SettingLine("minutes", str(enough)),))
            case OverEvening():
                yield from self._fewer(self.sheet.problems[-1:])
            case Alike(telling=other) | RightByLuck(showing=other):
                yield AddProblem(other) if other else self._go(Help.SHOW_THE_PIECES)
            case FallsBack():
                yield EasyToHard()
            case HardToRead() | NumbersUntold():
                yield from self._words()
            case HigherThanPage():
                yield from self._fewer(self.about)
            case OutsideStandard(code):
                yield from self._standard(code)
            case _:
                assert_never(self.found)

    def _standard(self, code: StandardCode) -> Iterator[Click]:
        match code:
            case StandardCode.ONE_WHOLE:
                yield from self._words()
            case StandardCode.NOT_BELOW_ZERO:
                yield from self._instead(code, lambda one: _turned_round(one.statement))
            case (
                StandardCode.GRADE_4_DENOMINATORS
                | StandardCode.GRADE_3_DENOMINATORS
                | StandardCode.ODD_DENOMINATORS
            ):
                yield from self._instead(code, self._met_bottoms)
            case StandardCode.LIKE_DENOMINATORS | StandardCode.UNLIKE_IS_GRADE_5:
                yield from self._instead(code, self._one_bottom)
            case StandardCode.ANY_FORM:
                yield SetTo((SettingLine("mixed form", "no"), SettingLine("simplest form", "no")))
            case StandardCode.STORY_WITH_PICTURE:
                yield _picture(
                    PictureSetting.LINE if self._hundredths else PictureSetting.STRIP, STORIES_ALONE
                )
            case StandardCode.STRIP_OF_HUNDREDTHS:
                yield _picture(
                    PictureSetting.LINE, STORIES_ALONE if self.sheet.header.picture_stories else ""
                )
            case StandardCode.ZEROS_TO_CROSS:
                crossed = any(has_zeros(one.statement) for one in self.sheet.problems)
                yield AddProblem(self._not_there(WITHOUT_ZEROS if crossed else WITH_ZEROS))
            case StandardCode.UNEQUAL_LENGTHS:
                yield AddProblem(self._not_there(UNEQUAL))
            case StandardCode.BOTH_KINDS:
                yield AddProblem(self._other_sort())
            case StandardCode.EXACTLY_HALFWAY:
                yield self._go(Help.SEE_WHAT_IS_MEANT)
            case (
                StandardCode.LARGEST_NUMBER
                | StandardCode.TIMES_IS_GRADE_5
                | StandardCode.ROUNDING_PLACES
                | StandardCode.LARGEST_SUM_OF_GRADE_3
                | StandardCode.TIMES_IN_GRADE_3
                | StandardCode.TIMES_IN_GRADE_4
                | StandardCode.TWO_ARE_COMPARED
                | StandardCode.SMALLER_UNITS_ONLY
                | StandardCode.DECIMALS_ARE_GRADE_4
            ):
                yield self._go(Help.SEE_WHAT_IS_MEANT)
                yield from self._fewer(self.about)
            case _:
                assert_never(code)

    def _met_bottoms(self, one: Problem) -> Iterator[Statement]:
        return _other_bottoms(one.statement, self._met, one=False)

    def _one_bottom(self, one: Problem) -> Iterator[Statement]:
        return _other_bottoms(one.statement, self._met, one=True)

    @property
    def _met(self) -> Sequence[int]:
        """Return the denominators that the grade meets."""
        return sorted(GRADE_3 if self.sheet.header.grade == 3 else GRADE_4)

    @property
    def _hundredths(self) -> bool:
        return any(100 in one.needs.denominators for one in self.seen.page.problems)

    def _twins(self) -> Iterator[Click]:
        """Keep one of the twins, a story where there is one: its words would not fit other numbers."""
        kept = next((one for one in self.about if one.story), self.about[0])
        rest = [one for one in self.about if one is not kept]
        if plain := tuple(one.label for one in rest if not one.story):
            yield NewNumbers(plain)
        yield from self._fewer(rest)

    def _words(self) -> Iterator[Click]:
        yield self._go(Help.WRITE_THE_WORDS)
        yield WithoutWords(self.found.labels)

    def _fewer(self, gone: Sequence[Problem]) -> Iterator[Click]:
        if gone and len(gone) < len(self.sheet.problems):
            yield LeaveOut(tuple(one.label for one in gone))

    def _go(self, why: Help) -> Click:
        return GoTo(next(iter(self.found.labels), None), why)

    def _instead(
        self, code: StandardCode, other: Callable[[Problem], Iterator[Statement]]
    ) -> Iterator[Click]:
        """Ask something near instead, where that takes the finding away; no words of a story are changed."""
        asked: dict[str, Statement] = {}
        for one in self.about:
            fits = (said for said in other(one) if self._mended(code, said)) if not one.story else iter(())
            if (said := next(fits, None)) is not None:
                asked[one.label] = said
        if asked:
            yield AskInstead(tuple(asked.items()))
        if left := [one for one in self.about if one.label not in asked]:
            yield GoTo(left[0].label, Help.CHOOSE_NUMBERS)
        yield from self._fewer(self.about)

    def _mended(self, code: StandardCode, statement: Statement) -> bool:
        """Say whether a problem can stand here and has not what was found."""
        try:
            said = text(statement)
            alone = Sheet((Problem("1", read_statement(said), said),), self.sheet.header)
            answer(statement)
            return code not in {note.standard.code for note in notes(WorkedSheet(alone))}
        except OnewholeError:
            return False

    def _not_there(self, offered: Sequence[str]) -> Statement:
        """Return the first of some problems that is no twin of any of the page."""
        taken = {twin_key(one.statement) for one in self.sheet.problems}
        asked = [read_statement(typed) for typed in offered]
        return next((one for one in asked if twin_key(one) not in taken), asked[0])

    def _other_sort(self) -> Statement:
        """Return a problem like one of the page, of the sort that is not there, and no twin of any."""
        taken = {twin_key(one.statement) for one in self.sheet.problems}
        worked = [one.needs.regrouping for one in self.seen.page.problems]
        near = chain.from_iterable(
            islice(of_the_other_sort(one.statement), LOOKED_AT) for one in reversed(self.sheet.problems)
        )
        free = next((one for one in near if twin_key(one) not in taken), None)
        return free or (PLAIN if any(worked) else REGROUPS)


def _picture(picture: PictureSetting, beside: str) -> Click:
    return SetTo((SettingLine("picture", picture.value + beside),))


def _turned_round(statement: Statement) -> Iterator[Statement]:
    """Yield a problem with its numbers the other way round."""
    yield with_numbers(statement, numbers_of(statement)[::-1])


def _other_bottoms(statement: Statement, met: Sequence[int], *, one: bool) -> Iterator[Statement]:
    """Yield a problem with other denominators, the nearest first, those that keep its sort before others.

    With ``one`` all its fractions get the same; otherwise only those that are not met are changed.
    """
    own = needs(statement)
    largest = max(own.denominators, default=0)
    near = sorted(met, key=lambda bottom: (abs(bottom - largest), -bottom))
    kept = () if one else met
    found = [other for bottom in near if (other := _with_bottom(statement, bottom, kept)) != statement]
    same = [other for other in found if _sort(other) == own.regrouping]
    yield from same
    yield from (other for other in found if other not in same)


def _with_bottom(statement: Statement, bottom: int, kept: Sequence[int]) -> Statement:
    """Return a problem with one denominator in place of all that are not kept, a written gap's too."""

    def other(number: Quantity) -> Quantity:
        ladder = number.ladder
        if ladder.style is not Style.MIXED or ladder.denominator in kept:
            return number
        return replace(number, ladder=mixed(bottom))

    changed = with_numbers(statement, tuple(map(other, numbers_of(statement))))
    if isinstance(changed, MissingNumber) and isinstance(changed.gap.bottom, int):
        gap = changed.gap
        if gap.bottom not in kept:
            return replace(changed, gap=Gap(gap.wholes, gap.top, bottom))
    return changed


def _sort(statement: Statement) -> bool | None:
    try:
        return needs(statement).regrouping
    except OnewholeError:
        return None
