"""From problem classes to problems: one for each place on the page, no twins, chosen by the seed."""

from collections.abc import Hashable, Sequence
from hashlib import sha256

from msgspec import Struct

from onewhole.sheets.candidates import PageCandidate
from onewhole.sheets.page_program import Crowded

#: So many problems of a kind are looked at for each place, and so often the page is gone through for better
#: ones; our own.
LOOKED_AT, ROUNDS = 160, 4
#: What it costs that a number stands once more at its place, first or later, anywhere, and that two problems
#: begin alike; our own.
SAME_FIRST, SAME_LATER, SAME_ANYWHERE, SAME_TOP = 4, 8, 2, 1


class Wanted(Struct, frozen=True):
    """So many problems out of these, which are all of one kind; ``place`` is the kind's in the program."""

    place: int
    count: int
    members: tuple[PageCandidate, ...]


def numbers_for(wanted: Sequence[Wanted], seed: int) -> tuple[PageCandidate, ...] | Crowded:
    """Return the problems, those of the first kind first, or the kinds that together have too few.

    This is a bipartite matching by augmenting paths, so that too few is reported only where no assignment
    exists; the kinds named have fewer problems without twins than are wanted of them (Hall's theorem). Then
    each place in turn takes the problem whose numbers are least on the page yet.

    >>> from onewhole.sheets.candidates import LikePair
    >>> members = (LikePair(5, 1, 2, 3, 4, taken=True), LikePair(6, 1, 3, 3, 4, taken=True))
    >>> numbers_for([Wanted(0, 2, members)], seed=1)
    Crowded(places=(0,), most=1)
    """
    slots = [one for one in wanted for _ in range(one.count)]
    choices = [sorted({m.twin for m in one.members}, key=lambda twin: _draw(seed, twin)) for one in slots]
    holder: dict[Hashable, int] = {}
    for at in range(len(slots)):
        tried: set[Hashable] = set()
        if not _seated(at, choices, holder, tried):
            short = {holder[twin] for twin in tried} | {at}
            return Crowded(tuple(sorted({slots[one].place for one in short})), len(tried))
    return _picked(slots, {at: twin for twin, at in holder.items()}, seed)


def _seated(
    at: int, choices: Sequence[Sequence[Hashable]], holder: dict[Hashable, int], tried: set[Hashable]
) -> bool:
    for twin in choices[at]:
        if twin in tried:
            continue
        tried.add(twin)
        if twin not in holder or _seated(holder[twin], choices, holder, tried):
            holder[twin] = at
            return True
    return False


def _picked(slots: Sequence[Wanted], twin_of: dict[int, Hashable], seed: int) -> tuple[PageCandidate, ...]:
    """Begin with a problem of each twin, and let each place take one that is better, while any is."""
    free = {
        slot.place: sorted(slot.members, key=lambda one: _draw(seed, one.typed))[:LOOKED_AT] for slot in slots
    }
    found = [
        next(one for one in (*free[slot.place], *slot.members) if one.twin == twin_of[at])
        for at, slot in enumerate(slots)
    ]
    for _ in range(ROUNDS):
        before = tuple(found)
        for at, slot in enumerate(slots):
            others = [one for place, one in enumerate(found) if place != at]
            taken = {one.twin for one in others}
            options = [found[at], *(one for one in free[slot.place] if one.twin not in taken)]
            found[at] = min(options, key=lambda one: _likeness(one, others))
        if tuple(found) == before:
            break
    return tuple(found)


def _likeness(one: PageCandidate, others: Sequence[PageCandidate]) -> int:
    """Say how much of a problem stands on the page already."""
    numbers = one.numbers
    cost = 0
    for other in others:
        theirs = other.numbers
        cost += SAME_TOP * (one.top == other.top)
        for place, number in enumerate(numbers):
            if place < len(theirs) and theirs[place] == number:
                cost += SAME_LATER if place else SAME_FIRST
            elif number in theirs:
                cost += SAME_ANYWHERE
    return cost


def _draw(seed: int, what: object) -> bytes:
    return sha256(f"{seed} {what}".encode()).digest()
