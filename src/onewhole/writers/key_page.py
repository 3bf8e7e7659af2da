"""The answer key: every answer, and the equal forms that are right too."""

from onewhole.languages.english.in_key import needs_told
from onewhole.languages.table import SPOKEN
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.formula import formula, set_words
from onewhole.writers.frame import frame, named
from onewhole.writers.printed import Json, Printed


def key_page(worked: WorkedSheet) -> Printed:
    """Return the answer key; equal forms are named and none is demanded (4.NF asks for no form)."""
    data = frame(worked.header, title=SPOKEN.page.answer_key, small=named(worked.header))
    answers = [answer_row(entry) for entry in worked.problems]
    return Printed(
        "key", data | {"footer": SPOKEN.page.for_the_teacher, "heads": heads(), "answers": answers}
    )


def answer_row(entry: WorkedProblem) -> Json:
    """Return one problem's row of the key."""
    row: Json = {
        "label": f"{entry.label}.",
        "formula": formula(entry.statement),
        "answer": formula(entry.answer),
        "note": set_words(needs_told(entry.needs)),
    }
    if entry.forms:
        row["also"] = [formula(form) for form in entry.forms]
    return row


def heads() -> Json:
    """Return the words over the columns of a key."""
    page = SPOKEN.page
    return {
        "label": page.number,
        "problem": page.problem,
        "answer": page.answer,
        "also": page.also_right,
        "note": page.note,
    }
