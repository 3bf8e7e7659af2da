"""A page while it is typed: how it prints, its room, what is found in it, or what cannot be read."""

import re
from base64 import b64encode
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import datetime
from fractions import Fraction
from functools import lru_cache

from onewhole.desk.page.clicks import Offered
from onewhole.desk.page.fitting import PageFit
from onewhole.desk.page.print_pages import fitted_pupil_page
from onewhole.errors import InputError, OnewholeError
from onewhole.findings.click import Click, NumberLines, SetTo
from onewhole.findings.in_page import PageFinding, Severity, severity
from onewhole.languages.english.clicks import clicked
from onewhole.languages.english.in_page import also_true, found_in_page, page_mended
from onewhole.languages.english.speech import say
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.presses.pdf import MissingSignError, press, press_drawings
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.apply_remedy import apply_remedy
from onewhole.sheets.audit import Audit, audit
from onewhole.sheets.document import Instruction, Sheet, SheetError
from onewhole.sheets.page import halves
from onewhole.sheets.reading import NO_LABEL, label_in, lines_of, read_sheet
from onewhole.sheets.remedies import remedies
from onewhole.sheets.room import Room
from onewhole.sheets.sheet_editor import SheetEditor
from onewhole.sheets.worked import WorkedSheet
from onewhole.working.form import FormWanted
from onewhole.working.strategy import Strategy

#: More than this is no page for one night: it is not laid out while it is typed.
LONGEST_TYPED, MOST_PROBLEMS = 40_000, 60

_PLACED = re.compile(rb'data-typst-label="problem-([^"]*)\."')


@dataclass(frozen=True, slots=True)
class Mistake:
    """What cannot be read: where (from 1; None where no line is to blame), what, and what to do next.

    ``remedies`` are what one click may do; there is one for lines without a label.
    """

    line: int | None
    column: int | None
    what: str
    remedy: str
    remedies: tuple[Offered, ...] = ()


@dataclass(frozen=True, slots=True)
class Drawn:
    """One page as it prints: an SVG, and what stands on it in words."""

    svg: bytes
    words: str

    @property
    def address(self) -> str:
        """Return the picture as an address that holds it."""
        return f"data:image/svg+xml;base64,{b64encode(self.svg).decode()}"


@dataclass(frozen=True, slots=True)
class Stands:
    """A problem of the page: its label, line, what it asks, and the room measured for it in words."""

    label: str
    line: int
    asks: str
    room: str


@dataclass(frozen=True, slots=True)
class Note:
    """Something found: which lines it is about (none: the whole page), and what one click may do."""

    found: PageFinding
    advice: bool
    words: str
    remedy: str
    lines: tuple[int, ...]
    remedies: tuple[Offered, ...]


@dataclass(frozen=True, slots=True)
class Changed:
    """What is typed now, and in a sentence what was done."""

    typed: str
    words: str


@dataclass(frozen=True, slots=True)
class Moved:
    """A problem moved: what is typed now, in a sentence what was done, and where it stands, counted from 1.

    ``place`` is its place among the problems (0: nothing was moved), ``line`` its line.
    """

    typed: str
    words: str
    place: int
    line: int


@dataclass(frozen=True, slots=True)
class Laid:
    """A page as far as it could be laid out. With mistakes there is nothing else."""

    mistakes: tuple[Mistake, ...] = ()
    pages: tuple[Drawn, ...] = ()
    problems: tuple[Stands, ...] = ()
    notes: tuple[Note, ...] = ()
    minutes: Fraction = Fraction(0)
    told: str = ""

    @property
    def readable(self) -> bool:
        """Say whether there is a page."""
        return not self.mistakes


def laid(typed: str, now: datetime) -> Laid:
    r"""Lay a typed sheet out; whatever is typed, an answer comes back and nothing is raised.

    What is laid out can be printed: it was pressed, with ``now`` (that has a time zone) as its date.

    >>> from datetime import UTC
    >>> now = datetime(2026, 11, 24, tzinfo=UTC)
    >>> laid("1. 5 -", now).mistakes[0].line
    1
    >>> page = laid("1. 7 2/6 - 3 5/6\n2. 5 4/6 - 2 1/6", now)
    >>> page.told
    'One page, about 2 1/2 minutes, 2 problems, 1 of them with regrouping.'
    """
    try:
        sheet = _read(typed)
        worked = WorkedSheet(sheet, _worked)
        drawn, fit = _drawn(worked, now)
        looked = audit(worked)
    except OnewholeError as error:
        return Laid(mistakes=tuple(_mistakes(error, typed)))
    problems = tuple(_stands(one, worked.rooms[one.label]) for one in sheet.problems)
    notes = tuple(_gathered(_note(found, looked, typed) for found in looked.findings))
    return Laid((), drawn, problems, notes, looked.page.minutes, _told(looked, len(drawn), fit))


def _worked(problem: Problem, taught: Strategy, wanted: FormWanted) -> WorkedProblem:
    """Work a problem; a keystroke changes one problem of a page, and the others stay worked."""
    return _worked_on(problem.line, problem, taught, wanted)


@lru_cache(maxsize=4 * MOST_PROBLEMS)
def _worked_on(_line: int, problem: Problem, taught: Strategy, wanted: FormWanted) -> WorkedProblem:
    """Work the problem of a line; that two problems are equal does not say that they stand on one line."""
    return WorkedProblem(problem, taught, wanted)


def remedied(typed: str, click: Click) -> Changed:
    """Return a typed sheet after one click, and in words what was done.

    Raises InputError, also for a click that would leave a sheet that cannot be read.
    """
    changed = apply_remedy(typed, click)
    if not isinstance(click, NumberLines):
        _read(changed.typed)
    return Changed(changed.typed, text_of(clicked(changed.done)))


def moved_by(typed: str, label: str, by: int) -> Moved:
    r"""Return a typed sheet with a problem so many places further down the page, or up; as :func:`moved`.

    >>> moved_by("a. 5 - 2\nb. 6 - 3", "b", -1).typed
    'b. 6 - 3\na. 5 - 2'
    """
    return moved(typed, label, SheetEditor.of(typed).place(label) + by)


def moved_on_line(typed: str, line: int, by: int) -> Moved:
    r"""Return a typed sheet with the problem of a line (from 1) moved; on any other line nothing is.

    >>> moved_on_line("1)5 - 2\n2)6 - 3", 2, -1).typed
    '1)6 - 3\n2)5 - 2'
    """
    lines = lines_of(typed)
    said = label_in(lines[line - 1]) if line <= len(lines) else None
    if said is None:
        return Moved(typed, "There is no problem on this line.", 0, line)
    return moved_by(typed, said["label"], by)


def moved(typed: str, label: str, to: int) -> Moved:
    r"""Return a typed sheet with a problem in another place down the page (from 1).

    Instructions, header and blank lines stay where they are, and labels 1, 2, 3 stay in that order down the
    page. The sheet need not be readable. Raises InputError for a label that is not there.

    >>> moved("a. 5 - 2\n# Look first.\nb. 6 - 3", "b", 1)
    Moved(typed='b. 6 - 3\n# Look first.\na. 5 - 2', words='Problem b is number 1 of 2 now.', place=1, line=1)
    """
    rows = SheetEditor.of(typed)
    before, most = rows.place(label), len(rows.problems)
    to = max(1, min(to, most))
    words = f"Problem {label} is number {to} of {most} now." if to != before else f"Problem {label} stays."
    return Moved(rows.moved(label, to).typed, words, to, list(rows.problems.values())[to - 1] + 1)


def _read(typed: str) -> Sheet:
    if len(typed) > LONGEST_TYPED:
        msg = f"there are {len(typed)} characters, and a page has {LONGEST_TYPED} at most"
        raise SheetError(msg, remedy="Take some out.")
    sheet = read_sheet(typed)
    if len(sheet.problems) > MOST_PROBLEMS:
        msg = (
            f"there are {len(sheet.problems)} problems, and a page for one night has {MOST_PROBLEMS} at most"
        )
        raise SheetError(msg, line=sheet.problems[MOST_PROBLEMS].line, remedy="Leave some out.")
    return sheet


def _mistakes(error: OnewholeError, typed: str) -> Iterator[Mistake]:
    several = error.mistakes if isinstance(error, SheetError) else ()
    for one in several or (error,):
        line = one.line if isinstance(one, InputError) else _line_of_signs(one, typed)
        column = one.column if isinstance(one, InputError) else None
        clicks = (Offered(NumberLines()),) if one.what == NO_LABEL else ()
        yield Mistake(line, column, one.what, one.remedy or "", clicks)


def _line_of_signs(error: OnewholeError, typed: str) -> int | None:
    """Return the first line with a sign that no font has."""
    signs = set("".join(error.signs)) if isinstance(error, MissingSignError) else set()
    return next((at for at, line in enumerate(lines_of(typed), 1) if signs & set(line)), None)


def _drawn(worked: WorkedSheet, now: datetime) -> tuple[tuple[Drawn, ...], PageFit | None]:
    """Draw the pupil page, and say of each sheet of paper what stands on it, and how it was fitted.

    It is pressed too, which costs little once it is drawn: that refuses a sign that no font has.
    """
    sheet, found = worked.sheet, fitted_pupil_page(worked)
    printed = found.page
    drawings = press_drawings(printed.source, data=printed.content)
    press(printed.source, data=printed.content, when=now)
    on: dict[str, int] = {}
    for at, svg in enumerate(drawings):
        for label in _PLACED.findall(svg):
            on.setdefault(label.decode(), at)
    said: list[list[str]] = [[] for _ in drawings]
    waiting: list[str] = []
    for item in sheet.items:
        if isinstance(item, Instruction):
            waiting.append(item.words)
            continue
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


def _stands(problem: Problem, needed: Room) -> Stands:
    lines = "1 line" if needed.lines == 1 else f"{needed.lines} lines"
    width, height = round(needed.width_mm), round(needed.height_mm)
    measured = f"{lines}, {width} by {height} mm"
    if needed.picture:
        measured += f", picture {round(needed.picture.width_mm)} by {round(needed.picture.height_mm)} mm"
    return Stands(problem.label, problem.line, text(problem.statement), measured)


def _note(found: PageFinding, looked: Audit, typed: str) -> Note:
    lines = tuple(one.line for one in looked.page.sheet.problems if one.label in found.labels)
    clicks = remedies(found, looked)
    if not found.labels:
        header = SheetEditor.of(typed).settings
        sets = {line.name for one in clicks if isinstance(one, SetTo) for line in one.lines}
        lines = tuple(at + 1 for name, at in header.items() if name in sets)
    advice = severity(found) is Severity.ADVICE
    said, mend = text_of(found_in_page(found)), text_of(page_mended(found))
    return Note(found, advice, said, mend, lines, tuple(map(Offered, clicks)))


def _gathered(notes: Iterable[Note]) -> Iterator[Note]:
    """Tell as one what is found of several patterns alike: about the same lines, with the same clicks."""
    alike: dict[object, list[Note]] = {}
    for note in notes:
        alike.setdefault((type(note.found), note.lines, note.remedy, note.remedies), []).append(note)
    for first, *more in alike.values():
        said = found_in_page(first.found) + also_true(len(more)) if more else ()
        yield replace(first, words=text_of(said)) if said else first


def _told(looked: Audit, pages: int, fit: PageFit | None) -> str:
    page = looked.page
    minutes = halves(page.minutes)
    many, regroup = len(page.problems), sum(one.needs.regrouping for one in page.problems)
    paper = "One page" if pages == 1 else f"{pages} pages"
    problems = "1 problem" if many == 1 else f"{many} problems"
    time = "1 minute" if minutes == "1" else f"{minutes} minutes"
    said = f"{paper}, about {time}, {problems}, {regroup or 'none'} of them with regrouping."
    return f"{said} {fit.told}" if fit else said
