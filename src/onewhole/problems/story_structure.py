"""How a story is built."""

from enum import Enum


class Structure(Enum):
    """How a story is built.

    Source: the kinds of addition and subtraction problems of Carpenter and Moser (1984), which table 1 in the
    glossary of the Common Core State Standards for Mathematics (2010) lists (both from memory). Equal groups,
    areas and times as much are those of table 2 there (from memory). A part of an amount is 5.NF.B.4.a and
    elapsed time 4.MD.A.2. To tell one amount in other pieces, units or forms, or about how much it is, are
    our own additions.
    """

    TAKE_FROM = "take from"
    PUT_TOGETHER = "put together"
    COMPARE = "compare"
    PART_UNKNOWN = "part unknown"
    SAME_AMOUNT = "same amount"
    EQUAL_GROUPS = "equal groups"
    TIMES_AS_MUCH = "times as much"
    AREA = "area"
    PART_OF = "part of"
    ABOUT = "about how much"
    ELAPSED_TIME = "elapsed time"
