"""Film a sheet: script, walkthrough for the browser, captions, chapters, transcript, film and poster."""

from collections.abc import Callable, Mapping
from datetime import datetime
from pathlib import Path

from msgspec import Struct, field
from msgspec.structs import replace

from onewhole.desk.page.put_pages import MadeFrom, NightPart, Ready, ReadyFile, put
from onewhole.desk.walkthrough.film_files import FilmFiles, reads
from onewhole.desk.walkthrough.film_kept import film_key, keep_film, kept_film
from onewhole.desk.walkthrough.film_options import FilmChoice
from onewhole.desk.walkthrough.lesson import lesson, refused
from onewhole.desk.walkthrough.listening import Listening
from onewhole.desk.walkthrough.soundtrack_choice import (
    SILENT,
    SYNTHETIC,
    Recorded,
    in_proportion,
    recorded_voice,
    unrecorded,
    voiced,
)
from onewhole.errors import InputError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import code_of, spoken_by
from onewhole.notations.sentences.speech import words_spoken
from onewhole.notations.sentences.text import text_of
from onewhole.pictures.picture import PictureKind
from onewhole.presses.page_folder import check_folder, folder_within
from onewhole.presses.pdf import press
from onewhole.presses.poster import poster
from onewhole.presses.tidying import Tidy, tidy_named
from onewhole.presses.video import film
from onewhole.sheets.document import Sheet
from onewhole.sheets.reading_level import reading_level
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.cue import Script
from onewhole.walkthroughs.fitting import fitted
from onewhole.walkthroughs.layout import BoardError
from onewhole.walkthroughs.lesson import Lesson, Pace
from onewhole.walkthroughs.on_board import on_board
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import Timeline
from onewhole.walkthroughs.told_beside import told_beside
from onewhole.writers.captions import chapter_name, chapters_vtt, srt, vtt
from onewhole.writers.script_page import script_page
from onewhole.writers.transcript import transcript
from onewhole.writers.walkthrough_html import walkthrough_html

_NOTES = {
    SILENT: "Without a voice: the words are in the captions.",
    SYNTHETIC: "The voice is synthetic: a computer speaks.",
}
OWN = "The voice is the teacher's own."
BROWSER = "When it reads aloud, the voice is your browser's."
#: What stands for both shapes.
BOTH = "both"
#: What the film of a shape and its poster are called.
NAMES = {Shape.WIDE: ("walkthrough", "poster"), Shape.UPRIGHT: ("walkthrough-upright", "poster-upright")}
#: Where the parts of a film are kept, so that only changed ones are made again.
PARTS = ".film-parts"


class FilmWishes(Struct, frozen=True):
    """How a sheet is to be filmed.

    ``voice`` is "silent", "synthetic", or the path of the teacher's own recording: a folder with one file a
    problem, or one file with its cue times beside it. ``minutes`` is the length to fit into. ``choices`` are
    for single problems, by label. ``recorded`` are chapters that the teacher recorded while stepping the
    board, by label, "opening" and "closing"; where there are any, the other chapters stay silent. ``shapes``
    are those that the film is made in. ``listen`` lets the film follow the teacher's voice,
    ``tidy`` is what is done to the recording.
    """

    voice: str = SILENT
    minutes: int | None = None
    pace: Pace = field(default_factory=Pace)
    kind: PictureKind | None = None
    tried: tuple[str, ...] = ()
    turns: tuple[str, ...] = ()
    mistake: bool = False
    choices: Mapping[str, FilmChoice] = field(default_factory=dict)
    recorded: Mapping[str, Recorded] = field(default_factory=dict)
    shapes: tuple[Shape, ...] = tuple(Shape)
    listen: bool = False
    tidy: frozenset[Tidy] = frozenset()

    @property
    def own_voice(self) -> bool:
        """Say whether anything is heard that was recorded."""
        return bool(self.recorded) or self.voice not in {SILENT, SYNTHETIC}


def film_sheet(
    sheet: Sheet,
    to: Path,
    *,
    when: datetime,
    wishes: FilmWishes | None = None,
    progress: Callable[[int, int], None] = lambda _done, _of: None,
) -> FilmFiles:
    """Film a sheet into a folder, which is made if it is not there.

    Everything else is made before the film is, and until the film is whole only its parts are written, in a
    folder of their own; then all comes into the folder together. A film without recordings that is there and
    would be made just so again stays as it is. ``progress`` is told how many frames are
    done of how many. Raises InputError for wishes and recordings that cannot be used, PressError and
    FileRefused.
    """
    check_folder(to)
    wishes = wishes or FilmWishes()
    key = None if wishes.own_voice else film_key(sheet, replace(wishes, tidy=frozenset()))
    if key and (kept := kept_film(to, PARTS, key)) is not None:
        return kept
    ready, shown = make_film(sheet, to, when=when, wishes=wishes, progress=progress)
    shown = replace(shown, made=put({NightPart.FILM: ready}, to, MadeFrom(sheet, when)))
    if key:
        keep_film(folder_within(to, PARTS), key, shown)
    return shown


def make_film(
    sheet: Sheet,
    to: Path,
    *,
    when: datetime,
    wishes: FilmWishes | None = None,
    progress: Callable[[int, int], None] = lambda _done, _of: None,
) -> tuple[tuple[Ready | ReadyFile, ...], FilmFiles]:
    """Make what :func:`film_sheet` puts into a folder, and tell of it; only parts of the film are written."""
    wishes = wishes or FilmWishes()
    worked = WorkedSheet(sheet)
    script, timeline = told(worked, wishes)
    listening = Listening(lambda: folder_within(to, PARTS))
    follow = listening.follow if wishes.listen else in_proportion
    if wishes.recorded:
        timeline, track = recorded_voice(timeline, wishes.recorded, follow=follow, tidy=wishes.tidy)
    else:
        timeline, track = voiced(script, timeline, wishes.voice, wishes.pace, follow=follow, tidy=wishes.tidy)
    others = sheet.header.spoken_at_home[1:]
    note = OWN if wishes.recorded else _NOTES.get(wishes.voice, OWN)
    words = spoken_by(sheet.header.words).short(sheet.header.words)
    said = [sentence for chapter in timeline.chapters for cue in chapter.cues for sentence, _, _ in cue.said]
    level = reading_level(text_of(said), timeline.language)
    wide = on_board(timeline, Shape.WIDE)
    page = script_page(sheet.header, wide, level=f"The words read {reads(level, timeline.language)}.")
    beside = [(told_beside(timeline, _asked(worked, wishes, own), script.merge), own) for own in others]
    boards = {shape: wide if shape is Shape.WIDE else on_board(timeline, shape) for shape in wishes.shapes}
    ready = (
        Ready("script", "pdf", press(page.source, data=page.content, when=when)),
        Ready("walkthrough", "html", walkthrough_html(wide, words, voice_note=BROWSER).encode()),
        Ready("chapters", "vtt", chapters_vtt(timeline).encode()),
        *_read(timeline, words),
        *(one for told, own in beside for one in _read(told, own, f"-{code_of(spoken_by(own))}")),
        *(Ready(NAMES[shape][1], "png", poster(shown, words)) for shape, shown in boards.items()),
    )
    parts = folder_within(to, PARTS)
    whole = [ReadyFile(name, "mp4", parts / f"{name}.mp4") for name in (NAMES[one][0] for one in boards)]
    filmed = film(
        [(shown, one.content) for shown, one in zip(boards.values(), whole, strict=True)],
        words,
        sound=(track.samples, track.rate),
        note=note,
        cache=parts,
        progress=progress,
        beside=[told for told, _ in beside],
    )
    return (*ready, *whole), FilmFiles(
        (),
        filmed,
        timeline.length,
        level,
        max(map(words_spoken, said)),
        (*_notes(worked, timeline, wishes), *listening.notes),
        timeline.language,
        tuple((int(1000 * chapter.start), chapter_name(chapter)) for chapter in timeline.chapters),
        tuple(listening.slips),
    )


def _read(timeline: Timeline, words: ClassWords, named: str = "") -> tuple[Ready, ...]:
    """Return what is read beside the film in a language: captions and transcript, named after it."""
    return (
        Ready(f"walkthrough{named}", "vtt", vtt(timeline).encode()),
        Ready(f"walkthrough{named}", "srt", srt(timeline).encode()),
        Ready(f"transcript{named}", "md", transcript(timeline, words).encode()),
    )


def shapes_named(name: str) -> tuple[Shape, ...]:
    """Return the shapes of a film by a teacher's name for them. Raises InputError with the names there are.

    >>> shapes_named("upright")
    (<Shape.UPRIGHT: 'upright'>,)
    """
    if name == BOTH:
        return tuple(Shape)
    try:
        return (Shape(name),)
    except ValueError:
        names = f"{', '.join(shape.value for shape in Shape)} or {BOTH}"
        msg = f"there is no shape of a film called “{name[:40]}”"
        raise InputError(msg, remedy=f"Choose {names}.") from None


def tidy_wishes(names: str) -> frozenset[Tidy]:
    """Return what is to be done to a recording, by names with commas between. Raises InputError."""
    return tidy_named(names)


def told(worked: WorkedSheet, wishes: FilmWishes) -> tuple[Script, Timeline]:
    """Return a sheet's script and its film in time, before a voice is in it.

    A problem with a line that the board of a shape does not hold is left out (see :func:`unfilmed`); the
    others are told as if it were not on the page. Raises InputError, BoardError where no problem is left.
    """
    asked = _asked(worked, wishes)
    while True:
        try:
            script, timeline = fitted(asked, wishes.pace, wishes.minutes)
            for shape in Shape:
                on_board(timeline, shape)
        except BoardError as error:
            others = tuple(item for item in asked.items if item.label != error.chapter)
            if not others or len(others) == len(asked.items):
                raise
            asked = replace(asked, items=others)
        else:
            return script, timeline


def _asked(worked: WorkedSheet, wishes: FilmWishes, words: ClassWords | None = None) -> Lesson:
    """Return a sheet as it is worked aloud; ``words`` are those of another language than the class's."""
    asked = lesson(
        worked,
        kind=wishes.kind,
        tried=wishes.tried,
        turns=wishes.turns,
        mistake=wishes.mistake,
        choices=wishes.choices,
    )
    return replace(asked, words=words or asked.words)


def unfilmed(sheet: Sheet, timeline: Timeline) -> tuple[str, ...]:
    """Return in sentences which problems of a sheet its film does not show, and what to do."""
    shown = {chapter.label for chapter in timeline.chapters}
    return tuple(
        f"Problem {label} is not filmed: a line of it is too long for the board. "
        "Take smaller numbers or fewer steps for it."
        for label in (problem.label for problem in sheet.problems)
        if label not in shown
    )


def _notes(worked: WorkedSheet, timeline: Timeline, wishes: FilmWishes) -> tuple[str, ...]:
    notes = [*unfilmed(worked.sheet, timeline), *refused(worked, wishes.kind, wishes.choices)]
    if wishes.recorded:
        notes += unrecorded(timeline, wishes.recorded)
    if wishes.minutes and timeline.length > 60 * wishes.minutes:
        notes.append("With this voice the film is longer than asked; without a voice it fits.")
    return tuple(notes)
