"""The table of contents of the browser door, written by hand: method, address, page, what its form takes."""

from onewhole.web.handling import Way
from onewhole.web.pages import start, work

WAYS: tuple[Way, ...] = (
    Way("GET", "/", start.start),
    Way("GET", "/work/{work}", work.look),
    Way("GET", "/work/{work}/now", work.now),
)
