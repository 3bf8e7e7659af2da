"""What one click prints, asked without a browser."""

from collections.abc import Iterator
from io import BytesIO
from pathlib import Path
from urllib.parse import unquote
from zipfile import ZipFile

import pytest

from onewhole.desk.classes.class_records import night_pages
from onewhole.desk.classes.rosters import roster_of
from onewhole.desk.page.class_prints import prints_of
from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage
from onewhole.findings.own_page import OwnPage
from onewhole.store.own_pages import keep_own_page
from onewhole.store.steps import NightStep, steps_of
from tests.kit import pdf
from tests.kit.doors import Opened
from tests.kit.forms import form_to
from tests.kit.rounds import lived_in

AT = "/mine/1/printing"


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path) as made:
        yield made


def test_a_choice_is_kept_and_printed_in_one_click(door: Opened) -> None:
    """The order and the copies; the PDF opens in a tab under a name that a teacher understands."""
    form = form_to(door.get(AT).text, AT)
    assert (form.value("place_pupil"), form.value("copies_pupil"), form.value("place_family")) == (
        "1",
        "1",
        "4",
    )
    typed = {
        "place_pupil": "2",
        "copies_pupil": "3",
        "place_key": "1",
        "place_workings": "",
        "place_family": "",
    }
    fields = dict(form.filled(**typed))
    assert door.post(AT, **fields).goes == f"{AT}#kept"
    assert prints_of(door.door.books["mine"], 1) == PrintChoice(
        (PrintPart(SheetPage.KEY), PrintPart(SheetPage.PUPIL, 3))
    )
    assert "3 copies of the pupils’ page" in door.get("/mine/1/page").text
    came = door.client.post(
        "/mine/1/night/10/printed", data={"csrf_token": door.csrf_token}, headers=door.origin
    )
    how, _, name = came.headers["content-disposition"].partition("; filename*=UTF-8''")
    assert (how, came.headers["content-type"]) == ("inline", "application/pdf")
    assert unquote(name).endswith(", to print.pdf")
    assert "Answer key" in pdf.words(came.content)[0]


@pytest.mark.more("desk/page/test_fitting.py")
def test_where_it_does_not_fit_it_says_so_and_offers_the_nearest(door: Opened) -> None:
    """Nothing is printed and no step is kept before the teacher takes the nearest."""
    form = dict(form_to(door.get(AT).text, AT).fields) | {"fit": "1"}
    assert door.post(AT, **form).status == 303
    assert form_to(door.get(AT).text, AT).value("fit") == "1"
    many = "title: Many\n\n" + "\n".join(f"{at}. {at + 5} 1/6 - 2 5/6" for at in range(1, 41))
    door.post("/mine/1/page/set", typed=many, sheet="", day="2026-12-01")
    number = night_pages(door.door.books["mine"], 1)[-1].night.number
    at = f"/mine/1/night/{number}/printed"
    told = door.post(at)
    assert (told.status, "It does not fit on 1 page: 2 pages are the least" in told.text) == (200, True)
    assert number not in steps_of(door.door.books["mine"], 1)
    came = door.post(at, **dict(form_to(told.text, at).fields))
    assert sum("Many" in text and "Answer key" not in text for text in pdf.words(came.content)[:2]) == 2
    assert NightStep.PRINTED in steps_of(door.door.books["mine"], 1)[number]
    typed = form_to(door.post("/mine/1/page/printed", typed=many, print="pupil").text, "/mine/1/page/printed")
    assert typed.value("typed") == many
    assert pdf.pages(door.post("/mine/1/page/printed", **dict(typed.fields)).content) == 2


@pytest.mark.more("presses/test_page_map.py")
def test_marks_and_a_copy_for_each_pupil(door: Opened) -> None:
    """Kept for the class and told; every copy has its pupil's code, and the answers have no marks."""
    form = dict(form_to(door.get(AT).text, AT).fields) | {"place_workings": "", "place_family": ""}
    assert door.post(AT, **form | {"marks": "windows", "each": "yes"}).status == 303
    shown = door.get(AT).text
    assert form_to(shown, AT).value("marks") == "windows"
    assert "the pupils’ page for each pupil, the answers; marks, and windows for whole and fraction" in shown
    assert "Windows show a child that a whole part is wanted" in shown
    book = door.door.books["mine"]
    codes = roster_of(book, night_pages(book, 1)[-1].night).got
    came = door.post(f"/mine/1/night/{night_pages(book, 1)[-1].night.number}/printed").content
    texts = pdf.words(came)
    assert all(
        sum(f"{code}" in text.split() and "Answer key" not in text for text in texts) for code in codes
    )
    assert door.post(AT, **form | {"marks": "boxes"}).status == 422


def test_what_cannot_be_printed_is_told_and_stays_typed(door: Opened) -> None:
    """No page at all, too many copies, a place that is none."""
    form = dict(form_to(door.get(AT).text, AT).fields)
    nothing = door.post(
        AT, **{name: "" if name.startswith("place") else value for name, value in form.items()}
    )
    assert (nothing.status, "Nothing is chosen to be printed" in nothing.text) == (422, True)
    many = door.post(AT, **{**form, "copies_key": "61"})
    assert (many.status, form_to(many.text, AT).value("copies_key")) == (422, "61")
    assert door.post(AT, **{**form, "place_key": "9"}).status == 422
    assert door.post(AT, **{**form, "fit": "9"}).status == 422
    assert door.post("/mine/1/night/99/printed").status == 404
    assert prints_of(door.door.books["mine"], 1) == PrintChoice()


@pytest.mark.parametrize(
    ("kind", "media", "begins"),
    [
        ("pupil.brf", "application/x-brf", b" "),
        ("key-braille.txt", "text/plain; charset=utf-8", "⠀".encode()),
    ],
)
def test_what_is_typed_comes_in_braille(door: Opened, kind: str, media: str, begins: bytes) -> None:
    """From the Page desk, as a file under the page's own name."""
    typed = {"csrf_token": door.csrf_token, "typed": "title: Kite tails\n\n1. 7 2/6 - 3 5/6", "print": kind}
    assert f'value="{kind}"' in door.get("/mine/1/page").text
    came = door.client.post("/mine/1/page/printed", data=typed, headers=door.origin)
    assert (came.status_code, came.headers["content-type"]) == (200, media)
    assert came.content.startswith(begins)
    assert unquote(came.headers["content-disposition"]).endswith(f"Kite tails, {kind}")


def test_the_amounts_come_as_raised_lines(door: Opened) -> None:
    """A picture with its words for each problem drawn as strips, as one PDF; else why there is none."""
    sheet = "title: Tails\n\n1. 7 2/6 - 3 5/6\n2. 304 - 128"
    typed = {"csrf_token": door.csrf_token, "typed": sheet}
    assert 'value="tactile"' in door.get("/mine/1/page").text
    came = door.client.post("/mine/1/page/printed", data={**typed, "print": "tactile"}, headers=door.origin)
    assert (came.status_code, came.headers["content-type"]) == (200, "application/pdf")
    figures = [words for tag, words in pdf.tags(came.content) if tag == "/Figure"]
    assert figures == ["1. 7 2/6 - 3 5/6. Shown: 7 wholes and 2 sixths."]
    assert pdf.empty_tags(came.content) == []
    typed |= {"typed": "1. 304 - 128", "print": "tactile"}
    none = door.client.post("/mine/1/page/printed", data=typed, headers=door.origin)
    assert (none.status_code, "drawn as strips" in none.text) == (422, True)


def test_own_pages_are_saved_as_one_file(door: Opened) -> None:
    """Where nobody reads braille there is no link, and the address says what to do; then a ZIP file."""
    assert "Own pages" not in door.get("/mine/1/week").text
    assert "Nobody who got this page" in door.get("/mine/1/night/10/own").text
    forms = form_to(door.get("/mine/1/class/forms").text, "/mine/1/class/forms")
    code = forms.value("code")
    keep_own_page(door.door.books["mine"], 1, code, OwnPage.BRAILLE)
    assert "/mine/1/night/10/own" in door.get("/mine/1/week").text
    assert "1 pupil;" in door.get(AT).text
    came = door.client.get("/mine/1/night/10/own")
    how, _, name = came.headers["content-disposition"].partition("; filename*=UTF-8''")
    assert (how, came.headers["content-type"]) == ("attachment", "application/zip")
    assert unquote(name).endswith(", own pages.zip")
    assert f"{code}-pupil.brf" in ZipFile(BytesIO(came.content)).namelist()
