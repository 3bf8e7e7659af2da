"""The rows of the route table, each with its whole address."""

from onewhole.web.http.handling import PageRoute, whole_routes
from onewhole.web.routes import TABLE

ROUTES: tuple[PageRoute, ...] = whole_routes(TABLE)
