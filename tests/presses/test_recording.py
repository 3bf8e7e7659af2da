"""The teacher's recording is read whatever phone made it; what cannot be used is refused with its place."""

import os
import socket
import tracemalloc
import wave
from contextlib import closing
from fractions import Fraction
from pathlib import Path

import av
import numpy as np
import pytest
from numpy.typing import NDArray

from onewhole.errors import InputError
from onewhole.presses import decoding
from onewhole.presses.decoding import RecordingRefused, recording, recording_in
from onewhole.presses.recording import voice_files

RATE = 48_000


def tone(seconds: float, *, loud: int = 8000, rate: int = RATE) -> NDArray[np.int16]:
    """Return a tone of 220 Hz."""
    at = np.arange(int(seconds * rate)) / rate
    return (loud * np.sin(2 * np.pi * 220 * at)).astype(np.int16)


def wav(path: Path, samples: NDArray[np.int16], rate: int = RATE) -> Path:
    """Write a WAV file."""
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(rate)
        file.writeframes(samples.tobytes())
    return path


def coded(path: Path, codec: str, samples: NDArray[np.int16], rate: int = RATE, times: int = 1) -> Path:
    """Write a file as a phone does: WebM with Opus, M4A with AAC; the samples so many times over."""
    with av.open(str(path), "w") as file:
        stream = file.add_stream(codec, rate=rate, layout="mono")
        assert isinstance(stream, av.AudioStream)
        for _ in range(times):
            frame = av.AudioFrame.from_ndarray(samples.reshape(1, -1), format="s16", layout="mono")
            frame.sample_rate = rate
            file.mux(stream.encode(frame))
        file.mux(stream.encode(None))
    return path


def hours(path: Path, codec: str, count: int) -> Path:
    """Write so many hours: one minute is coded, and its packets are written again and again."""
    with av.open(str(path), "w") as file:
        stream = file.add_stream(codec, rate=RATE, layout="mono")
        assert isinstance(stream, av.AudioStream)
        frame = av.AudioFrame.from_ndarray(tone(60).reshape(1, -1), format="s16", layout="mono")
        frame.sample_rate = RATE
        coded_once = stream.encode(frame)
        each = [(bytes(packet), packet.duration, packet.time_base) for packet in coded_once]
        at = 0
        for content, duration, base in each * (60 * count):
            packet = av.Packet(content)
            packet.stream, packet.time_base, packet.pts, packet.dts = stream, base, at, at
            packet.duration, packet.is_keyframe = duration, True
            file.mux(packet)
            at += duration or 0
    return path


def refusal(path: Path) -> str:
    """Return what is said of a file, without the folder it is in."""
    with pytest.raises(RecordingRefused) as refused:
        recording(path)
    assert isinstance(refused.value, InputError)
    return str(refused.value).replace(f"{path.parent}/", "")


class TestRecording:
    def test_wav_is_kept_to_the_sample(self, tmp_path: Path) -> None:
        """A WAV file at the film's rate is read sample for sample."""
        samples = tone(2)
        sound = recording(wav(tmp_path / "1.wav", samples))
        assert sound.rate == RATE
        assert np.array_equal(sound.samples, samples)

    @pytest.mark.parametrize(
        ("name", "codec", "rate"),
        [("1.webm", "libopus", 48_000), ("1.m4a", "aac", 44_100)],
    )
    def test_phones(self, tmp_path: Path, name: str, codec: str, rate: int) -> None:
        """WebM and M4A give the same sound within a tenth of a second, as loud as it was."""
        sound = recording(coded(tmp_path / name, codec, tone(2, rate=rate), rate))
        assert sound.rate == RATE
        assert abs(sound.seconds - 2) < Fraction(1, 10)
        loud = np.sqrt(np.mean(sound.samples[RATE // 2 : RATE].astype(np.float64) ** 2))
        assert 4500 < loud < 6500  # 8000 / sqrt 2 = 5657

    def test_two_channels_become_one(self, tmp_path: Path) -> None:
        """What both microphones heard is heard once."""
        with wave.open(str(tmp_path / "1.wav"), "wb") as file:
            file.setnchannels(2)
            file.setsampwidth(2)
            file.setframerate(RATE)
            file.writeframes(np.repeat(tone(1), 2).tobytes())
        assert recording(tmp_path / "1.wav").seconds == 1

    def test_missing(self, tmp_path: Path) -> None:
        """A name that no file has is told."""
        assert (
            refusal(tmp_path / "1.wav") == "There is no such recording (1.wav). Check the name of the file."
        )

    @pytest.mark.parametrize("text", ["seven wholes", "#EXTM3U\n#EXTINF:9,\nother.wav\n", ""])
    def test_text_is_not_sound(self, tmp_path: Path, text: str) -> None:
        """A text is refused whatever it is called, and a list of other files is not followed."""
        wav(tmp_path / "other.wav", tone(2))
        (tmp_path / "1.wav").write_text(text)
        assert refusal(tmp_path / "1.wav").startswith("This file is damaged, or it is not sound (1.wav). ")

    def test_a_film_without_sound(self, tmp_path: Path) -> None:
        """A file with pictures only is not sound."""
        with av.open(str(tmp_path / "1.webm"), "w") as file:
            stream = file.add_stream("libvpx", rate=10, width=64, height=64, pix_fmt="yuv420p")
            for _ in range(10):
                picture = av.VideoFrame.from_ndarray(np.zeros((64, 64, 3), np.uint8), format="rgb24")
                file.mux(stream.encode(picture))
            file.mux(stream.encode(None))
        assert "it is not sound" in refusal(tmp_path / "1.webm")

    @pytest.mark.parametrize(("name", "codec"), [("1.webm", "libopus"), ("1.m4a", "aac")])
    def test_cut_short(self, tmp_path: Path, name: str, codec: str) -> None:
        """Half of a file is refused as damaged."""
        path = coded(tmp_path / name, codec, tone(1), times=20)
        path.write_bytes(path.read_bytes()[: path.stat().st_size // 2])
        assert "damaged" in refusal(path)

    @pytest.mark.parametrize("seed", range(5))
    def test_bytes_lost(self, tmp_path: Path, seed: int) -> None:
        """Chance bytes in the middle are refused or read over, and never any other error."""
        path = coded(tmp_path / "1.m4a", "aac", tone(1), times=10)
        content = bytearray(path.read_bytes())
        chance = np.random.default_rng(seed)
        third = len(content) // 3
        content[third : 2 * third] = chance.bytes(third)
        path.write_bytes(content)
        try:
            seconds = recording(path).seconds
        except RecordingRefused as refused:
            told = str(refused)
        else:
            told = "damaged" if seconds > 1 else "nearly nothing"
        assert "damaged" in told

    @pytest.mark.parametrize("loud", [0, 20])
    def test_silent(self, tmp_path: Path, loud: int) -> None:
        """Nothing, or only the hiss of a microphone, is silent."""
        path = wav(tmp_path / "1.wav", tone(2, loud=loud))
        assert refusal(path) == "The recording is silent (1.wav). Check the microphone and record it again."

    def test_one_word_is_enough(self, tmp_path: Path) -> None:
        """A word after a long silence is heard."""
        assert recording(wav(tmp_path / "1.wav", np.concatenate([tone(30, loud=0), tone(0.4)]))).seconds > 30

    @pytest.mark.parametrize("seconds", [0, 0.3])
    def test_too_short(self, tmp_path: Path, seconds: float) -> None:
        """A slip of the thumb is no recording."""
        said = refusal(wav(tmp_path / "1.wav", tone(seconds)))
        assert said.startswith(
            f"The recording lasts {seconds:.1f} seconds, and 0.5 seconds or more are needed"
        )

    @pytest.mark.asvs("V5.2.3")
    def test_three_hours_claimed(self, tmp_path: Path) -> None:
        """A WAV file whose header says three hours is refused without reading them."""
        path = wav(tmp_path / "1.wav", tone(1, rate=8000), 8000)
        size = 3 * 3600 * 8000 * 2
        content = bytearray(path.read_bytes())
        content[4:8], content[40:44] = (size + 36).to_bytes(4, "little"), size.to_bytes(4, "little")
        path.write_bytes(content)
        with path.open("r+b") as file:
            file.truncate(size + 44)  # a file with a hole: it takes no room on the disk
        assert refusal(path).startswith("The recording is longer than 60 min 0 s (1.wav). ")
        path.write_bytes(content)
        assert refusal(path).startswith("The recording is damaged: it ends before it should (1.wav). ")

    @pytest.mark.asvs("V5.2.3")
    @pytest.mark.slow
    @pytest.mark.parametrize(("name", "codec"), [("1.webm", "libopus"), ("1.m4a", "aac")])
    def test_three_hours_long(self, tmp_path: Path, name: str, codec: str) -> None:
        """Three real hours are refused, and memory stays small."""
        path = hours(tmp_path / name, codec, 3)
        tracemalloc.start()
        said = refusal(path)
        _, peak = tracemalloc.get_traced_memory()
        tracemalloc.stop()
        assert said.startswith("The recording is longer than 60 min 0 s")
        assert peak < 10_000_000

    def test_counting_ends_the_reading(self, tmp_path: Path) -> None:
        """A file that does not say how long it is, is counted while it is read, and no further."""
        path = tmp_path / "live.webm"
        with av.open(str(path), "w", format="webm", options={"live": "1"}) as file:
            stream = file.add_stream("libopus", rate=RATE, layout="mono")
            assert isinstance(stream, av.AudioStream)
            for _ in range(20):
                frame = av.AudioFrame.from_ndarray(tone(1).reshape(1, -1), format="s16", layout="mono")
                frame.sample_rate = RATE
                file.mux(stream.encode(frame))
            file.mux(stream.encode(None))
        with av.open(str(path)) as file:
            assert file.duration is None
        assert 19 < recording(path).seconds < 21
        with pytest.raises(RecordingRefused, match="recordings together are longer than 60 min"):
            recording(path, at_most=Fraction(5))


def raw(path: Path, codec: str, rate: int, seconds: int, channels: str = "mono") -> Path:
    """Write a file that does not say how long it is, as one frame of so many seconds a packet."""
    with av.open(str(path), "w", format="matroska", options={"live": "1"}) as file:
        stream = file.add_stream(codec, rate=rate, layout=channels)
        assert isinstance(stream, av.AudioStream)
        samples = np.tile(tone(seconds, rate=rate), stream.codec_context.channels).reshape(1, -1)
        frame = av.AudioFrame.from_ndarray(samples, format="s16", layout=channels)
        frame.sample_rate = rate
        file.mux(stream.encode(frame))
        file.mux(stream.encode(None))
    return path


class TestLimits:
    """What would take memory or time beyond that of a voice is refused before it does."""

    @pytest.mark.parametrize(
        ("rate", "said"),
        [
            (1, "The recording has 1 samples a second, and 8,000 to 192,000 can be read"),
            (7_999, "The recording has 7,999 samples a second, and 8,000 to 192,000 can be read"),
            (192_001, "The recording has 192,001 samples a second, and 8,000 to 192,000 can be read"),
        ],
    )
    def test_samples_a_second(self, tmp_path: Path, rate: int, said: str) -> None:
        """One sample a second would become 48,000: a file of a thousand bytes filled 4 GB of memory."""
        assert said in refusal(raw(tmp_path / "1.webm", "flac" if rate == 1 else "pcm_s16le", rate, 99))

    @pytest.mark.parametrize("rate", [8_000, 192_000])
    def test_the_least_and_the_most_samples(self, tmp_path: Path, rate: int) -> None:
        """The ends of the range are read."""
        assert recording(raw(tmp_path / "1.webm", "pcm_s16le", rate, 2)).seconds == 2

    def test_channels(self, tmp_path: Path) -> None:
        """Sixteen channels are no voice; eight are still read."""
        said = refusal(raw(tmp_path / "1.webm", "pcm_s16le", RATE, 1, "hexadecagonal"))
        assert said.startswith("The recording has 16 channels, and 1 to 8 can be read (1.webm). ")
        assert recording(raw(tmp_path / "2.webm", "pcm_s16le", RATE, 1, "7.1")).seconds == 1

    def test_a_frame(self, tmp_path: Path) -> None:
        """A frame is held whole; one of eleven seconds is refused, one of nine is read."""
        said = refusal(raw(tmp_path / "1.webm", "pcm_s16le", 8_000, 11))
        assert said.startswith("A part of the recording that is read at once is longer than 10 seconds")
        assert recording(raw(tmp_path / "2.webm", "pcm_s16le", 8_000, 9)).seconds == 9

    @pytest.mark.parametrize(("limit", "most"), [("MEMORY", 20_000_000), ("SECONDS", 0)])
    def test_a_process_that_was_ended(
        self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, limit: str, most: int
    ) -> None:
        """A file on which the process runs out of memory or time is refused, from the disk and in memory."""
        path = wav(tmp_path / "1.wav", tone(2))
        monkeypatch.setattr(decoding, limit, most)
        monkeypatch.setattr(decoding, "SOUND_A_SECOND", 10_000)
        assert refusal(path).startswith(
            "This recording cannot be read: it would take too much memory or time"
        )
        with pytest.raises(RecordingRefused, match="too much memory or time"):
            recording_in(path.read_bytes(), "the recording of problem 1")

    def test_more_than_a_pipe_holds(self) -> None:
        """A process that ends before it has read what it was handed is told as any other."""
        with pytest.raises(RecordingRefused, match="it is not sound"):
            recording_in(b"seven wholes" * 1_000_000, "the recording of problem 1")

    def test_what_is_no_file(self, tmp_path: Path) -> None:
        """A pipe, a socket and a device are refused at once: nobody ever writes into them."""
        os.mkfifo(tmp_path / "1.wav")
        with closing(socket.socket(socket.AF_UNIX)) as there:
            there.bind(str(tmp_path / "2.wav"))
        (tmp_path / "3.wav").symlink_to("/dev/zero")
        (tmp_path / "4.wav").mkdir()
        said = [refusal(tmp_path / f"{name}.wav") for name in range(1, 5)]
        assert [one.partition(" (")[0] for one in said] == [
            *["This is not a file, and no recording"] * 3,
            "This is a folder, not a recording",
        ]


class TestFolder:
    def test_one_file_a_problem(self, tmp_path: Path) -> None:
        """Each problem has its own file; the closing may be left out."""
        wav(tmp_path / "opening.wav", tone(1))
        wav(tmp_path / "2.WAV", tone(3))
        coded(tmp_path / "1.webm", "libopus", tone(2))
        (tmp_path / "notes.txt").write_text("kites")
        voices = voice_files(tmp_path, ["opening", "1", "2", "closing"])
        assert list(voices) == ["opening", "1", "2"]
        assert [round(sound.seconds) for sound in voices.values()] == [1, 2, 3]

    def test_every_mistake_is_told(self, tmp_path: Path) -> None:
        """A name that is no problem, two files for one, a missing and a silent one are all told."""
        wav(tmp_path / "7.wav", tone(1))
        wav(tmp_path / "1.wav", tone(1))
        coded(tmp_path / "1.webm", "libopus", tone(1))
        wav(tmp_path / "3.wav", tone(1, loud=0))
        with pytest.raises(RecordingRefused) as refused:
            voice_files(tmp_path, ["opening", "1", "2", "3"])
        told = [str(each).replace(str(tmp_path), "HERE") for each in refused.value.mistakes]
        assert told == [
            "There are two recordings for problem 1: 1.wav is the other (HERE/1.webm). Take one of them out.",
            'The film has no problem "7" (HERE/7.wav). The film has opening, 1, 2, 3.',
            "There is no recording of problem 2 (HERE). Record 2.wav, 2.webm or 2.m4a into this folder.",
            "The recording is silent (HERE/3.wav). Check the microphone and record it again.",
        ]


class TestOneFile:
    LABELS = ("opening", "1", "2")

    def voices(self, tmp_path: Path, times: str) -> list[tuple[str, Fraction]]:
        """Return the labels and lengths read from a recording of 100 seconds and its times."""
        path = wav(tmp_path / "all.wav", tone(100, rate=8000), 8000)
        (tmp_path / "all.csv").write_text(times)
        return [(label, sound.seconds) for label, sound in voice_files(path, self.LABELS).items()]

    def test_cut_at_the_times(self, tmp_path: Path) -> None:
        """Each problem goes on to the next start, and the last one to the end."""
        found = self.voices(tmp_path, "problem,start\nopening,2\n1, 12.5\n\n2,1:05\n")
        assert found == [("opening", Fraction(21, 2)), ("1", Fraction(105, 2)), ("2", Fraction(35))]

    @pytest.mark.parametrize(
        ("times", "said"),
        [
            ("1,3\n", "The first line is not problem,start (all.csv, line 1, column 1)"),
            (
                "problem,start\n1\n2,9\n",
                "This row does not have a problem and a start (all.csv, line 2, column 2)",
            ),
            (
                "problem,start\n1,1,5\n2,9\n",
                "This row does not have a problem and a start (all.csv, line 2, column 4)",
            ),
            ("problem,start\n1,0\n2, soon\n", '"soon" is not a time (all.csv, line 3, column 4)'),
            ("problem,start\n1,0\n2,-4\n", '"-4" is not a time (all.csv, line 3, column 3)'),
            (
                "problem,start\n1,9\n2,9\n",
                "Problem 2 does not start after problem 1 (all.csv, line 3, column 3)",
            ),
            (
                "problem,start\n1,0\n1,4\n2,9\n",
                "There are two starts for problem 1 (all.csv, line 3, column 1)",
            ),
            ("problem,start\n1,0\n 5,4\n2,9\n", 'The film has no problem "5" (all.csv, line 3, column 2)'),
            ("problem,start\n1,0\n", "There is no recording of problem 2 (all.csv)"),
            (
                "problem,start\n1,0\n2,100\n",
                "The recording ends at 1 min 40 s, before problem 2 starts (all.csv, line 3, column 3)",
            ),
            (
                "problem,start\n1,0\n2,99.8\n",
                "The recording lasts 0.2 seconds, and 0.5 seconds or more are needed",
            ),
        ],
    )
    def test_mistakes_have_their_place(self, tmp_path: Path, times: str, said: str) -> None:
        """What is wrong with the times is told with its line and column."""
        with pytest.raises(RecordingRefused) as refused:
            self.voices(tmp_path, times)
        assert str(refused.value).replace(f"{tmp_path}/", "").startswith(said)

    def test_a_silent_part(self, tmp_path: Path) -> None:
        """A problem that was not spoken is told, where the whole recording is not silent."""
        path = wav(tmp_path / "all.wav", np.concatenate([tone(3), tone(3, loud=0)]))
        (tmp_path / "all.csv").write_text("problem,start\n1,0\n2,3\n")
        with pytest.raises(RecordingRefused, match=r"silent for problem 2 .*line 3, column 3"):
            voice_files(path, ("1", "2"))

    def test_several_mistakes(self, tmp_path: Path) -> None:
        """All mistakes are told together, each with its place, and kept one by one."""
        with pytest.raises(RecordingRefused, match=r"2 things .*\n.*line 2.*\n.*line 3, column 3") as refused:
            self.voices(tmp_path, "problem,start\n1,x\n2,y\n")
        assert [(each.line, each.column) for each in refused.value.mistakes] == [(2, 3), (3, 3)]

    def test_no_times(self, tmp_path: Path) -> None:
        """A recording without its times is told what file to put beside it."""
        with pytest.raises(RecordingRefused, match=r"There are no times for the recording .*all\.csv"):
            voice_files(wav(tmp_path / "all.wav", tone(1)), ("1",))
