"""From problem classes to problems: one for each place on the page, no twins, chosen by the seed."""

from collections import Counter, defaultdict
from collections.abc import Hashable, Iterable, Sequence
from dataclasses import dataclass
from hashlib import sha256

from onewhole.sheets.candidates import LikePair
from onewhole.sheets.page_program import Crowded


@dataclass(frozen=True, slots=True)
class Wanted:
    """So many problems out of these, which are all of one kind; ``place`` is the kind's in the program."""

    place: int
    count: int
    members: tuple[LikePair, ...]


def numbers_for(wanted: Sequence[Wanted], seed: int) -> tuple[LikePair, ...] | Crowded:
    """Return the problems, those of the first kind first, or the kinds that together have too few.

    This is a bipartite matching by augmenting paths, so that too few is reported only where no assignment
    exists; the kinds named have fewer problems without twins than are wanted of them (Hall's theorem). Among
    free problems, those whose numbers are not on the page yet come first.

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


def _picked(slots: Sequence[Wanted], twin_of: dict[int, Hashable], seed: int) -> tuple[LikePair, ...]:
    seen: Counter[tuple[int, int, int]] = Counter()
    tops: Counter[int] = Counter()
    groups = _by_twin(slots)
    found: list[LikePair] = []
    for at, slot in enumerate(slots):
        free = groups[slot.place][twin_of[at]]
        one = min(free, key=lambda like: (_repeats(like, seen), tops[like.w1], _draw(seed, like)))
        seen.update(_numbers(one))
        tops[one.w1] += 1
        found.append(one)
    return tuple(found)


def _by_twin(slots: Iterable[Wanted]) -> dict[int, dict[Hashable, list[LikePair]]]:
    groups: dict[int, dict[Hashable, list[LikePair]]] = {}
    for slot in slots:
        if slot.place not in groups:
            groups[slot.place] = defaultdict(list)
            for one in slot.members:
                groups[slot.place][one.twin].append(one)
    return groups


def _numbers(one: LikePair) -> tuple[tuple[int, int, int], ...]:
    return (one.w1, one.n1, one.d), (one.w2, one.n2, one.d)


def _repeats(one: LikePair, seen: Counter[tuple[int, int, int]]) -> int:
    return sum(seen[number] for number in _numbers(one))


def _draw(seed: int, what: object) -> bytes:
    return sha256(f"{seed} {what}".encode()).digest()
