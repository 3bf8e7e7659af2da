"""A door on a class with three invented weeks, and the table's addresses with something in every place."""

import re
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from onewhole.web.http.handling import PageRoute
from tests.kit.doors import NOW, Opened, opened
from tests.kit.invented import lay_invented_class

_PLACE = re.compile(r"\{(\w+)(?::int)?\}")
#: What stands in an address; a night that was handed in, a pupil who wrote something.
PLACES: dict[str, str] = {
    "book": "mine",
    "room": "1",
    "night": "3",
    "code": "K05",
    "label": "1",
    "sheet": "1",
    "job": "none",
    "file": "morning.pdf",
    "kind": "pupil",
    "version": "1",
}


@contextmanager
def lived_in(folder: Path, *, read: bool = True, stop: Callable[[], None] | None = None) -> Iterator[Opened]:
    """Open a door whose own file holds the invented class, its answers read or not, with its session."""
    lay_invented_class(folder, NOW, read=read)
    with opened(folder, stop=stop) as door:
        yield door


def address(route: PageRoute, **places: str) -> str:
    """Return the address of a row with something in every place. KeyError for a place that is not known.

    >>> from onewhole.web.pages import job
    >>> address(PageRoute("GET", "/{book}/{room:int}/week", job.look), room="2")
    '/mine/2/week'
    """
    return _PLACE.sub(lambda place: {**PLACES, **places}[place[1]], route.path)


def places(route: PageRoute) -> list[str]:
    """Return the names of the places in an address.

    >>> from onewhole.web.pages import job
    >>> places(PageRoute("GET", "/{book}/{room:int}/week", job.look))
    ['book', 'room']
    """
    return _PLACE.findall(route.path)
