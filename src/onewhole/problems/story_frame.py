"""One way to tell a story, in a language's own words."""

from collections.abc import Mapping

from msgspec import Struct

from onewhole.number.unit import Kind
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure


class StoryFrame(Struct, frozen=True):
    """One way to tell a story: for what it asks, with which structure, about what kind of amounts.

    ``sentences`` have holes for the amounts; the last one asks.
    """

    asks: Asks
    structure: Structure
    kind: Kind
    sentences: tuple[str, ...]


#: The sentences of every way to tell a story about one kind of amounts.
FrameTable = Mapping[tuple[Asks, Structure], tuple[tuple[str, ...], ...]]


def frames_of(tables: Mapping[Kind, FrameTable], *more: Mapping[Kind, FrameTable]) -> tuple[StoryFrame, ...]:
    """Return the frames of tables, in their order; ``more`` tell further ways for each kind of amount."""
    return tuple(
        StoryFrame(asks, structure, kind, sentences)
        for kind, table in tables.items()
        for (asks, structure), every in joined(table, *(one[kind] for one in more)).items()
        for sentences in every
    )


def joined(*tables: FrameTable) -> FrameTable:
    """Put tables together; where two tell the same with one structure, all their ways stay.

    >>> from onewhole.problems.story_question import Asks
    >>> key = (Asks.SUM, Structure.COMPARE)
    >>> joined({key: (("one",),)}, {key: (("two",),)})[key]
    (('one',), ('two',))
    """
    keys = dict.fromkeys(key for table in tables for key in table)
    return {key: tuple(every for table in tables for every in table.get(key, ())) for key in keys}
