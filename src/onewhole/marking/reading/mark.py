"""One answer marked: right in any equal form, and which patterns a wrong one fits."""

from collections.abc import Sequence
from enum import Enum

from msgspec import Struct

from onewhole.findings.attendance import PaperWord
from onewhole.findings.in_answer import Remark, Tier
from onewhole.marking.reading.answer import Blank, Unreadable, Written
from onewhole.marking.reading.class_answers import ClassAnswers
from onewhole.marking.reading.expected import Expected, Ids, expect_worked
from onewhole.marking.reading.lines import line_patterns
from onewhole.marking.reading.talk_word import TalkWord
from onewhole.marking.reading.writing import alike, amount
from onewhole.misconceptions.attempt import Outcome
from onewhole.number.ladder import Ladder, Style
from onewhole.number.quantity import Quantity, overfull, usual
from onewhole.number.unit import Kind
from onewhole.number.with_minus import WithMinus
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.clock_sides import time_asked
from onewhole.statements.expression import WithRemainder
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.statement import AnotherName, NumberRow, Ordering, Question, Relation
from onewhole.working.form import ANY_FORM, FormWanted, form_for
from onewhole.working.working import equal_forms


class Verdict(Enum):
    """What an answer is. ``FORM`` is the right amount in another form than the teacher asks for."""

    RIGHT = "right"
    FORM = "form"
    WRONG = "wrong"
    BLANK = "blank"
    UNREADABLE = "unreadable"


class Mark(Struct, frozen=True):
    """One answer with its verdict.

    ``patterns`` are ids: of a wrong answer those of the best tier (``tier``, None where none fits), fact
    slips last; of a right answer those that only leave it in a form. ``renamed`` are other forms of a right
    answer that the teacher takes, the usual one first.
    """

    label: str
    written: Written
    verdict: Verdict
    patterns: Ids = ()
    tier: Tier | None = None
    remarks: tuple[Remark, ...] = ()
    renamed: tuple[Quantity, ...] = ()

    @property
    def fits(self) -> Ids:
        """Return the patterns that a wrong answer fits in writing or in amount, not by a slip."""
        return self.patterns if self.tier in {Tier.LINE, Tier.EXACT, Tier.AMOUNT} else ()


class AskedMark(Struct, frozen=True):
    """One problem that a pupil was asked in a talk, and the mark of what was said."""

    expected: Expected
    mark: Mark


class PupilMarks(Struct, frozen=True):
    """The marks of one pupil, one a problem, in the order of the page.

    ``asked`` are the answers of a talk after it, and ``word`` what the teacher says of that talk; ``paper``
    what the teacher says of a paper that is not there.
    """

    pupil: str
    marks: tuple[Mark, ...]
    asked: tuple[AskedMark, ...] = ()
    word: TalkWord | None = None
    paper: PaperWord = PaperWord.HERE


class ClassMarks(Struct, frozen=True):
    """The marks of a class, and what the answers were compared with, in the order of the page."""

    expected: tuple[Expected, ...]
    pupils: tuple[PupilMarks, ...]


def mark_class(
    answers: ClassAnswers,
    wanted: FormWanted = ANY_FORM,
    worked: Sequence[WorkedProblem] | None = None,
) -> ClassMarks:
    r"""Mark the answers of a class; what the patterns write is worked out once a problem, not once a pupil.

    ``worked`` are the problems of the answers where they are worked already; without them they are worked
    here.

    >>> from onewhole.marking.reading.answers_table import read_answers
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> asked = Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8")
    >>> marks = mark_class(read_answers("pupil,1\nK01,39/8\nK02,5 1/8", (asked,))).pupils
    >>> [pupil.marks[0].verdict.value for pupil in marks], marks[1].marks[0].patterns[0]
    (['right', 'wrong'], 'A01')
    """
    problems = worked if worked is not None else [WorkedProblem(problem) for problem in answers.problems]
    expected = tuple(map(expect_worked, problems))
    return ClassMarks(
        expected,
        tuple(
            PupilMarks(row.pupil, mark_row(expected, row.written, wanted), paper=row.paper)
            for row in answers.pupils
        ),
    )


def mark_row(
    expected: Sequence[Expected], written: Sequence[Written], wanted: FormWanted = ANY_FORM
) -> tuple[Mark, ...]:
    """Mark the answers of one pupil, one a problem."""
    return tuple(mark(asked, answer, wanted) for asked, answer in zip(expected, written, strict=True))


def mark(asked: Expected, written: Written, wanted: FormWanted = ANY_FORM) -> Mark:
    """Mark one answer: any equal form is right (exact, by cross product); a wrong one gets its patterns.

    An answer without its unit, or with another one, is wrong and says so; where only the last unit was left
    away, as in 1 h 35, the amount is judged, and that is said. Source of "raw answer first, then amount, then
    one fact slip": our own rule; fact slips are kept apart from ideas after VanLehn (1982).

    >>> from onewhole.marking.reading.answer import read_written
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> asked = expect_worked(WorkedProblem(Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6")))
    >>> [remark.name for remark in mark(asked, read_written("21/6")).remarks]
    ['ONE_FRACTION', 'MAY_BE_RENAMED']
    """
    label, read = asked.problem.label, written.read
    match read:
        case Blank():
            return Mark(label, written, Verdict.BLANK)
        case Unreadable():
            return Mark(label, written, Verdict.UNREADABLE)
        case outcome:
            return (
                _right(asked, written, outcome, wanted)
                if asked.is_right(outcome) and not written.other_unit
                else _wrong(asked, written, outcome)
            )


def _right(asked: Expected, written: Written, read: Outcome, wanted: FormWanted) -> Mark:
    label, forms = asked.problem.label, asked.forms.get(alike(read), ())
    wanted = form_for(asked.problem.statement, wanted)
    named = asked.problem.statement if isinstance(asked.problem.statement, AnotherName) else None
    if isinstance(read, WithMinus):
        return Mark(label, written, Verdict.RIGHT if wanted == ANY_FORM and not named else Verdict.FORM)
    if isinstance(read, WithRemainder):
        return Mark(label, written, Verdict.RIGHT if wanted.meets(read) else Verdict.FORM, forms)
    if not isinstance(read, Quantity) or read == asked.filled:
        return Mark(label, written, Verdict.RIGHT, forms)
    full = _overfull(read)
    again = _as_given(asked, read)
    found = (*((asked.right,) if again and isinstance(asked.right, Quantity) else ()), *_forms(read))
    others = (
        form
        for form in found
        if alike(form) != alike(read) and wanted.meets(form) and (not named or named.answered_by(form))
    )
    renamed = tuple(dict.fromkeys(others))
    missed = again or _on_no_clock(asked, read) or not wanted.meets(read)
    wanted_unit = asked.right.ladder.mark if isinstance(asked.right, Quantity) else ""
    missing = read.kind is Kind.NUMBER and bool(wanted_unit) and not read.ladder.mark
    remarks = (
        *([full] if full else []),
        *([Remark.MAY_BE_RENAMED] if renamed else []),
        *([Remark.UNIT_MISSING] if missing else []),
        *_of_last_unit(written),
    )
    return Mark(label, written, Verdict.FORM if missed else Verdict.RIGHT, forms, None, remarks, renamed)


def _on_no_clock(asked: Expected, read: Quantity) -> bool:
    """Say whether a time of day is asked for and written as no clock shows it: 10:80 for 11:20."""
    match asked.problem.statement:
        case Question(says) if time_asked(says):
            return not read.ladder.clock
        case _:
            return False


def _as_given(asked: Expected, read: Quantity) -> bool:
    """Say whether a number that stands alone is written once more as it was given: 6/8 for 6/8.

    A number with the name that is wanted already (3/4 simplest) may be.
    """
    match asked.problem.statement:
        case Question(Quantity() as given):
            return alike(read) == alike(given)
        case AnotherName() as named:
            return not named.answered_by(read)
        case _:
            return False


def _overfull(read: Quantity) -> Remark | None:
    if not overfull(read):
        return None
    return Remark.OVERFULL if read.amounts[0] or read.ladder.style is not Style.MIXED else Remark.ONE_FRACTION


def _forms(read: Quantity) -> tuple[Quantity, ...]:
    return (usual(read.ladder, read.value), *equal_forms(read))


def _wrong(asked: Expected, written: Written, read: Outcome) -> Mark:
    if written.other_unit and asked.is_right(read):
        return Mark(asked.problem.label, written, Verdict.WRONG, remarks=(Remark.OTHER_UNIT,))
    tier, patterns = _fits(asked, read)
    if written.chain is not None and (lines := line_patterns(asked, written.chain)):
        tier, patterns = Tier.LINE, lines
    other = [Remark.OTHER_UNIT] if written.other_unit else []
    remarks = (*_remarks(asked, read), *other, *_of_last_unit(written))
    return Mark(asked.problem.label, written, Verdict.WRONG, patterns, tier, remarks)


def _fits(asked: Expected, read: Outcome) -> tuple[Tier | None, Ids]:
    """Return the patterns of the best tier."""
    tables = (
        (Tier.EXACT, asked.exact, alike(read)),
        (Tier.AMOUNT, asked.amounts, amount(read)),
        (Tier.WITH_SLIP, asked.near, amount(read)),
    )
    for tier, table, key in tables:
        if patterns := table.get(key):
            return tier, patterns
    return None, ()


def _unit_in_the_blank(asked: Expected) -> bool:
    """Say whether the unit stands behind the blank already, so that a number alone leaves none off."""
    match asked.problem.statement:
        case AnotherName(_, Ladder() as wanted):
            return len(wanted.units) == 1
        case _:
            return False


def _remarks(asked: Expected, read: Outcome) -> list[Remark]:
    if isinstance(asked.problem.statement, Ordering):
        return _of_order(asked.problem.statement, read)
    if isinstance(asked.problem.statement, FactorQuestion):
        return []
    if isinstance(asked.problem.statement, Listing):
        return _of_list(asked.problem.statement, read)
    found = []
    if isinstance(read, Relation) != (asked.kind is None):
        found.append(Remark.SIGN_ASKED if asked.kind is None else Remark.NUMBER_ASKED)
    elif _unit_in_the_blank(asked) and isinstance(read, Quantity) and read.kind is Kind.NUMBER:
        pass
    elif isinstance(read, Quantity | WithMinus) and read.kind is not asked.kind:
        found += _of_unit(read)
    if asked.may_be_slip(read):
        found.append(Remark.MAY_BE_SLIP)
    return found


def _of_unit(read: Quantity | WithMinus) -> list[Remark]:
    """Say of an answer that measures something else that its unit is missing, or that it is another one."""
    if read.kind is not Kind.NUMBER:
        return [Remark.OTHER_UNIT]
    return [] if isinstance(read, Quantity) and read.ladder.mark else [Remark.UNIT_MISSING]


def _of_last_unit(written: Written) -> list[Remark]:
    return [Remark.LAST_UNIT_MISSING] if written.last_unit_missing else []


def _of_list(asked: Listing, read: Outcome) -> list[Remark]:
    """Say whether numbers are missing in a list, and whether some do not belong to it."""
    found = set(read.values) if isinstance(read, NumberRow) else set()
    wanted = set(asked.values)
    told = ((Remark.SOME_MISSING, wanted - found), (Remark.SOME_TOO_MANY, found - wanted))
    return [remark for remark, numbers in told if numbers]


def _of_order(asked: Ordering, read: Outcome) -> list[Remark]:
    """Say what else is to be seen in numbers that are not in order."""
    if not isinstance(read, NumberRow) or sorted(read.values) != sorted(asked.ordered.values):
        return [Remark.OTHER_NUMBERS]
    if asked.is_reversed(read):
        return [Remark.OTHER_END]
    return [] if read.values != asked.ordered.values else [Remark.SIGNS_DO_NOT_FIT]
