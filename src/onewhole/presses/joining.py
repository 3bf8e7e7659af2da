"""Joining: the parts of a film, its sound, captions and chapters in one MP4 file, without encoding again."""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from heapq import merge
from pathlib import Path
from typing import Any

import av
from av.audio.stream import AudioStream
from av.packet import Packet
from av.stream import Disposition
from av.subtitles.stream import SubtitleStream
from av.video.stream import VideoStream

from onewhole.languages.table import LANGUAGES
from onewhole.notations.sentences.text import sentence_text
from onewhole.presses.encoding import TICK
from onewhole.walkthroughs.timeline import FRAMES, Timeline

#: What the text encoder wants to know before it writes the track's head; players use their own look.
_HEAD = b"""[Script Info]
ScriptType: v4.00+

[V4+ Styles]
Format: Name, Fontname, Fontsize, PrimaryColour, SecondaryColour, OutlineColour, BackColour, Bold, Italic, \
Underline, StrikeOut, ScaleX, ScaleY, Spacing, Angle, BorderStyle, Outline, Shadow, Alignment, MarginL, \
MarginR, MarginV, Encoding
Style: Default,Arial,16,&Hffffff,&Hffffff,&H0,&H0,0,0,0,0,100,100,0,0,1,1,0,2,10,10,10,1

[Events]
Format: Layer, Start, End, Style, Name, MarginL, MarginR, MarginV, Effect, Text
"""


def join(
    timeline: Timeline,
    kept: Sequence[Path],
    track: Path | None,
    note: str,
    path: Path,
    *,
    beside: Sequence[Timeline] = (),
) -> None:
    """Write the film from the file of each chapter and the file of the sound, where there is one.

    ``beside`` are the film told in other languages: each becomes one more track of text, and a player shows
    that of the voice where nothing else is asked of it. ``note`` becomes the file's comment. The head of the
    file comes first, so that it plays while it loads.
    """
    with av.open(str(path), "w", format="mp4", options={"movflags": "faststart"}) as container:
        container.metadata.update({"title": timeline.title, "comment": note})
        with av.open(str(kept[0])) as first:
            video = container.add_stream_from_template(first.streams.video[0])
        ways = [_video(timeline, kept, video)]
        if track is not None:
            with av.open(str(track)) as sound:
                ways.append(_audio(track, container.add_stream_from_template(sound.streams.audio[0])))
        for stream in container.streams:
            stream.metadata["language"] = LANGUAGES[timeline.language].code
        texts = [(told, container.add_stream("mov_text")) for told in (timeline, *beside)]
        for at, (told, text) in enumerate(texts):
            text.codec_context.subtitle_header = _HEAD
            text.codec_context.time_base = text.time_base = TICK
            text.metadata["language"] = LANGUAGES[told.language].code
            text.metadata["handler_name"] = LANGUAGES[told.language].name
            text.disposition = Disposition(0) if at else Disposition.default
        ways += [_text(told, text) for told, text in texts]
        container.set_chapters(
            [
                {
                    "id": at,
                    "start": _frame(chapter.start),
                    "end": _frame(chapter.end),
                    "time_base": TICK,
                    "metadata": {"title": chapter.title or chapter.label},
                }
                for at, chapter in enumerate(timeline.chapters)
            ]
        )
        for _, packet in merge(*ways, key=lambda one: one[0]):
            container.mux_one(packet)


#: When a packet is due, in seconds, and the packet of any stream.
Timed = tuple[Fraction, "Packet[Any]"]


def _video(timeline: Timeline, kept: Sequence[Path], stream: VideoStream) -> Iterator[Timed]:
    for chapter, place in zip(timeline.chapters, kept, strict=True):
        start = _frame(chapter.start)
        with av.open(str(place)) as part:
            for packet in part.demux(video=0):
                if packet.pts is None:
                    continue
                number = start + round(packet.pts * packet.time_base * FRAMES)
                packet.pts = packet.dts = number
                packet.duration, packet.time_base, packet.stream = 1, TICK, stream
                yield number * TICK, packet


def _audio(place: Path, stream: AudioStream) -> Iterator[Timed]:
    with av.open(str(place)) as sound:
        for packet in sound.demux(audio=0):
            if packet.pts is None:
                continue
            packet.stream = stream
            yield packet.pts * packet.time_base, packet


def _text(timeline: Timeline, stream: SubtitleStream) -> Iterator[Timed]:
    """Give each sentence as a sample of text; the library puts an empty one wherever nothing is said."""
    for chapter in timeline.chapters:
        for cue in chapter.cues:
            for sentence, start, end in cue.said:
                yield _sample(sentence_text(sentence), _frame(start), _frame(end), stream)


def _sample(said: str, start: int, end: int, stream: SubtitleStream) -> Timed:
    """Return a sample of 3GPP timed text: two bytes for its length, then the words in UTF-8."""
    written = said.encode()
    packet: Packet[Any] = Packet(len(written).to_bytes(2, "big") + written)
    packet.pts = packet.dts = start
    packet.duration, packet.time_base, packet.stream = end - start, TICK, stream
    return start * TICK, packet


def _frame(seconds: Fraction) -> int:
    return round(seconds * FRAMES)
