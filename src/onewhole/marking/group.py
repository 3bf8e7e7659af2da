"""Tomorrow's groups: who works with whom, and the reason for every placing.

Source of the rule and of the sizes: our own proposal (common practice, no source).
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import combinations

from onewhole.errors import InputError
from onewhole.marking.finding import Finding
from onewhole.marking.mark import PupilMarks
from onewhole.marking.placing import Place, Placing, listed, placing
from onewhole.misconceptions.pattern import Family

SMALLEST = 3
LARGEST = 6
#: How many groups a teacher can meet in one morning, unless the teacher says another number.
MEETS = 4

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
    printed; ``because`` is for the teacher's eyes.
    """

    name: str
    place: Place
    placings: tuple[Placing, ...]
    families: tuple[Family, ...] = ()

    @property
    def pupils(self) -> tuple[str, ...]:
        """Return the codes of the pupils, in order."""
        return tuple(placed.pupil for placed in self.placings)

    @property
    def because(self) -> str:
        """Return why these pupils are together, and for each of them the labels that say so."""
        what = f"{self.place} ({listed(self.families)})" if self.families else self.place.value
        return f"{what}: {'; '.join(f'{placed.pupil}: {placed.because}' for placed in self.placings)}"


@dataclass(frozen=True, slots=True)
class _Bunch:
    """A group in the making."""

    place: Place
    placings: tuple[Placing, ...]
    families: tuple[Family, ...] = ()

    @property
    def order(self) -> tuple[int, list[int], str]:
        """Return what bunches are put in order by: place, family, first pupil."""
        places, families = list(Place), list(Family)
        first = min(placed.pupil for placed in self.placings)
        return places.index(self.place), [families.index(family) for family in self.families], first


def groups(
    pupils: Iterable[PupilMarks],
    findings: Iterable[Finding],
    *,
    meets: int = MEETS,
    names: Sequence[str] = NAMES,
) -> tuple[Group, ...]:
    """Make tomorrow's groups.

    Pupils with nothing written, and pupils with all right, are no groups that the teacher meets. The others
    are: one family of patterns each, slips only, and a talk. Groups have 3 to 6 pupils. Small families are
    joined, and families are joined before there are more groups than the teacher meets; a group also grows
    beyond 6 before there are more. A family, slips and talks are never mixed, so that there may be two or
    three groups where the teacher meets fewer, and a group may be smaller than 3 where nobody can join it.

    The order of the pupils makes no difference. Raises InputError when ``meets`` is below 1.
    """
    if meets < 1:
        msg = f"a teacher meets at least one group, not {meets}"
        raise InputError(msg, remedy="Give a number from 1 up; 4 is usual.")
    by_pupil = {found.pupil: found for found in findings}
    placings = sorted(
        (placing(pupil, by_pupil[pupil.pupil]) for pupil in pupils), key=lambda placed: placed.pupil
    )
    met = _divided(_joined(_met(placings), meets), meets)
    ahead = [part for bunch in _of(Place.EXTENSION, placings) for part in _cut(bunch, _parts(bunch))]
    absent = _of(Place.ABSENT, placings)
    bunches = [*sorted(met, key=lambda bunch: bunch.order), *ahead, *absent]
    return tuple(
        Group(_name(names, at), bunch.place, bunch.placings, bunch.families)
        for at, bunch in enumerate(bunches)
    )


def _name(names: Sequence[str], at: int) -> str:
    again = at // len(names)
    return names[at % len(names)] + (f" {again + 1}" if again else "")


def _of(place: Place, placings: Sequence[Placing]) -> list[_Bunch]:
    chosen = tuple(placed for placed in placings if placed.place is place)
    return [_Bunch(place, chosen)] if chosen else []


def _met(placings: Sequence[Placing]) -> list[_Bunch]:
    families = _families([placed for placed in placings if placed.place is Place.FAMILY])
    return [*families, *_of(Place.SLIPS, placings), *_of(Place.INTERVIEW, placings)]


def _families(placings: Sequence[Placing]) -> list[_Bunch]:
    """Give each family its pupils, the family that most of those still waiting share first."""
    waiting, found = list(placings), []
    while waiting:
        shared = {family: sum(family in placed.families for placed in waiting) for family in Family}
        family = max(Family, key=lambda each: shared[each])
        found.append(
            _Bunch(Place.FAMILY, tuple(placed for placed in waiting if family in placed.families), (family,))
        )
        waiting = [placed for placed in waiting if family not in placed.families]
    return found


def _joined(bunches: list[_Bunch], meets: int) -> list[_Bunch]:
    """Join families: those with too few pupils, then as many as it takes, the pair with the fewest first."""
    while True:
        families = [bunch for bunch in bunches if bunch.place is Place.FAMILY]
        small = any(len(bunch.placings) < SMALLEST for bunch in families)
        if len(families) < 2 or not (small or len(bunches) > meets):
            return bunches
        first, second = min(
            combinations(families, 2),
            key=lambda pair: (sum(len(bunch.placings) for bunch in pair), [bunch.order for bunch in pair]),
        )
        rest = [bunch for bunch in bunches if bunch not in {first, second}]
        bunches = [*rest, _together(first, second)]


def _together(first: _Bunch, second: _Bunch) -> _Bunch:
    families = {*first.families, *second.families}
    placings = sorted((*first.placings, *second.placings), key=lambda placed: placed.pupil)
    return _Bunch(Place.FAMILY, tuple(placings), tuple(family for family in Family if family in families))


def _divided(bunches: list[_Bunch], meets: int) -> list[_Bunch]:
    """Cut groups that are too large, the largest first, while the teacher can meet one more."""
    room = max(0, meets - len(bunches))
    found: list[_Bunch] = []
    for bunch in sorted(bunches, key=lambda bunch: (-len(bunch.placings), bunch.order)):
        parts = min(_parts(bunch), 1 + room)
        room -= parts - 1
        found.extend(_cut(bunch, parts))
    return found


def _parts(bunch: _Bunch) -> int:
    return -(-len(bunch.placings) // LARGEST)


def _cut(bunch: _Bunch, parts: int) -> list[_Bunch]:
    """Cut into even parts; pupils whose answers fit the same families stay next to one another."""
    order = list(Family)
    placings = sorted(
        bunch.placings,
        key=lambda placed: ([order.index(family) for family in placed.families], placed.pupil),
    )
    sizes = [len(placings) // parts + (at < len(placings) % parts) for at in range(parts)]
    found, start = [], 0
    for size in sizes:
        part = tuple(sorted(placings[start : start + size], key=lambda placed: placed.pupil))
        found.append(_Bunch(bunch.place, part, _shared(bunch, part)))
        start += size
    return found


def _shared(bunch: _Bunch, part: Sequence[Placing]) -> tuple[Family, ...]:
    return tuple(family for family in bunch.families if any(family in placed.families for placed in part))
