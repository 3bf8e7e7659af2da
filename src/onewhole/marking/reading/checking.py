"""Chains of equalities that a pupil or a teacher typed: every equals sign true, or the first false one."""

from msgspec import Struct

from onewhole.marking.reading.mending import mended
from onewhole.marking.reading.writing import alike, alike_line, amount
from onewhole.misconceptions.catalogue import shows
from onewhole.misconceptions.slip import Slip
from onewhole.number.quantity import Quantity
from onewhole.statements.chain import Chain
from onewhole.statements.expression import Expression, Sum, kind, value
from onewhole.statements.reading import read_chains
from onewhole.statements.statement import Question, Statement

#: The note about an equals sign that runs on.
RUN_ON = (
    "Each act makes sense, but the equals sign does not: what stands before it and after it is not the "
    "same amount. Write each act on a line of its own."
)


class FalseSign(Struct, frozen=True):
    """An equals sign whose sides differ; ``line`` and ``column`` are where the side after it begins.

    ``would_be`` could stand after it instead (None where nothing can). ``runs_on`` says that the next side
    only goes on working with what was found. ``patterns`` are the ids that the step fits.
    """

    line: int
    column: int
    left: Expression
    right: Expression
    would_be: Expression | None
    runs_on: bool
    patterns: tuple[str, ...]


class Checked(Struct, frozen=True):
    """A chain with its false equals signs in order; ``separate`` is the same work, one operation a line.

    ``separate`` is empty unless an equals sign runs on.
    """

    chain: Chain
    false: tuple[FalseSign, ...]
    separate: tuple[tuple[Expression, ...], ...]

    @property
    def true(self) -> bool:
        """Say whether every equals sign is true."""
        return not self.false

    @property
    def first_false(self) -> FalseSign | None:
        """Return the first false equals sign, or None when all are true."""
        return self.false[0] if self.false else None


def check(text: str, problem: Statement | None = None) -> tuple[Checked, ...]:
    """Check every equals sign of one or more chains.

    ``problem`` is what the chains work on; without it that is what stands first in each chain. A step fits a
    pattern when it is a line of the pattern's working from its false line on; where none is, the pattern that
    ends with the same answer fits; none does when the last side answers the problem. Raises ReadingError
    with line and column for text that is no equality.

    >>> checked = check("9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 7/8")[0]
    >>> checked.first_false.column, checked.first_false.patterns
    (17, ('A02',))
    >>> check("7 2/6 - 3 5/6 = 6 8/6 - 3 5/6 = 3 3/6")[0].true
    True
    """
    return tuple(_checked(chain, problem) for chain in read_chains(text))


def _checked(chain: Chain, problem: Statement | None) -> Checked:
    signs = [at for at in range(len(chain.links) - 1) if not chain.true_at(at)]
    asked = problem or _asked(chain)
    slips = _slips(asked) if signs and not _ends_well(chain, asked) else ()
    false = tuple(_false_sign(chain, at, slips if at == signs[0] else ()) for at in signs)
    return Checked(chain, false, _separate(chain))


def _asked(chain: Chain) -> Statement | None:
    """Return the first side as a problem; a number alone asks nothing."""
    first = chain.links[0].says
    return None if isinstance(first, Quantity) or value(first) < 0 else Question(first)


def _ends_well(chain: Chain, problem: Statement | None) -> bool:
    """Say whether the last side answers the problem: then what is wrong is how it is written down."""
    last = chain.links[-1].says
    return (
        isinstance(problem, Question)
        and kind(last) is kind(problem.asked)
        and value(last) == value(problem.asked)
    )


def _slips(problem: Statement | None) -> tuple[Slip, ...]:
    return tuple(slip for slip in shows(problem) if not slip.form) if problem else ()


def _false_sign(chain: Chain, at: int, slips: tuple[Slip, ...]) -> FalseSign:
    before, after = chain.links[at], chain.links[at + 1]
    runs_on = chain.runs_on(at)
    would_be = _so_far(after.says) if runs_on else mended(before.says, after.says)
    patterns = () if runs_on else _fits(chain, at, slips)
    return FalseSign(after.line, after.column, before.says, after.says, would_be, runs_on, patterns)


def _so_far(running_on: Expression) -> Expression:
    """Return the amount just found, with which a side that runs on begins."""
    return running_on.terms[0].part if isinstance(running_on, Sum) else running_on


def _fits(chain: Chain, at: int, slips: tuple[Slip, ...]) -> tuple[str, ...]:
    step = alike_line(chain.links[at + 1].says)
    by_step = tuple(slip.pattern for slip in slips if step in false_lines(slip))
    return by_step or _by_answer(chain.links[-1].says, slips)


def false_lines(slip: Slip) -> set[object]:
    """Return the lines of a pattern from its false line on, the answer and its other writings included.

    They are keys in the form of :func:`onewhole.marking.reading.writing.alike_line`.
    """
    lines = slip.lines[slip.false_at :]
    says = [line.says for line in lines if isinstance(line.says, Expression)]
    return {*map(alike_line, says), *(alike(outcome) for outcome in slip.outcomes)}


def _by_answer(last: Expression, slips: tuple[Slip, ...]) -> tuple[str, ...]:
    if not isinstance(last, Quantity):
        return ()
    for key in (alike, amount):
        wanted = key(last)
        found = tuple(slip.pattern for slip in slips if wanted in {key(outcome) for outcome in slip.outcomes})
        if found:
            return found
    return ()


def _separate(chain: Chain) -> tuple[tuple[Expression, ...], ...]:
    """Rewrite a chain that runs on with one line for each operation; empty when nothing runs on."""
    acts: list[list[Expression]] = [[chain.links[0].says]]
    for at, link in enumerate(chain.links[1:]):
        if not chain.true_at(at) and chain.runs_on(at):
            acts[-1].append(_so_far(link.says))
            acts.append([])
        acts[-1].append(link.says)
    return tuple(map(tuple, acts)) if len(acts) > 1 else ()
