"""Why parts of a working cannot be shown: cannot be counted, lie on no grid, are not shared, are no bar."""

from onewhole.pictures.bar import LEAST_SHARE
from onewhole.pictures.limits import GRID_PARTS, MOST_WHOLES, NotDrawnError
from onewhole.pictures.parts import part_whole
from onewhole.pictures.quantity_state import QuantityState, quantity_states
from onewhole.pictures.shares import MOST_SHARES
from onewhole.pictures.shares_state import GIVEN_OUT, quotient_of
from onewhole.pictures.step_bars import step_bars
from onewhole.pictures.unpictured import (
    NoPartsOfWhole,
    NoRoom,
    NoShares,
    NotHundredths,
    TooManyParts,
    TooManyShares,
    TooManyWholes,
    TooSmallBeside,
    Unpictured,
)
from onewhole.working.working import Working


def _states(working: Working) -> tuple[QuantityState, ...]:
    try:
        return quantity_states(working)
    except NotDrawnError:
        return ()


def uncounted(working: Working, most: int) -> Unpictured | None:
    """Return why the wholes or parts of a working cannot be counted by looking."""
    heaps = [heap for state in _states(working) for heap in state.heaps]
    if not heaps:
        return NoRoom()
    parts, wholes = max(heap.per for heap in heaps), max(heap.amount for heap in heaps)
    if parts > most:
        return TooManyParts(parts, most)
    if wholes >= MOST_WHOLES + 1:
        return TooManyWholes(int(wholes), MOST_WHOLES)
    return None


def off_grid(working: Working) -> Unpictured | None:
    """Return why parts do not stand in the small squares of a hundred grid."""
    heaps = [heap for state in _states(working) for heap in state.heaps]
    others = [heap.per for heap in heaps if heap.per not in GRID_PARTS]
    if others:
        return NotHundredths(others[0])
    return uncounted(working, max(GRID_PARTS))


def no_shares(working: Working) -> Unpictured | None:
    """Return why nothing is given out to shares."""
    asked = quotient_of(working)
    if asked is None or asked.shares is None or working.strategy not in GIVEN_OUT:
        return NoShares()
    return TooManyShares(asked.shares, MOST_SHARES) if asked.shares > MOST_SHARES else None


def no_bar(working: Working) -> Unpictured | None:
    """Return why the parts of a whole do not lie side by side in a bar."""
    told = part_whole(working.statement)
    if told is None:
        return None if step_bars(working) else NoPartsOfWhole()
    return TooSmallBeside() if told.smallest < LEAST_SHARE else None
