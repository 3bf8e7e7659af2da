"""What the tests of the browser door share."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.kit.doors import Opened, opened
from tests.kit.passwords import hash_quickly


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A door to an empty class file, with an open session."""
    with opened(tmp_path) as made:
        yield made


@pytest.fixture(autouse=True)
def quick_hash(monkeypatch: pytest.MonkeyPatch) -> None:
    """Hash a password that is set quickly: what it costs is tested at the desk."""
    hash_quickly(monkeypatch)
