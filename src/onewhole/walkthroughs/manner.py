"""How fully a problem is told, chosen from the problems of its kind before it."""

from enum import Enum

from msgspec import Struct

from onewhole.languages.class_words import ClassWords
from onewhole.walkthroughs.lesson import Item, Length
from onewhole.walkthroughs.memory import Memory

#: So many problems of one kind point back to the first, before the others go straight through.
BACK = 2
#: The most that a script is shortened.
MOST_MERGED = 3


class Telling(Enum):
    """How fully a problem is told."""

    FULL = "every reason"
    BACK = "as in an earlier one"
    STRAIGHT = "straight through"


class Manner(Struct, frozen=True):
    """How one problem is told: its place among the problems, how fully, and the label it points back to."""

    at: int
    telling: Telling
    like: str
    merge: int
    words: ClassWords


def manner_of(item: Item, at: int, words: ClassWords, memory: Memory, merge: int) -> Manner:
    """Choose how a problem is told, and remember it. Two problems are of one kind when the strategy and its
    reasons are the same, one after another; a problem with a reason that is new is always told in full. A
    length that the teacher chose goes before all this; what was told short counts as not told, so that the
    next of its kind is told in full.
    """
    if item.working is None or item.length is Length.SHORT:
        return Manner(at, Telling.STRAIGHT, "", merge, words)
    reasons = tuple(type(line.because) for line in item.working.lines if line.because)
    before = memory.kinds.setdefault((item.working.strategy, *reasons), [])
    new = not memory.reasons.issuperset(reasons)
    memory.reasons.update(reasons)
    if item.length is Length.FULL or new or (not before and merge < MOST_MERGED):
        telling = Telling.FULL
    elif before and len(before) <= BACK - merge:
        telling = Telling.BACK
    else:
        telling = Telling.STRAIGHT
    like = before[0] if before else ""
    before.append(item.label)
    return Manner(at, telling, like, merge, words)
