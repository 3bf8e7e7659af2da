"""An open store in a folder of its own."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.store.opening import Store, open_store


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """A new store, closed after the test."""
    opened = open_store(tmp_path / "room12.class")
    yield opened
    opened.close()
