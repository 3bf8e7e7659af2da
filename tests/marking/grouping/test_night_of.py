"""What a night leaves in the notebook."""

from datetime import date

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.marking.diagnosis.notebook import KeptFinding, NotebookNight, Sat, Stay
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.night_of import night_of
from onewhole.marking.grouping.placement import Placement
from tests.kit.answers import all_right, by_pattern
from tests.kit.odds import PAGE, finding_of

FIRST = date(2026, 11, 10)


def test_a_night_leaves_counts_seats_and_likely_findings() -> None:
    """Nothing of what is only possible is kept."""
    likely, none = finding_of(by_pattern("A01", PAGE)), finding_of(all_right(PAGE))
    group = Group(
        "Swifts",
        GroupKind.FAMILY,
        (Placement("K01", GroupKind.FAMILY, (), stays=Stay.ALWAYS),),
        "numerator",
        "7",
    )
    left = {"K01": PupilNight({"A01": 990_000}, {"A01": 2})}
    night = night_of(FIRST, "Kites", {"A01": 990}, [likely, none], [group], pupils=left)
    assert night == NotebookNight(
        FIRST,
        "Kites",
        {"A01": 990},
        {"K01": Sat("Swifts", "numerator", "7", Stay.ALWAYS)},
        (KeptFinding("K01", ("A01",)),),
        left,
    )
