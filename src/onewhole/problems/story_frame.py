"""One way to tell a story, in a language's own words."""

from dataclasses import dataclass

from onewhole.number.unit import Kind
from onewhole.problems.story_asks import Asks
from onewhole.problems.story_structure import Structure


@dataclass(frozen=True, slots=True)
class StoryFrame:
    """One way to tell a story: for what it asks, with which structure, about what kind of amounts.

    ``sentences`` have holes for the amounts; the last one asks.
    """

    asks: Asks
    structure: Structure
    kind: Kind
    sentences: tuple[str, ...]
