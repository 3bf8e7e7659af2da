"""The answer key: every answer, and the equal forms that are right too."""

from onewhole.problems.needs import needs
from onewhole.sheets.document import Sheet
from onewhole.sheets.key import KeyEntry, answer_key
from onewhole.statements.statement import Statement
from onewhole.writers.formula import formula
from onewhole.writers.frame import frame, named
from onewhole.writers.printed import Json, Printed


def key_page(sheet: Sheet) -> Printed:
    """Return the answer key; equal forms are named and none is demanded (4.NF asks for no form)."""
    data = frame(sheet.header, title="Answer key", small=named(sheet.header))
    answers = [answer_row(entry) for entry in answer_key(sheet)]
    return Printed("key", data | {"footer": "For the teacher", "answers": answers})


def answer_row(entry: KeyEntry) -> Json:
    """Return one problem's row of the key."""
    row: Json = {
        "label": f"{entry.problem.label}.",
        "formula": formula(entry.problem.statement),
        "answer": formula(entry.answer),
        "note": _note(entry.problem.statement),
    }
    if entry.forms:
        row["also"] = [formula(form) for form in entry.forms]
    return row


def _note(statement: Statement) -> str:
    asked = needs(statement)
    notes = [
        "regroup" if asked.regrouping else "no regrouping",
        *(["a whole number first"] if asked.whole_first else []),
        *([f"unlike {'denominators' if asked.denominators else 'units'}"] if asked.renaming else []),
    ]
    return ", ".join(notes).capitalize() + "."
