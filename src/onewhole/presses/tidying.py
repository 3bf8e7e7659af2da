"""A recording tidied as wished: loudness set, silence at its ends cut off, clicks of keys taken out.

Sources: ITU-R BS.1770-4 (loudness: its two filters, blocks of 400 ms, both gates), EBU R 128 (-23 LUFS, peak
at most -1 dB; here of the samples, not between them). What counts as silence and as a click: our own choice.
"""

from collections.abc import Collection
from enum import Enum
from fractions import Fraction
from typing import Final

import numpy as np
from numpy.typing import NDArray

from onewhole.errors import InputError
from onewhole.presses.decoder import RATE
from onewhole.presses.resampling import filtered
from onewhole.presses.sound import Sound

#: Loudness units below full scale that a recording gets, and its highest peak, in decibels.
TARGET, PEAK = -23.0, -1.0
#: The filters of BS.1770 at 48,000 samples a second, as it prints them: a shelf for the head, a high pass.
_SHELF: Final = (
    1.53512485958697,
    -2.69169618940638,
    1.19839281085285,
    1,
    -1.69065929318241,
    0.73248077421585,
)
_HIGH: Final = (1.0, -2.0, 1.0, 1, -1.99004745483398, 0.99007225036621)
#: Blocks are so many seconds, and a new one begins every so many; they count above so many units, and above
#: so many below their mean.
_BLOCK, _STEP, _GATE, _BELOW = 0.4, 0.1, -70.0, 10.0
#: A hundredth of a second is quiet when it is so many decibels below the loudest tenth of them.
QUIET: Final = 35.0
#: Seconds of silence that stay at each end.
KEPT: Final = 0.3
#: A click is at most so many seconds long, with so many seconds of quiet on both sides.
CLICK, ALONE = 0.05, 0.12
_HUNDREDTH: Final = 100


class Tidy(Enum):
    """What can be done to a recording."""

    LEVEL = "level"
    TRIM = "trim"
    CLICKS = "clicks"


def tidy_named(names: str) -> frozenset[Tidy]:
    """Return what is wished, from names with commas between. Raises InputError with the names there are.

    >>> sorted(one.value for one in tidy_named("trim, level"))
    ['level', 'trim']
    """
    found = set()
    for name in filter(None, (one.strip() for one in names.split(","))):
        try:
            found.add(Tidy(name))
        except ValueError:
            there = ", ".join(one.value for one in Tidy)
            msg = f"“{name[:40]}” cannot be done to a recording"
            raise InputError(msg, remedy=f"Choose of: {there}.") from None
    return frozenset(found)


def tidied(sound: Sound, wishes: Collection[Tidy]) -> Sound:
    """Return a recording of 48,000 samples a second tidied: clicks first, then silence, then loudness."""
    if not wishes or sound.rate != RATE:
        return sound
    samples = sound.samples
    if Tidy.CLICKS in wishes:
        samples = _without_clicks(samples)
    if Tidy.TRIM in wishes:
        samples = _trimmed(samples)
    if Tidy.LEVEL in wishes:
        samples = _levelled(samples)
    return Sound(samples, RATE)


def loudness(samples: NDArray[np.int16]) -> float:
    """Return the loudness of one channel at 48,000 samples a second, in LUFS; -70 for silence."""
    wave = samples.astype(np.float64) / 32_768
    heard = filtered(wave, RATE, (_SHELF, _HIGH))
    block, step = int(_BLOCK * RATE), int(_STEP * RATE)
    sums = np.concatenate(([0.0], np.cumsum(heard * heard)))
    starts = np.arange(0, max(1, len(wave) - block + 1), step)
    power = (sums[np.minimum(starts + block, len(wave))] - sums[starts]) / block
    power = power[power > _power(_GATE)]
    if not len(power):
        return _GATE
    above = power[power > _power(_units(float(power.mean())) - _BELOW)]
    return _units(float(above.mean()))


def _units(power: float) -> float:
    return -0.691 + 10 * float(np.log10(power))


def _power(units: float) -> float:
    return float(10 ** ((units + 0.691) / 10))


def _levelled(samples: NDArray[np.int16]) -> NDArray[np.int16]:
    is_loud = loudness(samples)
    peak = int(np.abs(samples.astype(np.int32)).max(initial=0))
    if is_loud <= _GATE or not peak:
        return samples
    gain = min(10 ** ((TARGET - is_loud) / 20), 32_767 * 10 ** (PEAK / 20) / peak)
    made: NDArray[np.int16] = np.rint(samples * gain).astype(np.int16)
    return made


def _loud(samples: NDArray[np.int16]) -> NDArray[np.bool_]:
    """Say of every hundredth of a second whether it is heard."""
    size = RATE // _HUNDREDTH
    parts = samples[: len(samples) // size * size].astype(np.float64).reshape(-1, size)
    power = np.sqrt((parts * parts).mean(axis=1))
    if not len(power):
        return np.zeros(0, np.bool_)
    top = float(np.quantile(power, 0.9))
    heard: NDArray[np.bool_] = power > max(1.0, top * 10 ** (-QUIET / 20))
    return heard


def trimmed_about(sound: Sound, first: Fraction, last: Fraction) -> tuple[Sound, Fraction]:
    """Return a recording of 48,000 samples a second without silence at its ends, and the seconds before it.

    What lies between the seconds ``first`` and ``last`` stays.
    """
    heard = np.flatnonzero(_loud(sound.samples))
    if not len(heard) or sound.rate != RATE:
        return sound, Fraction(0)
    start, end = _ends(heard)
    start, end = max(0, min(start, int(first * RATE))), max(end, int(last * RATE))
    return Sound(sound.samples[start:end], RATE), Fraction(start, RATE)


def _trimmed(samples: NDArray[np.int16]) -> NDArray[np.int16]:
    heard = np.flatnonzero(_loud(samples))
    if not len(heard):
        return samples
    start, end = _ends(heard)
    return samples[start:end]


def _ends(heard: NDArray[np.int_]) -> tuple[int, int]:
    """Return the samples from which and to which a recording stays, a little silence with it."""
    size, kept = RATE // _HUNDREDTH, int(KEPT * RATE)
    return max(0, int(heard[0]) * size - kept), (int(heard[-1]) + 1) * size + kept


def _without_clicks(samples: NDArray[np.int16]) -> NDArray[np.int16]:
    """Return the samples with what is heard shortly and alone made quiet."""
    heard = np.concatenate(([False], _loud(samples), [False])).astype(np.int8)
    starts: list[int] = np.flatnonzero(np.diff(heard) == 1).tolist()
    ends: list[int] = np.flatnonzero(np.diff(heard) == -1).tolist()
    made, size = samples.copy(), RATE // _HUNDREDTH
    for at, (start, end) in enumerate(zip(starts, ends, strict=True)):
        before = start - ends[at - 1] if at else start + _HUNDREDTH
        after = starts[at + 1] - end if at + 1 < len(starts) else _HUNDREDTH
        if end - start <= CLICK * _HUNDREDTH and min(before, after) >= ALONE * _HUNDREDTH:
            made[max(0, start - 1) * size : (end + 1) * size] = 0
    return made
