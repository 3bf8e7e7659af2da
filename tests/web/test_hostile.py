"""A thousand hostile names and cells end as text, on every page and in every file that is given out."""

import csv
import json
from collections.abc import Iterator, Mapping
from html.parser import HTMLParser
from io import StringIO
from pathlib import Path

import pytest
from pypdfium2 import PdfDocument

from onewhole.desk.classes.class_records import room
from onewhole.store.keeping import backup_bytes
from onewhole.web.access.guard import POLICY
from tests.kit.browsers import CHROMIUM, chromium, window
from tests.kit.doors import Opened, served
from tests.kit.hostile import BREAKS, hostile
from tests.kit.how_much import sample
from tests.kit.rounds import address, lived_in
from tests.kit.routes import ROUTES
from tests.kit.untried import NO_CHROMIUM

PAGES = [route for route in ROUTES if route.method == "GET"]
NIGHTS = (1, 2, 3, 4, 5)
#: So many hostile titles are set as pages.
TRIED = sample(20, 25, 50)
#: Stands between two texts of a page, and in none.
APART = "\0"


class Read(HTMLParser):
    """A page as a browser reads it: elements with their attributes, its text, the values of attributes."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.shapes: set[tuple[str, str]] = set()
        self.texts: list[str] = []
        self.feed(text)
        self.close()
        self.together = APART.join(self.texts)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note an element and its attributes."""
        self.shapes |= {(tag, ""), *((tag, name) for name, _ in attrs)}
        self.texts += [value for _, value in attrs if value]

    def handle_data(self, data: str) -> None:
        """Note a piece of text."""
        self.texts.append(data)

    def handle_comment(self, data: str) -> None:  # noqa: ARG002 - as the parser calls it
        """Note a comment: a page of ours has none."""
        self.shapes.add(("!--", ""))

    def holds(self, text: str) -> bool:
        """Say whether a text stands there exactly, as text or as the value of an attribute."""
        return text in self.together


def _sheet(title: str, whole: str) -> str:
    return f"title: {title}\nwhole: {whole}\nwholes: {whole}\n1. 3 1/4 - 1 3/4\n2. 5 1/8 + 2 5/8\n"


def fill(door: Opened) -> tuple[list[str], list[str]]:
    """Type hostile names and cells into the invented class; return the names and the cells that are kept."""
    names = [text for text in hostile(96) if len(text) <= 80 and "\t" not in text][:72]
    for first, room_number in ((0, 1), (24, 2), (48, 3)):
        some = names[first : first + 24]
        if room_number > 1:
            assert door.post("/welcome", name=names[first], pupils="24", names="").status == 303
        pupils = room(door.door.books["mine"], room_number).pupils
        codes, was = [pupil.code for pupil in pupils], {pupil.code: pupil.name or "" for pupil in pupils}
        sent = [("csrf_token", door.csrf_token)]
        for code, one in zip(codes, some, strict=True):
            sent += [("code", code), ("name", one), ("saw", was[code])]
        body = "&".join(f"{key}={_percent(value)}" for key, value in sent)
        kind = {**door.origin, "Content-Type": "application/x-www-form-urlencoded"}
        came = door.client.post(f"/mine/{room_number}/class/names", content=body, headers=kind)
        assert came.status_code == 303, came.text
    assert (
        door.post(
            "/mine/1/class/name", called=names[0], saw_called=room(door.door.books["mine"], 1).name
        ).status
        == 303
    )
    return names, _cells(door)


def _cells(door: Opened) -> list[str]:
    cells: list[str] = []
    texts = iter(hostile(3000))
    for night in NIGHTS:
        grid = door.client.get(f"/mine/1/night/{night}/marking/now").json()["cells"]
        sent = [[cell["code"], cell["label"], next(texts), cell["text"]] for cell in grid]
        told = door.client.post(
            f"/mine/1/night/{night}/marking/keep",
            data={"csrf_token": door.csrf_token, "cells": json.dumps(sent)},
            headers=door.origin,
        )
        kept = told.json()
        assert (told.status_code, kept["clashes"]) == (200, [])
        cells += [one["text"] for one in kept["kept"]]
    return cells


def _percent(text: str) -> str:
    return "".join(f"%{byte:02X}" for byte in text.encode())


@pytest.fixture(scope="module")
def usual(tmp_path_factory: pytest.TempPathFactory) -> Iterator[set[tuple[str, str]]]:
    """The elements and attributes of every page where nothing hostile was typed."""
    with lived_in(tmp_path_factory.mktemp("usual")) as door:
        shapes: set[tuple[str, str]] = set()
        files: set[str] = set()
        for night in (*NIGHTS, NIGHTS[0]):
            for route in PAGES:
                if route.path not in files:
                    came = door.client.get(address(route, night=str(night)))
                    if _is_page(came.headers):
                        shapes |= Read(came.text).shapes
                    elif came.status_code == 200:
                        files.add(route.path)
        yield shapes


@pytest.fixture
def lived(tmp_path: Path) -> Iterator[Opened]:
    """A door on the invented class."""
    with lived_in(tmp_path) as door:
        yield door


@pytest.fixture(scope="module")
def filled(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Opened, list[str], list[str]]]:
    """A door on a class in which everything typed is hostile."""
    with lived_in(tmp_path_factory.mktemp("hostile")) as door:
        yield door, *fill(door)


def _is_page(headers: Mapping[str, str]) -> bool:
    kind, policy = headers.get("content-type", ""), headers.get("content-security-policy", "")
    return kind.startswith("text/html") and policy == POLICY


def test_there_are_a_thousand(filled: tuple[Opened, list[str], list[str]]) -> None:
    """All of them are kept exactly as typed."""
    _, names, cells = filled
    print(f"{len(names)} names, {len(cells)} cells")
    assert len(names) == 72
    assert len(set(names)) + len(set(cells)) >= 1000


@pytest.mark.asvs("V1.1.2", "V1.2.1")
@pytest.mark.parametrize("route", PAGES, ids=lambda route: route.path)
def test_a_page_has_no_element_of_theirs(
    filled: tuple[Opened, list[str], list[str]], usual: set[tuple[str, str]], route: object
) -> None:
    """Elements and attributes are those of the pages where nothing hostile was typed."""
    door, *_ = filled
    row = next(one for one in PAGES if one is route)
    for asked in sorted({address(row, night=str(night)) for night in NIGHTS}):
        came = door.client.get(asked)
        assert came.status_code < 500
        if _is_page(came.headers):
            strange = {one for one in Read(came.text).shapes - usual if one[0] not in MATHS}
            assert not strange
            assert "fly(" not in "".join(_scripts(came.text))


#: Elements of formulas differ from night to night; none of them does anything.
MATHS = {
    "math",
    "mrow",
    "mn",
    "mo",
    "mi",
    "mfrac",
    "mtext",
    "mspace",
    "menclose",
    "mstyle",
    "mover",
    "munder",
}


def _scripts(text: str) -> list[str]:
    return [part.partition("</script>")[0] for part in text.split("<script")[1:]]


@pytest.mark.asvs("V1.1.1", "V1.2.1")
def test_names_and_cells_are_shown_as_text(filled: tuple[Opened, list[str], list[str]]) -> None:
    """Exactly as typed, none of them lost or read as markup or as a template."""
    door, names, cells = filled
    pages = [Read(door.client.get(f"/mine/{number}/class").text) for number in (1, 2, 3)]
    for number, name in enumerate(names):
        assert pages[number // 24].holds(name), name
    grids = [Read(door.client.get(f"/mine/1/night/{night}/marking").text) for night in NIGHTS]
    for cell in cells:
        assert any(grid.holds(cell) for grid in grids), cell
    held = [Read(door.client.get(f"/mine/1/pupil/{pupil.code}/held").text)
            for pupil in room(door.door.books["mine"], 1).pupils]  # fmt: skip
    for cell in cells:
        assert any(one.holds(cell) for one in held), cell
    assert not any("4949" in text or text == "49" for page in pages for text in page.texts)


@pytest.mark.asvs("V1.2.10")
def test_a_table_that_is_given_out_holds_no_formula(filled: tuple[Opened, list[str], list[str]]) -> None:
    """No cell of it begins with a sign that begins one, and each still says what was typed."""
    door, _, cells = filled
    given = []
    for pupil in room(door.door.books["mine"], 1).pupils:
        came = door.client.get(f"/mine/1/pupil/{pupil.code}/held.csv")
        assert came.headers["content-disposition"].startswith("attachment")
        given += [
            cell for row in csv.reader(StringIO(came.text.removeprefix("\ufeff"), newline="")) for cell in row
        ]
    assert not [cell for cell in given if cell.startswith(tuple("=+-@\t\r\n＝＋－＠"))]
    told = {cell.removeprefix("'") for cell in given} | set(given)
    assert set(cells) <= told


@pytest.mark.asvs("V1.2.3", "V3.2.1")
def test_what_scripts_read_is_no_page(filled: tuple[Opened, list[str], list[str]]) -> None:
    """JSON says that it is JSON, and no browser guesses otherwise."""
    door, *_ = filled
    for path in ("/mine/1/night/3/marking/now", "/mine/1/pupil/K05/held.json"):
        headers = door.client.get(path).headers
        assert headers["content-type"].startswith("application/json")
        assert headers["x-content-type-options"] == "nosniff"


@pytest.mark.asvs("V1.3.3", "V2.2.1", "V2.2.2")
def test_what_cannot_be_a_name_or_a_cell_is_refused(lived: Opened) -> None:
    """Line ends, NUL, half a sign, ten thousand letters: refused, or read as a blank; no fault."""
    kind = {
        "Content-Type": "application/x-www-form-urlencoded",
        "X-CSRF-Token": lived.csrf_token,
        **lived.origin,
    }
    for text in BREAKS:
        quoted = "".join(f"%{byte:02X}" for byte in text.encode("utf-8", "surrogatepass"))
        for path, field in (
            ("/mine/1/class/name", "saw_called=&called"),
            ("/mine/1/class/add", "more=1&names"),
            ("/welcome", "pupils=1&name"),
            ("/mine/1/night/3/marking/judge", "label=1&text"),
            ("/mine/1/page/live", "typed"),
            ("/mine/1/page/saved", "sheet=&typed"),
        ):
            came = lived.client.post(path, content=f"{field}={quoted}", headers=kind)
            assert came.status_code < 500, path
            assert "set-cookie" not in came.headers
        cells = json.dumps([["K05", "1", text, "1"], ["K06", text, "1", ""], [text, "1", "1", ""]])
        sent = {"csrf_token": lived.csrf_token, "cells": cells}
        came = lived.client.post("/mine/1/night/3/marking/keep", data=sent, headers=lived.origin)
        assert came.status_code < 500
    assert [route for route in PAGES if lived.client.get(address(route)).status_code >= 500] == []


@pytest.mark.more("web/test_foreign_page.py")
def test_a_hostile_page_is_shown_as_text(lived: Opened, usual: set[tuple[str, str]]) -> None:
    """Its title and the class's word for a whole: in the week, at the walkthrough, at the marking."""
    shown = 0
    for number, text in enumerate(hostile(TRIED)):
        line = text.replace("\t", " ").strip()
        day = f"2026-{10 + number // 28:02}-{1 + number % 28:02}"
        came = lived.post("/mine/1/page/set", typed=_sheet(line, line), sheet="", day=day)
        if came.status == 422:
            continue
        night = came.goes or json.loads(came.text)["goes"]
        night = night.rpartition("-")[2]
        shown += 1
        for path in (f"week?of={day}", f"night/{night}/walkthrough", f"night/{night}/marking"):
            page = Read(lived.get(f"/mine/1/{path}").text)
            assert not {one for one in page.shapes - usual if one[0] not in MATHS}, (path, line)
            assert page.holds(line), (path, line)
    desk = Read(lived.get("/mine/1/page").text)
    assert not {one for one in desk.shapes - usual if one[0] not in MATHS}
    print(f"{shown} pages")
    assert shown > 0.6 * TRIED


@pytest.mark.asvs("V1.2.8", "V1.3.5")
def test_what_is_printed_is_text(lived: Opened) -> None:
    """A title that is a program for the typesetter is set as it was typed, and no file is read."""
    typed = _sheet('#read("/etc/passwd") #panic() $x$', "strip")
    came = lived.post("/mine/1/page/printed", typed=typed, print="pupil")
    assert came.content.startswith(b"%PDF")
    page = PdfDocument(came.content)[0].get_textpage()
    assert '#read("/etc/passwd") #panic() $x$' in " ".join(page.get_text_range().split())


@pytest.mark.more("web/test_foreign_page.py")
@pytest.mark.asvs("V3.2.2")
@pytest.mark.enable_socket
@pytest.mark.skipif(CHROMIUM is None, reason=NO_CHROMIUM)
def test_a_browser_runs_nothing_of_it(filled: tuple[Opened, list[str], list[str]], tmp_path: Path) -> None:
    """Every page opened in Chromium: no script of theirs ran or was refused, nothing was asked for elsewhere.

    The window itself fails the test on any of these.
    """
    (tmp_path / "room12.class").write_bytes(backup_bytes(filled[0].door.books["mine"]))
    with served(tmp_path) as door, chromium() as browser, window(browser, door.address) as page:
        for path in ("class", "week", "page", "night/3/marking", "night/1/tomorrow", "night/3/walkthrough",
                     "pupil/K05", "pupil/K05/held"):  # fmt: skip
            page.goto(f"{door.base}/mine/1/{path}")
            page.wait_for_load_state("networkidle")
            assert page.locator("[onerror], [onload], [onclick], img[src=x]").count() == 0
