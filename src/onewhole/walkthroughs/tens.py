"""The link from opening one whole to regrouping a ten, which the class knows from whole numbers."""

from fractions import Fraction

from onewhole.languages.table import spoken_by
from onewhole.number.ladder import TEN
from onewhole.number.unit import ONE, Unit
from onewhole.walkthroughs.cue import Cue, Role
from onewhole.walkthroughs.manner import Manner
from onewhole.walkthroughs.memory import Memory, Once
from onewhole.working.line import Line
from onewhole.working.reasons.regrouping import OneIsWorth
from onewhole.working.reasons.taking import OpenedToTake

#: The ten that is regrouped, and what it becomes.
_TENS = (Unit(Fraction(TEN)), ONE)


def tens_cues(lines: list[Line], manner: Manner, memory: Memory) -> list[Cue]:
    """Link the opening of a whole to the regrouping of a ten, once in a film."""
    for line in lines:
        units = _opened_units(line)
        if units is None or units[0].size == TEN or not memory.once(Once.TENS):
            continue
        says = memory.tell(spoken_by(manner.words).opening.tens(*units, _TENS, manner.words))
        return [Cue(Role.TENS, says)]
    return []


def _opened_units(line: Line) -> tuple[Unit, Unit] | None:
    """Return the unit that a line opens and the one it becomes, or None where it opens none."""
    match line.because:
        case OneIsWorth(large, small):
            return large, small
        case OpenedToTake(wholes, opened):  # of 1 ft as 12 in nothing larger is left
            large, small = (*wholes.ladder.units, *opened.ladder.units)[-2:]
            return large, small
        case _:
            return None
