"""The addresses of the route table: each is built from the name of its page function, never glued."""

from collections.abc import Iterable, Mapping

from msgspec import Struct
from starlette.requests import Request
from starlette.responses import Response
from starlette.routing import Route


class Addresses(Struct, frozen=True):
    """The address pattern of every page function by its name (``marking.look``)."""

    _routes: Mapping[str, Route]

    @classmethod
    def of(cls, patterns: Iterable[tuple[str, str]]) -> "Addresses":
        """Return the addresses of these names and patterns. ValueError for a name that is there twice."""
        routes: dict[str, Route] = {}
        for name, pattern in patterns:
            if name in routes:
                msg = f"there are two routes to {name}"
                raise ValueError(msg)
            routes[name] = Route(pattern, _nothing, name=name)
        return cls(routes)

    def at(self, name: str, places: Mapping[str, object]) -> str:
        """Return the address of a page function. KeyError for one that is not there or a missing place.

        >>> addresses = Addresses.of([("week.look", "/{book}/{room:int}/week"), ("start.start", "/")])
        >>> (
        ...     addresses.at("week.look", {"book": "mine", "room": 1, "code": "K01"}),
        ...     addresses.at("start.start", {}),
        ... )
        ('/mine/1/week', '/')
        """
        route = self._routes[name]
        return str(route.url_path_for(name, **{place: places[place] for place in route.param_convertors}))


async def _nothing(_request: Request) -> Response:
    return Response(status_code=404)
