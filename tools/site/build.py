"""Zensical, asked to build the site."""

import shutil
import subprocess
import sys
from importlib.resources import files
from pathlib import Path

from tools.locked import ROOT
from tools.site.api import ROOMS, write_api
from tools.site.pages import title, write_pages

BUILT = ROOT / "build" / "site"
_LETTERS = {
    "fontpkg_lexend": ("Lexend[wght].ttf",),
    "fontpkg_atkinson_hyperlegible": ("AtkinsonHyperlegible-Regular.ttf", "AtkinsonHyperlegible-Bold.ttf"),
}
#: Nothing of it is fetched from elsewhere, also when it is read: no letters, no icons of a service.
_HEAD = """[project]
site_name = "onewhole"
site_description = "A typed page of problems becomes workings, printed pages, marks and tomorrow's groups."
docs_dir = "pages"
site_dir = "site"
use_directory_urls = false
extra_css = ["site.css"]

[project.theme]
language = "en"
font = false
logo = "kite.svg"
favicon = "kite.svg"
features = [
  "navigation.footer", "navigation.indexes", "navigation.sections", "navigation.top", "search.highlight",
]

[project.markdown_extensions]
attr_list = {}
md_in_html = {}
tables = {}
toc.permalink = true
pymdownx.highlight.pygments_lang_class = true
pymdownx.superfences = {}
"""


def build(to: Path = BUILT) -> Path:
    """Build the site anew and return its folder. CalledProcessError where the builder refuses."""
    shutil.rmtree(to, ignore_errors=True)
    pages = to / "pages"
    pages.mkdir(parents=True)
    names = write_pages(pages)
    write_api(pages)
    static = Path(str(files("onewhole.web") / "static"))
    shutil.copy(static / "kite.svg", pages)
    shutil.copy(Path(__file__).parent / "site.css", pages)
    (pages / "letters").mkdir()
    for package, letters in _LETTERS.items():
        for name in letters:
            shutil.copy(Path(str(files(package) / "files" / name)), pages / "letters")
    (to / "zensical.toml").write_text(_settings(names), encoding="utf-8")
    subprocess.run(
        [sys.executable, "-m", "zensical", "build", "--clean", "--config-file", "zensical.toml"],
        cwd=to,
        check=True,
        capture_output=True,
        text=True,
    )
    return to / "site"


def _settings(names: list[str]) -> str:
    """Return the settings: what stands above, and where each page is in the list at the side."""
    docs = [
        name for name in names if name.startswith("docs/") and name.count("/") == 1 and name.endswith(".md")
    ]
    decisions = [name for name in names if name.startswith("docs/decisions/")]
    rooms = ["api/index.md", *(f"api/{room}.md" for room in ROOMS)]
    groups = {
        "Docs": [_entry(title(name.replace("docs/index", "docs/README")), name) for name in docs],
        "Code": [_entry("Rooms" if name.endswith("index.md") else name[4:-3], name) for name in rooms],
        "Decisions": [
            _entry("All", "docs/decisions/index.md"),
            *(_entry(title(name), name) for name in decisions if not name.endswith("index.md")),
        ],
    }
    lines = ['nav = [\n  "index.md",']
    lines += [f"  {{ {_quoted(name)} = [{', '.join(entries)}] }}," for name, entries in groups.items()]
    return _HEAD.replace("extra_css", "\n".join([*lines, "]"]) + "\nextra_css", 1)


def _is_page(name: str) -> bool:
    return name.endswith(".md")


def _entry(called: str, name: str) -> str:
    return f"{{ {_quoted(called)} = {_quoted(name)} }}"


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'
