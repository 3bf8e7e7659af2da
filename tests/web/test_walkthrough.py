"""The walkthrough's page asked without a browser: what it takes, and what it refuses by name."""

import json
from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import night_page, set_night, start_room
from onewhole.desk.walkthrough.board import board
from onewhole.desk.walkthrough.film_plan import FilmPlan, plan_of
from onewhole.desk.walkthrough.kept_slips import kept_slips
from onewhole.store.recordings import recordings_of
from onewhole.store.settings import set_setting
from onewhole.store.steps import NightStep, steps_of
from onewhole.web.pages.walkthrough import FILES
from tests.desk.walkthrough.test_recorded_film import beeps, webm
from tests.kit.doors import Answer, Opened, opened
from tests.kit.forms import form_to

HOME = "/mine/1/night/1/walkthrough"
TYPED = "title: Kites <b>\n1. 3 1/4 - 1 3/4\n2. 3 x 2/5\n"


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A door with one night of two problems."""
    with opened(tmp_path) as made:
        book, now = made.door.books["mine"], made.door.now()
        start_room(book, "Room 12", 2, now)
        set_night(book, 1, TYPED, made.door.today(), now)
        yield made


def sent(door: Opened, sound: bytes, kind: str = "audio/webm", **fields: str) -> Answer:
    """Send a recording as the page does."""
    response = door.client.post(
        f"{HOME}/recording",
        data={"saw": "", **fields},
        files={"sound": ("recording", sound, kind)},
        headers={**door.origin, "X-CSRF-Token": door.csrf_token, "Accept": "application/json"},
    )
    return Answer(response.status_code, response.text, "", response.content)


@pytest.fixture(scope="module")
def sound() -> bytes:
    """Twelve seconds of sound."""
    return webm(beeps(1, 3, 5, length=12))


def steps(door: Opened, label: str = "1") -> str:
    """As many steps as the part has, a second apart."""
    page = night_page(door.door.books["mine"], 1, 1)
    part = board(page.sheet, FilmPlan()).part(label)
    assert part is not None
    return " ".join(str(1000 * at) for at in range(1, len(part.steps)))


def test_the_page_has_its_parts(door: Opened) -> None:
    """Board, choices, voice and film; the title is text and no markup."""
    page = door.get(HOME)
    assert page.status == 200
    assert all(f'id="{name}"' in page.text for name in ("board", "choices", "voice", "film", "recorder"))
    assert "Kites <b>" not in page.text
    assert "No film has been made" in page.text
    assert door.get("/mine/1/night/9/walkthrough").status == 404


@pytest.mark.asvs("V3.4.3")
def test_the_board_has_a_policy_of_its_own(door: Opened) -> None:
    """Only the script and the style of the board itself run in it, and only our pages frame it."""
    answer = door.client.get(f"{HOME}/board")
    policy = answer.headers["content-security-policy"]
    assert "script-src 'sha256-" in policy
    assert "unsafe" not in policy
    assert "frame-ancestors 'self'" in policy
    assert policy.split("; frame-ancestors")[0] in answer.text


def test_a_recording_is_kept(door: Opened, sound: bytes) -> None:
    """It is kept to the byte, given back to be heard, and taken away when asked."""
    kept = sent(door, sound, label="1", steps=steps(door))
    assert kept.status == 200
    told = json.loads(kept.text)
    assert told["words"] == "Kept: 12.0 seconds."
    assert told["row"] in door.get(HOME).text, "what is shown at once is what the page shows later"
    heard = door.client.get(f"{HOME}/recording/1")
    assert heard.content == sound
    assert heard.headers["content-type"] == "audio/webm"
    assert "✓ Kept: 12.0 seconds" in door.get(HOME).text
    assert (
        door.post(
            f"{HOME}/forget", label="1", saw=form_to(door.get(HOME).text, f"{HOME}/forget").value("saw")
        ).goes
        == f"{HOME}#voice"
    )
    assert door.get(f"{HOME}/recording/1").status == 404
    assert door.post(f"{HOME}/forget", label="1", saw="").status == 404


@pytest.mark.asvs("V5.2.2")
@pytest.mark.parametrize(
    ("fields", "kind", "spoil", "said"),
    [
        ({"label": "1"}, "audio/webm", b"no sound", "damaged, or it is not sound"),
        ({"label": "1"}, "audio/webm", b"", "damaged, or it is not sound"),
        ({"label": "1"}, "text/html", None, "not a recording that can be read"),
        ({"label": "99"}, "audio/webm", None, "no such part"),
        ({"label": "<script>"}, "audio/webm", None, "no such part"),
        ({"label": "1", "steps": "100 50"}, "audio/webm", None, "steps here now"),
        ({"label": "1", "steps": "1e3"}, "audio/webm", None, "steps of the board cannot be read"),
        ({"label": "1", "steps": "9" * 30}, "audio/webm", None, "steps of the board cannot be read"),
        ({"label": "1", "steps": "1 " * 600}, "audio/webm", None, "steps of the board cannot be read"),
    ],
)
def test_a_recording_that_cannot_be_used(
    door: Opened, sound: bytes, fields: dict[str, str], kind: str, spoil: bytes | None, said: str
) -> None:
    """It is refused with what to do next, and the one before stays."""
    assert sent(door, sound, label="1", steps=steps(door)).status == 200
    no = sent(door, sound if spoil is None else spoil, kind, **{"steps": steps(door), **fields})
    assert no.status == 422
    assert said in no.text
    assert json.loads(no.text)["remedy"]
    (kept,) = recordings_of(door.door.books["mine"], 1)
    assert (kept.label, kept.sound) == ("1", sound)


@pytest.mark.asvs("V5.2.1")
def test_what_is_too_large_is_not_read(door: Opened) -> None:
    """More bytes than a recording may have are refused before they are read; so is a form without sound."""
    assert sent(door, bytes(17 * 1024 * 1024), label="1", steps="").status == 413
    assert door.post(f"{HOME}/recording", label="1", steps="").status == 422


def test_choices_are_kept_or_refused_whole(door: Opened) -> None:
    """What can be told is kept; a choice that there is not, other rows and other minutes change nothing."""
    row = {"label": "1", "strategy": "count_up", "picture": "number line", "length": "short"}
    assert door.post(f"{HOME}/choices", **row, minutes="9", mistake="yes", saw="").goes == f"{HOME}#choices"
    book = door.door.books["mine"]
    plan = plan_of(book, 1)
    assert (plan.choices["1"].strategy, plan.minutes, plan.mistake) == ("count_up", 9, True)
    for wrong in (
        {"label": "7"},
        {"strategy": "magic"},
        {"picture": "circles"},
        {"length": "long"},
        {"minutes": "0"},
        {"minutes": "nine"},
        {"tried": "7"},
    ):
        assert door.post(f"{HOME}/choices", **(row | wrong), saw="").status == 422
    assert door.post(f"{HOME}/choices", label="1", saw="").status == 422
    assert plan_of(book, 1) == plan


def test_choices_that_cannot_be_read_can_be_made_again(door: Opened) -> None:
    """A plan that is damaged does not close the page: it is said, and choosing again replaces it."""
    book = door.door.books["mine"]
    set_setting(book, "film plan of night 1", '{"choices": {"9": {"length": "short"}}, "tried": 3}')
    page = door.get(HOME)
    assert page.status == 200
    assert "cannot be used" in page.text
    assert door.post(f"{HOME}/choices", label="1", strategy="", picture="", length="", saw="").status == 303
    assert "cannot be used" not in door.get(HOME).text


def test_shown_is_one_press(door: Opened) -> None:
    """The night counts as shown."""
    assert "Not shown yet" in door.get(HOME).text
    assert door.post(f"{HOME}/shown").goes == f"{HOME}#film"
    assert NightStep.SHOWN in steps_of(door.door.books["mine"], 1)[1]
    assert "Shown since" in door.get(HOME).text


@pytest.mark.asvs("V5.3.2")
def test_only_files_of_the_film_are_lent(door: Opened) -> None:
    """A name that is not in the table, and a film that is not made, are not there."""
    folder = door.door.folder / "mine" / "night-1"
    folder.mkdir(parents=True)
    (folder / "walkthrough.vtt").write_text("WEBVTT\n")
    (folder / "secret.txt").write_text("no")
    assert door.get(f"{HOME}/film/walkthrough.vtt").text == "WEBVTT\n"
    for name in ("secret.txt", "..%2F..%2Froom12.class", "walkthrough.mp4"):
        assert door.get(f"{HOME}/film/{name}").status == 404
    saved = door.client.get(f"{HOME}/film/walkthrough.vtt?save=1")
    assert saved.headers["content-disposition"].startswith("attachment")
    assert len(FILES) == 19


def test_the_page_and_the_tracks_of_the_film_carry_their_language(door: Opened) -> None:
    """A BCP 47 tag stands at the page and at both tracks of the video; captions bear the language's name."""
    folder = door.door.folder / "mine" / "night-1"
    folder.mkdir(parents=True)
    about = {
        "seconds": 3,
        "notes": [],
        "reads": "",
        "stamp": "",
        "made": "",
        "language": "en-US",
        "chapters": [],
    }
    (folder / "about-film.json").write_text(json.dumps(about))
    (folder / "chapters.vtt").write_text("WEBVTT\n")
    (folder / "walkthrough.mp4").write_bytes(b"film")
    (folder / "walkthrough-es.vtt").write_text("WEBVTT\n")
    page = door.get(HOME).text
    assert '<html lang="en-US">' in page
    assert '<track kind="captions" srclang="es-US" label="español"' in page
    assert "walkthrough-es.vtt" in page
    assert "walkthrough-pt.vtt" not in page
    assert '<track kind="captions" srclang="en-US" label="English"' in page
    assert '<track kind="chapters" srclang="en-US"' in page
    assert "walkthrough.mp4" in page
    assert "walkthrough-upright.mp4" not in page


def test_a_number_heard_otherwise_is_said_again_or_kept(door: Opened) -> None:
    """It stands with its time; kept, it is not told again; what the film does not have is refused."""
    folder = door.door.folder / "mine" / "night-1"
    folder.mkdir(parents=True)
    slip = {"label": "1", "at": 138_000, "said": "seven fifths", "board": "6/5", "key": "abc"}
    about = {"seconds": 3, "notes": [], "reads": "", "stamp": "", "made": "", "chapters": [], "slips": [slip]}
    (folder / "about-film.json").write_text(json.dumps(about))
    (folder / "walkthrough.mp4").write_bytes(b"film")
    page = door.get(HOME).text
    assert "2:18, problem 1: you said “seven fifths”; the board says 6/5." in page
    assert 'data-say-again="1"' in page
    assert 'data-second="136.5"' in page
    assert "Kept as you said it" not in page
    book = door.door.books["mine"]
    for kept, keys in (("yes", {"abc"}), ("yes", {"abc"}), ("no", set()), ("yes", {"abc"})):
        assert door.post(f"{HOME}/slip", key="abc", kept=kept).goes == f"{HOME}#film"
        assert kept_slips(book, 1) == keys
        assert ("Kept as you said it" in door.get(HOME).text) is bool(keys)
    assert door.post(f"{HOME}/slip", key="other", kept="yes").status == 404
    assert kept_slips(book, 1) == {"abc"}


def test_what_is_done_to_recordings_is_kept(door: Opened) -> None:
    """As it was ticked; another wish is refused."""
    row = {"label": "1", "strategy": "", "picture": "", "length": "", "saw": ""}
    assert door.post(f"{HOME}/choices", **row, tidy="level", turn="1").status == 303
    plan = plan_of(door.door.books["mine"], 1)
    assert (plan.tidy, plan.turns) == (("level",), ("1",))
    assert {one.value for one in plan.wishes().tidy} == {"level"}
    assert door.post(f"{HOME}/choices", **row, tidy="louder").status == 422
    page = door.get(HOME).text
    assert 'value="level" checked' in page
    assert 'id="turn-1" name="turn" value="1" checked' in page
