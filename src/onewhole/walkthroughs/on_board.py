"""A film on boards of one shape: what happens gets its place, and the times stay as they are."""

from collections.abc import Iterator
from fractions import Fraction
from math import floor
from typing import assert_never

from msgspec.structs import replace

from onewhole.pictures.changes import changes
from onewhole.walkthroughs.changed_bits import changed_bits
from onewhole.walkthroughs.cue import Act, Draw, Fresh, Strike, Write
from onewhole.walkthroughs.layout import PlacedAct, laid_out
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import FRAMES, Move, Timed, TimedChapter, Timeline

#: Frames that something takes which the board needs besides the script's acts.
_MORE = 9


def on_board(timeline: Timeline, shape: Shape) -> Timeline:
    """Return a film with a place on boards of a shape for everything that is written and drawn.

    Every chapter, cue and sentence keeps its time, so that films of both shapes have one sound and the same
    captions. Every chapter begins on a fresh board. Where a board is wiped between the script's acts, the
    acts of that cue come a little later, or closer together. Raises BoardError.
    """
    chapters = tuple(
        _chapter(chapter, shape, timeline.language, begun=at > 0)
        for at, chapter in enumerate(timeline.chapters)
    )
    return replace(timeline, chapters=chapters, shape=shape)


def _chapter(chapter: TimedChapter, shape: Shape, language: str, *, begun: bool) -> TimedChapter:
    acts = _marked(tuple(move.act for timed in chapter.cues for move in timed.moves))
    placed = iter(laid_out(acts, shape, chapter.label or chapter.title, language))
    wiped = bool(acts) and isinstance(acts[0], Fresh)
    cues = []
    for at, timed in enumerate(chapter.cues):
        found = [(move, next(placed)) for move in timed.moves]
        first = (PlacedAct(Fresh(), more=True),) if begun and not at and not wiped else ()
        cues.append(_timed(timed, first, found))
    return replace(chapter, cues=tuple(cues))


def _marked(acts: tuple[Act, ...]) -> tuple[Act, ...]:
    """Mark in every line and picture of a chapter what is new beside the one before it."""
    made: list[Act] = []
    line: Write | None = None
    drawn: Draw | None = None
    for act in acts:
        match act:
            case Write(content=content) if not isinstance(content, str):
                fresh: frozenset[int] = frozenset()
                if act.leads and line is not None and not isinstance(line.content, str):
                    fresh = changed_bits(line.content, content)
                line = act
                made.append(replace(act, fresh=fresh))
            case Draw(scene):
                seen = () if drawn is None else changes(drawn.scene, scene)
                drawn = act
                made.append(replace(act, marks=seen))
            case Fresh():
                line = drawn = None
                made.append(act)
            case Write() | Strike():
                made.append(act)
            case _:
                assert_never(act)
    return tuple(made)


def _timed(
    timed: Timed, first: tuple[PlacedAct, ...], found: list[tuple[Move, tuple[PlacedAct, ...]]]
) -> Timed:
    moves = _in_time(timed, [*_spans(timed, first, found)])
    return replace(timed, cue=replace(timed.cue, acts=tuple(move.act for move in moves)), moves=tuple(moves))


def _spans(
    timed: Timed, first: tuple[PlacedAct, ...], found: list[tuple[Move, tuple[PlacedAct, ...]]]
) -> Iterator[tuple[Act, int, int]]:
    """Give every act of a cue with its first frame and the frame after its last.

    One comes after another, but for a picture, which changes while the line beside it is written.
    """
    at = _frame(timed.start)
    for one in first:
        yield one.act, at, at + _MORE
        at += _MORE
    wrote: int | None = None
    for move, acts in found:
        at = max(at, _frame(move.start)) if wrote is None else at
        for one in acts:
            takes = _MORE if one.more else _frame(move.end) - _frame(move.start)
            start = wrote if isinstance(one.act, Draw) and wrote is not None and not one.more else at
            yield one.act, start, start + takes
            at = max(at, start + takes)
            wrote = start if isinstance(one.act, Write) and not one.more else None


def _in_time(timed: Timed, spans: list[tuple[Act, int, int]]) -> list[Move]:
    """Press what happens in a cue together where it would go on after its end."""
    if not spans:
        return []
    begin, end, last = spans[0][1], max(stop for _, _, stop in spans), _frame(timed.end)
    if end > last:
        share = Fraction(max(last - begin, 0), end - begin)
        spans = [
            (act, begin + floor((start - begin) * share), begin + floor((stop - begin) * share))
            for act, start, stop in spans
        ]
    return [Move(act, Fraction(start, FRAMES), Fraction(stop, FRAMES)) for act, start, stop in spans]


def _frame(seconds: Fraction) -> int:
    return round(seconds * FRAMES)
