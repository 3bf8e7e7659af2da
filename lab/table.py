"""All that was measured, as one table: for the terminal and for `docs/lab.md`."""

from collections.abc import Sequence
from dataclasses import dataclass
from textwrap import wrap

from lab.measures import Share

WIDE = 100


@dataclass(frozen=True, slots=True)
class Part:
    """One part of the table: a title, what it is about, the heads of its columns, and its rows."""

    title: str
    note: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


def percent(share: Share | float) -> str:
    """Write a share in per cent, with what it may be where it was counted.

    >>> percent(Share(12, 1000)), percent(0.345)
    ('1.2 % (0.7 to 2.1)', '34.5 %')
    """
    if isinstance(share, float):
        return f"{100 * share:.1f} %"
    if not share.of:
        return "-"
    low, high = share.between
    return f"{100 * share.value:.1f} % ({100 * low:.1f} to {100 * high:.1f})"


def held(met: bool) -> str:
    """Say whether a goal is met."""
    return "met" if met else "NOT MET"


def plain(parts: Sequence[Part]) -> str:
    """Write the table for a terminal.

    >>> print(plain([Part("Named", "", ("what", "share"), (("all", "9 %"),))]))
    Named
      what  share
      all   9 %
    """
    return "\n\n".join(_plain(part) for part in parts)


def _plain(part: Part) -> str:
    widths = [max(map(len, column)) for column in zip(part.heads, *part.rows, strict=True)]
    lines = [
        "  " + "  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip()
        for row in (part.heads, *part.rows)
    ]
    note = wrap(part.note, WIDE, initial_indent="  ", subsequent_indent="  ")
    return "\n".join([part.title, *note, *lines])


def markdown(parts: Sequence[Part]) -> str:
    """Write the table for a page of the docs."""
    return "\n\n".join(_markdown(part) for part in parts)


def _markdown(part: Part) -> str:
    rows = (part.heads, ("---",) * len(part.heads), *part.rows)
    lines = ["| " + " | ".join(row) + " |" for row in rows]
    return "\n".join([f"### {part.title}", "", *([part.note, ""] if part.note else []), *lines])
