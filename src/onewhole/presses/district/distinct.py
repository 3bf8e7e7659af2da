"""The different rows of a table of small numbers, in order: sorted as whole numbers, not as rows."""

import numpy as np
from numpy.typing import NDArray

Places = NDArray[np.intp]
#: A key is a whole number of 64 bits; with a bit to spare.
_ROOM = 2**63


def distinct_rows(codes: NDArray[np.unsignedinteger]) -> tuple[Places, Places]:
    """Return where each of the different rows stands first, sorted by their numbers; and by row its place.

    >>> first, place = distinct_rows(np.array([[2, 1], [0, 5], [2, 1]], dtype=np.uint16))
    >>> first.tolist(), place.tolist()
    ([1, 0], [1, 0, 1])
    """
    keys = _keys(codes)
    order = np.argsort(keys[0], kind="stable") if len(keys) == 1 else np.lexsort(keys[::-1])
    begins = np.zeros(len(codes), dtype=np.bool_)
    begins[:1] = True
    for key in keys:
        begins[1:] |= key[order][1:] != key[order][:-1]
    place = np.empty(len(codes), dtype=np.intp)
    place[order] = np.cumsum(begins) - 1
    return order[begins], place


def _keys(codes: NDArray[np.unsignedinteger]) -> list[NDArray[np.uint64]]:
    """Put as many columns as there is room for into one whole number, the first counting most."""
    keys: list[NDArray[np.uint64]] = []
    room = _ROOM
    for column in codes.T:
        size = int(column.max(initial=0)) + 1
        if keys and room * size <= _ROOM:
            keys[-1] *= np.uint64(size)
            keys[-1] += column
            room *= size
        else:
            keys.append(column.astype(np.uint64))
            room = size
    return keys
