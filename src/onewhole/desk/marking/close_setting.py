"""Whether the grid of a class stands close together: as the teacher chose, or by its size."""

from onewhole.store.opening import Store
from onewhole.store.settings import set_setting, setting

#: A larger grid stands close together by itself: more problems, or more papers.
PROBLEMS, PAPERS = 12, 15

_WORDS = {True: "close", False: "wide"}


def is_close(book: Store, room_number: int, *, problems: int, papers: int) -> bool:
    """Say whether the grid of a class stands close together."""
    chosen = setting(book, _name(room_number))
    usual = problems > PROBLEMS or papers > PAPERS
    return usual if chosen not in _WORDS.values() else chosen == _WORDS[True]


def set_close(book: Store, room_number: int, *, close: bool) -> None:
    """Keep how the grids of a class stand from now on."""
    set_setting(book, _name(room_number), _WORDS[close])


def _name(room_number: int) -> str:
    return f"grid of class {room_number}"
