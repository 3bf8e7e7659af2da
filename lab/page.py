"""The page of the docs: the table stands between two marks, and is written anew by `make lab`."""

import re
from collections.abc import Sequence

from lab.table import Part, markdown

BLOCK = re.compile(r"(?<=<!-- table: made by make lab -->\n).*?(?=<!-- table end -->)", re.DOTALL)


def written(page: str, parts: Sequence[Part]) -> str:
    """Return the page with the table in its place; ValueError where the page has no such place."""
    if len(BLOCK.findall(page)) != 1:
        msg = "the page has no place for the table, or two"
        raise ValueError(msg)
    return BLOCK.sub(lambda _: f"\n{markdown(parts)}\n\n", page)
