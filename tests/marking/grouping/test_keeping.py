"""What is kept is kept: nobody who sits is moved by answers, and what would change is offered."""

from onewhole.desk.tomorrow.seats import seated
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import KeptHere, MovedHere
from onewhole.marking.diagnosis.notebook import Sat, Stay
from onewhole.marking.grouping.identity import Known
from onewhole.marking.grouping.keeping import changes, kept, moved
from tests.kit.classes import read, sat, seating

BEFORE = {f"K{at:02}": sort for at, sort in enumerate(["A02"] * 6 + ["A01"] * 3 + ["A03"] * 2 + ["slips"], 1)}


def test_a_late_paper_moves_nobody_and_is_seated() -> None:
    """Of every sort: all others sit where they sat, and what the answers wish for is told."""
    for sort in ("A02", "A01", "A03", "A13", "right", "slips", "talk"):
        first = seating({**BEFORE, "K13": "blank"})
        sits = sat(first.groups)
        late = seating({**BEFORE, "K13": sort}, sits=sits)
        now = sat(late.groups)
        assert {code: now[code].id for code in BEFORE} == {code: sits[code].id for code in BEFORE}
        assert "K13" in now
        assert "K13" not in {one.pupil for one in late.changes}
        said = {code: seat.id for code, seat in sat(late.said).items()}
        assert {one.pupil: one.to.id for one in late.changes} == {
            code: said[code] for code in BEFORE if said[code] != sits[code].id
        }


def test_changed_answers_are_offered_with_their_reason() -> None:
    """Taken, the groups are those that the answers say; nothing is left to change."""
    first = seating(BEFORE)
    sits = sat(first.groups)
    again = seating({**BEFORE, "K01": "A01"}, sits=sits)
    assert [one.pupil for one in again.changes] == ["K01"]
    (change,) = again.changes
    assert (change.was.id, change.to.id) == (sits["K01"].id, sits["K07"].id)
    here = next(one for group in again.groups for one in group.placings if one.pupil == "K01")
    assert here.because == (KeptHere(change.to.name, change.because),)
    taken = seating({**BEFORE, "K01": "A01"}, sits=sat(again.said))
    assert (taken.groups, taken.changes) == (again.said, ())


def test_a_move_is_kept_when_the_group_is_about_something_else() -> None:
    """Its title changes from A02 to A03 with its pupils' answers, and the move stands."""
    first = seating(BEFORE)
    larks = next(group for group in first.groups if "K01" in group.pupils)
    put = {"K12": Sat(larks.name, larks.key, larks.id, Stay.TONIGHT)}
    others = {**BEFORE, **{f"K{at:02}": "A13" for at in range(1, 7)}}
    pupils, found = read(others)
    again = seated(pupils, found, sits=sat(first.groups), places=put)
    there = next(group for group in again.groups if "K12" in group.pupils)
    assert (there.id, there.name) == (larks.id, larks.name)
    assert there.ideas != larks.ideas
    assert there.key != larks.key or there.families != larks.families


def test_a_move_to_a_group_that_is_gone_makes_it_anew() -> None:
    """What the teacher said is never dropped, whatever became of the group."""
    groups = seating(BEFORE).groups
    put = {"K12": Sat("Owls", "numerator", "2026-11-01.9", Stay.TONIGHT)}
    there = next(group for group in moved(groups, put) if "K12" in group.pupils)
    assert (there.name, there.id, there.place) == ("Owls", "2026-11-01.9", GroupKind.FAMILY)
    assert isinstance(there.placings[0].because[0], MovedHere)


def test_a_place_of_an_earlier_release_is_found_by_its_words() -> None:
    """By name and what it is about, else by what it is about, else by name."""
    groups = seating(BEFORE).groups
    larks = next(group for group in groups if "K01" in group.pupils)
    for name, key in ((larks.name, larks.key), (larks.name, "long gone")):
        there = moved(groups, {"K12": Sat(name, key, "", Stay.TONIGHT)})
        assert "K12" in next(group for group in there if group.id == larks.id).pupils
    slips = moved(groups, {"K01": Sat("Owls", GroupKind.SLIPS.value, "", Stay.TONIGHT)})
    assert "K01" in next(group for group in slips if group.place is GroupKind.SLIPS).pupils


def test_who_was_put_somewhere_is_never_asked_about() -> None:
    """The teacher has answered that."""
    said = seating(BEFORE).groups
    larks = next(group for group in said if "K01" in group.pupils)
    put = {"K12": Sat(larks.name, larks.key, larks.id, Stay.ALWAYS)}
    stand = moved(kept(said, sat(said)), put)
    assert changes(stand, said) == ()
    assert changes(moved(said, {"K12": larks.seat}), said) != ()


def test_who_stays_until_let_go_stays_the_next_night() -> None:
    """And sits where the answers say once let go."""
    first = seating(BEFORE)
    larks = next(group for group in first.groups if "K01" in group.pupils)
    before = {**sat(first.groups), "K12": Sat(larks.name, larks.key, larks.id, Stay.ALWAYS)}
    known = _known(before)
    pupils, found = read(BEFORE)
    stays = seated(pupils, found, known=known)
    assert "K12" in next(group for group in stays.groups if group.id == larks.id).pupils
    free = seated(pupils, found, known=known, places={"K12": None})
    assert "K12" in next(group for group in free.groups if group.place is GroupKind.SLIPS).pupils


def _known(before: dict[str, Sat]) -> Known:
    return Known(before, tuple(before.values()), "2026-11-25")
