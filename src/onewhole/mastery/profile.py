"""What the answers of a pupil say of each skill, and what they cannot say."""

from enum import Enum
from fractions import Fraction

from msgspec import Struct

#: From these odds on a skill is called there; below what is left of 1, not there (ours; 0.5 is common
#: practice).
SURE = Fraction(4, 5)
#: Where so much of what is not known lies within groups, these problems cannot tell.
OPEN = Fraction(1, 2)


class SkillSign(Enum):
    """What is called of a skill; the value is for other programs."""

    THERE = "there"
    NOT_THERE = "not there"
    UNSURE = "unsure"
    UNTOLD = "untold"  # these problems cannot tell it for this pupil


class SkillOdds(Struct, frozen=True):
    """The odds that a pupil has a skill: at least ``least``, at most ``most``; between them is what the
    problems cannot tell apart. ``even`` is what comes out when sets that cannot be told apart are taken as
    equally likely.

    >>> SkillOdds(Fraction(9, 10), Fraction(9, 10), Fraction(9, 10)).sign
    <SkillSign.THERE: 'there'>
    >>> SkillOdds(Fraction(1, 10), Fraction(1, 2), Fraction(9, 10)).sign
    <SkillSign.UNTOLD: 'untold'>
    """

    least: Fraction
    even: Fraction
    most: Fraction

    def __post_init__(self) -> None:
        """Refuse odds out of order."""
        if not self.least <= self.even <= self.most:
            raise ValueError("odds are in order: at least, even, at most")

    @property
    def sign(self) -> SkillSign:
        """What is called of the skill."""
        if self.least >= SURE:
            return SkillSign.THERE
        if self.most <= 1 - SURE:
            return SkillSign.NOT_THERE
        return SkillSign.UNTOLD if self.most - self.least >= OPEN else SkillSign.UNSURE


class SkillProfile(Struct, frozen=True):
    """A row of answers: the likeliest group by its place from 0, its odds, and the odds of each skill."""

    row: str
    group: int
    odds: Fraction
    skills: tuple[SkillOdds, ...]
