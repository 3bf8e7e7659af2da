from itertools import product

import numpy as np
import pytest
from numpy.typing import NDArray

from onewhole.findings.habit import Habit
from onewhole.findings.wished_skill import WishedSkill
from onewhole.number.program import Limit
from onewhole.sheets.candidates import ProblemClass, ProblemType
from onewhole.sheets.learning import Doubt, learnt
from onewhole.sheets.page_program import Crowded, page_program
from onewhole.sheets.wishes import Review, Wishes

DOUBTS = (Doubt(("A01",), ("A02",), 2), Doubt((), ("A13",), 6), Doubt(("A13",), ("A14",), 1))


def kind(
    sort: ProblemType,
    tells: int,
    place: int,
    *,
    d: int = 4,
    level: int = 1,
    twins: int = 3,
    always: tuple[tuple[int, str], ...] = (),
) -> ProblemClass:
    """A kind of which only some things matter."""
    return ProblemClass(sort, d, level, tells, twins, 0, place, always)


KINDS = (
    kind(ProblemType.ENOUGH, 0b010, 0, always=((1, "2 3/8"),)),
    kind(ProblemType.OPENED, 0b011, 1, level=4),
    kind(ProblemType.FROM_WHOLE, 0b110, 2, d=8, level=5, always=((0, "5"), (1, "2 3/8"))),
)


def broken(
    counts: tuple[int, ...], wishes: Wishes, *habits: Habit, crowded: tuple[Crowded, ...] = ()
) -> set[str]:
    """The limits that so many of each kind do not keep, tellings taken as far as they go."""
    program = page_program(KINDS, DOUBTS, wishes, habits=habits, crowded=crowded)
    tellings = [0] * (len(program.gains) - len(KINDS))
    return set(program.broken((*counts, *tellings)))


@pytest.mark.parametrize(
    ("counts", "wishes", "names"),
    [
        ((1, 2, 1), Wishes(number=4, regrouping=None), set()),
        ((1, 1, 1), Wishes(number=4, regrouping=None), {"number"}),
        ((2, 1, 1), Wishes(number=4), {"regrouping"}),
        ((1, 2, 1), Wishes(number=4, minutes=5), {"minutes"}),
        ((1, 2, 1), Wishes(number=4, minutes=6), set()),
        ((1, 1, 1), Wishes(number=4, regrouping=None, review=(Review.TENS,)), set()),
        ((0, 4, 0), Wishes(number=4, regrouping=None), {"bounds"}),
    ],
)
def test_wishes_are_limits(counts: tuple[int, ...], wishes: Wishes, names: set[str]) -> None:
    """Each is kept exactly; review takes its part of number, minutes and regrouping."""
    assert broken(counts, wishes) == names


@pytest.mark.parametrize(
    ("counts", "habit", "names"),
    [
        ((1, 2, 1), Habit.APART, set()),
        ((3, 0, 1), Habit.APART, {"apart"}),
        ((0, 3, 3), Habit.CLIMB, {"climb"}),
        ((1, 3, 2), Habit.CLIMB, set()),
        ((1, 0, 3), Habit.VARIETY, {"variety"}),
        ((3, 0, 1), Habit.VARIETY, {"variety"}),
        ((1, 1, 1), Habit.VARIETY, set()),
        ((0, 1, 3), Habit.WHOLES, {"wholes"}),
        ((1, 2, 1), Habit.WHOLES, set()),
        ((3, 0, 3), Habit.NUMBERS, {"numbers"}),
        ((2, 1, 3), Habit.NUMBERS, {"numbers"}),
        ((1, 3, 0), Habit.NUMBERS, set()),
    ],
)
def test_habits_are_limits(counts: tuple[int, ...], habit: Habit, names: set[str]) -> None:
    """Each can be left off by itself."""
    wishes = Wishes(number=sum(counts), regrouping=None, denominators=(4, 8))
    assert broken(counts, wishes, habit) == names
    assert broken(counts, wishes) == set()


def test_both_operations_are_there_where_there_are_two() -> None:
    """A third of each at least; where nothing is added there is no such limit."""
    kinds = (*KINDS, kind(ProblemType.APART, 0b100, 3))
    wishes = Wishes(number=6, regrouping=None, skill=WishedSkill.BOTH)
    for counts, names in (((2, 2, 1, 1), {"both"}), ((2, 1, 1, 2), set())):
        program = page_program(kinds, (), wishes, habits=(Habit.BOTH,))
        assert set(program.broken(counts)) == names
    assert broken((2, 2, 2), wishes, Habit.BOTH) == set()


def test_a_lone_easy_problem_is_no_start() -> None:
    """Where there is one of the lowest level and a sixth of the page is two, the next level counts too."""
    kinds = (
        kind(ProblemType.ENOUGH, 1, 0, level=0, twins=1),
        *KINDS,
        kind(ProblemType.ENOUGH, 1, 4, level=5),
    )
    wishes = Wishes(number=12, regrouping=None)
    for counts, names in (((1, 1, 6, 2, 2), set()), ((1, 0, 6, 3, 2), {"climb"})):
        program = page_program(kinds, (), wishes, habits=(Habit.CLIMB,))
        assert set(program.broken(counts)) - {"bounds"} == names


def test_a_crowd_is_a_limit() -> None:
    """So many of these kinds together."""
    wishes = Wishes(number=4, regrouping=None)
    assert broken((2, 1, 1), wishes, crowded=(Crowded((0, 1), 2),)) == {"twins"}


def _kept(limit: Limit, rows: NDArray[np.int64]) -> NDArray[np.bool_]:
    """Say for each row of counts whether it keeps a limit."""
    totals = rows[:, list(limit.terms)] @ np.array(list(limit.terms.values()))
    kept = np.ones(len(rows), bool)
    if limit.least is not None:
        kept &= totals >= limit.least
    if limit.most is not None:
        kept &= totals <= limit.most
    return kept


def test_the_gains_are_what_is_learnt() -> None:
    """With as many tellings as there are, the program gains what the page teaches, no more and no less."""
    wishes = Wishes(number=4, regrouping=None)
    program = page_program(KINDS, DOUBTS, wishes, habits=(), ties=False)
    places = np.arange(len(program.gains) - len(KINDS))
    tellings = np.arange(2 ** len(places))[:, np.newaxis] >> places & 1
    for counts in product(range(4), repeat=3):
        if sum(counts) != 4:
            continue
        rows = np.hstack([np.tile(counts, (len(tellings), 1)), tellings])
        rows = rows[np.all([_kept(limit, rows) for limit in program.limits], axis=0)]
        row = rows[np.argmax(rows @ program.gains)].tolist()
        assert not program.broken(row)
        best = program.gained(row)
        assert best == learnt(
            DOUBTS, [one.tells for one, n in zip(KINDS, counts, strict=True) for _ in range(n)]
        )


def test_the_seed_never_outweighs_what_is_taught() -> None:
    """All that ties can add on a page is less than one unit of teaching; another seed adds otherwise."""
    for seed in range(20):
        wishes = Wishes(number=40, regrouping=None, seed=seed)
        program = page_program(KINDS, DOUBTS, wishes)
        unit = min(program.gains[len(KINDS) :])
        assert 40 * max(program.gains[: len(KINDS)]) < unit
    gains = {page_program(KINDS, DOUBTS, Wishes(seed=seed)).gains[: len(KINDS)] for seed in range(20)}
    assert len(gains) > 10
