"""A film fitted to a voice: each chapter as long as what was recorded for it."""

from collections.abc import Mapping, Sequence
from fractions import Fraction
from math import ceil

from msgspec.structs import replace

from onewhole.walkthroughs.timeline import FRAMES, Move, Timed, TimedChapter, Timeline

#: Quiet after a recording, in frames: half a second.
AFTER = FRAMES // 2


def stretched(timeline: Timeline, lengths: Mapping[str, Fraction]) -> Timeline:
    """Return the film with each chapter of ``lengths`` as long as its recording and half a second more.

    ``lengths`` are seconds by chapter label; other chapters keep their length. Every time is on a frame and
    there are no gaps. Where a chapter grows, each of its cues grows in proportion, and an act comes later
    with the words but takes as long as before. Where it shrinks, only quiet and words give way: a cue is
    never shorter than its acts, or than a frame for each sentence, so a chapter may then stay longer than its
    recording.
    """
    chapters: list[TimedChapter] = []
    at = 0
    for chapter in timeline.chapters:
        whole = None if chapter.label not in lengths else ceil(lengths[chapter.label] * FRAMES) + AFTER
        fitted = _chapter(chapter, at, whole)
        chapters.append(fitted)
        at = _frames(fitted.end)
    return replace(timeline, chapters=tuple(chapters))


def _chapter(chapter: TimedChapter, at: int, whole: int | None) -> TimedChapter:
    """Return the chapter from frame ``at`` on, ``whole`` frames long (None: as long as before)."""
    old = [_frames(cue.end - cue.start) for cue in chapter.cues]
    more = 0 if whole is None else whole - sum(old)
    if more >= 0:
        new = [have + share for have, share in zip(old, _shares(more, old), strict=True)]
    else:
        slack = [max(0, have - _least(cue)) for have, cue in zip(old, chapter.cues, strict=True)]
        given = _shares(min(-more, sum(slack)), slack)
        new = [have - share for have, share in zip(old, given, strict=True)]
    cues: list[Timed] = []
    start = at
    for cue, frames in zip(chapter.cues, new, strict=True):
        cues.append(_cue(cue, start, frames))
        start += frames
    return replace(chapter, start=_seconds(at), end=_seconds(start), cues=tuple(cues))


def _shares(total: int, weights: Sequence[int]) -> list[int]:
    """Part a whole number in proportion to the weights, none off by 1 or more; they add up exactly.

    >>> _shares(10, [1, 1, 1]), _shares(0, [0, 0])
    ([3, 3, 4], [0, 0])
    """
    every = sum(weights)
    if not every:
        return [0 for _ in weights]
    ends = [total * sum(weights[: count + 1]) // every for count in range(len(weights))]
    return [end - before for before, end in zip([0, *ends], ends, strict=False)]


def _least(cue: Timed) -> int:
    """Return the fewest frames a cue needs: for its acts, and one for each sentence."""
    acts = max((_frames(move.end - cue.start) for move in cue.moves), default=0)
    return max(acts, len(cue.said), 1)


def _cue(cue: Timed, at: int, frames: int) -> Timed:
    """Return the cue from frame ``at`` on, with a new length."""
    old = _frames(cue.end - cue.start)

    def later(time: Fraction) -> int:
        offset = _frames(time - cue.start)
        return offset * frames // old if old else offset

    moves: list[Move] = []
    for move in cue.moves:
        first = later(move.start) if frames > old else _frames(move.start - cue.start)
        last = first + _frames(move.end - move.start)
        moves.append(replace(move, start=_seconds(at + first), end=_seconds(at + last)))
    spans = _apart([(later(start), later(end)) for _, start, end in cue.said], frames)
    said = tuple(
        (sentence, _seconds(at + first), _seconds(at + last))
        for (sentence, _, _), (first, last) in zip(cue.said, spans, strict=True)
    )
    return Timed(cue.cue, _seconds(at), _seconds(at + frames), said, tuple(moves))


def _apart(spans: Sequence[tuple[int, int]], frames: int) -> list[tuple[int, int]]:
    """Give every span a frame or more, one after another, within so many frames.

    >>> _apart([(0, 0), (0, 1), (1, 1)], 3)
    [(0, 1), (1, 2), (2, 3)]
    """
    forward: list[tuple[int, int]] = []
    free = 0
    for first, last in spans:
        begin = max(first, free)
        free = max(last, begin + 1)
        forward.append((begin, free))
    backward: list[tuple[int, int]] = []
    bound = frames
    for first, last in reversed(forward):
        end = min(last, bound)
        bound = min(first, end - 1)
        backward.append((bound, end))
    return backward[::-1]


def _frames(seconds: Fraction) -> int:
    count = seconds * FRAMES
    if count.denominator != 1:
        raise ValueError(f"{seconds} seconds are not a whole number of frames.")
    return count.numerator


def _seconds(frames: int) -> Fraction:
    return Fraction(frames, FRAMES)
