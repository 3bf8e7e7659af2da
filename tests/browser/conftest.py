"""One Chromium for all tests of this folder that a process does one after another."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, expect

from tests.kit.browsers import chromium
from tests.kit.waiting import GIVE_UP

# What a page is expected to show, it may show late on a busy machine.
expect.set_options(timeout=GIVE_UP * 1000)


@pytest.fixture(scope="package")
def browser() -> Iterator[Browser]:
    """A browser with a fresh profile and no network of its own; each window has its own session."""
    with chromium() as started:
        yield started
