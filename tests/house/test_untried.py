"""A run of the tests says in its last line what it left out."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.house.plan import ROOT

ONE = "tests/browser/test_settled.py"


@pytest.mark.parametrize("more", [(), ("-n", "1")], ids=["alone", "as `make test` runs them"])
def test_without_a_browser_the_last_line_says_so(tmp_path: Path, more: tuple[str, ...]) -> None:
    """With a PATH on which there is no chromium: how many tests, and the one command that installs it."""
    command = [
        sys.executable,
        "-m",
        "pytest",
        *("-p", "no:cacheprovider"),
        *more,
        ONE,
    ]
    environment = {**os.environ, "PATH": str(tmp_path)}
    ran = subprocess.run(command, cwd=ROOT, env=environment, capture_output=True, text=True, check=False)
    assert ran.returncode == 0, ran.stdout + ran.stderr
    assert ran.stdout.splitlines()[-1] == (
        "Not tried: 2 tests that open our pages in a browser."
        " To try them: apt-get install chromium-headless-shell fonts-dejavu-core"
    )
