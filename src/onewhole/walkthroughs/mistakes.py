"""A likely mistake shown and mended: written, struck out, and why it is not so."""

from itertools import pairwise

from msgspec import Struct

from onewhole.languages.language import Language
from onewhole.languages.table import spoken_by
from onewhole.misconceptions.slip import Slip
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.sentences.sentence import Sentences
from onewhole.statements.expression import Expression, Sum
from onewhole.statements.statement import AnotherName, Comparison, MissingNumber, Question, Relation
from onewhole.statements.writable import Writable
from onewhole.walkthroughs.cue import Cue, Role, Strike, Write
from onewhole.walkthroughs.lesson import Item
from onewhole.walkthroughs.manner import Manner
from onewhole.walkthroughs.memory import Memory, fits
from onewhole.walkthroughs.phrases import plain, reason_said
from onewhole.working.line import LineContent

_NAME = "mistake"


def mistake_cues(item: Item, manner: Manner, memory: Memory) -> list[Cue]:
    """Show the false line of a slip, strike it out and say what is so instead.

    A slip of form is no false line: it is said to be the same amount, and nothing is struck out.
    """
    if item.mistake is None:
        return []
    slip = item.mistake
    if slip.form and isinstance(slip.wrote, Quantity):
        return [_same_amount(item, slip.wrote, memory, spoken_by(manner.words))]
    content, instead = _false(item, slip, manner)
    leads = isinstance(item.statement, Question | AnotherName)
    says = memory.pick(manner.at, *spoken_by(manner.words).mistake.may_be_written(content))
    shown = Cue(Role.MISTAKE, says, (Write(_NAME, content, leads=leads),))
    but, so = (memory.tell(one, always=True) for one in (instead.but, instead.so))
    why = memory.tell(instead.why)
    mended = but + why + so
    return [shown, Cue(Role.MISTAKE, mended, (Strike(_NAME),))]


def _same_amount(item: Item, wrote: Quantity, memory: Memory, language: Language) -> Cue:
    assert isinstance(item.answer, Quantity)
    says = memory.tell(language.mistake.still_the_same(wrote, item.answer))
    return Cue(Role.MISTAKE, says, (Write(_NAME, wrote, leads=True),))


class _Instead(Struct, frozen=True):
    """What is said of a false line: that it is not so, why, and what is so."""

    but: Sentences
    why: Sentences
    so: Sentences


def _false(item: Item, slip: Slip, manner: Manner) -> tuple[Writable, _Instead]:
    """Return what is written wrongly, and the sentences that say why not and what is so."""
    language = spoken_by(manner.words)
    told = language.mistake
    so = told.truth(language.lines.outcome(item.statement, item.answer))
    if not fits(so) and isinstance(item.answer, Quantity):
        so = told.answer_is(item.answer)
    match item.statement, slip.wrote:
        case _, Impossible() as wrote:
            return wrote, _Instead(told.no_pieces(manner.words), (), so)
        case Comparison(left, right), Relation() as sign:
            wrong = Comparison(left, right, sign)
            return wrong, _Instead(told.not_so(wrong), (), so)
        case MissingNumber(), Quantity() as wrote:
            return wrote, _Instead(told.does_not_fit(wrote), (), so)
        case _:
            return _false_line(item, slip, manner, so)


def _reason(item: Item, slip: Slip, manner: Manner) -> Sentences:
    """Say why the right line follows where the false one was written, if the working comes by that line."""
    if item.working is None or not slip.false_at:
        return ()
    last_true = slip.lines[slip.false_at - 1].says
    lines = item.working.lines
    after = next((line for before, line in pairwise(lines) if before.says == last_true), None)
    return reason_said(after, manner.words) if after else ()


def _false_line(item: Item, slip: Slip, manner: Manner, so: Sentences) -> tuple[Writable, _Instead]:
    """Show the false line itself where the ear can follow it, and else the answer it leads to."""
    language, why = spoken_by(manner.words), _reason(item, slip, manner)
    at = slip.false_at or len(slip.lines) - 1
    before, wrong = (slip.lines[number].says for number in (at - 1, at))
    changed = _changed(before, wrong)
    if changed is None:
        return slip.wrote, _Instead(language.mistake.not_the_answer(slip.wrote), why, so)
    was, became = changed
    but = language.mistake.not_equal(was, became)
    return wrong, _Instead(but, why + _right_line(item, language), so)


def _changed(before: LineContent, wrong: LineContent) -> tuple[Expression, Expression] | None:
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


def _right_line(item: Item, language: Language) -> Sentences:
    """Say the line that should stand there: the first that a pupil writes, where there is one to say."""
    lines = item.working.brief()[1:-1] if item.working else ()
    if not lines or not plain(lines[0].says):
        return ()
    return language.mistake.right_line(lines[0].says)
