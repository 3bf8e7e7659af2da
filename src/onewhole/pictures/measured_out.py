"""Jumps along a line for a quotient: how many groups there are, measured out from 0 on.

Source: 5.NF.B.7.b (a whole number by a unit fraction) and 4.NBT.B.6 (multiplication and division), CCSSM
(2010); that easy numbers of groups are jumped at once is common practice, no source.
"""

from itertools import accumulate, pairwise

from onewhole.number.ladder import joined
from onewhole.pictures.jump import Jump, JumpPlan
from onewhole.statements.expression import WithRemainder
from onewhole.working.quotients.known_quotient import KNOWN_QUOTIENT
from onewhole.working.quotients.measure_out import MEASURE_OUT
from onewhole.working.quotients.partial_quotients import PARTIAL_QUOTIENTS
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.reasons.dividing import GroupsTaken
from onewhole.working.working import Working

#: Ways to divide in which groups are counted.
MEASURING = frozenset({MEASURE_OUT.key, PARTIAL_QUOTIENTS.key, KNOWN_QUOTIENT.key})
#: More equal jumps are not counted by looking, and of more than a few only the first says how long it is.
MOST_GROUPS, MOST_LENGTHS = 24, 8
#: A shorter jump, as a part of the line, is not seen.
SHORTEST = 200


def measured_out(working: Working, asked: QuotientState) -> JumpPlan | None:
    """Return a jump for each group, or for each easy number of groups; None where they cannot be counted.

    What is left, or a part of a group, is no jump: it is seen behind the last one.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.quotients.measure_out import MEASURE_OUT
    >>> from onewhole.working.quotients.work_quotient import divided
    >>> from onewhole.working.work import work
    >>> found = work(read_statement("2 / 1/3"), MEASURE_OUT)
    >>> len(measured_out(found, divided(found.statement.asked)).jumps)
    6
    """
    if working.strategy not in MEASURING or not asked.left.parts:
        return None
    ladder = joined(asked.left.ladder, asked.right.ladder)
    have, group = asked.left.on(ladder).parts, asked.right.on(ladder).parts
    if working.strategy == PARTIAL_QUOTIENTS.key:
        taken = [line.because.taken if isinstance(line.because, GroupsTaken) else 0 for line in working.lines]
        drawn = tuple(accumulate([int(one > 0) for one in taken]))
    else:
        taken = [group] * (have // group)
        drawn = (0, *[len(taken)] * (len(working.lines) - 1))
    ends = list(accumulate([one for one in taken if one], initial=0))
    jumps = tuple([Jump(start, end) for start, end in pairwise(ends)])
    if (
        not 1 <= len(jumps) <= MOST_GROUPS
        or min(end - start for start, end in pairwise(ends)) * SHORTEST < have
    ):
        return None
    given = (0, have) if isinstance(working.answer, WithRemainder) or ends[-1] != have else (0,)
    return JumpPlan(ladder, given, jumps, drawn, None, 1 if len(jumps) > MOST_LENGTHS else None)
