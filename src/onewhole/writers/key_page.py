"""The answer key: every answer, and the equal forms that are right too."""

from onewhole.problems.needs import Needs
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.formula import formula
from onewhole.writers.frame import frame, named
from onewhole.writers.printed import Json, Printed


def key_page(worked: WorkedSheet) -> Printed:
    """Return the answer key; equal forms are named and none is demanded (4.NF asks for no form)."""
    data = frame(worked.header, title="Answer key", small=named(worked.header))
    answers = [answer_row(entry) for entry in worked.problems]
    return Printed("key", data | {"footer": "For the teacher", "answers": answers})


def answer_row(entry: WorkedProblem) -> Json:
    """Return one problem's row of the key."""
    row: Json = {
        "label": f"{entry.label}.",
        "formula": formula(entry.statement),
        "answer": formula(entry.answer),
        "note": _note(entry.needs),
    }
    if entry.forms:
        row["also"] = [formula(form) for form in entry.forms]
    return row


def _note(asked: Needs) -> str:
    notes = [
        "regroup" if asked.regrouping else "no regrouping",
        *(["a whole number first"] if asked.whole_first else []),
        *([f"unlike {'denominators' if asked.denominators else 'units'}"] if asked.renaming else []),
    ]
    return ", ".join(notes).capitalize() + "."
