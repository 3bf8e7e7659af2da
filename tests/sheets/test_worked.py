"""A sheet worked once."""

from onewhole.notations.text import text
from tests.kit.sheets import worked_sheet


def test_answers_forms_and_workings() -> None:
    """Each problem with its answer, other right forms, and the working by the sheet's strategy."""
    key = worked_sheet(
        "strategy: count up\n\n1. 7 2/6 - 3 5/6\n2. 2 4/5 + 1 3/5\n3. 5/6 ? 7/8\n"
        "4. 3 x (1/5 + 1/5)\n5. 52 - 27"
    ).problems
    assert [text(entry.answer) for entry in key] == ["3 3/6", "4 2/5", "<", "1 1/5", "25"]
    assert [[text(form) for form in entry.forms] for entry in key] == [
        ["3 1/2", "21/6"],
        ["22/5"],
        [],
        ["6/5"],
        [],
    ]
    used = [entry.working.strategy if entry.working else None for entry in key]
    assert used == ["count_up", "jump_on", "compare", "step_by_step", "count_up"]
