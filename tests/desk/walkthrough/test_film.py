"""A sheet is filmed whole or not at all, and all that is made of it tells the same times."""

import datetime as dt
import re
from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise
from pathlib import Path
from shutil import copytree

import av
import numpy as np
import pytest
import webvtt
from msgspec.structs import replace

from onewhole.desk.walkthrough.film import PARTS, FilmWishes, film_sheet
from onewhole.desk.walkthrough.film_files import FilmFiles
from onewhole.errors import InputError
from onewhole.sheets.document import Sheet
from onewhole.sheets.reading import read_sheet
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import FRAMES

WHEN = dt.datetime(2025, 3, 6, 7, 30, tzinfo=dt.UTC)
SHEET = read_sheet(
    "languages: en, es\ntitle: Kite tails\nwhole: strip\nwholes: strips\n1. 3 1/4 - 1 3/4\n2. 4/5 - 1/5\n"
)
#: The nearest that milliseconds come to a frame, and a frame.
NEAR, FRAME = 0.001, 1 / FRAMES
WIDE = FilmWishes(shapes=(Shape.WIDE,))


def filmed(to: Path, sheet: Sheet = SHEET, wishes: FilmWishes = WIDE) -> FilmFiles:
    """A sheet filmed."""
    return film_sheet(sheet, to, when=WHEN, wishes=wishes)


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, FilmFiles]:
    """A film without a voice, made once."""
    folder = tmp_path_factory.mktemp("film")
    return folder, filmed(folder, wishes=FilmWishes())


def seconds(stamp: str) -> float:
    """The seconds of 00:01:02.345."""
    hours, minutes, rest = stamp.split(":")
    return 3600 * int(hours) + 60 * int(minutes) + float(rest)


def chapters_of(path: Path) -> list[tuple[float, float]]:
    """Start and end of every chapter of an MP4."""
    with av.open(str(path)) as film:
        return [
            (float(one["start"] * base), float(one["end"] * base))
            for one in film.chapters()
            if (base := one["time_base"]) is not None
        ]


def test_everything_is_there(made: tuple[Path, FilmFiles]) -> None:
    """Thirteen files, each named, none empty: a film and a poster a shape, a second language to read."""
    _, shown = made
    assert {one.path.name for one in shown.made} == {
        *("script.pdf", "walkthrough.html", "walkthrough.vtt", "walkthrough.srt"),
        *("chapters.vtt", "transcript.md", "poster.png", "walkthrough.mp4"),
        *("poster-upright.png", "walkthrough-upright.mp4"),
        *("walkthrough-es.vtt", "walkthrough-es.srt", "transcript-es.md"),
    }
    assert all(one.path.stat().st_size for one in shown.made)


def test_every_time_agrees_to_a_frame(made: tuple[Path, FilmFiles]) -> None:
    """Captions, chapters, script, walkthrough and film tell one time; the film is as long as told."""
    folder, shown = made
    length = float(shown.length)
    film = chapters_of(folder / "walkthrough.mp4")
    written = webvtt.read(str(folder / "chapters.vtt")).captions
    assert len(written) == len(film) == 4
    for one, (start, end) in zip(written, film, strict=True):
        assert seconds(one.start) == pytest.approx(start, abs=NEAR)
        assert seconds(one.end) == pytest.approx(end, abs=NEAR)
    assert film[-1][1] == pytest.approx(length, abs=NEAR)
    with av.open(str(folder / "walkthrough.mp4")) as opened:
        assert opened.duration is not None
        assert opened.duration / av.time_base == pytest.approx(length, abs=2 * FRAME)
    captions = webvtt.read(str(folder / "walkthrough.vtt")).captions
    told = [(seconds(one.start), seconds(one.end)) for one in captions]
    assert all(start < end for start, end in told)
    assert all(end <= start + NEAR for (_, end), (start, _) in pairwise(told))
    assert told[-1][1] <= length
    assert all(any(abs(time * FRAMES - round(time * FRAMES)) < 0.04 for time in pair) for pair in told)
    page = (folder / "walkthrough.html").read_text()
    steps = [int(found) for found in re.findall(r'data-lasts="(\d+)"', page)]
    assert len(steps) > 8
    assert sum(steps) == pytest.approx(1000 * length, abs=len(steps))


@pytest.mark.more("presses/test_video.py")
def test_both_shapes_have_the_captions_of_both_languages(made: tuple[Path, FilmFiles]) -> None:
    """The class's own first; the files beside are of the same times."""
    folder, shown = made
    for name in ("walkthrough", "walkthrough-upright"):
        with av.open(str(folder / f"{name}.mp4")) as opened:
            assert [one.metadata["language"] for one in opened.streams.subtitles] == ["eng", "spa"]
    written = (folder / "walkthrough-es.vtt").read_text()
    assert "Language: es-US" in written.splitlines()[0]
    assert "La respuesta del problema 2 es 3/5." in written or "3/5" in written
    captions = webvtt.read(str(folder / "walkthrough-es.vtt")).captions
    assert seconds(captions[-1].end) <= float(shown.length)
    assert (folder / "transcript-es.md").read_text().count("En el pizarrón:") > 3


@pytest.mark.more("presses/test_video.py")
def test_a_second_run_draws_nothing(made: tuple[Path, FilmFiles], tmp_path: Path) -> None:
    """What is there whole stays; from the parts alone the same film is joined again, and is the same file."""
    folder, first = made
    again = filmed(folder, wishes=FilmWishes())
    assert (again.filmed.parts_rendered, again.filmed.parts_kept) == (0, first.filmed.parts_rendered)
    assert again.filmed.frames_drawn == 0
    assert replace(again, filmed=first.filmed) == first
    parts = copytree(folder / PARTS, tmp_path / "film" / PARTS)
    joined = filmed(tmp_path / "film", wishes=FilmWishes())
    assert joined.filmed == again.filmed
    assert {one.path.name: one.path.read_bytes() for one in joined.made} == {
        one.path.name: one.path.read_bytes() for one in first.made
    }
    assert len(list(parts.iterdir())) == len(list((folder / PARTS).iterdir()))


def test_a_whole_film_stays_until_anything_is_otherwise(tmp_path: Path) -> None:
    """A changed or lost file, another page, another wish, a spoilt note of what is there: it is made anew."""
    sheet = read_sheet("title: Kite tails\n1. 4/5 - 1/5\n")
    filmed(tmp_path, sheet)
    listed = (tmp_path / "manifest.json").read_bytes()
    film_sheet(sheet, tmp_path, when=WHEN.replace(year=2026), wishes=WIDE)
    assert (tmp_path / "manifest.json").read_bytes() == listed, "nothing was made"
    chapters = tmp_path / "chapters.vtt"
    told = chapters.read_bytes()
    for spoil in (lambda: chapters.write_bytes(b"WEBVTT"), chapters.unlink):
        spoil()
        filmed(tmp_path, sheet)
        assert chapters.read_bytes() == told
    (tmp_path / PARTS / "whole.json").write_text('{"made_from": 3', encoding="utf-8")
    assert filmed(tmp_path, sheet).filmed.parts_rendered == 0
    assert filmed(tmp_path, read_sheet("title: Kite\n1. 4/5 - 1/5\n")).filmed.parts_rendered
    assert filmed(tmp_path, sheet, replace(WIDE, mistake=True)).filmed.parts_rendered


@pytest.mark.parametrize(
    "wishes",
    [
        FilmWishes(tried=("7",)),
        FilmWishes(minutes=1, voice="silent", tried=("1", "2")),
        FilmWishes(voice="nobody.wav"),
    ],
)
def test_a_wish_that_cannot_be_met_makes_nothing(tmp_path: Path, wishes: FilmWishes) -> None:
    """The refusal comes before anything is written."""
    sheet = read_sheet("\n".join(f"{number}. 7 1/8 - {number} 5/8" for number in range(1, 7)))
    with pytest.raises(InputError):
        filmed(tmp_path / "out", sheet, wishes)
    assert not (tmp_path / "out").exists()


def tone(path: Path, length: float, loud: int = 8000) -> None:
    """A recording: one steady tone."""
    rate = 16000
    samples = (loud * np.sin(np.arange(int(rate * length)) * 0.2)).astype(np.int16)
    with av.open(str(path), "w") as file:
        stream = file.add_stream("pcm_s16le", rate=rate)
        frame = av.AudioFrame.from_ndarray(samples[None, :], format="s16", layout="mono")
        frame.sample_rate = rate
        for packet in (*stream.encode(frame), *stream.encode(None)):
            file.mux(packet)


@pytest.mark.more("presses/test_recording.py")
def test_the_teachers_own_voice_is_in_step(tmp_path: Path) -> None:
    """A file a problem: each chapter lasts as long as it, and the sound begins with its chapter."""
    voice = tmp_path / "voice"
    voice.mkdir()
    lengths = {"1": 14.0, "2": 12.5}
    for label, length in lengths.items():
        tone(voice / f"{label}.wav", length)
    sheet = read_sheet("1. 4/5 - 1/5\n2. 2/6 + 3/6\n")
    filmed(tmp_path / "out", sheet, replace(WIDE, voice=str(voice)))
    path = tmp_path / "out" / "walkthrough.mp4"
    film = chapters_of(path)
    for (start, end), length in zip(film[1:3], lengths.values(), strict=True):
        assert end - start >= length
        assert loudness(path, start + 0.3, start + 2) > 1000
        assert loudness(path, start + length + 0.2, start + length + 0.4) < 200


def loudness(path: Path, start: float, end: float) -> float:
    """The mean size of a film's samples between two times."""
    with av.open(str(path)) as film:
        heard = [
            float(np.abs(frame.to_ndarray()).mean()) * 32768
            for frame in film.decode(audio=0)
            if frame.time is not None and start <= frame.time <= end
        ]
    return sum(heard) / len(heard)


@pytest.mark.parametrize(
    "spoil",
    [
        lambda path: tone(path, 0.2),
        lambda path: tone(path, 10, loud=0),
        lambda path: path.write_bytes(b"no sound at all"),
    ],
    ids=["too short", "silent", "damaged"],
)
def test_a_bad_recording_loses_nothing(tmp_path: Path, spoil: Callable[[Path], object]) -> None:
    """A recording too short, silent or damaged is refused by name; last night's film stays."""
    voice, out = tmp_path / "voice", tmp_path / "out"
    voice.mkdir()
    out.mkdir()
    tone(voice / "1.wav", 40)
    spoil(voice / "2.wav")
    (out / "walkthrough.mp4").write_bytes(b"last night")
    with pytest.raises(InputError) as refused:
        filmed(out, wishes=FilmWishes(voice=str(voice)))
    assert "2.wav" in f"{refused.value.where} {refused.value}"
    assert refused.value.remedy
    assert [path.name for path in out.iterdir()] == ["walkthrough.mp4"]
    assert (out / "walkthrough.mp4").read_bytes() == b"last night"


def test_a_synthetic_voice_says_so(tmp_path: Path) -> None:
    """The film's description tells that a computer speaks, and something is heard."""
    sheet = read_sheet("1. 4/5 - 1/5")
    shown = filmed(tmp_path, sheet, FilmWishes(voice="synthetic", shapes=(Shape.WIDE,)))
    with av.open(str(tmp_path / "walkthrough.mp4")) as film:
        assert "synthetic" in film.metadata["comment"]
    assert loudness(tmp_path / "walkthrough.mp4", 0, 5) > 100
    assert shown.longest <= 20
    assert shown.level is not None
    assert shown.level.grade < Fraction(6)
    assert (tmp_path / PARTS).is_dir()
