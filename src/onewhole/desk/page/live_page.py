"""A page while it is typed: how it prints, its room, what is found in it, or what cannot be read."""

import re
from base64 import b64encode
from collections.abc import Iterable, Iterator, Sequence
from datetime import datetime
from fractions import Fraction
from functools import lru_cache

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.page.clicks import Offered
from onewhole.desk.page.fitting import PageFit
from onewhole.desk.page.print_pages import fitted_pupil_page
from onewhole.desk.page.stands import Stands, stands
from onewhole.errors import InputError, OnewholeError
from onewhole.findings.click import Click, SetTo, TellAs, UseLine
from onewhole.findings.in_page import PageFinding, Severity, severity
from onewhole.languages.english.clicks import clicked
from onewhole.languages.english.in_page import also_true, found_in_page, how_known, page_mended
from onewhole.languages.english.speech import say
from onewhole.languages.table import spoken_by
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.pictures.line_plot import plot_scene
from onewhole.presses.pdf import MissingSignError, press, press_drawings
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.apply_remedy import apply_remedy
from onewhole.sheets.audit import Audit, audit
from onewhole.sheets.class_languages import in_languages
from onewhole.sheets.document import Instruction, Item, Sheet, SheetError
from onewhole.sheets.page import halves
from onewhole.sheets.reading import NO_PROBLEM, read_part, read_sheet
from onewhole.sheets.remedies import remedies
from onewhole.sheets.shared_plots import shared_plots
from onewhole.sheets.sheet_editor import SheetEditor
from onewhole.sheets.typed_lines import lines_of, problem_lines, setting_in
from onewhole.sheets.unread_line import UnreadLine
from onewhole.sheets.worked import WorkedSheet
from onewhole.working.form import FormWanted
from onewhole.working.taught import AsTaught

#: More than this is no page for one night: it is not laid out while it is typed.
LONGEST_TYPED, MOST_PROBLEMS = 40_000, 60
#: So much of a line is quoted to name it, and so many lines are named that are not on the page.
MOST_QUOTED, MOST_NAMED = 24, 3

_PLACED = re.compile(rb'data-typst-label="problem-([^"]*)\."')


class NamedLine(Struct, frozen=True):
    """A line (from 1), and what a teacher calls what stands there: "Problem 3"."""

    line: int
    name: str


class Mistake(Struct, frozen=True):
    """What cannot be read: where (from 1; None where no line is to blame), what, and what to do next.

    ``place`` names its line. ``remedies`` are clicks: what a story may ask, what else a line may be.
    """

    line: int | None
    column: int | None
    what: str
    remedy: str
    place: NamedLine | None = None
    remedies: tuple[Offered, ...] = ()

    @property
    def is_story(self) -> bool:
        """Say whether it is a story that waits for what it asks."""
        return any(isinstance(one.click, TellAs) for one in self.remedies)


class Drawn(Struct, frozen=True):
    """One page as it prints: an SVG, and what stands on it in words."""

    svg: bytes
    words: str

    @property
    def address(self) -> str:
        """Return the picture as an address that holds it."""
        return f"data:image/svg+xml;base64,{b64encode(self.svg).decode()}"


class Note(Struct, frozen=True):
    """Something found: what it is about (none: the whole page), how it is known, what one click may do."""

    found: PageFinding
    advice: bool
    words: str
    remedy: str
    known: str
    places: tuple[NamedLine, ...]
    remedies: tuple[Offered, ...]


class Changed(Struct, frozen=True):
    """What is typed now, and in a sentence what was done."""

    typed: str
    words: str


class Laid(Struct, frozen=True):
    """A page as far as it could be laid out: what cannot be read, and all that can.

    ``counted`` names the problems that have no label of their own by the number that they are given.
    """

    mistakes: tuple[Mistake, ...] = ()
    pages: tuple[Drawn, ...] = ()
    problems: tuple[Stands, ...] = ()
    notes: tuple[Note, ...] = ()
    minutes: Fraction = Fraction(0)
    told: str = ""
    counted: tuple[NamedLine, ...] = ()


def laid(typed: str, now: datetime, languages: str = "") -> Laid:
    r"""Lay a typed sheet out; whatever is typed, an answer comes back and nothing is raised.

    A line that cannot be read is told and left out; a page that has no problem yet is nothing. Without
    mistakes what is laid out can be printed: it was pressed, with ``now`` (that has a time zone) as its date.
    ``languages`` are those of the class, where what is typed names none.

    >>> from datetime import UTC
    >>> now = datetime(2026, 11, 24, tzinfo=UTC)
    >>> laid("1. 5 -", now).mistakes[0].place.name
    'Problem 1'
    >>> page = laid("1. 7 2/6 - 3 5/6\n2. 5 4/6 - 2 1/6", now)
    >>> page.told
    'One page, about 2 1/2 minutes, 2 problems, 1 of them with regrouping.'
    """
    try:
        _check_length(typed)
    except OnewholeError as error:
        return Laid(mistakes=(_mistake(error, typed),))
    part = read_part(typed)
    sheet, wrong = part.sheet, list[OnewholeError](part.mistakes)
    if [one.what for one in wrong] == [NO_PROBLEM]:
        return Laid()
    if sheet is not None:
        sheet, more = _few_enough(in_languages(sheet, languages))
        wrong += more
    while sheet is not None:
        try:
            return _laid_out(sheet, typed, now, wrong)
        except OnewholeError as error:
            sheet, more = _without_what_fails(sheet, error, typed)
            wrong += more
    return Laid(mistakes=_mistakes(wrong, typed), counted=_counted(typed))


def _laid_out(sheet: Sheet, typed: str, now: datetime, wrong: Sequence[OnewholeError]) -> Laid:
    worked = WorkedSheet(sheet, _worked)
    drawn, fit = _drawn(worked, now)
    looked = audit(worked)
    problems = tuple(stands(one, worked) for one in sheet.problems)
    mistakes = _mistakes(wrong, typed)
    notes = tuple(_gathered(_note(found, looked, typed) for found in looked.findings))
    told = _told(looked, len(drawn), fit, mistakes)
    return Laid(mistakes, drawn, problems, notes, looked.page.minutes, told, _counted(typed))


def _counted(typed: str) -> tuple[NamedLine, ...]:
    lines = problem_lines(lines_of(typed))
    return tuple(NamedLine(at + 1, one.label) for at, one in lines.items() if not one.typed)


def _without_what_fails(
    sheet: Sheet, error: OnewholeError, typed: str
) -> tuple[Sheet | None, tuple[OnewholeError, ...]]:
    """Return a sheet without what it cannot be laid out with (None: nothing is left), and what that is."""
    if isinstance(error, MissingSignError):
        signs = set("".join(error.signs))
        header = sheet.header
        if signs & set(header.title + header.date + header.class_name):
            header = replace(header, title="", date="", class_name="")
        left = tuple(one for one in sheet.items if not signs & set(_words_of(one)))
        lines = [at for at, line in enumerate(lines_of(typed), 1) if signs & set(line)]
        found: tuple[OnewholeError, ...] = tuple(
            InputError(error.what, line=at, remedy=error.remedy) for at in lines
        )
    else:
        header, wrong = sheet.header, dict(_failing(sheet))
        left = tuple(one for one in sheet.items if not (isinstance(one, Problem) and one.label in wrong))
        found = tuple(wrong.values())
    if not found or (left, header) == (sheet.items, sheet.header):
        return None, (error,)
    return (Sheet(left, header) if any(isinstance(one, Problem) for one in left) else None), found


def _failing(sheet: Sheet) -> Iterator[tuple[str, OnewholeError]]:
    """Yield the problems that cannot be worked or given room, each with why."""
    for one in sheet.problems:
        try:
            WorkedSheet(Sheet((one,), sheet.header), _worked).rooms  # noqa: B018 - it is worked out here
        except OnewholeError as error:
            yield one.label, InputError(error.what, line=one.line, remedy=error.remedy)


def _words_of(item: Item) -> str:
    return item.words if isinstance(item, Instruction) else item.typed + item.story


def _worked(problem: Problem, taught: AsTaught, wanted: FormWanted) -> WorkedProblem:
    """Work a problem; a keystroke changes one problem of a page, and the others stay worked."""
    return _worked_on(problem.line, problem, taught, wanted)


@lru_cache(maxsize=4 * MOST_PROBLEMS)
def _worked_on(_line: int, problem: Problem, taught: AsTaught, wanted: FormWanted) -> WorkedProblem:
    """Work the problem of a line; that two problems are equal does not say that they stand on one line."""
    return WorkedProblem(problem, taught, wanted)


def remedied(typed: str, click: Click) -> Changed:
    """Return a typed sheet after one click, and in words what was done.

    Raises InputError, also for a click that would leave more of the sheet than now that cannot be read.
    """
    changed = apply_remedy(typed, click)
    _check_length(changed.typed)
    before, after = (read_part(text).mistakes for text in (typed, changed.typed))
    if not isinstance(click, UseLine) and len(after) > len(before):
        read_sheet(changed.typed)
    return Changed(changed.typed, text_of(clicked(changed.done)))


def _check_length(typed: str) -> None:
    if len(typed) > LONGEST_TYPED:
        msg = f"there are {len(typed)} characters, and a page has {LONGEST_TYPED} at most"
        raise SheetError(msg, remedy="Take some out.")


def _few_enough(sheet: Sheet) -> tuple[Sheet | None, tuple[OnewholeError, ...]]:
    """Return a sheet where it is for one night; what is longer is not laid out while it is typed."""
    if len(sheet.problems) <= MOST_PROBLEMS:
        return sheet, ()
    msg = f"there are {len(sheet.problems)} problems, and a page for one night has {MOST_PROBLEMS} at most"
    return None, (SheetError(msg, line=sheet.problems[MOST_PROBLEMS].line, remedy="Leave some out."),)


def _mistakes(wrong: Iterable[OnewholeError], typed: str) -> tuple[Mistake, ...]:
    return tuple(sorted((_mistake(one, typed) for one in wrong), key=lambda one: one.line or 0))


def _mistake(error: OnewholeError, typed: str) -> Mistake:
    line, column = (error.line, error.column) if isinstance(error, InputError) else (None, None)
    place = None if line is None else _place(line, typed)
    if line is None or not isinstance(error, UnreadLine):
        return Mistake(line, column, error.what, error.remedy or "", place)
    story, seen = error.story, lines_of(typed)[line - 1]
    clicks: tuple[Click, ...] = (
        *(TellAs(line, seen, asked) for asked in story.asked),
        *(UseLine(line, seen, use) for use in error.uses),
    )
    remedy = error.remedy or ""
    if not story and error.uses:
        remedy = "Say what it is, or write it as a problem: 7 2/6 - 3 5/6."
    if story:
        asks = text(story.asked[0])
        sure = f"It asks {asks}, by its words. One click writes that before them."
        remedy = sure if story.sure else "Its words do not settle what it asks: choose."
    return Mistake(line, column, error.what, remedy, place, tuple(map(Offered, clicks)))


def _place(line: int, typed: str) -> NamedLine:
    """Name what stands on a line: a problem by its label, a setting by its name, words by the first."""
    lines = lines_of(typed)
    problem = problem_lines(lines).get(line - 1)
    if problem:
        return NamedLine(line, f"Problem {problem.label}")
    said = " ".join(lines[line - 1].split()) if line <= len(lines) else ""
    setting = setting_in(said)
    if setting:
        return NamedLine(line, f"“{setting['name']}”")
    if not said:
        return NamedLine(line, "The page")
    return NamedLine(line, f"“{said[:MOST_QUOTED]}…”" if len(said) > MOST_QUOTED else f"“{said}”")


def _drawn(worked: WorkedSheet, now: datetime) -> tuple[tuple[Drawn, ...], PageFit | None]:
    """Draw the pupil page, and say of each sheet of paper what stands on it, and how it was fitted.

    It is pressed too, which costs little once it is drawn: that refuses a sign that no font has.
    """
    sheet, found = worked.sheet, fitted_pupil_page(worked)
    printed = found.page
    drawings = found.drawn or press_drawings(printed.source, data=printed.content)
    press(printed.source, data=printed.content, when=now)
    on: dict[str, int] = {}
    for at, svg in enumerate(drawings):
        for label in _PLACED.findall(svg):
            on.setdefault(label.decode(), at)
    said: list[list[str]] = [[] for _ in drawings]
    waiting: list[str] = []
    plots = dict(shared_plots(sheet.items))
    if film := sheet.header.film:
        said[0].append(f"{spoken_by(sheet.header.words).page.film} {film}.")
    for item in sheet.items:
        if isinstance(item, Instruction):
            waiting.append(item.words)
            continue
        if item.label in plots:
            scene = plot_scene(plots[item.label].plot)
            waiting.append(text_of(spoken_by(sheet.header.words).working.picture(scene, sheet.header.words)))
        said[on.get(item.label, 0)] += [*waiting, _said(item)]
        waiting = []
    said[-1] += waiting
    title = sheet.header.title or "The page"
    pages = tuple(
        Drawn(svg, " ".join((f"{title}, page {at} of {len(drawings)}.", *words)))
        for at, (svg, words) in enumerate(zip(drawings, said, strict=True), 1)
    )
    return pages, found.fit


def _said(problem: Problem) -> str:
    return f"Problem {problem.label}: {problem.story or f'{say(problem.statement)}.'}"


def _note(found: PageFinding, looked: Audit, typed: str) -> Note:
    places = tuple(
        NamedLine(one.line, f"Problem {one.label}")
        for one in looked.page.sheet.problems
        if one.label in found.labels
    )
    clicks = remedies(found, looked)
    if not found.labels:
        header = SheetEditor.of(typed).settings
        sets = {line.name for one in clicks if isinstance(one, SetTo) for line in one.lines}
        places = tuple(NamedLine(at + 1, f"“{name}”") for name, at in header.items() if name in sets)
    advice = severity(found) is Severity.ADVICE
    said, mend = text_of(found_in_page(found)), text_of(page_mended(found))
    return Note(found, advice, said, mend, text_of(how_known(found)), places, tuple(map(Offered, clicks)))


def _gathered(notes: Iterable[Note]) -> Iterator[Note]:
    """Tell as one what is found of several patterns alike: about the same lines, with the same clicks."""
    alike: dict[object, list[Note]] = {}
    for note in notes:
        alike.setdefault((type(note.found), note.places, note.remedy, note.remedies), []).append(note)
    for first, *more in alike.values():
        said = found_in_page(first.found) + also_true(len(more)) if more else ()
        yield replace(first, words=text_of(said)) if said else first


def _told(looked: Audit, pages: int, fit: PageFit | None, mistakes: Sequence[Mistake]) -> str:
    page = looked.page
    minutes = halves(page.minutes)
    many, regroup = len(page.problems), sum(one.needs.regrouping for one in page.problems)
    paper = "One page" if pages == 1 else f"{pages} pages"
    problems = "1 problem" if many == 1 else f"{many} problems"
    time = "1 minute" if minutes == "1" else f"{minutes} minutes"
    said = f"{paper}, about {time}, {problems}, {regroup or 'none'} of them with regrouping."
    all_of_it = f"{said} {fit.told}" if fit else said
    missing = list(dict.fromkeys(one.place.name for one in mistakes if one.place))
    if len(missing) > MOST_NAMED:
        return f"{all_of_it} {len(missing)} lines are not on it yet."
    return f"{all_of_it} Not on it yet: {', '.join(missing)}." if missing else all_of_it
