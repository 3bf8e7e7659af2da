"""Why a pupil sits in a group, and why one is seen first: closed families, for the teacher's eyes."""

from dataclasses import dataclass

from onewhole.misconceptions.pattern import Family

Labels = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class NothingWritten:
    """No answer was written at all."""


@dataclass(frozen=True, slots=True)
class AllRight:
    """So many answers, and all that could be read are right."""

    count: int


@dataclass(frozen=True, slots=True)
class OtherFormWanted:
    """These are right in amount, and another form is wanted."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class FitsFamilies:
    """These answers fit patterns of these families."""

    labels: Labels
    families: tuple[Family, ...]


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
class TooFewToTell:
    """These may fit a pattern, and are too few."""

    labels: Labels


@dataclass(frozen=True, slots=True)
class NoSteadyPattern:
    """What is wrong is wrong in several ways."""


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
class JoinsOthers:
    """Too few others need the talk that this pupil needs."""


@dataclass(frozen=True, slots=True)
class FindingSetAside:
    """The teacher set the finding aside."""


@dataclass(frozen=True, slots=True)
class MovedHere:
    """The teacher moved the pupil here; the answers said another group, and why."""

    group: str
    because: "tuple[WhyPlaced, ...]"


#: Every reason for a pupil's place.
WhyPlaced = (
    NothingWritten
    | AllRight
    | OtherFormWanted
    | FitsFamilies
    | SpeaksAgainst
    | MaybeSlips
    | Wrong
    | TooFewToTell
    | NoSteadyPattern
    | LeftBlank
    | NotReadable
    | LikelierThanNot
    | JoinsOthers
    | FindingSetAside
    | MovedHere
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
WhyFirst = WrongEachItsWay | MaybeOneIdea
