"""Regroup one whole first: open a larger unit where a smaller one is lacking, then take unit by unit.

The steps use rungs and ratios only, so that one strategy works 52 - 27, 7 2/6 - 3 5/6, 5 ft 2 in - 2 ft 7 in
and 5.2 - 2.7.

Source: the algorithm by place value of 4.NBT.B.4, carried to mixed numbers (4.NF.B.3.c); CCSSM (2010).
"""

from onewhole.working.pair_state import PairState
from onewhole.working.reasons.unsuited import Unsuited
from onewhole.working.strategies.moves import enough_of_each, unit_by_unit, usual_form
from onewhole.working.strategy import Act, Step, Strategy


def _always(_: PairState) -> Unsuited | None:
    return None


REGROUP_FIRST = Strategy(
    key="regroup_first",
    name="Regroup one whole first",
    act=Act.SUBTRACT,
    partner="units_apart",
    steps=(
        Step("regroup", enough_of_each),
        Step("unit_by_unit", unit_by_unit),
        Step("usual_form", usual_form),
    ),
    unsuited=_always,
)
