"""A film in step with what was heard: each sentence at the time it was said, and the board follows."""

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from itertools import pairwise
from math import floor

from msgspec import Struct
from msgspec.structs import replace

from onewhole.notations.sentences.listened import Listened
from onewhole.walkthroughs.listening.grammar import FREE
from onewhole.walkthroughs.listening.words import HeardWord, script_items
from onewhole.walkthroughs.stepping import Stepped, in_step
from onewhole.walkthroughs.stretching import stretched
from onewhole.walkthroughs.timeline import FRAMES, Timed, TimedChapter, Timeline

#: A step of the board comes so long before its first word: the hand is a moment ahead of the voice.
AHEAD = Fraction(1, 5)
#: A sentence was heard where so many hundredths of its words and numbers were.
ENOUGH = 40


class HeardSentence(Struct, frozen=True):
    """A sentence of the script: in which step, which of the step's, and its seconds in the recording."""

    step: int
    sentence: int
    start: Fraction
    end: Fraction


class HeardTimes(Struct, frozen=True):
    """When the sentences of a part were said; ``stepped`` is when its board was, where that is known."""

    length: Fraction
    sentences: tuple[HeardSentence, ...]
    stepped: Stepped | None = None


def heard_sentences(
    steps: Sequence[Sequence[Sequence[Listened]]], heard: Sequence[HeardWord]
) -> tuple[HeardSentence, ...]:
    """Return the sentences of which enough was heard, in the script's order, from first to last word."""
    return tuple(_sentences(steps, heard))


def _sentences(
    steps: Sequence[Sequence[Sequence[Listened]]], heard: Sequence[HeardWord]
) -> Iterator[HeardSentence]:
    items = script_items(steps)
    found: dict[tuple[int, int], list[HeardWord]] = {}
    for word in heard:
        if word.item != FREE:
            place = items[word.item]
            found.setdefault((place.step, place.sentence), []).append(word)
    for step, sentences in enumerate(steps):
        for sentence, said in enumerate(sentences):
            words = found.get((step, sentence), [])
            if words and 100 * len({word.item for word in words}) >= ENOUGH * len(said):
                yield HeardSentence(
                    step, sentence, min(word.start for word in words), max(word.end for word in words)
                )


def in_speech(timeline: Timeline, heard: Mapping[str, HeardTimes]) -> Timeline:
    """Return the film in step with what was heard of its chapters, by label; others keep their length.

    A cue begins when the board was stepped, where that is known, and else just before its first sentence was
    said. A sentence has its own time; those that were not heard share what is left between their neighbors.
    Every time is on a frame, and within its cue.
    """
    parts = {chapter.label: chapter for chapter in timeline.chapters}
    stepped = {label: times.stepped or _steps(parts[label], times) for label, times in heard.items()}
    made = in_step(timeline, stepped)
    return replace(
        made,
        chapters=tuple(
            _said(chapter, heard[chapter.label]) if chapter.label in heard else chapter
            for chapter in made.chapters
        ),
    )


def spread(timeline: Timeline, lengths: Mapping[str, Fraction], stepped: Mapping[str, Stepped]) -> Timeline:
    """Return the film with its recorded chapters spread in proportion: where nothing was heard of them."""
    made = in_step(timeline, stepped) if stepped else timeline
    return stretched(made, {label: length for label, length in lengths.items() if label not in stepped})


def _steps(chapter: TimedChapter, times: HeardTimes) -> Stepped:
    """Tell when the board is stepped: at what was heard, and in proportion between."""
    first: dict[int, Fraction] = {}
    for one in times.sentences:
        first[one.step] = min(one.start, first.get(one.step, one.start))
    known = [(0, Fraction(0))]
    for step, start in sorted(first.items()):
        at = start - AHEAD
        if step and at > known[-1][1] and at < times.length:
            known.append((step, at))
    known.append((len(chapter.cues), times.length))
    weights = [max(Fraction(1, FRAMES), cue.end - cue.start) for cue in chapter.cues]
    steps: list[Fraction] = []
    for (here, begin), (there, end) in pairwise(known):
        whole = sum(weights[here:there], Fraction(0))
        steps += [
            begin + (end - begin) * sum(weights[here:at], Fraction(0)) / whole for at in range(here, there)
        ]
    return Stepped(tuple(steps[1:]), times.length)


def _said(chapter: TimedChapter, times: HeardTimes) -> TimedChapter:
    found = {(one.step, one.sentence): one for one in times.sentences}
    cues = tuple(
        _cue(
            cue,
            [
                None
                if (one := found.get((step, at))) is None
                else (chapter.start + one.start, chapter.start + one.end)
                for at in range(len(cue.said))
            ],
        )
        for step, cue in enumerate(chapter.cues)
    )
    return replace(chapter, cues=cues)


def _cue(cue: Timed, heard: Sequence[tuple[Fraction, Fraction] | None]) -> Timed:
    """Return the cue with its sentences at their times, one after another."""
    if not any(heard):
        return cue
    first, last = floor(cue.start * FRAMES), floor(cue.end * FRAMES)
    spans: list[tuple[int, int] | None] = []
    free = first
    for at, one in enumerate(heard):
        after = len(heard) - at - 1
        if one is None:
            spans.append(None)
            continue
        begin = min(max(floor(one[0] * FRAMES), free), last - 1 - after)
        end = min(max(floor(one[1] * FRAMES) + 1, begin + 1), last - after)
        spans.append((begin, end))
        free = end
    said = tuple(
        (sentence, Fraction(begin, FRAMES), Fraction(end, FRAMES))
        for (sentence, _, _), (begin, end) in zip(cue.said, _filled(spans, first, last), strict=True)
    )
    return replace(cue, said=said)


def _filled(spans: Sequence[tuple[int, int] | None], first: int, last: int) -> list[tuple[int, int]]:
    """Give each that has no span an equal share of what is free between its neighbors, a frame at least.

    >>> _filled([None, (10, 20), None, None], 0, 40)
    [(0, 10), (10, 20), (20, 30), (30, 40)]
    """
    filled: list[tuple[int, int]] = []
    at = 0
    while at < len(spans):
        one = spans[at]
        if one is not None:
            begin = max(one[0], filled[-1][1] if filled else first)
            filled.append((begin, max(one[1], begin + 1)))
            at += 1
            continue
        stop = next((other for other in range(at, len(spans)) if spans[other] is not None), len(spans))
        begin = filled[-1][1] if filled else first
        after = spans[stop] if stop < len(spans) else None
        end = max(last if after is None else after[0], begin + stop - at)
        edges = [begin + (end - begin) * part // (stop - at) for part in range(stop - at + 1)]
        filled += list(pairwise(edges))
        at = stop
    return filled
