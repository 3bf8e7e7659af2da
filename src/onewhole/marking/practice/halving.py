"""What is left after some days of something that halves, per million, in whole numbers alone."""

from math import isqrt

MILLION = 1_000_000
#: A half-life is cut into so many steps; a power of two, so that square roots give each of them.
STEPS = 1024
_DIGITS = 10**60


def _halves() -> tuple[int, ...]:
    """Return a million times 2^(-n/1024) for n from 0 to 1023, each rounded to the nearest."""
    step = _DIGITS // 2
    for _ in range(STEPS.bit_length() - 1):
        step = isqrt(step * _DIGITS)
    found, left = [], _DIGITS
    for _ in range(STEPS):
        found.append((left * MILLION * 2 + _DIGITS) // (2 * _DIGITS))
        left = left * step // _DIGITS
    return tuple(found)


#: A million times 2^(-n/1024).
HALVES = _halves()


def left_after(steps: int) -> int:
    """Return what is left of a million after so many 1024ths of a half-life.

    >>> left_after(0), left_after(1024), left_after(512), left_after(1024 * 30)
    (1000000, 500000, 707107, 0)
    """
    return HALVES[steps % STEPS] >> (steps // STEPS)
