"""How a class prints; a page and a night printed that way."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from io import BytesIO
from pathlib import Path

import pikepdf
import pytest
from msgspec.structs import replace

from onewhole.desk.classes.class_records import NotThere, Store, open_book, start_room
from onewhole.desk.classes.page_for import give_page_to
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.classes.week import Next, NightStep, week
from onewhole.desk.page.class_prints import (
    USUAL,
    DoesNotFit,
    printed_night,
    printed_typed,
    prints_of,
    prints_text,
    set_prints,
)
from onewhole.desk.page.kept_pages import set_page
from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage
from onewhole.errors import InputError
from onewhole.store.settings import set_setting
from onewhole.store.steps import steps_of
from tests.kit import pdf

TODAY = date(2026, 11, 24)
NOW = datetime(2026, 11, 24, 16, tzinfo=UTC)
LATER = NOW + timedelta(hours=1)
KITES = "title: Kites/tails\n\n1. 5 3/8 - 2 5/8\n2. 5 - 2\n"
TWO_AND_KEY = PrintChoice((PrintPart(SheetPage.PUPIL, 2), PrintPart(SheetPage.KEY)))
KEY_ALONE = PrintChoice((PrintPart(SheetPage.KEY),))


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two pupils, and another."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    start_room(made, "Room 14", 2, NOW)
    yield made
    made.close()


def next_step(book: Store) -> Next:
    """What the class's one night waits for."""
    return week(book, 1, TODAY).shown[0].nights[0].next


def test_each_class_keeps_its_own_choice(book: Store) -> None:
    """Of two windows the second is told; what cannot be read any more is the usual choice."""
    assert prints_of(book, 1) == USUAL
    set_prints(book, 1, TWO_AND_KEY, saw=prints_text(USUAL))
    assert (prints_of(book, 1), prints_of(book, 2)) == (TWO_AND_KEY, USUAL)
    with pytest.raises(ChangedMeanwhile, match="2 copies of the pupils’ page, the answers"):
        set_prints(book, 1, KEY_ALONE, saw=prints_text(USUAL))
    with pytest.raises(NotThere):
        set_prints(book, 3, KEY_ALONE)
    set_setting(book, "prints of class 2", '{"parts":[]}')
    assert prints_of(book, 2) == USUAL


def test_a_night_is_printed_as_its_class_prints(book: Store) -> None:
    """In its order, with its copies, under a name that says what it is; then the night is printed."""
    night = set_page(book, 1, None, KITES, day=TODAY, now=NOW).night.number
    set_prints(book, 1, KEY_ALONE)
    printed_night(book, 1, night, NOW)
    assert next_step(book) is Next.PRINT, "the answers alone are not what goes home"
    set_prints(book, 1, TWO_AND_KEY)
    made = printed_night(book, 1, night, LATER)
    assert made.name == "Kites-tails, to print.pdf"
    first, second, key = pdf.words(made.content)
    assert first == second
    assert "Name" in first
    assert "Answer key" in key
    assert steps_of(book, 1)[night] == {NightStep.PRINTED: LATER}
    with pytest.raises(NotThere):
        printed_night(book, 1, 9, NOW)


@pytest.mark.more("desk/page/test_fitting.py")
def test_how_close_the_problems_stand_is_kept_too(book: Store) -> None:
    """It speaks instead of the page's own setting; where it cannot be, the nearest is told, and made."""
    many = "title: Many\nfit: 3\n\n" + "\n".join(f"{at}. {at + 5} 1/6 - 2 5/6" for at in range(1, 41))
    pupil = PrintChoice((PrintPart(SheetPage.PUPIL),))
    assert pdf.pages(printed_typed(book, 1, many, "pupil", NOW).content) == 3
    set_prints(book, 1, replace(pupil, fit="1"))
    with pytest.raises(DoesNotFit, match=r"It does not fit on 1 page\. The nearest is 2 pages"):
        printed_typed(book, 1, many, "together", NOW)
    assert pdf.pages(printed_typed(book, 1, many, "together", NOW, nearest=True).content) == 2
    assert pdf.pages(printed_typed(book, 1, many, "key", NOW).content) == 3, "a key is not fitted"
    set_prints(book, 1, replace(pupil, fit="room"))
    assert pdf.pages(printed_typed(book, 1, many, "together", NOW).content) == 6
    assert prints_text(prints_of(book, 1)) == "the pupils’ page; with room to write"


def test_each_pupil_has_a_copy_with_the_code(book: Store) -> None:
    """Whoever got the page of the night, or is in the class today; the marks are the class's choice."""
    pupil = PrintPart(SheetPage.PUPIL, 9)
    set_prints(book, 1, PrintChoice((pupil,), fit="1", marks="lines", each_pupil=True))
    assert prints_text(prints_of(book, 1)) == (
        "the pupils’ page for each pupil; fitted on 1 page; marks, and a line for each answer"
    )
    night = set_page(book, 1, None, KITES, day=TODAY, now=NOW).night.number
    made = [printed_night(book, 1, night, NOW), printed_typed(book, 1, KITES, "together", NOW)]
    for one in made:
        texts = pdf.words(one.content)
        assert ["K01" in text for text in texts] == [True, False]
        assert ["K02" in text for text in texts] == [False, True]
    give_page_to(book, 1, night, ["K02"], now=NOW, by="teacher")
    assert [
        ("K01" in text, "K02" in text) for text in pdf.words(printed_night(book, 1, night, NOW).content)
    ] == [(False, True)]
    alone = pdf.words(printed_typed(book, 1, KITES, "pupil", NOW).content)
    assert ["Code" in text and "K01" not in text for text in alone] == [True], "one to look at"


def test_one_page_of_what_is_typed(book: Store) -> None:
    """Only a night with just this page is printed, and only by the pupils' page."""
    set_page(book, 1, None, KITES, day=TODAY, now=NOW)
    printed_typed(book, 1, KITES, "key", NOW)
    printed_typed(book, 1, KITES.replace("5 - 2", "6 - 2"), "pupil", NOW)
    assert next_step(book) is Next.PRINT
    made = printed_typed(book, 1, KITES, "pupil", NOW)
    assert next_step(book) is Next.SHOW
    assert made.name == "Kites-tails, the pupils’ page.pdf"
    with pikepdf.open(BytesIO(made.content)) as found:
        assert found.docinfo["/Title"] == "Kites/tails"


def test_printed_before_it_is_set_is_printed(book: Store) -> None:
    """From the moment of printing; another class, another page and the answers alone are not."""
    printed_typed(book, 1, KITES, "key", NOW)
    printed_typed(book, 1, KITES.replace("5 - 2", "6 - 2"), "together", NOW)
    printed_typed(book, 2, KITES, "together", NOW)
    kept = set_page(book, 1, None, KITES, day=TODAY, now=NOW)
    assert next_step(book) is Next.PRINT
    other = set_page(book, 2, kept.kept.number, KITES, day=TODAY, now=LATER)
    assert steps_of(book, 2)[other.night.number] == {NightStep.PRINTED: NOW}
    again = set_page(book, 1, None, KITES.replace("5 - 2", "6 - 2"), day=TODAY, now=LATER)
    assert steps_of(book, 1)[again.night.number] == {NightStep.PRINTED: NOW}


def test_no_such_page_to_print(book: Store) -> None:
    """It is refused, and so is a page that cannot be read; neither is remembered as printed."""
    with pytest.raises(InputError, match="no such page"):
        printed_typed(book, 1, KITES, "kite", NOW)
    with pytest.raises(InputError, match="a number is missing"):
        printed_typed(book, 1, "1. 5 -", "together", NOW)
    set_page(book, 1, None, KITES, day=TODAY, now=NOW)
    assert next_step(book) is Next.PRINT
