"""What a problem practises."""

from enum import Enum, auto


class Skill(Enum):
    """What a problem practises; every problem has one, the first that fits of those below.

    The cut is our own. That taking away splits where something is regrouped, and where only wholes are on
    top, follows :func:`onewhole.problems.needs.needs`.
    """

    ADD = auto()
    ADD_REGROUPED = auto()
    TAKE = auto()
    TAKE_REGROUPED = auto()
    TAKE_FROM_WHOLES = auto()
    WHOLE_NUMBERS = auto()
    WHOLE_NUMBERS_REGROUPED = auto()
    UNLIKE = auto()
    DECIMALS = auto()
    TIMES = auto()
    DIVIDE = auto()
    STEPS = auto()
    LINE_PLOTS = auto()
    FACTORS = auto()
    COMPARE = auto()
    FIND = auto()
    OTHER_NAMES = auto()
    MEASURES = auto()
    ROUND = auto()
    ORDER = auto()
