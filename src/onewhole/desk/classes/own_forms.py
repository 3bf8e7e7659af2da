"""In what form pupils of a class read pages: seen, typed, kept."""

from collections.abc import Mapping
from datetime import date

from msgspec import Struct

from onewhole.desk.classes.class_records import room
from onewhole.desk.classes.forms import Forms
from onewhole.desk.classes.rosters import in_class_on
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.errors import InputError
from onewhole.findings.own_page import OwnPage
from onewhole.store.classes import Pupil
from onewhole.store.opening import Store
from onewhole.store.own_pages import keep_own_page, own_pages_of

#: What is typed for the form that everybody has, and what for another.
AS_THE_CLASS = ""
FORMS = tuple(form.value for form in OwnPage)


class FormRow(Struct, frozen=True):
    """A pupil with the form of the own pages; None is the print of the class."""

    pupil: Pupil
    form: OwnPage | None

    @property
    def typed(self) -> str:
        """Return the form as it is typed."""
        return _typed(self.form)


def _typed(form: OwnPage | None) -> str:
    return form.value if form else AS_THE_CLASS


def forms_of_class(book: Store, room_number: int) -> tuple[FormRow, ...]:
    """Return every pupil of a class with the form of the pages. Raises NotThere."""
    with book.snapshot() as seen:
        here, forms = room(seen, room_number), own_pages_of(seen, room_number)
    return tuple(FormRow(one, forms.get(one.code)) for one in here.pupils)


def forms_on(book: Store, room_number: int, day: date) -> Forms:
    """Return the forms of the pages of those who are in a class on a day, where it is not the usual print.

    Raises NotThere.
    """
    with book.snapshot() as seen:
        room(seen, room_number)
        here, forms = in_class_on(seen, room_number, day), own_pages_of(seen, room_number)
    return {code: form for code, form in forms.items() if code in here}


def own_readers(book: Store, room_number: int) -> int:
    """Return how many pupils of a class read their pages in another form than its print."""
    return len(own_pages_of(book, room_number))


def form_typed(typed: str) -> OwnPage | None:
    """Return the form that a word stands for, None for nothing. Raises InputError with those there are.

    >>> form_typed("Braille"), form_typed("large"), form_typed("")
    (<OwnPage.BRAILLE: 'braille'>, <OwnPage.LARGE: 'large print'>, None)
    """
    plain = " ".join(typed.split()).lower()
    if not plain:
        return None
    for form in OwnPage:
        if plain in {form.value, form.value.partition(" ")[0]}:
            return form
    raise InputError(
        f"“{typed[:40]}” is no form of a page",
        remedy=f"Write one of: {', '.join(FORMS)}, or nothing.",
    )


def keep_forms(book: Store, room_number: int, typed: Mapping[str, str], saw: Mapping[str, str]) -> int:
    """Keep the forms typed beside the codes; return for how many pupils one changed. All are kept, or none.

    ``saw`` is what stood there when the window was loaded. Raises InputError, ChangedMeanwhile and NotThere.
    """
    changed = 0
    with book.transaction() as within:
        here, stand = room(within, room_number), own_pages_of(within, room_number)
        for code, word in typed.items():
            pupil = here.pupil(code)
            wanted, now = form_typed(word), stand.get(pupil.code)
            what = f"The form of the pages of {here.shown(pupil.code)}"
            if is_to_be_written(what, _typed(wanted), saw.get(code), _typed(now)):
                keep_own_page(within, room_number, pupil.code, wanted)
                changed += 1
    return changed
