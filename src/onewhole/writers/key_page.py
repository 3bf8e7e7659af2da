"""The answer key: every answer, and the equal forms that are right too."""

from onewhole.languages.language import Language
from onewhole.languages.page_words import PageWords
from onewhole.languages.table import spoken_by
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.shared_plots import shared_plots
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.drawing import plot_drawn
from onewhole.writers.formula import formula, set_words
from onewhole.writers.frame import frame, named
from onewhole.writers.printed import Json, Printed


def key_page(worked: WorkedSheet) -> Printed:
    """Return the answer key; equal forms are named and none is demanded (4.NF asks for no form)."""
    language = spoken_by(worked.header.words)
    page = language.page
    data = frame(worked.header, title=page.answer_key, small=named(worked.header))
    plots = dict(shared_plots(worked.sheet.items))
    answers = [
        answer_row(entry, language, worked.standards[entry.label])
        | (plot_drawn(plots[entry.label].plot, worked.header) if entry.label in plots else {})
        for entry in worked.problems
    ]
    return Printed("key", data | {"footer": page.for_the_teacher, "heads": heads(page), "answers": answers})


def answer_row(entry: WorkedProblem, language: Language, standard: str) -> Json:
    """Return one problem's row of the key, with the code of its standard."""
    row: Json = {
        "label": f"{entry.label}.",
        "standard": standard,
        "formula": formula(entry.statement, language=language),
        "answer": formula(entry.answer, language=language),
    }
    if noted := language.key.needs(entry.needs):
        row["note"] = set_words(noted)
    if entry.forms:
        row["also"] = [formula(form, language=language) for form in entry.forms]
    return row


def heads(page: PageWords) -> Json:
    """Return the words over the columns of a key."""
    return {
        "label": page.number,
        "problem": page.problem,
        "answer": page.answer,
        "also": page.also_right,
        "note": page.note,
    }
