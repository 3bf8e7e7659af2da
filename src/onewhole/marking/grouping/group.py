"""Tomorrow's groups: who works with whom, and the reason for every placing.

Source of the rule and of the sizes: our own proposal (common practice, no source).
"""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import count

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.conversation import Conversation
from onewhole.marking.grouping.group_program import SIZES, GroupProgram
from onewhole.marking.grouping.placement import Placement
from onewhole.misconceptions.pattern import Family

#: Names that say nothing about a child: all of them fly, none of them flies ahead.
NAMES = (
    "Swifts",
    "Larks",
    "Herons",
    "Terns",
    "Plovers",
    "Finches",
    "Wrens",
    "Egrets",
    "Gulls",
    "Swallows",
    "Sparrows",
    "Cranes",
)


@dataclass(frozen=True, slots=True)
class Group:
    """Pupils who work together tomorrow, with the reason for each placing.

    ``families`` are those of the patterns that the answers fit, where the place is a family. ``name`` may be
    printed; the rest is for the teacher's eyes. ``key`` is the conversation, as it is kept for the next
    night.
    """

    name: str
    place: GroupKind
    placings: tuple[Placement, ...]
    families: tuple[Family, ...] = ()
    key: str = ""

    @property
    def pupils(self) -> tuple[str, ...]:
        """Return the codes of the pupils, in order."""
        return tuple(placed.pupil for placed in self.placings)


def groups(
    everyone: Sequence[Placement],
    seats: GroupProgram,
    counts: Sequence[int],
    *,
    before: Mapping[str, Sat] | None = None,
    largest: int = SIZES.largest,
    names: Sequence[str] = NAMES,
) -> tuple[Group, ...]:
    """Return tomorrow's groups: ``counts`` are a solution of the program of ``seats``.

    ``everyone`` are the placings of the whole class. Those whom the teacher meets come first, families, slips
    and talks; then pupils with all right, who go further in groups of at most the largest size; then those of
    whom nothing was read. A conversation with more than one group is cut evenly: pupils who sat together
    ``before``, and pupils whose answers fit the same families, stay together where it comes out even. A group
    keeps the name of the last night that most of its pupils had. The order of pupils makes no difference.
    """
    sat = before or {}
    held = [
        _Part(one.talk, part) for one in seats.chosen(counts) for part in _cut(one.placings, one.groups, sat)
    ]
    held.sort(key=lambda part: part.order)
    ahead = _of(GroupKind.EXTENSION, everyone)
    parts = [
        *held,
        *(
            _Part(Conversation(GroupKind.EXTENSION), part)
            for part in _cut(ahead, -(-len(ahead) // largest), sat)
        ),
        *(
            _Part(Conversation(GroupKind.ABSENT), part)
            for part in _cut(_of(GroupKind.ABSENT, everyone), 1, sat)
        ),
    ]
    called = _names(parts, sat, names)
    return tuple(part.group(name) for part, name in zip(parts, called, strict=True))


@dataclass(frozen=True, slots=True)
class _Part:
    """A group without its name."""

    talk: Conversation
    placings: tuple[Placement, ...]

    @property
    def families(self) -> tuple[Family, ...]:
        """Return the families that somebody's answers fit: those talked about, or of a pupil who joins."""
        if self.talk.place is not GroupKind.FAMILY:
            return ()
        found = {
            family
            for placed in self.placings
            for family in (
                [each for each in placed.families if each in self.talk.families] or placed.families
            )
        }
        return tuple(family for family in Family if family in found)

    @property
    def order(self) -> tuple[int, list[int], str]:
        """Return what groups are put in order by: place, families, first pupil."""
        families = [list(Family).index(family) for family in self.families]
        return list(GroupKind).index(self.talk.place), families, self.placings[0].pupil

    def group(self, name: str) -> Group:
        """Return the group of a name."""
        return Group(name, self.talk.place, self.placings, self.families, self.talk.key)


def _of(place: GroupKind, everyone: Sequence[Placement]) -> tuple[Placement, ...]:
    return tuple(one for one in everyone if one.place is place)


def _cut(placings: Sequence[Placement], parts: int, sat: Mapping[str, Sat]) -> list[tuple[Placement, ...]]:
    """Cut into even parts, keeping together those who sat together and those with the same families."""
    order = list(Family)
    row = sorted(placings, key=lambda one: ([order.index(family) for family in one.families], one.pupil))
    sizes = [len(row) // parts + (at < len(row) % parts) for at in range(parts)] if row else []
    together = Counter(sat[one.pupil].name for one in row if one.pupil in sat)
    names = sorted(together, key=lambda name: (-together[name], name))
    found: list[list[Placement]] = []
    for at, size in enumerate(sizes):
        core = [one for one in row if one.pupil in sat and names[at:] and sat[one.pupil].name == names[at]]
        found.append(core[:size])
    for part, size in zip(found, sizes, strict=True):
        seated = {one.pupil for each in found for one in each}
        waiting = [one for one in row if one.pupil not in seated]
        part.extend(waiting[: size - len(part)])
    return [tuple(sorted(part, key=lambda one: one.pupil)) for part in found]


def _names(parts: Sequence[_Part], sat: Mapping[str, Sat], names: Sequence[str]) -> list[str]:
    """Name the groups: as most of their pupils were called before, the others by the first free names."""
    called: dict[int, str] = {}
    for at, part in enumerate(parts):
        counted = Counter(sat[one.pupil].name for one in part.placings if one.pupil in sat)
        free = [
            name
            for name in sorted(counted, key=lambda name: (-counted[name], name))
            if name not in called.values()
        ]
        if free and counted[free[0]] * 2 > len(part.placings):
            called[at] = free[0]
    free_names = (name for name in _endless(names) if name not in called.values())
    return [called.get(at) or next(free_names) for at in range(len(parts))]


def _endless(names: Sequence[str]) -> Iterator[str]:
    for turn in count(1):
        yield from names if turn == 1 else (f"{name} {turn}" for name in names)
