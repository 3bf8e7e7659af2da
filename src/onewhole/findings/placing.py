"""Why a pupil sits in a group, and why one is seen first: closed families, for the teacher's eyes.

Each is true of the pupil, the finding and the group: `tests/marking/grouping/test_reasons.py` says for each
when it is, and walks over whole classes.
"""

from msgspec import Struct

from onewhole.findings.attendance import PaperWord
from onewhole.misconceptions.pattern import Family

Labels = tuple[str, ...]


class NothingWritten(Struct, frozen=True):
    """No answer was written at all."""


class NoPaper(Struct, frozen=True):
    """There is no paper, and the teacher said why: absent, excused, or late."""

    word: PaperWord


class AllRight(Struct, frozen=True):
    """So many answers, and all that could be read are right."""

    count: int


class OtherFormWanted(Struct, frozen=True):
    """These are right in amount, and another form is wanted."""

    labels: Labels


class FitsIdea(Struct, frozen=True):
    """These answers fit one idea: the id of its pattern."""

    labels: Labels
    idea: str


class NotToldApart(Struct, frozen=True):
    """The answers do not tell the idea from these."""

    ideas: tuple[str, ...]


class SpeaksAgainst(Struct, frozen=True):
    """These answers speak against the patterns that others fit."""

    labels: Labels


class MaybeSlips(Struct, frozen=True):
    """These are one step beside right."""

    labels: Labels


class Wrong(Struct, frozen=True):
    """These are wrong."""

    labels: Labels


class MayFit(Struct, frozen=True):
    """These may fit an idea, and one more answer is needed before that is said."""

    labels: Labels


class NoSteadyPattern(Struct, frozen=True):
    """What is wrong is wrong in several ways."""


class SteadyNotOurs(Struct, frozen=True):
    """What is wrong in these is steady, and no pattern that is listed writes it."""

    labels: Labels


class LeftBlank(Struct, frozen=True):
    """Nothing was written in these."""

    labels: Labels


class NotReadable(Struct, frozen=True):
    """These could not be read."""

    labels: Labels


class LikelierThanNot(Struct, frozen=True):
    """One of these families is likelier than not."""

    families: tuple[Family, ...]


class TooFewAlike(Struct, frozen=True):
    """So few of the class have an idea of this kind: fewer than a group needs."""

    count: int


class MeetingsUsedUp(Struct, frozen=True):
    """Another idea than most here: every group that the teacher meets is made."""

    meets: int


class AnotherIdea(Struct, frozen=True):
    """Another kind of idea than most of the group."""


class TooManyAlike(Struct, frozen=True):
    """So many of the class fit this idea: more than one group holds."""

    count: int


class FindingSetAside(Struct, frozen=True):
    """The teacher set the finding aside."""


class MovedHere(Struct, frozen=True):
    """The teacher moved the pupil here; the answers said another group, and why."""

    group: str
    because: "tuple[WhyPlaced, ...]"


class KeptHere(Struct, frozen=True):
    """The groups are kept as they were; the answers now say another group, and why."""

    group: str
    because: "tuple[WhyPlaced, ...]"


#: Every reason for a pupil's place.
WhyPlaced = (
    NothingWritten
    | NoPaper
    | AllRight
    | OtherFormWanted
    | FitsIdea
    | NotToldApart
    | SpeaksAgainst
    | MaybeSlips
    | Wrong
    | MayFit
    | NoSteadyPattern
    | SteadyNotOurs
    | LeftBlank
    | NotReadable
    | LikelierThanNot
    | TooFewAlike
    | MeetingsUsedUp
    | AnotherIdea
    | TooManyAlike
    | FindingSetAside
    | MovedHere
    | KeptHere
)


class WrongEachItsWay(Struct, frozen=True):
    """These are wrong, and no pattern is steady."""

    labels: Labels


class MaybeOneIdea(Struct, frozen=True):
    """These answers may come from one idea."""

    labels: Labels


#: Every reason to see a pupil first.
WhyFirst = WrongEachItsWay | MaybeOneIdea | SteadyNotOurs
