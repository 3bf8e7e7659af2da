"""Which group of an earlier night a group is, and what a new one is called: a name has one group."""

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import count

from msgspec import Struct
from msgspec.structs import replace

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.group import Group

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
    "Curlews",
    "Avocets",
    "Pipits",
    "Siskins",
    "Martins",
    "Petrels",
    "Godwits",
    "Dunlins",
    "Redstarts",
    "Buntings",
    "Orioles",
    "Waxwings",
    "Kinglets",
    "Phoebes",
    "Warblers",
    "Thrushes",
    "Grebes",
    "Teals",
    "Pintails",
    "Widgeons",
    "Bitterns",
    "Ibises",
    "Bobolinks",
    "Chickadees",
)
_LASTING = {GroupKind.SLIPS, GroupKind.INTERVIEW, GroupKind.OWN_IDEA, GroupKind.ABSENT}


class Known(Struct, frozen=True):
    """What is known of groups before a night: where pupils sat last, and every group there ever was.

    ``born`` begins the identities that this night gives, such as its day, so that no other night gives them.
    """

    sat: Mapping[str, Sat]
    groups: tuple[Sat, ...] = ()
    born: str = ""


NOBODY = Known({})


def identified(parts: Sequence[Group], known: Known, names: Sequence[str] = NAMES) -> tuple[Group, ...]:
    """Give every group its identity and its name.

    A group is the one of an earlier night when most of its pupils sat there, or when most of those who sat
    there are in it again; groups to meet are never those of pupils who go further.
    Slips, talks and the absent are the same every night, whoever is in them. What is new gets an identity
    that was never given and the first name that no group ever had: a name does not change its meaning.
    """
    everyone = {sat.group: sat for sat in (*known.groups, *known.sat.values())}
    taken: dict[int, Sat] = {}
    for at, earlier in _same(parts, known, everyone):
        if at not in taken and earlier.group not in {sat.group for sat in taken.values()}:
            taken[at] = earlier
    new = _new({sat.id for sat in everyone.values()}, {sat.name for sat in everyone.values()}, known, names)
    return tuple(_called(part, taken.get(at), new) for at, part in enumerate(parts))


def newborn(groups: Iterable[Group], known: Known, names: Sequence[str] = NAMES) -> Sat:
    """Return the identity and the name of one more group."""
    seats = (*known.groups, *known.sat.values(), *(Sat(one.name, one.key, one.id) for one in groups))
    identity, name = next(_new({sat.id for sat in seats}, {sat.name for sat in seats}, known, names))
    return Sat(name, "", identity)


def _called(part: Group, earlier: Sat | None, new: Iterator[tuple[str, str]]) -> Group:
    if earlier is not None and earlier.id:
        return replace(part, id=earlier.id, name=earlier.name)
    identity, name = next(new)
    return replace(part, id=identity, name=earlier.name if earlier else name)


def _same(parts: Sequence[Group], known: Known, everyone: Mapping[str, Sat]) -> list[tuple[int, Sat]]:
    """Return which parts may be which earlier groups, the surest first."""
    size = Counter(sat.group for sat in known.sat.values())
    found: list[tuple[int, int, str, int, Sat]] = []
    for at, part in enumerate(parts):
        if part.place in _LASTING:
            found += [(0, 0, one.group, at, one) for one in everyone.values() if one.key == part.key]
            continue
        common = Counter(known.sat[pupil].group for pupil in part.pupils if pupil in known.sat)
        for group, shared in common.items():
            earlier = everyone[group]
            if (earlier.key == GroupKind.EXTENSION.value) != (part.place is GroupKind.EXTENSION):
                continue
            if earlier.key in {kind.value for kind in _LASTING}:
                continue
            alike = earlier.key == part.key
            if shared * 2 > len(part.pupils) or shared * 2 > size[group]:
                found.append((-shared, -alike, group, at, earlier))
    return [(at, earlier) for _, _, _, at, earlier in sorted(found, key=lambda one: one[:4])]


def _new(ids: set[str], used: set[str], known: Known, names: Sequence[str]) -> Iterator[tuple[str, str]]:
    begins = f"{known.born}." if known.born else ""
    free = (name for name in _endless(names) if name not in used)
    numbers = (number for number in map(str, count(1)) if f"{begins}{number}" not in ids)
    for name, number in zip(free, numbers, strict=False):
        yield f"{begins}{number}", name


def _endless(names: Sequence[str]) -> Iterator[str]:
    for turn in count(1):
        yield from names if turn == 1 else (f"{name} {turn}" for name in names)
