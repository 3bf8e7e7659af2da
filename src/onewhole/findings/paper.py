"""Which page of tomorrow's a printed page is: a closed family."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class MorningPaper:
    """The teacher's morning page."""


@dataclass(frozen=True, slots=True)
class TalksPaper:
    """The evidence on the pupils to see first."""


@dataclass(frozen=True, slots=True)
class GroupPractice:
    """The practice page of a group."""

    group: str


@dataclass(frozen=True, slots=True)
class PupilPractice:
    """The practice page of one pupil."""

    code: str


@dataclass(frozen=True, slots=True)
class PracticeKey:
    """The key of the practice pages."""


@dataclass(frozen=True, slots=True)
class EveryPaper:
    """All of these pages in one file, the practice pages as often as a group has pupils."""


#: Every page that is printed for tomorrow.
TomorrowPaper = EveryPaper | MorningPaper | TalksPaper | GroupPractice | PupilPractice | PracticeKey
