"""A night, a page, a class changed or deleted, asked without a browser."""

import re
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import night_page, night_pages, rooms, start_room
from onewhole.desk.keep.backups import back_up_daily, backups_folder, backups_of
from onewhole.desk.page.kept_pages import kept_pages
from onewhole.store.keeping import set_keep_until
from onewhole.web.jobs import Job, Jobs
from tests.kit.doors import Opened
from tests.kit.forms import form_to
from tests.kit.rounds import lived_in

NIGHT, PAGE, CLASS = "/mine/1/night/8/change", "/mine/1/page/8/change", "/mine/1/class/change"


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path) as made:
        yield made


def _saw(door: Opened, page: str, act: str) -> str:
    return form_to(door.get(page).text, f"{page}/{act}").value("saw")


def test_a_night_is_renamed_moved_set_again_and_deleted(door: Opened) -> None:
    """Each goes back to its place on the Week; what goes is named with its count, and so is the backup."""
    book = door.door.books["mine"]
    day = night_page(book, 1, 8).night.day
    assert f'"{NIGHT}"' in door.get(f"/mine/1/week?of={day}").text
    came = door.post(f"{NIGHT}/name", name="<b>Wind</b>", saw="")
    assert came.goes == f"/mine/1/week?of={day}#night-8"
    assert "&lt;b&gt;Wind&lt;/b&gt;" in door.get(came.goes).text
    moved = day + timedelta(days=100)
    assert door.post(f"{NIGHT}/day", day=f"{moved}", saw=f"{day}").goes == f"/mine/1/week?of={moved}#night-8"
    assert door.post(f"{NIGHT}/again", day=f"{day}").status == 303
    assert door.post(f"{NIGHT}/again", day=f"{day}").status == 422
    assert door.post(f"{NIGHT}/day", day="kites", saw=f"{moved}").status == 422
    page = door.get(NIGHT).text
    count = re.search(r"Delete this night and (\d+) answers", page)
    assert count
    assert (
        f"<li>{count[1]} answers of 23 pupils</li>" in page
        or f"<li>{count[1]} answers of 24 pupils</li>" in page
    )
    gone = door.post(f"{NIGHT}/delete", saw=_saw(door, NIGHT, "delete"))
    (backup,) = backups_of(book.path)
    assert (gone.status, backup.path.name in gone.text, f"{count[1]} answers" in gone.text) == (
        200,
        True,
        True,
    )
    assert 8 not in [page.night.number for page in night_pages(book, 1)]
    assert [door.get(f"/mine/1/night/8/{place}").status for place in ("marking", "change", "tomorrow")] == [
        404
    ] * 3
    assert "before something was deleted" in door.get("/mine/keep").text


def test_a_page_is_renamed_copied_and_deleted(door: Opened) -> None:
    """The link stands on the desk; with the page go its nights, named first."""
    book = door.door.books["mine"]
    assert f'"{PAGE}"' in door.get("/mine/1/page/8").text
    assert (
        door.post(f"{PAGE}/title", title="Windy tails", saw=_saw(door, PAGE, "title")).goes
        == "/mine/1/page/8"
    )
    assert "Windy tails" in door.get("/mine/1/page/8").text
    assert door.post(f"{PAGE}/title", title=" ", saw="2").status == 422
    copied = door.post(f"{PAGE}/copy").goes
    assert "Windy tails (copy)" in door.get(copied).text
    assert "No class took it home" in door.get(f"{copied}/change").text
    assert "Delete this page and 1 night" in door.get(PAGE).text
    gone = door.post(f"{PAGE}/delete", saw=_saw(door, PAGE, "delete"))
    assert (gone.status, "1 night</li>" in gone.text) == (200, True)
    assert 8 not in [page.sheet for page in kept_pages(book)]
    assert door.get("/mine/1/page/8").status == 404


def test_a_class_is_copied_and_deleted_by_its_name(door: Opened) -> None:
    """Its name typed wrongly deletes nothing; the page that tells it has no tab of a class that is gone."""
    book = door.door.books["mine"]
    assert door.post(f"{CLASS}/copy", name="room 12,  the KITE club").status == 422
    copied = door.post(f"{CLASS}/copy", name="Room 13").goes
    assert "24 pupils" in door.get(copied).text
    assert [pupil.name for pupil in rooms(book)[1].pupils] == [pupil.name for pupil in rooms(book)[0].pupils]
    saw = _saw(door, CLASS, "delete")
    assert door.post(f"{CLASS}/delete", saw=saw, sure="Room 12").status == 422
    gone = door.post(f"{CLASS}/delete", saw=saw, sure=rooms(book)[0].name)
    assert (gone.status, "is deleted" in gone.text, "Pages of" in gone.text) == (200, True, False)
    assert [one.name for one in rooms(book)] == ["Room 13"]
    assert door.get("/").goes == copied.replace("/class", "/week")


def test_a_class_is_erased_at_once_on_its_last_day(door: Opened) -> None:
    """The Week tells it four weeks before and when it is over; one form erases 24 children everywhere."""
    book, today = door.door.books["mine"], door.door.today()
    back_up_daily(book, backups_folder(book.path), door.door.now())
    link = f'<a href="{CLASS}">erase the class</a>'
    for later, told in ((29, ""), (28, "28 more days"), (0, "today is the last day"), (-1, "it is over")):
        set_keep_until(book, today + timedelta(days=later))
        page = door.get("/mine/1/week").text
        assert (told in page, link in page) == (True, bool(told)), later
    assert f'<a href="{CLASS}">Erase' in door.get("/mine/keep").text
    saw = _saw(door, CLASS, "erase")
    assert door.post(f"{CLASS}/erase", saw=saw, sure="").status == 422
    assert len(rooms(book)[0].pupils) == 24
    done = door.post(f"{CLASS}/erase", saw=saw, sure=rooms(book)[0].name, backups="yes")
    assert (done.status, "is erased" in done.text, "Also out of 1 backup." in done.text) == (200, True, True)
    assert rooms(book) == ()
    assert door.get("/").goes == "/welcome"
    assert door.get("/mine/keep").status == 200
    assert door.post("/mine/1/clean").goes == "/"


def test_nothing_is_deleted_while_work_is_under_way_or_in_the_demo(
    door: Opened, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What is being made could write of what is gone; the demo is put away as a whole."""
    assert door.post("/demo").status == 303
    saws = {page: _saw(door, page, "delete") for page in (NIGHT, PAGE, CLASS)}
    name = rooms(door.door.books["mine"])[0].name
    told = door.post("/demo/1/night/8/change/delete", saw=saws[NIGHT])
    assert (told.status, "Put it away as a whole" in told.text) == (422, True)
    monkeypatch.setattr(Jobs, "goes_on", lambda *_: Job("x", "Film", "/mine/1/week"))
    for page, saw in saws.items():
        told = door.post(f"{page}/delete", saw=saw, sure=name)
        assert (told.status, "under way" in told.text) == (422, True)
    assert door.post(f"{CLASS}/erase", saw=saws[CLASS], sure=name).status == 422
    assert len(night_pages(door.door.books["mine"], 1)) == 10


def test_two_classes_are_never_called_the_same(door: Opened) -> None:
    """Neither a new one nor one that is renamed; blanks, small letters and wide forms are the same."""
    book = door.door.books["mine"]
    assert door.post("/welcome", name="Room 13", pupils="2").status == 303
    for name in ("Room 13", " room   13", "ＲＯＯＭ 13"):
        told = door.post("/welcome", name=name, pupils="2")
        assert (told.status, "There is a class called" in told.text) == (422, True)
    told = door.post("/mine/1/class/name", called="ROOM 13", saw_called=rooms(book)[0].name)
    assert (told.status, 'value="ROOM 13"' in told.text) == (422, True)
    assert door.post("/mine/2/class/name", called="ROOM 13", saw_called="Room 13").status == 303
    assert [one.name for one in rooms(book)][1] == "ROOM 13"
    assert start_room(book, "Room 14", 1, door.door.now()).number == 3
