import pytest

from onewhole.number.quantity import whole
from onewhole.statements.reading import read_expression, read_quantity
from onewhole.working.line import Line
from onewhole.working.working import FalseLineError, Working, equal_forms
from tests.kit.worked import all_workings, question

KITE = question("7 2/6 - 3 5/6")


def test_a_false_line_is_refused() -> None:
    """No working has a false equals sign; which line it is is said."""
    good, false = Line(read_expression("6 8/6 - 3 5/6")), Line(read_expression("6 12/6 - 3 5/6"))
    assert Working("mine", KITE, (good, good), whole(3)).lines == (good, good)
    with pytest.raises(FalseLineError, match=r"^line 2 of a working by mine is not equal to the one before"):
        Working("mine", KITE, (good, false), whole(3))


def test_three_lengths() -> None:
    """Full is what a teacher says, brief is what a pupil writes, faded leaves the last lines blank."""
    working = all_workings("7 2/6 - 3 5/6")["regroup_first"]
    brief = working.brief()
    assert [line.says for line in brief] == [
        read_expression(line) for line in ("7 2/6 - 3 5/6", "6 8/6 - 3 5/6", "3 3/6")
    ]
    assert len(working.lines) == 6
    assert working.faded(0) == brief
    assert working.faded(1) == (brief[0], brief[1], None)
    assert working.faded(2) == working.faded(9) == (brief[0], None, None)


@pytest.mark.parametrize(
    ("typed", "forms"),
    [
        ("3 3/6", ["3 1/2", "21/6"]),
        ("3 1/2", ["7/2"]),
        ("3/6", ["1/2"]),
        ("5/8", []),
        ("4", []),
        ("2 ft 7 in", []),
        ("7/2", ["7/2"]),
    ],
)
def test_other_forms_of_an_answer(typed: str, forms: list[str]) -> None:
    """Fewest parts, and one fraction; none is demanded."""
    found = [form for form in equal_forms(read_quantity(typed)) if form != read_quantity(typed)]
    assert found == [read_quantity(form) for form in forms if form != typed]
