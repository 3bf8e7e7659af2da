"""How pupils are named on the teacher's own printed pages: the code, and the name where it can be printed."""

import json
from collections.abc import Callable, Iterable
from datetime import datetime

from onewhole.desk.classes.class_records import Classroom
from onewhole.presses.pdf import MissingSignError, press

#: A longer name is cut, so that it stays on the page.
LONGEST_PRINTED = 24
_NAMES = """#import "/look/ink.typ": counting
#set document(title: [Names])
#set text(font: counting)
#for name in json(bytes(sys.inputs.data)) { par(name) }"""


def printed_names(of: Classroom, when: datetime) -> Callable[[str], str]:
    """Return how each pupil is shown in print, by the code.

    Signs that do not print are left out, and so is a name with a sign that no font has: the page must not
    fail for it.
    """
    names = {pupil.code: _plain(pupil.name) for pupil in of.pupils if pupil.name}
    missing = _missing(names.values(), when)
    return lambda code: " ".join(
        (code, *(name for name in (names.get(code),) if name and not missing & set(name)))
    )


def _plain(name: str) -> str:
    """Return a name on one line, no longer than it may be."""
    shown = " ".join("".join(sign if sign.isprintable() else " " for sign in name).split())
    return shown if len(shown) <= LONGEST_PRINTED else f"{shown[: LONGEST_PRINTED - 1].rstrip()}…"


def _missing(names: Iterable[str], when: datetime) -> set[str]:
    """Return the signs of some names that no font has."""
    try:
        press(_NAMES, data=json.dumps([*names], ensure_ascii=False).encode(), when=when)
    except MissingSignError as error:
        return set("".join(error.signs))
    return set()
