"""Everything that is worked on squared paper, a digit a square: added, taken away, multiplied and divided."""

from onewhole.pictures import columns as in_columns
from onewhole.pictures.columns_state import ColumnsState, columns_states
from onewhole.pictures.picture import Picture, PictureKind
from onewhole.pictures.scene import Scene
from onewhole.pictures.squares import WrittenState
from onewhole.pictures.written import written, written_begun, written_still
from onewhole.pictures.written_state import written_states
from onewhole.working.working import Working

#: What stands on squared paper at a line.
SquaredState = ColumnsState | WrittenState


def squared_states(working: Working) -> tuple[SquaredState, ...]:
    """Return what stands in squares at every line; nothing for a working that is not written in columns.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.products.in_columns import MULTIPLY_IN_COLUMNS
    >>> from onewhole.working.work import work
    >>> len(squared_states(work(read_statement("24 x 3"), MULTIPLY_IN_COLUMNS)))
    3
    """
    return written_states(working) or columns_states(working)


def ends(working: Working) -> tuple[SquaredState, ...]:
    """Return what stands in squares at the end, each time that the columns begin anew."""
    return tuple({state.block: state for state in squared_states(working)}.values())


def squared(working: Working) -> Picture:
    """Draw a working in columns, a scene for every line. Raises NotDrawnError for any other working."""
    if scenes := written(working):
        return Picture(PictureKind.COLUMNS, scenes)
    return in_columns.columns(working)


def stills(working: Working) -> tuple[Scene, ...]:
    """Return what stands in squares at the end, as narrow as it is; a scene each time they begin anew."""
    still = written_still(working)
    return in_columns.stills(working) if still is None else (still,)


def begun(working: Working) -> Scene | None:
    """Draw the squares with the first step done, to be gone on with; None where there is none to do."""
    return written_begun(working) or in_columns.begun(working)
