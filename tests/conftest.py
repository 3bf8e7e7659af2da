"""What every test gets: the Hypothesis profiles and the switch that accepts new output."""

import os

import pytest
from hypothesis import settings

# What fails in a helper says what it found, as a test does.
pytest.register_assert_rewrite("tests.kit")

# `ci` tries the same examples each time, so that a red build is red on every machine. To look for new ones:
# pytest --hypothesis-profile=explore
settings.register_profile("ci", derandomize=True, max_examples=100, deadline=None)
settings.register_profile("explore", max_examples=2000, deadline=None)
settings.load_profile("ci")


@pytest.fixture
def accept() -> bool:
    """True when ONEWHOLE_ACCEPT=1: a test that compares with a kept file writes the file anew instead."""
    return os.environ.get("ONEWHOLE_ACCEPT") == "1"
