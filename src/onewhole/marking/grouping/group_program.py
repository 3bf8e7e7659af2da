"""Tomorrow's groups as an integer program: pupils, conversations, sizes, groups."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from onewhole.errors import InputError
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import JoinsOthers, LikelierThanNot
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.grouping.conversation import Conversation, conversations, cost, may_need
from onewhole.marking.grouping.placement import Placement, placement
from onewhole.marking.reading.mark import PupilMarks
from onewhole.misconceptions.pattern import Family
from onewhole.number.program import Limit, Program

#: How many groups a teacher can meet in one morning, unless the teacher says another number.
MEETS = 4


@dataclass(frozen=True, slots=True)
class Sizes:
    """How many pupils sit together, if it can be. Raises InputError for sizes that no group can have."""

    smallest: int = 3
    largest: int = 6

    def __post_init__(self) -> None:
        """Refuse sizes below one, and a smallest above the largest."""
        if not 1 <= self.smallest <= self.largest:
            msg = f"a group of {self.smallest} to {self.largest} pupils cannot be"
            raise InputError(msg, remedy="Give the smaller number first, from 1 up; 3 to 6 is usual.")


SIZES = Sizes()

#: Penalties, in hundredths of a pupil who sits in the wrong conversation; our own. A pupil too few or too
#: many in a group costs, for each pupil of the class, more than any seating can gain: sizes come first.
ONE_MORE_GROUP, TWO_FAMILIES, ANOTHER_THAN_BEFORE, OUTSIDE_SIZES = 20, 5, 3, 200


@dataclass(frozen=True, slots=True)
class Held:
    """A conversation that is held: with how many groups, and the placings of all who sit there."""

    talk: Conversation
    groups: int
    placings: tuple[Placement, ...]


@dataclass(frozen=True, slots=True)
class GroupProgram:
    """The program of a class: who is met, what each may need, the conversations, who may sit where.

    ``places`` has, for each of the program's first 0/1 variables, the pupil and the conversation by their
    numbers; after them come for every conversation its groups, the pupils too few and the pupils too many.
    """

    placings: tuple[Placement, ...]
    needs: tuple[tuple[Family, ...], ...]
    talks: tuple[Conversation, ...]
    places: tuple[tuple[int, int], ...]
    program: Program

    def chosen(self, counts: Sequence[int]) -> tuple[Held, ...]:
        """Return every conversation that is held, from a solution of the program."""
        found = []
        for at, talk in enumerate(self.talks):
            seats = zip(self.places, counts, strict=False)
            sit = [who for (who, where), yes in seats if yes and where == at]
            if sit:
                seated = tuple(_seated(self.placings[who], self.needs[who], talk) for who in sit)
                found.append(Held(talk, counts[len(self.places) + at], seated))
        return tuple(found)


def _seated(one: Placement, needs: tuple[Family, ...], talk: Conversation) -> Placement:
    """Return the placing of a pupil in a conversation, with why it is another than the pupil's own."""
    if talk.place is not GroupKind.FAMILY:
        return one
    if set(needs).isdisjoint(talk.families):
        return replace(one, because=(*one.because, JoinsOthers()))
    shared = tuple(family for family in needs if family in talk.families)
    if one.place is GroupKind.FAMILY:
        return one
    return Placement(one.pupil, GroupKind.FAMILY, (*one.because, LikelierThanNot(shared)), shared)


def placed(pupils: Sequence[PupilMarks], findings: Sequence[Finding]) -> tuple[Placement, ...]:
    """Return where each pupil belongs, in the order of their codes."""
    by_pupil = {found.pupil: found for found in findings}
    return tuple(
        sorted((placement(pupil, by_pupil[pupil.pupil]) for pupil in pupils), key=lambda one: one.pupil)
    )


def group_program(
    pupils: Sequence[PupilMarks],
    findings: Sequence[Finding],
    *,
    meets: int = MEETS,
    sizes: Sizes = SIZES,
    before: Mapping[str, str] | None = None,
) -> GroupProgram:
    """Return the integer program that seats the pupils whom the teacher meets.

    Every pupil sits in one conversation, at the cost of what the odds say against needing it
    (:func:`~.conversation.cost`). A conversation has one or more groups; there are no more than the teacher
    meets, or than there are sorts. As few pupils as can be are beyond the largest size of a group, or missing
    to the smallest; then the cost is least, where a group about two families costs 5 for each pupil, one more
    group 20, and a pupil moved from the conversation of the night ``before`` (by pupil, its key) 3. Sorts are
    never mixed: slips, talks and families stay apart, so that groups may be small where a sort is.

    The order of the pupils makes no difference. Raises InputError when ``meets`` is below 1.
    """
    if meets < 1:
        msg = f"a teacher meets at least one group, not {meets}"
        raise InputError(msg, remedy="Give a number from 1 up; 4 is usual.")
    met = tuple(
        one for one in placed(pupils, findings) if one.place not in {GroupKind.ABSENT, GroupKind.EXTENSION}
    )
    found = {one.pupil: one for one in findings}
    talks = conversations(met, found)
    costs = {
        (who, where): _cost(one, found[one.pupil], talk, (before or {}).get(one.pupil))
        for who, one in enumerate(met)
        for where, talk in enumerate(talks)
        if cost(one, found[one.pupil], talk) is not None
    }
    held = max(meets, len({one.place for one in met}))
    needs = tuple(may_need(one, found[one.pupil]) for one in met)
    return GroupProgram(met, needs, talks, tuple(costs), _program(costs, (len(met), len(talks)), held, sizes))


def _cost(one: Placement, found: Finding, talk: Conversation, before: str | None) -> int:
    moved = ANOTHER_THAN_BEFORE if before is not None and before != talk.key else 0
    return (cost(one, found, talk) or 0) + (TWO_FAMILIES if len(talk.families) > 1 else 0) + moved


def _program(
    costs: Mapping[tuple[int, int], int], size: tuple[int, int], meets: int, sizes: Sizes
) -> Program:
    """Build the variables in order: who sits where, then by conversation its groups, too few, too many."""
    (pupils, talks), seats = size, len(costs)
    groups, few, many = (seats + talks * block for block in range(3))
    outside = OUTSIDE_SIZES * pupils
    gains = [-each for each in costs.values()] + [-ONE_MORE_GROUP] * talks + [-outside] * (2 * talks)
    limits = []
    for who in range(pupils):
        seat = {at: 1 for at, (pupil, _) in enumerate(costs) if pupil == who}
        limits.append(Limit("one seat each", seat, 1, 1))
    for where in range(talks):
        sit = {at: 1 for at, (_, talk) in enumerate(costs) if talk == where}
        limits += [
            Limit("no seat without a group", sit | {groups + where: -pupils}, most=0),
            Limit("not too many", sit | {groups + where: -sizes.largest, many + where: -1}, most=0),
            Limit("not too few", sit | {groups + where: -sizes.smallest, few + where: 1}, least=0),
        ]
    limits.append(Limit("groups met", {groups + at: 1 for at in range(talks)}, most=meets))
    return Program(
        tuple(gains), (1,) * seats + (pupils * sizes.smallest,) * (3 * talks), tuple(limits), len(gains)
    )
