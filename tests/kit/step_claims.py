"""What a sentence about several steps claims; what it says of one step is a claim about that step alone."""

from collections.abc import Callable, Iterator

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression, InBrackets, Over, Quotient, Sum, Times, WithRemainder
from onewhole.statements.statement import Question
from onewhole.walkthroughs.lesson import Item
from onewhole.working.form import FormWanted, led_to
from onewhole.working.questions import work_as_taught
from onewhole.working.quotients.remainder_shared import RemainderForm
from onewhole.working.reasons.stepping import StepBegins
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from tests.kit.heard import Heard, equal_sides, sides
from tests.kit.spoken_reading import unsay, unsay_expression

Reads = Callable[[Heard, tuple[str, ...]], bool]

_HEADS = (
    "(?:brackets first|multiply before you add or take away|divide before you add or take away"
    "|from left to right|last of all)"
)


def each_step(heard: Heard) -> Iterator[Heard]:
    """Each step that takes several lines, as a problem of its own."""
    lines = heard.item.working.lines if heard.item.working else ()
    for line in lines:
        if isinstance(line.because, StepBegins):
            asked = Question(line.because.part)
            found = work_as_taught(asked, REGROUP_FIRST)
            shared = led_to(found, FormWanted(remainder=RemainderForm.FRACTION))
            for working in (found, shared):
                yield Heard(Item(heard.item.label, asked, working.answer, working), heard.words, heard.labels)


def _parts(says: Expression) -> Iterator[Expression]:
    """An expression, every part of it, and the beginning of every sum."""
    yield says
    match says:
        case Sum(terms):
            for term in terms:
                yield from _parts(term.part)
            yield from (Sum(terms[:end]) for end in range(2, len(terms)))
        case Times(one, other) | Quotient(one, other) | Over(one, other):
            yield from _parts(one)
            yield from _parts(other)
        case InBrackets(inside):
            yield from _parts(inside)
        case Quantity() | WithRemainder():
            return


def _there(heard: Heard, words: str) -> bool:
    """What is worked first stands on a line."""
    wanted = unsay_expression(words)
    return any(wanted == part for says in heard.lines for side in sides(says) for part in _parts(side))


STEP_CLAIMS: dict[str, Reads] = {
    rf"{_HEADS}: ((.+?) equals .+)": lambda heard, groups: (
        equal_sides(groups[0]) and _there(heard, groups[1])
    ),
    rf"{_HEADS}: (.+)": lambda heard, groups: _there(heard, groups[0]),
    r"(.+?)": lambda heard, groups: unsay(groups[0]) == heard.item.statement,
    r"the bar of a fraction divides: (.+)": lambda heard, groups: _there(heard, groups[0]),
    r"instead of the sum, multiply each part by (.+)": lambda heard, groups: (
        heard.amount(groups[0]) in heard.given
    ),
}
