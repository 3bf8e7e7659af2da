"""The pupil page and a group's practice page: problems with the room that their working needs."""

from math import ceil

from onewhole.problems.problem import Problem
from onewhole.sheets.document import Instruction, Sheet
from onewhole.sheets.header import Picture
from onewhole.sheets.room import columns, room
from onewhole.statements.statement import Comparison, MissingNumber
from onewhole.writers.formula import formula
from onewhole.writers.frame import frame
from onewhole.writers.printed import Json, Printed

_DRAW = {Picture.STRIP: "Draw the strips.", Picture.LINE: "Draw your jumps.", Picture.NONE: ""}


def pupil_page(sheet: Sheet) -> Printed:
    """Return the page that a pupil works on. Raises RoomError when a working does not fit the paper."""
    return Printed("pupil", frame(sheet.header) | _body(sheet))


def practice_page(sheet: Sheet, group: str, kite: str) -> Printed:
    """Return the page that one group practises on; ``group`` is a kite word and never a pattern's name."""
    return Printed("practice", frame(sheet.header) | _body(sheet) | {"group": group, "kite": kite})


def _body(sheet: Sheet) -> Json:
    items = [_item(item, sheet) for item in sheet.items]
    pitch = room(sheet.problems[0], sheet).pitch_mm
    return {"columns": columns(sheet), "pitch_mm": ceil(pitch), "items": items}


def _item(item: Instruction | Problem, sheet: Sheet) -> Json:
    if isinstance(item, Instruction):
        return {"kind": "instruction", "words": item.words}
    needed = room(item, sheet)
    found: Json = {
        "kind": "problem",
        "label": f"{item.label}.",
        "room": {"width_mm": ceil(needed.width_mm), "height_mm": ceil(needed.height_mm)},
    }
    if item.story:
        found["words"] = item.story
    else:
        found["formula"] = _asked(item)
    if needed.picture:
        found["picture"] = {
            "width_mm": ceil(needed.picture.width_mm),
            "height_mm": ceil(needed.picture.height_mm),
            "words": _DRAW[sheet.header.picture],
        }
    return found


def _asked(problem: Problem) -> dict[str, str]:
    whole_line = isinstance(problem.statement, Comparison | MissingNumber)
    return formula(problem.statement, asks=not whole_line)
