"""Groups as they are kept in a notebook and changed by what is typed at the terminal."""

from collections.abc import Mapping
from datetime import date
from pathlib import Path

import pytest

from onewhole.desk.classes import notebooks
from onewhole.desk.marking.mark import Marked, mark
from onewhole.desk.tomorrow.group_wishes import NO_WISHES, GroupWishes, with_wishes
from onewhole.errors import InputError
from onewhole.findings.placing import MovedHere

ON = date(2026, 11, 24)
SHEET = "title: Kites\n\n1. 9 5/8 - 4 6/8\n2. 8 1/6 - 3 5/6\n3. 6 1/4 - 3 2/4\n"
WRITES = {
    "A01": "5 1/8,5 4/6,3 1/4",
    "A02": "5 7/8,5 2/6,3 3/4",
    "right": "4 7/8,4 2/6,2 3/4",
    "blank": ",,",
}
CLASS = {f"K{at:02}": sort for at, sort in enumerate(["A01"] * 4 + ["A02"] * 4 + ["right"] * 2, start=1)}


def _night(
    notebook: Path, class_: Mapping[str, str] = CLASS, wishes: GroupWishes = NO_WISHES, on: date = ON
) -> Marked:
    """One run of `plan --notebook`: read, marked, wished, kept."""
    answers = "\n".join(["pupil,1,2,3", *(f"{code},{WRITES[sort]}" for code, sort in class_.items())])
    found = with_wishes(mark(SHEET, answers, tonight=notebooks.tonight_in(notebook, on)), wishes)
    notebooks.keep(found, notebook)
    return found


def _seats(found: Marked) -> dict[str, str]:
    return {code: group.name for group in found.groups for code in group.pupils}


def test_a_late_paper_moves_nobody_unless_it_is_taken(tmp_path: Path) -> None:
    """The same night again, with a paper more and one corrected; the groups stand until `take`."""
    notebook = tmp_path / "class.json"
    first = _seats(_night(notebook, CLASS | {"K11": "blank"}))
    late = CLASS | {"K11": "A01", "K01": "A02"}
    found = _night(notebook, late)
    assert {code: name for code, name in _seats(found).items() if code != "K11"} == {
        code: name for code, name in first.items() if code != "K11"
    }
    assert [(one.pupil, one.to.name) for one in found.seating.changes] == [("K01", first["K05"])]
    assert _night(notebook, late).seating.changes == found.seating.changes
    taken = _night(notebook, late, GroupWishes(take=True))
    assert (_seats(taken)["K01"], taken.seating.changes) == (first["K05"], ())
    assert _seats(_night(notebook, late)) == _seats(taken)


def test_a_move_is_kept_when_the_group_is_about_something_else(tmp_path: Path) -> None:
    """The group's pupils now follow another idea, and its title is another one."""
    notebook = tmp_path / "class.json"
    first = _night(notebook)
    home = _seats(first)["K01"]
    _night(notebook, wishes=GroupWishes(moves=(f"K09={home.lower()}",)))
    other = CLASS | {f"K{at:02}": "right" for at in range(1, 5)} | {"K01": "A02"}
    again = _night(notebook, other)
    assert _seats(again)["K09"] == home
    group = next(group for group in again.groups if group.name == home)
    (why,) = next(one.because for one in group.placings if one.pupil == "K09")
    assert isinstance(why, MovedHere)
    assert {held.idea for held in group.ideas} != {"A01"}


def test_who_stays_is_there_the_next_night_until_let_go(tmp_path: Path) -> None:
    """A move is for the night, and a stay for all that come."""
    notebook = tmp_path / "class.json"
    home = _seats(_night(notebook))["K01"]
    _night(notebook, wishes=GroupWishes(moves=(f"K09={home}",), stays=(f"K10={home}",)))
    second = _night(notebook, on=date(2026, 11, 25))
    assert (_seats(second)["K10"], _seats(second)["K09"] != home) == (home, True)
    free = _night(notebook, wishes=GroupWishes(let_go=("K10",)), on=date(2026, 11, 25))
    assert (_seats(free)["K10"], free.seating.changes) == (_seats(free)["K09"], ())
    assert _seats(_night(notebook, on=date(2026, 11, 25))) == _seats(free)


def test_groups_are_put_together_and_begun(tmp_path: Path) -> None:
    """All of one sit in the other; a new one has a name that no group has."""
    notebook = tmp_path / "class.json"
    before = _seats(_night(notebook))
    one, other = before["K01"], before["K05"]
    found = _night(notebook, wishes=GroupWishes(merges=(f"{one} = {other}",), begins=("K09, K01",)))
    now = _seats(found)
    assert {now[f"K{at:02}"] for at in range(2, 9)} == {other}
    assert now["K09"] == now["K01"] not in {"", *before.values()}
    assert _seats(_night(notebook)) == now


def test_without_a_notebook_what_is_typed_is_done_once() -> None:
    """The groups of the answers, with the move in them."""
    answers = "\n".join(["pupil,1,2,3", *(f"{code},{WRITES[sort]}" for code, sort in CLASS.items())])
    found = mark(SHEET, answers)
    assert with_wishes(found, NO_WISHES) is found
    moved = with_wishes(found, GroupWishes(moves=("K09=Swifts",)))
    assert _seats(moved)["K09"] == "Swifts"
    assert moved.seating.changes == ()


@pytest.mark.parametrize(
    ("wishes", "message"),
    [
        (GroupWishes(moves=("K01",)), "“--move K01” does not say who goes where"),
        (GroupWishes(moves=("K01=Owls",)), "no group is called “Owls”"),
        (GroupWishes(stays=("K77=Swifts",)), "no pupil is called “K77”"),
        (GroupWishes(let_go=("K77",)), "no pupil is called “K77”"),
        (GroupWishes(merges=("=Swifts",)), "“--merge =Swifts” does not say who goes where"),
        (GroupWishes(begins=("K01,,K02",)), "no pupil is called “”"),
    ],
)
def test_what_is_not_there_is_refused(tmp_path: Path, wishes: GroupWishes, message: str) -> None:
    """With what is there instead; the notebook stays as it was."""
    notebook = tmp_path / "class.json"
    _night(notebook)
    before = notebook.read_text()
    with pytest.raises(InputError, match=message):
        _night(notebook, wishes=wishes)
    assert notebook.read_text() == before
