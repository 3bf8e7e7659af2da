"""The keys under which programs are told what is found in a page: the contract of ``docs/json.md``."""

from typing import assert_never

from onewhole.findings.in_page import (
    Alike,
    FallsBack,
    HardToRead,
    HigherThanPage,
    NumbersUntold,
    OutsideStandard,
    OverBudget,
    OverEvening,
    PageFinding,
    RightByLuck,
    Twins,
)


def finding_key(found: PageFinding) -> str:
    """Return the key of a finding: a standard's code, or a word.

    >>> finding_key(Twins(("1", "2")))
    'twins'
    """
    match found:
        case Twins():
            return "twins"
        case OverBudget() | OverEvening():
            return "minutes"
        case Alike():
            return "alike"
        case RightByLuck():
            return "hidden"
        case FallsBack():
            return "climb"
        case HardToRead():
            return "reading"
        case NumbersUntold():
            return "story"
        case HigherThanPage():
            return "room"
        case OutsideStandard(code):
            return code.value
        case _:
            assert_never(found)
