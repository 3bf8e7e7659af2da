"""A kept page renamed or copied; every version stays."""

from datetime import datetime

from onewhole.desk.classes.class_list import name_seen
from onewhole.desk.classes.class_records import LONGEST_NAME
from onewhole.desk.page.kept_pages import KeptPage, keep_page, kept_versions
from onewhole.findings.click import SettingLine
from onewhole.sheets.sheet_editor import SheetEditor
from onewhole.store.opening import Store
from onewhole.store.sheets import versions_of

#: What stands behind the title of a copy.
COPY = " (copy)"


def rename_page(book: Store, sheet: int, title: str, now: datetime, *, saw: int | None = None) -> KeptPage:
    """Keep a page under another title, as its next version; a night that is set keeps the page it has.

    ``saw`` is the version that the window saw. Raises InputError, ChangedMeanwhile and NotThere.
    """
    return _kept(book, sheet, sheet, name_seen(title, "This page"), now, saw=saw)


def copy_page(book: Store, sheet: int, now: datetime) -> KeptPage:
    """Keep the newest version of a page once more, as a page of its own. Raises NotThere."""
    title = kept_versions(book, sheet)[0].title
    return _kept(book, sheet, None, title[: LONGEST_NAME - len(COPY)] + COPY, now)


def _kept(
    book: Store, sheet: int, goal: int | None, title: str, now: datetime, *, saw: int | None = None
) -> KeptPage:
    with book.transaction() as within:
        newest = versions_of(within, sheet)[-1]
        typed = SheetEditor.of(newest.typed).with_setting(SettingLine("title", title)).typed
        return keep_page(within, goal, typed, now, recipe=newest.recipe or "", saw=saw)
