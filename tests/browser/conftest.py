"""One Chromium for each file of tests here."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, expect

from tests.kit.browsers import chromium
from tests.kit.waiting import GIVE_UP

# What a page is expected to show, it may show late on a busy machine.
expect.set_options(timeout=GIVE_UP * 1000)


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    """A browser of its own, with a fresh profile and no network of its own."""
    with chromium() as started:
        yield started
