"""In-memory caches of what was computed from pupils' answers: bounded, and emptied when a pupil is erased."""

from collections.abc import Callable
from functools import lru_cache, wraps
from typing import TypeVar, TypeVarTuple

_Given = TypeVarTuple("_Given")
_R = TypeVar("_R")
_CLEAR: list[Callable[[], None]] = []


def pupil_cache(maxsize: int) -> Callable[[Callable[[*_Given], _R]], Callable[[*_Given], _R]]:
    """Cache a function's last `maxsize` results, as `lru_cache`, until :func:`clear_pupil_caches` is called.

    A result that was still being computed at that moment is not remembered either.

    >>> read = []
    >>> counted = pupil_cache(maxsize=8)(lambda answer: read.append(answer))
    >>> _ = counted("4 7/8"), counted("4 7/8"), clear_pupil_caches(), counted("4 7/8")
    >>> read
    ['4 7/8', '4 7/8']
    """

    def cached(function: Callable[[*_Given], _R]) -> Callable[[*_Given], _R]:
        made = lru_cache(maxsize=maxsize)(function)
        cleared = 0

        def clear() -> None:
            nonlocal cleared
            cleared += 1
            made.cache_clear()

        @wraps(function)
        def call(*args: *_Given) -> _R:
            before = cleared
            result = made(*args)
            if cleared != before:
                made.cache_clear()
            return result

        _CLEAR.append(clear)
        return call

    return cached


def clear_pupil_caches() -> None:
    """Forget every result that was computed from pupils' answers."""
    for clear in _CLEAR:
        clear()
