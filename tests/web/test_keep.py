"""Keep: backups saved, brought back and taken away; the last day; a damaged file."""

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import start_room
from onewhole.desk.keep.backups import back_up_daily, backups_folder, backups_of
from onewhole.store.answers import answers_of
from onewhole.store.classes import name_pupil, pupils_of
from onewhole.web.pages import keep
from tests.kit.age_format import lock_quickly
from tests.kit.doors import NOW, Clock, Opened, opened
from tests.kit.kept import first_round, write

PHRASE = "six kites over the hill"


@pytest.fixture
def clock() -> Clock:
    """A clock in the test's hands."""
    return Clock()


@pytest.fixture
def door(tmp_path: Path, clock: Clock) -> Iterator[Opened]:
    """A door to a class with one answer."""
    with opened(tmp_path, clock) as made:
        write(made.door.books["mine"], first_round(made.door.books["mine"]).night, "early")
        yield made


def _texts(door: Opened) -> list[str]:
    return [one.text for one in answers_of(door.door.books["mine"], 1)]


def _path(door: Opened) -> Path:
    return door.door.books.paths["mine"]


def _daily(door: Opened, days: int = 0) -> Path:
    made = back_up_daily(door.door.books["mine"], backups_folder(_path(door)), NOW + timedelta(days=days))
    assert made is not None
    return made


def _hand_in(door: Opened, content: bytes, passphrase: str = "") -> int:
    files = {"backup": ("../../a.backup", content, "application/octet-stream")}
    data = {"csrf_token": door.csrf_token, "passphrase": passphrase}
    sent = door.client.post("/mine/keep/restore", data=data, files=files, headers=door.origin)
    return sent.status_code


def test_a_backup_is_saved_and_brought_back(door: Opened) -> None:
    """Saved as a file with the day in its name; handed in again, the class is as it was."""
    saved = door.client.get("/mine/keep/backup")
    assert saved.headers["content-disposition"] == "attachment; filename*=UTF-8''room12-2026-09-01.backup"
    assert saved.content.startswith(b"SQLite format 3\0")
    write(door.door.books["mine"], 1, "late")
    assert _hand_in(door, saved.content) == 303
    assert _texts(door) == ["early"]
    (before,) = backups_of(_path(door))
    assert door.post("/mine/keep/back", file=before.path.name).goes == "/mine/keep?did=restored"
    assert _texts(door) == ["late"]
    assert "brought back" in door.get("/mine/keep?did=restored").text
    assert [path for path in _path(door).parent.iterdir() if path.name.startswith(".")] == []


@pytest.mark.asvs("V5.2.2")
@pytest.mark.parametrize("content", [b"", b"pupil,1\n", b"SQLite format 3\0" + bytes(4000)])
def test_a_file_that_is_no_backup_changes_nothing(door: Opened, content: bytes) -> None:
    """Told without a fault; the class stays open and as it was, nothing is left beside it."""
    before = sorted(path.name for path in _path(door).parent.iterdir())
    assert _hand_in(door, content) in {422, 503}
    assert _texts(door) == ["early"]
    after = sorted(path.name for path in _path(door).parent.iterdir())
    assert set(after) <= {*before, "room12.class-wal", "room12.class-shm"}


def test_a_locked_backup_is_saved_and_comes_back_by_its_passphrase_only(
    door: Opened, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Without it, and with another, the class stays as it was; two that differ lock nothing."""
    lock_quickly(monkeypatch)
    page = door.get("/mine/keep").text
    assert page.index("kept nowhere") < page.index('name="passphrase"')
    for typed, again in (("six kites", "six kites"), (PHRASE, PHRASE.upper())):
        assert door.post("/mine/keep/locked", passphrase=typed, again=again).status == 422
    locked = door.post("/mine/keep/locked", passphrase=PHRASE, again=PHRASE).content
    assert locked.startswith(b"age-encryption.org/v1\n")
    write(door.door.books["mine"], 1, "late")
    for typed in ("", PHRASE.upper()):
        assert _hand_in(door, locked, typed) == 422
        assert _texts(door) == ["late"]
    assert _hand_in(door, locked, PHRASE) == 303
    assert _texts(door) == ["early"]


@pytest.mark.asvs("V5.2.1")
def test_a_file_that_is_too_large_is_refused_before_it_is_read(door: Opened) -> None:
    """By its announced length."""
    headers = {**door.origin, "X-CSRF-Token": door.csrf_token, "Content-Length": str(keep.MOST + 1)}
    assert door.client.post("/mine/keep/restore", content=b"x", headers=headers).status_code == 413


@pytest.mark.asvs("V5.3.2")
@pytest.mark.parametrize("name", ["", "../room12.class", "room12.class", "a\0b", "x" * 10_000, "/etc/passwd"])
@pytest.mark.parametrize("way", ["back", "remove"])
def test_only_what_is_listed_is_touched(door: Opened, way: str, name: str) -> None:
    """Any other name is told as not there."""
    made = _daily(door)
    assert door.post(f"/mine/keep/{way}", file=name).status in {404, 422}
    assert made.exists()
    assert _path(door).exists()


def test_a_backup_is_taken_away(door: Opened) -> None:
    """And nothing else."""
    one, other = _daily(door), _daily(door, 1)
    assert door.post("/mine/keep/remove", file=one.name).goes == "/mine/keep?did=removed"
    assert (one.exists(), other.exists()) == (False, True)


def test_the_last_day(door: Opened, clock: Clock) -> None:
    """Set, told, over and told as over, taken back; what is no day is refused."""
    assert "No last day is set" in door.get("/mine/keep").text
    assert door.post("/mine/keep/until", day="2026-09-02", saw="").goes == "/mine/keep?did=until"
    page = door.get("/mine/keep").text
    assert "2 September 2026" in page
    assert ": it is over" not in page
    clock.now = NOW + timedelta(days=2)
    assert ": it is over" in door.get("/mine/keep").text
    assert door.post("/mine/keep/until", day="soon", saw="2026-09-02").status == 422
    assert door.post("/mine/keep/until", day="", saw="2026-09-02").goes == "/mine/keep?did=never"
    assert "No last day is set" in door.get("/mine/keep").text


def test_what_is_done_leads_back_to_the_class_that_was_looked_at(door: Opened) -> None:
    """Every form and link of the page of one class of two, and of the check of the file, names it."""
    start_room(door.door.books["mine"], "Room 13", 2, NOW)
    one = _daily(door)
    page = door.get("/mine/keep?of=2").text
    for act in ("back", "restore", "remove", "until"):
        assert f'action="/mine/keep/{act}?of=2"' in page
    assert 'href="/mine/keep/check?of=2"' in page
    assert door.post("/mine/keep/remove?of=2", file=one.name).goes == "/mine/keep?did=removed&of=2"
    checked = door.get("/mine/keep/check?of=2").text
    assert 'href="/mine/keep?of=2"' in checked
    assert "Room 13</bdi></summary>" in checked


@pytest.mark.parametrize("fault", [b"torn", b"SQLite format 3\0" + bytes(4000)])
def test_a_damaged_file_is_told_and_moved_aside(door: Opened, fault: bytes) -> None:
    """The first page leads to the backups; one is brought back, the damaged file is kept."""
    made = _daily(door)
    door.door.books.close()
    _path(door).write_bytes(fault)
    first = door.get("/")
    assert first.status == 503
    assert 'href="/mine/keep"' in first.text
    page = door.get("/mine/keep")
    assert page.status == 503
    assert "This is not the file of a class" in page.text
    assert made.name in page.text
    assert door.post("/mine/keep/back", file=made.name).goes == "/mine/keep?did=aside"
    assert _texts(door) == ["early"]
    page = door.get("/mine/keep?did=aside")
    (aside,) = _path(door).parent.glob("*.damaged")
    assert aside.read_bytes() == fault
    assert aside.name in page.text
    door.post("/mine/keep/remove", file=aside.name)
    assert not aside.exists()


def test_what_cannot_be_opened_is_only_moved_aside(door: Opened) -> None:
    """By one button, a newer file as well; a new class may be started, and a backup brought back later."""
    made = _daily(door)
    with door.door.books["mine"].writing() as connection:
        connection.exec_driver_sql("UPDATE schema_version SET version_num = '9999'")
    door.door.books.close()
    page = door.get("/mine/keep")
    assert "newer release" in page.text
    assert f"<code>{made.name}</code>" in page.text
    assert 'action="/mine/keep/aside"' in page.text
    assert door.post("/mine/keep/aside").goes == "/mine/keep?did=moved"
    (aside,) = _path(door).parent.glob("*.damaged")
    page = door.get("/mine/keep?did=moved")
    assert page.status == 200
    assert aside.name in page.text
    assert door.post("/mine/keep/back", file=made.name).goes == "/mine/keep?did=restored"
    assert _texts(door) == ["early"]


def test_a_whole_class_is_not_moved_aside(door: Opened) -> None:
    """It stays, and it is said."""
    assert door.post("/mine/keep/aside").status == 422
    assert _texts(door) == ["early"]


def test_a_bad_newest_backup_is_passed_over(door: Opened) -> None:
    """The one before it is offered by the first button; what is wrong with the newest is said."""
    made, torn = _daily(door), _daily(door, 1)
    torn.write_bytes(b"torn")
    door.door.books.close()
    _path(door).write_bytes(b"torn")
    page = door.get("/mine/keep").text
    first = page.index("Bring back the newest good backup")
    assert made.name in page[first - 300 : first]
    assert f"<code>{torn.name}</code>: This backup cannot be used" in page


def test_names_stay_text(door: Opened) -> None:
    """A child's name and a word in the address are never markup."""
    name_pupil(door.door.books["mine"], 1, "K01", "<script>alert(1)</script>\u202e")
    page = door.get("/mine/keep?did=<script>").text
    assert "<script>" not in page
    assert "<bdi>K01 &lt;script&gt;" in page
    assert len(pupils_of(door.door.books["mine"], 1)) == 2


@pytest.mark.parametrize("book", ["demo", "other", "..", "%00"])
def test_only_a_class_that_is_there_is_kept(door: Opened, book: str) -> None:
    """A demo that was not begun, and any other name, are not there; nothing is made."""
    assert door.get(f"/{book}/keep").status == 404
    assert door.post(f"/{book}/keep/until", day="", saw="").status == 404
    assert not door.door.books.there("demo")


def test_the_demo_takes_no_backup(door: Opened) -> None:
    """So that nothing of a real class is mixed with it; it can be saved."""
    saved = door.client.get("/mine/keep/backup").content
    door.door.books.paths["demo"].write_bytes(saved)
    assert "takes no backup" in door.get("/demo/keep").text
    files = {"backup": ("a.backup", saved, "application/octet-stream")}
    sent = door.client.post(
        "/demo/keep/restore", data={"csrf_token": door.csrf_token}, files=files, headers=door.origin
    )
    assert sent.status_code == 422


def test_a_child_erased_on_its_page_is_gone_from_backups_and_pages(door: Opened) -> None:
    """No byte of the name in the folder of the class, wherever the program put it."""
    name_pupil(door.door.books["mine"], 1, "K01", "Wrenalinda")
    _daily(door)
    pages = door.door.folder / "mine" / "night-1" / "tomorrow"
    pages.mkdir(parents=True)
    (pages / "morning.pdf").write_bytes(b"Wrenalinda")
    assert door.post("/mine/1/pupil/K01/erase", sure="K01", backups="yes", saw="Wrenalinda").status == 200
    files = [path for path in _path(door).parent.rglob("*") if path.is_file()]
    assert b"Wrenalinda" not in b"".join(path.read_bytes() for path in files)
