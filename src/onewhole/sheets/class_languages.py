"""The languages of a class: in which its pages are where a sheet names none of its own."""

from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.languages.table import LANGUAGES, code_of, language_named, spoken_by
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Header
from onewhole.sheets.settings import setting_named

#: The settings that are read anew in another language.
_WHOLE = "whole"
_READ_ANEW = (_WHOLE, "wholes", "stories", "say")
_LANGUAGES = "languages"


def languages_typed(typed: str) -> str:
    """Return languages as a sheet's head has them, each once; nothing for nothing.

    Raises InputError for what is no language.

    >>> languages_typed("EN,es, es")
    'en, es'
    """
    return ", ".join(each_language(typed))


def each_language(typed: str) -> tuple[str, ...]:
    """Return the letters of each language that is typed, once. Raises InputError for what is no language.

    >>> each_language("en, es"), each_language(" ")
    (('en', 'es'), ())
    """
    named = typed.split(",") if typed.strip() else ()
    return tuple(dict.fromkeys(code_of(language_named(one)) for one in named))


def in_languages(sheet: Sheet, languages: str) -> Sheet:
    r"""Return a sheet as if its head named a class's languages; one that names its own, or none, as it is.

    >>> from onewhole.sheets.reading import read_sheet
    >>> sheet = in_languages(read_sheet("whole: strip\n\n1. 7 2/6 - 3 5/6"), "es, en")
    >>> sheet.header.words.wholes, [words.language for words in sheet.header.spoken_at_home]
    ('tiras', ['es-US', 'en-US'])
    """
    if not languages or sheet.header.home is not None:
        return sheet
    return replace(sheet, header=_spoken(sheet.header, languages))


def other_languages(sheet: Sheet) -> tuple[Sheet, ...]:
    """Return a sheet in every language that a class may have given its pupils' page, its own first."""
    if sheet.header.home is not None:
        return (sheet,)
    others = (tag for tag in LANGUAGES if tag != sheet.header.words.language)
    return (sheet, *(in_languages(sheet, tag) for tag in others))


def _spoken(header: Header, languages: str) -> Header:
    """Read the words of a header in the first of the languages, and name the others for the page for home."""
    spoken = setting_named(_LANGUAGES).read(header, languages)
    if spoken.words.language == header.words.language:
        return spoken
    for setting in map(setting_named, _READ_ANEW):
        said = setting.write(header)
        if said == setting.write(Header()):
            continue
        if setting.name == _WHOLE:
            said = spoken_by(spoken.words).known(said.lower()) or said
        try:
            spoken = setting.read(spoken, said)
        except InputError:
            continue
    return spoken
