"""The syntax trees of the source are read once for this folder, and let go after its last test."""

from pathlib import Path

import pytest

from tests.house import plan, reach

HERE = Path(__file__).parent


def pytest_runtest_teardown(nextitem: pytest.Item | None) -> None:
    """Let go of them when a test of another folder comes next."""
    if nextitem is None or not nextitem.path.is_relative_to(HERE):
        plan.forget_trees()
        reach.modules.cache_clear()
