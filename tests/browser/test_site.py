"""The docs as a site: built without a network, every link and picture is there, nothing comes from afar."""

from functools import partial
from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import unquote, urlsplit

import pytest
from playwright.sync_api import Browser, Request

from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, WIDE, runs_off
from tools.locked import ROOT
from tools.site.build import build

pytestmark = [*NEEDS_CHROMIUM, pytest.mark.more("house/test_docs.py")]


class _Links(HTMLParser):
    """What a page leads to, what it loads, and the names within it."""

    def __init__(self) -> None:
        super().__init__()
        self.leads: list[str] = []
        self.loads: list[str] = []
        self.names: set[str] = set()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note what a tag names."""
        of = {name: value or "" for name, value in attrs}
        self.names.add(of.get("id", ""))
        if tag == "a" and "href" in of:
            self.leads.append(of["href"])
        elif tag in {"img", "script", "iframe", "source"} and "src" in of:
            self.loads.append(of["src"])
        elif tag == "link" and of.get("rel") in {"stylesheet", "icon"}:
            self.loads.append(of["href"])


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The built site."""
    return build(tmp_path_factory.mktemp("docs") / "site")


@pytest.fixture(scope="module")
def pages(site: Path) -> dict[Path, _Links]:
    """Every page, read."""
    found = {}
    for path in site.rglob("*.html"):
        found[path] = _Links()
        found[path].feed(path.read_text(encoding="utf-8"))
    return found


def test_every_link_and_picture_is_there(site: Path, pages: dict[Path, _Links]) -> None:
    """A link leads to a file of the site and to a name in it; a picture is one of ours."""
    assert {f"docs/{path.stem}.html" for path in (ROOT / "docs").glob("[a-z]*.md")} <= {
        path.relative_to(site).as_posix() for path in pages
    }
    dead = []
    for page, links in pages.items():
        if page.name == "404.html":
            continue  # its addresses begin at the root of a server
        for link in (*links.leads, *links.loads):
            at = urlsplit(link)
            if at.scheme or at.netloc:
                continue
            goal = (page.parent / unquote(at.path)).resolve() if at.path else page
            names = pages[goal].names if goal in pages else set()
            if not goal.is_file() or (at.fragment and unquote(at.fragment) not in names):
                dead.append(f"{page.relative_to(site)}: {link}")
    assert dead == []


def test_nothing_comes_from_elsewhere(pages: dict[Path, _Links]) -> None:
    """No script, style, letter or picture of another server."""
    assert {link for links in pages.values() for link in links.loads if urlsplit(link).netloc} == set()


def _note(asked: list[str], request: Request) -> None:
    asked.append(request.url)


def test_it_shows_in_a_browser_without_asking_another(site: Path, browser: Browser) -> None:
    """On both widths, in our letters."""
    for width, height in (WIDE, PHONE):
        context = browser.new_context(viewport={"width": width, "height": height})
        page = context.new_page()
        asked: list[str] = []
        page.on("request", partial(_note, asked))
        page.goto((site / "docs" / "sheet-format.html").as_uri())
        assert [url for url in asked if not url.startswith(("file:", "data:", "blob:"))] == []
        assert not runs_off(page)
        assert page.evaluate("document.fonts.ready.then(() => document.fonts.check('16px Lexend'))")
        context.close()
