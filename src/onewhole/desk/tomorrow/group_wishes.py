"""What a teacher types about tomorrow's groups: move, stay, let go, put together, begin, take the changes."""

from collections.abc import Iterator, Mapping

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.marking.mark import Marked, page_name
from onewhole.desk.tomorrow.seats import known_before, seated
from onewhole.errors import InputError
from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.notebook import Sat, Stay
from onewhole.marking.grouping.group import Group, key_of
from onewhole.marking.grouping.identity import newborn

#: Between a pupil's code (or a group's name) and the group that is meant.
TO = "="


class GroupWishes(Struct, frozen=True):
    """What is typed: ``moves`` and ``stays`` are ``CODE=GROUP``, ``merges`` ``GROUP=GROUP``.

    ``let_go`` are codes. Each of ``begins`` are the codes, parted by commas, of a group that is not there
    yet. ``take`` says that the changes which the answers ask for are taken before all else.
    """

    moves: tuple[str, ...] = ()
    stays: tuple[str, ...] = ()
    let_go: tuple[str, ...] = ()
    merges: tuple[str, ...] = ()
    begins: tuple[str, ...] = ()
    take: bool = False


NO_WISHES = GroupWishes()


def with_wishes(marked: Marked, wishes: GroupWishes) -> Marked:
    """Return a night whose groups are as a teacher typed. Raises InputError for who or what is not there."""
    if wishes == NO_WISHES:
        return marked
    stand = marked.seating.said if wishes.take else marked.groups
    places = dict(_places(marked, stand, wishes))
    made = seated(
        marked.marks.pupils,
        marked.findings,
        marked.settings,
        known_before(marked.tonight, page_name(marked.sheet)),
        sits={code: sat for code, sat in _sits(stand).items() if places.get(code, sat) is not None},
        places=places,
    )
    return replace(marked, seating=made)


def _sits(stand: tuple[Group, ...]) -> Mapping[str, Sat]:
    return {one.pupil: replace(group.seat, stays=one.stays) for group in stand for one in group.placings}


def _places(
    marked: Marked, stand: tuple[Group, ...], wishes: GroupWishes
) -> Iterator[tuple[str, Sat | None]]:
    for typed in wishes.merges:
        one, other = _pair(typed, "--merge", "GROUP=GROUP")
        into = _group(other, stand)
        for code in _group(one, stand).pupils:
            yield code, replace(into.seat, stays=Stay.TONIGHT)
    begun = list(stand)
    for typed in wishes.begins:
        codes = [_code(one.strip(), marked) for one in typed.split(",")]
        placings = tuple(one for group in stand for one in group.placings if one.pupil in codes)
        born = newborn((*begun, *marked.seating.said), known_before(marked.tonight, page_name(marked.sheet)))
        made = Group(born.name, GroupKind.FAMILY, placings, key_of(GroupKind.FAMILY, placings), born.id)
        begun.append(made)
        for code in codes:
            yield code, replace(made.seat, stays=Stay.TONIGHT)
    for wished, option, stays in (
        (wishes.moves, "--move", Stay.TONIGHT),
        (wishes.stays, "--stay", Stay.ALWAYS),
    ):
        for typed in wished:
            who, where = _pair(typed, option, "CODE=GROUP")
            yield _code(who, marked), replace(_group(where, tuple(begun)).seat, stays=stays)
    for code in wishes.let_go:
        yield _code(code, marked), None


def _pair(typed: str, option: str, shape: str) -> tuple[str, str]:
    one, to, other = (part.strip() for part in typed.partition(TO))
    if not (one and to and other):
        msg = f"“{option} {typed}” does not say who goes where"
        raise InputError(msg, remedy=f"Write {option} {shape}.")
    return one, other


def _code(typed: str, marked: Marked) -> str:
    codes = [one.pupil for one in marked.marks.pupils]
    if typed not in codes:
        msg = f"no pupil is called “{typed}”"
        raise InputError(msg, remedy=f"Use a code as it stands in the answers: {', '.join(codes)}.")
    return typed


def _group(typed: str, groups: tuple[Group, ...]) -> Group:
    for group in groups:
        if group.name.casefold() == typed.casefold() and group.place is not GroupKind.ABSENT:
            return group
    msg = f"no group is called “{typed}”"
    names = ", ".join(group.name for group in groups if group.place is not GroupKind.ABSENT)
    raise InputError(msg, remedy=f"Use the name of a group that is there: {names}.")
