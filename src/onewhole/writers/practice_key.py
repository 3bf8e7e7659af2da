"""The key of the practice pages: every answer, and where the slip is."""

from collections.abc import Sequence

from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.find_the_slip import FindTheSlip
from onewhole.sheets.header import Header
from onewhole.sheets.practice import Practice
from onewhole.writers.formula import chain, formula
from onewhole.writers.frame import frame, named
from onewhole.writers.key_page import answer_row
from onewhole.writers.printed import Json, Printed

BACK = "From an earlier skill."


def practice_key(header: Header, pages: Sequence[tuple[str, Practice]]) -> Printed:
    """Return the key of practice pages, each under the name of the group or the code of the pupil."""
    data = frame(header, title="Practice: answer key", small=named(header))
    parts = [_part(whose, practice) for whose, practice in pages]
    return Printed("keys", data | {"footer": "For the teacher", "parts": parts})


def _part(whose: str, practice: Practice) -> Json:
    part: Json = {
        "name": whose,
        "answers": [_row(entry, practice.review) for entry in practice.worked.problems],
    }
    return part | ({"slip": _slip(practice.slip, practice.sheet.header)} if practice.slip else {})


def _row(entry: WorkedProblem, review: str | None) -> Json:
    row = answer_row(entry)
    if entry.label == review:
        row["note"] = f"{row['note']} {BACK}"
    return row


def _slip(slip: FindTheSlip, header: Header) -> Json:
    """Say which equals sign is not true, what would be true there, and the answer."""
    return {
        "label": f"{slip.label}.",
        "says": [
            f"Equals sign {slip.sign} of {len(slip.lines) - 1} is not true. True would be ",
            chain((slip.lines[slip.sign - 1], slip.would_be)),
            ". The answer is ",
            formula(slip.mended(header).answer),
            ".",
        ],
    }
