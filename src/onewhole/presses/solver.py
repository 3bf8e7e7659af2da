"""The solver: the only module that runs SciPy's HiGHS, in floats; its results are checked exactly."""

from dataclasses import dataclass
from enum import IntEnum
from fractions import Fraction
from math import floor
from typing import NoReturn

import numpy as np
import scipy  # its parts are loaded when they are first used: half a second that most days do without

from onewhole.errors import Fault, OnewholeError
from onewhole.number.program import Program

#: Seconds after which the solver stops with the best that it has.
SECONDS = 20
#: Dual prices are rounded to this part of a unit, so that the bound is worked out in whole numbers.
GRAIN = 1 << 20


class TooSlowError(OnewholeError, TimeoutError):
    """The time was up before any solution was found that keeps the limits."""


class _Status(IntEnum):
    """What SciPy's `milp` and `linprog` end with."""

    BEST = 0
    STOPPED = 1
    NONE = 2


@dataclass(frozen=True, slots=True)
class Solution:
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
    in ``seconds``. The same program gives the same counts with the same SciPy, unless the time is up.

    >>> from onewhole.number.program import Limit
    >>> found = solve(Program((3, 2), (1, 9), (Limit("four in all", {0: 1, 1: 1}, most=4),), 2))
    >>> found.counts, found.gained
    ((1, 3), 9)
    """
    size = len(program.gains)
    if not size:
        return None if program.broken(()) else Solution((), 0, stopped=False)
    found = scipy.optimize.milp(
        -np.array(program.gains, dtype=float),
        integrality=(np.arange(size) < program.whole).astype(int),
        bounds=scipy.optimize.Bounds(0, np.array(program.most, dtype=float)),
        constraints=_constraints(program),
        options={"time_limit": float(seconds), "mip_rel_gap": float(slack)},
    )
    if found.status == _Status.NONE:
        return None
    if found.x is None:
        _give_up(found.status, found.message, seconds)
    counts = tuple(int(count) for count in np.rint(found.x))
    if broken := program.broken(counts):
        msg = f"the solver's choice does not keep: {', '.join(broken)}"
        raise Fault(msg)
    return Solution(counts, program.gained(counts), stopped=found.status == _Status.STOPPED)


def bound(program: Program, *, seconds: int = SECONDS) -> int:
    """Return a proven upper bound on the gain of any whole-number solution.

    The dual prices of the linear relaxation are rounded, and weak duality is applied in whole numbers
    (:meth:`Program.bound`). The gain of whole counts is a whole number, so the bound is rounded down. Where
    the solver finds no prices, the bound is weak but valid.

    >>> from onewhole.number.program import Limit
    >>> bound(Program((3, 2), (1, 9), (Limit("four in all", {0: 1, 1: 1}, most=4),), 2))
    9
    """
    over = [(at, limit.most, 1) for at, limit in enumerate(program.limits) if limit.most is not None]
    under = [(at, -limit.least, -1) for at, limit in enumerate(program.limits) if limit.least is not None]
    sides = [*over, *under]
    prices = [[0, 0] for _ in program.limits]
    for (at, _, sign), marginal in zip(sides, _marginals(program, sides, seconds), strict=True):
        prices[at][sign < 0] = max(0, round(-marginal * GRAIN))
    return floor(program.bound([(above, below) for above, below in prices], GRAIN))


def _marginals(program: Program, sides: list[tuple[int, int, int]], seconds: int) -> list[float]:
    """Return the dual price of each side of the limits; zeros where the solver finds none."""
    if not sides:
        return []
    signs = scipy.sparse.diags_array([float(sign) for *_, sign in sides])
    found = scipy.optimize.linprog(
        -np.array(program.gains, dtype=float),
        A_ub=signs @ _rows(program)[[at for at, *_ in sides]],
        b_ub=[float(most) for _, most, _ in sides],
        bounds=[(0.0, float(most)) for most in program.most],
        method="highs",
        options={"time_limit": float(seconds)},
    )
    if found.status != _Status.BEST:
        return [0.0] * len(sides)
    return [float(marginal) for marginal in found.ineqlin.marginals]


def _rows(program: Program) -> "scipy.sparse.csr_array":
    """Return the weights of all limits, one row a limit."""
    starts = np.cumsum([0, *(len(limit.terms) for limit in program.limits)])
    places = np.fromiter((at for limit in program.limits for at in limit.terms), dtype=np.int32)
    weights = np.fromiter((w for limit in program.limits for w in limit.terms.values()), dtype=float)
    return scipy.sparse.csr_array((weights, places, starts), shape=(len(program.limits), len(program.gains)))


def _constraints(program: Program) -> "list[scipy.optimize.LinearConstraint]":
    if not program.limits:
        return []
    least = [-np.inf if limit.least is None else limit.least for limit in program.limits]
    most = [np.inf if limit.most is None else limit.most for limit in program.limits]
    return [scipy.optimize.LinearConstraint(_rows(program), least, most)]


def _give_up(status: int, message: str, seconds: int) -> NoReturn:
    if status == _Status.STOPPED:
        msg = f"nothing was found in {seconds} seconds"
        raise TooSlowError(msg, remedy="Allow more seconds, or wish for less.")
    msg = f"the solver ended with: {message}"
    raise Fault(msg)
