"""The script with times: exact seconds, every one on a frame."""

from fractions import Fraction

from msgspec import Struct

from onewhole.languages.table import SPOKEN
from onewhole.sentences.sentence import Sentence
from onewhole.walkthroughs.cue import Act, Cue
from onewhole.walkthroughs.shape import Shape

#: Frames a second; every time is a whole number of frames.
FRAMES = 30


class Move(Struct, frozen=True):
    """An act and when it happens on the board."""

    act: Act
    start: Fraction
    end: Fraction


class Timed(Struct, frozen=True):
    """A cue from ``start`` to ``end``; each of its sentences with its own start and end; its acts."""

    cue: Cue
    start: Fraction
    end: Fraction
    said: tuple[tuple[Sentence, Fraction, Fraction], ...]
    moves: tuple[Move, ...]


class TimedChapter(Struct, frozen=True):
    """A chapter from ``start`` to ``end``; its cues follow each other without a gap."""

    label: str
    title: str
    start: Fraction
    end: Fraction
    cues: tuple[Timed, ...]


class Timeline(Struct, frozen=True):
    """A whole film in time; chapters follow each other without a gap, the first starts at 0.

    ``language`` is the BCP 47 tag of what is said and written in it; ``shape`` is that of the boards on which
    everything has its place, if it has one (:func:`~.on_board.on_board`).
    """

    title: str
    chapters: tuple[TimedChapter, ...]
    language: str = SPOKEN.tag
    shape: Shape = Shape.WIDE

    @property
    def length(self) -> Fraction:
        """Return how long the film is, in seconds."""
        return self.chapters[-1].end
