"""Pages for home in further languages: how a sheet names them, and what is printed."""

import pytest

from onewhole.desk.page.print_pages import sheet_pages
from onewhole.errors import InputError
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet

PROBLEM = "\n\n1. 7 2/6 - 3 5/6\n"


@pytest.mark.parametrize(
    "typed",
    [
        "languages: en, es\nwhole: strip of paper",
        "languages: es\nwhole: tira de papel",
        "languages: es\nwhole: una mesa\nsay: trade",
        "languages: es, en",
        "languages: en, es\nwhole: sandwich\nwhole at home: un sándwich, sándwiches",
    ],
)
def test_languages_are_written_as_they_are_read(typed: str) -> None:
    """A sheet that is written and read again is the same sheet."""
    sheet = read_sheet(typed + PROBLEM)
    assert read_sheet(write_sheet(sheet)) == sheet


def test_a_page_for_home_is_printed_in_each_language() -> None:
    """One a language, named after it; the class's word for a whole is known, or typed, or a whole."""
    known, typed, unknown = (
        dict(sheet_pages(WorkedSheet(read_sheet(f"languages: en, es\nwhole: {whole}{PROBLEM}"))))
        for whole in ("strip of paper", "sandwich\nwhole at home: una torta", "sandwich")
    )
    assert [*known] == ["pupil", "key", "workings", "family", "family-es"]
    assert known["family"].data["lang"] == "en-US"
    assert known["family-es"].data["lang"] == "es-US"
    assert "tira de papel" in str(known["family-es"].data)
    assert "torta" in str(typed["family-es"].data)
    assert "un entero" in str(unknown["family-es"].data)
    for page in (known, typed, unknown):
        assert "regroup" not in str(page["family-es"].data)


def test_a_class_that_works_in_spanish_has_spanish_pages() -> None:
    """All pages are in its language, and there is one page for home."""
    sheet = read_sheet(f"languages: es\nwhole: una tira{PROBLEM}")
    pages = dict(sheet_pages(WorkedSheet(sheet)))
    assert [*pages] == ["pupil", "key", "workings", "family"]
    assert {page.data["lang"] for page in pages.values()} == {"es-US"}
    assert pages["pupil"].data["name"] == "Nombre"


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("languages: en, xx", "no language that pages are printed in"),
        ("whole at home: una tira", "names a whole in another language beside the class's own"),
        ("languages: en, es\nwhole at home: una", "names nothing"),
    ],
)
def test_what_cannot_be_used_is_refused(typed: str, says: str) -> None:
    """With what to do next."""
    with pytest.raises(InputError, match=says):
        read_sheet(typed + PROBLEM)
