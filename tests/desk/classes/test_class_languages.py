"""The languages of a class: kept, used by all that is printed for it, and behind a sheet's own."""

from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from msgspec.structs import replace

from onewhole.desk.classes.class_languages import chosen_languages, languages_of, set_languages
from onewhole.desk.classes.class_list import copy_class
from onewhole.desk.classes.class_records import Store, night_page, open_book, spoken_night, start_room
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.page.class_prints import printed_night, printed_typed, set_prints
from onewhole.desk.page.kept_pages import set_page
from onewhole.desk.page.live_page import laid
from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage
from onewhole.desk.page.printed_ways import class_ways
from onewhole.desk.walkthrough.lesson import lesson
from onewhole.errors import InputError
from onewhole.sheets.class_languages import in_languages
from onewhole.sheets.header import CornerMarks
from onewhole.sheets.page_marks import page_key
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.settings import set_setting
from tests.kit import pdf

TODAY = date(2026, 11, 24)
NOW = datetime(2026, 11, 24, 16, tzinfo=UTC)
PROBLEM = "\n\n1. 7 2/6 - 3 5/6\n"
TYPED = f"title: Kites\nwhole: strip{PROBLEM}"
OWN = f"title: Kites\nlanguages: en\nwhole: strip{PROBLEM}"
FOR_HOME = PrintChoice((PrintPart(SheetPage.PUPIL), PrintPart(SheetPage.FAMILY)))


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two pupils, and another."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    start_room(made, "Room 14", 2, NOW)
    set_prints(made, 1, FOR_HOME)
    yield made
    made.close()


def test_each_class_keeps_its_own(book: Store) -> None:
    """Of two windows the second is told; a copy of a class speaks as it does; what cannot be read is none."""
    assert languages_of(book, 1) == ""
    set_languages(book, 1, "EN,es", saw="")
    assert (languages_of(book, 1), languages_of(book, 2)) == ("en, es", "")
    with pytest.raises(ChangedMeanwhile, match="“en, es” since another window changed it"):
        set_languages(book, 1, "pt", saw="")
    with pytest.raises(InputError, match="no language that pages are printed in"):
        set_languages(book, 1, "en, xx")
    assert languages_of(book, copy_class(book, 1, "Room 12 b", NOW).number) == "en, es"
    set_languages(book, 1, chosen_languages("en", []), saw="en, es")
    assert languages_of(book, 1) == ""
    set_setting(book, "languages of class 2", "en, xx")
    assert languages_of(book, 2) == ""


def test_both_pages_for_home_are_printed_for_the_class(book: Store) -> None:
    """For a night and for what is typed on the desk; not where the sheet names its own languages."""
    night = set_page(book, 1, None, TYPED, day=TODAY, now=NOW).night.number
    before = pdf.words(printed_night(book, 1, night, NOW).content)
    set_languages(book, 1, "en, es")
    for made in (printed_night(book, 1, night, NOW), printed_typed(book, 1, TYPED, "together", NOW)):
        pupil, english, spanish = pdf.words(made.content)
        assert [pupil, english] == before
        assert "Página para la casa" in spanish
        assert "tira" in spanish
    assert len(pdf.words(printed_typed(book, 1, OWN, "together", NOW).content)) == 2
    assert len(pdf.words(printed_typed(book, 2, TYPED, "family", NOW).content)) == 1


def test_a_page_for_home_alone_is_printed_in_every_language(book: Store) -> None:
    """As it is together with the others."""
    set_languages(book, 1, "en, es")
    english, spanish = pdf.words(printed_typed(book, 1, TYPED, "family", NOW).content)
    assert "Página para la casa" in spanish
    assert english != spanish


def test_a_class_that_works_in_spanish_does_so_everywhere(book: Store) -> None:
    """Pupils' page, what is shown while it is typed, and the walkthrough; its whole is read in Spanish."""
    night = set_page(book, 1, None, TYPED, day=TODAY, now=NOW).night.number
    set_languages(book, 1, "es, en")
    page = spoken_night(book, 1, night)
    assert page.sheet.header.words.wholes == "tiras"
    assert night_page(book, 1, night).sheet.header.words.wholes == "strips"
    assert lesson(WorkedSheet(page.sheet)).words.language == "es-US"
    pupil, spanish, english = pdf.words(printed_night(book, 1, night, NOW).content)
    assert "Nombre" in pupil
    assert "Página para la casa" in spanish
    assert "A page for home" in english
    drawn = [laid(TYPED, NOW, languages).pages for languages in ("", "en, es", "es")]
    assert drawn[0] == drawn[1] != drawn[2]
    assert laid(OWN, NOW, "es").pages == laid(OWN, NOW).pages


@pytest.mark.parametrize("whole", ["tira", "una tira, tiras", "strip"])
def test_words_are_read_as_if_the_head_named_the_languages(whole: str) -> None:
    """What was read in English first is read anew; an English story of a class's own is left out."""
    head = f"title: Kites\nwhole: {whole}\nsay: trade\nstories: the trail club walks"
    spoken = in_languages(read_sheet(head + PROBLEM), "es").header.words
    assert (spoken.whole, spoken.wholes, spoken.feminine, spoken.regroup) == ("tira", "tiras", True, "trade")
    assert spoken.story is None


@pytest.mark.parametrize("was", ["", "en, es", "es", "es, en", "pt"])
def test_marked_papers_are_known_whatever_the_class_says_later(was: str) -> None:
    """A page is known by the key that it was printed with, also after the class's languages are others."""
    typed = read_sheet(TYPED)
    printed = in_languages(typed, was)
    marked = replace(printed, header=replace(printed.header, marks=CornerMarks.LINES))
    found = class_ways(typed)[page_key(marked)]
    assert found.sheet.header.words == printed.header.words
    assert WorkedSheet(found.sheet).header.marks is CornerMarks.LINES


def test_pages_for_home_change_no_key() -> None:
    """The pupils' page is the same page with them and without."""
    keys = {page_key(read_sheet(f"{head}{TYPED}")) for head in ("", "languages: en\n", "languages: en, es\n")}
    assert len(keys) == 1
