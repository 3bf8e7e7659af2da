"""Problems told as stories, as the desk tells them: what to do is chosen, no sign says it."""

from random import Random

from onewhole.problems.problem import Problem
from onewhole.problems.story_structure import Structure
from onewhole.sheets.stories import story
from onewhole.statements.reading import read_statement

#: How often a problem of a mixed page stands in numbers alone.
_IN_NUMBERS = 0.5
_COMPARED = (Structure.COMPARE, Structure.TURNED)


def stories(chance: Random) -> Problem:
    """Draw a story of one step or two; what a word in it suggests is often not what it asks for."""
    asked, structure = chance.choice(
        (_taken, _added, _at_first, _times, _shared, _shared_among_more, _part, _two_steps, _two_steps)
    )(chance)
    return _told(asked, structure, chance)


def stories_and_numbers(chance: Random) -> Problem:
    """Draw a story, or one of the same problems in numbers alone."""
    found = stories(chance)
    if chance.random() < _IN_NUMBERS:
        return Problem(found.label, found.statement, found.typed)
    return found


def _told(asked: str, structure: Structure | None, chance: Random) -> Problem:
    return story(read_statement(asked), structure=structure, seed=chance.randrange(12)).problem("1")


def _two(chance: Random) -> tuple[int, int]:
    """Return a larger and a smaller number of two or three digits."""
    larger = chance.choice((chance.randrange(30, 100), chance.randrange(200, 1000)))
    return larger, chance.randrange(11, larger)


def _taken(chance: Random) -> tuple[str, Structure]:
    larger, smaller = _two(chance)
    structures = (Structure.TAKE_FROM, Structure.SMALLER_UNKNOWN, Structure.PART_UNKNOWN, *_COMPARED)
    return f"{larger} - {smaller}", chance.choice(structures)


def _added(chance: Random) -> tuple[str, Structure]:
    one, other = _two(chance)
    structures = (Structure.PUT_TOGETHER, Structure.ADD_TO, Structure.TAKE_FROM, *_COMPARED)
    return f"{one} + {other}", chance.choice(structures)


def _at_first(chance: Random) -> tuple[str, Structure]:
    larger, smaller = _two(chance)
    return chance.choice(
        (
            (f"? - {smaller} = {larger}", Structure.TAKE_FROM),
            (f"? + {smaller} = {larger}", Structure.ADD_TO),
            (f"{smaller} + ? = {larger}", Structure.ADD_TO),
        )
    )


def _times(chance: Random) -> tuple[str, Structure]:
    by, structures = chance.randrange(3, 9), (Structure.EQUAL_GROUPS, Structure.TIMES_AS_MUCH)
    return f"{by} x {by * chance.randrange(2, 12)}", chance.choice(structures)


def _shared(chance: Random) -> tuple[str, Structure]:
    by = chance.randrange(3, 9)
    structures = (Structure.SHARING, Structure.TIMES_AS_MUCH, Structure.HOW_MANY_TIMES)
    return f"{by * chance.randrange(4, 30)} / {by}", chance.choice(structures)


def _shared_among_more(chance: Random) -> tuple[str, Structure]:
    by = chance.choice((3, 4, 5, 6, 8))
    return f"{chance.randrange(2, by)} / {by}", Structure.SHARING


def _part(chance: Random) -> tuple[str, Structure | None]:
    bottom = chance.choice((3, 4, 5, 6, 8))
    return f"{chance.randrange(2, bottom)}/{bottom} x {bottom * chance.randrange(2, 7)}", None


def _two_steps(chance: Random) -> tuple[str, Structure | None]:
    by, each, rest = chance.randrange(3, 8), chance.randrange(6, 20), chance.randrange(5, 18)
    return chance.choice(
        (
            f"{by} x {each} - {rest}",
            f"{by * each + rest} - {by} x {each}",
            f"{by} x {each} + {rest}",
            f"({by * each} + {by * 2}) / {by}",
            f"{by * each} - {rest} - {by}",
        )
    ), None
