"""The notebook of a class: read before a night, written after it."""

from datetime import date
from pathlib import Path

from onewhole.desk.marking.mark import Marked, page_name
from onewhole.marking.diagnosis.notebook import Notebook, Tonight
from onewhole.marking.diagnosis.notebook_text import notebook_text, read_notebook
from onewhole.marking.grouping.night_of import night_of
from onewhole.presses.files import write
from onewhole.presses.texts import read_text


def tonight_in(path: Path, on: date) -> Tonight:
    """Return the notebook in a file, for a night of that day; one that is not there yet is empty.

    Raises NotebookError with the place of what cannot be read.
    """
    text = read_text(path) if path.exists() else ""
    return Tonight(read_notebook(text, str(path)), on)


def and_tonight(marked: Marked) -> Notebook:
    """Return the notebook with tonight in it. ValueError when the night was read without a notebook."""
    if marked.tonight is None:
        msg = "this night was read without a notebook"
        raise ValueError(msg)
    on = marked.tonight.on
    page, counts = page_name(marked.sheet), marked.weighed.counts
    night = night_of(on, page, counts, marked.findings, marked.groups, pupils=marked.pupils)
    return marked.tonight.notebook.and_night(night)


def keep(marked: Marked, path: Path) -> None:
    """Write the notebook with tonight in it to a file (mode 0600); the old one stays whole until it is."""
    write(path, notebook_text(and_tonight(marked)).encode(), private=True)
