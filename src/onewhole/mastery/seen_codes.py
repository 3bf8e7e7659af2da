"""Which codes may have been there before, in as much room for a million pupils as for ten."""

#: Marks in the field: eight million, one megabyte.
MARKS = 1 << 23


class SeenCodes:
    """A field of marks: a code that was added before is always known, and few others are taken for known.

    >>> seen = SeenCodes()
    >>> seen.add("K01"), seen.add("K01")
    (False, True)
    """

    def __init__(self) -> None:
        self._marks = bytearray(MARKS // 8)

    def add(self, code: str) -> bool:
        """Add a code; say whether it may have been there before."""
        place, bit = divmod(hash(code) % MARKS, 8)
        known = bool(self._marks[place] >> bit & 1)
        self._marks[place] |= 1 << bit
        return known
