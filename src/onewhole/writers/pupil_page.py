"""The pupil page and a practice page: problems with the room that their working needs."""

from collections.abc import Sequence
from math import ceil
from typing import assert_never

from onewhole.notations.text import text
from onewhole.problems.problem import Problem
from onewhole.sheets.document import Instruction, Sheet
from onewhole.sheets.find_the_slip import FIND, WRONG, FindTheSlip
from onewhole.sheets.header import Picture
from onewhole.sheets.practice import Practice
from onewhole.sheets.room import Place, Room, columns, room
from onewhole.statements.statement import Comparison, MissingNumber, Question
from onewhole.writers.formula import formula
from onewhole.writers.frame import frame
from onewhole.writers.printed import Json, Printed
from onewhole.writers.story_words import story_words

_DRAW = {Picture.STRIP: "Draw the strips.", Picture.LINE: "Draw your jumps.", Picture.NONE: ""}


def pupil_page(sheet: Sheet) -> Printed:
    """Return the page that a pupil works on. Raises RoomError when a working does not fit the paper."""
    return Printed("pupil", frame(sheet.header) | _body(sheet))


def practice_page(practice: Practice, whose: str, kite: str) -> Printed:
    """Return the page that one group or one pupil practises on; no pattern is named on it.

    ``whose`` is the group's kite word or the pupil's code.
    """
    sheet = practice.sheet
    over = frame(sheet.header, title=f"{whose}: {sheet.header.title}" if sheet.header.title else whose)
    last = [_slip(practice.slip, sheet)] if practice.slip else []
    return Printed("practice", over | _body(sheet, last) | {"kite": kite})


def _body(sheet: Sheet, last: Sequence[Json] = ()) -> Json:
    items = [*(_item(item, sheet) for item in sheet.items), *last]
    pitch = room(sheet.problems[0], sheet).pitch_mm
    return {"columns": columns(sheet), "pitch_mm": ceil(pitch), "items": items}


def _item(item: Instruction | Problem, sheet: Sheet) -> Json:
    if isinstance(item, Instruction):
        return {"kind": "instruction", "words": item.words}
    needed = room(item, sheet)
    found: Json = {
        "kind": "problem",
        "label": f"{item.label}.",
        "room": _size(needed),
    }
    if item.story:
        found["words"] = story_words(item.story)
    else:
        found["formula"] = formula(item.statement, asks=_asks(item))
    found |= _answer(item, needed)
    if needed.picture:
        found["picture"] = _size(needed.picture) | {"words": _DRAW[sheet.header.picture]}
    return found


def _slip(slip: FindTheSlip, sheet: Sheet) -> Json:
    """Return the wrong lines, called wrong over them, and the room to mend them in."""
    problem = Problem(slip.label, slip.problem, text(slip.problem))
    return {
        "kind": "slip",
        "label": f"{slip.label}.",
        "tag": WRONG,
        "words": FIND,
        "lines": [formula(line, leads=at > 0) for at, line in enumerate(slip.lines)],
        "room": _size(room(problem, sheet)),
    }


def _asks(problem: Problem) -> bool:
    """Say whether an equals sign and a blank follow what is printed."""
    return isinstance(problem.statement, Question)


def _answer(problem: Problem, needed: Room) -> Json:
    """Give the answer a line, or make the hole or the ring in the formula large enough to write in."""
    size = _size(needed.answer)
    match problem.statement:
        case Question():
            return {"answer": size}
        case MissingNumber():
            return {"answer": size} if problem.story else {"inside": size}
        case Comparison(sign=sign):
            return {"answer": size} if problem.story or sign else {"inside": size}
        case _:
            assert_never(problem.statement)


def _size(place: Place | Room) -> Json:
    return {"width_mm": ceil(place.width_mm), "height_mm": ceil(place.height_mm)}
