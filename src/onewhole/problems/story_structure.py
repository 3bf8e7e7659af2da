"""How a story is built."""

from enum import Enum


class Structure(Enum):
    """How a story is built.

    Source: the kinds of addition and subtraction problems of Carpenter and Moser (1984), which table 1 in
    the glossary of the Common Core State Standards for Mathematics (2010) lists (both from memory). Of
    two that are compared the smaller one may be unknown, or the wording may be turned: "3 more than" is
    taken away then (table 1; Lewis and Mayer, 1987, from memory). Equal groups, areas and times as much
    are those of table 2 there (from memory), and so are sharing, where how many each gets is unknown, and
    measuring out, where how many groups there are. Several steps are 3.OA.D.8 and 4.OA.A.3, a part of an
    amount is 5.NF.B.4.a, elapsed time 4.MD.A.2, and what is asked of a line plot 4.MD.B.4 and 5.MD.B.2.
    To tell one amount in other pieces, units or forms, or about how much it is, are our own additions.
    """

    TAKE_FROM = "take from"
    ADD_TO = "add to"
    PUT_TOGETHER = "put together"
    COMPARE = "compare"
    SMALLER_UNKNOWN = "smaller unknown"
    TURNED = "turned wording"
    PART_UNKNOWN = "part unknown"
    SAME_AMOUNT = "same amount"
    EQUAL_GROUPS = "equal groups"
    TIMES_AS_MUCH = "times as much"
    AREA = "area"
    PART_OF = "part of"
    SHARING = "sharing"
    MEASURING_OUT = "measuring out"
    HOW_MANY_TIMES = "how many times"
    SEVERAL_STEPS = "several steps"
    ABOUT = "about how much"
    ELAPSED_TIME = "elapsed time"
    LINE_PLOT = "line plot"
