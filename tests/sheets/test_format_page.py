"""The docs page of the sheet format: every example is read, and every setting is in its table."""

import re
from pathlib import Path

import pytest

from onewhole.sheets.document import SheetError
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.settings import SETTINGS
from onewhole.sheets.writing import write_sheet
from onewhole.working.strategies.table import STRATEGIES

PAGE = (Path(__file__).parents[2] / "docs" / "sheet-format.md").read_text(encoding="utf-8")


def blocks(sort: str) -> list[str]:
    """Return the fenced blocks of one sort."""
    return re.findall(rf"```{sort}\n(.*?)```", PAGE, re.DOTALL)


@pytest.mark.parametrize("example", blocks("sheet"))
def test_every_example_is_read(example: str) -> None:
    """And written back the same."""
    sheet = read_sheet(example)
    assert read_sheet(write_sheet(sheet)) == sheet


@pytest.mark.parametrize(("mistaken", "told"), list(zip(blocks("mistaken"), blocks("told"), strict=True)))
def test_a_mistaken_example_is_refused_in_the_words_of_the_page(mistaken: str, told: str) -> None:
    """Letter for letter."""
    with pytest.raises(SheetError) as refused:
        read_sheet(mistaken, "monday.txt")
    assert f"{refused.value}\n" == told


def test_every_setting_and_strategy_is_on_the_page() -> None:
    """With what may stand there, and no other."""
    rows = re.findall(r"^\| `([a-z ]+)` \| (.*?) \|", PAGE, re.MULTILINE)
    assert rows == [(setting.name, setting.takes) for setting in SETTINGS]
    assert all(strategy.key.replace("_", " ") in " ".join(PAGE.split()) for strategy in STRATEGIES)
