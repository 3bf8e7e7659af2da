"""The key of the practice pages: every answer, and where the slip is."""

from collections.abc import Sequence

from onewhole.languages.table import spoken_by
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.find_the_slip import FindTheSlip
from onewhole.sheets.header import Header
from onewhole.sheets.practice import Practice
from onewhole.writers.formula import set_words
from onewhole.writers.frame import frame, named
from onewhole.writers.key_page import answer_row, heads
from onewhole.writers.printed import Json, Printed


def practice_key(header: Header, pages: Sequence[tuple[str, Practice]]) -> Printed:
    """Return the key of practice pages, each under the name of the group or the code of the pupil."""
    page = spoken_by(header.words).page
    data = frame(header, title=page.practice_key, small=named(header))
    parts = [_part(whose, practice) for whose, practice in pages]
    return Printed("keys", data | {"footer": page.for_the_teacher, "heads": heads(page), "parts": parts})


def _part(whose: str, practice: Practice) -> Json:
    part: Json = {
        "name": whose,
        "answers": [_row(entry, practice) for entry in practice.worked.problems],
    }
    return part | ({"slip": _slip(practice.slip, practice.sheet.header)} if practice.slip else {})


def _row(entry: WorkedProblem, practice: Practice) -> Json:
    language = spoken_by(practice.sheet.header.words)
    row = answer_row(entry, language, practice.worked.standards[entry.label])
    if entry.label == practice.review:
        row["note"] = f"{row.get('note', '')} {language.page.earlier_skill}".strip()
    return row


def _slip(slip: FindTheSlip, header: Header) -> Json:
    """Say which equals sign is not true, what would be true there, and the answer."""
    return {
        "label": f"{slip.label}.",
        "says": set_words(
            spoken_by(header.words).key.slip(
                slip.sign,
                len(slip.lines) - 1,
                (slip.lines[slip.sign - 1], slip.would_be),
                slip.mended(header).answer,
            ),
            every=True,
        ),
    }
