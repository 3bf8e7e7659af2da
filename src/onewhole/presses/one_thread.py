"""Linear algebra on one thread: the squares of a skill model are small, and threads that wait for each
other cost more than they bring, most of all beside other work.
"""

import ctypes
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path

import numpy as np
import scipy

#: The packages that bring an OpenBLAS of their own along, where it lies beside each, and what its functions
#: are called there: from their built packages; where it is called otherwise, nothing is set.
LIBRARIES = (
    (np.__file__, "numpy.libs", "scipy_openblas_get_num_threads64_", "scipy_openblas_set_num_threads64_"),
    (scipy.__file__, "scipy.libs", "scipy_openblas_get_num_threads", "scipy_openblas_set_num_threads"),
)


@contextmanager
def one_thread() -> Iterator[None]:
    """Let NumPy and SciPy work on one thread within; where their libraries are others, nothing is changed.

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
    for package, beside, asked, set_by in LIBRARIES:
        folder = Path(package).parent
        for place in (folder.parent / beside, folder / ".dylibs"):
            for file in sorted(place.glob("*openblas*")):
                library = ctypes.CDLL(str(file))
                ask = getattr(library, asked, None)
                give = getattr(library, set_by, None)
                if ask is not None and give is not None:
                    ask.restype, give.argtypes, give.restype = ctypes.c_int, (ctypes.c_int,), None
                    found.append((ask, give))
    return tuple(found)
