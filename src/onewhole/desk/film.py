"""Film a sheet: script, walkthrough for the browser, captions, chapters, transcript, film and poster."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from fractions import Fraction
from pathlib import Path

from onewhole.desk.lesson import lesson, refused
from onewhole.desk.print_pages import Made, Ready, put
from onewhole.notations.aloud import aloud, spoken_words
from onewhole.pictures.picture import Kind
from onewhole.presses.folders import made
from onewhole.presses.pdf import press
from onewhole.presses.poster import poster
from onewhole.presses.recording import voice_files
from onewhole.presses.sound import Sound
from onewhole.presses.soundtrack import soundtrack
from onewhole.presses.video import Filmed, film
from onewhole.presses.voice import spoken
from onewhole.sheets.document import Sheet
from onewhole.sheets.reading_level import ReadingLevel, reading_level
from onewhole.walkthroughs.cue import Script
from onewhole.walkthroughs.fitting import fitted
from onewhole.walkthroughs.lesson import Pace
from onewhole.walkthroughs.stretching import stretched
from onewhole.walkthroughs.timeline import Timeline
from onewhole.walkthroughs.timing import timed
from onewhole.writers.captions import chapters_vtt, srt, vtt
from onewhole.writers.script_page import script_page
from onewhole.writers.transcript import transcript
from onewhole.writers.walkthrough_html import walkthrough_html

#: What may be asked for instead of a recording.
SILENT = "silent"
SYNTHETIC = "synthetic"
#: What recordings of the first and the last chapter are called.
OPENING, CLOSING = "opening", "closing"

_NOTES = {
    SILENT: "Without a voice: the words are in the captions.",
    SYNTHETIC: "The voice is synthetic: a computer speaks.",
}
BROWSER = "When it reads aloud, the voice is your browser's."
#: Where the parts of a film are kept, so that only changed ones are made again.
PARTS = ".film-parts"


@dataclass(frozen=True, slots=True)
class Wishes:
    """How a sheet is to be filmed.

    ``voice`` is "silent", "synthetic", or the path of the teacher's own recording: a folder with one file a
    problem, or one file with its cue times beside it. ``minutes`` is the length to fit into.
    """

    voice: str = SILENT
    minutes: int | None = None
    pace: Pace = field(default_factory=Pace)
    kind: Kind | None = None
    tried: tuple[str, ...] = ()
    mistake: bool = False


@dataclass(frozen=True, slots=True)
class Shown:
    """What a filming made, how long the film is, how its words read, and what was not as wished."""

    made: tuple[Made, ...]
    filmed: Filmed
    length: Fraction
    level: ReadingLevel
    longest: int
    notes: tuple[str, ...]

    @property
    def reads(self) -> str:
        """Say how hard the words are."""
        return _reads(self.level)


def film_sheet(
    sheet: Sheet,
    to: Path,
    *,
    when: datetime,
    wishes: Wishes | None = None,
    progress: Callable[[int, int], None] = lambda _done, _of: None,
) -> Shown:
    """Film a sheet into a folder, which is made if it is not there.

    Everything else is made before the film is, and until the film is whole only its parts are written, in a
    folder of their own; files of the night before stay as they were. ``progress`` is told how many frames
    are done of how many. Raises InputError for wishes and recordings that cannot be used, PressError and
    FileRefused.
    """
    wishes = wishes or Wishes()
    script, timeline = fitted(
        lesson(sheet, kind=wishes.kind, tried=wishes.tried, mistake=wishes.mistake),
        wishes.pace,
        wishes.minutes,
    )
    timeline, track = _voiced(script, timeline, wishes)
    note = _NOTES.get(wishes.voice, "The voice is the teacher's own.")
    words = sheet.header.words
    said = [sentence for chapter in timeline.chapters for cue in chapter.cues for sentence, _, _ in cue.said]
    level = reading_level(" ".join(said))
    assert level is not None, "a film always says something"
    page = script_page(sheet.header, timeline, level=f"The words read {_reads(level)}.")
    ready = (
        Ready("script", "pdf", press(page.source, data=page.content, when=when)),
        Ready("walkthrough", "html", walkthrough_html(timeline, words, voice_note=BROWSER).encode()),
        Ready("walkthrough", "vtt", vtt(timeline).encode()),
        Ready("walkthrough", "srt", srt(timeline).encode()),
        Ready("chapters", "vtt", chapters_vtt(timeline).encode()),
        Ready("transcript", "md", transcript(timeline, words).encode()),
        Ready("poster", "png", poster(timeline, words)),
    )
    path = made(to) / "walkthrough.mp4"
    filmed = film(
        timeline,
        words,
        path,
        sound=(track.samples, track.rate),
        note=note,
        cache=made(to / PARTS),
        progress=progress,
    )
    return Shown(
        (*put(ready, to), Made("walkthrough", path)),
        filmed,
        timeline.length,
        level,
        max(map(spoken_words, said)),
        _notes(sheet, timeline, wishes),
    )


def _reads(level: ReadingLevel) -> str:
    return f"at grade {level.shown}" if level.grade >= 1 else "below grade 1"


def _notes(sheet: Sheet, timeline: Timeline, wishes: Wishes) -> tuple[str, ...]:
    notes = [] if wishes.kind is None else list(refused(sheet, wishes.kind))
    if wishes.minutes and timeline.length > 60 * wishes.minutes:
        notes.append("With this voice the film is longer than asked; without a voice it fits.")
    return tuple(notes)


def _voiced(script: Script, timeline: Timeline, wishes: Wishes) -> tuple[Timeline, Sound]:
    """Return the film's times with a voice in them, and its sound."""
    match wishes.voice:
        case "silent":
            return timeline, soundtrack(timeline, {})
        case "synthetic":
            sentences = {
                sentence for chapter in script.chapters for cue in chapter.cues for sentence in cue.says
            }
            rate = wishes.pace.words_a_minute
            sounds = {
                sentence: spoken(aloud(sentence), words_a_minute=rate) for sentence in sorted(sentences)
            }
            timeline = timed(
                script, wishes.pace, {sentence: sound.seconds for sentence, sound in sounds.items()}
            )
            return timeline, soundtrack(timeline, sounds)
        case path:
            plain = [chapter.label for chapter in timeline.chapters]
            named = _labelled(timeline, [OPENING, *plain[1:-1], CLOSING])
            voices = voice_files(Path(path), [chapter.label for chapter in named.chapters])
            named = stretched(named, {label: sound.seconds for label, sound in voices.items()})
            return _labelled(named, plain), soundtrack(named, voices)


def _labelled(timeline: Timeline, labels: Sequence[str]) -> Timeline:
    """Give the chapters other labels: in a film opening and closing have none, recordings have names."""
    pairs = zip(timeline.chapters, labels, strict=True)
    return replace(timeline, chapters=tuple(replace(chapter, label=label) for chapter, label in pairs))
