"""A problem and all that follows from it, each worked out once, when it is first asked for."""

from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from onewhole.misconceptions.catalogue import shows
from onewhole.misconceptions.slip import Slip
from onewhole.number.quantity import Quantity
from onewhole.problems.about import About, about
from onewhole.problems.answer import also_right, answer
from onewhole.problems.difficulty import Difficulty, difficulty_of
from onewhole.problems.minutes import minutes_of
from onewhole.problems.needs import Needs, needs
from onewhole.problems.problem import Problem
from onewhole.problems.taught import as_taught
from onewhole.problems.traps import Traps, traps
from onewhole.statements.expression import WithRemainder
from onewhole.statements.statement import AnotherName, Question, RightAnswer, Statement
from onewhole.working.form import ANY_FORM, FormWanted, form_for, formed
from onewhole.working.quotients.remainder_shared import both_shared
from onewhole.working.strategies.table import USUAL
from onewhole.working.taught import AsTaught
from onewhole.working.working import Working, equal_forms


@dataclass(frozen=True)
class WorkedProblem:
    """A problem as a class was taught to work it, and in the form that is wanted of its answer.

    Everything about it is worked out when it is first asked for, and kept with it: whoever is handed the
    same worked problem works nothing again.

    >>> from onewhole.statements.reading import read_statement
    >>> one = WorkedProblem(Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8"))
    >>> one.working is one.working, one.needs.regrouping, one.minutes
    (True, True, Fraction(3, 2))
    """

    problem: Problem
    taught: AsTaught = USUAL
    wanted: FormWanted = ANY_FORM

    @property
    def label(self) -> str:
        """Return the problem's label."""
        return self.problem.label

    @property
    def statement(self) -> Statement:
        """Return what is asked."""
        return self.problem.statement

    @cached_property
    def answer(self) -> RightAnswer:
        """Return the right answer, written the usual way or in the form that is wanted.

        Raises NotOnLadderError where there is none.
        """
        found = answer(self.statement)
        return formed(found, self._form) if isinstance(found, Quantity | WithRemainder) else found

    @cached_property
    def forms(self) -> tuple[Quantity, ...]:
        """Return other usual ways to write the answer that are right too: all, or those that are wanted.

        Of a number to be rounded that is exactly halfway it is the other neighbor.
        """
        if isinstance(self.answer, WithRemainder):
            return () if self._form.remainder else both_shared(self.answer)
        if not isinstance(self.answer, Quantity):
            return ()
        if other := also_right(self.statement):
            return (other,)
        given = self.statement.asked if isinstance(self.statement, Question) else None
        return tuple(form for form in equal_forms(self.answer) if self._takes(form) and form != given)

    @property
    def _form(self) -> FormWanted:
        return form_for(self.statement, self.wanted)

    def _takes(self, form: Quantity) -> bool:
        """Say whether a way to write the answer is one that is asked for."""
        asked = self.statement
        return self._form.meets(form) and (not isinstance(asked, AnotherName) or asked.answered_by(form))

    @cached_property
    def working(self) -> Working | None:
        """Return the working by the taught strategy, its partner for the other operation, or one that suits.

        It goes on to the form that is wanted, and ends with the answer. None for what is not worked line by
        line.
        """
        return as_taught(self.statement, self.taught, self._form)

    @cached_property
    def needs(self) -> Needs:
        """Return what the problem needs."""
        return needs(self.statement)

    @property
    def about(self) -> About | None:
        """Return what is done in it, and with which units; None where nothing is done."""
        return about(self.statement, self.needs)

    @cached_property
    def difficulty(self) -> Difficulty:
        """Return how hard it is for a class that was taught so."""
        return difficulty_of(self.statement, self.needs, self.working)

    @cached_property
    def slips(self) -> tuple[Slip, ...]:
        """Return the answers that patterns write here, raw, in the order of the catalogue."""
        return shows(self.statement, self.problem.told)

    @cached_property
    def traps(self) -> Traps:
        """Return what the numbers show and hide."""
        return traps(self.statement, self.problem.told)

    @property
    def minutes(self) -> Fraction:
        """Return how long it takes (:mod:`onewhole.problems.minutes`)."""
        return minutes_of(self.statement, self.needs, story=bool(self.problem.story))
