"""Tomorrow's page: whom to see first, groups that the teacher may change, evidence, the heat map, paper."""

from pathlib import Path

import pytest

from onewhole.desk.classes.class_list import name_pupils
from onewhole.desk.classes.class_records import NotThere, Store, open_book
from onewhole.desk.tomorrow.morning import Card, Morning, Seat, morning
from onewhole.desk.tomorrow.morning_pages import print_morning, printed_page, printed_pages
from onewhole.desk.tomorrow.moving import move, set_aside
from onewhole.errors import InputError
from onewhole.store.steps import NightStep, steps_of
from tests.kit import pdf
from tests.kit.club import NOW, ROWS, small_club
from tests.kit.pages import plain


@pytest.fixture
def book(tmp_path: Path) -> Store:
    """Two nights of a class of five; the last one is looked at."""
    made = open_book(tmp_path / "room12.class")
    small_club(made, 2)
    return made


def card_of(found: Morning, code: str) -> Card:
    """Return the group a pupil sits in."""
    (card,) = (card for card in found.cards for seat in card.seats if seat.code == code)
    return card


def seat_of(found: Morning, code: str) -> Seat:
    """Return a pupil's seat."""
    (seat,) = (seat for seat in card_of(found, code).seats if seat.code == code)
    return seat


def test_every_pupil_has_one_seat_with_a_reason(book: Store) -> None:
    """The absent too; a group of the absent takes nobody."""
    found = morning(book, 1, 2)
    assert sorted(seat.code for card in found.cards for seat in card.seats) == [*sorted(ROWS), "K05"]
    assert all(seat.because for card in found.cards for seat in card.seats)
    assert [card.takes for card in found.cards if card is card_of(found, "K05")] == [False]
    assert found.papers == 4


def test_whom_to_see_first_has_a_problem_to_ask_about(book: Store) -> None:
    """The problem and what was written there are formulas with their spoken words."""
    one = next(one for one in morning(book, 1, 2).first if one.code == "K01")
    assert (one.because, one.label) == ("Answers to 1, 2 and 3 may come from one idea.", "1")
    assert 'alttext="9 5/8 - 4 6/8"' in one.ask_about
    assert one.is_formula
    assert 'alttext="5 1/8"' in one.wrote


def test_a_talk_has_the_evidence_line_by_line(book: Store) -> None:
    """What was asked and written, what the pattern would write, the odds in words, the question."""
    talk = morning(book, 1, 2).talks["K01"]
    assert talk.found[0] == "Answers fit “takes the smaller number of pieces from the larger”."
    assert "in 100" in talk.known[0]
    assert [(line.label, line.says) for line in talk.lines] == [("1", "fits"), ("2", "fits"), ("3", "fits")]
    assert all(line.wrote in line.would for line in talk.lines)
    assert talk.questions[0].startswith("on 1: ")
    assert any("fitted “takes the smaller" in said for said in talk.beside)


def test_a_talk_shows_what_cannot_be_read_as_it_stands(book: Store) -> None:
    """It is text and not a formula."""
    lines = {line.label: line for line in morning(book, 1, 2).talks["K04"].lines}
    assert (lines["2"].wrote, lines["2"].is_formula, lines["2"].says) == ("x", False, "not readable")


def test_the_heat_map_counts_pupils_and_names_them(book: Store) -> None:
    """A pattern's row has whose answers fit on each problem; the last rows have all other answers."""
    found = morning(book, 1, 2).heat
    row = next(row for row in found.rows if row.pattern == "A01")
    assert row.codes == (("K01", "K03"), ("K01", "K03"), ("K01",))
    right, wrong, unread = found.rest
    assert right.codes == (("K02",), ("K02",), ("K02", "K03", "K04"))
    assert wrong.codes == (("K04",), (), ())
    assert unread.codes == (("K05",), ("K04", "K05"), ("K05",))
    assert found.pupils == 4


def test_every_answer_stands_in_the_heat_map(book: Store) -> None:
    """With all patterns shown, each pupil is in some row of each column."""
    found = morning(book, 1, 2).heat
    assert found.left_out == 0
    for at, _ in enumerate(found.labels):
        everyone = {code for row in (*found.rows, *found.rest) for code in row.codes[at]}
        assert everyone == {*ROWS, "K05"}


def test_a_move_is_kept_and_undone(book: Store) -> None:
    """The reason says who moved the pupil, and what the answers said; each move says how it is undone."""
    before = morning(book, 1, 2)
    first, second = card_of(before, "K02"), card_of(before, "K04")
    assert move(book, 1, 2, code="K01", key=first.key, now=NOW).undo == ""
    again = move(book, 1, 2, code="K01", key=second.key, now=NOW)
    assert (again.group, again.undo) == (second.name, first.key)
    after = morning(book, 1, 2)
    assert card_of(after, "K01").name == second.name
    assert seat_of(after, "K01").moved
    assert seat_of(after, "K01").because.startswith("Moved here by the teacher; the answers said ")
    assert after.stamp != before.stamp
    assert move(book, 1, 2, code="K01", key=again.undo, now=NOW).group == first.name
    assert move(book, 1, 2, code="K01", key="", now=NOW).group == card_of(before, "K01").name
    assert morning(book, 1, 2) == before


def test_a_move_that_cannot_be_is_refused_and_nothing_kept(book: Store) -> None:
    """To a group that is not there, to the absent, of a pupil who is not there."""
    before = morning(book, 1, 2)
    with pytest.raises(InputError, match="no such group"):
        move(book, 1, 2, code="K01", key="Owls: talk", now=NOW)
    with pytest.raises(InputError, match="no such group"):
        move(book, 1, 2, code="K01", key=card_of(before, "K05").key, now=NOW)
    with pytest.raises(InputError, match="no such pupil"):
        move(book, 1, 2, code="K77", key=before.cards[0].key, now=NOW)
    assert morning(book, 1, 2) == before


def test_somebody_absent_can_be_given_a_group(book: Store) -> None:
    """Who was away last night is there tomorrow; the empty group is gone."""
    to = card_of(morning(book, 1, 2), "K02")
    move(book, 1, 2, code="K05", key=to.key, now=NOW)
    after = morning(book, 1, 2)
    assert card_of(after, "K05").name == to.name
    assert all(card.takes for card in after.cards)


def test_a_finding_set_aside_is_marked_and_keeps_its_evidence(book: Store) -> None:
    """The pupil's group changes; what the answers showed stays to be looked at; it is taken up again."""
    before = morning(book, 1, 2)
    set_aside(book, 1, 2, code="K01", aside=True, now=NOW)
    after = morning(book, 1, 2)
    assert seat_of(after, "K01").aside
    assert card_of(after, "K01").about == "a talk first, one by one"
    assert after.talks["K01"] == before.talks["K01"]
    set_aside(book, 1, 2, code="K01", aside=False, now=NOW)
    assert morning(book, 1, 2) == before


@pytest.mark.more("writers/test_morning_page.py")
def test_one_file_holds_everything_that_tomorrow_is_printed(book: Store, tmp_path: Path) -> None:
    """The teacher's pages first, with names; then practice for every pupil of a group, without any."""
    name_pupils(book, 1, {"K01": "Ada Delta"}, {"K01": ""})
    made: dict[bool, list[str]] = {}
    for copies in (True, False):
        folder = tmp_path / f"{copies}"
        print_morning(book, 1, 2, folder=folder, when=NOW, progress=lambda *_: None, copies=copies)
        content = printed_page(folder, morning(book, 1, 2).stamp, "together").read_bytes()
        made[copies] = [plain(text) for text in pdf.words(content)]
        for file, called in printed_pages(folder, morning(book, 1, 2).stamp):
            alone = pdf.words(printed_page(folder, morning(book, 1, 2).stamp, file).read_bytes())
            assert any("Ada Delta" in text for text in alone) == (file in {"together", "morning", "talks"}), (
                called
            )
    for card in morning(book, 1, 2).cards:
        begins = f"{card.name}: "
        for copies, count in ((True, len(card.seats)), (False, 1)):
            assert sum(begins in text and "Date" in text for text in made[copies]) == count, card.name
    assert "This morning" in made[True][0]
    assert "Ada Delta" not in " ".join(text for text in made[True] if "Date" in text)


@pytest.mark.more("writers/test_morning_page.py")
def test_the_pages_are_printed_with_the_moves_in_them(book: Store, tmp_path: Path) -> None:
    """Each page is a PDF, the night is kept as regrouped, and older pages are put away."""
    folder = tmp_path / "made"
    told: list[tuple[int, int]] = []
    print_morning(book, 1, 2, folder=folder, when=NOW, progress=lambda *done: told.append(done))
    first = morning(book, 1, 2)
    names = [name for name, _ in printed_pages(folder, first.stamp)]
    assert names[:2] == ["together", "morning"]
    assert {f"practice-{card.name.casefold()}" for card in first.cards} <= set(names)
    assert printed_page(folder, first.stamp, "morning").read_bytes().startswith(b"%PDF")
    assert told[-1] == (len(names) - 1, len(names))
    assert NightStep.REGROUPED in steps_of(book, 1)[2]
    move(book, 1, 2, code="K01", key=card_of(first, "K02").key, now=NOW)
    print_morning(book, 1, 2, folder=folder, when=NOW, progress=lambda *_: None, every_pupil=True)
    second = morning(book, 1, 2)
    assert printed_pages(folder, first.stamp) == ()
    assert ("pupil-k01", "Practice for K01") in printed_pages(folder, second.stamp)
    with pytest.raises(NotThere):
        printed_page(folder, second.stamp, "../../room12")
