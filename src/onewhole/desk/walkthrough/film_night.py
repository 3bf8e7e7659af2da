"""A night is filmed as planned, with what the teacher recorded; then it counts as shown."""

import hashlib
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

import msgspec
from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.class_records import NightPage
from onewhole.desk.page.put_pages import MadeFrom, NightPart, Ready, put
from onewhole.desk.walkthrough.board import board
from onewhole.desk.walkthrough.film import NAMES, make_film
from onewhole.desk.walkthrough.film_files import FilmFiles
from onewhole.desk.walkthrough.film_plan import plan_of, plan_text
from onewhole.desk.walkthrough.kept_slips import FilmSlip, film_slips, kept_slips
from onewhole.desk.walkthrough.recordings import heard, recorded_fingerprint, usable
from onewhole.languages.language import Language
from onewhole.languages.table import LANGUAGES, SPOKEN, code_of
from onewhole.presses.folders import made
from onewhole.store.opening import Store
from onewhole.store.steps import NightStep, keep_step, steps_of
from onewhole.walkthroughs.shape import Shape

#: What is known of a film stands beside it under this name.
ABOUT = "about-film"
#: In which files it is read.
READ = (("walkthrough", "vtt"), ("walkthrough", "srt"), ("transcript", "md"))


class FilmThere(Struct, frozen=True):
    """A film that was made: its length, its chapters (milliseconds, name), and what was not as wished.

    ``shapes`` are those in which it lies there. ``stale`` says that the page, the choices or the recordings
    have changed since; ``made`` changes with every film. ``language`` is the BCP 47 tag of what is said in
    it, and ``language_name`` its own name. ``slips`` are numbers that were heard otherwise than the board
    writes them, ``kept`` the keys of those that the teacher keeps as they were said. ``beside``
    are the tags of further languages in which it can be read.
    """

    seconds: int
    chapters: tuple[tuple[int, str], ...]
    notes: tuple[str, ...]
    reads: str
    stale: bool
    made: str
    language: str = SPOKEN.tag
    shapes: tuple[Shape, ...] = ()
    slips: tuple[FilmSlip, ...] = ()
    kept: frozenset[str] = frozenset()
    beside: tuple[str, ...] = ()

    @property
    def lacking(self) -> frozenset[str]:
        """Return the files of shapes and languages in which the film was not made."""
        names = [NAMES[shape] for shape in Shape if shape not in self.shapes]
        shapes = {file for film, poster in names for file in (f"{film}.mp4", f"{poster}.png")}
        others = [language for tag, language in LANGUAGES.items() if tag not in self.beside]
        return frozenset(shapes.union(*(_read_beside(language) for language in others)))

    @property
    def tracks(self) -> tuple[tuple[str, str, str], ...]:
        """Return the captions in further languages: each one's tag, its own name, and its file."""
        found = [LANGUAGES[tag] for tag in self.beside]
        return tuple((one.tag, one.name, _read_beside(one)[0]) for one in found)

    @property
    def shown(self) -> tuple[str, str, str]:
        """Return the film that a page plays: its file, its poster's file, and the name of its shape."""
        film, poster = NAMES[self.shapes[0]]
        return f"{film}.mp4", f"{poster}.png", self.shapes[0].value

    @property
    def language_name(self) -> str:
        """Return what the language calls itself."""
        return LANGUAGES[self.language].name


class _About(Struct, frozen=True):
    """What is written beside a film."""

    seconds: int
    notes: tuple[str, ...]
    reads: str
    stamp: str
    made: str
    language: str = SPOKEN.tag
    chapters: tuple[tuple[int, str], ...] = ()
    slips: tuple[FilmSlip, ...] = ()


def film_night(
    book: Store,
    page: NightPage,
    to: Path,
    *,
    when: datetime,
    progress: Callable[[int, int], None] = lambda _done, _of: None,
) -> FilmFiles:
    """Film a night into a folder as :func:`~.film.film_sheet` does, and keep that it was shown.

    Recordings that fit the board are heard, each in step with the teacher's key; parts without one are
    silent, and the notes say so. Slips that the teacher keeps as they were said are not told again. Raises
    InputError, PressError, FileRefused and StoreRefused.
    """
    night = page.night.number
    plan, stamp = plan_of(book, night), _fingerprint(book, page)
    there = board(page.sheet, plan)
    recorded, notes = usable(book, night, there)
    known = heard(book, night, there)
    made(to, private=True)
    ready, shown = make_film(
        page.sheet, to, when=when, wishes=replace(plan.wishes(recorded), listen=True), progress=progress
    )
    shown = replace(shown, notes=(*notes, *shown.notes))
    slips = film_slips(shown.slips, known)
    about = _About(
        int(shown.length),
        shown.notes,
        shown.reads,
        stamp,
        when.isoformat(),
        shown.language,
        shown.chapters,
        slips,
    )
    told = Ready(ABOUT, "json", msgspec.json.encode(about))
    *files, _ = put({NightPart.FILM: (*ready, told)}, to, MadeFrom(page.sheet, when), own=True)
    kept = kept_slips(book, night)
    open_ones = tuple(slip for slip, one in zip(shown.slips, slips, strict=True) if one.key not in kept)
    mark_shown(book, night, when)
    return replace(shown, made=tuple(files), slips=open_ones)


def film_there(book: Store, page: NightPage, folder: Path) -> FilmThere | None:
    """Return what is known of the film in a folder; None where there is none, or not a whole one."""
    try:
        about = msgspec.json.decode((folder / f"{ABOUT}.json").read_bytes(), type=_About)
        shapes = tuple(shape for shape in Shape if (folder / f"{NAMES[shape][0]}.mp4").is_file())
        if not shapes:
            return None
        return FilmThere(
            about.seconds,
            about.chapters,
            about.notes,
            about.reads,
            about.stamp != _fingerprint(book, page),
            about.made,
            about.language,
            shapes,
            about.slips,
            kept_slips(book, page.night.number),
            tuple(tag for tag, one in LANGUAGES.items() if (folder / _read_beside(one)[0]).is_file()),
        )
    except (OSError, ValueError):
        return None


def further_files() -> tuple[tuple[str, str, str], ...]:
    """Return the files in which a film may be read in further languages.

    Each with the file that it is like in the class's own language, and its language's own name.
    """
    return tuple(
        (file, f"{name}.{kind}", language.name)
        for language in LANGUAGES.values()
        for file, (name, kind) in zip(_read_beside(language), READ, strict=True)
    )


def _read_beside(language: Language) -> tuple[str, ...]:
    return tuple(f"{name}-{code_of(language)}.{kind}" for name, kind in READ)


def mark_shown(book: Store, night: int, now: datetime) -> None:
    """Keep that a night's walkthrough was shown; again is fine. Raises NotThere and StoreRefused."""
    keep_step(book, night, NightStep.SHOWN, now)


def shown_at(book: Store, page: NightPage, room_number: int) -> datetime | None:
    """Return when a night was first shown, or None."""
    return steps_of(book, room_number).get(page.night.number, {}).get(NightStep.SHOWN)


def _fingerprint(book: Store, page: NightPage) -> str:
    """Return what a film is made from, as a short text that changes when it does."""
    night = page.night.number
    made_from = (page.kept.typed, plan_text(plan_of(book, night)), recorded_fingerprint(book, night))
    return hashlib.sha256(repr(made_from).encode()).hexdigest()
