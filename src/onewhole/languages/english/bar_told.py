"""What the bars of a story show."""

from collections.abc import Callable
from typing import assert_never

from onewhole.languages.english.making import Nodes, bare, told
from onewhole.number.quantity import Quantity
from onewhole.pictures.bar_description import (
    BarDescription,
    BarNumber,
    EachPart,
    EqualInBar,
    Lacking,
    SidesAndArea,
    SomeParts,
    TimesAsLong,
)
from onewhole.sentences.node import Counted, Said, Thing
from onewhole.sentences.sentence import Sentences

#: A part of a bar whose parts are all equal.
EQUAL_PART = Thing("equal part", "equal parts", None)


def bar_told(each: BarDescription, known: Callable[[Quantity | None], Nodes]) -> Sentences:
    """Describe one thing about bars; ``known`` names an amount, or says that it is not known yet.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(bar_told(EqualInBar(4), lambda amount: ()))
    '4 equal parts.'
    """
    match each:
        case BarNumber(number):
            return told("bar", bare(number))
        case EqualInBar(count):
            return told("equal parts: not known how many" if count is None else (Counted(count, EQUAL_PART),))
        case EachPart(part):
            return told("each part:", known(part))
        case SomeParts(count, part):
            return told(bare(count), "of these parts:", known(part))
        case Lacking(amount):
            return told("the difference:", known(amount))
        case TimesAsLong(times):
            return told("times as long as the next bar:", known(None) if times is None else (Said(times),))
        case SidesAndArea(side, other, area):
            return (
                *told("a rectangle"),
                *told("one side:", known(side)),
                *told("the other side:", known(other)),
                *told("area:", known(area)),
            )
        case _:
            assert_never(each)
