"""How a new page of a class begins: with the settings of its last night."""

from collections.abc import Iterable

from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.sheets.header import Header
from onewhole.sheets.settings import header_lines, header_of, setting_named
from onewhole.sheets.sheet_editor import SheetEditor
from onewhole.sheets.typed_lines import lines_of
from onewhole.store.opening import Store
from onewhole.store.set_pages import set_pages


def page_begun(book: Store, room_number: int) -> str:
    """Return the settings that a class's next page begins with, a line each; nothing before the first night.

    They are those of its last night, which say whose page it is, how it is printed and how the class speaks.
    Its title, date, minutes and recipe were of that page alone.
    """
    nights = set_pages(book, room_number)
    if not nights:
        return ""
    _, last = nights[-1]
    own = replace(typed_settings(last.typed), title="", date="", minutes=None, recipe="")
    return "".join(f"{line}\n" for line in header_lines(own))


def page_begun_with(book: Store, room_number: int, problems: Iterable[str]) -> str:
    """Return a page that begins with what was typed elsewhere, under the class's settings.

    Where it has settings of its own it has only those.
    """
    typed = "".join(problem.replace("\r\n", "\n").rstrip() + "\n" for problem in problems)
    settings = "" if SheetEditor.of(typed).settings else page_begun(book, room_number)
    return f"{settings}\n{typed}" if settings else typed


def typed_settings(typed: str) -> Header:
    r"""Return the settings of a typed sheet as far as they can be read; it need have no problem yet.

    >>> typed_settings("title: Kites\ncolour: red\n").title
    'Kites'
    """
    lines, said = lines_of(typed), {}
    for at in SheetEditor.of(typed).settings.values():
        name, _, value = lines[at].partition(":")
        try:
            said[setting_named(name).name] = " ".join(value.split())
        except InputError:
            continue
    return header_of(said)[0]
