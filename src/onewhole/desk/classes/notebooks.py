"""The notebook of a class: read before a night, written after it."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path

from onewhole.desk.keep.error_location import error_location
from onewhole.desk.marking.mark import Marked, page_name
from onewhole.desk.page.sheets import sheet_in
from onewhole.errors import Fault, OnewholeError
from onewhole.findings.night_failed import NightFailed
from onewhole.languages.english.nights_told import night_failed_told
from onewhole.marking.diagnosis.notebook import Notebook, Tonight, failed_night, good_until
from onewhole.marking.diagnosis.notebook_text import notebook_text, read_notebook
from onewhole.marking.grouping.night_of import night_of
from onewhole.notations.sentences.text import text_of
from onewhole.presses.files import write
from onewhole.presses.texts import read_text

__all__ = ["Tonight", "and_tonight", "failures_told", "keep", "opened", "tonight_in"]


def tonight_in(path: Path, on: date) -> Tonight:
    """Return the notebook in a file, for a night of that day; one that is not there yet is empty.

    Raises NotebookError with the place of what cannot be read.
    """
    text = read_text(path) if path.exists() else ""
    return Tonight(read_notebook(text, str(path)), on)


@contextmanager
def opened(path: Path | None, on: date, sheet: Path, answers: Path) -> Iterator[Tonight | None]:
    """Give the notebook in a file for the night of a page; None where there is no file.

    Where the program fails meanwhile on tonight's answers, that is noted in it: the next nights are read
    without this one, and the same page of the same day replaces it. The fault is raised again. A refusal of
    what was typed is no fault, and without answers nothing failed on them. Raises NotebookError.
    """
    if path is None:
        yield None
        return
    tonight = tonight_in(path, on)
    try:
        yield tonight
    except Exception as fault:
        ours = isinstance(fault, Fault) or not isinstance(fault, OnewholeError)
        if ours and answers.exists():
            failed = NightFailed(tonight.on, page_name(sheet_in(sheet)), error_location(fault))
            book = tonight.notebook.and_night(failed_night(failed))
            write(path, notebook_text(book).encode(), private=True)
        raise


def failures_told(tonight: Tonight) -> tuple[str, ...]:
    """Return what is told of the nights on which the program failed, as long as their findings would be good.

    >>> failures_told(Tonight(Notebook(), date(2026, 11, 24)))
    ()
    """
    recent = (one for one in tonight.notebook.failures if one.on <= tonight.on <= good_until(one.on))
    return tuple(text_of(night_failed_told(one)) for one in recent)


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
