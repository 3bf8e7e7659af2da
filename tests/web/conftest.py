"""What the tests of the browser door share."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.kit.doors import Opened, opened


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A door to an empty class file, with an open session."""
    with opened(tmp_path) as made:
        yield made
