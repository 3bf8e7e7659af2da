"""One Chromium for each file of tests here."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser

from tests.kit.browsers import chromium


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    """A browser of its own, with a fresh profile and no network of its own."""
    with chromium() as started:
        yield started
