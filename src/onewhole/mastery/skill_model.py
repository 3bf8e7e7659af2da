"""How skills make a right answer: three published models, told by what each lets a problem see of a pupil.

DINA: Junker & Sijtsma (2001), Applied Psychological Measurement 25, 258-272. DINO: Templin & Henson (2006),
Psychological Methods 11, 287-305. G-DINA: de la Torre (2011), Psychometrika 76, 179-199.
"""

from enum import Enum
from typing import assert_never

#: Some of the skills, as the bits of a whole number: the first skill is worth 1, the second 2, the third 4.
SkillSet = int


class SkillModel(Enum):
    """A model of right and wrong answers; its value is what is typed for it."""

    DINA = "dina"  # all skills of a problem are needed: else a right answer is a guess
    DINO = "dino"  # any one of them is enough
    GDINA = "gdina"  # every mixture of them has a chance of its own

    def seen(self, has: SkillSet, needs: SkillSet) -> int:
        """Return what a problem that needs some skills sees of a pupil who has some: equal where it cannot
        tell.

        >>> (
        ...     SkillModel.DINA.seen(0b011, 0b101),
        ...     SkillModel.DINO.seen(0b011, 0b101),
        ...     SkillModel.GDINA.seen(0b011, 0b101),
        ... )
        (0, 1, 1)
        >>> SkillModel.DINA.seen(0b111, 0b101), SkillModel.GDINA.seen(0b111, 0b101)
        (1, 5)
        """
        match self:
            case SkillModel.DINA:
                return int(has & needs == needs)
            case SkillModel.DINO:
                return int(has & needs != 0)
            case SkillModel.GDINA:
                return has & needs
            case _:
                assert_never(self)
