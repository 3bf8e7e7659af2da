"""Which structures can tell what a story asks: groups and shares are counted, an area has sides."""

from onewhole.problems.story_of_dividing import fits_dividing
from onewhole.problems.story_question import Asks, StoryQuestion
from onewhole.problems.story_structure import Structure


def fits(parts: StoryQuestion, structure: Structure) -> bool:
    """Say whether a story of that structure can tell what is asked.

    True of all that is neither a product nor a quotient.
    """
    match parts.asks:
        case Asks.TIMES | Asks.PART_OF:
            return _product(parts, structure)
        case Asks.DIVIDED | Asks.DIVIDED_LEFT:
            return fits_dividing(parts, structure)
        case _:
            return True


def _product(parts: StoryQuestion, structure: Structure) -> bool:
    factor, other = parts.numbers
    match structure:
        case Structure.EQUAL_GROUPS:
            return factor.value.denominator == 1
        case Structure.TIMES_AS_MUCH:
            return factor.value != 1
        case Structure.AREA:
            counts = factor.plain and other.plain
            return counts or (factor.value < 1 and other.value < 1)
        case _:
            return True
