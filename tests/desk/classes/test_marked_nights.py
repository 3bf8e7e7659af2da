"""Nights are reckoned one after another, each with what the earlier ones showed, and kept as a cache."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes import marked_nights
from onewhole.desk.classes.class_records import (
    NightPage,
    NotThere,
    Store,
    night_page,
    open_book,
    room,
    set_night,
    standing_answers,
    start_room,
)
from onewhole.desk.classes.marked_nights import (
    cached_summaries,
    mark_missing,
    mark_night,
    marked_night,
    missing_before,
    night_summaries,
)
from onewhole.desk.classes.night_summary import summary_text
from onewhole.desk.classes.notebooks import and_tonight
from onewhole.desk.marking.mark import Marked, mark_sheet, shown_reasons
from onewhole.desk.tomorrow.overrides import group_key
from onewhole.errors import InputError
from onewhole.findings.placing import FitsIdea, MovedHere
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.notebook import Notebook, Tonight
from onewhole.marking.reading.class_answers import read_texts
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.answers import KeptAnswer
from onewhole.store.correction_rows import (
    CellReadAs,
    FindingAside,
    GroupKey,
    PlaceChosen,
    TeacherWord,
)
from onewhole.store.corrections import Correction, keep_correction
from onewhole.store.keeping import erase_pupil
from onewhole.store.night_cache import cache_night, cached_nights
from tests.kit.club import DAY, NOW, ROWS, TYPED, small_club
from tests.kit.kept import keep_answer


def write(book: Store, night: int, code: str, label: str, text: str) -> None:
    """Write one answer."""
    keep_answer(book, KeptAnswer(night, code, label, text, NOW, "teacher"))


def say(book: Store, night: int, code: str, word: TeacherWord) -> None:
    """Let the teacher say something of a pupil's night."""
    keep_correction(book, Correction(night, code, word, NOW, "teacher"))


@pytest.fixture
def book(tmp_path: Path) -> Store:
    """A class of five, K05 away, with three nights of answers; the third night has the first one's page."""
    made = open_book(tmp_path / "room12.class")
    small_club(made, 3)
    return made


def reckon_all(book: Store) -> list[tuple[int, int]]:
    """Reckon what is missing and return what was told on the way."""
    told: list[tuple[int, int]] = []
    mark_missing(book, 1, lambda done, of: told.append((done, of)))
    return told


def test_what_a_night_left_is_what_was_marked(book: Store) -> None:
    """Right, asked, unread, verdicts, patterns and the finding of each pupil who wrote something."""
    assert night_summaries(book, 1).missing == (1, 2, 3)
    assert reckon_all(book) == [(0, 3), (1, 3), (2, 3), (3, 3)]
    first = night_summaries(book, 1).nights[0]
    assert (first.night, first.day, first.name, first.labels) == (1, DAY, "Kite tails 0", ("1", "2", "3"))
    assert first.until == date(2026, 9, 15)
    assert list(first.pupils) == ["K01", "K02", "K03", "K04"]
    fourth, one = first.pupils["K04"], first.pupils["K01"]
    assert (fourth.right, fourth.asked, fourth.unread, fourth.verdicts) == (1, 3, 1, "w?r")
    assert (one.status, one.patterns, one.evidence) == (Status.LIKELY, ("A01",), ("1", "2", "3"))
    assert all("A01" in ids for ids in one.fits.values())


def test_nights_are_read_as_with_a_notebook_kept_by_hand(book: Store) -> None:
    """Two roads: the chain of reckonings, and the notebook written night after night."""
    notebook = Notebook()
    for number in (1, 2, 3):
        page = night_page(book, 1, number)
        marked = mark_sheet(
            WorkedSheet(page.sheet),
            read_texts(standing_answers(book, page, room(book, 1)), page.sheet.problems),
            tonight=Tonight(notebook, page.night.day),
        )
        ours = mark_night(book, 1, number)
        assert (ours.findings, ours.groups, ours.weighed.counts) == (
            marked.findings,
            marked.groups,
            marked.weighed.counts,
        )
        notebook = and_tonight(marked)
    assert reckon_all(book) == []


def test_no_answer_stops_a_night_and_those_after_it(tmp_path: Path) -> None:
    """2/2 and 4 5/6 on a page of two: that night, and the one after it, are reckoned and told."""
    book = open_book(tmp_path / "two.class")
    start_room(book, "Room 12", 1, NOW)
    for days in (0, 1):
        typed = "title: Two\n\n1. 4 1/2 - 2 1/2\n2. 9 1/6 - 4 4/6\n"
        page = set_night(book, 1, typed, DAY + timedelta(days=days), NOW)
        write(book, page.night.number, "K01", "1", "2/2")
        write(book, page.night.number, "K01", "2", "4 5/6")
    reckon_all(book)
    assert [left.night for left in night_summaries(book, 1).nights] == [1, 2]
    for marked in (mark_night(book, 1, 1), mark_night(book, 1, 2)):
        assert bool(marked.findings[0].evidence) == bool(marked.findings[0].patterns)
        assert [shown_reasons(group)[0][0] for group in marked.groups] == ["K01"]


def test_a_change_in_an_early_night_makes_the_later_ones_stale(book: Store) -> None:
    """An answer, a reading and the teacher's word count from that night on, not before."""
    reckon_all(book)
    write(book, 2, "K02", "1", "5 1/8")
    assert (night_summaries(book, 1).missing, missing_before(book, 1, 3), missing_before(book, 1, 2)) == (
        (2, 3),
        1,
        0,
    )
    assert reckon_all(book) == [(0, 2), (1, 2), (2, 2)]
    read = Correction(3, "K04", CellReadAs("2", "x", "4 2/6"), NOW, "teacher")
    keep_correction(book, read)
    assert night_summaries(book, 1).missing == (3,)
    mark_night(book, 1, 3)
    last = night_summaries(book, 1)
    assert (last.missing, last.nights[2].pupils["K04"].verdicts) == ((), "wrr")


def test_a_night_without_answers_is_neither_missing_nor_reckoned(book: Store) -> None:
    """It is set, and that is all; read for itself, everybody is absent."""
    reckon_all(book)
    page = set_night(book, 1, TYPED.format(9), DAY + timedelta(days=9), NOW)
    assert night_summaries(book, 1).missing == ()
    (group,) = mark_night(book, 1, page.night.number).groups
    assert group.pupils == ("K01", "K02", "K03", "K04", "K05")
    assert len(night_summaries(book, 1).nights) == 3


def test_a_foreign_reckoning_is_thrown_away(book: Store) -> None:
    """What stands under another stamp is not read."""
    reckon_all(book)
    cache_night(book, 2, "another", "nonsense")
    assert night_summaries(book, 1).missing == (2,)
    assert [one.night for one in night_summaries(book, 1).nights] == [1, 3]
    assert reckon_all(book) == [(0, 1), (1, 1)]


def test_a_pupil_erased_while_a_night_is_read_is_not_brought_back(
    book: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The answers were read before, and are kept after: then nothing is kept of that night."""
    cached: list[dict[int, tuple[str, str]]] = []

    def late(page: NightPage, marked: Marked, aside: frozenset[str]) -> str:
        if not cached:
            erase_pupil(book, 1, "K03")
            cached.append(cached_nights(book, 1))
        return summary_text(page, marked, aside)

    monkeypatch.setattr(marked_nights, "summary_text", late)
    assert {one.pupil for one in mark_night(book, 1, 1).findings} == {f"K0{at}" for at in range(1, 6)}
    assert cached == [{}] == [cached_nights(book, 1)]
    assert {one.pupil for one in mark_night(book, 1, 1).findings} == {"K01", "K02", "K04", "K05"}
    assert set(cached_nights(book, 1)) == {1}


def test_a_finding_set_aside_says_nothing_and_can_be_taken_up_again(book: Store) -> None:
    """The pupil is met for a talk, tells the class nothing of a pattern, and comes back by an empty word."""
    say(book, 3, "K01", FindingAside(aside=True))
    found = marked_night(book, 1, 3)
    mine = next(one for one in found.marked.findings if one.pupil == "K01")
    assert (mine.status, mine.patterns, mine.wrong) == (Status.UNSTEADY, (), ("1", "2", "3"))
    assert next(group for group in found.marked.groups if "K01" in group.pupils).families == ()
    assert next(one for one in found.said.findings if one.pupil == "K01").status is Status.LIKELY
    assert night_summaries(book, 1).nights[2].pupils["K01"].set_aside
    say(book, 3, "K01", FindingAside(aside=False))
    assert marked_night(book, 1, 3).marked == found.said


def test_one_answer_that_fits_is_a_mark_in_the_grid_and_no_dated_record(tmp_path: Path) -> None:
    """The night itself may name the pattern; what is kept of it says which answer fits what, and no more."""
    book = open_book(tmp_path / "room12.class")
    start_room(book, "Room 12", 1, NOW)
    set_night(book, 1, TYPED.format(0), DAY, NOW)
    write(book, 1, "K01", "1", "5 1/8")
    [found] = mark_night(book, 1, 1).findings
    assert (found.status, found.patterns, found.evidence) == (Status.POSSIBLE, ("A01",), ("1",))
    kept = night_summaries(book, 1).nights[0].pupils["K01"]
    assert (kept.status, kept.patterns, kept.evidence) == (Status.UNSTEADY, (), ())
    assert "A01" in kept.fits["1"]
    write(book, 1, "K01", "2", "5 4/6")
    assert mark_night(book, 1, 1).findings[0].recorded
    kept = night_summaries(book, 1).nights[0].pupils["K01"]
    assert (kept.status, kept.evidence) == (Status.LIKELY, ("1", "2"))


def test_a_moved_pupil_sits_there_and_the_reason_says_so(book: Store) -> None:
    """The others stay; the reason tells of the teacher and of the answers; an empty word moves back."""
    before = mark_night(book, 1, 3)
    to = next(group for group in before.groups if "K02" in group.pupils)
    say(book, 3, "K01", PlaceChosen(group_key(to)))
    after = mark_night(book, 1, 3)
    there = next(group for group in after.groups if group.name == to.name)
    assert there.pupils == tuple(sorted((*to.pupils, "K01")))
    (moved,) = next(placed.because for placed in there.placings if placed.pupil == "K01")
    before_it = next(group for group in before.groups if "K01" in group.pupils)
    assert isinstance(moved, MovedHere)
    assert moved.group == before_it.name
    assert FitsIdea(("1", "2", "3"), "A01") in moved.because
    assert sorted(code for group in after.groups for code in group.pupils) == [*sorted(ROWS), "K05"]
    assert night_summaries(book, 1).nights[2].pupils["K01"].group == to.name
    say(book, 3, "K01", PlaceChosen(None))
    assert mark_night(book, 1, 3) == before


def test_a_move_to_a_group_that_is_no_more_makes_it_anew(book: Store) -> None:
    """What the teacher said is never dropped, in a file of an earlier release neither."""
    say(book, 3, "K01", PlaceChosen(GroupKey("Owls", "long gone")))
    (owls,) = (group for group in mark_night(book, 1, 3).groups if "K01" in group.pupils)
    assert (owls.name, owls.pupils) == ("Owls", ("K01",))


def test_a_class_without_pupils_is_told_what_to_do(book: Store) -> None:
    """There is nothing to mark, and nothing missing."""
    other = start_room(book, "Room 13", 0, NOW)
    page = set_night(book, other.number, TYPED.format(0), DAY, NOW)
    with pytest.raises(InputError, match="no pupil in this class"):
        mark_night(book, other.number, page.night.number)
    assert night_summaries(book, other.number).missing == ()


def test_a_night_of_another_class_is_not_reckoned(book: Store) -> None:
    """A night opens under its own class only."""
    other = start_room(book, "Room 13", 1, NOW)
    with pytest.raises(NotThere):
        mark_night(book, other.number, 1)


def test_what_is_found_on_a_night_counts_for_the_same_pupil_on_the_next(book: Store) -> None:
    """K01 fits A01 on every night: what is left of it is carried on, and fits of all nights are counted."""
    reckon_all(book)
    nights = [one.left("K01") for one in night_summaries(book, 1).nights]
    assert all(night.held(("A01",)) > 900_000 and night.fits["A01"] == 3 for night in nights)
    tonight = marked_night(book, 1, 3).marked.tonight
    assert tonight is not None
    assert tonight.before("").recent_fits(tonight.on)["K01"]["A01"] == 2 * 3


def test_erasing_a_pupil_erases_the_history(book: Store) -> None:
    """Nothing of the code stands in any summary, neither before the nights are read again nor after."""
    reckon_all(book)
    assert all('"K01"' in text for _, text in cached_nights(book, 1).values())
    erase_pupil(book, 1, "K01")
    assert cached_nights(book, 1) == {}
    reckon_all(book)
    assert len(cached_nights(book, 1)) == 3
    assert not any("K01" in text for _, text in cached_nights(book, 1).values())


def test_a_finding_set_aside_is_not_carried_on(book: Store) -> None:
    """The next night knows nothing of the pupil, as of a new one."""
    say(book, 2, "K01", FindingAside(aside=True))
    reckon_all(book)
    assert night_summaries(book, 1).nights[1].left("K01").shares == {}
    tonight = marked_night(book, 1, 3).marked.tonight
    assert tonight is not None
    assert tonight.notebook.histories(tonight.on).of["K01"].shares == {}


def test_a_summary_of_an_earlier_form_is_read(book: Store) -> None:
    """Those that an earlier release kept say nothing of a history: they are told all the same."""
    reckon_all(book)
    text = cached_nights(book, 1)[1][1]
    old = "\n".join(text.replace(',"failed":"","carried":""', "").splitlines()[:2])
    assert "carried" not in old
    cache_night(book, 1, "1.0", old)
    summary, stale = cached_summaries(book, 1)[1]
    assert stale
    assert summary is not None
    assert summary.pupils["K01"].patterns == ("A01",)
