"""Damages told so that a teacher knows which: the class, the night, the child's code and the problem."""

from collections.abc import Mapping
from datetime import date
from pathlib import Path
from typing import assert_never

from msgspec import Struct

from onewhole.store.digest_check import DamageKind
from onewhole.store.digests import CACHES, Value
from onewhole.store.mending import Found, Row
from onewhole.store.row_places import Places, shown

#: A text that is told has so many signs at most.
LONGEST = 60
#: What a row of a table is to a teacher: one, several, and the column that is seen of it.
_CALLED = {
    "answers": ("the answer", "answers", "text"),
    "corrections": ("what you said instead", "words of yours", "text"),
    "asked_answers": ("what was said in a talk", "rows of talks", "wrote"),
    "night_words": ("the word on a paper", "words on papers", "said"),
    "pupil_days": ("the first day", "days of joining and leaving", "joined"),
    "own_pages": ("the form of the pages", "forms of pages", "form"),
    "sheet_versions": ("the page", "versions of pages", "typed"),
    "sheets": ("the name of the page", "pages", "name"),
    "pupils": ("the name", "children", "name"),
    "classes": ("the name of the class", "classes", "name"),
    "nights": ("the day", "nights", "day"),
    "night_names": ("the name of the night", "names of nights", "name"),
    "numbers_given": ("the last number given", "numbers given", "last"),
    "paper_cells": ("what was read on a paper", "cells of papers", "text"),
    "steps": ("the moment of a step", "steps", "written"),
    "recordings": ("a recording", "recordings", "sound"),
    "settings": ("a setting", "settings", "text"),
    "given_out": ("what was given out", "lines on what was given out", "what"),
    "reckonings": ("a result", "results", "text"),
    "mornings": ("a page for the morning", "pages for the morning", "text"),
}
#: What a column is called where it is not the one that is seen.
_COLUMNS = {
    "written": "the moment",
    "by": "the writer",
    "problem": "the problem",
    "code": "the code",
    "left": "the last day",
}


class ToldDamage(Struct, frozen=True):
    """A damage in a sentence; ``mends`` says that it can be made as it was written."""

    said: str
    mends: bool


def damage_told(found: Found, places: Places, days: Mapping[Path, date]) -> ToldDamage:
    """Tell a damage; ``days`` are those of the backups."""
    return ToldDamage(_said(found, places, days), found.mends)


def _said(found: Found, places: Places, days: Mapping[Path, date]) -> str:
    damage = found.damage
    one, several, seen = _CALLED.get(damage.table, ("a row", "rows", ""))
    day = "" if found.backup is None else f"the backup of {_day(days.get(found.backup))}"
    match damage.kind:
        case DamageKind.CHANGED:
            place = _place(found.right[0] if found.right else damage.row, damage.table, places)
            what, now, was = _difference(found, one, seen)
            if day:
                return f"{place}: {what} stands as “{now}”; {day} says “{was}”."
            if found.mends:
                return f"{place}: {what} is damaged; it can be computed again."
            return f"{place}: {what} stands as “{now}”, which is not as it was written; no backup has it."
        case DamageKind.CHECKSUM:
            place = _place(damage.row, damage.table, places)
            return f"{place}: {one} is as it was written; only its checksum was damaged."
        case DamageKind.LOST:
            return _lost(found, several, seen, day, places)
        case DamageKind.TOLD | DamageKind.COUNTING:
            return f"What is counted of all {several} was damaged; it can be counted anew."
        case DamageKind.FINDING:
            return "Everything is there; only an index by which it is found was damaged."
        case _:
            assert_never(damage.kind)


def _lost(found: Found, several: str, seen: str, day: str, places: Places) -> str:
    count = found.damage.count
    if count < 1:
        return f"Some {several} are older than they should be, or stand twice."
    gone = f"{count} of the {several} {'is' if count == 1 else 'are'} gone"
    if not day:
        return f"{gone}; no backup has all of them." if found.damage.table not in CACHES else f"{gone}."
    each = [f"{_place(row, found.damage.table, places)}: “{_cut(row.get(seen))}”" for row in found.right[:3]]
    return f"{gone}; {day} has {'it' if count == 1 else 'them'}: {'; '.join(each)}{' …' * (count > 3)}."


def _place(row: Row, table: str, places: Places) -> str:
    """Where a row belongs: class, night, child and problem, as far as it names them."""
    in_class, parts = row.get("class_number"), []
    if "night_number" in row:
        in_class, day = places.nights.get(row["night_number"], (None, ""))
        parts.append(_day_typed(day) or f"night {shown(row['night_number'])}")
    if table == "nights":
        parts.append(_day_typed(shown(row.get("day"))))
    if table == "classes":
        in_class = row.get("number")
    if "pupil_number" in row:
        _, code = places.pupils.get(row["pupil_number"], (None, f"child {shown(row['pupil_number'])}"))
        parts.append(code)
    if "code" in row:
        parts.append(shown(row["code"]))
    if row.get("problem"):
        parts.append(f"problem {shown(row['problem'])}")
    if "sheet_number" in row and "version" in row and table == "sheet_versions":
        parts.append(f"“{places.sheets.get(row['sheet_number'], '')}”, version {shown(row['version'])}")
    if table in {"recordings", "steps", "settings", "sheets"}:
        parts.extend(shown(row[name]) for name in ("label", "step", "name") if name in row)
    if in_class is not None:
        parts.insert(0, places.classes.get(in_class, f"class {shown(in_class)}"))
    return ", ".join(part for part in parts if part) or "The file"


def _difference(found: Found, one: str, seen: str) -> tuple[str, str, str]:
    """What is damaged: what it is called, how it stands, and how it was written where a backup has it."""
    row, right = found.damage.row, found.right[0] if found.right else {}
    differ = [name for name in row if right and row[name] != right[name]]
    name = seen if seen in differ or not differ else differ[0]
    called = one if name == seen else _COLUMNS.get(name, f"what it belongs to ({name.replace('_', ' ')})")
    return called, _cut(row.get(name)), _cut(right.get(name))


def _cut(value: Value) -> str:
    """A value as it is told, in one line that is not too long."""
    text = " ".join(shown(value).split())
    return text if len(text) <= LONGEST else f"{text[:LONGEST]} …"


def _day_typed(text: str) -> str:
    try:
        return _day(date.fromisoformat(text))
    except ValueError:
        return text


def _day(day: date | None) -> str:
    return "" if day is None else f"{day:%a} {day.day} {day:%b %Y}"
