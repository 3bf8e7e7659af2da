"""How closely an answer fits a pattern, and what else can be said about it."""

from enum import Enum, auto


class Tier(Enum):
    """How closely a wrong answer fits its patterns, the closest first.

    Its first false line is the pattern's; it is what the pattern writes; it is the same amount written in
    another way; it is one piece or one whole beside that.
    """

    LINE = auto()
    EXACT = auto()
    AMOUNT = auto()
    WITH_SLIP = auto()


class Remark(Enum):
    """What else can be said about an answer; none of it changes the verdict.

    Of its form: left as one fraction, left with an overfull part, or as it may be renamed. Of its amount: one
    unit beside right. Of what it is: its unit is missing, or its last one, or it is another, or a number
    stands for a sign.
    Of numbers in order: they stand from the other end, are not those of the problem, or their signs do not
    fit.
    """

    ONE_FRACTION = auto()
    OVERFULL = auto()
    MAY_BE_RENAMED = auto()
    MAY_BE_SLIP = auto()
    UNIT_MISSING = auto()
    LAST_UNIT_MISSING = auto()
    OTHER_UNIT = auto()
    SIGN_ASKED = auto()
    NUMBER_ASKED = auto()
    OTHER_END = auto()
    OTHER_NUMBERS = auto()
    SOME_MISSING = auto()
    SOME_TOO_MANY = auto()
    SIGNS_DO_NOT_FIT = auto()
