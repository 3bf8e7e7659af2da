"""One wrong worked example to correct: which of its equals signs is not true?"""

from collections.abc import Container, Iterable, Iterator, Sequence
from itertools import islice, pairwise

from msgspec import Struct

from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Pattern
from onewhole.misconceptions.slip import Slip
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.taught import as_taught
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.header import Header
from onewhole.statements.expression import Expression, Over, Sum, Times, kind, value
from onewhole.statements.statement import Question, Statement
from onewhole.working.strategies.table import strategy_named
from onewhole.working.strategy import Strategy

#: With one equals sign there is nothing to look for.
FEWEST_LINES = 3
#: How many parallels of a problem are looked at for each pattern.
LOOKED_AT = 20


class FindTheSlip(Struct, frozen=True):
    """A working that is false at exactly one equals sign, with its key.

    ``lines`` begin with the problem. ``sign`` counts equals signs from 1 and names the false one;
    ``would_be`` is what would be true after it. ``pattern`` is for the teacher's eyes: no page for a child
    shows it. Raises ValueError when another sign is false too, or none, or when ``would_be`` is not true.

    Source: finding and mending wrong worked examples gave d = 0.33 on a later test and nothing at once
    (McLaren, Adams and Mayer 2015, read); another study found no clear gain (Di Lonardo Burr and others 2020,
    abstract). So one is enough, it is never on the first night, and it may be left out.
    """

    label: str
    lines: tuple[Expression, ...]
    sign: int
    would_be: Expression
    pattern: str

    def __post_init__(self) -> None:
        """Refuse anything but one false sign and a true mend."""
        if len(self.lines) < FEWEST_LINES or false_signs(self.lines) != (self.sign,):
            msg = "a slip to find has two or more equals signs, and one of them is false"
            raise ValueError(msg)
        before = self.lines[self.sign - 1]
        if kind(before) is not kind(self.would_be) or value(before) != value(self.would_be):
            msg = "what would be true is not equal to what stands before the sign"
            raise ValueError(msg)

    @property
    def problem(self) -> Question:
        """Return the problem that is worked wrongly."""
        return Question(self.lines[0])

    def mended(self, header: Header) -> WorkedProblem:
        """Return the problem as the class that the page is for works it rightly."""
        problem = Problem(self.label, self.problem, text(self.problem))
        return WorkedProblem(problem, header.taught, header.form)


def false_signs(lines: Sequence[Expression]) -> tuple[int, ...]:
    """Return the equals signs between lines, counted from 1, that are not true.

    >>> from onewhole.statements.reading import read_expression as read
    >>> false_signs([read("9 5/8 - 4 6/8"), read("9 13/8 - 4 6/8"), read("5 7/8")])
    (1,)
    """
    return tuple(
        at
        for at in range(1, len(lines))
        if kind(lines[at - 1]) is not kind(lines[at]) or value(lines[at - 1]) != value(lines[at])
    )


def wrong_lines(slip: Slip) -> tuple[Expression, ...] | None:
    """Return the lines that a child would write for a slip, or None where there is nothing to find in them.

    What a pupil need not write is left out. Nothing can be found where no equals sign is false (the slip is
    one of form), where there is only one, and where a line holds more than an amount.

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_statement
    >>> slip = by_id("A02").slip(read_statement("9 5/8 - 4 6/8"))
    >>> [text(line) for line in wrong_lines(slip)]
    ['9 5/8 - 4 6/8', '9 13/8 - 4 6/8', '5 7/8']
    """
    said = [line.says for line in slip.lines if not line.aside]
    lines = tuple(one for one in said if isinstance(one, Expression))
    return lines if len(lines) == len(said) >= FEWEST_LINES and len(false_signs(lines)) == 1 else None


def find_the_slip(
    models: Sequence[Statement],
    patterns: Sequence[str],
    taught: Strategy,
    *,
    label: str,
    taken: Container[Statement] = (),
    skip: int = 0,
) -> FindTheSlip | None:
    """Return a wrong worked example built from the lines of the first pattern that has any, or None.

    Its problem is parallel to one of the ``models`` and none that is ``taken``. ``skip`` passes over so many
    examples, for another group or pupil.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> found = find_the_slip([read_statement("9 5/8 - 4 6/8")], ["A02"], REGROUP_FIRST, label="7")
    >>> found.sign, found.pattern
    (1, 'A02')
    """
    for pattern in map(by_id, patterns):
        shown = [model for model in models if (slip := pattern.slip(model)) and wrong_lines(slip)]
        turn, first = divmod(skip, len(shown) or 1)
        for model in (*shown[first:], *shown[:first]):
            if (slip := next(islice(_slips(model, pattern, taken), turn, None), None)) is not None:
                return _with_key(slip, taught, label)
    return None


def _slips(model: Statement, pattern: Pattern, taken: Container[Statement]) -> Iterator[Slip]:
    """Yield slips of one pattern on parallels of one model in which there is something to find."""
    for statement in islice(parallel(model), LOOKED_AT):
        slip = None if statement in taken else pattern.slip(statement)
        if slip is not None and wrong_lines(slip) is not None:
            yield slip


def _with_key(slip: Slip, taught: Strategy, label: str) -> FindTheSlip:
    lines = wrong_lines(slip)
    assert lines is not None
    (sign,) = false_signs(lines)
    beside = by_id(slip.pattern).strategy
    ways = (strategy_named(beside), taught) if beside else (taught,)
    return FindTheSlip(label, lines, sign, _true_line(lines, sign, ways), slip.pattern)


def _true_line(lines: Sequence[Expression], sign: int, ways: Iterable[Strategy]) -> Expression:
    """Return what would be true after the false sign.

    That is the line of a right working that has the form of the false one, or else the line that follows
    there on the side before the sign, or else the answer.
    """
    before, false = lines[sign - 1], lines[sign]
    problem = Question(lines[0])
    for strategy in ways:
        working = as_taught(problem, strategy)
        said = [line.says for line in working.lines[1:]] if working else []
        brief = [line.says for line in working.brief()] if working else []
        alike = [one for one in said if isinstance(one, Sum | Times | Over) and looks_like(one, false)]
        after = [says for one, says in pairwise(brief) if one == before]
        for found in (*alike, *after):
            if isinstance(found, Expression):
                return found
    right = answer(problem)
    assert isinstance(right, Quantity)
    return right


def looks_like(one: Expression, other: Expression) -> bool:
    """Say whether two lines are built in the same way from numbers in the same units.

    >>> from onewhole.statements.reading import read_expression as read
    >>> looks_like(read("8 13/8 - 4 6/8"), read("9 13/8 - 4 6/8")), looks_like(read("8 - 4"), read("8 + 4"))
    (True, False)
    """
    match one, other:
        case Quantity(), Quantity():
            return one.ladder == other.ladder
        case Sum(terms), Sum(others):
            return len(terms) == len(others) and all(
                a.taken == b.taken and looks_like(a.part, b.part) for a, b in zip(terms, others, strict=True)
            )
        case (Times(a, b), Times(c, d)) | (Over(a, b), Over(c, d)):
            return looks_like(a, c) and looks_like(b, d)
        case _:
            return False
