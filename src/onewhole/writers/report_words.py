"""What is told about one pupil, in sentences for the teacher: answers fit and may, never a label.

Odds, and the ids of patterns, are told apart from the rest (:func:`known`): a page shows them on demand.
"""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import assert_never

from onewhole.findings.in_answer import Remark, Tier
from onewhole.findings.status import Status
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.in_answer import remark_told
from onewhole.languages.english.nights_told import held_told, withdrawn_told
from onewhole.languages.english.placing import idea_called
from onewhole.languages.english.simple_rule import simple_rule_told
from onewhole.languages.english.words import names_listed
from onewhole.marking.diagnosis.diagnosis import Patterns
from onewhole.marking.diagnosis.evidence import Speaks
from onewhole.marking.diagnosis.finding import POSSIBLE_FROM
from onewhole.marking.diagnosis.report import Report, ReportRow
from onewhole.marking.grouping.placement import are_few
from onewhole.marking.reading.mark import Verdict
from onewhole.marking.reading.talk_word import TalkSaid, TalkWord
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import printed
from onewhole.problems.problem import Problem
from onewhole.writers.pattern_words import question

HUNDRED = 100
LIKELIER = Fraction(1, 2)
_WORDS = {TalkSaid.SLIP: "it was a slip", TalkSaid.THIS: "this idea", TalkSaid.OTHER: "another idea"}
_UNSAID = {
    Verdict.BLANK: "nothing written",
    Verdict.UNREADABLE: "not readable",
}


def in_words(odds: Fraction) -> str:
    """Return odds in words, rounded to hundredths; never as certain.

    >>> [in_words(Fraction(*each)) for each in ((999, 1000), (2, 3), (1, 1000))]
    ['more than 99 in 100', 'about 67 in 100', 'less than 1 in 100']
    """
    if odds * HUNDRED > HUNDRED - 1:
        return "more than 99 in 100"
    if odds * HUNDRED < 1:
        return "less than 1 in 100"
    return f"about {round(odds * HUNDRED)} in 100"


def idea(key: str) -> str:
    """Return a pattern as the teacher is told it.

    >>> idea("A06")
    '“opens a whole and drops the pieces already there”'
    """
    return f"“{idea_called(key)}”"


def ideas(patterns: Patterns) -> str:
    """Return a set of patterns as the teacher is told it."""
    return " together with ".join(map(idea, patterns))


def found(report: Report) -> tuple[str, ...]:
    """Return what the answers of a pupil may show, one sentence after another."""
    return tuple(_found(report))


def _found(report: Report) -> Iterator[str]:
    status = report.finding.status
    if not report.answered:
        yield "No answer could be read, so nothing can be said."
        return
    match status:
        case Status.LIKELY:
            yield _fit(report, "Answers fit")
        case Status.POSSIBLE:
            labels = report.finding.evidence
            yield _fit(
                report, f"{'Answers' if len(labels) > 1 else 'The answer'} to {names_listed(labels)} may fit"
            )
            yield "One more answer would tell: talk with the child."
        case Status.UNSTEADY if len(report.finding.wrong) == 1 and report.talk is None:
            yield "One answer is wrong, too little to tell an idea from a slip: ask the child about it."
        case Status.UNSTEADY:
            yield (
                "No steady pattern: talk with the child."
                if report.none >= LIKELIER
                else "No single idea explains the wrong answers: talk with the child."
            )
        case Status.UNLISTED:
            yield "Steady, and not one of ours: ask the child to show it."
            if report.rule:
                yield text_of(simple_rule_told(report.rule))
        case Status.NONE:
            yield _slips(report)
        case _:
            assert_never(status)
    if report.held_since and (since := held_told(report.held_since)):
        yield text_of(since)


def _slips(report: Report) -> str:
    many = len(report.finding.wrong)
    if not many:
        return "No wrong answer was read."
    if are_few(many, sum(row.mark.verdict is not Verdict.BLANK for row in report.rows)):
        return "What is wrong may be slips."
    return f"{many} answers are one step beside right, more than slips would be: ask the child to show one."


def _fit(report: Report, begins: str) -> str:
    if len(report.sets) == 1:
        return f"{begins} {ideas(report.sets[0])}."
    shared = tuple(key for key in report.sets[0] if all(key in patterns for patterns in report.sets))
    others = (tuple(key for key in patterns if key not in shared) for patterns in report.sets)
    first = f"{ideas(shared)} together with " if shared else ""
    return f"{begins} {first}{' or '.join(map(ideas, others))}; they do not tell these apart."


def known(report: Report) -> tuple[str, ...]:
    """Return how it is known: the odds, and what each idea is called in the list of patterns."""
    return tuple(_known(report))


def _known(report: Report) -> Iterator[str]:
    if not report.answered:
        return
    if report.sets:
        yield f"The odds that this is a steady idea: {in_words(report.odds)}."
    for one in report.others:
        yield f"The odds of {ideas(one.patterns)}: {in_words(one.probability)}."
    if report.finding.status is Status.UNLISTED or report.unlisted >= POSSIBLE_FROM:
        yield f"The odds of a steady idea that no pattern describes: {in_words(report.unlisted)}."
    if report.sets or len(report.finding.wrong) != 1 or report.talk is not None:
        yield f"The odds that there is no steady pattern: {in_words(report.none)}."
    if moved := odds_moved(report):
        yield moved
    sets = (*report.sets, *(one.patterns for one in report.others))
    keys = dict.fromkeys(key for patterns in sets for key in patterns)
    if keys:
        yield f"In the list of patterns: {'; '.join(f'{key} {idea(key)}' for key in keys)}."


def odds_moved(report: Report) -> str:
    """Return what a talk changed in the odds; nothing where there was none."""
    if report.talk is None:
        return ""
    talk = report.talk
    moved = [(ideas(one.patterns) or "no steady pattern", one) for one in talk.moved]
    if talk.unlisted_told:
        moved.append(("a steady idea that no pattern describes", talk.unlisted))
    told = (f"{name} {in_words(one.before)} before, {in_words(one.after)} with it" for name, one in moved)
    return f"What the talk changed in the odds: {'; '.join(told)}."


def beside(report: Report) -> tuple[str, ...]:
    """Return what speaks against, what else stays possible, and what earlier nights showed."""
    return tuple(_beside(report))


def _beside(report: Report) -> Iterator[str]:
    if report.sets and (
        against := [row.mark.label for row in report.rows if row.beside.speaks is Speaks.AGAINST]
    ):
        yield f"Against it: {names_listed(against)}."
    if report.others:
        yield f"Also possible: {'; '.join(ideas(one.patterns) for one in report.others)}."
    if report.finding.status is not Status.UNLISTED and report.unlisted >= POSSIBLE_FROM:
        yield "Or a steady idea that is not one of ours."
    for night, kept in report.earlier:
        named = names_listed([idea(key) for key in kept.patterns])
        yield f"On {night.on} answers to “{night.page}” fitted {named}; that is good until {night.until}."
    for patterns, since in report.withdrawn:
        yield text_of(withdrawn_told(" or ".join(map(idea, patterns)), since))


def talked(report: Report) -> tuple[str, ...]:
    """Return what was asked in a talk and said then, and the teacher's word."""
    return tuple(_talked(report)) if report.talk else ()


def _talked(report: Report) -> Iterator[str]:
    talk = report.talk
    if talk is None:
        return
    for row in talk.rows:
        wrote = " ".join(row.mark.written.text.split())
        yield f"Asked {problem_told(row.problem)}: wrote {wrote}; {says(row, report)}."
    if talk.word:
        yield f"Your word on the talk: {word_told(talk.word)}. It counts, but not as certain."


def word_told(word: TalkWord) -> str:
    """Return the teacher's word on a talk as it is told.

    >>> word_told(TalkWord(TalkSaid.THIS, ("A01", "A02")))
    'this idea (“takes the smaller number of pieces from the larger” or “opens a whole and still counts it”)'
    """
    about = f" ({' or '.join(map(idea, word.about))})" if word.about else ""
    return f"{_WORDS[word.said]}{about}"


def problem_told(problem: Problem) -> str:
    """Return a problem for a line of words: its story where it is told, else what it asks in numbers."""
    return f"“{problem.story}”" if problem.story else printed(problem.statement)


def asked_of(report: Report, words: ClassWords) -> tuple[str, ...]:
    """Return what to ask about each pattern found, each once, on a problem that the child answered."""
    keys = dict.fromkeys(key for patterns in report.sets for key in patterns)
    problems = [row.problem for row in report.rows]
    fits = {one.pattern: one.evidence for one in report.finding.fittings}
    asked = ((key, question(by_id(key), problems, words, fits.get(key, ()))) for key in keys)
    return tuple(f"{idea(key)}, {said}" if len(keys) > 1 else said for key, said in asked)


def asked_of_child(report: Report, words: ClassWords) -> tuple[str, ...]:
    """Return what to ask about each pattern found, in sentences."""
    return tuple(f"Ask the child, {asked}" for asked in asked_of(report, words))


def says(row: ReportRow, report: Report) -> str:
    """Return in a few words what one answer says about the patterns found, or which ones it fits."""
    missing = Remark.LAST_UNIT_MISSING in row.mark.remarks
    beside = f"; {text_of(remark_told(Remark.LAST_UNIT_MISSING))}" if missing else ""
    return f"{_says(row, report)}{beside}"


def _says(row: ReportRow, report: Report) -> str:
    if row.mark.verdict in _UNSAID:
        return _UNSAID[row.mark.verdict]
    if not report.sets:
        return _alone(row)
    match row.beside.speaks:
        case Speaks.FOR:
            if row.mark.tier is Tier.LINE:
                return "its first false line fits"
            return "fits" if row.beside.exact else "fits in amount"
        case Speaks.AGAINST:
            return (
                "right, so it speaks against" if row.mark.verdict is not Verdict.WRONG else "speaks against"
            )
        case Speaks.NEITHER:
            return _neither(row)
        case _:
            assert_never(row.beside.speaks)


def _neither(row: ReportRow) -> str:
    if row.beside.luck:
        return "right by this idea too: says nothing"
    if row.beside.would_write:
        return "one step beside it, perhaps a slip: says nothing"
    return "right; cannot show it" if row.mark.verdict is not Verdict.WRONG else _alone(row)


def _alone(row: ReportRow) -> str:
    """Return what can be said of an answer by itself."""
    if row.mark.verdict is not Verdict.WRONG:
        return "right"
    if Remark.MAY_BE_SLIP in row.mark.remarks:
        return "one step beside right, perhaps a slip"
    if row.mark.patterns and row.mark.tier is not Tier.WITH_SLIP:
        return f"fits {_named(row.mark.patterns)}"
    return "fits nothing known"


def _named(patterns: Sequence[str]) -> str:
    """Name one or two patterns, and of more the first and how many others."""
    first, *others = map(idea, patterns)
    return f"{first} or one of {len(others)} others" if others[1:] else " or ".join((first, *others))
