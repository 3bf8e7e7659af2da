"""The languages of a class, kept in its file: in which its pages are where a sheet names none of its own."""

from collections.abc import Sequence

from onewhole.desk.classes.seen import is_to_be_written
from onewhole.errors import InputError
from onewhole.languages.table import LANGUAGES, SPOKEN, code_of
from onewhole.sheets.class_languages import each_language, languages_typed
from onewhole.store.opening import Store
from onewhole.store.settings import set_setting, setting


def languages_of(book: Store, room_number: int) -> str:
    """Return the languages of a class as a sheet's head has them; nothing where none are kept."""
    try:
        return languages_typed(setting(book, _name(room_number)) or "")
    except InputError:
        return ""


def languages_there() -> dict[str, str]:
    """Return the languages that pages can be in by their letters, each by its own name.

    >>> languages_there()["es"]
    'español'
    """
    return {code_of(one): one.name for one in LANGUAGES.values()}


def languages_chosen(typed: str) -> tuple[str, tuple[str, ...]]:
    """Return the language of the pupils' page, and those of further pages for home.

    >>> languages_chosen("es, en"), languages_chosen("")
    (('es', ('en',)), ('en', ()))
    """
    first, *home = each_language(typed) or (code_of(SPOKEN),)
    return first, tuple(home)


def chosen_languages(first: str, home: Sequence[str]) -> str:
    """Return languages from the one of the pupils' page and those of further pages for home.

    >>> chosen_languages("en", []), chosen_languages("en", ["es"]), chosen_languages("es", ["es", "en"])
    ('', 'en, es', 'es, en')
    """
    typed = languages_typed(", ".join((first, *home)))
    return "" if typed == code_of(SPOKEN) else typed


def set_languages(book: Store, room_number: int, typed: str, *, saw: str | None = None) -> None:
    """Keep the languages of a class: en, es; nothing forgets them.

    ``saw`` is what the window that changes them was shown. Raises InputError and ChangedMeanwhile.
    """
    wanted = languages_typed(typed)
    with book.transaction() as within:
        stands = languages_of(within, room_number)
        if is_to_be_written("The languages of the class", wanted, saw, stands):
            set_setting(within, _name(room_number), wanted or None)


def _name(room_number: int) -> str:
    return f"languages of class {room_number}"
