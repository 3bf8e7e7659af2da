"""The solver: the only module that runs HiGHS, in floats; its results are checked exactly."""

from collections.abc import Sequence
from fractions import Fraction
from math import floor
from typing import NoReturn

import highspy
import numpy as np
from highspy import Highs, HighsLp, HighsModelStatus, HighsStatus, MatrixFormat, ObjSense
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.errors import Fault, OnewholeError
from onewhole.number.program import Program

#: Seconds after which the solver stops with the best that it has.
SECONDS = 20
#: Dual prices are rounded to this part of a unit, so that the bound is worked out in whole numbers.
GRAIN = 1 << 20


class TooSlowError(OnewholeError, TimeoutError):
    """The time was up before any solution was found that keeps the limits."""


class Solution(Struct, frozen=True):
    """The counts chosen and what they gain, both checked exactly.

    ``stopped`` says that the time was up: another machine may then choose otherwise.
    """

    counts: tuple[int, ...]
    gained: int
    stopped: bool


def solve(program: Program, *, seconds: int = SECONDS, slack: Fraction = Fraction(0)) -> Solution | None:
    """Return counts that gain the most, or None when no counts keep all the limits.

    ``slack`` is the relative gap to the optimum at which the solver may stop. The counts are rounded and
    checked in whole numbers: Fault when they do not keep a limit. Raises TooSlowError when nothing was found
    in ``seconds``. The same program gives the same counts with the same HiGHS, unless the time is up.

    >>> from onewhole.number.program import Limit
    >>> found = solve(Program((3, 2), (1, 9), (Limit("four in all", {0: 1, 1: 1}, most=4),), 2))
    >>> found.counts, found.gained
    ((1, 3), 9)
    """
    size = len(program.gains)
    if not size:
        return None if program.broken(()) else Solution((), 0, stopped=False)
    told = run(_lines(program, program.whole), seconds, float(slack))
    if told.status == HighsModelStatus.kInfeasible:
        return None
    if told.counts is None:
        _give_up(told.status, seconds)
    counts = tuple(int(count) for count in np.rint(told.counts))
    if broken := program.broken(counts):
        msg = f"the solver's choice does not keep: {', '.join(broken)}"
        raise Fault(msg)
    return Solution(counts, program.gained(counts), stopped=told.status == HighsModelStatus.kTimeLimit)


def bound(program: Program, *, seconds: int = SECONDS) -> int:
    """Return a proven upper bound on the gain of any whole-number solution.

    The dual prices of the linear relaxation are rounded, and weak duality is applied in whole numbers
    (:meth:`Program.bound`). The gain of whole counts is a whole number, so the bound is rounded down. Where
    the solver finds no prices, the bound is weak but valid.

    >>> from onewhole.number.program import Limit
    >>> bound(Program((3, 2), (1, 9), (Limit("four in all", {0: 1, 1: 1}, most=4),), 2))
    9
    """
    prices = _prices(program, seconds)
    return floor(program.bound(prices, GRAIN))


def _prices(program: Program, seconds: int) -> list[tuple[int, int]]:
    """Return for each limit the dual prices of its two sides, in grains; zeros where the solver finds none.

    One number a row is what one more unit on the side that binds would save; its sign says which side it is.
    """
    told = run(_lines(program, 0), seconds)
    if told.status != HighsModelStatus.kOptimal:
        return [(0, 0)] * len(program.limits)
    grains = [round(-dual * GRAIN) for dual in told.duals]
    return [(max(0, one), max(0, -one)) for one in grains]


class SolverEnd(Struct, frozen=True, eq=False):
    """What HiGHS says: how it ended, the counts it found, and a dual price for each limit; all floats."""

    status: HighsModelStatus
    counts: NDArray[np.float64] | None
    duals: Sequence[float]


def run(lines: HighsLp, seconds: int, gap: float = 0.0) -> SolverEnd:
    """Solve a model on one thread, so that the same model ends with the same counts.

    ``gap`` is the relative gap to the optimum at which a program in whole numbers may stop.
    """
    solver = Highs()  # type: ignore[no-untyped-call] # its constructor has no types
    solver.silent()
    for option, value in (("threads", 1), ("time_limit", float(seconds)), ("mip_rel_gap", gap)):
        solver.setOptionValue(option, value)
    if solver.passModel(lines) == HighsStatus.kError:
        msg = "the solver does not take the program"
        raise Fault(msg)
    solver.run()
    found = solver.getSolution()
    counts = np.asarray(found.col_value, dtype=float) if found.value_valid else None
    return SolverEnd(solver.getModelStatus(), counts, tuple(found.row_dual))


def _lines(program: Program, whole: int) -> HighsLp:
    """Return the program as HiGHS takes it, one row a limit; the first ``whole`` counts are whole numbers."""
    size, limits = len(program.gains), program.limits
    lines = HighsLp()
    lines.num_col_, lines.num_row_ = size, len(limits)
    lines.sense_ = ObjSense.kMinimize
    lines.col_cost_ = -np.array(program.gains, dtype=float)
    lines.col_lower_, lines.col_upper_ = np.zeros(size), np.array(program.most, dtype=float)
    lines.integrality_ = [highspy.HighsVarType.kInteger] * whole + [highspy.HighsVarType.kContinuous] * (
        size - whole
    )
    lines.row_lower_ = np.array(
        [-np.inf if limit.least is None else limit.least for limit in limits], dtype=float
    )
    lines.row_upper_ = np.array(
        [np.inf if limit.most is None else limit.most for limit in limits], dtype=float
    )
    rows = lines.a_matrix_
    rows.format_ = MatrixFormat.kRowwise
    rows.num_col_, rows.num_row_ = size, len(limits)
    rows.start_ = np.cumsum([0, *(len(limit.terms) for limit in limits)])
    rows.index_ = np.fromiter((at for limit in limits for at in limit.terms), dtype=np.int32)
    rows.value_ = np.fromiter((w for limit in limits for w in limit.terms.values()), dtype=float)
    return lines


def _give_up(status: HighsModelStatus, seconds: int) -> NoReturn:
    if status == HighsModelStatus.kTimeLimit:
        msg = f"nothing was found in {seconds} seconds"
        raise TooSlowError(msg, remedy="Allow more seconds, or wish for less.")
    msg = f"the solver ended with: {status.name}"
    raise Fault(msg)
