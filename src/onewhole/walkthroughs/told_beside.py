"""A film told in a second language beside its own: what is read while the voice speaks the first one."""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import pairwise
from math import floor

from msgspec.structs import replace

from onewhole.notations.sentences.text import sentence_text
from onewhole.sentences.sentence import Sentence, Sentences
from onewhole.walkthroughs.cue import Cue, Role, Script
from onewhole.walkthroughs.lesson import Lesson
from onewhole.walkthroughs.script import script
from onewhole.walkthroughs.timeline import FRAMES, Timed, TimedChapter, Timeline


def told_beside(timeline: Timeline, lesson: Lesson, merge: int) -> Timeline:
    """Return the film with what is said in it in the language of ``lesson``: its words, not its times.

    ``lesson`` is the film's in other words, ``merge`` how much its script was shortened; problems that the
    film does not show are left out. Each cue says in its own time what the other language says there, its
    sentences one after another, each in proportion to its length, a frame at least. Where the other
    language says nothing at a step the film's own words stand, and what it says at a step that the film does
    not have is left out.
    """
    shown = {chapter.label for chapter in timeline.chapters}
    items = tuple(item for item in lesson.items if item.label in shown)
    made = script(replace(lesson, items=items), merge=merge)
    return replace(timeline, chapters=tuple(_chapters(timeline, made)), language=made.language)


def _chapters(timeline: Timeline, made: Script) -> Iterator[TimedChapter]:
    for chapter, other in zip(timeline.chapters, made.chapters, strict=True):
        says = _says([timed.cue for timed in chapter.cues], other.cues)
        cues = tuple(_cue(timed, said) for timed, said in zip(chapter.cues, says, strict=True))
        yield replace(chapter, title=other.title, cues=cues)


def _says(cues: Sequence[Cue], others: Sequence[Cue]) -> list[Sentences]:
    """Return what others say at each cue: at the next one of the same kind and line; else its own words."""
    said = [cue.says for cue in cues]
    at = 0
    for other in others:
        found = next((place for place in range(at, len(cues)) if _kind(cues[place]) == _kind(other)), None)
        if found is not None:
            said[found] = other.says or said[found]
            at = found + 1
    return said


def _kind(cue: Cue) -> tuple[Role, int | None]:
    return cue.role, cue.line


def _cue(timed: Timed, says: Sentences) -> Timed:
    begin = timed.said[0][1] if timed.said else timed.start + timed.cue.think
    end = timed.said[-1][2] if timed.said else timed.end
    return replace(timed, cue=replace(timed.cue, says=says), said=tuple(_spread(says, begin, end)))


def _spread(says: Sentences, begin: Fraction, end: Fraction) -> Iterator[tuple[Sentence, Fraction, Fraction]]:
    """Share the frames between sentences, each in proportion to its letters; at least one frame each."""
    first, frames = floor(begin * FRAMES), floor((end - begin) * FRAMES)
    shares = [len(sentence_text(sentence)) for sentence in says]
    edges = [first]
    for at in range(1, len(says) + 1):
        edge = first + frames * sum(shares[:at]) // sum(shares)
        edges.append(max(edge, edges[-1] + 1))
    for sentence, (start, stop) in zip(says, pairwise(edges), strict=True):
        yield sentence, Fraction(start, FRAMES), Fraction(stop, FRAMES)
