"""What the skills are called that problems practise, in a teacher's words."""

from typing import assert_never

from onewhole.findings.skill import Skill


def skill_called(skill: Skill) -> str:
    """Name a skill, as it stands in a list.

    >>> skill_called(Skill.UNLIKE)
    'two kinds of pieces'
    """
    match skill:
        case Skill.ADD:
            return "adding, nothing to regroup"
        case Skill.ADD_REGROUPED:
            return "adding, the pieces fill a whole"
        case Skill.TAKE:
            return "taking away, nothing to regroup"
        case Skill.TAKE_REGROUPED:
            return "taking away with regrouping"
        case Skill.TAKE_FROM_WHOLES:
            return "taking pieces from wholes only"
        case Skill.WHOLE_NUMBERS:
            return "whole numbers, nothing to regroup"
        case Skill.WHOLE_NUMBERS_REGROUPED:
            return "whole numbers with regrouping"
        case Skill.UNLIKE:
            return "two kinds of pieces"
        case Skill.DECIMALS:
            return "decimals"
        case Skill.TIMES:
            return "multiplying"
        case Skill.DIVIDE:
            return "dividing"
        case Skill.STEPS:
            return "several steps"
        case Skill.FACTORS:
            return "factors and multiples"
        case Skill.LINE_PLOTS:
            return "line plots"
        case Skill.COMPARE:
            return "comparing"
        case Skill.FIND:
            return "finding the missing number"
        case Skill.OTHER_NAMES:
            return "writing a number another way"
        case Skill.ROUND:
            return "rounding"
        case Skill.ORDER:
            return "putting numbers in order"
        case Skill.MEASURES:
            return "measures in two units"
        case _:
            assert_never(skill)
