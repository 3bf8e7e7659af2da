"""A likely mistake shown and mended: written, struck out, and why it is not so."""

from itertools import pairwise

from onewhole.misconceptions.slip import Slip
from onewhole.notations.text import text
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression, Sum
from onewhole.statements.statement import Comparison, MissingNumber, Question, Relation
from onewhole.statements.writable import Writable
from onewhole.walkthroughs.cue import Cue, Role, Strike, Write
from onewhole.walkthroughs.lesson import Item
from onewhole.walkthroughs.manner import Manner
from onewhole.walkthroughs.memory import Memory, fits
from onewhole.walkthroughs.phrases import NOT_SO, outcome, plain, reason_said
from onewhole.working.line import Says

_NAME = "mistake"


def mistake_cues(item: Item, manner: Manner, memory: Memory) -> list[Cue]:
    """Show the false line of a slip, strike it out and say what is so instead.

    A slip of form is no false line: it is said to be the same amount, and nothing is struck out.
    """
    if item.mistake is None:
        return []
    slip = item.mistake
    if slip.form and isinstance(slip.wrote, Quantity):
        return [_same_amount(item, slip.wrote, memory)]
    content, instead = _false(item, slip, manner)
    leads = isinstance(item.statement, Question)
    says = memory.pick(
        manner.at, f"Someone may write {text(content)}.", f"A friend may write {text(content)}."
    )
    shown = Cue(Role.MISTAKE, says, (Write(_NAME, content, leads=leads),))
    but, *why, so = instead
    mended = memory.tell(but, always=True) + memory.tell(*why) + memory.tell(so, always=True)
    return [shown, Cue(Role.MISTAKE, mended, (Strike(_NAME),))]


def _same_amount(item: Item, wrote: Quantity, memory: Memory) -> Cue:
    assert isinstance(item.answer, Quantity)
    says = memory.tell(
        f"Someone may write {text(wrote)}.",
        f"{text(wrote)} is the same amount as {text(item.answer)}.",
        "It can still be written the usual way.",
    )
    return Cue(Role.MISTAKE, says, (Write(_NAME, wrote, leads=True),))


def _false(item: Item, slip: Slip, manner: Manner) -> tuple[Writable, tuple[str, ...]]:
    """Return what is written wrongly, and the sentences that say why not and what is so."""
    truth = f"{outcome(item)}."
    so = truth[:1].upper() + truth[1:]
    if not fits(so) and isinstance(item.answer, Quantity):
        so = f"The answer is {text(item.answer)}."
    match item.statement, slip.wrote:
        case _, Impossible() as wrote:
            return wrote, (f"But one {manner.words.whole} cannot be cut into 0 pieces.", so)
        case Comparison(left, right), Relation() as sign:
            wrong = Comparison(left, right, sign)
            return wrong, (f"But {text(left)} {NOT_SO[sign]} {text(right)}.", so)
        case MissingNumber(), Quantity() as wrote:
            return wrote, (f"But {text(wrote)} does not fit the blank.", so)
        case _:
            return _false_line(item, slip, (*_reason(item, slip, manner), so))


def _reason(item: Item, slip: Slip, manner: Manner) -> tuple[str, ...]:
    """Say why the right line follows where the false one was written, if the working comes by that line."""
    if item.working is None or not slip.false_at:
        return ()
    last_true = slip.lines[slip.false_at - 1].says
    lines = item.working.lines
    after = [line for before, line in pairwise(lines) if before.says == last_true]
    return tuple(reason_said(line, manner.words) for line in after[:1])


def _false_line(item: Item, slip: Slip, so: tuple[str, ...]) -> tuple[Writable, tuple[str, ...]]:
    """Show the false line itself where the ear can follow it, and else the answer it leads to."""
    at = slip.false_at or len(slip.lines) - 1
    before, wrong = (slip.lines[number].says for number in (at - 1, at))
    changed = _changed(before, wrong)
    if changed is None:
        return slip.wrote, (f"But the answer is not {text(slip.wrote)}.", *so)
    was, became = changed
    return wrong, (f"But {text(was)} is not equal to {text(became)}.", *so[:-1], *_right_line(item), so[-1])


def _changed(before: Says, wrong: Says) -> tuple[Expression, Expression] | None:
    """Return the one part of a sum that was changed wrongly, before and after, or None."""
    if not isinstance(before, Sum) or not isinstance(wrong, Sum) or not (plain(before) and plain(wrong)):
        return None
    if len(before.terms) != len(wrong.terms):
        return None
    pairs = [pair for pair in zip(before.terms, wrong.terms, strict=True) if pair[0] != pair[1]]
    if len(pairs) != 1 or pairs[0][0].taken != pairs[0][1].taken:
        return None
    was, became = pairs[0]
    return was.part, became.part


def _right_line(item: Item) -> tuple[str, ...]:
    """Say the line that should stand there: the first that a pupil writes, where there is one to say."""
    lines = item.working.brief()[1:-1] if item.working else ()
    return tuple(f"The right line is {text(line.says)}." for line in lines[:1] if plain(line.says))
