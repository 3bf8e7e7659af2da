"""The tags of every PDF that a night makes: what a screen reader reads of a printed page."""

import io
from collections.abc import Iterator
from datetime import UTC, datetime
from functools import cache
from itertools import pairwise
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import pikepdf
import pytest

from onewhole.desk.tomorrow.night import night
from tests.kit import pdf

NOW = datetime(2026, 12, 1, 16, tzinfo=UTC)
#: A page in Spanish with a page for home in English too: columns, a story, measures, a comparison, a film.
SHEET = """title: Mezcla de otoño
languages: es, en
whole: una torta
film: https://example.org/otono
corner marks: lines

# Muestra tu trabajo.
1. 7 2/6 - 3 5/6
2. 304 - 128
3. 5 ft 2 in - 2 ft 7 in
4. 5/6 ? 7/8
5. 53 / 4
6. 5 1/4 - 2 3/4 | Hay 5 1/4 tortas. Se usan 2 3/4 tortas. ¿Cuántas tortas quedan?
"""
ANSWERS = """pupil,1,2,3,4,5,6
K01,3 3/6,176,2 ft 7 in,<,13 R 1,2 2/4
K02,4 3/6,224,3 ft 5 in,>,13,3 2/4
K03,4 3/6,276,3 ft 5 in,<,13 R 1,3 2/4
"""


@cache
def made() -> dict[str, bytes]:
    """Every PDF of a night with its answers, by its name."""
    with TemporaryDirectory() as folder:
        here = Path(folder)
        (here / "sheet.txt").write_text(SHEET)
        (here / "answers.csv").write_text(ANSWERS)
        files = night(here, here / "out", when=NOW).made
        return {one.page: one.path.read_bytes() for one in files if one.path.suffix == ".pdf"}


def _nodes(content: bytes) -> Iterator[tuple[str, dict[str, str]]]:
    """Every tag in reading order, with its alternative text and its language."""
    found: list[tuple[str, dict[str, str]]] = []

    def walk(node: Any) -> None:  # noqa: ANN401  # a PDF node may be anything
        if isinstance(node, pikepdf.Array):
            for child in node:
                walk(child)
        elif isinstance(node, pikepdf.Dictionary) and "/S" in node:
            said = {key: str(node.get(f"/{key}", "")) for key in ("Alt", "ActualText", "Lang")}
            found.append((str(node.S), said))
            walk(node.get("/K"))

    with pikepdf.open(io.BytesIO(content)) as document:
        walk(document.Root.StructTreeRoot.K)
    yield from found


def test_every_kind_of_page_is_made() -> None:
    """Pages for pupils, families and the teacher, and practice for the groups."""
    names = set(made())
    assert {"pupil", "key", "workings", "family", "family-en", "morning", "talks", "practice-key"} <= names
    assert any(name.startswith("practice-") and name != "practice-key" for name in names)


@pytest.mark.parametrize(
    "page",
    ["pupil", "key", "workings", "family", "family-en", "morning", "talks", "practice-key", "practice"],
)
def test_a_page_can_be_read_by_its_tags(page: str) -> None:
    """It is tagged, with a language and a title; no tag is empty, headings in order, figures with words."""
    name = next(one for one in made() if one == page or (page == "practice" and one.startswith("practice-")))
    content = made()[name]
    with pikepdf.open(io.BytesIO(content)) as document:
        assert document.Root.MarkInfo.Marked
        assert str(document.Root.Lang) in {"es-US", "en-US"}
        assert str(document.docinfo.get("/Title", "")) or document.open_metadata().get("dc:title")
    nodes = list(_nodes(content))
    assert pdf.empty_tags(content) == [], "an Lbl or another tag says nothing"
    levels = [int(tag[2:]) for tag, _ in nodes if tag[:2] == "/H" and tag[2:].isdigit()]
    assert levels[:1] in ([1], []), levels
    assert all(after - before <= 1 for before, after in pairwise(levels)), levels
    for tag, said in nodes:
        if tag in {"/Figure", "/Formula"}:
            assert said["Alt"].strip() or said["ActualText"].strip(), tag


def test_pages_are_in_the_language_of_the_family() -> None:
    """The pupils' page and the first page for home are Spanish, the other one English."""
    spoken = {}
    for name in ("pupil", "family", "family-en"):
        with pikepdf.open(io.BytesIO(made()[name])) as document:
            spoken[name] = str(document.Root.Lang)
    assert spoken == {"pupil": "es-US", "family": "es-US", "family-en": "en-US"}


def test_the_film_stands_on_paper_in_both_languages() -> None:
    """A square code with words beside it, and the address, on the pupils' page and both pages for home."""
    for name in ("pupil", "family", "family-en"):
        words = " ".join(pdf.words(made()[name])).replace("\r\n", " ")
        assert "https://example.org/" in words
        codes = [
            said["Alt"] for tag, said in _nodes(made()[name]) if tag == "/Figure" and "code" in said["Alt"]
        ]
        spanish = [said["Alt"] for tag, said in _nodes(made()[name]) if "código" in said["Alt"]]
        assert bool(codes) is (name == "family-en")
        assert bool(spanish) is (name != "family-en")
