"""Tomorrow's meetings as an integer program: blocks of one idea, who leads a group, sizes, meetings."""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence

from msgspec import Struct

from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.block import IdeaBlock
from onewhole.marking.grouping.group_settings import GroupSettings, Sizes
from onewhole.misconceptions.pattern import Family
from onewhole.number.program import Limit, Program

#: Penalties, in hundredths of a pupil who sits where the odds say nothing for it; our own. A pupil too few or
#: too many in a group costs, for each pupil of the class, more than any seating can gain: sizes come first.
ONE_MORE_GROUP, FURTHER_IDEA, FURTHER_FAMILY, APART_FROM_BEFORE, OUTSIDE_SIZES = 20, 25, 25, 3, 200
#: With more blocks than this the class is not solved but cut in the order of ideas: no class has so many.
MOST_SOLVED = 20

Topic = Family | str


class GroupProgram(Struct, frozen=True):
    """The program of a class: its blocks, and of the first 0/1 counts each block and its group's leader.

    A group is led by the first of its blocks, so that it is written in one way only. ``seats`` are
    pairs of a block and its leader by number; ``talks`` are the blocks that may have a talk instead.
    """

    blocks: tuple[IdeaBlock, ...]
    seats: tuple[tuple[int, int], ...]
    talks: tuple[int, ...]
    program: Program

    def chosen(self, counts: Sequence[int]) -> tuple[tuple[IdeaBlock, ...], ...]:
        """Return the groups of blocks of a solution; who has a talk instead is in none."""
        found: dict[int, list[IdeaBlock]] = {}
        for (who, leader), yes in zip(self.seats, counts, strict=False):
            if yes:
                found.setdefault(leader, []).append(self.blocks[who])
        return tuple(tuple(held) for held in found.values())


def group_program(
    row: Sequence[IdeaBlock], settings: GroupSettings, before: Mapping[str, Sat] | None = None
) -> GroupProgram:
    """Return the integer program that seats blocks in the groups that the teacher meets.

    Every block sits in one group, or, where a finding is open, has a talk instead. There are no more groups
    than the teacher meets. As few pupils as can be are beyond the largest size of a group, or missing to the
    smallest; then the cost is least: what the odds say against sitting there or talking instead, 20 for each
    group, 25 for each further idea and each further family in a group, and 3 for a pupil of another group of
    the night ``before`` than most of the block that leads.
    """
    sat = before or {}
    seats = tuple((who, leader) for leader in range(len(row)) for who in range(leader, len(row)))
    talks = tuple(at for at, block in enumerate(row) if block.talk is not None)
    topics = tuple(
        (leader, topic)
        for leader, block in enumerate(row)
        for topic in dict.fromkeys(topic for other in row[leader:] for topic in _topics(other))
        if topic not in _topics(block)
    )
    pupils = sum(len(block.placings) for block in row)
    sized = len(seats) + len(talks) + len(topics)
    gains = (
        *(-_seat(row[who], row[leader], sat) - ONE_MORE_GROUP * (who == leader) for who, leader in seats),
        *(-(row[at].talk or 0) for at in talks),
        *(-(FURTHER_IDEA if isinstance(topic, str) else FURTHER_FAMILY) for _, topic in topics),
        *(-OUTSIDE_SIZES * pupils,) * (2 * len(row)),
    )
    limits = (
        *_one_seat(row, seats, talks),
        *_led(seats),
        *_beside(row, seats),
        *_talked_about(row, seats, topics, len(seats) + len(talks)),
        *_sizes(row, seats, settings.sizes, sized),
        Limit(
            "groups met",
            {at: 1 for at, (who, leader) in enumerate(seats) if who == leader},
            most=settings.meets,
        ),
    )
    most = (1,) * sized + (pupils + settings.sizes.smallest,) * (2 * len(row))
    return GroupProgram(tuple(row), seats, talks, Program(gains, most, limits, len(gains)))


def in_a_row(row: Sequence[IdeaBlock], settings: GroupSettings) -> tuple[tuple[IdeaBlock, ...], ...]:
    """Cut a very long row of blocks into groups in its order, as even as blocks allow: not the best."""
    pupils = sum(len(block.placings) for block in row)
    if not pupils:
        return ()
    groups = min(settings.meets, -(-pupils // settings.sizes.largest))
    made: list[list[IdeaBlock]] = [[] for _ in range(groups)]
    seated = 0
    for block in row:
        made[seated * groups // pupils].append(block)
        seated += len(block.placings)
    return tuple(tuple(part) for part in made if part)


def _topics(block: IdeaBlock) -> tuple[Topic, ...]:
    return (block.family, block.idea) if block.idea else (block.family,)


def _seat(block: IdeaBlock, leader: IdeaBlock, sat: Mapping[str, Sat]) -> int:
    """Return what a block costs in a group: the odds against it, and pupils who sat in another group."""
    groups = Counter(sat[pupil].group for pupil in leader.pupils if pupil in sat)
    if not groups:
        return block.here
    most = min(groups, key=lambda group: (-groups[group], group))
    apart = sum(pupil in sat and sat[pupil].group != most for pupil in block.pupils)
    return block.here + APART_FROM_BEFORE * apart


def _one_seat(
    row: Sequence[IdeaBlock], seats: Sequence[tuple[int, int]], talks: Sequence[int]
) -> Iterator[Limit]:
    for at in range(len(row)):
        seat = {place: 1 for place, (who, _) in enumerate(seats) if who == at}
        talk = {len(seats) + talks.index(at): 1} if at in talks else {}
        yield Limit("one seat each", seat | talk, 1, 1)


def _led(seats: Sequence[tuple[int, int]]) -> Iterator[Limit]:
    lead = {leader: at for at, (who, leader) in enumerate(seats) if who == leader}
    for at, (who, leader) in enumerate(seats):
        if who != leader:
            yield Limit("no seat without a group", {at: 1, lead[leader]: -1}, most=0)


def _beside(row: Sequence[IdeaBlock], seats: Sequence[tuple[int, int]]) -> Iterator[Limit]:
    """Let an open pupil sit only beside somebody of the same family: alone among others a talk is better."""
    for at, (who, leader) in enumerate(seats):
        if row[who].talk is not None:
            family = row[who].family
            beside = {
                place: -1
                for place, (other, led) in enumerate(seats)
                if led == leader and other != who and row[other].family is family
            }
            yield Limit("beside one of the same family", {at: 1} | beside, most=0)


def _talked_about(
    row: Sequence[IdeaBlock],
    seats: Sequence[tuple[int, int]],
    topics: Sequence[tuple[int, Topic]],
    start: int,
) -> Iterator[Limit]:
    places = {key: start + at for at, key in enumerate(topics)}
    for at, (who, leader) in enumerate(seats):
        for topic in _topics(row[who]):
            if (leader, topic) in places:
                yield Limit("what a group is about", {at: 1, places[leader, topic]: -1}, most=0)


def _sizes(
    row: Sequence[IdeaBlock], seats: Sequence[tuple[int, int]], sizes: Sizes, start: int
) -> Iterator[Limit]:
    for leader in range(len(row)):
        sit = {at: len(row[who].placings) for at, (who, led) in enumerate(seats) if led == leader}
        lead = next(at for at, seat in enumerate(seats) if seat == (leader, leader))
        few, many = start + leader, start + len(row) + leader
        over = sit | {lead: sit[lead] - sizes.largest, many: -1}
        under = sit | {lead: sit[lead] - sizes.smallest, few: 1}
        yield Limit("not too many", over, most=0)
        yield Limit("not too few", under, least=0)
