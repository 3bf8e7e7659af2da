"""One cell judged while it is typed: the verdict by sign and word, the formula, and what it may fit."""

from collections.abc import Iterator
from functools import lru_cache

from msgspec import Struct

from onewhole.desk.classes.class_records import NightPage
from onewhole.desk.keep.pupil_cache import pupil_cache
from onewhole.errors import InputError
from onewhole.findings.in_answer import Remark
from onewhole.languages.english.in_answer import remark_told, tier_told
from onewhole.languages.english.speech import say
from onewhole.marking.reading.answer import Blank, Unreadable, Written, read_written
from onewhole.marking.reading.expected import Expected, expect
from onewhole.marking.reading.mark import Mark, Verdict, mark
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.mathml import mathml
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text as typed
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.writable import Writable
from onewhole.working.form import FormWanted

#: Sign and word of each verdict; the signs differ in shape, so a copier in black keeps them apart.
SIGNS = {
    Verdict.RIGHT: ("✓", "right"),
    Verdict.FORM: ("~", "right amount, another form is wanted"),
    Verdict.WRONG: ("✗", "not right"),
    Verdict.BLANK: ("·", "nothing written"),
    Verdict.UNREADABLE: ("?", "cannot be read"),
}
#: Texts up to this length are judged once and remembered.
REMEMBERED = 200


class Fit(Struct, frozen=True):
    """A pattern that an answer fits: its id and its plain name."""

    id: str
    name: str


class Judged(Struct, frozen=True):
    """One cell judged. ``mathml`` is None for what is blank or cannot be read; ``spoken`` is then the text.

    ``fits`` are patterns: of a wrong answer those that it may come from, of a right one those of its form.

    ``remarks`` are sentences or parts of one, without a full stop at their end.
    """

    text: str
    verdict: Verdict
    sign: str
    word: str
    mathml: str | None
    spoken: str
    fits: tuple[Fit, ...]
    remarks: tuple[str, ...]

    @property
    def said(self) -> str:
        """Return all of it as it is told in a status line."""
        read = f"{self.spoken}: " if self.spoken else ""
        wrong = self.fits if self.verdict is Verdict.WRONG else ()
        fits = " or ".join(f"{fit.name} ({fit.id})" for fit in wrong)
        told = [f"{read}{self.word}", *([f"may fit: {fits}"] if fits else []), *self.remarks]
        return f"{'; '.join(told)}."


def judged(page: NightPage, label: str, text: str) -> Judged:
    """Judge one answer to a problem of a night's page. Raises InputError for a label that is not on the page.

    What the answers are compared with is worked out once a problem; a page asked for again costs nothing.
    """
    judge = _judged if len(text) <= REMEMBERED else _judge
    return judge(asked(page, label), text, page.sheet.header.form)


def asked(page: NightPage, label: str) -> Problem:
    """Return the problem of that label. Raises InputError."""
    for problem in page.sheet.problems:
        if problem.label == label:
            return problem
    raise InputError(
        f"The page has no problem “{label[:20]}”", remedy=f"Choose one of {', '.join(page.labels)}."
    )


@lru_cache(maxsize=256)
def expected(problem: Problem) -> Expected:
    """Return what the answers to a problem are compared with; kept for the problems asked last."""
    return expect(problem)


def usual_right(page: NightPage, label: str) -> str:
    """Return the right answer as it is typed, in a form that the page asks for. Raises InputError."""
    return typed(WorkedProblem(asked(page, label), wanted=page.sheet.header.form).answer)


@pupil_cache(maxsize=4096)
def _judged(problem: Problem, text: str, wanted: FormWanted) -> Judged:
    return _judge(problem, text, wanted)


def _judge(problem: Problem, text: str, wanted: FormWanted) -> Judged:
    marked = mark(expected(problem), read_written(text, problem), wanted)
    sign, word = SIGNS[marked.verdict]
    thing = _thing(marked.written)
    return Judged(
        text,
        marked.verdict,
        sign,
        word,
        None if thing is None else mathml(thing),
        text.strip() if thing is None else say(thing),
        tuple(Fit(key, by_id(key).name) for key in marked.patterns),
        tuple(_remarks(marked)),
    )


def _thing(written: Written) -> Writable | None:
    match written.read:
        case Blank() | Unreadable():
            return None
        case outcome:
            return outcome


def _remarks(marked: Mark) -> Iterator[str]:
    if isinstance(marked.written.read, Unreadable):
        yield marked.written.read.why
    if marked.written.chain is not None:
        yield "a working: the last side is taken as the answer"
    if marked.tier is not None and (close := tier_told(marked.tier)):
        yield text_of(close)
    for remark in marked.remarks:
        if remark is not Remark.MAY_BE_RENAMED:
            yield text_of(remark_told(remark))
        elif marked.verdict is Verdict.RIGHT:
            yield f"{typed(marked.renamed[0])} is the same amount"
        else:
            yield f"{' or '.join(map(typed, marked.renamed))} is the same amount"
