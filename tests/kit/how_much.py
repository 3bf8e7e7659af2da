"""How much of what can be tried a run tries: `make test` a sample, CI more of it, `make walk` the whole.

Each of the three tries every room: they differ in how many problems, pages, files or examples a behaviour is
tried on. The usual run also leaves out most cases of a test that has many (`few_cases.py`) and long ways that
are marked `more`. CI runs `make test MORE=1`, which leaves out none.
"""

import os
from typing import TypeVar

#: `make walk`: the whole of each small world.
WHOLE = bool(os.environ.get("ONEWHOLE_WHOLE_WALK"))
#: What CI runs, and `make walk`.
MORE = WHOLE or bool(os.environ.get("ONEWHOLE_MORE"))
#: Examples of Hypothesis in the usual run and in CI.
EXAMPLES, MORE_EXAMPLES = 12, 24

Amount = TypeVar("Amount")


def sample(few: Amount, more: Amount, whole: Amount | None = None) -> Amount:
    """Return what this run tries of the three; without ``whole`` the whole walk takes ``more``."""
    if WHOLE and whole is not None:
        return whole
    return more if MORE else few
