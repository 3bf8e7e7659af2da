"""A teacher writes down what a pupil was asked after a night, and said; a row can be taken back."""

from collections.abc import Sequence
from contextlib import suppress
from datetime import date, datetime

from msgspec import Struct

from onewhole.desk.classes.class_records import NightPage, night_page, night_pages, room
from onewhole.desk.classes.marked_nights import NightFailedError, marked_night, missing_before
from onewhole.desk.classes.talk_rows import TalkText, talk_texts
from onewhole.desk.marking.cells import UNSEEN
from onewhole.desk.tomorrow.talks import Talk, shown_written, talk_with
from onewhole.errors import InputError
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.asked import asked_line, asked_problem
from onewhole.marking.reading.talk_word import TalkSaid, read_word
from onewhole.misconceptions.catalogue import patterns
from onewhole.notations.mathml import mathml
from onewhole.store.answers import answers_of
from onewhole.store.asked import KeptAsked, keep_asked
from onewhole.store.opening import Store
from onewhole.writers.report_words import word_told

#: The most characters of a problem with its story, and of what was said.
LONGEST = 400
BY = "teacher"


class AskedLine(Struct, frozen=True):
    """One row of a talk for a page; ``asked`` is MathML (text where it cannot be read any more), or empty.

    ``wrote`` is MathML where ``is_formula`` says so, else text; ``word`` is the teacher's in words.
    """

    code: str
    asked: str
    asked_is_formula: bool
    wrote: str
    is_formula: bool
    word: str
    night: int
    day: date
    written: datetime
    by: str
    number: int


def note_asked(
    book: Store,
    room_number: int,
    night: int,
    code: str,
    *,
    asked: str,
    wrote: str,
    word: str,
    now: datetime,
) -> None:
    """Keep what a pupil was asked after a night and said, and the teacher's word (:func:`read_word`).

    A word alone is kept without the problem, for the form offers one already. Raises InputError for what
    cannot be read and for nothing at all, NotThere for a night or a pupil of another class, StoreRefused.
    """
    night_page(book, room_number, night)
    room(book, room_number).pupil(code)
    asked, wrote = _typed(asked), _typed(wrote)
    said = read_word(word, {one.id for one in patterns()})
    if said is not None and said.said is TalkSaid.THIS and not said.about:
        raise InputError("This idea is none that has a name", remedy="Choose the idea that you mean.")
    if wrote and not asked:
        raise InputError("The problem is missing", remedy="Type what you asked, such as 9 5/8 - 4 6/8.")
    if not wrote and said is None:
        raise InputError(
            "What the child wrote is missing",
            remedy="Type it, or a dash where that was nothing; or choose your word on the talk.",
        )
    problem = asked_line(asked_problem(asked)) if wrote else ""
    about = " ".join(said.about) if said else ""
    keep_asked(
        book,
        KeptAsked(night, code, problem, wrote, said.said.value if said else "", about, now, BY),
    )


def take_asked_back(
    book: Store, room_number: int, night: int, code: str, *, number: int, now: datetime
) -> None:
    """Take a row of a talk back: it counts no more. Raises NotThere for one that does not stand."""
    night_page(book, room_number, night)
    keep_asked(book, KeptAsked(night, code, "", "", "", "", now, BY, takes_back=number))


def talk_lines(book: Store, room_number: int, night: int | None = None) -> dict[str, tuple[AskedLine, ...]]:
    """Return what stands of the talks after a night, or after all nights, by the pupils' codes."""
    found: dict[str, tuple[AskedLine, ...]] = {}
    for text in talk_texts(book, room_number, night):
        found[text.code] = (*found.get(text.code, ()), _line(text))
    return found


class AskedOfPupil(Struct, frozen=True):
    """What a pupil's page shows of talks: the rows that stand, and a form for one more.

    ``nights`` may be chosen, the latest on which the pupil wrote first, each with its number, day and page;
    ``suggested`` is what to ask after that one and ``words`` what may be said of it. ``moved`` tells what the
    latest talk changed. What cannot be told without marking many nights is left empty.
    """

    lines: tuple[AskedLine, ...]
    nights: tuple[tuple[int, date, str], ...]
    suggested: str
    words: tuple[tuple[str, str], ...]
    moved: str


def asked_of_pupil(book: Store, room_number: int, code: str, *, at_once: int) -> AskedOfPupil:
    """Return what a pupil was asked, and what to ask next. Raises NotThere.

    At most so many earlier nights are marked for it ``at_once``.
    """
    with book.snapshot() as seen:
        room(seen, room_number).pupil(code)
        pages = tuple(reversed(night_pages(seen, room_number)))
        last = next((page for page in pages if _wrote(seen, page, code)), None)
        lines = talk_lines(seen, room_number).get(code, ())
    nights = tuple((page.night.number, page.night.day, page.name) for page in _first(pages, last))
    offered = _talk(book, room_number, last.night.number if last else 0, code, at_once)
    talked = offered
    if lines and (last is None or lines[-1].night != last.night.number):
        talked = _talk(book, room_number, lines[-1].night, code, at_once)
    return AskedOfPupil(
        lines,
        nights,
        offered.suggested if offered else "",
        word_choices(offered.named if offered else ()),
        talked.moved if talked and lines else "",
    )


def _talk(book: Store, room_number: int, night: int, code: str, at_once: int) -> Talk | None:
    if not night or missing_before(book, room_number, night) > at_once:
        return None
    try:
        return talk_with(marked_night(book, room_number, night).given, code)
    except NightFailedError:
        return None


def _first(pages: Sequence[NightPage], page: NightPage | None) -> list[NightPage]:
    return sorted(pages, key=lambda one: one is not page)


def _wrote(book: Store, page: NightPage, code: str) -> bool:
    return any(one.code == code for one in answers_of(book, page.night.number))


def word_choices(named: Sequence[tuple[str, str]]) -> tuple[tuple[str, str], ...]:
    """Return the words that a form offers, each with how it is told; ``named`` are the ideas in question.

    >>> [value for value, _ in word_choices([("A01", "takes the smaller number of pieces from the larger")])]
    ['', 'slip', 'this idea: A01', 'another idea: A01']
    """
    ids = " ".join(key for key, _ in named)
    another = f"{TalkSaid.OTHER.value}: {ids}" if ids else TalkSaid.OTHER.value
    return (
        ("", "no word yet"),
        (TalkSaid.SLIP.value, "it was a slip"),
        *((f"{TalkSaid.THIS.value}: {key}", f"this idea: {name}") for key, name in named),
        (another, "another idea" if named else "an idea of the child’s own"),
    )


def _line(text: TalkText) -> AskedLine:
    wrote, is_formula = shown_written(read_written(text.wrote))
    asked, is_problem = text.asked, False
    with suppress(InputError):
        if text.asked:
            problem = asked_problem(text.asked)
            asked, is_problem = (problem.story, False) if problem.story else (mathml(problem.statement), True)
    return AskedLine(
        text.code,
        asked,
        is_problem,
        wrote,
        is_formula,
        word_told(text.word) if text.word else "",
        text.night,
        text.day,
        text.written,
        text.by,
        text.number,
    )


def _typed(text: str) -> str:
    """Return a typed line without idle blanks. Raises InputError for a long one and a control sign."""
    text = " ".join(text.split())
    if len(text) > LONGEST:
        raise InputError(f"A line of {len(text)} characters is too long", remedy=f"Use {LONGEST} at most.")
    if UNSEEN.search(text):
        raise InputError("There is a sign here that nobody sees", remedy="Type it again.")
    return text
