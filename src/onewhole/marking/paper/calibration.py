"""The threshold learnt from what a teacher confirmed: counts by doubt, and the doubt that they allow."""

from bisect import bisect_left
from collections.abc import Iterable

from msgspec import Struct

from onewhole.marking.paper.ink_reading import SURE
from onewhole.marking.paper.sureness import Sureness

#: The doubts, in parts per million, at which one band ends and the next begins.
EDGES = (300, 1_000, 2_000, 6_000, 25_000, 60_000, 150_000, 400_000, SURE + 1)
#: The fewest cells that a teacher looked at before anything is learnt, and for how many cells what the
#: picture itself says stands in each band; our own.
FEWEST, CLAIMED = 200, 40
#: No band is read in which so many times as many are wrong as all that is read may be; our own.
AT_MOST_TIMES = 12


class DoubtBand(Struct, frozen=True):
    """Cells of one band of doubt: how many came, how many were looked at, how many of these were wrong."""

    came: int = 0
    looked_at: int = 0
    wrong: int = 0

    def __post_init__(self) -> None:
        """Refuse counts that cannot be."""
        if not 0 <= self.wrong <= self.looked_at <= self.came:
            msg = f"{self.wrong} of {self.looked_at} of {self.came} cells cannot be wrong"
            raise ValueError(msg)


class Looked(Struct, frozen=True):
    """One cell that the teacher looked at: its doubt, and whether the reading was wrong."""

    doubt: int
    wrong: bool


class Calibration(Struct, frozen=True):
    """What is known of a class's ink: counts by band of doubt, and nothing else of any child.

    A picture's own doubt is what one believes before; what the teacher found moves it, band by band.

    >>> nothing = Calibration()
    >>> nothing.limit(Sureness.USUAL) == Sureness.USUAL.limit
    True
    >>> good = nothing.with_cells([1_500] * 4000, [Looked(1_500, wrong=False)] * 400)
    >>> good.limit(Sureness.MOST) > Sureness.MOST.limit - 1
    True
    """

    bands: tuple[DoubtBand, ...] = (DoubtBand(),) * len(EDGES)

    def __post_init__(self) -> None:
        """Refuse another number of bands."""
        if len(self.bands) != len(EDGES):
            msg = f"there are {len(EDGES)} bands of doubt"
            raise ValueError(msg)

    def with_cells(self, came: Iterable[int], looked: Iterable[Looked]) -> "Calibration":
        """Return it with cells that came, by their doubt, and with those that were looked at since."""
        counts = [[band.came, band.looked_at, band.wrong] for band in self.bands]
        for doubt in came:
            counts[_band(doubt)][0] += 1
        for one in looked:
            at = _band(one.doubt)
            counts[at][1] += 1
            counts[at][2] += one.wrong
            counts[at][0] = max(counts[at][:2])
        return Calibration(tuple(DoubtBand(*count) for count in counts))

    def limit(self, sureness: Sureness) -> int:
        """Return the doubt that a setting allows in this class, in parts per million.

        It is the usual one until enough cells were looked at. Then it is the end of the last band up to which
        no more are wrong than the setting promises, where each band counts as often as its cells came, and in
        none of them twelve times as many.
        """
        if sureness.promise == 0 or sum(band.looked_at for band in self.bands) < FEWEST:
            return sureness.limit
        came = wrong = limit = 0
        for band, start, end in zip(self.bands, (0, *EDGES), EDGES, strict=False):
            came += band.came
            claimed = CLAIMED * (start + end) // 2
            in_band = (band.wrong * SURE + claimed) // (band.looked_at + CLAIMED)
            wrong += band.came * in_band
            if wrong > sureness.promise * came or in_band > AT_MOST_TIMES * sureness.promise:
                break
            limit = end
        return limit


def _band(doubt: int) -> int:
    return bisect_left(EDGES, doubt + 1)
