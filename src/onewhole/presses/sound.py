"""Sound: samples of one channel and how many there are a second."""

from fractions import Fraction

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

Samples = NDArray[np.int16]


class Sound(Struct, frozen=True, eq=False):
    """One channel of sound: whole numbers from -32768 to 32767, ``rate`` of them a second.

    Raises ValueError for samples of another shape or kind, and for a rate below 1.

    >>> Sound(np.zeros(24_000, np.int16), 48_000).seconds
    Fraction(1, 2)
    """

    samples: Samples
    rate: int

    def __post_init__(self) -> None:
        if self.samples.ndim != 1 or self.samples.dtype != np.int16:
            kind = f"{self.samples.dtype} with {self.samples.ndim} axes"
            raise ValueError(f"A sound is one row of 16-bit whole numbers, not {kind}.")
        if self.rate < 1:
            raise ValueError(f"A sound has 1 or more samples a second, not {self.rate}.")

    @property
    def seconds(self) -> Fraction:
        """Return how long the sound lasts, exactly."""
        return Fraction(len(self.samples), self.rate)
