"""docs/pasted-tables.md: tables as teachers paste them, and where each answer lands."""

from collections.abc import Iterator

from onewhole.marking.reading.tables.asking import TableQuestion
from onewhole.marking.reading.tables.cell_answers import PlacedCell
from onewhole.marking.reading.tables.placing import place
from tests.kit.pasted_block import GRID, PUPILS, SHEET, PastedBlock
from tests.kit.pasted_blocks import BLOCKS

HEAD = f"""\
# Tables as they are pasted

Made from `tests/kit/pasted_blocks.py` and `pasted_places.py` by `python -m tools.docs`. A test holds each row
(`tests/marking/reading/tables/test_placing.py`): what lands before anything is asked is on its own child
and its own problem, and so is everything once the questions are answered. There are {len(BLOCKS)} tables;
none puts an answer on a wrong child without a question first.

The class is {", ".join(f"{one.code} {one.name}".strip() for one in PUPILS)}. The teacher is in
the cell of K02 and problem 2. The page:

```
{SHEET.strip()}
```

In a block, ⇥ is a tab, ⏎ the end of a line, ␣ a blank that does not break. A block called XLSX came as a
file: what the sheet made of a cell is then known.

| block | what is pasted | lands at once | is asked first | lands then |
| --- | --- | --- | --- | --- |
"""


def tables_page() -> str:
    """Return the page."""
    return HEAD + "".join(f"| {' | '.join(_row(block))} |\n" for block in BLOCKS)


def _row(block: PastedBlock) -> Iterator[str]:
    before, after = place(block.table, GRID, {}), place(block.table, GRID, block.said)
    yield _plain(block.name)
    yield _plain(_shown(block.text))
    yield _plain(_cells(before.cells))
    yield _plain("; ".join(_asked(one) for one in after.questions))
    yield _plain(_cells(after.cells) if before.cells != after.cells else "")


def _asked(one: TableQuestion) -> str:
    about = ", ".join(one.about[:3]) or "nobody"
    return f"{one.asks.value} ({about}): {one.chosen}"


def _cells(cells: tuple[PlacedCell, ...]) -> str:
    rows: dict[str, list[str]] = {}
    for one in cells:
        read = f" read as {one.read}" if one.read else ""
        rows.setdefault(one.code, []).append(f"{one.label}: {one.text}{read}")
    return "; ".join(f"{code} {', '.join(texts)}" for code, texts in rows.items())


def _shown(text: str) -> str:
    signs = {"\t": "⇥", "\r\n": "⏎", "\n": "⏎", "\N{NO-BREAK SPACE}": "␣", "\N{NARROW NO-BREAK SPACE}": "␣"}
    for sign, shown in signs.items():
        text = text.replace(sign, shown)
    return "".join(sign if sign.isprintable() else f"U+{ord(sign):04X} " for sign in text).strip("⏎")


def _plain(text: str) -> str:
    """Return a text as a cell of a table in Markdown."""
    for sign in "|*_<":
        text = text.replace(sign, f"\\{sign}")
    return text
