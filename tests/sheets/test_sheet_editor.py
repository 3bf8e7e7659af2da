"""SheetEditor of a typed sheet: what changes, and that nothing else does."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.findings.click import SettingLine
from onewhole.sheets.document import SheetError
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.sheet_editor import SheetEditor
from onewhole.sheets.writing import write_sheet
from tests.kit.sheets import sheets

TYPED = "title: Kites\nminutes: 9\n\n# First these.\n 1) 5 - 2\n\n2) 52 - 27\n# Then this.\n3) 6 3/4 - 1/4"


def test_a_problem_moves_and_every_other_row_stays() -> None:
    """Words to the pupil, blank rows and the header stand where they stood; labels count down the page."""
    now = SheetEditor.of(TYPED).moved("3", 1).typed
    assert (
        now
        == "title: Kites\nminutes: 9\n\n# First these.\n1) 6 3/4 - 1/4\n\n 2) 5 - 2\n# Then this.\n3) 52 - 27"
    )


def test_labels_that_do_not_count_stay_with_their_problems() -> None:
    """2a is 2a wherever it stands."""
    assert SheetEditor.of("2a. 5 - 2\n2b. 6 - 3").moved("2B", 1).typed == "2b. 6 - 3\n2a. 5 - 2"


@given(sheets(), st.data())
def test_moving_keeps_every_problem(sheet: object, data: st.DataObject) -> None:
    """The same problems in the wished order under the same header; moved back, all is as before."""
    typed = write_sheet(sheet)  # type: ignore[arg-type]
    before = read_sheet(typed)
    at = data.draw(st.integers(1, len(before.problems)))
    to = data.draw(st.integers(1, len(before.problems)))
    rows = SheetEditor.of(typed)
    now = rows.moved(before.problems[at - 1].label, to)
    after = read_sheet(now.typed)
    order = [one.typed for one in before.problems]
    order.insert(to - 1, order.pop(at - 1))
    assert [one.typed for one in after.problems] == order
    assert after.header == before.header
    back = now.moved(after.problems[to - 1].label, at)
    assert back.typed == typed


def test_a_sheet_that_cannot_be_read_is_moved_too() -> None:
    """A label is enough."""
    assert SheetEditor.of("1. 5 -\n2. x").moved("2", 1).typed == "1. x\n2. 5 -"


def test_leaving_out_counts_again() -> None:
    """No gap stays, and the last problem stays."""
    assert SheetEditor.of(TYPED).without(["1", "2"]).typed.endswith("# Then this.\n1) 6 3/4 - 1/4")
    with pytest.raises(SheetError, match="no problem would be left"):
        SheetEditor.of(TYPED).without(["1", "2", "3"])


def test_adding_in_the_middle_counts_on() -> None:
    """The new row looks like the others and stands after the problem that was named, or first."""
    assert SheetEditor.of(TYPED).added("7 - 1", 1).typed.splitlines()[4:7] == [" 1) 5 - 2", "2) 7 - 1", ""]
    assert SheetEditor.of(TYPED).added("7 - 1", 0).typed.splitlines()[4:6] == ["1) 7 - 1", " 2) 5 - 2"]


def test_adding_under_other_labels_stands_last() -> None:
    """With a number that is free."""
    assert SheetEditor.of("a. 5 - 2\n7. 6 - 3").added("7 - 1", 0).typed == "a. 5 - 2\n7. 6 - 3\n8. 7 - 1"
    with pytest.raises(SheetError, match="no label left"):
        SheetEditor.of("999. 5 - 2").added("7 - 1", 0)


A4 = SettingLine("paper", "a4")


def test_a_setting_takes_the_place_of_the_earlier_one() -> None:
    """Or stands under the others, or makes a header."""
    assert SheetEditor.of(TYPED).with_setting(SettingLine("minutes", "12")).typed.splitlines()[:3] == [
        "title: Kites",
        "minutes: 12",
        "",
    ]
    assert SheetEditor.of(TYPED).with_setting(A4).typed.splitlines()[1:4] == ["minutes: 9", "paper: a4", ""]
    assert SheetEditor.of("\n1. 5 - 2").with_setting(A4).typed == "paper: a4\n\n\n1. 5 - 2"


def test_other_problems_under_the_same_labels() -> None:
    """The words of a word problem go with its numbers; the label stays as it was set."""
    now = SheetEditor.of("(1) 5 - 2 | Five kites.\n(2) 6 - 3").asking({"1": "9 - 4"})
    assert now.typed == "(1) 9 - 4\n(2) 6 - 3"


def test_rows_without_a_label_stay_so() -> None:
    """They are counted: moved, changed and added they have none, and labels that were typed count on."""
    rows = SheetEditor.of("5 - 2\n2. 6 - 3\n\N{BULLET} 7 - 4")
    assert list(rows.problems) == ["1", "2", "3"]
    assert rows.moved("2", 1).typed == "1. 6 - 3\n5 - 2\n\N{BULLET} 7 - 4"
    assert rows.without(["1"]).typed == "1. 6 - 3\n\N{BULLET} 7 - 4"
    assert rows.asking({"1": "9 - 4"}).typed == "9 - 4\n2. 6 - 3\n\N{BULLET} 7 - 4"
    assert SheetEditor.of("5 - 2\n6 - 3").added("7 - 1", 1).typed == "5 - 2\n7 - 1\n6 - 3"
