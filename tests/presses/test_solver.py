from collections.abc import Iterator
from itertools import product

import numpy as np
import pytest
from highspy import HighsModelStatus
from hypothesis import given
from scipy import optimize

from onewhole.errors import Fault
from onewhole.number.program import Limit, Program
from onewhole.presses import solver
from onewhole.presses.solver import SolverEnd, TooSlowError, bound, solve
from tests.kit.programs import programs

FOUR = Program((3, 2), (1, 9), (Limit("four in all", {0: 1, 1: 1}, most=4),), 2)


def choices(program: Program) -> Iterator[tuple[int, ...]]:
    """Every choice that keeps the limits."""
    every = product(*(range(most + 1) for most in program.most))
    return (counts for counts in every if not program.broken(counts))


@given(programs())
def test_the_best_choice_is_that_of_trying_all(program: Program) -> None:
    """The solver gains as much as the best of all choices, and finds none where there is none."""
    best = max(map(program.gained, choices(program)), default=None)
    found = solve(program)
    if best is None:
        assert found is None
    else:
        assert found is not None
        assert not program.broken(found.counts)
        assert (found.gained, found.stopped) == (best, False)


@given(programs())
def test_the_bound_is_never_beaten(program: Program) -> None:
    """No choice that keeps the limits gains more."""
    most = bound(program)
    assert all(program.gained(counts) <= most for counts in choices(program))


def test_counts_that_need_not_be_whole_are_checked_too() -> None:
    """A row that forces a half is no whole choice: the check says so."""
    half = Program((1, 1), (1, 1), (Limit("half", {0: 2, 1: 0}, least=1, most=1),), 0)
    with pytest.raises(Fault, match="does not keep: half"):
        solve(half)


def test_nothing_to_choose() -> None:
    """Without counts the empty choice is the only one, if the limits let it be."""
    assert solve(Program((), (), (), 0)) == solver.Solution((), 0, stopped=False)
    assert solve(Program((), (), (Limit("one", {}, least=1),), 0)) is None
    assert bound(Program((), (), (), 0)) == 0


def told(status: HighsModelStatus, *counts: float) -> SolverEnd:
    """What the solver may say: how it ended, and the counts if it has any."""
    return SolverEnd(status, np.array(counts) if counts else None, ())


@pytest.mark.parametrize(
    ("said", "error", "words"),
    [
        (told(HighsModelStatus.kOptimal, 1, 4), Fault, "the solver's choice does not keep: four in all"),
        (told(HighsModelStatus.kOptimal, 2, 0), Fault, "the solver's choice does not keep: bounds"),
        (told(HighsModelStatus.kTimeLimit), TooSlowError, "nothing was found in 20 seconds"),
        (told(HighsModelStatus.kSolveError), Fault, "the solver ended with: kSolveError"),
    ],
)
def test_a_word_that_is_not_true_is_not_taken(
    monkeypatch: pytest.MonkeyPatch, said: SolverEnd, error: type[Exception], words: str
) -> None:
    """What the solver says is checked, and what it cannot do is told."""
    monkeypatch.setattr(solver, "run", lambda *_, **__: said)
    with pytest.raises(error, match=words):
        solve(FOUR)


def test_a_choice_at_the_end_of_time_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    """It keeps the limits, and may not be the best."""
    monkeypatch.setattr(solver, "run", lambda *_, **__: told(HighsModelStatus.kTimeLimit, 0, 4))
    found = solve(FOUR)
    assert found is not None
    assert (found.counts, found.gained, found.stopped) == ((0, 4), 8, True)


def test_without_prices_the_bound_is_far_off_and_true(monkeypatch: pytest.MonkeyPatch) -> None:
    """A solver that gives up costs closeness, never truth."""
    monkeypatch.setattr(solver, "run", lambda *_, **__: told(HighsModelStatus.kTimeLimit))
    assert bound(FOUR) == 3 + 2 * 9


@given(programs())
def test_another_library_finds_as_much(program: Program) -> None:
    """SciPy's door to a HiGHS of its own gains as much by the same program (reference library)."""
    if not program.gains:
        return
    rows = [[limit.terms.get(at, 0) for at in range(len(program.gains))] for limit in program.limits]
    least = [-np.inf if limit.least is None else limit.least for limit in program.limits]
    most = [np.inf if limit.most is None else limit.most for limit in program.limits]
    other = optimize.milp(
        [-gain for gain in program.gains],
        integrality=[1] * program.whole + [0] * (len(program.gains) - program.whole),
        bounds=optimize.Bounds(0, program.most),
        constraints=[optimize.LinearConstraint(rows, least, most)] if rows else [],
    )
    found = solve(program)
    assert (found is None) == (other.x is None)
    if found is not None:
        assert found.gained == -round(other.fun)


def test_nothing_is_printed(capfd: pytest.CaptureFixture[str]) -> None:
    """The solver writes nothing where a report is written."""
    solve(FOUR)
    assert capfd.readouterr() == ("", "")
