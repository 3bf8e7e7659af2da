"""Of a test with many cases the usual run tries few, spread over them; CI tries them all."""

from collections.abc import Iterable, Iterator
from itertools import groupby
from typing import Final
from zlib import crc32

#: How many cases of a test are tried; of one in a browser the one screen or the other.
FEW: Final = 2
FEW_BY_FOLDER: Final = {"tests/browser/": 1}


def tried(test: str, cases: int) -> set[int]:
    """Return which of a test's cases the usual run tries: evenly spread, the first one by the test's name.

    >>> sorted(tried("tests/number/test_ratio.py::test_any", 2))
    [0, 1]
    >>> len(tried("tests/number/test_ratio.py::test_any", 100))
    2
    """
    few = next((few for folder, few in FEW_BY_FOLDER.items() if test.startswith(folder)), FEW)
    if cases <= few:
        return set(range(cases))
    first = crc32(test.encode()) % cases
    return {(first + at * cases // few) % cases for at in range(few)}


def left_out(names: Iterable[str]) -> Iterator[str]:
    """Yield the cases that the usual run leaves out, of tests named `file::test[case]` in their order."""
    for test, some in groupby(names, key=lambda name: name.partition("[")[0]):
        cases = list(some)
        taken = tried(test, len(cases))
        yield from (case for at, case in enumerate(cases) if at not in taken)
