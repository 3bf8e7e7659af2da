"""Captions and chapters of a film: WebVTT and SubRip.

Source: W3C, WebVTT: The Web Video Text Tracks Format, 4 April 2019: the file's parts, words behind its first,
time stamps of hours, minutes, seconds and milliseconds, cue text in which & < and > are written as character
references. SubRip, its tags in angle and curly brackets, and its arrow: common practice, no source. Lines of
at most 42 characters, two at a time: common practice, no source.
"""

import html
import math
import re
import textwrap
from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from onewhole.notations.sentences.text import sentence_text
from onewhole.walkthroughs.timeline import FRAMES, TimedChapter, Timeline

#: The file's first line. The standard keeps no place for the language of a whole file and leaves free what
#: follows the blank after the first word; these words there are common practice, no source.
HEAD = "WEBVTT Kind: {kind}; Language: {language}"
LINE, LINES = 42, 2
#: What is followed by the rest of a tag, or of the arrow between two times.
_TAG: Final = re.compile(r"<(?=[^\s\d])|\{(?=\S)|--(?=>)")


class _Caption(Struct, frozen=True):
    """Lines that are read together, and their time in seconds; ``language`` where it is not the film's."""

    start: Fraction
    end: Fraction
    lines: tuple[str, ...]
    language: str = ""


def vtt(timeline: Timeline) -> str:
    """Return the captions as WebVTT: each sentence as it is written, in its own time.

    >>> from onewhole.walkthroughs.cue import Cue, Role
    >>> from onewhole.sentences.typed import typed_sentences
    >>> from onewhole.walkthroughs.timeline import Timed, TimedChapter
    >>> says = typed_sentences("6 < 7.", "en-US")
    >>> said = ((says[0], Fraction(0), Fraction(31, 30)),)
    >>> cue = Timed(Cue(Role.LINE, says), Fraction(0), Fraction(2), said, ())
    >>> print(vtt(Timeline("", (TimedChapter("1", "Problem 1", Fraction(0), Fraction(2), (cue,)),))))
    WEBVTT Kind: captions; Language: en-US
    <BLANKLINE>
    00:00:00.000 --> 00:00:01.033
    6 &lt; 7.
    <BLANKLINE>
    """
    blocks = [
        f"{_span(caption.start, caption.end, '.')}\n{_tagged(caption)}\n" for caption in _captions(timeline)
    ]
    return "\n".join([_head("captions", timeline), *blocks])


def srt(timeline: Timeline) -> str:
    """Return the same captions as SubRip: numbered, with a comma in the times.

    SubRip has tags and no character references: a blank keeps what looks like a tag from being one.
    """
    return "\n".join(
        f"{number}\n{_span(caption.start, caption.end, ',')}\n{_no_tags(chr(10).join(caption.lines))}\n"
        for number, caption in enumerate(_captions(timeline), start=1)
    )


def chapters_vtt(timeline: Timeline) -> str:
    """Return the chapters as WebVTT: one cue a chapter, the text its number and title."""
    blocks = [
        f"{_span(chapter.start, chapter.end, '.')}\n{_safe(chapter_name(chapter))}\n"
        for chapter in timeline.chapters
    ]
    return "\n".join([_head("chapters", timeline), *blocks])


def chapter_name(chapter: TimedChapter) -> str:
    """Return what a chapter is called in a list: its number and title, on one line."""
    title = f"{chapter.label}. {chapter.title}" if chapter.label else chapter.title
    return " ".join(title.split())


def _head(kind: str, timeline: Timeline) -> str:
    return HEAD.format(kind=kind, language=timeline.language) + "\n"


def _captions(timeline: Timeline) -> Iterator[_Caption]:
    for chapter in timeline.chapters:
        for cue in chapter.cues:
            for sentence, start, end in cue.said:
                other = sentence.language if sentence.language != timeline.language else ""
                for caption in _broken(sentence_text(sentence), start, end):
                    yield replace(caption, language=other)


def _broken(sentence: str, start: Fraction, end: Fraction) -> Iterator[_Caption]:
    """Break a sentence into captions; each has time for its share of the characters, on whole frames."""
    lines = textwrap.wrap(sentence, LINE, break_on_hyphens=False)
    groups = [tuple(lines[at : at + LINES]) for at in range(0, len(lines), LINES)]
    frames = (end - start) * FRAMES
    shares = [sum(map(len, group)) for group in groups]
    ends = [sum(shares[:at]) for at in range(len(shares) + 1)]
    times = [start + Fraction(math.floor(frames * part / sum(shares)), FRAMES) for part in ends[1:-1]]
    for group, (first, last) in zip(groups, pairwise([start, *times, end]), strict=False):
        yield _Caption(first, last, group)


def _span(start: Fraction, end: Fraction, point: str) -> str:
    return f"{stamp(start, point)} --> {stamp(end, point)}"


def stamp(seconds: Fraction, point: str = ".") -> str:
    """Write a time in hours, minutes, seconds and milliseconds, rounded to the nearest; half goes up.

    A later time never has an earlier stamp, so captions that do not overlap are not made to.

    >>> stamp(Fraction(11111, 3))
    '01:01:43.667'
    """
    whole, thousandths = divmod(math.floor(seconds * 1000 + Fraction(1, 2)), 1000)
    minutes, rest = divmod(whole, 60)
    return f"{minutes // 60:02}:{minutes % 60:02}:{rest:02}{point}{thousandths:03}"


def _no_tags(words: str) -> str:
    r"""Part the first sign of a tag from the rest; a comparison stays as it is.

    >>> print(_no_tags(r"<b>6 < 7</b> {\an8} -->"))
    < b>6 < 7< /b> { \an8} -- >
    """
    return _TAG.sub(r"\g<0> ", words)


def _tagged(caption: _Caption) -> str:
    """Write the lines of a caption; those in another language than the film's in a span that says so."""
    said = _safe(chr(10).join(caption.lines))
    return f"<lang {caption.language}>{said}</lang>" if caption.language else said


def _safe(words: str) -> str:
    return html.escape(words, quote=False)
