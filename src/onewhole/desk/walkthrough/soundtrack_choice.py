"""A film gets its voice: none, a synthetic one, the teacher's files, or what was recorded at the board."""

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from fractions import Fraction
from itertools import pairwise
from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace

from onewhole.notations.sentences.speech import spoken as in_words
from onewhole.presses.decoding import LONGEST, RecordingRefused, recording_in, said
from onewhole.presses.recording import voice_files
from onewhole.presses.sound import Sound
from onewhole.presses.soundtrack import soundtrack
from onewhole.presses.tidying import Tidy, tidied, trimmed_about
from onewhole.presses.voice import spoken
from onewhole.walkthroughs.cue import Script
from onewhole.walkthroughs.lesson import Pace
from onewhole.walkthroughs.listening.timed import spread
from onewhole.walkthroughs.stepping import Stepped
from onewhole.walkthroughs.timeline import Timeline
from onewhole.walkthroughs.timing import timed

#: What may be asked for instead of a recording.
SILENT = "silent"
SYNTHETIC = "synthetic"
#: What recordings of the first and the last chapter are called.
OPENING, CLOSING = "opening", "closing"
#: One chapter's recording has no more bytes and no more seconds than this.
MOST_BYTES, MOST_SECONDS = 16 * 1024 * 1024, 600
#: No part of a film has more steps than this.
MOST_STEPS = 500
#: A step may come so many seconds after the sound ends: a microphone is a moment behind the keys.
BEHIND = 1


class Recorded(Struct, frozen=True):
    """A chapter recorded at the board: a sound file (WebM, WAV, M4A), and when the key stepped the board.

    ``steps`` are milliseconds from the recording's start, one for every cue but the first.
    """

    sound: bytes
    steps: tuple[int, ...]


#: Fits a film to its voices, by label, and to when its board was stepped.
Follow = Callable[[Timeline, Mapping[str, Sound], Mapping[str, Stepped]], Timeline]


def in_proportion(
    timeline: Timeline, voices: Mapping[str, Sound], stepped: Mapping[str, Stepped]
) -> Timeline:
    """Fit a film to its voices without listening to them."""
    return spread(timeline, {label: sound.seconds for label, sound in voices.items()}, stepped)


def voiced(
    script: Script,
    timeline: Timeline,
    voice: str,
    pace: Pace,
    *,
    follow: Follow = in_proportion,
    tidy: Collection[Tidy] = (),
) -> tuple[Timeline, Sound]:
    """Return the film's times with a voice in them, and its sound.

    ``voice`` is "silent", "synthetic" or the path of the teacher's files. Raises RecordingRefused.
    """
    match voice:
        case "silent":
            return timeline, soundtrack(timeline)
        case "synthetic":
            sentences = {
                sentence for chapter in script.chapters for cue in chapter.cues for sentence in cue.says
            }
            rate = pace.words_a_minute
            sounds = {
                sentence: spoken(in_words(sentence), words_a_minute=rate, language=sentence.language)
                for sentence in sorted(sentences, key=in_words)
            }
            timeline = timed(script, pace, {sentence: sound.seconds for sentence, sound in sounds.items()})
            return timeline, soundtrack(timeline, sentences=sounds)
        case path:
            plain = [chapter.label for chapter in timeline.chapters]
            named = named_parts(timeline)
            voices = voice_files(Path(path), [chapter.label for chapter in named.chapters])
            voices = {label: tidied(sound, tidy) for label, sound in voices.items()}
            named = follow(named, voices, {})
            return _labelled(named, plain), soundtrack(named, chapters=voices)


def recorded_voice(
    timeline: Timeline,
    recorded: Mapping[str, Recorded],
    *,
    follow: Follow = in_proportion,
    tidy: Collection[Tidy] = (),
) -> tuple[Timeline, Sound]:
    """Return the film in step with what was recorded at the board, and its sound.

    Chapters without a recording are as long as before and silent. Raises RecordingRefused with all that is
    wrong, each with the chapter's name: for a chapter that is not there, sound that cannot be used, steps
    that do not fit the chapter or the sound, and more than an hour altogether.
    """
    plain = [chapter.label for chapter in timeline.chapters]
    named = named_parts(timeline)
    parts = {chapter.label: chapter for chapter in named.chapters}
    mistakes: list[RecordingRefused] = []
    voices: dict[str, Sound] = {}
    steps: dict[str, Stepped] = {}
    left = Fraction(LONGEST)
    for label in sorted(recorded, key=lambda one: list(parts).index(one) if one in parts else -1):
        try:
            count = len(parts[label].cues) if label in parts else None
            voices[label] = _checked(label, recorded[label], count, left)
            stepped = tuple(Fraction(step, 1000) for step in recorded[label].steps)
            steps[label] = Stepped(stepped, voices[label].seconds)
            left -= voices[label].seconds
        except RecordingRefused as refused:
            mistakes.append(refused)
    if mistakes:
        first = mistakes[0]
        if len(mistakes) > 1:
            told = "\n".join(f"  {mistake}" for mistake in mistakes)
            first = RecordingRefused(f"{len(mistakes)} recordings need a change:\n{told}")
        first.mistakes = tuple(mistakes)
        raise first
    for label in voices if Tidy.TRIM in tidy else ():
        voices[label], steps[label] = _trimmed(voices[label], steps[label])
    voices = {label: tidied(sound, set(tidy) - {Tidy.TRIM}) for label, sound in voices.items()}
    named = follow(named, voices, steps)
    return _labelled(named, plain), soundtrack(named, chapters=voices)


def _trimmed(sound: Sound, stepped: Stepped) -> tuple[Sound, Stepped]:
    """Cut silence off at the ends of a recording; the board is stepped at the same sounds as before."""
    if not stepped.steps:
        made, _ = trimmed_about(sound, sound.seconds, Fraction(0))
        return made, Stepped((), made.seconds)
    made, cut = trimmed_about(sound, stepped.steps[0] / 2, stepped.steps[-1] + BEHIND)
    return made, Stepped(tuple(step - cut for step in stepped.steps), made.seconds)


def check_recorded(label: str, recorded: Recorded, count: int | None) -> str:
    """Return how long a recording of a part is, in words, if a film can use it. Raises RecordingRefused.

    ``count`` is how many steps the part's board has, None where there is no such part.
    """
    return said(_checked(label, recorded, count, Fraction(LONGEST)).seconds)


def _checked(label: str, recorded: Recorded, count: int | None, left: Fraction) -> Sound:
    name = f"the recording of {called(label)}"
    if count is None:
        raise RecordingRefused("The film has no such part", where=name, remedy="Take the recording out.")
    if len(recorded.sound) > MOST_BYTES:
        what = f"The recording is larger than {MOST_BYTES // 1024**2} MB"
        raise RecordingRefused(what, where=name, remedy="Record a shorter one.")
    steps = recorded.steps
    if len(steps) != count - 1:
        what = f"The board has {count} steps here now, and it was recorded with {len(steps) + 1}"
        remedy = "Record it again, or put the choices back as they were."
        raise RecordingRefused(what, where=name, remedy=remedy)
    if any(later <= before for before, later in pairwise((0, *steps))):
        what = "The steps of the board do not come one after another"
        raise RecordingRefused(what, where=name, remedy="Record it again.")
    sound = recording_in(recorded.sound, name, at_most=Fraction(MOST_SECONDS))
    if sound.seconds > left:
        what = f"The recordings together are longer than {said(Fraction(LONGEST))}"
        raise RecordingRefused(what, where=name, remedy="Record shorter ones.")
    if steps and Fraction(steps[-1], 1000) > sound.seconds + BEHIND:
        what = f"The sound ends after {said(sound.seconds)}, before the last step of the board"
        raise RecordingRefused(what, where=name, remedy="Record it again.")
    return sound


def unrecorded(timeline: Timeline, labels: Iterable[str]) -> tuple[str, ...]:
    """Say which chapters have no recording: their words are in the captions."""
    had = set(labels)
    without = [chapter.label for chapter in named_parts(timeline).chapters if chapter.label not in had]
    if not without:
        return ()
    names = ", ".join(called(label) for label in without)
    return (f"Without a recording, so silent, with the words in the captions: {names}.",)


def called(label: str) -> str:
    """Return what a chapter is called in a sentence.

    >>> called("opening"), called("2a")
    ('the opening', 'problem 2a')
    """
    return f"the {label}" if label in {OPENING, CLOSING} else f"problem {label}"


def named_parts(timeline: Timeline) -> Timeline:
    """Give the first and the last chapter, which have no label in a film, the names recordings have."""
    plain = [chapter.label for chapter in timeline.chapters]
    return _labelled(timeline, [OPENING, *plain[1:-1], CLOSING])


def _labelled(timeline: Timeline, labels: Sequence[str]) -> Timeline:
    pairs = zip(timeline.chapters, labels, strict=True)
    return replace(timeline, chapters=tuple(replace(chapter, label=label) for chapter, label in pairs))
