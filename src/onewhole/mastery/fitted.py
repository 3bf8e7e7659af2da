"""A skill model fitted to answers: chances, shares, how sure they are, and how well it all fits. Numbers
are exact images of the machine's (``Fraction``), so that nothing is rounded twice.
"""

from fractions import Fraction

from msgspec import Struct

from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.skill_groups import SkillGroup
from onewhole.mastery.skill_model import SkillModel, SkillSet


class MeasuredNumber(Struct, frozen=True):
    """A number and its standard error; ``error`` is None at a bound, and where the answers do not settle
    it.
    """

    value: Fraction
    error: Fraction | None = None

    def __post_init__(self) -> None:
        """Refuse an error below 0."""
        if self.error is not None and self.error < 0:
            raise ValueError("a standard error is not below 0")


class Climbed(Struct, frozen=True):
    """How the fit was found: ``climbs`` from different starts, how many came to the same summit, how many did
    not arrive; and whether the best of them did arrive, after so many steps.
    """

    log_likelihood: Fraction
    parameters: int
    climbs: int
    same: int
    lost: int
    arrived: bool
    steps: int


class FittedChance(Struct, frozen=True):
    """The chance of a right answer for pupils whom a problem sees alike; ``having`` is one set of skills of
    its own that they may have.
    """

    having: SkillSet
    right: MeasuredNumber


class PairMisfit(Struct, frozen=True):
    """The other problem with which a problem's answers go together least as the model says, and by how
    much: a normal deviate (Chen, de la Torre & Zhang 2013).
    """

    problem: str
    deviate: Fraction


class NeedsCheck(Struct, frozen=True):
    """What a problem's skills explain of its chances (PVAF), and skills that explain enough and are fewer
    or fit better; None where the problem's own stand (de la Torre & Chiu 2016).
    """

    explained: Fraction
    rather: SkillSet | None
    rather_explained: Fraction | None


class FittedProblem(Struct, frozen=True):
    """A problem's chances, from those with nothing that it sees to those with all; its misfit (RMSEA), its
    worst pair, and the check of its skills.
    """

    problem: str
    needs: SkillSet
    chances: tuple[FittedChance, ...]
    misfit: Fraction
    worst: PairMisfit | None
    check: NeedsCheck

    @property
    def guess(self) -> MeasuredNumber:
        """The chance of a right answer with nothing that the problem sees."""
        return self.chances[0].right

    @property
    def slip(self) -> MeasuredNumber:
        """The chance of a wrong answer with all that it needs."""
        full = self.chances[-1].right
        return MeasuredNumber(1 - full.value, full.error)


class FittedGroup(Struct, frozen=True):
    """Skill sets that these problems cannot tell apart, and the share of pupils with one of them."""

    group: SkillGroup
    share: MeasuredNumber


class SkillShare(Struct, frozen=True):
    """The share of pupils with a skill: at least, at most (what the groups leave open), and how often what is
    called for a pupil is right.
    """

    skill: str
    least: Fraction
    most: Fraction
    accuracy: Fraction


class FittedSkills(Struct, frozen=True):
    """A model fitted to a table of right and wrong."""

    model: SkillModel
    q: QMatrix
    pupils: int
    rows: int
    climbed: Climbed
    problems: tuple[FittedProblem, ...]
    groups: tuple[FittedGroup, ...]
    skills: tuple[SkillShare, ...]
    accuracy: Fraction
    pair_bound: Fraction

    @property
    def deviance(self) -> Fraction:
        """Minus two times the log-likelihood."""
        return -2 * self.climbed.log_likelihood
