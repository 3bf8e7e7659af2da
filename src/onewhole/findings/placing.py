"""Why a pupil sits in a group, and why one is seen first: closed families, for the teacher's eyes.

Each is true of the pupil, the finding and the group: `tests/marking/grouping/test_reasons.py` says for each
when it is, and walks over whole classes.
"""

from dataclasses import dataclass

from onewhole.findings.attendance import PaperWord
from onewhole.misconceptions.pattern import Family

Labels = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class NothingWritten:
    """No answer was written at all."""


@dataclass(frozen=True, slots=True)
class NoPaper:
    """There is no paper, and the teacher said why: absent, excused, or late."""

    word: PaperWord


@dataclass(frozen=True, slots=True)
class AllRight:
    """So many answers, and all that could be read are right."""

    count: int


@dataclass(frozen=True, slots=True)
class OtherFormWanted:
    """These are right in amount, and another form is wanted."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class FitsIdea:
    """These answers fit one idea: the id of its pattern."""

    labels: Labels
    idea: str


@dataclass(frozen=True, slots=True)
class NotToldApart:
    """The answers do not tell the idea from these."""

    ideas: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SpeaksAgainst:
    """These answers speak against the patterns that others fit."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class MaybeSlips:
    """These are one step beside right."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class Wrong:
    """These are wrong."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class MayFit:
    """These may fit an idea, and one more answer is needed before that is said."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class NoSteadyPattern:
    """What is wrong is wrong in several ways."""


@dataclass(frozen=True, slots=True)
class SteadyNotOurs:
    """What is wrong in these is steady, and no pattern that is listed writes it."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class LeftBlank:
    """Nothing was written in these."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class NotReadable:
    """These could not be read."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class LikelierThanNot:
    """One of these families is likelier than not."""

    families: tuple[Family, ...]


@dataclass(frozen=True, slots=True)
class TooFewAlike:
    """So few of the class have an idea of this kind: fewer than a group needs."""

    count: int


@dataclass(frozen=True, slots=True)
class MeetingsUsedUp:
    """Another idea than most here: every group that the teacher meets is made."""

    meets: int


@dataclass(frozen=True, slots=True)
class AnotherIdea:
    """Another kind of idea than most of the group."""


@dataclass(frozen=True, slots=True)
class TooManyAlike:
    """So many of the class fit this idea: more than one group holds."""

    count: int


@dataclass(frozen=True, slots=True)
class FindingSetAside:
    """The teacher set the finding aside."""


@dataclass(frozen=True, slots=True)
class MovedHere:
    """The teacher moved the pupil here; the answers said another group, and why."""

    group: str
    because: "tuple[WhyPlaced, ...]"


@dataclass(frozen=True, slots=True)
class KeptHere:
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


@dataclass(frozen=True, slots=True)
class WrongEachItsWay:
    """These are wrong, and no pattern is steady."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class MaybeOneIdea:
    """These answers may come from one idea."""

    labels: Labels


#: Every reason to see a pupil first.
WhyFirst = WrongEachItsWay | MaybeOneIdea | SteadyNotOurs
