"""Marks as tables on the terminal."""

from rich.console import Console
from rich.table import Table
from rich.text import Text

from onewhole.desk.mark import CAUTION, Marked, shown_finding

_SIGNS = {"right": "✓", "form": "f", "wrong": "✗", "blank": "-", "unreadable": "?"}


def marked_tables(marked: Marked) -> None:
    """Print a row a pupil, a row of shares right, the groups and the caution that belongs to them."""
    console = Console(highlight=False)
    console.print(_answers(marked))
    console.print("✓ right   f right in another form than asked   ✗ wrong   - blank   ? not readable")
    for item in marked.items:
        if item.check_key:
            console.print(f"Problem {item.label}: look at the key; pupils who do well elsewhere miss it.")
    for group in marked.groups:
        console.print(Text(f"\n{group.name}: {', '.join(group.pupils)}", style="bold"))
        console.print(Text(f"  {group.because}"))
    console.print(Text(f"\n{CAUTION}"))


def _answers(marked: Marked) -> Table:
    table = Table(box=None, pad_edge=False, padding=(0, 1, 0, 0))
    table.add_column("pupil")
    for item in marked.items:
        table.add_column(item.label, justify="right", no_wrap=True)
    table.add_column("answers may show")
    for pupil, found in zip(marked.marks.pupils, marked.findings, strict=True):
        cells = [Text(_SIGNS[mark.verdict.value]) for mark in pupil.marks]
        table.add_row(Text(pupil.pupil), *cells, Text(shown_finding(found)))
    table.add_row("right", *(str(item.right) for item in marked.items), "")
    table.add_row("tried", *(str(item.tried) for item in marked.items), "")
    return table
