r"""Every place where something of a child can stand, in one table: a law of the code.

A new table, a new file beside the class's file, a new cache of answers gets its row here;
`tests/desk/keep/test_places.py` walks a class through a whole round and turns red where a row is missing or
does not tell the truth. `docs/privacy.md` is made from it.
"""

import re
from enum import Enum

from onewhole.desk.keep.place import Erasing, HowHeld, LastDay, PlaceRow, Where

_LOGS = r"(?:-wal|-shm|-journal)"
_NIGHT = r"\0STEM-made/mine/(?:\.night-\d+\.[^/]*|night-\d+)"


def _table(what: str, found: str, held: HowHeld, erasing: Erasing) -> PlaceRow:
    return PlaceRow(what, Where.TABLE, found, held, erasing, LastDay.TOLD)


def _file(what: str, found: str, pattern: re.Pattern[str], held: HowHeld, erasing: Erasing) -> PlaceRow:
    return PlaceRow(what, Where.FILE, found, held, erasing, LastDay.NAMED, pattern)


def _memory(what: str, found: str, erasing: Erasing) -> PlaceRow:
    return PlaceRow(what, Where.MEMORY, found, HowHeld.PASSING, erasing, LastDay.ENDS)


class DataPlace(Enum):
    """The places, each with its row."""

    # ---- tables: the one file of the class ----
    PUPILS = _table(
        "each child's code, and the name where one was typed", "pupils", HowHeld.LISTED, Erasing.ROWS
    )
    ANSWERS = _table("every writing of every answer", "answers", HowHeld.LISTED, Erasing.ROWS)
    CORRECTIONS = _table(
        "the teacher's word: a cell read otherwise, a finding set aside, a seat",
        "corrections",
        HowHeld.LISTED,
        Erasing.ROWS,
    )
    ASKED_ANSWERS = _table(
        "what a child was asked in a talk, what it said, and the teacher's word on it",
        "asked_answers",
        HowHeld.LISTED,
        Erasing.ROWS,
    )
    PUPIL_DAYS = _table(
        "the days on which a child joined and left the class", "pupil_days", HowHeld.LISTED, Erasing.ROWS
    )
    OWN_PAGES = _table(
        "whether a child reads braille or large print", "own_pages", HowHeld.LISTED, Erasing.ROWS
    )
    NIGHT_WORDS = _table(
        "the teacher's word on a night: who got the page, who was absent or excused, whose paper is late",
        "night_words",
        HowHeld.LISTED,
        Erasing.ROWS,
    )
    FINDINGS = _table(
        "what the program found in a night's answers, and carries on to the next, by child",
        "reckonings",
        HowHeld.LISTED,
        Erasing.EMPTIED,
    )
    MORNINGS = _table(
        "the last pages for the morning as they were worked out, by night: ideas, groups, talks, with codes",
        "mornings",
        HowHeld.LISTED,
        Erasing.EMPTIED,
    )
    GIVEN_OUT = _table(
        "what was given out on a child, to whom, what for, when", "given_out", HowHeld.LISTED, Erasing.ROWS
    )
    PAPER_CELLS = _table(
        "the cells of papers that were read from pictures: the picture of each cell and what was read in it, "
        "until the teacher has checked them, 30 days at most where they are not wished for",
        "paper_cells",
        HowHeld.LISTED,
        Erasing.ROWS,
    )
    CLASSES = _table(
        "the class's name, and how many codes were given", "classes", HowHeld.NOTHING, Erasing.STAYS
    )
    SHEETS = _table("the names of pages", "sheets", HowHeld.TYPED, Erasing.STAYS)
    SHEET_VERSIONS = _table("the pages as they were typed", "sheet_versions", HowHeld.TYPED, Erasing.STAYS)
    NIGHTS = _table("which page went home on which day", "nights", HowHeld.NOTHING, Erasing.STAYS)
    NIGHT_NAMES = _table("a night's own name", "night_names", HowHeld.TYPED, Erasing.STAYS)
    YEARS = _table("the class's year as it was typed", "years", HowHeld.TYPED, Erasing.STAYS)
    NUMBERS = _table(
        "the last number that a class, a page and a night got",
        "numbers_given",
        HowHeld.NOTHING,
        Erasing.STAYS,
    )
    STEPS = _table("when a night was printed, shown, marked", "steps", HowHeld.NOTHING, Erasing.STAYS)
    RECORDINGS = _table("the teacher's voice for a walkthrough", "recordings", HowHeld.TYPED, Erasing.STAYS)
    SETTINGS = _table(
        "the last day, choices for walkthroughs, printing and papers, which pages were printed before they "
        "were set, how many readings of papers were wrong",
        "settings",
        HowHeld.NOTHING,
        Erasing.STAYS,
    )
    HEADS = _table("sums by which a changed digit is found", "table_heads", HowHeld.NOTHING, Erasing.STAYS)
    RELEASE = _table("which release the file is of", "schema_version", HowHeld.NOTHING, Erasing.STAYS)
    COUNTERS = _table("how many rows a table ever had", "sqlite_sequence", HowHeld.NOTHING, Erasing.STAYS)

    # ---- files beside the class's file ----
    CLASS_FILE = _file("the class's file", "room12.class", re.compile(r"\0CLASS"), HowHeld.COPY, Erasing.ROWS)
    LOG = _file(
        "the log of the class's file, while it is open",
        "room12.class-wal",
        re.compile(rf"\0CLASS{_LOGS}"),
        HowHeld.COPY,
        Erasing.ROWS,
    )
    BACKUPS = _file(
        "the backups made by the program",
        "backups/room12.class.2026-09-01.backup",
        re.compile(rf"backups/\0CLASS\.[\dT-]+\.backup{_LOGS}?"),
        HowHeld.COPY,
        Erasing.CLEANED,
    )
    DAMAGED = _file(
        "damaged files moved aside",
        "room12.class.2026-09-01T183000.damaged",
        re.compile(rf"\0CLASS\.[\dT-]+\.damaged{_LOGS}?"),
        HowHeld.COPY,
        Erasing.NAMED,
    )
    MAKING = _file(
        "hidden copies, while a backup is made or brought back",
        "backups/.room12.class.2026-09-01.backup.x7f_2k9q.making",
        re.compile(rf"(?:backups/)?\.[^/]{{1,40}}\.[a-z0-9_]{{8}}\.making{_LOGS}?"),
        HowHeld.COPY,
        Erasing.TAKEN_AWAY,
    )
    TOMORROW = _file(
        "tomorrow's pages: whom to see, groups, talks, with codes and names; practice, without names",
        "room12-made/mine/night-3/tomorrow/8b1f/morning.pdf",
        re.compile(rf"{_NIGHT}/tomorrow/.+"),
        HowHeld.MADE,
        Erasing.TAKEN_AWAY,
    )
    FILMS = _file(
        "films of a night, with the teacher's voice",
        "room12-made/mine/night-3/walkthrough.mp4",
        re.compile(rf"{_NIGHT}/(?!tomorrow/).+"),
        HowHeld.TYPED,
        Erasing.STAYS,
    )
    DEMO = _file(
        "the demo: invented children",
        "room12-demo.class",
        re.compile(r"\0STEM-(?:demo[^/]*|made/demo/.+)"),
        HowHeld.NOTHING,
        Erasing.STAYS,
    )
    PASSWORD = _file(
        "the hash of the password",
        "room12.class.password",
        re.compile(r"\0CLASS\.password"),
        HowHeld.NOTHING,
        Erasing.STAYS,
    )
    SCHOOL_KEY = _file(
        "the school's key, by which a district's hash of a child's code can be made again; no child",
        "school.key",
        re.compile(r"school\.key"),
        HowHeld.NOTHING,
        Erasing.STAYS,
    )

    # ---- the running program ----
    ANSWER_CACHES = _memory(
        "what was worked out from answers, so that a page need not be worked out again",
        "onewhole.desk.keep.pupil_cache",
        Erasing.FORGOTTEN,
    )
    STATEMENTS = _memory(
        "statements to the database, with the values of their first use",
        "onewhole.store.keeping",
        Erasing.FORGOTTEN,
    )
    JOBS = _memory(
        "the outcome of long work, and what it could not do", "onewhole.web.jobs", Erasing.FORGOTTEN
    )
    REQUESTS = _memory(
        "a page, a form or a table of answers while it is answered or read; a large one that comes in lies "
        "in a file without a name",
        "onewhole.web.http.handling",
        Erasing.PASSES,
    )
    PICTURES = _memory(
        "photos and scans of papers, while they are read: each in a process of its own that keeps nothing",
        "onewhole.presses.paper.decoding",
        Erasing.PASSES,
    )
    SESSIONS = PlaceRow(
        "who is signed in: secrets, and no child",
        Where.MEMORY,
        "onewhole.web.access.sessions",
        HowHeld.NOTHING,
        Erasing.PASSES,
        LastDay.ENDS,
    )
    OPEN_DOOR = PlaceRow(
        "that the door is open, with a key that is good once: two files that only their owner reads and that "
        "go when the program ends; no child",
        Where.MEMORY,
        "onewhole.cli.open_door",
        HowHeld.NOTHING,
        Erasing.PASSES,
        LastDay.ENDS,
    )
    SERVER_LOG = PlaceRow(
        "the log of the door: kinds of pages, codes, times, and no child",
        Where.MEMORY,
        "onewhole.web.http.handling",
        HowHeld.NOTHING,
        Erasing.STAYS,
        LastDay.ENDS,
    )

    # ---- the browser ----
    DRAFTS = PlaceRow(
        "the draft of a page on the page desk, until it is saved",
        Where.BROWSER,
        "localStorage, in page_desk_kept.js",
        HowHeld.TYPED,
        Erasing.STAYS,
        LastDay.TEACHERS,
    )
    PAGES_SHOWN = PlaceRow(
        "pages that were looked at: the browser is told to keep none (no-store)",
        Where.BROWSER,
        "the window, while it is open",
        HowHeld.PASSING,
        Erasing.PASSES,
        LastDay.TEACHERS,
    )
    HISTORY = PlaceRow(
        "addresses that were visited, with the codes of children and no more",
        Where.BROWSER,
        "the browser's history",
        HowHeld.NOTED,
        Erasing.TEACHERS,
        LastDay.TEACHERS,
    )

    # ---- outside ----
    SAVED = PlaceRow(
        "what was saved: exports, tables, backups, locked ones too",
        Where.OUTSIDE,
        "where the teacher put it; the browser's folder for downloads",
        HowHeld.NOTED,
        Erasing.TEACHERS,
        LastDay.TEACHERS,
    )
    PRINTED = PlaceRow(
        "printed pages",
        Where.OUTSIDE,
        "where the teacher put them; the printer's memory",
        HowHeld.NOTED,
        Erasing.TEACHERS,
        LastDay.TEACHERS,
    )
    HANDED_IN = PlaceRow(
        "the table of answers, or the photos of papers, that a verb read, and the answers, the picture of "
        "cells, the folder and the notebook it wrote",
        Where.OUTSIDE,
        "where the teacher put them (`onewhole mark`, `exchange`, `read`, `night`, `plan`, `print`, `tell`, "
        "`share`)",
        HowHeld.NOTED,
        Erasing.TEACHERS,
        LastDay.TEACHERS,
    )


def place_of(found: str, class_file: str) -> DataPlace | None:
    """Return the place of a file by its path from the folder of the class's file; None for a file not ours.

    >>> place_of("backups/room12.class.2026-09-01.backup", "room12.class").name
    'BACKUPS'
    >>> place_of("notes.txt", "room12.class") is None
    True
    """
    stem = class_file.rpartition(".")[0] or class_file
    parts = (_marked(part, class_file, stem) for part in found.split("/"))
    seen = "/".join(parts)
    return next((one for one in DataPlace if one.value.pattern and one.value.pattern.fullmatch(seen)), None)


def _marked(part: str, class_file: str, stem: str) -> str:
    """Return a part of a path with a mark for the name it begins with; no file's name holds such a mark."""
    if part.startswith((f"{stem}-made", f"{stem}-demo")):
        return f"\0STEM{part.removeprefix(stem)}"
    return f"\0CLASS{part.removeprefix(class_file)}" if part.startswith(class_file) else part
