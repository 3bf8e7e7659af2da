"""What the tests of the browser door share."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from argon2 import PasswordHasher

from onewhole.desk.keep import password
from tests.kit.doors import Opened, opened


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A door to an empty class file, with an open session."""
    with opened(tmp_path) as made:
        yield made


@pytest.fixture(autouse=True)
def quick_hash(monkeypatch: pytest.MonkeyPatch) -> None:
    """Hash a password that is set at the least cost that Argon2id takes: what it costs is tested at the desk.

    A hash itself says its cost, so that the check is as quick.
    """
    monkeypatch.setattr(password, "_HASHER", PasswordHasher(time_cost=1, memory_cost=8, parallelism=1))
