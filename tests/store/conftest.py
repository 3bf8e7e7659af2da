"""An open store in a folder of its own."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from onewhole.store.keeping import settle
from onewhole.store.opening import Store, open_store
from tests.kit.kept import every_kind_of_row


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """A new store, closed after the test."""
    opened = open_store(tmp_path / "room12.class")
    yield opened
    opened.close()


@pytest.fixture(scope="session")
def full_file(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """The bytes of a file with rows in every table."""
    store = open_store(tmp_path_factory.mktemp("full") / "room12.class")
    every_kind_of_row(store)
    settle(store)
    return store.path.read_bytes()


@pytest.fixture
def full(full_file: bytes, tmp_path: Path) -> Iterator[Store]:
    """A store with rows in every table, closed after the test."""
    path = tmp_path / "room12.class"
    path.write_bytes(full_file)
    opened = open_store(path)
    yield opened
    opened.close()
