"""In what form pupils read pages, of those for whom it is not the usual print."""

from sqlalchemy import delete, insert, select

from onewhole.findings.own_page import OwnPage
from onewhole.store import tables
from onewhole.store.classes import find_pupil
from onewhole.store.opening import Store


def keep_own_page(store: Store, class_number: int, code: str, form: OwnPage | None) -> None:
    """Keep the form of a pupil's pages instead of what stands; None is the usual print. Raises `NotThere`."""
    rows = tables.own_pages
    with store.writing() as connection:
        number = find_pupil(connection, class_number, code).number
        connection.execute(delete(rows).where(rows.c.pupil_number == number))
        if form is not None:
            connection.execute(insert(rows).values(pupil_number=number, form=form.value))


def own_pages_of(store: Store, class_number: int) -> dict[str, OwnPage]:
    """Return the form of the pages of pupils of a class by code, of those whose is not the usual one."""
    rows, pupils = tables.own_pages.c, tables.pupils.c
    asked = (
        select(pupils.code, rows.form)
        .join(tables.pupils, pupils.number == rows.pupil_number)
        .where(pupils.class_number == class_number)
        .order_by(pupils.number)
    )
    with store.reading() as connection:
        return {code: OwnPage(form) for code, form in connection.execute(asked)}
