"""Which page of tomorrow's a printed page is: a closed family."""

from msgspec import Struct


class MorningPaper(Struct, frozen=True):
    """The teacher's morning page."""


class TalksPaper(Struct, frozen=True):
    """The evidence on the pupils to see first."""


class GroupPractice(Struct, frozen=True):
    """The practice page of a group."""

    group: str


class PupilPractice(Struct, frozen=True):
    """The practice page of one pupil."""

    code: str


class PracticeKey(Struct, frozen=True):
    """The key of the practice pages."""


class EveryPaper(Struct, frozen=True):
    """All of these pages in one file, the practice pages as often as a group has pupils."""


#: Every page that is printed for tomorrow.
TomorrowPaper = EveryPaper | MorningPaper | TalksPaper | GroupPractice | PupilPractice | PracticeKey
