"""Questions about a number that is missing in an equation."""

from msgspec import Struct

from onewhole.number.quantity import Quantity


class ComesTo(Struct, frozen=True):
    """Read aloud with the answer in the gap: does it come to ``total``?"""

    wrote: Quantity
    total: Quantity


class HadBeforeGiving(Struct, frozen=True):
    """Some were there, ``gone`` were given away and ``left`` are left: were there more or less than those?"""

    gone: Quantity
    left: Quantity


class CanBeTaken(Struct, frozen=True):
    """Can the answer be taken away from the first number?"""

    wrote: Quantity
    first: Quantity


class WhatEachSideMakes(Struct, frozen=True):
    """What does each side make, the answer standing in the gap?"""

    first: Quantity
    second: Quantity
    wrote: Quantity
    beside: Quantity


class AreSidesEqual(Struct, frozen=True):
    """Are both sides the same with the answer in the gap?"""

    wrote: Quantity
    beside: Quantity


class UsedWhere(Struct, frozen=True):
    """Where in the answer is this number used?"""

    number: Quantity


class SaysToDo(Struct, frozen=True):
    """What does the sign before this number say to do?"""

    number: Quantity


#: Every question about a missing number, and about numbers of several that are not seen.
GapAsk = ComesTo | HadBeforeGiving | CanBeTaken | WhatEachSideMakes | AreSidesEqual | UsedWhere | SaysToDo
