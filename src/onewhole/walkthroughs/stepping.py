"""A film in step with the teacher: each cue starts when the teacher's key stepped the board."""

from collections.abc import Mapping, Sequence
from fractions import Fraction
from math import ceil, floor

from msgspec import Struct
from msgspec.structs import replace

from onewhole.notations.sentences.speech import spoken
from onewhole.walkthroughs.stretching import AFTER
from onewhole.walkthroughs.timeline import FRAMES, Move, Timed, TimedChapter, Timeline


class Stepped(Struct, frozen=True):
    """When the board was stepped while a chapter was recorded.

    ``steps`` are the seconds from the recording's start at which the second, third ... cue began; the first
    begins with the recording. ``length`` are its seconds. Raises ValueError for steps that do not come one
    after another.

    >>> Stepped((Fraction(3, 2), Fraction(4)), Fraction(6)).steps[1]
    Fraction(4, 1)
    """

    steps: tuple[Fraction, ...]
    length: Fraction

    def __post_init__(self) -> None:
        """Refuse steps out of order."""
        if any(
            later <= before for before, later in zip((Fraction(0), *self.steps), self.steps, strict=False)
        ):
            raise ValueError("The steps of a recording come one after another, after its start.")


def in_step(timeline: Timeline, recorded: Mapping[str, Stepped]) -> Timeline:
    """Return the film with the cues of each recorded chapter at the frames nearest to its steps.

    ``recorded`` are by chapter label; other chapters keep their length. A recorded chapter ends half a second
    after its recording. What is written and drawn begins with its cue and takes as long as before, or less
    where the cue is shorter; sentences are spread over the cue. Every sentence has a frame at least, so only
    steps that come closer than that to one another are moved. Every time is on a frame, without gaps.

    Raises ValueError where a chapter has not as many cues as its recording.
    """
    chapters: list[TimedChapter] = []
    at = 0
    for chapter in timeline.chapters:
        if chapter.label in recorded:
            made = _stepped(chapter, recorded[chapter.label], at)
        else:
            made = moved(chapter, Fraction(at, FRAMES))
        chapters.append(made)
        at = floor(made.end * FRAMES)
    return replace(timeline, chapters=tuple(chapters))


def moved(chapter: TimedChapter, start: Fraction) -> TimedChapter:
    """Return a chapter that begins at another time and is otherwise the same."""
    by = start - chapter.start
    cues = tuple(
        Timed(
            cue.cue,
            cue.start + by,
            cue.end + by,
            tuple((sentence, first + by, last + by) for sentence, first, last in cue.said),
            tuple(Move(move.act, move.start + by, move.end + by) for move in cue.moves),
        )
        for cue in chapter.cues
    )
    return replace(chapter, start=start, end=chapter.end + by, cues=cues)


def _stepped(chapter: TimedChapter, recorded: Stepped, at: int) -> TimedChapter:
    if len(chapter.cues) != len(recorded.steps) + 1:
        raise ValueError(f"{len(chapter.cues)} cues are not stepped by {len(recorded.steps)} steps.")
    starts = [0]
    for before, step in zip(chapter.cues, recorded.steps, strict=False):
        starts.append(max(floor(step * FRAMES + Fraction(1, 2)), starts[-1] + _least(before)))
    end = max(ceil(recorded.length * FRAMES) + AFTER, starts[-1] + _least(chapter.cues[-1]))
    cues = tuple(
        _cue(cue, at + first, last - first)
        for cue, first, last in zip(chapter.cues, starts, (*starts[1:], end), strict=True)
    )
    return replace(chapter, start=Fraction(at, FRAMES), end=Fraction(at + end, FRAMES), cues=cues)


def _least(cue: Timed) -> int:
    return max(1, len(cue.said))


def _cue(cue: Timed, at: int, frames: int) -> Timed:
    """Return the cue from frame ``at`` on; the quiet before its first word and act is left out."""
    begin = min((move.start for move in cue.moves), default=cue.start)
    acts = max((move.end - begin for move in cue.moves), default=Fraction(0))
    pressed = min(Fraction(1), Fraction(frames, FRAMES) / acts) if acts else Fraction(1)
    moves = tuple(
        Move(
            move.act,
            _on_frame(at, (move.start - begin) * pressed),
            _on_frame(at, (move.end - begin) * pressed),
        )
        for move in cue.moves
    )
    weights = [len(spoken(sentence)) for sentence, _, _ in cue.said]
    ends = _spread(weights, frames)
    said = tuple(
        (sentence, Fraction(at + first, FRAMES), Fraction(at + last, FRAMES))
        for (sentence, _, _), first, last in zip(cue.said, [0, *ends], ends, strict=False)
    )
    return Timed(cue.cue, Fraction(at, FRAMES), Fraction(at + frames, FRAMES), said, moves)


def _on_frame(at: int, offset: Fraction) -> Fraction:
    return Fraction(at + floor(offset * FRAMES), FRAMES)


def _spread(weights: Sequence[int], frames: int) -> list[int]:
    """Return the ends of spans that fill so many frames in proportion, each a frame or more.

    >>> _spread([10, 10, 1], 21), _spread([9, 1], 2)
    ([9, 19, 21], [1, 2])
    """
    free, every = frames - len(weights), sum(weights)
    return [
        count + (free * sum(weights[:count]) // every if every else 0) for count in range(1, len(weights) + 1)
    ]
