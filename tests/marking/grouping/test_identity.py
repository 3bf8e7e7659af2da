"""Groups last from night to night, and a name has one group."""

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.identity import NAMES, NOBODY, Known, identified, newborn
from onewhole.marking.grouping.placement import Placement
from onewhole.misconceptions.catalogue import by_id, patterns
from tests.kit.classes import sat, seating


def _part(place: GroupKind, idea: str, *pupils: str) -> Group:
    families = (by_id(idea).family,) if idea else ()
    placings = tuple(Placement(pupil, place, (), families, idea) for pupil in pupils)
    return Group("", place, placings, families[0].value if families else place.value)


def _next(sorts: dict[str, str], known: Known) -> dict[str, tuple[str, str]]:
    groups = seating(sorts, known_before=known).groups
    return {code: (group.id, group.name) for group in groups for code in group.pupils}


def test_a_group_is_the_same_the_next_night() -> None:
    """Everyone keeps group and name, with other names too, and where the idea is another one."""
    class_ = {f"K{at:02}": idea for at, idea in enumerate(["A02"] * 4 + ["A01"] * 3 + ["talk"] * 2)}
    first = seating(class_).groups
    known = Known(sat(first), tuple(group.seat for group in first), "2026-11-25")
    assert _next(class_, known) == {code: (seat.id, seat.name) for code, seat in sat(first).items()}
    others = {code: "A03" if idea == "A02" else idea for code, idea in class_.items()}
    assert _next(others, known) == _next(class_, known)


def test_what_is_new_gets_a_name_that_no_group_ever_had() -> None:
    """The Larks of old are not there tonight; their name is not given to others."""
    old = Sat("Swifts", "numerator", "2026-11-20.1")
    gone = Sat("Larks", "regrouping", "2026-11-20.2")
    known = Known({"K01": old, "K02": old, "K09": old}, (old, gone), "2026-11-25")
    parts = (_part(GroupKind.FAMILY, "A01", "K01", "K02", "K03"), _part(GroupKind.FAMILY, "A02", "K07"))
    one, other = identified(parts, known)
    assert (one.id, one.name) == (old.id, "Swifts")
    assert (other.id, other.name) == ("2026-11-25.1", "Herons")


def test_a_group_of_pupils_who_go_further_is_no_group_that_is_met() -> None:
    """The whole group had all right tonight: they are another group, and the Swifts' name rests."""
    old = Sat("Swifts", "numerator", "2026-11-20.1")
    known = Known({"K01": old, "K02": old}, (old,), "2026-11-25")
    (further,) = identified((_part(GroupKind.EXTENSION, "", "K01", "K02"),), known)
    assert (further.id, further.name) == ("2026-11-25.1", "Larks")


def test_slips_and_talks_are_the_same_whoever_is_in_them() -> None:
    """They change every night, and use up no names."""
    old = Sat("Terns", GroupKind.SLIPS.value, "2026-11-20.3")
    known = Known({}, (old,), "2026-11-25")
    (slips,) = identified((_part(GroupKind.SLIPS, "", "K08"),), known)
    assert (slips.id, slips.name) == (old.id, "Terns")


def test_a_notebook_of_an_earlier_release_has_names_and_no_identities() -> None:
    """The name goes on, and gets an identity."""
    known = Known({"K01": Sat("Kestrels", "numerator"), "K02": Sat("Kestrels", "numerator")})
    (one,) = identified((_part(GroupKind.FAMILY, "A01", "K01", "K02"),), known)
    assert (one.id, one.name) == ("1", "Kestrels")


def test_names_are_neutral_and_apart() -> None:
    """No name of a pattern, no colour, no rank; names run on when they are used up."""
    parts = tuple(_part(GroupKind.FAMILY, "A01", f"K{at:03}") for at in range(len(NAMES) + 2))
    made = identified(parts, NOBODY)
    assert [one.name for one in made] == [*NAMES, f"{NAMES[0]} 2", f"{NAMES[1]} 2"]
    assert len({one.id for one in made}) == len(made)
    for pattern in patterns():
        assert not set(NAMES) & set(pattern.name.title().split())


def test_one_more_group_is_told_apart_from_all_others() -> None:
    """Those of tonight and those of every other night."""
    known = Known({}, (Sat("Larks", "numerator", "2026-11-25.2"),), "2026-11-25")
    (there,) = identified((_part(GroupKind.FAMILY, "A01", "K01"),), known)
    born = newborn((there,), known)
    assert (there.id, there.name) == ("2026-11-25.1", "Swifts")
    assert (born.id, born.name) == ("2026-11-25.3", "Herons")
