"""A film with what the teacher recorded at the board: heard where it should be, in step with the key."""

import datetime as dt
from collections.abc import Callable, Iterator
from fractions import Fraction
from functools import cache
from io import BytesIO
from pathlib import Path

import av
import numpy as np
import pytest
from numpy.typing import NDArray

from onewhole.desk.classes.class_records import (
    NightPage,
    NotThere,
    Store,
    night_page,
    open_book,
    set_night,
    start_room,
)
from onewhole.desk.walkthrough.board import Board, board, board_html
from onewhole.desk.walkthrough.film import FilmWishes, film_sheet, told
from onewhole.desk.walkthrough.film_night import film_night, film_there, shown_at
from onewhole.desk.walkthrough.film_options import FilmChoice
from onewhole.desk.walkthrough.film_plan import FilmPlan, keep_plan, plan_of
from onewhole.desk.walkthrough.recordings import forget, heard, keep, sound_of
from onewhole.desk.walkthrough.soundtrack_choice import MOST_BYTES, Recorded, recorded_voice
from onewhole.errors import InputError
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.recordings import KeptRecording, keep_recording
from onewhole.store.settings import set_setting
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import FRAMES, TimedChapter

NOW = dt.datetime(2026, 9, 7, 16, 30, tzinfo=dt.UTC)
TYPED = "title: Kite tails\nwhole: strip\nwholes: strips\n1. 4/5 - 1/5\n2. 5 1/6 - 2 5/6\n"
SHEET = read_sheet(TYPED)
RATE = 48_000


def beeps(*at: float, length: float, loud: int = 9000) -> NDArray[np.int16]:
    """Return quiet with a tone of a fifth of a second at each time."""
    samples = np.zeros(int(RATE * length), np.int16)
    tone = (loud * np.sin(2 * np.pi * 440 * np.arange(RATE // 5) / RATE)).astype(np.int16)
    for time in at:
        begin = int(time * RATE)
        samples[begin : begin + len(tone)] = tone
    return samples


def webm(samples: NDArray[np.int16]) -> bytes:
    """Return sound as a browser records it: WebM with Opus."""
    file = BytesIO()
    with av.open(file, "w", format="webm") as made:
        stream = made.add_stream("libopus", rate=RATE, layout="mono")
        frame = av.AudioFrame.from_ndarray(samples.reshape(1, -1), format="s16", layout="mono")
        frame.sample_rate = RATE
        made.mux(stream.encode(frame))
        made.mux(stream.encode(None))
    return file.getvalue()


def parts() -> dict[str, TimedChapter]:
    """The chapters before a voice is in them."""
    return {chapter.label: chapter for chapter in told(WorkedSheet(SHEET), FilmWishes())[1].chapters}


def stepped(label: str, apart: int = 2500) -> tuple[int, ...]:
    """Steps of a chapter at uneven times."""
    return tuple(apart * at + 137 * at * at for at in range(1, len(parts()[label].cues)))


def recorded(label: str) -> Recorded:
    """A recording with a beep at every step."""
    steps = stepped(label)
    times = [step / 1000 for step in steps]
    return Recorded(webm(beeps(*times, length=times[-1] + 3)), steps)


def onsets(path: Path) -> list[float]:
    """When a film becomes loud after quiet."""
    samples, start = [], None
    with av.open(str(path)) as film:
        for frame in film.decode(audio=0):
            start = frame.time if start is None else start
            samples.append(frame.to_ndarray()[0])
    wave = np.abs(np.concatenate(samples))
    step = RATE // 100
    loud = [float(wave[at : at + step].mean()) > 0.02 for at in range(0, len(wave) - step, step)]
    found = [at / 100 for at, one in enumerate(loud) if one and not any(loud[max(0, at - 5) : at])]
    return [float(start or 0) + one for one in found]


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A film in which only problem 2 was recorded."""
    folder = tmp_path_factory.mktemp("film")
    wishes = FilmWishes(recorded={"2": recorded("2")}, shapes=(Shape.WIDE,))
    shown = film_sheet(SHEET, folder, when=NOW, wishes=wishes)
    without = "the opening, problem 1, the closing"
    assert shown.notes == (f"Without a recording, so silent, with the words in the captions: {without}.",)
    return folder


def test_cues_start_within_a_frame_of_the_key() -> None:
    """Every cue of a recorded chapter starts at most half a frame from the key."""
    timeline, _ = recorded_voice(told(WorkedSheet(SHEET), FilmWishes())[1], {"2": recorded("2")})
    chapter = timeline.chapters[2]
    steps = stepped("2")
    assert len(steps) >= 3
    for cue, step in zip(chapter.cues[1:], steps, strict=True):
        assert abs(cue.start - chapter.start - Fraction(step, 1000)) <= Fraction(1, 2 * FRAMES)


@pytest.mark.more("presses/test_recording.py")
@pytest.mark.slow
def test_the_sound_is_in_step(made: Path) -> None:
    """What is heard in the MP4 begins where the key was pressed, within two frames, and nowhere else."""
    with av.open(str(made / "walkthrough.mp4")) as film:
        chapter = film.chapters()[2]
        base = chapter["time_base"]
        assert base is not None
        start = float(chapter["start"] * base)
        assert film.metadata["comment"] == "The voice is the teacher's own."
    wanted = [start + step / 1000 for step in stepped("2")]
    assert onsets(made / "walkthrough.mp4") == pytest.approx(wanted, abs=2 / FRAMES)


def refusal(recorded: dict[str, Recorded]) -> str:
    """What is said of recordings that cannot be used."""
    with pytest.raises(InputError) as no:
        recorded_voice(told(WorkedSheet(SHEET), FilmWishes())[1], recorded)
    assert no.value.remedy or "\n" in str(no.value)
    return str(no.value)


@cache
def good() -> Recorded:
    """A recording of problem 1 that can be used."""
    return recorded("1")


@pytest.mark.parametrize(
    ("spoiled", "said"),
    [
        (lambda: Recorded(b"no sound at all", good().steps), "not sound"),
        (lambda: Recorded(b"", good().steps), "not sound"),
        (lambda: Recorded(good().sound[: len(good().sound) // 50], good().steps), "recording of problem 1"),
        (lambda: Recorded(webm(beeps(length=20)), good().steps), "silent"),
        (lambda: Recorded(good().sound, good().steps[:-1]), "steps here now"),
        (lambda: Recorded(good().sound, (*good().steps[:-1], 10**9)), "before the last step"),
        (lambda: Recorded(good().sound, tuple(reversed(good().steps))), "one after another"),
        (lambda: Recorded(webm(np.tile(beeps(0.1, length=1), 601)), good().steps), "longer than 10 min 0 s"),
        (lambda: Recorded(bytes(MOST_BYTES + 1), good().steps), "larger than 16 MB"),
    ],
    ids=["no sound", "empty", "cut", "silent", "other steps", "late steps", "back", "too long", "too large"],
)
def test_a_recording_that_cannot_be_used(spoiled: Callable[[], Recorded], said: str) -> None:
    """It is refused, by the problem's name."""
    told = refusal({"1": spoiled()})
    assert said in told
    assert "problem 1" in told


def test_all_that_is_wrong_is_said() -> None:
    """Two bad recordings are told together; so is one for a problem that is not there."""
    told = refusal({"1": Recorded(b"", good().steps), "9": good()})
    assert told.startswith("2 recordings")
    assert "problem 1" in told
    assert "problem 9" in told


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class file with one night."""
    store = open_book(tmp_path / "room12.class")
    start_room(store, "Room 12", 2, NOW)
    set_night(store, 1, TYPED, NOW.date(), NOW)
    yield store
    store.close()


def seen(book: Store) -> tuple[NightPage, Board]:
    """The night and its board as planned."""
    page = night_page(book, 1, 1)
    return page, board(page.sheet, plan_of(book, 1))


def test_a_recording_is_kept_and_heard_again(book: Store) -> None:
    """What is kept comes back byte for byte; recorded anew, the new one counts; taken away, it is gone."""
    page, shown = seen(book)
    kept = keep(book, 1, shown, "1", good(), kind="audio/webm;codecs=opus", now=NOW)
    assert (kept.label, kept.fits) == ("1", True)
    assert kept.seconds.endswith(" seconds")
    assert sound_of(book, 1, "1").sound == good().sound
    assert heard(book, 1, shown) == {"1": kept}
    again = Recorded(webm(beeps(1, length=60)), stepped("1"))
    keep(book, 1, shown, "1", again, kind="audio/webm", now=NOW)
    assert sound_of(book, 1, "1").sound == again.sound
    forget(book, 1, "1")
    assert heard(book, 1, shown) == {}
    with pytest.raises(NotThere):
        sound_of(book, 1, "1")
    assert page.labels == ("1", "2")


def test_marks_that_an_earlier_release_kept_are_read_as_ever(book: Store) -> None:
    """How long it is, and the board it was recorded at."""
    shown = board(SHEET, FilmPlan())
    stamp = next(part.stamp for part in shown.parts if part.label == "1")
    keep_recording(book, KeptRecording(1, "1", "audio/webm", b"x", (), NOW))
    keep_recording(book, KeptRecording(1, "2", "audio/webm", b"x", (), NOW))
    kept = (
        f'{{"1": {{"seconds": "12 s", "stamp": "{stamp}", "written": "2026-09-07T16:30:00+00:00"}}, '
        '"2": {"seconds": "5 s", "stamp": "other", "written": "2026-09-07T16:30:00+00:00"}}'
    )
    set_setting(book, "recorded boards of night 1", kept)
    found = heard(book, 1, shown)
    assert [(one.label, one.seconds, one.fits) for one in found.values()] == [
        ("1", "12 s", True),
        ("2", "5 s", False),
    ]


def test_what_is_refused_leaves_the_one_before(book: Store) -> None:
    """A bad recording, another kind and an unknown part are refused; the recording before stays."""
    _, shown = seen(book)
    keep(book, 1, shown, "1", good(), kind="audio/webm", now=NOW)
    for label, one, kind in (
        ("1", Recorded(b"nothing", stepped("1")), "audio/webm"),
        ("1", recorded("1"), "text/html"),
        ("7", recorded("1"), "audio/webm"),
    ):
        with pytest.raises(InputError):
            keep(book, 1, shown, label, one, kind=kind, now=NOW)
    assert sound_of(book, 1, "1").sound == good().sound
    assert list(heard(book, 1, shown)) == ["1"]


def test_a_plan_is_kept_by_night(book: Store) -> None:
    """Choices, what is tried first, minutes and the mistake come back as they were."""
    plan = FilmPlan({"1": FilmChoice("count_up", length="short")}, ("2",), 5, mistake=True)
    assert plan_of(book, 1) == FilmPlan()
    keep_plan(book, 1, plan)
    assert plan_of(book, 1) == plan
    assert plan_of(book, 2) == FilmPlan()
    with pytest.raises(InputError):
        FilmPlan(minutes=0)


@pytest.mark.more("presses/test_recording.py")
def test_a_recording_for_another_board_is_not_heard_and_said(book: Store, tmp_path: Path) -> None:
    """Another strategy has other steps: the recording stays, the film is silent there, the notes say so;
    making the film marks the night as shown.
    """
    page, shown = seen(book)
    keep(book, 1, shown, "1", good(), kind="audio/webm", now=NOW)
    keep(book, 1, shown, "2", recorded("2"), kind="audio/webm", now=NOW)
    keep_plan(book, 1, FilmPlan({"2": FilmChoice("count_up", length="in full")}))
    _, after = seen(book)
    assert [one.fits for one in heard(book, 1, after).values()] == [True, False]
    assert shown_at(book, page, 1) is None
    assert film_there(book, page, tmp_path / "film") is None
    made = film_night(book, page, tmp_path / "film", when=NOW)
    assert any("problem 2 was made for other steps" in note for note in made.notes)
    assert onsets(tmp_path / "film" / "walkthrough.mp4")
    assert shown_at(book, page, 1) == NOW
    there = film_there(book, page, tmp_path / "film")
    assert there is not None
    assert not there.stale
    assert there.notes == made.notes
    assert (there.language, there.language_name) == ("en-US", "English")
    assert [name for _, name in there.chapters] == [
        "Tonight",
        "1. 4/5 - 1/5",
        "2. 5 1/6 - 2 5/6",
        "The end",
    ]
    keep_plan(book, 1, FilmPlan())
    changed = film_there(book, page, tmp_path / "film")
    assert changed is not None
    assert changed.stale


def test_the_board_is_the_film_s(book: Store) -> None:
    """The steps beside the board are the steps of the page that plays, sentence for sentence."""
    page, shown = seen(book)
    html = board_html(page.sheet, plan_of(book, 1))
    assert html.count('class="step"') == sum(len(part.steps) for part in shown.parts)
    assert [part.label for part in shown.parts] == ["opening", "1", "2", "closing"]
    assert shown.parts[1].steps[0].role == "Read the problem"
    assert shown.notes == ()
