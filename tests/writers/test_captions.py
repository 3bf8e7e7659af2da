"""Captions and chapters, read back by a library for such files."""

import re
from fractions import Fraction
from itertools import pairwise

import webvtt
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from onewhole.notations.sentences.text import sentence_text
from onewhole.sentences.sentence import End, Sentence
from onewhole.sentences.typed import typed
from onewhole.walkthroughs.cue import Chapter, Cue, Role, Script
from onewhole.walkthroughs.lesson import Pace
from onewhole.walkthroughs.timeline import FRAMES, Timeline
from onewhole.walkthroughs.timing import timed
from onewhole.writers.captions import LINE, LINES, chapters_vtt, srt, stamp, vtt

LONG = (
    "For 16 - 9, go by way of the ten: 16 - 6 = 10, then 10 - 3 = 7, and that is the fact that we need here."
)
SENTENCES = st.one_of(
    st.lists(st.text("kite7<>&-", min_size=1, max_size=12), min_size=1, max_size=30).map(" ".join),
    st.just(LONG),
)
FILMS = st.lists(st.lists(SENTENCES, min_size=1, max_size=5), min_size=1, max_size=4)


def sentence(text: str) -> Sentence:
    """A sentence that somebody typed, with whatever is in it."""
    return Sentence("en-US", (typed(text),), End.TYPED)


def line(texts: list[str]) -> Cue:
    """A cue that says some sentences after a second of quiet."""
    return Cue(Role.LINE, tuple(map(sentence, texts)), think=Fraction(1))


def film(chapters: list[list[str]]) -> Timeline:
    """A film that says some sentences in some chapters."""
    made = tuple(
        Chapter(
            str(at),
            f"{at}/8 < {at + 1}/8 & more",
            (line(one),),
        )
        for at, one in enumerate(chapters, start=1)
    )
    return timed(Script("Kites", made), Pace(), speak=sentence_text)


def said(timeline: Timeline) -> list[tuple[str, Fraction, Fraction]]:
    """Every sentence and its time."""
    cues = (cue for chapter in timeline.chapters for cue in chapter.cues)
    return [(sentence_text(one), start, end) for cue in cues for one, start, end in cue.said]


def seconds(written: str) -> Fraction:
    """A time stamp read back."""
    hours, minutes, rest = written.replace(",", ".").split(":")
    return 3600 * int(hours) + 60 * int(minutes) + Fraction(rest)


def plain(words: str) -> str:
    """Caption text as it is shown, on one line."""
    for reference, sign in (("&lt;", "<"), ("&gt;", ">"), ("&amp;", "&")):
        words = words.replace(reference, sign)
    return " ".join(words.split())


@given(FILMS)
def test_captions_say_what_is_said(chapters: list[list[str]]) -> None:
    """Read back and joined, the captions are the sentences, and each sentence keeps its time to half a ms."""
    timeline = film(chapters)
    found = webvtt.from_string(vtt(timeline)).captions
    at = 0
    for sentence, start, end in said(timeline):
        first, shown = found[at], ""
        while plain(shown) != sentence:
            shown += f" {found[at].raw_text}"
            at += 1
        assert abs(seconds(first.start) - start) <= Fraction(1, 2000)
        assert abs(seconds(found[at - 1].end) - end) <= Fraction(1, 2000)
    assert at == len(found)


@given(FILMS)
def test_captions_do_not_overlap(chapters: list[list[str]]) -> None:
    """Each begins before it ends, not before the one before it ended, and nearest to a frame."""
    found = [
        (seconds(each.start), seconds(each.end)) for each in webvtt.from_string(vtt(film(chapters))).captions
    ]
    assert all(start < end for start, end in found)
    assert all(before[1] <= after[0] for before, after in pairwise(found))
    assert all(
        abs(time * FRAMES - round(time * FRAMES)) <= Fraction(FRAMES, 2000) for pair in found for time in pair
    )


@given(FILMS)
def test_captions_are_short(chapters: list[list[str]]) -> None:
    """At most two lines of 42 characters as shown."""
    for each in webvtt.from_string(vtt(film(chapters))).captions:
        lines = each.raw_text.split("\n")
        assert len(lines) <= LINES
        assert all(len(plain(line)) <= LINE for line in lines)


@given(FILMS)
def test_both_kinds_of_captions_agree(chapters: list[list[str]]) -> None:
    """SubRip numbers the same captions from 1, in the same times, with the same signs and no tags."""
    timeline = film(chapters)
    blocks = srt(timeline).strip("\n").split("\n\n")
    found = webvtt.from_string(vtt(timeline)).captions
    for number, (block, each) in enumerate(zip(blocks, found, strict=True), start=1):
        count, times, *lines = block.split("\n")
        assert count == str(number)
        assert times == f"{each.start.replace('.', ',')} --> {each.end.replace('.', ',')}"
        assert "".join(lines).replace(" ", "") == plain(each.raw_text).replace(" ", "")
        assert not any(re.search(r"<[^ \d]|\{\S|-->", one) for one in lines)


def test_what_looks_like_a_tag_is_text() -> None:
    """A teacher's words are shown as typed, or with a blank, and are never obeyed; comparisons stay."""
    timeline = film([["<font size=99>Kites</font> 6 < 7 {\\an8}up <3 -->"]])
    shown = " ".join(srt(timeline).split("\n")[2:]).split("  ")[0]
    assert shown.startswith("< font size=99>Kites< /font> 6 < 7 { \\an8}up <3 -- >")
    assert "&lt;font size=99&gt;Kites&lt;/font&gt; 6 &lt; 7" in " ".join(vtt(timeline).split("\n"))


@given(FILMS)
def test_chapters(chapters: list[list[str]]) -> None:
    """A chapter each, one after the other without a gap, from 0 to the film's end."""
    timeline = film(chapters)
    found = webvtt.from_string(chapters_vtt(timeline)).captions
    assert [plain(each.raw_text) for each in found] == [
        f"{at}. {at}/8 < {at + 1}/8 & more" for at in range(1, len(chapters) + 1)
    ]
    assert [each.start for each in found[1:]] == [each.end for each in found[:-1]]
    assert found[0].start == "00:00:00.000"
    assert found[-1].end == stamp(timeline.length)


def test_the_file_is_made_of_blocks() -> None:
    """WebVTT's grammar, by hand: the first line, then blocks of a time line and text, parted by empty lines.

    Source: W3C, WebVTT: The Web Video Text Tracks Format, 4 April 2019, section 4.1.
    """
    head, *blocks = vtt(film([["Is 2/8 < 3/8?", LONG]])).removesuffix("\n").split("\n\n")
    assert re.fullmatch(r"WEBVTT[ \t][^\n]*", head)
    time = r"\d{2,}:[0-5]\d:[0-5]\d\.\d{3}"
    assert all(re.fullmatch(rf"{time} --> {time}\n[^\n<>]+(\n[^\n<>]+)?", block) for block in blocks)
    assert blocks[0].endswith("\nIs 2/8 &lt; 3/8?")
    assert len(blocks) == 3


def test_stamps_round_half_up() -> None:
    """Thirds of a tenth are rounded to the nearest thousandth, and hours are counted."""
    assert [stamp(Fraction(frames, FRAMES)) for frames in (1, 2, 3)] == [
        "00:00:00.033",
        "00:00:00.067",
        "00:00:00.100",
    ]
    assert stamp(Fraction(1, 2000)) == "00:00:00.001"
    assert stamp(Fraction(360_000), ",") == "100:00:00,000"


def test_captions_and_chapters_say_their_language() -> None:
    """The first line names the kind and the BCP 47 tag, and a reader of such files still reads the rest."""
    timeline = replace(film([["Is 2/8 < 3/8?"]]), language="es-MX")
    for kind, written in (("captions", vtt(timeline)), ("chapters", chapters_vtt(timeline))):
        assert written.splitlines()[0] == f"WEBVTT Kind: {kind}; Language: es-MX"
        assert len(webvtt.from_string(written).captions) == 1
