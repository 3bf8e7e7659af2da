"""The page of the docs: the table stands between two marks, and is written anew by `make lab`."""

import re
from collections.abc import Sequence
from dataclasses import replace

from lab.table import Part, markdown

BLOCK = re.compile(r"(?<=<!-- table: made by make lab -->\n).*?(?=<!-- table end -->)", re.DOTALL)


def with_rows(page: str, part: Part, order: Sequence[str]) -> str:
    """Return the page with the rows of a part in its table, by their first cells; the others stay.

    ``order`` is that of the first cells. ValueError where the page has no such table, or another one.
    """
    head, rule = markdown([replace(part, rows=())]).splitlines()[-2:]
    before, found, after = page.partition(f"{head}\n{rule}\n")
    if not found or f"### {part.title}\n" not in before:
        msg = f"the page has no table of “{part.title}”"
        raise ValueError(msg)
    table, gap, rest = after.partition("\n\n")
    rows = {line.split(" | ")[0].removeprefix("| "): line for line in table.splitlines()}
    rows |= {row[0]: f"| {' | '.join(row)} |" for row in part.rows}
    return before + found + "\n".join(rows[words] for words in order if words in rows) + gap + rest


def written(page: str, parts: Sequence[Part]) -> str:
    """Return the page with the table in its place; ValueError where the page has no such place."""
    if len(BLOCK.findall(page)) != 1:
        msg = "the page has no place for the table, or two"
        raise ValueError(msg)
    return BLOCK.sub(lambda _: f"\n{markdown(parts)}\n\n", page)
