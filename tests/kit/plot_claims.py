"""What a sentence about a line plot claims, checked against its measurements one by one."""

import re
from collections import Counter
from dataclasses import replace as changed
from fractions import Fraction

from msgspec.structs import replace

from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.statement import Question
from tests.kit.heard import COUNTS, Heard, Reads, found_true


def led_to(heard: Heard) -> Heard | None:
    """The problem that a line plot leads to once it is read, with the lines that work it."""
    asked, working = heard.item.statement, heard.item.working
    if not isinstance(asked, PlotQuestion) or working is None:
        return None
    question = Question(asked.leads_to)
    lines = working.lines[1:]
    return changed(
        heard,
        item=replace(
            heard.item, statement=question, working=replace(working, statement=question, lines=lines)
        ),
    )


def _asked(heard: Heard) -> PlotQuestion:
    asked = heard.item.statement
    assert isinstance(asked, PlotQuestion)
    return asked


def _tally(heard: Heard) -> Counter[Fraction]:
    return Counter({value.value: count for value, count in _asked(heard).plot.marks})


def _above(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _tally(heard)[heard.amount(groups[0])] == COUNTS[groups[1]]


def _counts(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The counts that are told one after another are those of neighboring stacks."""
    told = [COUNTS[one] for one in re.split(r", | and ", groups[0])]
    there = [count for _, count in sorted(_tally(heard).items()) if count]
    return any(there[at : at + len(told)] == told for at in range(len(there)))


def _highest(heard: Heard, groups: tuple[str, ...]) -> bool:
    return max(_tally(heard).values()) == COUNTS[groups[0]]


def _most(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _tally(heard).most_common(1)[0][0] == heard.amount(groups[0])


def _greatest(heard: Heard, groups: tuple[str, ...]) -> bool:
    return max(_tally(heard).elements()) == heard.amount(groups[0])


def _least(heard: Heard, groups: tuple[str, ...]) -> bool:
    return min(_tally(heard).elements()) == heard.amount(groups[0])


def _spread(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _greatest(heard, groups[:1]) and _least(heard, groups[1:])


def _sum(heard: Heard, said: str) -> Fraction:
    """What amounts come to that are added, each so many times."""
    told = [one.rsplit(" times ", 1) for one in said.split(" plus ")]
    return sum((heard.amount(one[-1]) * (COUNTS[one[0]] if len(one) > 1 else 1) for one in told), Fraction(0))


def _added(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Amounts that come to all the measurements that are meant."""
    among = _asked(heard).among
    meant = sum(one for one in _tally(heard).elements() if among is None or among.holds(one))
    return _sum(heard, groups[0]) == meant


def _step(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A step of the total: what is added comes to what is said, and that stands on a line."""
    found = heard.amount(groups[1])
    return _sum(heard, groups[0]) == found and heard.stands(found)


def _shared(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The total of all the measurements, and how many they are."""
    tally = _tally(heard)
    return sum(tally.elements()) == heard.amount(groups[0]) and tally.total() == COUNTS[groups[1]]


def _beside(heard: Heard, groups: tuple[str, ...]) -> bool:
    among = _asked(heard).among
    return among is not None and heard.amount(groups[0]) == among.value.value


def _answer(heard: Heard, groups: tuple[str, ...]) -> bool:
    answer = heard.item.answer
    return getattr(answer, "value", None) == heard.amount(groups[0])


PLOT_CLAIMS: dict[str, Reads] = {
    r"above (.+) (?:is|are) ([a-z]+) marks?": _above,
    r"from left to right the stacks have (.+) marks": _counts,
    r"there are ([a-z]+) marks, so share the total equally": lambda heard, groups: (
        _tally(heard).total() == COUNTS[groups[0]]
    ),
    r"the highest stack has ([a-z]+) marks?": _highest,
    r"the value below it is (.+)": _most,
    r"the greatest value with a mark is (.+)": _greatest,
    r"the least is (.+)": _least,
    r"that is (.+) minus (.+)": _spread,
    r"that is (.+ plus .+)": _added,
    r"(?:last of all|brackets first|from left to right): (.+ plus .+) equals (.+)": _step,
    r"that is (.+) divided by ([a-z]+)": _shared,
    r"find how many are (?:more than |less than |at least |at most )?(.+)": _beside,
    r"find the total of those that are (?:more than |less than |at least |at most )?(.+)": _beside,
    r"(?:so|in number .+?,)? ?the answer is (.+)": _answer,
}


def of_plot(said: str, heard: Heard) -> str | None:
    """The pattern that reads what is said of the plot itself and finds it true."""
    return found_true(PLOT_CLAIMS, said, heard)
