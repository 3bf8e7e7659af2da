"""Which skills each problem needs: the table that the field calls a Q-matrix."""

from msgspec import Struct

from onewhole.mastery.skill_model import SkillModel, SkillSet

#: Ten skills make 1,024 kinds of pupil; more than a test can tell apart, and each more skill doubles the
#: work.
MOST_SKILLS = 10
#: More than two hours of a test; the work grows with the square of it.
MOST_PROBLEMS = 100
#: The most chances of a right answer that are fitted at once (G-DINA has one for each mixture of a
#: problem's skills).
MOST_CHANCES = 1_000


class QMatrix(Struct, frozen=True):
    """Skills, problems, and for each problem the set of skills that it needs.

    Raises ValueError without a skill or a problem, for a problem without a skill, for skills that are not
    named, for a name that is there twice, and beyond the limits.

    >>> q = QMatrix(("open a whole", "same pieces"), ("1", "2"), (0b01, 0b11))
    >>> [q.named(needs) for needs in q.needs]
    [('open a whole',), ('open a whole', 'same pieces')]
    """

    skills: tuple[str, ...]
    problems: tuple[str, ...]
    needs: tuple[SkillSet, ...]

    def __post_init__(self) -> None:
        """Refuse what is no Q-matrix."""
        if not 1 <= len(self.skills) <= MOST_SKILLS or not 1 <= len(self.problems) <= MOST_PROBLEMS:
            raise ValueError("a Q-matrix has 1 to 10 skills and 1 to 100 problems")
        if len(self.needs) != len(self.problems):
            raise ValueError("a Q-matrix has one set of skills a problem")
        if not all(0 < needs < 1 << len(self.skills) for needs in self.needs):
            raise ValueError("each problem needs a skill, and only skills that are named")
        if len(set(self.skills)) < len(self.skills) or len(set(self.problems)) < len(self.problems):
            raise ValueError("two skills or two problems have one name")

    def named(self, skills: SkillSet) -> tuple[str, ...]:
        """Return the names of some skills, in order."""
        return tuple(name for at, name in enumerate(self.skills) if skills >> at & 1)

    def chances(self, model: SkillModel) -> int:
        """Return how many chances of a right answer a model has for these problems."""
        if model is SkillModel.GDINA:
            return sum(1 << needs.bit_count() for needs in self.needs)
        return 2 * len(self.problems)
