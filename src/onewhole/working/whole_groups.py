"""Working what is asked of a division in groups: the division first, and then what is asked of it.

Source: 4.OA.A.3 (remainders are interpreted), with the divisions of 4.NBT.B.6 and 5.NBT.B.6, CCSSM (2010).
"""

from msgspec.structs import replace

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import WithRemainder
from onewhole.statements.statement import Question
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.line import Line
from onewhole.working.quotients.known_quotient import KNOWN_QUOTIENT
from onewhole.working.quotients.long_division import LONG_DIVISION
from onewhole.working.quotients.partial_quotients import PARTIAL_QUOTIENTS
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.quotient_way import QuotientWay
from onewhole.working.quotients.work_quotient import work_quotient
from onewhole.working.reasons.dividing import GroupsAnswered, GroupsOf
from onewhole.working.way import NamedWay
from onewhole.working.working import Working

#: Ways that take groups out. Sharing out unit by unit tells what each of so many gets, and no group.
GROUP_WAYS = (KNOWN_QUOTIENT, PARTIAL_QUOTIENTS, LONG_DIVISION)


def ways_of_groups(asked: WholeGroups) -> tuple[QuotientWay, ...]:
    """Return the ways that suit a division in groups, the first one first.

    >>> from onewhole.statements.reading import read_statement
    >>> [way.key for way in ways_of_groups(read_statement("50 / 8, groups needed"))]
    ['partial_quotients', 'long_division']
    """
    state = QuotientState(asked.number, asked.by)
    return tuple([way for way in GROUP_WAYS if way.unsuited(state) is None])


def work_groups(asked: WholeGroups, taught: NamedWay) -> Working:
    """Divide by the taught way where it takes groups out, and end with what is asked.

    >>> from onewhole.statements.reading import read_statement
    >>> [line.says for line in work_groups(read_statement("50 / 8; up"), LONG_DIVISION).lines][-1].gives.parts
    7
    """
    ways = ways_of_groups(asked)
    way = next((one for one in ways if one == taught), ways[0])
    state = QuotientState(asked.number, asked.by)
    divided = work_quotient(Question(asked.about), state, way, checked=True)
    last = Line(asked.answered(asked.found), GroupsAnswered(asked.asks, asked.full, asked.left))
    first = Line(asked.about, GroupsOf(asked.number.parts, asked.by.parts))
    lines = (Line(asked), first, *divided.lines[1:], last)
    return Working(way.key, asked, lines, asked.found, divided.checks)


def divided_in_groups(working: Working) -> Working:
    """Return the division inside a working that asks for groups: neither its first line nor its last.

    Any other working is returned as it is.

    >>> from onewhole.statements.reading import read_statement
    >>> len(divided_in_groups(work_groups(read_statement("50 / 8; up"), LONG_DIVISION)).lines)
    3
    """
    asked = working.statement
    if not isinstance(asked, WholeGroups):
        return working
    about = asked.about
    found = working.lines[-2].says
    assert isinstance(found, Quantity | WithRemainder), "a division ends with what it comes to"
    lines = (Line(about), *working.lines[2:-1])
    return replace(working, statement=Question(about), lines=lines, answer=found)
