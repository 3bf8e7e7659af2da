"""One way to tell a story, in a language's own words."""

from collections.abc import Mapping
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


#: The sentences of every way to tell a story about one kind of amounts.
FrameTable = Mapping[tuple[Asks, Structure], tuple[tuple[str, ...], ...]]


def frames_of(tables: Mapping[Kind, FrameTable]) -> tuple[StoryFrame, ...]:
    """Return the frames of tables, in their order."""
    return tuple(
        StoryFrame(asks, structure, kind, sentences)
        for kind, table in tables.items()
        for (asks, structure), every in table.items()
        for sentences in every
    )
