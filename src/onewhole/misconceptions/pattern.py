"""One error pattern: its rule, the words a teacher needs, and how it answers a problem."""

from collections.abc import Callable
from enum import Enum

from msgspec import Struct

from onewhole.misconceptions.ask import Ask
from onewhole.misconceptions.attempt import Attempt, BelowZeroError, answer_claim, line_claim
from onewhole.misconceptions.bend import Bend, BentTry, Try
from onewhole.misconceptions.case import Case
from onewhole.misconceptions.in_order import in_order, pairs_of
from onewhole.misconceptions.in_story import InStory
from onewhole.misconceptions.pair import as_question
from onewhole.misconceptions.slip import Slip
from onewhole.misconceptions.source import Source
from onewhole.misconceptions.telling import ToldAs
from onewhole.misconceptions.thought import Thought
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Ordering, Statement


class Topic(Enum):
    """What the problems are about on which a pattern can show."""

    SUBTRACT_LIKE = "subtracting, like denominators"
    ADD_LIKE = "adding, like denominators"
    UNLIKE = "unlike denominators"
    EQUAL_AND_COMPARE = "equal fractions and comparing"
    TIMES = "whole number times fraction"
    COLUMNS = "whole-number subtraction in columns"
    SUM_COLUMNS = "whole-number addition in columns"
    DECIMALS = "decimals"
    MEASURES = "measures in two units"
    CONVERSIONS = "measures in another unit"
    COMPARE = "comparing mixed numbers, decimals and whole numbers"
    OTHER_NAMES = "other names for a number"
    MISSING = "missing numbers"
    ROUND = "rounding"
    SEVERAL = "three numbers and more"
    STEPS = "several steps"
    LISTS = "factors and multiples"
    PRIMES = "prime or composite, a multiple or not"
    PRODUCTS = "whole numbers and fractions multiplied"
    QUOTIENTS = "dividing"
    PLOTS = "line plots"
    STORIES = "what to do in a story"
    REMAINDERS = "what a remainder means"


class Family(Enum):
    """What kind of idea goes wrong; groups for tomorrow are made of one family."""

    REGROUPING = "regrouping"
    NUMERATOR = "numerator"
    DENOMINATOR = "denominator"
    WHOLES = "whole-number part"
    OPERATION = "operation"
    CONVERSION = "conversion"
    FORM = "form of answer"
    FACT = "fact slip"
    EQUIVALENCE = "equivalence"
    COMPARISON = "comparison"
    PLACE_VALUE = "place value"


class Example(Struct, frozen=True):
    """A problem, its right answer and the answer of the pattern, as typed text.

    ``story`` and ``telling`` are the words of a problem that is told, and what in them may mislead.
    """

    problem: str
    right: str
    wrong: str
    story: str = ""
    telling: ToldAs | None = None


class Luck(Enum):
    """A pattern applies and still gives the right answer, so that the answer is no evidence.

    >>> from onewhole.misconceptions.catalogue import by_id
    >>> from onewhole.statements.reading import read_statement
    >>> by_id("A28").meets(read_statement("7 2/6 - 3 5/6"))
    <Luck.RIGHT: 'right by luck'>
    """

    RIGHT = "right by luck"


class Pattern(Struct, frozen=True):
    """One error pattern.

    ``thinking`` makes of a case what the child may be thinking, and ``ask`` what to ask the child, both about
    the child's own problem; a pattern is a hint for that talk and never a label. ``attempt`` works a problem
    wrongly, or returns None where the pattern does not apply. ``beside`` is the key of the taught strategy to
    set beside it where its attempt runs none.
    ``of_form`` marks the few that keep the amount and only leave it in a form, ``fact_off`` those whose rule
    has a fact one off in it, so that no other slip is looked for beside what they write.
    """

    id: str
    name: str
    topic: Topic
    family: Family
    rule: str
    shows_when: str
    thinking: Callable[[Case], Thought]
    ask: Callable[[Case], Ask]
    source: Source
    example: Example
    attempt: Try
    beside: str | None = None
    of_form: bool = False
    fact_off: bool = False

    @property
    def bends(self) -> Bend | None:
        """Return the taught strategy that runs with steps replaced, or None when none runs.

        >>> from onewhole.misconceptions.catalogue import by_id
        >>> by_id("A02").bends, by_id("E01").bends
        (Bend(strategy='regroup_first', steps=('regroup',)), None)
        """
        return self.attempt.bends if isinstance(self.attempt, BentTry) else None

    @property
    def strategy(self) -> str | None:
        """Return the key of the taught strategy to look at beside the pattern, or None when there is none."""
        return self.bends.strategy if self.bends else self.beside

    @property
    def of_stories(self) -> bool:
        """Say whether it is about what to do in a story, so that numbers alone cannot show it."""
        return isinstance(self.attempt, InStory)

    def slip(self, statement: Statement, telling: ToldAs | None = None) -> Slip | None:
        """Return the working with its one false line, or None when this problem cannot show the pattern.

        It cannot when the pattern does not apply, when it would need a count below zero, and when the
        answer comes out right by luck (:class:`Luck`). ``telling`` is how a story tells it, None for numbers
        alone.
        """
        met = self.meets(statement, telling)
        return met if isinstance(met, Slip) else None

    def meets(self, statement: Statement, telling: ToldAs | None = None) -> "Slip | Luck | None":
        """Return what becomes of a problem: the slip that it shows, luck, or None where it does not apply."""
        tried = _tried(self, statement, telling)
        if tried is None:
            return None
        if _right(tried) == self.of_form:
            return Slip(self.id, tried.lines, tried.wrote, tried.also, self.of_form)
        return None if self.of_form else Luck.RIGHT

    def case(self, statement: Statement, telling: ToldAs | None = None) -> Case | None:
        """Return a problem with what the pattern writes on it, or None when it cannot show the pattern.

        Of numbers to be put in order it is the first two that the pattern compares wrongly.

        >>> from onewhole.misconceptions.catalogue import by_id
        >>> from onewhole.statements.reading import read_statement
        >>> by_id("A02").case(read_statement("3/8 - 1/8")) is None
        True
        """
        slip = self.slip(statement, telling)
        if slip is None:
            return None
        if isinstance(statement, Ordering):
            return next(filter(None, map(self.case, pairs_of(statement))), None)
        return Case(as_question(statement), slip)

    @property
    def example_case(self) -> Case:
        """Return the example as a case. Raises LookupError where it does not show the pattern."""
        case = self.case(read_statement(self.example.problem), self.example.telling)
        if case is None:
            msg = f"the example of {self.id} does not show it"
            raise LookupError(msg)
        return case


def _tried(pattern: Pattern, statement: Statement, telling: ToldAs | None) -> Attempt | None:
    try:
        if isinstance(pattern.attempt, InStory):
            return None if telling is None else pattern.attempt.told(as_question(statement), telling)
        if isinstance(statement, Ordering):
            return in_order(statement, pattern.attempt) if pattern.family is Family.COMPARISON else None
        return pattern.attempt(as_question(statement))
    except BelowZeroError:
        return None


def _right(tried: Attempt) -> bool:
    return answer_claim(tried.wrote) == line_claim(tried.lines[0].says)
