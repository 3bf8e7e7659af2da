"""The words that stand on a line itself: what is asked of a number."""

from typing import assert_never

from onewhole.languages.english.words import unit_name
from onewhole.number.unit import ONE
from onewhole.statements.wording import FromEnd, Phrase, ToNearest, Wording


def wording(thing: Wording) -> str:
    """Write words of a line, in small letters and without numbers, so that they are read back.

    >>> from onewhole.number.ladder import places
    >>> wording(ToNearest(places(3).units[0])), wording(ToNearest(ONE))
    ('to the nearest hundred', 'to the nearest whole number')
    """
    return " ".join(wording_parts(thing))


def wording_parts(thing: Wording) -> tuple[str, ...]:
    """Write the same words in parts between which a line may be broken.

    >>> wording_parts(ToNearest(ONE))
    ('to the nearest', 'whole number')
    """
    match thing:
        case Phrase():
            return (thing.value,)
        case FromEnd(falling):
            return ("from greatest", "to least") if falling else ("from least", "to greatest")
        case ToNearest(unit):
            return "to the nearest", "whole number" if unit == ONE else unit_name(unit, 1)
        case _:
            assert_never(thing)
