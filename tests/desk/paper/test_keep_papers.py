"""Papers are kept: what is sure as answers, the rest to be looked at, nothing of what stood is lost."""

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import set_night
from onewhole.desk.paper.checking_papers import check_cell, papers_to_check
from onewhole.desk.paper.found_told import found_told
from onewhole.desk.paper.keep_papers import keep_seen_papers, read_papers
from onewhole.errors import InputError
from onewhole.findings.attendance import NightSaid, PageWord, PaperWord
from onewhole.findings.in_papers import PaperMissing, StrangeCell, UnawaitedPaper
from onewhole.findings.in_pictures import NoPage
from onewhole.marking.paper.ink_reading import InkReading
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.store.answers import KeptAnswer, answers_of, history_of
from onewhole.store.night_words import keep_night_words
from onewhole.store.opening import Store
from onewhole.store.paper_cells import nights_with_paper, paper_cells_of, paper_crop
from onewhole.store.refusals import NotThere
from tests.kit.answers import all_right, by_pattern, page
from tests.kit.kept import DAY, NOW, keep_answer
from tests.kit.paper_cells import CROP
from tests.kit.seen_papers import Sees, paper_class, row, seen, sure, unsure

RIGHT = all_right(page())
WRONG = by_pattern("A01", page())


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of three that took a page of twelve home."""
    made = paper_class(tmp_path / "room12.class")
    yield made
    made.close()


def _texts(book: Store, night: int = 1) -> dict[tuple[str, str], str]:
    return {(one.code, one.problem): one.text for one in answers_of(book, night)}


def _whys(book: Store) -> dict[tuple[str, str], PaperWhy]:
    return {one.key: one.cell.why for one in paper_cells_of(book, 1)}


def test_sure_answers_stand_and_the_rest_waits(book: Store) -> None:
    """A sure one is an answer by the program's name; an unsure or empty one is none."""
    cells = {"K01": {"1": sure("3 3/6"), "2": unsure("3 5/8", "3 6/8"), "3": sure("")}}
    kept = keep_seen_papers(book, 1, 1, seen(cells), now=NOW)
    assert (kept.reading, kept.read, kept.empty, kept.shown) == (1, 1, 1, 1)
    (answer,) = answers_of(book, 1)
    assert (answer.code, answer.problem, answer.text, answer.by) == ("K01", "1", "3 3/6", "paper 1")
    assert paper_crop(book, 1, "K01", "2") == CROP
    assert [one.label for one in papers_to_check(book, 1, 1).open] == ["2"]


def test_who_is_missing_is_named(book: Store) -> None:
    """Whose paper is waited for and in no picture; not who was away, nor whose answers are typed."""
    keep_night_words(book, 1, [("K02", PaperWord.ABSENT)], NOW, "teacher")
    found = keep_seen_papers(book, 1, 1, seen({"K01": row(RIGHT)}, NoPage("b.jpg")), now=NOW).found
    assert found == (NoPage("b.jpg"), PaperMissing("K03"))
    keep_answer(book, KeptAnswer(1, "K03", "1", "3", NOW, "teacher"))
    assert keep_seen_papers(book, 1, 1, seen({}), now=NOW).found == ()


def test_a_paper_that_nobody_waits_for_is_told_once(book: Store) -> None:
    """Of a pupil who is down as away, or was not given the page; its answers count all the same."""
    said: list[tuple[str, NightSaid]] = [("K02", PaperWord.ABSENT), ("K03", PageWord.NOT_GIVEN)]
    keep_night_words(book, 1, said, NOW, "teacher")
    cells = seen({code: {"1": sure("3 3/6")} for code in ("K01", "K02", "K03")})
    kept = keep_seen_papers(book, 1, 1, cells, now=NOW)
    assert kept.read == 3
    assert kept.found == (
        UnawaitedPaper("K02", PaperWord.ABSENT),
        UnawaitedPaper("K03", PaperWord.HERE),
    )
    late, others = found_told(book, 1, 1, kept.found)
    assert late == "K02 is down as absent: this counts as a late paper now."
    assert others.startswith("K03 did not get this page")
    assert keep_seen_papers(book, 1, 1, cells, now=NOW).found == ()


def test_a_stranger_s_cell_is_told_and_not_kept(book: Store) -> None:
    """A code that is not in the class, a label that is not on the page."""
    cells = {"K99": {"1": sure("3")}, "K01": {"1": sure("3 3/6"), "99": sure("3")}}
    kept = keep_seen_papers(book, 1, 1, seen(cells), now=NOW)
    assert kept.found[:2] == (StrangeCell("K01", "99"), StrangeCell("K99", "1"))
    assert list(_texts(book)) == [("K01", "1")]


def test_what_was_typed_stays(book: Store) -> None:
    """The same answer is not kept again; another one is shown, and counts nowhere before it is checked."""
    for label, text in (("1", "3  3/6"), ("2", "3 5/8")):
        keep_answer(book, KeptAnswer(1, "K01", label, text, NOW, "teacher"))
    kept = keep_seen_papers(book, 1, 1, seen({"K01": {"1": sure("3 3/6"), "2": sure("3 6/8")}}), now=NOW)
    assert (kept.same, kept.shown, kept.read) == (1, 1, 0)
    assert _texts(book) == {("K01", "1"): "3  3/6", ("K01", "2"): "3 5/8"}
    assert _whys(book) == {("K01", "2"): PaperWhy.TYPED}
    assert papers_to_check(book, 1, 1).open[0].stands == "3 5/8"


def test_papers_read_again_take_the_place_of_what_nobody_checked(book: Store) -> None:
    """What was checked stays as it was; a reading that is withdrawn leaves no answer."""
    keep_seen_papers(book, 1, 1, seen({"K01": {"1": sure("3 3/6"), "2": unsure("3 5/8", "3")}}), now=NOW)
    check_cell(book, 1, 1, ("K01", "2"), "3 5/8", now=NOW)
    again = {"K01": {"1": unsure("3 3/6", "3 5/6"), "2": sure("9"), "3": sure("2 2/3")}}
    kept = keep_seen_papers(book, 1, 1, seen(again), now=NOW)
    assert (kept.reading, kept.left, kept.shown, kept.read) == (2, 1, 1, 1)
    assert _texts(book) == {("K01", "1"): "", ("K01", "2"): "3 5/8", ("K01", "3"): "2 2/3"}
    assert [one.by for one in history_of(book, 1, "K01", "1")] == ["paper 1", "paper 2"]


def test_one_cell_on_two_pictures(book: Store) -> None:
    """Where both say the same it is one; where they do not, it is to be looked at."""
    both = seen({"K01": {"1": sure("3 3/6"), "2": sure("3 5/8")}})
    other = seen({"K01": {"1": sure("3 3/6"), "2": sure("3 6/8")}})
    keep_seen_papers(book, 1, 1, type(both)((*both.cells, *other.cells)), now=NOW)
    assert _whys(book) == {("K01", "1"): PaperWhy.ALONE, ("K01", "2"): PaperWhy.TWICE}


def test_an_answer_that_alone_decides_a_group_is_always_shown(book: Store) -> None:
    """Two answers that fit one idea: each decides. Three and more: none does."""
    two = [*WRONG[:5], *RIGHT[5:]]
    fits = [str(at) for at in range(1, 6) if WRONG[at - 1] != RIGHT[at - 1]]
    assert len(fits) == 3
    texts = {**row(RIGHT), fits[0]: sure(WRONG[int(fits[0]) - 1]), fits[2]: sure(WRONG[int(fits[2]) - 1])}
    keep_seen_papers(book, 1, 1, seen({"K01": texts, "K02": row(two)}), now=NOW)
    shown = {key for key, why in _whys(book).items() if why is PaperWhy.DECIDES}
    assert shown == {("K01", fits[0]), ("K01", fits[2])}
    assert not shown & _texts(book).keys()


def test_a_check_can_put_another_reading_to_the_test(book: Store) -> None:
    """Three readings fit one idea; one turns out otherwise: the two that are left decide, and wait."""
    fits = [str(at) for at in range(1, 13) if WRONG[at - 1] != RIGHT[at - 1]][:3]
    texts = {**row(RIGHT), **{label: sure(WRONG[int(label) - 1]) for label in fits}}
    texts[fits[0]] = InkReading(((WRONG[int(fits[0]) - 1], 700_000), ("8", 200_000)), 0, 0)
    keep_seen_papers(book, 1, 1, seen({"K01": texts}), now=NOW)
    assert [one.label for one in papers_to_check(book, 1, 1).open] == [fits[0]]
    left = check_cell(book, 1, 1, ("K01", fits[0]), RIGHT[int(fits[0]) - 1], now=NOW).left
    assert left == 2
    after = papers_to_check(book, 1, 1)
    assert {one.label for one in after.open} == set(fits[1:])
    assert {one.why for one in after.open} == {PaperWhy.DECIDES}
    assert [_texts(book)["K01", label] for label in fits[1:]] == ["", ""]
    for label in fits[1:]:
        check_cell(book, 1, 1, ("K01", label), WRONG[int(label) - 1], now=NOW, saw="")
    assert papers_to_check(book, 1, 1).open == ()


def test_pictures_are_looked_at_before_anything_is_written(book: Store) -> None:
    """What cannot be looked at changes nothing; none and another night are refused."""
    pictures = [("a.jpg", b"1"), ("b.jpg", b"2")]
    sees = Sees(seen({"K01": row(RIGHT)}))
    assert read_papers(book, 1, 1, pictures, sees, now=NOW).read == 12
    assert sees.shown == pictures
    with pytest.raises(InputError, match="no picture"):
        read_papers(book, 1, 1, [], Sees(seen({})), now=NOW)
    with pytest.raises(NotThere):
        read_papers(book, 1, 9, pictures, sees, now=NOW)

    def fails(_: object) -> object:
        raise InputError("no")

    before = paper_cells_of(book, 1)
    with pytest.raises(InputError, match="no"):
        read_papers(book, 1, 1, pictures, fails, now=NOW)  # type: ignore[arg-type]
    assert paper_cells_of(book, 1) == before
    assert len(sees.shown) == 2


def test_nothing_is_half_kept(book: Store) -> None:
    """One picture that cannot be stored: no cell and no answer of any other is kept."""
    good, bad = seen({"K01": row(RIGHT)}), seen({"K02": row(RIGHT)}, crop=b"x" * 1_000_000)
    with pytest.raises(InputError):
        keep_seen_papers(book, 1, 1, type(good)((*good.cells, *bad.cells)), now=NOW)
    assert (answers_of(book, 1), paper_cells_of(book, 1)) == ((), ())


def test_with_another_night_the_pictures_of_a_finished_one_go(book: Store) -> None:
    """What waits to be looked at keeps them."""
    other = set_night(book, 1, "1. 52 - 27\n2. 41 - 18", DAY + timedelta(days=1), NOW).night.number
    keep_seen_papers(book, 1, 1, seen({"K01": row(RIGHT)}), now=NOW)
    read_papers(book, 1, other, [("a", b"")], Sees(seen({"K01": {"1": unsure("25", "35")}})), now=NOW)
    assert nights_with_paper(book, 1) == {other: 1}
    read_papers(book, 1, 1, [("a", b"")], Sees(seen({"K02": row(RIGHT)})), now=NOW)
    assert nights_with_paper(book, 1) == {other: 1, 1: 12}
    assert {one.cell.verdict for one in paper_cells_of(book, 1)} == {PaperVerdict.READ}
