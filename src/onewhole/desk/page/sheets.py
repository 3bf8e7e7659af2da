"""Read a typed sheet from its file, with settings of the moment instead of those it names."""

from pathlib import Path

from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.presses.texts import read_text
from onewhole.sheets.class_languages import in_languages, languages_typed
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Header, SettingError
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.settings import MARKS, setting_named


def sheet_in(
    path: Path,
    *,
    paper: str | None = None,
    size: str | None = None,
    fit: str | None = None,
    marks: str | None = None,
    braille: str | None = None,
    languages: str = "",
) -> Sheet:
    """Return the sheet in a file, with settings that stand instead of what it says.

    They are paper, size of print, on how many pages it fits, marks in the corners, and whether in braille.
    ``languages`` are those of the class, where the sheet names none.

    Raises InputError for a file that cannot be read and SheetError with every mistake of the sheet.
    """
    sheet = read_sheet(read_text(path), file=str(path))
    header = sheet.header
    for name, said in (("paper", paper), ("print", size), ("fit", fit), (MARKS, marks), ("braille", braille)):
        if said is not None:
            header = _set(header, name, said)
    return in_languages(replace(sheet, header=header), _languages(languages))


def _languages(typed: str) -> str:
    try:
        return languages_typed(typed)
    except InputError as refused:
        raise SettingError(refused.what, where="the languages asked for", remedy=refused.remedy) from None


def _set(header: Header, name: str, said: str) -> Header:
    try:
        return setting_named(name).read(header, said)
    except SettingError as refused:
        raise SettingError(refused.what, where=f"the {name} asked for", remedy=refused.remedy) from None
