"""The limits that docs/browser.md tells are those of the code."""

import re

import pytest

from onewhole.desk.exchange import class_lists, question_package
from onewhole.desk.keep.guessing import WORDS
from onewhole.desk.keep.locked_backup import LARGEST
from onewhole.desk.keep.password import LEAST
from onewhole.marking.reading.tables.cutting import MOST_ROWS
from onewhole.web.access.guard import LONGEST_PATH, LONGEST_QUERY
from onewhole.web.access.sessions import IDLE, MAX_SESSIONS, SHARED_IDLE
from onewhole.web.http.forms import MAX_FIELDS, size
from onewhole.web.http.handling import FILE_SECONDS, FORM_SECONDS, MAX_FORM_BYTES
from onewhole.web.pages import exchange, marking, paste, recording
from onewhole.web.routes import TABLE
from tests.house.plan import ROOT
from tests.kit.routes import ROUTES

PAGE = " ".join((ROOT / "docs" / "browser.md").read_text(encoding="utf-8").split())
ROW = re.compile(r"\| ([^|]+?) \| ([^|]+?) \|")


def told_file(most: int) -> str:
    """Return how the page of files of other programs tells a limit: in whole millions of bytes."""
    return f"{most // 1_000_000} MB"


@pytest.mark.parametrize(
    ("what", "told"),
    [
        ("a form", f"{size(MAX_FORM_BYTES)}, {MAX_FIELDS} fields, {FORM_SECONDS} seconds"),
        ("a column or some cells of answers", size(marking.MOST)),
        (
            "a table of answers, pasted or as a file",
            f"{round(paste.MOST / 2**20)} MiB with its form, {MOST_ROWS} rows and columns",
        ),
        ("a recording of one problem", f"{size(recording.MOST)}, {FILE_SECONDS} seconds to arrive"),
        ("questions as a ZIP file", told_file(question_package.LARGEST)),
        ("a class list", told_file(class_lists.LARGEST)),
        ("a backup", f"{size(LARGEST)}, {FILE_SECONDS} seconds to arrive"),
        ("an address", f"{LONGEST_PATH} signs, {LONGEST_QUERY} after its `?`"),
    ],
)
def test_what_may_be_sent(what: str, told: str) -> None:
    """Each row of the table has the numbers of the code."""
    assert dict(ROW.findall(PAGE))[what] == told


def test_no_row_of_the_table_of_addresses_has_a_limit_that_is_not_told() -> None:
    """Every `max_bytes` is one of those."""
    assert TABLE
    limits = {route.max_bytes for route in ROUTES}
    assert limits == {
        MAX_FORM_BYTES,
        marking.MOST,
        paste.MOST,
        recording.MOST,
        exchange.MOST,
        exchange.MOST_LIST,
        LARGEST,
    }


def test_when_a_session_ends() -> None:
    """Twelve hours here, half an hour elsewhere, so many windows at once."""
    assert (IDLE, SHARED_IDLE) == (12 * 3600, 1800)
    assert "After twelve hours without use" in PAGE
    assert "signed out after half an hour without use" in PAGE
    assert f"At most {MAX_SESSIONS} windows are signed in at once" in PAGE
    assert f"The password has {LEAST} characters or more" in PAGE
    assert all(f"*{word}*" in PAGE for word in WORDS)
