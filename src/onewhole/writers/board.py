"""Lines of the board, set as pictures: one page of a place's own size for each."""

from collections.abc import Sequence

from onewhole.errors import Fault
from onewhole.walkthroughs.cue import Write
from onewhole.writers.formula import formula
from onewhole.writers.printed import Json, Printed

SOURCE = '#import "/look/board.typ": board\n#board(json(bytes(sys.inputs.data)))'

#: Clear paper round each place, for brackets and frames that reach over it.
BLEED = 12


def board(writes: Sequence[Write]) -> tuple[str, bytes]:
    """Return Typst source and data that set each line on a page of its own, clear where nothing is written.

    A page is as large as the line's place and :data:`BLEED` more on each side, a point for a unit of the
    board; the line is shrunk where it is too long. Raises Fault for a line that has no place yet.

    >>> from onewhole.walkthroughs.cue import Place
    >>> source, data = board([Write("a", "Kites", place=Place(0, 0, 300, 80))])
    >>> b"Kites" in data, b'"width": 300' in data
    (True, True)
    """
    return SOURCE, Printed("board", {"lines": [_line(write) for write in writes], "bleed": BLEED}).content


def _line(write: Write) -> Json:
    if write.place is None:
        msg = "a line of the board has no place"
        raise Fault(msg, where=write.name)
    said = write.content if isinstance(write.content, str) else formula(write.content, leads=write.leads)
    if isinstance(said, str) and write.leads:
        said = f"= {said}"
    return {
        "says": said,
        "label": write.label,
        "aside": write.aside,
        "heading": write.heading,
        "width": write.place.width,
        "height": write.place.height,
    }
