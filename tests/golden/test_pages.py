"""The data of every page kind for a small night, compared with kept files that people read."""

import json
from functools import cache
from pathlib import Path

import pytest

from onewhole.desk.marking.mark import mark
from onewhole.desk.page.print_pages import sheet_pages
from onewhole.desk.tomorrow.plan import plan_pages
from onewhole.desk.tomorrow.practice_pages import Tomorrow
from onewhole.writers.printed import Printed
from tests.kit.sheets import worked_sheet

KEPT = Path(__file__).parent / "pages"
NIGHT = """title: Kite tails
date: Monday
class: Room 12
whole: strip
say: regroup

# How much of each strip is left?
1. 9 5/8 - 4 6/8
2. 7 2/6 = 6 ?/6
3. 5 ft 2 in - 2 ft 7 in
"""
ANSWERS = """pupil,1,2,3
K01,5 1/8,8,2 ft 5 in
K02,4 7/8,8,2 ft 7 in
K03,39/8,about 8,-
K04,,,
"""
KINDS = ("pupil", "key", "workings", "family", "morning", "talks", "practice", "keys")
#: A later night: each page ends with a slip to find, and one pupil has a page too.
LATER = Tomorrow(pupils=("K01",), find_slip=True)


@cache
def pages() -> tuple[Printed, ...]:
    """Every page of the small night."""
    plan = plan_pages(mark(NIGHT, ANSWERS), LATER)
    return tuple(page for _, page in (*sheet_pages(worked_sheet(NIGHT)), *plan))


def test_every_page_has_a_kept_file() -> None:
    """A new page is kept like the others."""
    assert {page.kind for page in pages()} == set(KINDS)


@pytest.mark.parametrize("kind", KINDS)
def test_the_data_of_a_page_is_as_kept(kind: str, accept: bool) -> None:
    """Each page's data is that of its kept file; ONEWHOLE_ACCEPT=1 writes the file anew."""
    kept = KEPT / f"{kind}.json"
    found = next(page for page in pages() if page.kind == kind).data
    if accept:
        kept.write_text(json.dumps(found, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
    assert json.loads(kept.read_text(encoding="utf-8")) == found
