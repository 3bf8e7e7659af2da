"""Seat a class: who works with whom tomorrow, the best choice there is."""

from collections.abc import Mapping, Sequence

from onewhole.errors import Fault
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.group import Group, groups
from onewhole.marking.grouping.group_program import MEETS, SIZES, Sizes, group_program, placed
from onewhole.marking.reading.mark import PupilMarks
from onewhole.presses.solver import solve


def seats(
    pupils: Sequence[PupilMarks],
    findings: Sequence[Finding],
    *,
    meets: int = MEETS,
    sizes: Sizes = SIZES,
    before: Mapping[str, Sat] | None = None,
) -> tuple[Group, ...]:
    """Return tomorrow's groups, solved to the proven best.

    ``before`` says where pupils sat on the last night. Raises InputError when ``meets`` is below 1.
    """
    keys = {pupil: sat.key for pupil, sat in (before or {}).items()}
    plan = group_program(pupils, findings, meets=meets, sizes=sizes, before=keys)
    solved = solve(plan.program)
    if solved is None or solved.stopped:
        msg = "a class cannot be seated"
        raise Fault(msg)
    everyone = placed(pupils, findings)
    return groups(everyone, plan, solved.counts, before=before, largest=sizes.largest)
