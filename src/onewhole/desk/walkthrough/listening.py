"""The teacher's own recording is listened to: the board and the captions follow it, and slips are told."""

import hashlib
from collections.abc import Callable, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from dataclasses import dataclass, field
from fractions import Fraction
from os import cpu_count
from pathlib import Path
from typing import Final

import msgspec
from msgspec import Struct

from onewhole.desk.walkthrough.soundtrack_choice import called
from onewhole.languages.table import LANGUAGES, SPOKEN
from onewhole.notations.sentences.listened import Listened, listened
from onewhole.presses.listening.hearing import HeardPart, NotHeard, heard_part
from onewhole.presses.listening.scores import FRAMES
from onewhole.presses.sound import Sound
from onewhole.walkthroughs.listening.timed import (
    HeardSentence,
    HeardTimes,
    heard_sentences,
    in_speech,
    spread,
)
from onewhole.walkthroughs.stepping import Stepped
from onewhole.walkthroughs.timeline import TimedChapter, Timeline

#: Raised whenever the same recording may be heard otherwise.
_VERSION: Final = 3


class ToldSlip(Struct, frozen=True):
    """A slip of the tongue: in which part, at which second of the film, what was said and is written.

    ``within`` is the second of its part.
    """

    label: str
    at: Fraction
    said: str
    board: str
    within: Fraction = Fraction(0)

    def __str__(self) -> str:
        """Say it in a sentence.

        >>> print(ToldSlip("3", Fraction(138), "seven fifths", "6/5"))
        2:18, problem 3: you said "seven fifths"; the board says 6/5. Say it again, or keep it.
        """
        minutes, seconds = divmod(int(self.at), 60)
        said = f'you said "{self.said}"; the board says {self.board}'
        return f"{minutes}:{seconds:02}, {called(self.label)}: {said}. Say it again, or keep it."


class _Kept(msgspec.Struct, frozen=True):
    """What was heard of a part, as it is kept: times in hundredths of a second."""

    followed: bool
    sentences: tuple[tuple[int, int, int, int], ...]
    slips: tuple[tuple[int, str, str], ...]


@dataclass(slots=True)
class Listening:
    """Listens while a film gets its voice; what was found is here afterwards.

    What was heard is kept in the folder that ``folder`` makes, so that an unchanged part is not listened to
    again.
    """

    folder: Callable[[], Path]
    slips: list[ToldSlip] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)

    def follow(
        self, timeline: Timeline, voices: Mapping[str, Sound], stepped: Mapping[str, Stepped]
    ) -> Timeline:
        """Return the film in step with its voices, by label; ``stepped`` is when the board was stepped.

        A part that cannot be followed is spread in proportion, and the notes say so.
        """
        if timeline.language != SPOKEN.tag:
            name = LANGUAGES[timeline.language].name
            self.notes.append(
                f"The recording is in {name}, and only the English of American adults can be listened to: "
                "its captions are spread in proportion."
            )
            return spread(timeline, voices_lengths(voices), stepped)
        parts = [chapter for chapter in timeline.chapters if chapter.label in voices]
        place = self.folder()
        with ThreadPoolExecutor(min(4, cpu_count() or 1)) as pool:
            found = list(pool.map(lambda part: self._heard(part, voices[part.label], place), parts))
        heard: dict[str, HeardTimes] = {}
        lost: list[str] = []
        for chapter, kept in zip(parts, found, strict=True):
            if kept is None or not kept.followed:
                lost += [called(chapter.label)] if kept is not None else []
                continue
            sentences = tuple(
                HeardSentence(step, sentence, Fraction(start, FRAMES), Fraction(end, FRAMES))
                for step, sentence, start, end in kept.sentences
            )
            label = chapter.label
            heard[label] = HeardTimes(voices[label].seconds, sentences, stepped.get(label))
        if lost:
            self.notes.append(
                f"Not followed, so its captions are spread in proportion: {', '.join(lost)}. It may be "
                "another problem, too quiet, or not the English of an American adult."
            )
        rest = {label: sound for label, sound in voices.items() if label not in heard}
        made = spread(timeline, voices_lengths(rest), {at: one for at, one in stepped.items() if at in rest})
        made = in_speech(made, heard)
        starts = {chapter.label: chapter.start for chapter in made.chapters}
        self.slips += [
            ToldSlip(
                chapter.label,
                starts[chapter.label] + Fraction(at, FRAMES),
                said,
                board,
                Fraction(at, FRAMES),
            )
            for chapter, kept in zip(parts, found, strict=True)
            if kept is not None
            for at, said, board in kept.slips
        ]
        return made

    def _heard(self, chapter: TimedChapter, sound: Sound, folder: Path) -> _Kept | None:
        """Return what is heard of a part, kept or anew; None where it cannot be listened to."""
        steps = [[listened(sentence) for sentence in cue.cue.says] for cue in chapter.cues]
        said = repr((_VERSION, steps, sound.rate)).encode()
        name = hashlib.sha256(said + sound.samples.tobytes()).hexdigest()
        place = folder / f"heard-{name[:32]}.json"
        with suppress(OSError, msgspec.DecodeError):
            return msgspec.json.decode(place.read_bytes(), type=_Kept)
        try:
            part = heard_part(sound, steps)
        except NotHeard as no:
            if str(no) not in self.notes:
                self.notes.append(str(no))
            return None
        kept = _kept(part, steps)
        with suppress(OSError):  # it is only a cache
            place.write_bytes(msgspec.json.encode(kept))
        return kept


def _kept(part: HeardPart, steps: Sequence[Sequence[Sequence[Listened]]]) -> _Kept:
    sentences = heard_sentences(steps, part.words)
    return _Kept(
        part.followed,
        tuple((one.step, one.sentence, int(one.start * FRAMES), int(one.end * FRAMES)) for one in sentences),
        tuple((int(one.at * FRAMES), " ".join(one.said), one.board) for one in part.slips),
    )


def voices_lengths(voices: Mapping[str, Sound]) -> dict[str, Fraction]:
    """Return how long each part's voice lasts, in seconds."""
    return {label: sound.seconds for label, sound in voices.items()}
