"""The form that a teacher asks of a right answer, and a working led on to it."""

from math import gcd

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.factors import simplest
from onewhole.number.ladder import Style, mixed
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity, overfull, usual
from onewhole.statements.expression import WithRemainder
from onewhole.statements.statement import AnotherName, MissingNumber, Question, Statement
from onewhole.working.line import Line, LineContent
from onewhole.working.questions import steps_found
from onewhole.working.quotients.long_division import LONG_DIVISION
from onewhole.working.quotients.remainder_shared import RemainderForm, remainder_shared
from onewhole.working.quotients.work_quotient import divided, quotient_found
from onewhole.working.reasons.renaming import FewestPieces
from onewhole.working.steps.work_steps import has_steps
from onewhole.working.working import Working


class FormWanted(Struct, frozen=True):
    """What a teacher may ask of the form of a right answer; neither is asked unless the teacher says so.

    ``mixed``: no piece count that fills a whole (39/8, 4 15/8), nor smaller unit that fills a larger one
    (2 ft 14 in). ``simplest``: as few pieces as can be (3 1/2 and not 3 3/6). ``remainder``: what
    becomes of what is left over in dividing; None takes any. Grade 4 asks for neither:
    4.NF.B.3.c names no form, and the samples of 5.NF.A.1 leave 23/12 as it is (CCSSM 2010).
    """

    mixed: bool = False
    simplest: bool = False
    remainder: RemainderForm | None = None

    def meets(self, answer: Quantity | WithRemainder) -> bool:
        """Say whether an answer has the form that is asked for.

        What is asked of a remainder counts only where there is one: see :func:`form_for`.

        >>> FormWanted(simplest=True).meets(Quantity(mixed(6), (3, 3)))
        False
        """
        if isinstance(answer, WithRemainder):
            return self.remainder in {None, RemainderForm.REMAINDER}
        match self.remainder:
            case RemainderForm.REMAINDER:
                return False
            case RemainderForm.DECIMAL:
                return answer.ladder.style is Style.DECIMAL
            case RemainderForm.FRACTION if answer.ladder.style is not Style.MIXED:
                return False
        return not ((self.mixed and overfull(answer)) or (self.simplest and _has_fewer_pieces(answer)))


ANY_FORM = FormWanted()


def form_for(statement: Statement, wanted: FormWanted) -> FormWanted:
    """Return what is asked of the form of an answer to one problem: one fraction is not to be mixed.

    >>> from onewhole.statements.reading import read_statement
    >>> form_for(read_statement("2 3/4 as a fraction"), FormWanted(mixed=True)) == ANY_FORM
    True
    >>> wanted = FormWanted(remainder=RemainderForm.DECIMAL)
    >>> [form_for(read_statement(asked), wanted) == wanted for asked in ("87 / 4", "87 / 3", "87 / 7")]
    [True, False, False]
    """
    if wanted.remainder is not None and not _leaves_one(statement, wanted.remainder):
        wanted = replace(wanted, remainder=None)
    match statement:
        case AnotherName(wanted=NumberForm.FRACTION):
            return replace(wanted, mixed=False)
        case _:
            return wanted


def _leaves_one(statement: Statement, wanted: RemainderForm) -> bool:
    """Say whether something is left over when this is divided, and can be written as it is wanted."""
    found = divided_last(statement)
    if not isinstance(found, WithRemainder):
        return False
    return wanted is RemainderForm.REMAINDER or remainder_shared(found, wanted) is not None


def divided_last(statement: Statement) -> Quantity | WithRemainder | None:
    """Return what a question comes to that divides, or that has several steps; None for all else.

    >>> from onewhole.statements.reading import read_statement
    >>> found = divided_last(read_statement("(3 + 20) / 4"))
    >>> found.quotient.parts, found.left.parts
    (5, 3)
    """
    if not isinstance(statement, Question):
        return None
    if (asked := divided(statement.asked)) is not None:
        return quotient_found(asked)
    return steps_found(statement.asked) if has_steps(statement.asked) else None


def _has_fewer_pieces(answer: Quantity) -> bool:
    return answer.ladder.style is Style.MIXED and gcd(answer.amounts[1], answer.ladder.denominator) != 1


def formed(answer: Quantity | WithRemainder, wanted: FormWanted) -> Quantity | WithRemainder:
    """Return an answer in the form that is asked for; as it is where it has that form.

    >>> formed(Quantity(mixed(6), (3, 3)), FormWanted(simplest=True)).counts
    (3, 1)
    """
    if isinstance(answer, WithRemainder):
        shared = remainder_shared(answer, wanted.remainder) if wanted.remainder else None
        return formed(shared.found(), replace(wanted, remainder=None)) if shared else answer
    if wanted.meets(answer):
        return answer
    if not wanted.simplest or answer.ladder.style is not Style.MIXED:
        return usual(answer.ladder, answer.value)
    top, bottom = simplest(answer.parts, answer.ladder.denominator)
    fewest = mixed(bottom, answer.ladder.mark)
    if answer.counts[0] is None and not wanted.mixed and bottom > 1:
        return Quantity(fewest, (None, top))
    return usual(fewest, answer.value)


def led_to(working: Working, wanted: FormWanted) -> Working:
    """Lead a working on to the form that is asked for, with one more line and its reason.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> led_to(work(read_statement("7/8 - 3/8"), REGROUP_FIRST), FormWanted(simplest=True)).answer.counts
    (None, 1)
    """
    if isinstance(working.answer, WithRemainder):
        in_columns = working.strategy == LONG_DIVISION.key
        shared = (
            remainder_shared(working.answer, wanted.remainder, in_columns=in_columns)
            if wanted.remainder
            else None
        )
        if shared is None:
            return working
        working = replace(working, lines=(*working.lines, *shared.lines), answer=shared.found())
        wanted = replace(wanted, remainder=None)
    answer = working.answer
    if not isinstance(answer, Quantity) or wanted.meets(answer):
        return working
    other = formed(answer, wanted)
    assert isinstance(other, Quantity)
    old, new = answer.ladder.units[-1], other.ladder.units[-1]
    last = working.lines[-1].says
    reason = FewestPieces(old, new, (new.size / old.size).numerator)
    return replace(working, lines=(*working.lines, Line(_saying(last, other), reason)), answer=other)


def _saying(last: LineContent, other: Quantity) -> LineContent:
    return replace(last, rest=other) if isinstance(last, MissingNumber) else other
