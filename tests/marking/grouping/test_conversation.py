"""What pupils may talk about together, and how far each is from needing it."""

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.grouping.conversation import Conversation, conversations, cost, may_need
from onewhole.marking.grouping.placement import Placement, placement
from onewhole.misconceptions.pattern import Family
from tests.kit.answers import all_right, by_pattern, marked_against
from tests.kit.odds import PAGE, finding_of, known

TALK, SLIPS = Conversation(GroupKind.INTERVIEW), Conversation(GroupKind.SLIPS)
REGROUPING = Conversation(GroupKind.FAMILY, (Family.REGROUPING,))
NUMERATOR = Conversation(GroupKind.FAMILY, (Family.NUMERATOR,))
BOTH = Conversation(GroupKind.FAMILY, (Family.REGROUPING, Family.NUMERATOR))


def _placed(cells: list[str]) -> tuple[Placement, Finding]:
    found = finding_of(cells)
    [pupil] = marked_against(known()[0], {"K01": cells}).pupils
    return placement(pupil, found), found


LIKELY = _placed(by_pattern("A02", PAGE))
SLIP = _placed(["3 4/6", *all_right(PAGE)[1:]])
OPEN = _placed(["9 1/7", *all_right(PAGE)[1:]])
#: One answer of A01, one as much as A01's in another form, the rest blank: likelier than not, and no more.
HALF = _placed([*all_right(PAGE)[:2], by_pattern("A01", PAGE)[2], "", "35/8", *[""] * 7])


def test_a_likely_pattern_needs_its_family() -> None:
    """Little is missing there, alone or beside another family; much elsewhere; slips and talks cannot be."""
    costs = [cost(*LIKELY, talk) for talk in (REGROUPING, BOTH, NUMERATOR, TALK, SLIPS)]
    assert costs[0] == costs[1] == 1
    assert costs[2] is not None
    assert costs[2] > 90
    assert costs[3:] == [None, None]


def test_slips_sit_by_themselves() -> None:
    """At no cost, and nowhere else."""
    assert [cost(*SLIP, talk) for talk in (SLIPS, TALK, REGROUPING)] == [0, None, None]
    assert may_need(*SLIP) == ()


def test_who_has_no_pattern_talks() -> None:
    """At next to no cost; no family can be."""
    assert cost(*OPEN, REGROUPING) is None
    assert cost(*OPEN, SLIPS) is None
    assert cost(*OPEN, TALK) in range(5)


def test_who_is_likelier_than_not_to_need_a_family_may_sit_there() -> None:
    """A pattern that is not likely yet, and has more than half of the odds, counts by its odds."""
    placed, found = HALF
    assert placed.place is GroupKind.INTERVIEW
    assert Family.NUMERATOR in may_need(placed, found)
    here, talk = cost(placed, found, NUMERATOR), cost(placed, found, TALK)
    assert here is not None
    assert talk is not None
    assert here < 50 < talk
    assert cost(placed, found, REGROUPING) is None


def test_conversations_are_those_that_somebody_may_need() -> None:
    """Families alone and two by two, then the places; nothing for nobody."""
    placings = [LIKELY[0], Placement("K02", GroupKind.SLIPS, ()), Placement("K03", GroupKind.INTERVIEW, ())]
    findings = {"K01": LIKELY[1], "K02": SLIP[1], "K03": HALF[1]}
    assert conversations(placings, findings) == (REGROUPING, NUMERATOR, BOTH, SLIPS, TALK)
    assert conversations([], {}) == ()


def test_a_conversation_is_kept_by_its_words() -> None:
    """Families by their names, places by theirs."""
    assert [talk.key for talk in (BOTH, SLIPS)] == ["regrouping + numerator", "slips only"]
