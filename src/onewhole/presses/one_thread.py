"""Linear algebra on one thread: the squares of a skill model are small, and threads that wait for each
other cost more than they bring, most of all beside other work.
"""

import ctypes
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path

import numpy as np

#: Where the OpenBLAS lies that NumPy brings along, and what its functions are called there: from its built
#: packages; where it is called otherwise, nothing is set.
BESIDE = "numpy.libs"
ASKED, SET_BY = "scipy_openblas_get_num_threads64_", "scipy_openblas_set_num_threads64_"


@contextmanager
def one_thread() -> Iterator[None]:
    """Let NumPy work on one thread within; where its library is another, nothing is changed.

    >>> with one_thread():
    ...     float(np.eye(2).trace())
    2.0
    """
    before = [(give, ask()) for ask, give in _threads()]
    try:
        for give, _ in before:
            give(1)
        yield
    finally:
        for give, number in before:
            give(number)


@cache
def _threads() -> tuple[tuple[Callable[[], int], Callable[[int], None]], ...]:
    """Return for each library how many threads are asked for and set."""
    found = []
    folder = Path(np.__file__).parent
    for place in (folder.parent / BESIDE, folder / ".dylibs"):
        for file in sorted(place.glob("*openblas*")):
            library = ctypes.CDLL(str(file))
            ask = getattr(library, ASKED, None)
            give = getattr(library, SET_BY, None)
            if ask is not None and give is not None:
                ask.restype, give.argtypes, give.restype = ctypes.c_int, (ctypes.c_int,), None
                found.append((ask, give))
    return tuple(found)
