"""The board of a night for the browser: its steps with what is said, and the page that plays it."""

import hashlib
from collections.abc import Iterator
from fractions import Fraction
from functools import lru_cache
from types import MappingProxyType

from msgspec import Struct

from onewhole.desk.walkthrough.film import BROWSER, told, unfilmed
from onewhole.desk.walkthrough.film_options import FilmChoice, FilmOptions, film_options
from onewhole.desk.walkthrough.film_plan import FilmPlan
from onewhole.desk.walkthrough.lesson import refused
from onewhole.desk.walkthrough.soundtrack_choice import named_parts
from onewhole.notations.sentences.text import sentence_text
from onewhole.notations.text import text
from onewhole.sheets.document import Sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.cue import Cue, Role, Write
from onewhole.walkthroughs.on_board import on_board
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import Timed, TimedChapter
from onewhole.writers.walkthrough_html import policy, walkthrough_html

#: What a step is there for, in the teacher's script.
ROLES = MappingProxyType(
    {
        Role.OPENING: "Say hello",
        Role.OVERVIEW: "Look ahead",
        Role.PROBLEM: "Read the problem",
        Role.TRY: "Let them try",
        Role.TURN: "Their turn: wait",
        Role.LINE: "Write the next line",
        Role.TENS: "The same with tens",
        Role.MISTAKE: "A likely mistake",
        Role.CHECK: "Check it",
        Role.ANSWER: "Wait, then the answer",
        Role.FORMS: "Written another way",
        Role.CLOSING: "Say good night",
    }
)


class BoardStep(Struct, frozen=True):
    """One step of the board: what it is there for, and the sentences of the script."""

    role: str
    says: tuple[str, ...]


class BoardPart(Struct, frozen=True):
    """A part of the walkthrough: "opening", a problem's label or "closing"; its name; its steps.

    ``seconds`` is how long it takes when it is read at an ordinary pace; ``stamp`` changes when what is
    written at its steps does.
    """

    label: str
    name: str
    steps: tuple[BoardStep, ...]
    seconds: Fraction
    stamp: str


class Board(Struct, frozen=True):
    """A night's walkthrough: its parts in order, how many seconds it takes, and what was not as wished."""

    parts: tuple[BoardPart, ...]
    seconds: Fraction
    notes: tuple[str, ...]

    def part(self, label: str) -> BoardPart | None:
        """Return a part by its label, or None."""
        return next((part for part in self.parts if part.label == label), None)


def board(sheet: Sheet, plan: FilmPlan) -> Board:
    """Return the steps of a night's board as planned. Raises InputError where it cannot be told so.

    >>> from onewhole.sheets.reading import read_sheet
    >>> shown = board(read_sheet("1. 7 2/6 - 3 5/6"), FilmPlan())
    >>> [part.label for part in shown.parts], shown.parts[1].steps[0].role
    (['opening', '1', 'closing'], 'Read the problem')
    """
    return _board(sheet, plan)


def board_html(sheet: Sheet, plan: FilmPlan, *, back: str = "") -> str:
    """Return the walkthrough of a night as one page that plays by itself. Raises InputError.

    ``back`` is the address of the teacher's page, where a link at its head leads back.
    """
    return _html(sheet, plan, back)


def board_policy() -> str:
    """Return the content policy of that page: only its own script runs, and only a page of ours frames it."""
    return f"{policy()}; frame-ancestors 'self'"


def on_offer(sheet: Sheet, plan: FilmPlan) -> tuple[FilmOptions, ...]:
    """Return what there is to choose for each problem, in the order of the page.

    >>> from onewhole.sheets.reading import read_sheet
    >>> one = on_offer(read_sheet("1. 304 - 128"), FilmPlan())[0]
    >>> one.strategy, one.picture
    ('columns', 'columns')
    """
    return _offered(sheet, tuple(plan.choices.get(problem.label, FilmChoice()) for problem in sheet.problems))


@lru_cache(maxsize=32)
def _board(sheet: Sheet, plan: FilmPlan) -> Board:
    worked = WorkedSheet(sheet)
    _, timeline = told(worked, plan.wishes())
    parts = tuple(_part(chapter) for chapter in named_parts(timeline).chapters)
    notes = (*unfilmed(sheet, timeline), *refused(worked, choices=plan.choices))
    return Board(parts, timeline.length, notes)


@lru_cache(maxsize=8)
def _html(sheet: Sheet, plan: FilmPlan, back: str) -> str:
    _, timeline = told(WorkedSheet(sheet), plan.wishes())
    timeline = on_board(timeline, Shape.WIDE)
    return walkthrough_html(timeline, sheet.header.words, voice_note=BROWSER, back=back)


@lru_cache(maxsize=64)
def _offered(sheet: Sheet, choices: tuple[FilmChoice, ...]) -> tuple[FilmOptions, ...]:
    problems = WorkedSheet(sheet).problems
    return tuple(film_options(one, choice) for one, choice in zip(problems, choices, strict=True))


def _part(chapter: TimedChapter) -> BoardPart:
    written = [(cue.cue.role.value, *_written(cue.cue)) for cue in chapter.cues]
    return BoardPart(
        chapter.label,
        chapter.title,
        tuple(_step(cue) for cue in chapter.cues),
        chapter.end - chapter.start,
        hashlib.sha256(repr(written).encode()).hexdigest()[:16],
    )


def _written(cue: Cue) -> Iterator[str]:
    for act in cue.acts:
        if isinstance(act, Write):
            yield act.content if isinstance(act.content, str) else text(act.content)


def _step(timed: Timed) -> BoardStep:
    return BoardStep(ROLES[timed.cue.role], tuple(map(sentence_text, timed.cue.says)))
