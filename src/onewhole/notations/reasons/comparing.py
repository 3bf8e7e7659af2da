"""Which of two numbers is more, and which number is missing."""

from typing import assert_never

from onewhole.notations.reasons.told import amount, single, some
from onewhole.notations.text import text
from onewhole.notations.words import ClassWords, unit_name
from onewhole.working.reasons.comparing import (
    AllInPiecesToCompare,
    Comparing,
    CountDecides,
    GapRead,
    OnlyCountsMatter,
    PartTaken,
    SameSizeToCompare,
    TakenAndLeft,
    UndoneToFind,
    WholesDecide,
)


def comparing(reason: Comparing, words: ClassWords) -> str:
    """Say how two numbers are compared, or how a missing number is found.

    >>> from onewhole.number.ladder import mixed
    >>> comparing(CountDecides(mixed(4).units[1], 1, 3), ClassWords())
    '1 fourth is fewer than 3 fourths.'
    """
    match reason:
        case WholesDecide(first, second):
            more = "more" if first.value > second.value else "less"
            return f"{text(first)} is {more} than {text(second)}, and that decides."
        case SameSizeToCompare(small):
            return f"Write both numbers with pieces of the same size: {unit_name(small)}."
        case AllInPiecesToCompare(small):
            return f"Count everything in {unit_name(small)}."
        case OnlyCountsMatter(small):
            return f"All are {unit_name(small)} now, so only the counts matter."
        case CountDecides(small, first, second):
            if first == second:
                return f"Both are {some(first, small)}."
            more = "more" if first > second else "fewer"
            return f"{some(first, small)} {'is' if first == 1 else 'are'} {more} than {some(second, small)}."
        case UndoneToFind():
            return "Undo what stands beside the blank, so that the blank is alone."
        case TakenAndLeft(whole, left):
            both = f"What is taken away and what is left make the whole, {text(whole)}"
            return f"{both}. So the blank is the whole less what is left, {text(left)}."
        case PartTaken(part):
            if not part.parts:
                return "Nothing is taken away."
            return f"{amount(part, words)} {'is' if single(part) else 'are'} taken away."
        case GapRead():
            return "Both sides look alike now, so you can read the missing number."
        case _:
            assert_never(reason)
