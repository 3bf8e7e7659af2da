"""Lines of the board, set as pictures: one page of a place's own size for each."""

from collections.abc import Sequence
from itertools import accumulate

from onewhole.errors import Fault
from onewhole.languages.language import Language
from onewhole.languages.table import SPOKEN
from onewhole.notations.typst_math import typst_row
from onewhole.statements.row import row
from onewhole.walkthroughs.cue import Write
from onewhole.writers.formula import Formula, formula
from onewhole.writers.printed import Json, Printed

SOURCE = '#import "/look/board.typ": board\n#board(json(bytes(sys.inputs.data)))'

#: Clear paper round each place, for brackets and frames that reach over it.
BLEED = 12


def board(writes: Sequence[Write], language: Language = SPOKEN) -> tuple[str, bytes]:
    """Return Typst source and data that set each line on a page of its own, clear where nothing is written.

    A page is as large as the line's place and :data:`BLEED` more on each side, a point for a unit of the
    board; the line is shrunk where it is too long. Raises Fault for a line that has no place yet.

    >>> from onewhole.walkthroughs.cue import Place
    >>> source, data = board([Write("a", "Kites", place=Place(0, 0, 300, 80))])
    >>> b"Kites" in data, b'"width": 300' in data
    (True, True)
    """
    data: Json = {"lines": [_line(write, language) for write in writes], "bleed": BLEED, "lang": language.tag}
    return SOURCE, Printed("board", data).content


def formula_rows(write: Write, language: Language = SPOKEN) -> tuple[Formula, ...]:
    """Return the rows of a formula that was folded; the first carries the spoken words of all."""
    assert not isinstance(write.content, str), "words are not folded by the layout"
    whole = formula(write.content, leads=write.leads, language=language)
    whole_bits = sum(map(len, write.rows)) == len(row(write.content))
    fresh = write.fresh if whole_bits else frozenset[int]()
    starts = accumulate((len(one) for one in write.rows), initial=0)
    rows = [
        typst_row(one, language, fresh, first=first) for one, first in zip(write.rows, starts, strict=False)
    ]
    rows[0] = f"= {rows[0]}" if write.leads else rows[0]
    return tuple({"math": math, "alt": "" if at else whole["alt"]} for at, math in enumerate(rows))


def _said(write: Write, language: Language) -> str | Formula | tuple[Formula, ...]:
    if isinstance(write.content, str):
        return f"= {write.content}" if write.leads else write.content
    if write.rows:
        return formula_rows(write, language)
    said = formula(write.content, leads=write.leads, language=language)
    if write.fresh:
        math = typst_row(row(write.content), language, write.fresh)
        said["math"] = f"= {math}" if write.leads else math
    return said


def _line(write: Write, language: Language) -> Json:
    if write.place is None:
        msg = "a line of the board has no place"
        raise Fault(msg, where=write.name)
    said = _said(write, language)
    return {
        "says": said,
        "label": write.label,
        "aside": write.aside,
        "heading": write.heading,
        "width": write.place.width,
        "height": write.place.height,
    }
