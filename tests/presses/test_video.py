from dataclasses import dataclass
from fractions import Fraction
from io import BytesIO
from pathlib import Path

import av
import numpy as np
import pytest
from av.stream import Disposition
from msgspec.structs import replace
from PIL import Image

from onewhole.notations.sentences.text import sentence_text
from onewhole.presses import workers
from onewhole.presses.files import FileRefused
from onewhole.presses.frames import numbers, parts
from onewhole.presses.poster import poster
from onewhole.presses.video import Filmed, film
from onewhole.sentences.sentence import Sentence
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import Timeline
from tests.kit.boards import WORDS, frames, kites

RATE = 22_050
FRAME = Fraction(1, 30)


def _tone(seconds: int) -> tuple[np.ndarray[tuple[int], np.dtype[np.int16]], int]:
    turns = np.arange(seconds * RATE) / RATE * 440 * 2 * np.pi
    return (8000 * np.sin(turns)).astype(np.int16), RATE


def _film(
    timeline: Timeline,
    folder: Path,
    *,
    silent: bool = False,
    name: str = "film",
    beside: tuple[Timeline, ...] = (),
) -> Filmed:
    (folder / "parts").mkdir(exist_ok=True)
    return film(
        [(timeline, folder / f"{name}.mp4")],
        WORDS,
        sound=None if silent else _tone(15),
        note="The voice is synthetic.",
        cache=folder / "parts",
        progress=lambda _done, _of: None,
        beside=beside,
    )


@dataclass(frozen=True)
class Made:
    """A film that was made once for all tests of this file."""

    filmed: Filmed
    path: Path


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Made:
    """The film of three chapters with a tone."""
    folder = tmp_path_factory.mktemp("film")
    return Made(_film(kites(), folder), folder / "film.mp4")


def test_streams_and_length(made: Made) -> None:
    """H.264 at 1080p, AAC of one channel at 48 kHz, timed text; each lasts as long as the times say."""
    with av.open(str(made.path)) as opened:
        video, audio, text = opened.streams.video[0], opened.streams.audio[0], opened.streams.subtitles[0]
        names = [stream.codec_context.name for stream in (video, audio, text)]
        assert names == ["h264", "aac", "mov_text"]
        assert (video.width, video.height, video.pix_fmt) == (1920, 1080, "yuv420p")
        assert (audio.rate, audio.channels) == (48_000, 1)
        for stream in (video, audio, text):
            assert stream.duration is not None
            assert stream.time_base is not None
            assert abs(stream.duration * stream.time_base - kites().length) <= FRAME
    assert made.filmed.seconds == 15
    assert made.filmed.bytes == made.path.stat().st_size


def test_every_track_carries_the_language(made: Made) -> None:
    """Picture, sound, captions and chapters are marked with the language, by ISO 639-2 as MP4 has it."""
    with av.open(str(made.path)) as opened:
        tracks = {stream.type: stream.metadata["language"] for stream in opened.streams}
    assert tracks == dict.fromkeys(("video", "audio", "subtitle", "data"), "eng")


def test_a_second_language_is_a_track_of_its_own(made: Made) -> None:
    """Captions in two languages, each with its tag; those of the voice are shown first."""
    says = Sentence("es-US", ("abrimos una tira",))
    told = replace(
        kites(),
        language="es-US",
        chapters=tuple(
            replace(
                chapter,
                cues=tuple(
                    replace(cue, said=tuple((says, start, end) for _, start, end in cue.said))
                    for cue in chapter.cues
                ),
            )
            for chapter in kites().chapters
        ),
    )
    assert _film(kites(), made.path.parent, name="both", beside=(told,)).frames_drawn == 0
    with av.open(str(made.path.with_name("both.mp4"))) as opened:
        texts = opened.streams.subtitles
        assert [one.metadata["language"] for one in texts] == ["eng", "spa"]
        assert [bool(one.disposition & Disposition.default) for one in texts] == [True, False]
        assert len({one.duration for one in texts}) == 1
        words = [bytes(packet)[2:].decode() for packet in opened.demux(texts[1]) if packet.size > 2]
    assert set(words) == {"Abrimos una tira."}


def test_every_frame_at_its_time(made: Made) -> None:
    """The frames that were drawn, no other, each at its own thirtieth of a second."""
    with av.open(str(made.path)) as opened:
        base = opened.streams.video[0].time_base
        assert base is not None
        times = [frame.pts * base for frame in opened.decode(video=0) if frame.pts is not None]
    assert times == [frame.number * FRAME for frame in frames(kites(), WORDS)]
    assert made.filmed.frames_drawn == len(times) == sum(len(numbers(part)) for part in parts(kites()))


def test_frames_look_as_drawn(made: Made) -> None:
    """What is decoded is what was drawn, but for what encoding costs."""
    drawn = {frame.number: frame.board[::8, ::8].copy() for frame in frames(kites(), WORDS)}
    with av.open(str(made.path)) as opened:
        for frame in opened.decode(video=0):
            assert frame.pts is not None
            assert frame.time_base is not None
            number = round(frame.pts * frame.time_base * 30)
            if number % 40 == 0 or number == 449:
                seen = frame.to_ndarray(format="rgb24")[::8, ::8].astype(int)
                assert np.abs(seen - drawn[number]).mean() < 4, number


def test_captions_are_the_sentences(made: Made) -> None:
    """Each sentence is in the text track at its time, to the frame, and nothing where nothing is said."""
    with av.open(str(made.path)) as opened:
        read = []
        for packet in opened.demux(subtitles=0):
            if packet.pts is None or packet.duration is None or not packet.size:
                continue
            raw = bytes(packet)
            said = raw[2 : 2 + int.from_bytes(raw[:2], "big")].decode()
            if said:
                start = packet.pts * packet.time_base
                read.append((said, start, start + packet.duration * packet.time_base))
    wanted = [one for chapter in kites().chapters for cue in chapter.cues for one in cue.said]
    assert [said for said, _, _ in read] == [sentence_text(said) for said, _, _ in wanted]
    for (_, start, end), (_, begins, ends) in zip(read, wanted, strict=True):
        assert abs(start - begins) < FRAME
        assert abs(end - ends) < FRAME


def test_chapters_title_and_note(made: Made) -> None:
    """A chapter a problem with its title and times, the film's title, and what the voice is."""
    with av.open(str(made.path)) as opened:
        read = [
            (one["metadata"]["title"], one["start"] * base, one["end"] * base)
            for one in opened.chapters()
            if (base := one["time_base"])
        ]
        assert (opened.metadata["title"], opened.metadata["comment"]) == (
            "Kite night",
            "The voice is synthetic.",
        )
    assert read == [(chapter.title, chapter.start, chapter.end) for chapter in kites().chapters]


def test_head_comes_first(made: Made) -> None:
    """The table of the file stands before the frames, so that it plays while it loads."""
    content = made.path.read_bytes()
    assert 0 < content.index(b"moov") < content.index(b"mdat")


@pytest.mark.more("desk/walkthrough/test_film.py")
def test_only_changed_chapters_are_made_again(tmp_path: Path) -> None:
    """Nothing changed: nothing drawn, the same file. One problem changed: one part. Old parts are cleared."""
    first = _film(kites(), tmp_path, silent=True)
    content = (tmp_path / "film.mp4").read_bytes()
    again = _film(kites(), tmp_path, silent=True)
    assert (first.parts_rendered, first.parts_kept) == (3, 0)
    assert (again.parts_rendered, again.parts_kept, again.frames_drawn) == (0, 3, 0)
    assert (tmp_path / "film.mp4").read_bytes() == content
    changed = _film(kites("8 2/6 - 3 5/6"), tmp_path, silent=True)
    assert (changed.parts_rendered, changed.parts_kept) == (1, 2)
    assert len(list((tmp_path / "parts").iterdir())) == 3
    with av.open(str(tmp_path / "film.mp4")) as opened:
        assert not opened.streams.audio


def test_an_upright_film_has_the_same_sound_and_times(tmp_path: Path) -> None:
    """Both shapes in one run: each its own picture, and one file of the sound for both."""
    upright = replace(kites(), chapters=kites().chapters[:1], shape=Shape.UPRIGHT)
    wide = replace(upright, shape=Shape.WIDE)
    (tmp_path / "parts").mkdir()
    takes = [(wide, tmp_path / "wide.mp4"), (upright, tmp_path / "upright.mp4")]
    made = film(
        takes, WORDS, sound=_tone(3), note="", cache=tmp_path / "parts", progress=lambda _done, _of: None
    )
    assert (made.parts_rendered, made.seconds) == (2, 3)
    assert len(list((tmp_path / "parts").iterdir())) == 3
    for shown, path in takes:
        with av.open(str(path)) as opened:
            video = opened.streams.video[0]
            assert (video.width, video.height) == shown.shape.size
            assert opened.duration == pytest.approx(3 * av.time_base, abs=av.time_base // 30)


def test_damaged_part_is_refused_and_the_old_film_stays(tmp_path: Path) -> None:
    """A part that cannot be read is an error that says what to do; the film that was there is whole."""
    short = Timeline("Kite night", kites().chapters[:1])
    _film(short, tmp_path, silent=True)
    content = (tmp_path / "film.mp4").read_bytes()
    for part in (tmp_path / "parts").iterdir():
        part.write_bytes(b"no film")
    with pytest.raises(FileRefused, match=r"take away the folder parts and film again"):
        _film(short, tmp_path, silent=True)
    assert (tmp_path / "film.mp4").read_bytes() == content
    assert sorted(file.name for file in tmp_path.iterdir()) == ["film.mp4", "parts"]


@pytest.mark.more("desk/walkthrough/test_film.py")
def test_poster_shows_the_first_problem_and_the_title() -> None:
    """A PNG of the film's size; another problem or another title makes another poster."""
    first = poster(kites(), WORDS)
    assert Image.open(BytesIO(first)).size == (1920, 1080)
    assert poster(kites("8 2/6 - 3 5/6"), WORDS) != first
    assert poster(Timeline("Another night", kites().chapters), WORDS) != first
    upright = poster(replace(kites(), shape=Shape.UPRIGHT), WORDS)
    assert Image.open(BytesIO(upright)).size == (1080, 1920)


@pytest.mark.more("presses/test_workers.py")
def test_processes_that_begin_anew_draw_the_same(
    made: Made, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """Where a system cannot fork, as Windows, each process reads the program in by itself (spawn)."""
    monkeypatch.setattr(workers, "get_all_start_methods", lambda: ["spawn"])
    assert _film(kites(), tmp_path).parts_rendered == made.filmed.parts_rendered
    assert (tmp_path / "film.mp4").read_bytes() == made.path.read_bytes()
