"""A place where something of a child can stand: what, where, and what becomes of it."""

import re
from enum import Enum

from msgspec import Struct


class Where(Enum):
    """What kind of place it is."""

    TABLE = "a table in the class's file"
    FILE = "on the disk"
    MEMORY = "in the running program"
    BROWSER = "in the browser"
    OUTSIDE = "outside the program"


class HowHeld(Enum):
    """How the place is told where all that is held on a child is shown."""

    LISTED = "listed, all of it"
    COPY = "a copy of what is listed; its file is named on Keep"
    MADE = "made from what is listed; its file is named on Keep"
    PASSING = "a copy of what is listed, for a while"
    NOTHING = "holds nothing of one child"
    TYPED = "the teacher's own words, of no one child: shown where they were typed"
    NOTED = "as the teacher notes it under “Given out”"


class Erasing(Enum):
    """What erasing a child does with the place."""

    ROWS = "the child's rows are taken out, and the file is written anew"
    EMPTIED = "emptied for the whole class; found anew when it is asked for"
    CLEANED = "the child is erased in it, if that is wanted; what stays is named"
    TAKEN_AWAY = "taken away whole; what cannot be is named"
    NAMED = "stays, and is named: the teacher looks and takes it away"
    FORGOTTEN = "forgotten at once"
    PASSES = "ends by itself with what it was for"
    STAYS = "stays: nothing of one child is in it, unless the teacher typed that there"
    TEACHERS = "the teacher's to find; the page says so"


class LastDay(Enum):
    """What becomes of the place when the last day is over: nothing is erased by itself."""

    TOLD = "told as still there until the children are erased"
    NAMED = "its files are named as still there, to be taken away"
    ENDS = "nothing is left of it when the program has ended"
    TEACHERS = "the teacher's to find; the page says so"


class PlaceRow(Struct, frozen=True):
    """One place.

    ``found`` says where exactly: for a table its name; for a file an example of its path, as seen from the
    folder of a class's file that is called room12.class; for memory the module that holds it; else words.
    ``pattern`` is that of a file's path, where NUL and CLASS stand for the name of the class's file, and NUL
    and STEM for its name without ending; it is None for what is no file.
    """

    what: str
    where: Where
    found: str
    held: HowHeld
    erasing: Erasing
    last_day: LastDay
    pattern: re.Pattern[str] | None = None
