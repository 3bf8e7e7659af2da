"""What each thing that makes a problem hard is worth: one table, fitted to two open sets of pupils' answers.

**The data.** 536 middle-school pupils on 20 subtractions of fractions (K. K. Tatsuoka, 1984, NIE-G-81-0002;
published with C. Tatsuoka, 2002, JRSS C 51, 337-350), and 294 pupils of 7 to 10 years on 8 subtractions of
whole numbers (de Chiusole & Stefanutti, 2013, Electronic Notes in Discrete Mathematics 42, 41-48). Only the
shares of right answers are used.

**The fit.** Non-negative least squares of the logit of the share of wrong answers over both, each set with a
mean of its own; a fifth of a logit is one point, rounded. Lines and facts are those of the working that
regroups first. What comes out below one point and is kept counts
one: a large denominator, a line and a fact. A fraction greater than one on entry comes out as nothing at all
and has no points. More than two numbers, and digits to multiply or to divide by, are in no problem of
either set: one point each, our own.

**How far it holds.** Spearman's rank correlation of points and shares right is -0.95 on the 20 items and
-0.87 on the 8 (before the fit -0.85 and -0.60). Where each item is left out of the fit by which it is
judged, it is -0.92 on the 20, and -0.60 on the 8: one item alone (507 - 49) tells what a zero that must be
opened first is worth. Without the rounding, which makes ties, it would be -0.84 on the 20: no more than the
old weights had, though they were never fitted. So the direction of each weight is known, and its size only
roughly (a regrouping is 3 to 5 points, whichever item is left out). Those pupils were older or younger than
a fourth grade, nothing was added, compared or multiplied, and points only put problems in order.
`tests/outside/test_difficulty.py` computes all of it.
"""

from collections.abc import Mapping
from enum import Enum
from types import MappingProxyType


class Hardness(Enum):
    """A reason why a problem is hard."""

    REGROUPED = "a larger unit is regrouped"
    AGAIN = "another is regrouped"
    NOTHING_ON_TOP = "nothing stands on top to take from"
    ZERO_OPENED_FIRST = "a zero has to be opened first"
    RENAMED = "pieces of different sizes are renamed"
    NEITHER_FITS = "neither denominator fits into the other"
    MIXED = "more than one unit in a number"
    LARGE = "a large denominator"
    MANY = "more than two numbers"
    LINE = "a line for the pupil to write"
    FACT = "a fact that crosses a ten"
    DIGIT = "a digit more to multiply or to divide by"


#: Points for each time that a reason holds.
POINTS: Mapping[Hardness, int] = MappingProxyType(
    {
        Hardness.REGROUPED: 4,
        Hardness.AGAIN: 1,
        Hardness.NOTHING_ON_TOP: 2,
        Hardness.ZERO_OPENED_FIRST: 6,
        Hardness.RENAMED: 3,
        Hardness.NEITHER_FITS: 1,
        Hardness.MIXED: 1,
        Hardness.LARGE: 1,
        Hardness.MANY: 1,
        Hardness.LINE: 1,
        Hardness.FACT: 1,
        Hardness.DIGIT: 1,
    }
)
