"""Classes, pupils, sheets, nights, corrections and settings are kept and read back as they are."""

from datetime import timedelta

import pytest

from onewhole.store.classes import (
    add_class,
    add_pupil,
    classes_with_pupils,
    name_pupil,
    pupils_of,
    rename_class,
)
from onewhole.store.correction_rows import (
    CellReadAs,
    FindingAside,
    GroupKey,
    PlaceChosen,
)
from onewhole.store.corrections import Correction, corrections_of, keep_correction
from onewhole.store.nights import add_night, nights_of
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere
from onewhole.store.settings import set_setting, setting
from onewhole.store.sheets import add_sheet, change_sheet, newest_sheets, versions_of
from tests.kit.kept import DAY, NOW, first_round


def test_a_pupil_has_a_code_and_a_name_only_if_typed(store: Store) -> None:
    """Codes count in each class by itself; a name is given, changed and taken away."""
    one, two = (add_class(store, name, NOW) for name in ("Room 12", "Room 13"))
    assert [add_pupil(store, n).code for n in (one.number, two.number, one.number)] == ["K01", "K01", "K02"]
    assert name_pupil(store, one.number, "K02", "Wren").name == "Wren"
    assert [(pupil.code, pupil.name) for pupil in pupils_of(store, one.number)] == [
        ("K01", None),
        ("K02", "Wren"),
    ]
    name_pupil(store, one.number, "K02", None)
    assert {pupil.name for pupil in pupils_of(store, one.number)} == {None}
    rename_class(store, two.number, "Room 14")
    assert [(room.name, room.made) for room, _ in classes_with_pupils(store)] == [
        ("Room 12", NOW),
        ("Room 14", NOW),
    ]


def test_every_version_of_a_sheet_stays(store: Store) -> None:
    """Text and recipe of each; the list shows the newest."""
    first = add_sheet(store, "Kites", "1. 5 1/8 - 2 5/8", NOW)
    other = add_sheet(store, "Strips", "1. 3/8 + 2/8", NOW, recipe="number = 1")
    later = change_sheet(store, first.number, "1. 6 1/8 - 2 5/8", NOW + timedelta(hours=1))
    assert versions_of(store, first.number) == (first, later)
    assert (first.version, later.version, later.name, other.recipe) == (1, 2, "Kites", "number = 1")
    assert newest_sheets(store) == (later, other)


def test_nights_come_by_day(store: Store) -> None:
    """Whatever order they were added in; a night keeps the version that went home."""
    kept = first_round(store)
    change_sheet(store, kept.sheet, "1. 9 - 2 5/8", NOW)
    early = add_night(store, kept.class_number, kept.sheet, 2, DAY - timedelta(days=1))
    found = nights_of(store, kept.class_number)
    assert [(one.number, one.version) for one in found] == [(early.number, 2), (kept.night, 1)]
    assert found[0] == early


def test_what_is_not_there_is_told(store: Store) -> None:
    """A class, a pupil, a sheet or a version that is not kept."""
    kept = first_round(store)
    acts = (
        lambda: rename_class(store, 99, "x"),
        lambda: add_pupil(store, 99),
        lambda: name_pupil(store, kept.class_number, "K77", "x"),
        lambda: versions_of(store, 99),
        lambda: change_sheet(store, 99, "x", NOW),
        lambda: add_night(store, 99, kept.sheet, 1, DAY),
        lambda: add_night(store, kept.class_number, kept.sheet, 2, DAY),
    )
    for act in acts:
        with pytest.raises(NotThere):
            act()
    assert len(nights_of(store, kept.class_number)) == 1


def test_corrections_are_kept_in_order(store: Store) -> None:
    """Of a reading, a finding and a place in a group, with who and when."""
    kept = first_round(store).night
    said = (
        Correction(kept, "K01", CellReadAs("1", None, "2 4/8"), NOW, "teacher"),
        Correction(kept, "K02", FindingAside(aside=True), NOW, "aide"),
        Correction(kept, "K01", CellReadAs("1", "2 4/", "2 4/9"), NOW, "teacher"),
        Correction(kept, "K01", PlaceChosen(GroupKey("Larks", "numerator")), NOW, "teacher"),
    )
    assert tuple(keep_correction(store, one) for one in said) == said == corrections_of(store, kept)


def test_a_setting_is_set_changed_and_forgotten(store: Store) -> None:
    """By name."""
    set_setting(store, "paper", "letter")
    set_setting(store, "paper", "a4")
    set_setting(store, "voice", "slow")
    assert (setting(store, "paper"), setting(store, "voice")) == ("a4", "slow")
    set_setting(store, "paper", None)
    assert (setting(store, "paper"), setting(store, "voice")) == (None, "slow")
