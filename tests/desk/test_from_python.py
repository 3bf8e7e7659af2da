"""The acts as `import onewhole` gives them."""

import subprocess
import sys
from importlib import import_module

import pytest

import onewhole

ACTS = ("audit", "check", "mark", "patterns", "work")
FOLDER = {"mark": "marking"}


@pytest.mark.parametrize("act", ACTS)
def test_each_is_the_act_of_the_desk(act: str) -> None:
    """The same function, found by its name, by `from onewhole import ...` and in `dir`."""
    assert getattr(onewhole, act) is getattr(
        import_module(f"onewhole.desk.{FOLDER.get(act, 'page')}.{act}"), act
    )
    assert act in onewhole.__all__
    assert act in dir(onewhole)


def test_there_is_nothing_else() -> None:
    """A name that is no act is refused as Python does."""
    assert sorted(onewhole.__all__) == list(ACTS)
    with pytest.raises(AttributeError, match="module 'onewhole' has no attribute 'fly'"):
        onewhole.fly  # noqa: B018 - asking for it is the test


def test_results_are_typed() -> None:
    """Each result is of a class of ours; the fields that the docs name are there."""
    assert onewhole.work("7 2/6 - 3 5/6").lines[0].because is None
    assert onewhole.check("1/2 = 2/4")[0].first_false is None
    assert onewhole.patterns("9 5/8 - 4 6/8")[0].pattern == "A01"
    assert onewhole.audit("1. 52 - 27").page.problems[0].label == "1"
    assert onewhole.mark("1. 52 - 27", "pupil,1\nK01,25\n").marks.pupils[0].pupil == "K01"


def test_importing_it_loads_no_room() -> None:
    """A room is loaded when an act is asked for."""
    code = "import sys, onewhole; print([name for name in sys.modules if name.startswith('onewhole')])"
    said = subprocess.run([sys.executable, "-c", code], check=True, capture_output=True, text=True).stdout
    assert said == "['onewhole']\n"
