"""How a story is built."""

from enum import Enum


class Structure(Enum):
    """How a story is built.

    Source: the kinds of addition and subtraction problems of Carpenter and Moser (1984), which table 1 in the
    glossary of the Common Core State Standards for Mathematics (2010) lists (both from memory). To tell one
    amount in other pieces is our own addition.
    """

    TAKE_FROM = "take from"
    PUT_TOGETHER = "put together"
    COMPARE = "compare"
    PART_UNKNOWN = "part unknown"
    SAME_AMOUNT = "same amount"
