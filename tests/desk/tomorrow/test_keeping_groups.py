"""Groups that a teacher saw are kept in the class's file: late papers move nobody, changes are offered."""

from datetime import timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import Store, open_book, set_night, start_room
from onewhole.desk.classes.group_settings import groups_of, set_groups, settings_text
from onewhole.desk.classes.marked_nights import mark_night, marked_night, night_summaries
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.tomorrow.keeping_groups import keep_groups, kept_as_shown, take_changes
from onewhole.desk.tomorrow.morning import Morning, shown
from onewhole.desk.tomorrow.moving import NEW, merge, move
from onewhole.errors import InputError
from onewhole.marking.grouping.group_settings import USUAL
from onewhole.store.answers import KeptAnswer, keep_answers
from tests.kit.club import DAY, NOW

#: Room for ideas: all three need a whole to be opened.
TYPED = "title: Kite tails {}\n\n1. 9 5/8 - 4 6/8\n2. 8 1/6 - 3 5/6\n3. 6 1/4 - 3 2/4\n"
WRITES = {
    "A01": ("5 1/8", "5 4/6", "3 1/4"),
    "A02": ("5 7/8", "5 2/6", "3 3/4"),
    "right": ("4 7/8", "4 2/6", "2 3/4"),
}
CLASS = {f"K{at:02}": sort for at, sort in enumerate(["A01"] * 4 + ["A02"] * 4 + ["right"] * 2, start=1)}


@pytest.fixture
def book(tmp_path: Path) -> Store:
    """A class of twelve, one night; K11 and K12 hand in nothing yet."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 12, NOW)
    _night(made, 0)
    return made


def _night(book: Store, at: int, class_: dict[str, str] = CLASS) -> int:
    page = set_night(book, 1, TYPED.format(at), DAY + timedelta(days=at), NOW)
    for code, sort in class_.items():
        _write(book, page.night.number, code, sort)
    return page.night.number


def _write(book: Store, night: int, code: str, sort: str) -> None:
    rows = [
        KeptAnswer(night, code, label, text, NOW, "teacher")
        for label, text in zip("123", WRITES[sort], strict=True)
    ]
    keep_answers(book, rows)


def _seen(book: Store, night: int = 1) -> Morning:
    return shown(kept_as_shown(book, 1, night, NOW))


def _seats(found: Morning) -> dict[str, str]:
    return {seat.code: card.name for card in found.cards for seat in card.seats if card.takes}


def test_a_late_paper_moves_nobody_unless_it_is_taken(book: Store) -> None:
    """Two papers come late and one is corrected: all others sit where they sat, and the change is listed."""
    first = _seats(_seen(book))
    _write(book, 1, "K11", "A01")
    _write(book, 1, "K12", "A02")
    _write(book, 1, "K01", "A02")
    late = _seen(book)
    assert {code: name for code, name in _seats(late).items() if code in CLASS} == first
    assert {"K11", "K12"} <= set(_seats(late))
    (change,) = late.changes
    assert (change.code, change.was, change.to) == ("K01", first["K01"], first["K05"])
    assert change.because == "Answers to 1, 2 and 3 fit “opens a whole and still counts it”."
    (seat,) = (seat for card in late.cards for seat in card.seats if seat.code == "K01")
    assert seat.because.startswith(
        f"Kept here; the answers now say {first['K05']}: answers to 1, 2 and 3 fit"
    )
    assert take_changes(book, 1, 1, saw=late.offer, now=NOW) == 1
    taken = _seen(book)
    assert (_seats(taken)["K01"], taken.changes) == (first["K05"], ())


def test_groups_that_are_kept_are_not_asked_about_again(book: Store) -> None:
    """By the teacher's own word, which is undone like any move."""
    first = _seats(_seen(book))
    _write(book, 1, "K01", "A02")
    assert keep_groups(book, 1, 1, saw=_seen(book).offer, now=NOW) == 1
    after = _seen(book)
    assert (_seats(after), after.changes) == (first, ())
    move(book, 1, 1, code="K01", key="", now=NOW)
    freed = _seen(book)
    assert (_seats(freed)["K01"], freed.changes) == (first["K05"], ())
    _write(book, 1, "K01", "A01")
    assert _seats(_seen(book)) == _seats(freed), "let go, and kept again where the answers said"


def test_an_offer_is_taken_only_as_it_was_shown(book: Store) -> None:
    """Other changes are asked for by now: nothing is moved."""
    _seen(book)
    _write(book, 1, "K01", "A02")
    offer = _seen(book).offer
    _write(book, 1, "K02", "A02")
    before = _seats(_seen(book))
    for act in (take_changes, keep_groups):
        with pytest.raises(InputError, match="Other changes"):
            act(book, 1, 1, saw=offer, now=NOW)
    assert _seats(_seen(book)) == before


def test_what_nobody_saw_is_not_kept(book: Store) -> None:
    """A night that was only reckoned, and an earlier one: their groups follow the answers."""
    before = {code for code in CLASS if CLASS[code] == "A01"}
    assert {c for g in mark_night(book, 1, 1).groups if "K01" in g.pupils for c in g.pupils} == before
    _write(book, 1, "K01", "A02")
    assert mark_night(book, 1, 1).seating.changes == ()
    _night(book, 1)
    _seen(book, 1)
    assert marked_night(book, 1, 1).overrides.sits == {}


def test_looking_leaves_nothing_to_be_marked_again(book: Store) -> None:
    """What is kept changes nothing that is shown, so the night's summary stays good."""
    _night(book, 1)
    _seen(book, 2)
    assert night_summaries(book, 1).missing == ()
    assert set(marked_night(book, 1, 2).overrides.sits) == set(CLASS)


def test_a_group_is_the_same_the_next_night(book: Store) -> None:
    """Name and identity; and a new idea's group has a name that was never given."""
    first = {group.id: group for group in marked_night(book, 1, 1).marked.groups}
    others = CLASS | {f"K{at:02}": "right" for at in range(1, 5)} | {"K09": "A01", "K10": "A01", "K11": "A01"}
    second = marked_night(book, 1, _night(book, 1, others)).marked.groups
    old = next(group for group in second if "K05" in group.pupils)
    assert first[old.id].name == old.name
    assert first[old.id].pupils == old.pupils
    new = next(group for group in second if "K09" in group.pupils)
    assert new.id not in first
    assert new.name not in {group.name for group in first.values()}


def test_who_stays_is_there_on_later_nights_until_let_go(book: Store) -> None:
    """Whatever the answers say; the page marks the seat."""
    home = next(card for card in _seen(book).cards if "K05" in {seat.code for seat in card.seats})
    move(book, 1, 1, code="K01", key=home.key, now=NOW, stays=True)
    night = _night(book, 1)
    found = _seen(book, night)
    assert _seats(found)["K01"] == home.name
    (seat,) = (seat for card in found.cards for seat in card.seats if seat.code == "K01")
    assert (seat.stays, seat.moved) == (True, True)
    assert move(book, 1, night, code="K01", key="", now=NOW).group == _seats(found)["K02"]
    assert _seats(_seen(book, night))["K01"] == _seats(found)["K02"]
    last = _seen(book, _night(book, 2))
    assert _seats(last)["K01"] == _seats(last)["K02"] != home.name


def test_two_groups_are_put_together(book: Store) -> None:
    """All pupils of one sit in the other, which says who has which idea."""
    found = _seen(book)
    cards = {seat.code: card for card in found.cards for seat in card.seats}
    assert merge(book, 1, 1, key=cards["K01"].key, into=cards["K05"].key, now=NOW) == (
        "K01",
        "K02",
        "K03",
        "K04",
    )
    (card,) = (card for card in _seen(book).cards if card.meets)
    assert (card.name, len(card.seats)) == (cards["K05"].name, 8)
    assert [one.codes for one in card.ideas] == [("K01", "K02", "K03", "K04"), ("K05", "K06", "K07", "K08")]
    with pytest.raises(InputError, match="into itself"):
        merge(book, 1, 1, key=card.key, into=card.key, now=NOW)


def test_a_new_group_is_begun_by_moving_somebody_there(book: Store) -> None:
    """It has a name of its own; others can follow."""
    before = _seats(_seen(book))
    begun = move(book, 1, 1, code="K01", key=NEW, now=NOW)
    assert begun.group not in before.values()
    card = next(card for card in _seen(book).cards if card.name == begun.group)
    move(book, 1, 1, code="K05", key=card.key, now=NOW)
    now = _seats(_seen(book))
    assert {code for code, name in now.items() if name == begun.group} == {"K01", "K05"}


def test_the_settings_of_groups_are_kept_and_offered_as_changes(book: Store) -> None:
    """Two pupils a group: what stands is kept, and what would change is listed."""
    first = _seats(_seen(book))
    set_groups(book, 1, 6, (1, 2), saw="4 groups of 3 to 6")
    found = _seen(book)
    assert (_seats(found), found.settings_told) == (first, "6 groups of 1 to 2")
    assert {one.code for one in found.changes} >= {"K03", "K04"}
    take_changes(book, 1, 1, saw=found.offer, now=NOW)
    assert max(len(card.seats) for card in _seen(book).cards if card.meets) == 2
    with pytest.raises(ChangedMeanwhile, match="6 groups of 1 to 2"):
        set_groups(book, 1, 3, (3, 6), saw="4 groups of 3 to 6")
    with pytest.raises(InputError, match="cannot be"):
        set_groups(book, 1, 3, (6, 3))
    assert settings_text(groups_of(book, 2)) == settings_text(USUAL)
