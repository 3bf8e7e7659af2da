"""Marks as tables on the terminal."""

from collections.abc import Iterable, Iterator, Mapping

from rich.console import Console, RenderableType
from rich.table import Table
from rich.text import Text

from onewhole.cli.group_options import changes_offered
from onewhole.cli.screen import plain, plain_line
from onewhole.desk.marking.mark import (
    CAUTION,
    Marked,
    asked_of,
    fitting,
    shown_finding,
    shown_place,
    shown_reasons,
)
from onewhole.desk.pupil.report import talks_told

_SIGNS = {"right": "✓", "form": "f", "wrong": "✗", "blank": "-", "unreadable": "?"}
#: For a terminal that cannot write the signs: a ? in their place would say that an answer cannot be read.
_PLAIN_SIGNS = {**_SIGNS, "right": "+", "wrong": "x"}
_MEANS = {"form": "right in another form than asked"}


def marked_tables(marked: Marked) -> str:
    """Lay out a row a pupil, how each problem went, the patterns named, the groups, and the caution.

    What comes from the files is plain; a terminal with colours gets the heads in bold.
    """
    console = Console(highlight=False)
    with console.capture() as laid:
        for part in _parts(marked, _signs(console.encoding)):
            console.print(part)
    return laid.get()


def _signs(encoding: str) -> Mapping[str, str]:
    try:
        "".join(_SIGNS.values()).encode(encoding)
    except UnicodeEncodeError:
        return _PLAIN_SIGNS
    return _SIGNS


def _parts(marked: Marked, signs: Mapping[str, str]) -> Iterator[RenderableType]:
    yield _answers(marked, signs)
    yield Text("   ".join(f"{sign} {_MEANS.get(verdict, verdict)}" for verdict, sign in signs.items()))
    for item in marked.items:
        if item.check_key:
            yield _text(f"Problem {item.label}: look at the key; pupils who do well elsewhere miss it.")
    if named := fitting(marked):
        yield "\nThese may show, each with what to ask the child:"
        yield _pairs((key, f"{name}. Ask, {ask}") for key, name, ask in named)
    if talked := talks_told(marked):
        yield "\nWhat was asked since:"
        yield _pairs(talked)
    if asked := asked_of(marked):
        yield "\nWhat would settle what is still open:"
        yield _pairs((pupil, f"ask {problems}") for pupil, problems in asked)
    for group in marked.groups:
        yield Text(plain(f"\n{group.name}: {shown_place(group)}"), style="bold")
        yield _pairs(shown_reasons(group))
    if offered := tuple(changes_offered(marked)):
        yield Text(plain("\n".join(("", *offered))))
    yield Text(f"\n{CAUTION}")


def _answers(marked: Marked, signs: Mapping[str, str]) -> Table:
    table = Table(box=None, pad_edge=False, padding=(0, 1, 0, 0))
    table.add_column("pupil")
    for item in marked.items:
        table.add_column(_text(item.label), justify="right", no_wrap=True)
    table.add_column("answers may show")
    for pupil, found in zip(marked.marks.pupils, marked.findings, strict=True):
        cells = [Text(signs[mark.verdict.value]) for mark in pupil.marks]
        table.add_row(_text(pupil.pupil), *cells, _text(shown_finding(found)))
    table.add_row("right", *(str(item.right) for item in marked.items), "")
    table.add_row("tried", *(str(item.tried) for item in marked.items), "")
    return table


def _pairs(rows: Iterable[tuple[str, str]]) -> Table:
    """Lay out a short name and its sentence, the sentence in a column of its own."""
    table = Table.grid(padding=(0, 1))
    for name, said in rows:
        table.add_row(_text(f"  {name}"), _text(said))
    return table


def _text(said: str) -> Text:
    """Return what stands in a cell: plain, on one line, and never markup."""
    return Text(plain_line(said))
