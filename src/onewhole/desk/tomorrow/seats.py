"""Seat a class: who works with whom tomorrow, the best choice there is, and what is kept."""

from collections.abc import Mapping, Sequence

from onewhole.errors import Fault
from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.notebook import Sat, Stay, Tonight
from onewhole.marking.grouping.block import IdeaBlock, blocks
from onewhole.marking.grouping.group_program import MOST_SOLVED, group_program, in_a_row
from onewhole.marking.grouping.group_settings import USUAL, GroupSettings
from onewhole.marking.grouping.identity import NOBODY, Known, identified
from onewhole.marking.grouping.keeping import Seating, changes, kept, moved
from onewhole.marking.grouping.placement import placements
from onewhole.marking.grouping.seating import parted, with_reasons
from onewhole.marking.reading.mark import PupilMarks
from onewhole.presses.solver import TooSlowError, solve

NOBODY_SITS: Mapping[str, Sat] = {}
NOBODY_PUT: Mapping[str, Sat | None] = {}


def seated(
    pupils: Sequence[PupilMarks],
    findings: Sequence[Finding],
    settings: GroupSettings = USUAL,
    known: Known = NOBODY,
    *,
    sits: Mapping[str, Sat] = NOBODY_SITS,
    places: Mapping[str, Sat | None] = NOBODY_PUT,
) -> Seating:
    """Return tomorrow's groups, and what would change in them by the answers as they are now.

    ``sits`` is where pupils sit by the groups that are kept (none: there are none yet), ``places`` where the
    teacher puts them, or lets them go (None). Those put somewhere before until let go stay there too. What is
    kept is kept: nobody who sits is moved by answers.
    """
    sits = {pupil: sat for pupil, sat in sits.items() if sat.key != GroupKind.ABSENT.value}
    last = {pupil: sat for pupil, sat in known.sat.items() if sat.stays is Stay.ALWAYS}
    put = {pupil: sat for pupil, sat in (last | dict(sits)).items() if sat.stays is not Stay.FREE}
    stay = {pupil: sat for pupil, sat in (put | dict(places)).items() if sat is not None}
    found = {one.pupil: one for one in findings}
    everyone = placements(pupils, findings)
    now = Known({**known.sat, **sits}, (*known.groups, *sits.values()), known.born)
    row = blocks(everyone, found, now.sat, settings.sizes.largest)
    parts = parted(everyone, _held(row, settings, now.sat), found, settings, now.sat)
    alone = identified(parts, now)
    said = with_reasons(moved(alone, stay), settings)
    if not sits:
        return Seating(said, (), said)
    free = {pupil: sat for pupil, sat in sits.items() if pupil not in stay}
    stand = with_reasons(moved(kept(alone, free), stay), settings)
    return Seating(stand, changes(stand, said), said)


def _held(
    row: Sequence[IdeaBlock], settings: GroupSettings, sat: Mapping[str, Sat]
) -> tuple[tuple[IdeaBlock, ...], ...]:
    """Return the meetings: the best there is; where that is too much to solve, the row of ideas is cut.

    Of very many blocks the open ones have their talk.
    """
    if len(row) > MOST_SOLVED:
        row = [block for block in row if block.talk is None]
    if len(row) > MOST_SOLVED:
        return in_a_row(row, settings)
    plan = group_program(row, settings, sat)
    try:
        solved = solve(plan.program)
    except TooSlowError:
        return in_a_row([block for block in row if block.talk is None], settings)
    if solved is None:
        msg = "a class cannot be seated"
        raise Fault(msg)
    return plan.chosen(solved.counts)


def known_before(tonight: Tonight | None, page: str) -> Known:
    """Return what the notebook knows of groups before a night."""
    if tonight is None:
        return NOBODY
    earlier = tonight.before(page)
    return Known(earlier.seats, earlier.groups, tonight.on.isoformat())
