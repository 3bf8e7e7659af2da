"""A night on which the program fails, in the browser: every page opens, and says which night it was."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.desk.classes import marked_nights
from onewhole.desk.keep.pupil_cache import clear_pupil_caches
from onewhole.desk.marking.mark import Marked, mark_sheet
from onewhole.sheets.worked import WorkedSheet
from tests.kit.club import small_club
from tests.kit.doors import Opened, opened

TOLD = "The answers of 2 September (“Kite tails 1”) could not be worked through"


@pytest.fixture
def club(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Opened]:
    """A door on a class of three nights; the second one cannot be marked."""

    def fails(worked: WorkedSheet, *args: object, **options: object) -> Marked:
        if worked.sheet.header.title == "Kite tails 1":
            raise IndexError
        return mark_sheet(worked, *args, **options)  # type: ignore[arg-type]

    clear_pupil_caches()
    monkeypatch.setattr(marked_nights, "mark_sheet", fails)
    with opened(tmp_path) as door:
        small_club(door.door.books["mine"], 3)
        yield door


def test_the_pages_that_leave_a_night_out_say_so(club: Opened) -> None:
    """Tomorrow marks what comes before it; then the Week and the pupil's page tell it as well."""
    for page in ("night/3/tomorrow", "week", "pupil/K01"):
        shown = club.get(f"/mine/1/{page}")
        assert (shown.status, TOLD in shown.text) == (200, True), page


def test_the_night_itself_is_refused_in_words(club: Opened) -> None:
    """With what to do, and where the program failed; its answers can be seen on the Marking page."""
    shown = club.get("/mine/1/night/2/tomorrow")
    assert shown.status == 422
    assert TOLD in shown.text
    assert "IndexError at test_failing_night.py" in shown.text
    assert club.get("/mine/1/night/2/marking").status == 200
