"""Mark the answers of a class and say what they may show."""

from collections import defaultdict
from collections.abc import Callable, Collection, Mapping, Sequence
from fractions import Fraction
from functools import partial
from pathlib import Path

from msgspec import Struct, field

from onewhole.desk.marking.answers_file import answers_in
from onewhole.desk.marking.asked_stories import told_as_asked
from onewhole.desk.page.sheets import sheet_in
from onewhole.desk.tomorrow.seats import known_before, seated
from onewhole.errors import InputError
from onewhole.languages.english.in_answer import status_called
from onewhole.languages.english.placing import OTHERS, idea_called, placed_because
from onewhole.marking.diagnosis.ask_next import ask_next
from onewhole.marking.diagnosis.diagnosis import CONFIDENT, Weighed, weigh
from onewhole.marking.diagnosis.finding import CAUTION, Finding, findings
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.marking.diagnosis.notebook import Tonight
from onewhole.marking.diagnosis.one_night import NightRead, read_night
from onewhole.marking.diagnosis.prior import NOTHING, Learnt
from onewhole.marking.diagnosis.report import talk_report
from onewhole.marking.grouping.group import Group, evidence_of
from onewhole.marking.grouping.group_settings import MEETS, USUAL, GroupSettings, Sizes
from onewhole.marking.grouping.keeping import Seating
from onewhole.marking.reading.answers_table import read_answers
from onewhole.marking.reading.asked import AskedAnswer, asked_line, with_asked
from onewhole.marking.reading.asked_table import AskedRow, about_what, read_asked
from onewhole.marking.reading.class_answers import ClassAnswers
from onewhole.marking.reading.mark import ClassMarks, mark_class
from onewhole.marking.reading.problem_stats import ProblemStats, problem_stats
from onewhole.misconceptions.catalogue import by_id, patterns
from onewhole.notations.sentences.text import text_of
from onewhole.presses.texts import read_text
from onewhole.problems.problem import Problem
from onewhole.sentences.sentence import End
from onewhole.sheets.document import Sheet
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.stories_to_ask import stories_to_ask
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.frame import UNTITLED
from onewhole.writers.group_words import about
from onewhole.writers.marks_json import Json, marks_object
from onewhole.writers.pattern_words import question

__all__ = [
    "CAUTION",
    "MEETS",
    "GroupSettings",
    "Marked",
    "Sizes",
    "as_object",
    "asked_next",
    "asked_of",
    "fitting",
    "mark",
    "mark_files",
    "mark_sheet",
    "shown_changes",
    "shown_finding",
    "shown_ideas",
    "shown_place",
    "shown_reasons",
]

#: Below even odds nothing can be said to fit.
LEAST_CONFIDENT = Fraction(1, 2)


class Marked(Struct, frozen=True):
    """A night's answers read: the marks, what each pupil's answers may show, groups, and each problem.

    ``weighed`` are the odds of every pupil, ``tonight`` the notebook that they rest on, where there is one;
    then ``pupils`` has what the night leaves of each pupil who answered.
    ``seating`` has the groups as they stand and what would change in them by these answers.
    """

    worked: WorkedSheet
    marks: ClassMarks
    findings: tuple[Finding, ...]
    seating: Seating
    items: tuple[ProblemStats, ...]
    weighed: Weighed
    tonight: Tonight | None = None
    pupils: Mapping[str, PupilNight] = field(default_factory=dict)
    settings: GroupSettings = USUAL

    @property
    def groups(self) -> tuple[Group, ...]:
        """Return tomorrow's groups as they stand."""
        return self.seating.groups

    @property
    def sheet(self) -> Sheet:
        """Return the sheet that was set."""
        return self.worked.sheet


def mark(
    sheet: str,
    answers: str,
    *,
    settings: GroupSettings = USUAL,
    confident: Fraction = CONFIDENT,
    tonight: Tonight | None = None,
    asked: str | None = None,
) -> Marked:
    r"""Mark typed answers (CSV text) against a typed sheet.

    ``settings`` is how many groups the teacher can meet and their sizes, ``confident`` the odds from which
    answers are said to fit. ``tonight`` is the notebook of the class and the day; `notebooks.and_tonight`
    writes this night into it. Groups that it has of this night already are kept. ``asked`` is typed CSV too:
    what pupils were asked in a talk and then said (:func:`~onewhole.marking.reading.asked_table.read_asked`).
    Raises SheetError and AnswersError with every mistake and its place, InputError for settings that cannot
    be.

    >>> marked = mark("1. 9 5/8 - 4 6/8", "pupil,1\nK01,5 1/8\nK02,4 7/8")
    >>> [finding.status.value for finding in marked.findings]
    ['possible', 'none']
    """
    worked = WorkedSheet(read_sheet(sheet))
    read = read_answers(answers, worked.sheet.problems)
    rows = asked_of_class(asked, read) if asked else ()
    return mark_sheet(worked, read, settings=settings, confident=confident, tonight=tonight, asked=rows)


def mark_files(
    sheet: Path,
    answers: Path,
    *,
    settings: GroupSettings = USUAL,
    confident: Fraction = CONFIDENT,
    tonight: Tonight | None = None,
    asked: Path | None = None,
    elsewhere: Learnt = NOTHING,
) -> Marked:
    """Mark a file of answers against the sheet in a file; ``asked`` is a file of what pupils were asked.

    ``elsewhere`` is what a district learnt of other classes.
    """
    worked = WorkedSheet(sheet_in(sheet))
    read = answers_in(answers, worked.sheet.problems)
    rows = asked_of_class(read_text(asked), read, str(asked)) if asked else ()
    return mark_sheet(
        worked,
        read,
        settings=settings,
        confident=confident,
        tonight=tonight,
        asked=rows,
        elsewhere=elsewhere,
    )


def asked_of_class(text: str, answers: ClassAnswers, file: str | None = None) -> tuple[AskedRow, ...]:
    """Read what the pupils of a class were asked in talks. Raises AnswersError."""
    return read_asked(text, [one.pupil for one in answers.pupils], [one.id for one in patterns()], file)


def mark_sheet(
    worked: WorkedSheet,
    answers: ClassAnswers,
    *,
    settings: GroupSettings = USUAL,
    confident: Fraction = CONFIDENT,
    tonight: Tonight | None = None,
    asked: Sequence[AskedRow] = (),
    elsewhere: Learnt = NOTHING,
) -> Marked:
    """Mark answers to the problems of a sheet, and what pupils were asked in talks.

    ``elsewhere`` is what a district learnt of other classes.

    Raises InputError for settings that cannot be, and AnswersError for a talk about "this idea" where the
    page names none.
    """
    if not LEAST_CONFIDENT <= confident < 1:
        msg = f"answers cannot be said to fit from odds of {confident}"
        raise InputError(msg, remedy="Give odds from 0.5 up to, but not, 1; 0.9 is usual.")
    sheet, header = worked.sheet, worked.header
    marks = mark_class(answers, header.form, worked.problems)
    asked = told_as_asked(worked.header, asked)
    before = _about_what(asked, lambda: _read(marks, tonight, page_name(sheet), confident, elsewhere))
    marks = with_asked(marks, before, header.form)
    read = _read(marks, tonight, page_name(sheet), confident, elsewhere)
    sits = tonight.notebook.seats_on(tonight.on, page_name(sheet)) if tonight else {}
    known = known_before(tonight, page_name(sheet))
    made = seated(marks.pupils, read.findings, settings, known, sits=sits)
    items = problem_stats(marks)
    return Marked(worked, marks, read.findings, made, items, read.weighed, tonight, read.pupils, settings)


def _read(
    marks: ClassMarks, tonight: Tonight | None, page: str, confident: Fraction, elsewhere: Learnt
) -> NightRead:
    """Read a night with what earlier ones showed, where there is a notebook."""
    if tonight is not None:
        return read_night(marks, tonight.before(page), tonight.on, confident=confident, elsewhere=elsewhere)
    weighed = weigh(marks, elsewhere, confident=confident)
    return NightRead(weighed, findings(marks, weighed.diagnoses), {})


def _about_what(asked: Sequence[AskedRow], read: Callable[[], NightRead]) -> tuple[AskedAnswer, ...]:
    """Look up what "this idea" is: the one that the page names before the talk."""
    open_words = any(one.answer.word and not one.answer.word.about for one in asked)
    before = read().findings if open_words else ()
    return about_what(asked, {one.pupil: one.patterns for one in before})


def page_name(sheet: Sheet) -> str:
    """Return the name under which a page is known in the notebook."""
    return sheet.header.title or UNTITLED


def asked_next(marked: Marked, pupils: Collection[str] | None = None) -> tuple[tuple[Problem, ...], ...]:
    """Return for each pupil the one or two problems whose answers would tell most; none where all is told.

    Some are stories of the class where it is in doubt what a pupil does in one. Where codes are given,
    nothing is worked out for the others.
    """
    stories = partial(stories_to_ask, marked.sheet.header, marked.sheet.problems)
    return ask_next(marked.weighed, marked.marks.expected, pupils, marked.findings, stories)


def asked_of(marked: Marked) -> tuple[tuple[str, str], ...]:
    """Return the pupils to ask one or two more problems, with those problems as text."""
    rows = zip(marked.findings, asked_next(marked), strict=True)
    return tuple((found.pupil, " and ".join(map(asked_line, ask))) for found, ask in rows if ask)


def as_object(marked: Marked) -> Json:
    """Return marks, findings and groups as a JSON object.

    Odds are exact fractions: a door turns them into the numbers of JSON.
    """
    pairs = zip(marked.marks.pupils, marked.findings, strict=True)
    talks = {one.pupil: talk_report(marked.weighed, one, found) for one, found in pairs}
    return marks_object(
        marked.marks,
        marked.findings,
        marked.seating,
        marked.items,
        ask_next=asked_next(marked),
        until=marked.tonight.until if marked.tonight else None,
        talks={pupil: talk for pupil, talk in talks.items() if talk},
    )


def shown_finding(found: Finding) -> str:
    """Return a finding in a few words: how much it says, which patterns fit, and in which problems."""
    if not found.patterns:
        return status_called(found.status)
    return f"{status_called(found.status)}: {', '.join(found.patterns)} in {', '.join(found.evidence)}"


def shown_place(group: Group) -> str:
    """Return in a few words why a group works together."""
    return text_of(about(group))


def shown_ideas(group: Group, marked: Marked) -> tuple[tuple[str, tuple[str, ...], str], ...]:
    """Return the ideas of a group in plain words, who of it has each, and what to ask them.

    The group's minutes can be split so. Those of whom no idea is named come last, with nothing to ask.
    """
    problems, words = marked.sheet.problems, marked.sheet.header.words
    return tuple(
        (
            idea_called(held.idea) if held.idea else OTHERS,
            held.pupils,
            question(by_id(held.idea), problems, words, evidence_of(held, marked.findings))
            if held.idea
            else "",
        )
        for held in group.ideas
    )


def shown_changes(marked: Marked) -> tuple[tuple[str, str, str, str], ...]:
    """Return the pupils whom the answers now put elsewhere: by code, from and to which group, and why."""
    return tuple(
        (one.pupil, one.was.name, one.to.name, text_of(placed_because(one.because, End.TYPED)))
        for one in marked.seating.changes
    )


def shown_reasons(group: Group) -> tuple[tuple[str, str], ...]:
    """Return the pupils of a group by code, each with why in a few words."""
    return tuple(
        (placed.pupil, text_of(placed_because(placed.because, End.TYPED))) for placed in group.placings
    )


def fitting(marked: Marked) -> tuple[tuple[str, str, str], ...]:
    """Return the patterns that some pupil's answers fit, in the order of their ids.

    Each is its id, its name, and what to ask the child, on a problem whose answer fits.
    """
    fits: dict[str, set[str]] = defaultdict(set)
    for found in marked.findings:
        for one in found.fittings:
            fits[one.pattern] |= set(one.evidence)
    problems, words = marked.sheet.problems, marked.sheet.header.words
    return tuple(
        (pattern.id, pattern.name, question(pattern, problems, words, fits[pattern.id]))
        for pattern in patterns()
        if pattern.id in fits
    )
