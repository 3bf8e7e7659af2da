"""The plan is read from the contract as the house tells it."""

import subprocess
import sys

from tests.house.plan import ROOT, floors, pure_rooms


def test_the_floors_are_numbered_from_the_ground() -> None:
    """errors.py lies under floor 0; the doors are floor 8."""
    assert [number for number, _ in floors()] == [
        *("8", "7", "6", "5", "4", "3c", "3b", "3a", "2b", "2a", "1", "0b", "0a", ""),
    ]
    assert floors()[0] == ("8", ("web", "cli"))
    assert floors()[-2:] == (("0a", ("number",)), ("", ("errors",)))


def test_the_pure_heart_ends_with_the_writers() -> None:
    """Floors 0 to 5 are pure; machines and the database begin above."""
    assert pure_rooms()[0] == "writers"
    assert not {"desk", "presses", "store", "cli", "web"} & set(pure_rooms())


def test_every_import_contract_is_kept() -> None:
    """A room imports only from floors below, and every room is on the plan."""
    run = subprocess.run(
        [sys.executable, "-c", "import sys, importlinter.cli; sys.exit(importlinter.cli.lint_imports())"],
        cwd=ROOT,
        check=False,
        capture_output=True,
        text=True,
    )
    assert run.returncode == 0, run.stdout + run.stderr
