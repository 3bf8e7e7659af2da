"""The answer key: a table of answers, and the equal forms that are right too."""

from collections import Counter
from itertools import product
from typing import Any

import pytest

from onewhole.languages.english.speech import say
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.key_page import key_page
from tests.kit import pdf
from tests.kit.pages import COMBINED, PAPERS, made, pressed, sheet
from tests.kit.sheets import worked_sheet


@pytest.mark.parametrize("paper", PAPERS)
def test_room_12_takes_one_page(paper: str) -> None:
    """Twelve answers stand on one page in ordinary print."""
    assert pdf.pages(pressed("room12/key", paper, "ordinary")) == 1


@pytest.mark.parametrize(("name", "both"), list(product(("room12", "sorts"), COMBINED)))
def test_the_key_is_a_table_with_heads(name: str, both: tuple[str, str]) -> None:
    """The key is one table with a row of heads, then a row for each problem, on however many pages.

    Long problems and large print leave no room for a column of notes.
    """
    found = Counter(tag for tag, _ in pdf.tags(pressed(f"{name}/key", *both)))
    columns, rows = (5 if both[1] == "ordinary" and name == "room12" else 4), len(sheet(name).problems)
    assert (found["/Table"], found["/TD"]) == (1, columns * rows)
    assert found["/TR"] == rows + 1
    assert found["/TH"] == columns


@pytest.mark.parametrize("name", ["room12", "sorts"])
def test_every_answer_and_every_equal_form_is_spoken(name: str) -> None:
    """Problem, answer and the other right forms are those of the key, in words."""
    data: Any = key_page(WorkedSheet(sheet(name))).data
    for entry, row in zip(WorkedSheet(sheet(name)).problems, data["answers"], strict=True):
        assert row["formula"]["alt"] == say(entry.problem.statement)
        assert row["answer"]["alt"] == say(entry.answer)
        assert [form["alt"] for form in row.get("also", [])] == [say(form) for form in entry.forms]


@pytest.mark.parametrize(
    ("typed", "note"),
    [
        ("5 4/6 - 2 1/6", "No regrouping."),
        ("7 2/6 - 3 5/6", "Regroup."),
        ("5 - 1 3/8", "Regroup, a whole number first."),
        ("5 1/2 - 2 2/3", "Regroup, unlike denominators."),
        ("12.3 - 4.56", "Regroup, unlike units."),
        ("11/4 as a mixed number", "Regroup."),
        ("5/6 ? 7/8", "Unlike denominators."),
        ("345 ? 354", None),
        ("order 345, 354, 1205", None),
        ("7 x 8", None),
    ],
)
def test_notes(typed: str, note: str | None) -> None:
    """What a problem needs stands beside its answer, regrouping only where it is added or taken away."""
    data: Any = key_page(worked_sheet(f"1. {typed}")).data
    assert data["answers"][0].get("note") == note


def test_no_row_is_cut_by_the_end_of_a_page() -> None:
    """The code of a problem's standard, the last that stands in its row, is on the page of its label."""
    rows = "\n".join(f"{at}. order 1000000, 999999, 100000, 9999{at}" for at in range(1, 10))
    key = made(key_page(worked_sheet(rows)))
    assert pdf.pages(key) == 2
    for page in pdf.words(key):
        assert page.count("4.NBT.A.2") == page.count("Order")


@pytest.mark.parametrize("more", ["", "\n3. 4 5/8 c + 1 7/8 c"])
def test_a_note_has_room(more: str) -> None:
    """A note is no tower of single words: beside long problems it stands under each, in one line."""
    typed = f"1. 5 gal - 2 gal 3 qt\n2. 2 yd 1 ft 3 in - 1 yd 2 ft 8 in{more}"
    signs = pdf.signs(made(key_page(worked_sheet(typed))))
    text = "".join(sign.sign for sign in signs)
    said = "Regroup,awholenumberfirst."
    first = text.index(said)
    assert len({round(sign.bottom) for sign in signs[first : first + len(said)] if sign.sign in "Rhn"}) == 1
