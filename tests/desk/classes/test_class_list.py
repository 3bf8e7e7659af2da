"""The list of a class: names typed, pasted, changed; what is refused and what is kept as it is."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from onewhole.desk.classes.class_list import MOST_PUPILS, enrol, name_pupils, names_typed, new_class, rename
from onewhole.desk.classes.class_records import NotThere, Store, open_book, room, rooms
from onewhole.errors import InputError

NOW = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)
#: Names that look like something else; each is a name and stays one.
ODD = (
    "<script>alert(1)</script>",
    '=HYPERLINK("x")',
    "\N{RIGHT-TO-LEFT OVERRIDE}eulb",
    "'; drop table",
    "&amp;",
    "-",
)


@pytest.fixture
def book(tmp_path: Path) -> Store:
    """A class of two pupils, the first with a name."""
    made = open_book(tmp_path / "room12.class")
    new_class(made, "Room 12", 2, ["Delta"], NOW)
    return made


def test_names_are_pasted_a_line_a_pupil() -> None:
    """Any line ends, empty lines left out, a tab between columns becomes a blank."""
    assert names_typed("Delta \r\n\r\n Box\tKite\rSled") == ("Delta", "Box Kite", "Sled")
    assert names_typed(" \n") == ()


@pytest.mark.parametrize("odd", ODD)
def test_odd_names_stay_as_they_are(book: Store, odd: str) -> None:
    """Kept and read back, sign by sign."""
    (pupil,) = enrol(book, 1, 0, names_typed(odd))
    assert room(book, 1).pupils[-1].name == odd == pupil.name


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("Delta\nSl\0ed", "cannot be seen"),
        ("x" * 10_000, "10000 characters"),
        ("\n\n\x1b[2J", "cannot be seen"),
    ],
)
def test_what_is_no_name_is_refused_with_its_line(typed: str, said: str) -> None:
    """NUL, a name of 10 kB, a terminal's own signs."""
    with pytest.raises(InputError, match=said) as refused:
        names_typed(typed)
    assert refused.value.line == typed.count("\n") + 1


def test_codes_always_and_names_only_where_typed(book: Store) -> None:
    """More pupils than names: the others have a code alone."""
    enrol(book, 1, 3, ["Sled"])
    assert [(one.code, one.name) for one in room(book, 1).pupils] == [
        ("K01", "Delta"), ("K02", None), ("K03", "Sled"), ("K04", None), ("K05", None)
    ]  # fmt: skip


def test_names_are_changed_all_or_none(book: Store) -> None:
    """One that cannot be is told with its code, and no other is changed; an empty one takes the name away."""
    with pytest.raises(InputError, match="Pupil K02"):
        name_pupils(book, 1, {"K01": "Moth", "K02": "x" * 81})
    assert room(book, 1).pupils[0].name == "Delta"
    assert name_pupils(book, 1, {"K01": " ", "K02": "Moth"}) == 2
    assert [one.name for one in room(book, 1).pupils] == [None, "Moth"]
    assert name_pupils(book, 1, {"K02": "Moth"}) == 0
    with pytest.raises(NotThere):
        name_pupils(book, 1, {"K09": "Moth"})


def test_a_class_has_its_bounds(book: Store) -> None:
    """Nobody added, too many, a class without a name: refused, and nothing changed."""
    for more, names in ((0, []), (MOST_PUPILS - 1, []), (0, ["x"] * 59)):
        with pytest.raises(InputError):
            enrol(book, 1, more, names)
    assert len(room(book, 1).pupils) == 2
    with pytest.raises(InputError):
        rename(book, 1, "  ")
    with pytest.raises(InputError):
        new_class(book, "Room\t7", 2, (), NOW)
    rename(book, 1, " Room 7 ")
    assert [one.name for one in rooms(book)] == ["Room 7"]
