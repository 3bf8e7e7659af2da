"""Pupils who read braille or large print have pages of their own: kept, printed, said where it is not so."""

from datetime import UTC, date, datetime
from io import BytesIO
from pathlib import Path
from zipfile import ZipFile

import pytest

from onewhole.desk.classes.class_list import copy_class, new_class
from onewhole.desk.classes.class_records import NotThere, set_night
from onewhole.desk.classes.own_forms import form_typed, forms_of_class, forms_on, keep_forms, own_readers
from onewhole.desk.classes.papers import keep_papers
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.page.own_pages import own_pages
from onewhole.desk.page.own_pages_of_night import own_pages_of_night
from onewhole.errors import InputError
from onewhole.findings.own_page import OwnPage
from onewhole.sheets.reading import read_sheet
from onewhole.store.keeping import all_on_pupil, erase_pupil
from onewhole.store.opening import Store, open_store
from onewhole.store.own_pages import own_pages_of
from tests.kit import pdf
from tests.kit.braille_reading import line_read

NOW = datetime(2026, 11, 25, 16, tzinfo=UTC)
DAY = date(2026, 11, 25)
TYPED = "title: Kite tails\nfit: 1\n\n1. 7 2/6 - 3 5/6\n2. 304 - 128\n"


@pytest.fixture
def book(tmp_path: Path) -> Store:
    """A class of three with one night."""
    made = open_store(tmp_path / "a.class")
    new_class(made, "Room 12", 3, ("Delta", "Sled", "Moth"), NOW)
    set_night(made, 1, TYPED, DAY, NOW)
    return made


def test_the_form_is_kept_copied_given_out_and_erased(book: Store) -> None:
    """Typed in any case; nothing takes it back; a copied class has it; the child's rows tell it and go."""
    assert keep_forms(book, 1, {"K02": "Braille", "K03": "large", "K01": ""}, {}) == 2
    assert [row.typed for row in forms_of_class(book, 1)] == ["", "braille", "large print"]
    assert forms_on(book, 1, DAY) == {"K02": OwnPage.BRAILLE, "K03": OwnPage.LARGE}
    assert all_on_pupil(book, 1, "K02")["reads"] == "braille"
    copied = copy_class(book, 1, "Room 13", NOW)
    assert own_pages_of(book, copied.number) == {"K02": OwnPage.BRAILLE, "K03": OwnPage.LARGE}
    assert keep_forms(book, 1, {"K03": " "}, {"K03": "large print"}) == 1
    erase_pupil(book, 1, "K02")
    assert own_readers(book, 1) == 0
    with pytest.raises(NotThere):
        keep_forms(book, 1, {"K02": "braille"}, {})


def test_another_word_or_another_window_is_told(book: Store) -> None:
    """What is no form is named with those there are; nothing is kept then, nor over another window."""
    with pytest.raises(InputError, match="“moon type” is no form") as refused:
        keep_forms(book, 1, {"K01": "braille", "K02": "moon type"}, {})
    assert refused.value.remedy == "Write one of: braille, large print, or nothing."
    assert own_readers(book, 1) == 0
    keep_forms(book, 1, {"K01": "braille"}, {})
    with pytest.raises(ChangedMeanwhile, match="K01 Delta is “braille”"):
        keep_forms(book, 1, {"K01": "large print"}, {"K01": ""})
    assert form_typed("LARGE PRINT") is OwnPage.LARGE


def test_the_pages_are_those_of_the_sheet(book: Store) -> None:
    """Braille says what is typed; large print carries the code and is not fitted on one page."""
    files = {
        f"{one.page}.{one.ending}": one.content
        for one in own_pages(read_sheet(TYPED), {"K02": OwnPage.BRAILLE, "K03": OwnPage.LARGE}, NOW)
    }
    assert list(files) == [
        *("K02-pupil.brf", "K02-pupil-braille.txt", "K02-key.brf", "K02-key-braille.txt"),
        *("K02-raised-lines.pdf", "K03-pupil-large.pdf"),
    ]
    assert files["K02-pupil.brf"].count(b"\f") == 1
    told = " ".join(line_read(line) for line in files["K02-key-braille.txt"].decode().splitlines())
    assert "Answer key" in told
    assert "176" in told
    assert "K03" in pdf.words(files["K03-pupil-large.pdf"])[0]
    assert pdf.words(files["K02-raised-lines.pdf"])


def test_a_night_has_those_who_got_its_page(book: Store) -> None:
    """One ZIP file for whoever got the page and reads another form; with nobody, what to do is told."""
    with pytest.raises(InputError, match="Nobody who got this page"):
        own_pages_of_night(book, 1, 1, NOW)
    keep_forms(book, 1, {"K02": "braille", "K03": "large print"}, {})
    keep_papers(book, 1, 1, {"K03": "no page"}, {}, now=NOW, by="teacher")
    made = own_pages_of_night(book, 1, 1, NOW)
    assert (made.name, made.media) == ("Kite tails, own pages.zip", "application/zip")
    names = ZipFile(BytesIO(made.content)).namelist()
    assert "K02-pupil.brf" in names
    assert not any(name.startswith("K03") for name in names)
    assert made.content == own_pages_of_night(book, 1, 1, NOW).content
