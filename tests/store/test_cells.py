"""Cells changed together: each only where it still says what its writer saw, all in one transaction."""

from concurrent.futures import ThreadPoolExecutor

import pytest

from onewhole.store.answers import answers_of, history_of
from onewhole.store.cells import Change, change_answers
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere
from tests.kit.kept import NOW, first_round


def test_what_stands_is_told_for_every_cell(store: Store) -> None:
    """A cell that says something else than was seen keeps it; None overwrites; the same is not rewritten."""
    night = first_round(store).night
    assert change_answers(store, night, [Change("K01", "1", "a", "")], NOW, "t") == ("a",)
    changes = [
        Change("K01", "1", "b", ""),
        Change("K01", "1", "a", "x"),
        Change("K01", "1", "c", "a"),
        Change("K02", "1", "d"),
        Change("K02", "2", "", ""),
    ]
    assert change_answers(store, night, changes, NOW, "t") == ("a", "a", "c", "d", "")
    assert [one.text for one in history_of(store, night, "K01", "1")] == ["a", "c"]
    assert [(one.code, one.text) for one in answers_of(store, night)] == [("K01", "c"), ("K02", "d")]


def test_one_wrong_code_keeps_nothing(store: Store) -> None:
    """All or none, also for a night that is not there."""
    night = first_round(store).night
    with pytest.raises(NotThere):
        change_answers(store, night, [Change("K01", "1", "a"), Change("K09", "1", "b")], NOW, "t")
    with pytest.raises(NotThere):
        change_answers(store, night + 1, [Change("K01", "1", "a")], NOW, "t")
    assert answers_of(store, night) == ()


@pytest.mark.asvs("V2.3.4")
def test_of_two_writers_who_saw_the_same_one_is_told(store: Store) -> None:
    """Forty at once on one cell: one is kept, every other is told which."""
    night = first_round(store).night

    def write(text: str) -> bool:
        return change_answers(store, night, [Change("K01", "1", text, "")], NOW, "t") == (text,)

    with ThreadPoolExecutor(8) as threads:
        kept = list(threads.map(write, map(str, range(40))))
    assert kept.count(True) == 1
    assert [one.text for one in answers_of(store, night)] == [str(kept.index(True))]
