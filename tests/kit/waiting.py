"""Waiting in tests: for something to hold, never for a time to pass.

The only place where a test lets time go by. Nothing is asserted on how long it took: `GIVE_UP` is there so
that a test that would wait for ever fails instead, and lies far beyond what a busy machine needs.
"""

from collections.abc import Callable
from itertools import repeat
from time import sleep
from typing import TypeVar

LOOK_AGAIN, GIVE_UP = 0.02, 120

Held = TypeVar("Held")


def until(holds: Callable[[], Held | None], what: str = "it") -> Held:
    """Ask again and again until the answer is true, and return that answer.

    >>> answers = iter([0, 0, 7])
    >>> until(lambda: next(answers))
    7
    """
    for _ in repeat(None, round(GIVE_UP / LOOK_AGAIN)):
        if found := holds():
            return found
        sleep(LOOK_AGAIN)
    raise AssertionError(f"waited for in vain: {what}")
