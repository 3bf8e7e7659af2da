"""Who reached the pass mark that a teacher set for a page."""

from fractions import Fraction

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.findings.reach import Reach
from onewhole.marking.reading.mark import ClassMarks, PupilMarks, Verdict

#: What is said beside every result: no source says how high the pass mark should be.
OWN_CHOICE = "The bar is the teacher's choice: no source says how many right answers are knowing it."
HUNDRED = 100


class PassMark(Struct, frozen=True):
    """The share of right answers that is enough, above 0 and up to 1.

    Usual pass marks are 80 to 90 % (80 from memory, 90 in one page that was read); for "knows how to regroup"
    there is no source, so it is a setting. Raises InputError for any other share.

    >>> PassMark.percent(80).share, PassMark.percent(80).shown
    (Fraction(4, 5), '80 %')
    """

    share: Fraction

    def __post_init__(self) -> None:
        """Refuse a pass mark that all or nobody can reach."""
        if not 0 < self.share <= 1:
            msg = f"a bar at {self.share * HUNDRED} % is no bar"
            raise InputError(msg, remedy="Set it from 1 to 100; 80 is usual.")

    @classmethod
    def percent(cls, percent: int) -> "PassMark":
        """Return the pass mark of so many percent."""
        return cls(Fraction(percent, HUNDRED))

    @property
    def shown(self) -> str:
        """Write the pass mark in percent, whole ones without a fraction."""
        return f"{self.share * HUNDRED} %"


USUAL = PassMark.percent(80)


class PassStanding(Struct, frozen=True):
    """One pupil's result: how many right of how many asked, and how many could not be read.

    >>> PassStanding("K01", 4, 5, 0, Reach.REACHED).share
    Fraction(4, 5)
    """

    pupil: str
    right: int
    asked: int
    unread: int
    reach: Reach

    @property
    def share(self) -> Fraction:
        """Return the exact share of all problems that is right; what is blank or unread is not."""
        return Fraction(self.right, self.asked)


def mastery(marks: ClassMarks, bar: PassMark = USUAL) -> tuple[PassStanding, ...]:
    """Return whether each pupil reached the pass mark, in the order of the pupils.

    A right amount counts in any form (K5; CCSSM 2010, 4.NF names none). Blanks count as not right; a pupil
    with nothing written is a case of its own. Where answers that cannot be read would make the difference,
    the paper is to be looked at. Source of the way: Bloom (1968), Guskey (2007), abstracts.
    """
    return tuple(_standing(pupil, bar) for pupil in marks.pupils)


def _standing(pupil: PupilMarks, bar: PassMark) -> PassStanding:
    verdicts = [mark.verdict for mark in pupil.marks]
    right = sum(verdict in {Verdict.RIGHT, Verdict.FORM} for verdict in verdicts)
    unread, asked = verdicts.count(Verdict.UNREADABLE), len(verdicts)
    wanted = bar.share * asked
    if verdicts.count(Verdict.BLANK) == asked:
        reach = Reach.ABSENT
    elif right >= wanted:
        reach = Reach.REACHED
    else:
        reach = Reach.LOOK if right + unread >= wanted else Reach.NOT_YET
    return PassStanding(pupil.pupil, right, asked, unread, reach)
