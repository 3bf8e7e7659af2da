"""The list of the pages printed for tomorrow, kept beside them: which file holds which page."""

from collections.abc import Iterable
from typing import Literal, assert_never

import msgspec
from msgspec import Struct

from onewhole.errors import Fault
from onewhole.findings.paper import (
    EveryPaper,
    GroupPractice,
    MorningPaper,
    PracticeKey,
    PupilPractice,
    TalksPaper,
    TomorrowPaper,
)

Key = Literal["every", "morning", "talks", "group", "pupil", "key"]


class TomorrowPage(Struct, frozen=True):
    """A page that lies printed: the name of its file without its ending, and which page it is."""

    file: str
    which: TomorrowPaper


def papers_text(papers: Iterable[TomorrowPage]) -> str:
    """Write the list as JSON.

    >>> papers_text([TomorrowPage("practice-larks", GroupPractice("Larks"))])
    '[["practice-larks","group","Larks"]]'
    """
    return msgspec.json.encode([(one.file, *_key(one.which)) for one in papers]).decode()


def read_papers(text: str) -> tuple[TomorrowPage, ...]:
    """Read the list back. Raises Fault for a text that is no such list.

    >>> read_papers('[["practice-larks","group","Larks"]]')
    (TomorrowPage(file='practice-larks', which=GroupPractice(group='Larks')),)
    """
    try:
        rows = msgspec.json.decode(text, type=list[tuple[str, Key, str]])
    except msgspec.DecodeError as error:
        msg = "the list of tomorrow's printed pages cannot be read"
        raise Fault(msg) from error
    return tuple(TomorrowPage(file, _paper(key, whose)) for file, key, whose in rows)


def _key(paper: TomorrowPaper) -> tuple[Key, str]:
    match paper:
        case EveryPaper():
            return "every", ""
        case MorningPaper():
            return "morning", ""
        case TalksPaper():
            return "talks", ""
        case GroupPractice(name):
            return "group", name
        case PupilPractice(code):
            return "pupil", code
        case PracticeKey():
            return "key", ""
        case _:
            assert_never(paper)


def _paper(key: Key, whose: str) -> TomorrowPaper:
    match key:
        case "every":
            return EveryPaper()
        case "morning":
            return MorningPaper()
        case "talks":
            return TalksPaper()
        case "group":
            return GroupPractice(whose)
        case "pupil":
            return PupilPractice(whose)
        case "key":
            return PracticeKey()
        case _:
            assert_never(key)
