"""The topic of a week: its standards, and what its pages are composed of."""

from msgspec import Struct

from onewhole.findings.wished_skill import WishedSkill
from onewhole.sheets.wishes import USUAL_DENOMINATORS


class TopicPage(Struct, frozen=True):
    """What one page of a topic is composed of: a skill, with the sizes of its numbers.

    ``digits`` and ``denominators`` are as in :class:`onewhole.sheets.wishes.Wishes`.
    """

    skill: WishedSkill
    digits: int | None = None
    denominators: tuple[int, ...] = USUAL_DENOMINATORS


class YearTopic(Struct, frozen=True):
    """What is usually taught in a week of a grade, counted from 1.

    ``codes`` are standards of *Common Core State Standards for Mathematics* (2010); one may stand for its
    parts (4.NF.B.4 for 4.NF.B.4.a to c). The nights of the week take the ``pages`` in turn; where there is
    none, the program composes no page on the topic, and the night brings earlier topics back. With
    ``stories`` some problems are told as word problems.

    >>> YearTopic(5, "taking away", ("4.NBT.B.4",), (TopicPage(WishedSkill.WHOLE),)).composed
    True
    """

    week: int
    called: str
    codes: tuple[str, ...]
    pages: tuple[TopicPage, ...] = ()
    stories: bool = False

    @property
    def composed(self) -> bool:
        """Say whether pages on it are composed."""
        return bool(self.pages)
