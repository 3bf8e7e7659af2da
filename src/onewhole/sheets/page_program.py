"""The page as an integer program: how many problems of each problem class, to teach the most."""

import math
from collections import defaultdict
from collections.abc import Callable, Hashable, Iterable, Sequence
from fractions import Fraction
from hashlib import sha256

from msgspec import Struct

from onewhole.findings.habit import Habit
from onewhole.number.program import Limit, Program
from onewhole.problems.minutes import STORY, STORY_AT_LEAST
from onewhole.sheets.candidates import ProblemClass
from onewhole.sheets.learning import GAINS, Doubt
from onewhole.sheets.review import halves_aside, set_aside
from onewhole.sheets.wishes import Wishes
from onewhole.statements.statement import Relation

#: Tie-breaking among pages that teach as much: the seed adds 0 to 7 parts to each problem of a problem class.
TIES = 8
#: A number may stand once at its place, and once more for so many problems of a page; our own.
OFTEN = 12
#: Of so many numbers compared one pair may be equal, and no sign answers more than two of three; our own.
EQUAL_IN, SAME_SIGN = 5, Fraction(2, 3)
#: Told as a story, a problem that takes a minute or more takes so many half minutes more at most.
FOR_A_STORY = max(STORY, STORY_AT_LEAST - 2)


class Rest(Struct, frozen=True):
    """What is left to compose once the review problems are set aside.

    ``number`` problems, of which ``regrouping`` regroup (None: as it comes), in ``halves`` half minutes
    (None: no budget).
    """

    number: int
    regrouping: int | None
    halves: int | None


def rest_of(wishes: Wishes) -> Rest:
    """Return what is left to compose beside the review problems and those that come back.

    >>> from onewhole.sheets.wishes import Review
    >>> rest_of(Wishes(number=8, minutes=12, review=(Review.TENS,)))
    Rest(number=7, regrouping=4, halves=21)
    """
    regrouping, aside = wishes.kept_regrouping, set_aside(wishes)
    return Rest(
        wishes.number - len(aside),
        None if regrouping is None else regrouping - sum(aside),
        None
        if wishes.minutes is None
        else 2 * wishes.minutes - halves_aside(wishes) - FOR_A_STORY * wishes.told,
    )


class Crowded(Struct, frozen=True):
    """Problem classes, by index, that have only so many problems without twins."""

    places: tuple[int, ...]
    most: int


def page_program(
    kinds: Sequence[ProblemClass],
    doubts: Sequence[Doubt],
    wishes: Wishes,
    *,
    habits: Sequence[Habit] = tuple(Habit),
    crowded: Sequence[Crowded] = (),
    ties: bool = True,
) -> Program:
    """Return the program of a page.

    The first variables are how many problems of each problem class are taken. After them come, for every
    group of doubts that the same problem classes settle, one variable from 0 to 1 for each problem that
    settles it, as long as one more is worth something. With ``ties`` the gains are scaled so that the
    tie-breaking terms of the seed never outweigh one unit of what is taught.

    The model is written out in ``docs/decisions/0009-composing-is-optimised.md``.
    """
    groups = _alike(kinds, doubts)
    rest = rest_of(wishes)
    scale = TIES * wishes.number if ties else 1
    gains = [_tie(kind, wishes.seed) if ties else 0 for kind in kinds]
    limits = list(_limits(kinds, rest, habits))
    limits += [Limit("twins", dict.fromkeys(one.places, 1), most=one.most) for one in crowded]
    for places, weight, core in groups:
        terms = dict.fromkeys(places, 1)
        if core and Habit.APART in habits:
            limits.append(Limit("apart", dict(terms), least=1))
        for gain in GAINS:
            terms[len(gains)] = -1
            gains.append(scale * weight * gain)
        limits.append(Limit("settled", terms, least=0))
    most = [min(kind.twins, rest.number) for kind in kinds] + [1] * (len(gains) - len(kinds))
    return Program(tuple(gains), tuple(most), tuple(limits), whole=len(kinds))


def _tie(kind: ProblemClass, seed: int) -> int:
    """Return the tie-breaking term of a problem class, the same on every machine."""
    look = f"{seed} {kind.sort.value} {kind.group} {kind.level} {kind.tells}"
    return sha256(look.encode()).digest()[0] % TIES


def _alike(kinds: Sequence[ProblemClass], doubts: Sequence[Doubt]) -> list[tuple[tuple[int, ...], int, bool]]:
    """Return groups of doubts that the same kinds settle: those, the weight, whether one is core."""
    if not doubts:
        return []
    rows = (f"{kind.tells:0{len(doubts)}b}"[::-1] for kind in kinds)
    weights: dict[str, int] = defaultdict(int)
    core: set[str] = set()
    for column, doubt in zip(map("".join, zip(*rows, strict=True)), doubts, strict=True):
        weights[column] += doubt.weight
        if doubt.core:
            core.add(column)
    return [
        (tuple(at for at, bit in enumerate(column) if bit == "1"), weight, column in core)
        for column, weight in weights.items()
        if "1" in column
    ]


def _limits(kinds: Sequence[ProblemClass], rest: Rest, habits: Sequence[Habit]) -> Iterable[Limit]:
    number, regroup = rest.number, rest.regrouping
    yield Limit("number", _each(kinds, lambda _: 1), number, number)
    if regroup is not None:
        yield Limit("regrouping", _each(kinds, lambda kind: kind.sort.regroups), regroup, regroup)
    if rest.halves is not None:
        yield Limit("minutes", _each(kinds, lambda kind: kind.sort.halves), most=rest.halves)
    if Habit.BOTH in habits and len({kind.sort.taken for kind in kinds}) > 1:
        yield Limit("both", _each(kinds, lambda kind: kind.sort.taken), number // 3, number - number // 3)
    levels = {kind.level for kind in kinds}
    if Habit.CLIMB in habits and len(levels) > 1:
        easy = _easy(kinds, number // 6)
        yield Limit("climb", _each(kinds, lambda kind: kind.level <= easy), least=number // 6)
        equal = max(_share(number, 2), _share(2 * number, len(levels)))
        yield from _at_most("climb", kinds, lambda kind: kind.level, equal)
    if Habit.VARIETY in habits:
        yield from _signs(kinds, number)
    groups = len({kind.group for kind in kinds})
    if Habit.VARIETY in habits and groups > 1:
        fair = max(2, _share(2 * number, groups))
        yield from _at_most("variety", kinds, lambda kind: kind.group, fair)
        looks = len({(kind.sort, kind.group) for kind in kinds})
        alike = max(_share(number, 6), _share(3 * number, 2 * looks))
        yield from _at_most("variety", kinds, lambda kind: (kind.sort, kind.group), alike)
    if Habit.WHOLES in habits:
        few = max(1, _share(number if regroup is None else regroup, 3))
        yield Limit("wholes", _each(kinds, lambda kind: kind.sort.whole_on_top), most=few)
    if Habit.NUMBERS in habits:
        yield from _seldom_again(kinds, most=1 + number // OFTEN)


def _easy(kinds: Sequence[ProblemClass], count: int) -> int:
    """Return the lowest level up to which there are so many problems; a lone one is no start for a page."""
    levels = sorted({kind.level for kind in kinds})
    enough = (up_to for up_to in levels if sum(one.twins for one in kinds if one.level <= up_to) >= count)
    return next(enough, levels[-1])


def _signs(kinds: Sequence[ProblemClass], number: int) -> Iterable[Limit]:
    """Yield a limit for each sign that can be an answer: few numbers are equal, and no sign is most often."""
    for sign in Relation:
        few = max(1, number // EQUAL_IN) if sign is Relation.EQUAL else math.ceil(SAME_SIGN * number)
        if terms := {at: 1 for at, kind in enumerate(kinds) if kind.sort.sign is sign}:
            yield Limit("variety", terms, most=few)


def _seldom_again(kinds: Sequence[ProblemClass], most: int) -> Iterable[Limit]:
    """Yield a limit for each number that all problems of a kind have, where several kinds do."""
    places: dict[Hashable, list[int]] = defaultdict(list)
    for at, kind in enumerate(kinds):
        for number in kind.always:
            places[number].append(at)
    yield from (Limit("numbers", dict.fromkeys(group, 1), most=most) for group in places.values())


def _share(count: int, parts: int) -> int:
    """Return one of so many parts of a count, rounded up."""
    return -(-count // parts)


def _each(kinds: Sequence[ProblemClass], weight: Callable[[ProblemClass], int]) -> dict[int, int]:
    return {at: int(weight(kind)) for at, kind in enumerate(kinds) if weight(kind)}


def _at_most(
    name: str, kinds: Sequence[ProblemClass], look: Callable[[ProblemClass], Hashable], most: int
) -> Iterable[Limit]:
    """Yield a limit for each look that kinds can have: so many problems of it at most."""
    places: dict[Hashable, list[int]] = defaultdict(list)
    for at, kind in enumerate(kinds):
        places[look(kind)].append(at)
    yield from (Limit(name, dict.fromkeys(group, 1), most=most) for group in places.values())
