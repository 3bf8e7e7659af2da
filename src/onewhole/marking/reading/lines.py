"""The lines that a pupil wrote, typed into a cell: the first false one says more than the answer."""

from onewhole.marking.reading.checking import false_lines
from onewhole.marking.reading.expected import Expected, Ids
from onewhole.marking.reading.writing import alike_line
from onewhole.misconceptions.attempt import answer_claim
from onewhole.statements.chain import Chain, Link
from onewhole.statements.expression import value
from onewhole.statements.statement import Question


def line_patterns(asked: Expected, chain: Chain) -> Ids:
    """Return the patterns whose false line is the first false one of a pupil's working.

    The working is of a sum or a difference and need not begin with the problem; where it begins with another
    amount, that may be work on a part of it: only patterns with its answer count. Empty where all is true,
    where the first false side is the last one (then the answer says it all), and where the equals sign only
    runs on.

    >>> from onewhole.marking.reading.expected import expect
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_chains, read_statement
    >>> asked = expect(Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8"))
    >>> line_patterns(asked, read_chains("9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 6/8")[0])
    ('A02',)
    """
    statement = asked.problem.statement
    if not isinstance(statement, Question):
        return ()
    links = chain.links
    if alike_line(links[0].says) != alike_line(statement.asked):
        links = (Link(statement.asked, 1, 1), *links)
    whole = Chain(links)
    at = whole.first_false()
    if at is None or at + 2 == len(links) or whole.runs_on(at):
        return ()
    step = alike_line(links[at + 1].says)
    fitting = [slip for slip in asked.ideas if step in false_lines(slip)]
    if links != chain.links and at == 0:
        last = value(links[-1].says)
        fitting = [
            slip for slip in fitting if any(answer_claim(outcome) == last for outcome in slip.outcomes)
        ]
    return tuple(slip.pattern for slip in fitting)
