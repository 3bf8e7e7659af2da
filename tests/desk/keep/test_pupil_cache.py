"""What is remembered of pupils' answers is bounded, and goes with an erased pupil."""

from functools import _lru_cache_wrapper
from pathlib import Path

import pytest

import onewhole.desk.classes.week
import onewhole.desk.classes.year_night
import onewhole.desk.classes.year_plan
import onewhole.desk.page.live_page
import onewhole.desk.tomorrow.morning
import onewhole.desk.walkthrough.board
from onewhole.desk.classes.class_records import open_book
from onewhole.desk.keep.backups import erase_everywhere
from onewhole.desk.keep.pupil_cache import clear_pupil_caches, pupil_cache
from onewhole.desk.marking.grid import grid
from tests.kit.doors import NOW
from tests.kit.invented import lay_invented_class
from tests.kit.memory import every_object

#: Caches of typed pages, their problems and the days of a year: no pupil's answer is given to them.
_OF_PAGES = {
    "_asked", "_board", "_gap", "_html", "_left", "_like_twin", "_offered", "_read_whole", "_twin",
    "_worked_on", "expected", "sheet_typed", "skills_of", "year_plan",
}  # fmt: skip


def _desk_caches() -> "dict[str, _lru_cache_wrapper[object]]":
    """Return every cache of the desk by the name of its function."""
    found = (one for one in every_object() if isinstance(one, _lru_cache_wrapper))
    return {one.__name__: one for one in found if str(one.__module__).startswith("onewhole.desk.")}


def _filled(caches: "dict[str, _lru_cache_wrapper[object]]") -> set[str]:
    return {name for name, one in caches.items() if one.cache_info().currsize}


@pytest.mark.more("web/test_privacy_round.py")
@pytest.mark.asvs("V14.2.2")
def test_an_erased_pupil_is_in_no_cache(tmp_path: Path) -> None:
    """Every cache of the desk that could hold an answer is empty after the erasing, and was not before."""
    lay_invented_class(tmp_path, NOW, read=True)
    book = open_book(tmp_path / "room12.class")
    grid(book, 1, 1)
    onewhole.desk.tomorrow.morning.morning(book, 1, 1)
    onewhole.desk.classes.week.week(book, 1, NOW.date())
    mine = {name: one for name, one in _desk_caches().items() if name not in _OF_PAGES}
    assert {"_judged", "_practised", "heat_of", "marked_of", "talks"} <= _filled(mine)
    erase_everywhere(book, 1, "K01")
    assert _filled(mine) == set()
    book.close()


def test_what_is_just_computed_while_a_pupil_is_erased_is_not_remembered() -> None:
    """A page that another thread prepares meanwhile leaves nothing behind: it is computed anew."""
    computed: list[str] = []

    @pupil_cache(maxsize=8)
    def slow(answer: str) -> str:
        computed.append(answer)
        if len(computed) == 1:
            clear_pupil_caches()
        return answer

    assert [slow("4 7/8") for _ in range(3)] == ["4 7/8"] * 3
    assert computed == ["4 7/8"] * 2


@pytest.mark.more("web/test_privacy_round.py")
@pytest.mark.asvs("V14.2.2")
def test_every_cache_of_the_desk_is_bounded() -> None:
    """None grows with the days of a year."""
    caches = _desk_caches()
    assert set(caches) >= _OF_PAGES, "a name in the list is of a cache that is gone"
    assert [name for name, one in caches.items() if one.cache_info().maxsize is None] == []
