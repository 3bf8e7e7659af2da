"""Add wholes and fractions apart, then regroup a full whole.

Source: 4.NF.B.3.c (properties of operations), CCSSM (2010).
"""

from onewhole.working.pair_state import PairState
from onewhole.working.reasons.unsuited import Unsuited
from onewhole.working.strategies.moves import unit_by_unit, usual_form
from onewhole.working.strategy import Act, Step, Strategy


def _always(_: PairState) -> Unsuited | None:
    return None


UNITS_APART = Strategy(
    key="units_apart",
    name="Wholes and fractions apart, then regroup",
    act=Act.ADD,
    partner="regroup_first",
    steps=(Step("unit_by_unit", unit_by_unit), Step("usual_form", usual_form)),
    unsuited=_always,
)
