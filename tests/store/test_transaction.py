"""Functions of the store in one transaction: they see one moment, and their changes are kept together."""

import pytest

from onewhole.errors import Fault
from onewhole.store.answers import KeptAnswer, answers_of
from onewhole.store.classes import add_class, add_pupil, classes_with_pupils, rename_class
from onewhole.store.keeping import clean, erase_pupil
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import NotThere, StoreRefused
from onewhole.store.settings import set_setting, setting
from tests.kit.kept import NOW, first_round, keep_answer


def _names(store: Store) -> list[str]:
    return [one.name for one, _ in classes_with_pupils(store)]


def test_changes_are_kept_together(store: Store) -> None:
    """Another window sees none of them before the end, and all of them after it."""
    other = open_store(store.path)
    with store.transaction() as one:
        number = add_class(one, "Room 14", NOW).number
        add_pupil(one, number, "Wren")
        assert _names(one) == ["Room 14"]
        assert (_names(store), _names(other)) == ([], [])
    assert [(made.name, pupils[0].name) for made, pupils in classes_with_pupils(other)] == [
        ("Room 14", "Wren")
    ]
    other.close()


@pytest.mark.asvs("V2.3.3")
def test_one_that_is_refused_takes_the_others_back(store: Store) -> None:
    """Nothing of a transaction is kept when something in it is raised."""

    def two() -> None:
        with store.transaction() as one:
            add_class(one, "Room 14", NOW)
            rename_class(one, 99, "Room 15")

    with pytest.raises(NotThere):
        two()
    assert _names(store) == []


def test_a_transaction_within_one_is_the_same(store: Store) -> None:
    """What an inner block kept goes with the outer one."""

    def nested() -> None:
        with store.transaction() as outer:
            with outer.transaction() as inner:
                add_class(inner, "Room 14", NOW)
            with outer.snapshot() as seen:
                assert _names(seen) == ["Room 14"]
            raise NotThere("There is nobody", remedy="Look again.")

    with pytest.raises(NotThere):
        nested()
    assert _names(store) == []


def test_a_snapshot_sees_one_moment(store: Store) -> None:
    """Neither what another window writes meanwhile, nor what is written beside it in the block."""
    kept = first_round(store)
    other = open_store(store.path)
    with store.snapshot() as seen:
        assert answers_of(seen, kept.night) == ()
        keep_answer(other, KeptAnswer(kept.night, "K01", "1", "4 7/8", NOW, "t"))
        set_setting(seen, "beside", "yes")
        assert (answers_of(seen, kept.night), setting(seen, "beside")) == ((), None)
        assert setting(other, "beside") == "yes"
    assert [one.text for one in answers_of(store, kept.night)] == ["4 7/8"]
    other.close()


def test_what_is_not_used_is_not_begun(store: Store) -> None:
    """Two transactions that nobody writes in stand beside each other; a second writer would wait for ever."""
    with store.transaction(), store.transaction() as second:
        set_setting(second, "kite", "red")
    assert setting(store, "kite") == "red"


def test_a_transaction_that_sqlite_ended_by_itself_is_not_told_as_kept(store: Store) -> None:
    """A full disk can end it (sqlite.org/lang_transaction.html): a commit would then do and say nothing."""

    def ended() -> None:
        with store.transaction() as one:
            set_setting(one, "kite", "red")
            one.connection().exec_driver_sql("ROLLBACK")

    with pytest.raises(StoreRefused, match="Nothing could be kept"):
        ended()
    assert setting(store, "kite") is None


def test_nobody_is_erased_within_a_transaction(store: Store) -> None:
    """The file is written anew for it, which no transaction can hold: a fault of the caller."""
    kept = first_round(store)
    with pytest.raises(Fault), store.transaction() as one:
        erase_pupil(one, kept.class_number, "K01")
    with pytest.raises(Fault), store.snapshot() as one:
        clean(one)
    assert "K01" in [pupil.code for _, pupils in classes_with_pupils(store) for pupil in pupils]


def test_a_store_alone_has_no_connection_of_its_own(store: Store) -> None:
    """Reading and writing give one."""
    with pytest.raises(Fault):
        store.connection()
