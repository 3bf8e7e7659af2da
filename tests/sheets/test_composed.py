from fractions import Fraction

import pytest
from msgspec.structs import replace

from onewhole.errors import Fault
from onewhole.sheets.candidates import LikePair
from onewhole.sheets.composed import Composed, sheet_of, told_by
from onewhole.sheets.header import Header
from onewhole.sheets.learning import Doubt, settles
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.recipe import Recipe, read_recipe
from onewhole.sheets.wishes import Wishes
from onewhole.sheets.writing import write_sheet
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.count_up import COUNT_UP

DOUBTS = (Doubt(("A01",), ("A02",), 2), Doubt((), ("A10",), 6))
RECIPE = Recipe("0.1.0", Wishes(number=3, strategy=COUNT_UP, minutes=9))
PAGE = (LikePair(9, 5, 4, 6, 8, taken=True), LikePair(5, 4, 2, 1, 6, taken=True))
ASKED = tuple(one.statement for one in PAGE)


def test_the_page_carries_its_recipe_and_reads_back() -> None:
    """The header keeps all but strategy, minutes and recipe; problems climb under the labels 1, 2, 3."""
    sheet = sheet_of(Header(title="Kites", minutes=5), RECIPE, ASKED, [read_statement("52 - 27")], None)
    assert read_sheet(write_sheet(sheet)) == sheet
    assert read_recipe(sheet.header.recipe) == RECIPE
    assert (sheet.header.title, sheet.header.minutes, sheet.header.strategy) == ("Kites", 9, COUNT_UP)
    assert [one.label for one in sheet.problems] == ["1", "2", "3"]
    assert sheet.problems[0].typed == "5 4/6 - 2 1/6"


def test_an_example_stands_in_the_header() -> None:
    """As the problem that is begun on the page."""
    example = LikePair(3, 1, 1, 2, 3, taken=True)
    text = write_sheet(sheet_of(Header(), RECIPE, ASKED, [], example))
    assert "\nto finish: 3 1/3 - 1 2/3\n" in text


def test_what_is_told_comes_from_the_catalogue() -> None:
    """A doubt that no problem settles has no labels. Review counts for what is told and not for worth."""
    sheet = sheet_of(Header(), RECIPE, ASKED, [read_statement("7 3/4 - 2 1/4")], None)
    tells = [settles(one.statement, DOUBTS) for one in PAGE]
    told, worth = told_by(sheet, DOUBTS, tells)
    labels = {one.typed: one.label for one in sheet.problems}
    assert told[0].labels == (labels["9 5/8 - 4 6/8"],)
    assert set(told[1].labels) == {labels["5 4/6 - 2 1/6"], labels["7 3/4 - 2 1/4"]}
    assert worth == 32 * 2 + 32 * 6


def test_a_model_that_sees_otherwise_is_a_fault() -> None:
    """What the arrays say is looked at once more."""
    sheet = sheet_of(Header(), RECIPE, ASKED, [], None)
    with pytest.raises(Fault, match="see different answers"):
        told_by(sheet, DOUBTS, [3, 3])


def test_the_gap_is_a_share_of_the_bound() -> None:
    """More than the bound is a fault; nothing to learn is no gap."""
    sheet = sheet_of(Header(), RECIPE, ASKED, [], None)
    composed = Composed(sheet, RECIPE, 99, 100, 110, 10, (), (), stopped=False)
    assert composed.gap * 100 == 1
    assert (composed.doubt_left, composed.least_left) == (Fraction(11, 110), Fraction(10, 110))
    nothing = replace(composed, taught=0, bound=0, doubt=0)
    assert {nothing.gap, nothing.doubt_left, nothing.least_left} == {Fraction(0)}
    with pytest.raises(Fault, match="more than was proven"):
        replace(composed, taught=101)
