"""From a sheet to what is worked aloud."""

import pytest

from onewhole.desk.walkthrough.film_options import kind_named
from onewhole.desk.walkthrough.lesson import lesson, refused
from onewhole.errors import InputError
from onewhole.pictures.picture import PictureKind
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet

SHEET = read_sheet("1. 7 2/6 - 3 5/6\n2. 1 11/100 - 45/100\n3. 1 + 2 ? 4\n")


def test_each_problem_gets_the_picture_that_suits() -> None:
    """Sixths are strips, hundredths the grid; what is not worked line by line has none."""
    kinds = [item.picture.kind if item.picture else None for item in lesson(WorkedSheet(SHEET)).items]
    assert kinds == [PictureKind.STRIPS, PictureKind.GRID, None]


def test_a_picture_that_cannot_be_drawn_is_refused_with_another() -> None:
    """Strips of hundredths are refused with a reason, the grid is offered, and the film is still drawn."""
    (note,) = refused(WorkedSheet(SHEET), PictureKind.STRIPS)
    assert note.startswith("Problem 2: ")
    assert "grid" in note
    second = lesson(WorkedSheet(SHEET), kind=PictureKind.STRIPS).items[1]
    assert second.picture is not None
    assert second.picture.kind is PictureKind.GRID


def test_a_wish_is_met_where_it_can_be() -> None:
    """Discs where discs are asked for."""
    first = lesson(WorkedSheet(SHEET), kind=PictureKind.DISCS).items[0]
    assert first.picture is not None
    assert first.picture.kind is PictureKind.DISCS


def test_one_likely_mistake() -> None:
    """It is shown in the first problem that is regrouped, and nowhere else."""
    shown = [item.mistake is not None for item in lesson(WorkedSheet(SHEET), mistake=True).items]
    assert shown == [True, False, False]
    assert not any(item.mistake for item in lesson(WorkedSheet(SHEET)).items)


def test_problems_to_try_first() -> None:
    """Only those that are named; a name that no problem has is refused with the names there are."""
    assert [item.try_first for item in lesson(WorkedSheet(SHEET), tried=["3"]).items] == [False, False, True]
    with pytest.raises(InputError, match="no problem 9") as no:
        lesson(WorkedSheet(SHEET), tried=["9"])
    assert no.value.remedy == "The sheet has 1, 2, 3."


def test_answers_left_to_the_family() -> None:
    """Only of the problems that are named."""
    assert [item.your_turn for item in lesson(WorkedSheet(SHEET), turns=["2"]).items] == [False, True, False]
    with pytest.raises(InputError, match="no problem 9 to stop before its answer"):
        lesson(WorkedSheet(SHEET), turns=["9"])


def test_a_picture_by_its_name() -> None:
    """The names are the teacher's; another is refused with the list."""
    assert kind_named("number line") is PictureKind.LINE
    with pytest.raises(InputError) as no:
        kind_named("circles")
    assert "discs" in (no.value.remedy or "")
