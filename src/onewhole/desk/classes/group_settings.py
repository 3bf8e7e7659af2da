"""How many groups a class's teacher meets and of which sizes, kept in the class's file."""

import msgspec

from onewhole.desk.classes.seen import is_to_be_written
from onewhole.marking.grouping.group_settings import USUAL, GroupSettings, Sizes
from onewhole.store.opening import Store
from onewhole.store.settings import set_setting, setting


def groups_of(book: Store, room_number: int) -> GroupSettings:
    """Return the settings of a class's groups; the usual ones where none can be read."""
    text = setting(book, _name(room_number))
    try:
        return USUAL if text is None else msgspec.json.decode(text, type=GroupSettings)
    except (msgspec.DecodeError, RecursionError):
        return USUAL


def set_groups(
    book: Store, room_number: int, meets: int, sizes: tuple[int, int], *, saw: str | None = None
) -> None:
    """Keep how many groups of a class are met and their sizes, for the nights that are read from now on.

    ``saw`` is what the window that changes them was shown (:func:`settings_text`). Raises InputError for
    numbers that cannot be, and ChangedMeanwhile.
    """
    settings = GroupSettings(meets, Sizes(*sizes))
    with book.transaction() as within:
        stands, typed = settings_text(groups_of(within, room_number)), settings_text(settings)
        if is_to_be_written("The size of groups", typed, saw, stands):
            set_setting(within, _name(room_number), msgspec.json.encode(settings).decode())


def settings_text(settings: GroupSettings) -> str:
    """Return settings in a few words.

    >>> settings_text(USUAL)
    '4 groups of 3 to 6'
    """
    return f"{settings.meets} groups of {settings.sizes.smallest} to {settings.sizes.largest}"


def _name(room_number: int) -> str:
    return f"groups of class {room_number}"
