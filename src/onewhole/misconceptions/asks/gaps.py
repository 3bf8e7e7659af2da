"""Questions about a number that is missing in an equation."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity


@dataclass(frozen=True, slots=True)
class ComesTo:
    """Read aloud with the answer in the gap: does it come to ``total``?"""

    wrote: Quantity
    total: Quantity


@dataclass(frozen=True, slots=True)
class HadBeforeGiving:
    """Some were there, ``gone`` were given away and ``left`` are left: were there more or less than those?"""

    gone: Quantity
    left: Quantity


@dataclass(frozen=True, slots=True)
class CanBeTaken:
    """Can the answer be taken away from the first number?"""

    wrote: Quantity
    first: Quantity


@dataclass(frozen=True, slots=True)
class WhatEachSideMakes:
    """What does each side make, the answer standing in the gap?"""

    first: Quantity
    second: Quantity
    wrote: Quantity
    beside: Quantity


@dataclass(frozen=True, slots=True)
class AreSidesEqual:
    """Are both sides the same with the answer in the gap?"""

    wrote: Quantity
    beside: Quantity


@dataclass(frozen=True, slots=True)
class UsedWhere:
    """Where in the answer is this number used?"""

    number: Quantity


@dataclass(frozen=True, slots=True)
class SaysToDo:
    """What does the sign before this number say to do?"""

    number: Quantity


#: Every question about a missing number, and about numbers of several that are not seen.
GapAsk = ComesTo | HadBeforeGiving | CanBeTaken | WhatEachSideMakes | AreSidesEqual | UsedWhere | SaysToDo
