"""The teacher's one setting: how sure a reading must be before it stands without being looked at."""

from enum import Enum

from onewhole.marking.paper.ink_reading import SURE


class Sureness(Enum):
    """How many of the answers that are read may be wrong; the value is kept, and a form sends it.

    The doubts allowed were set on cells that a model read and whose answers were known; on another class's
    ink they may promise more than they hold, which the spot check finds.
    """

    FEW = "few"
    USUAL = "usual"
    MORE = "more"
    MOST = "most"
    EVERY = "every"

    @property
    def one_in(self) -> int:
        """Return in how many answers that are read one may be wrong; 0 where none is read unseen.

        >>> [one.one_in for one in Sureness]
        [100, 200, 500, 1000, 0]
        """
        return _ONE_IN[self]

    @property
    def promise(self) -> int:
        """Return how many of the answers that are read may be wrong, in parts per million."""
        return SURE // self.one_in if self.one_in else 0

    @property
    def limit(self) -> int:
        """Return the doubt, in parts per million, below which a reading stands."""
        return _LIMITS[self]


_ONE_IN = {Sureness.FEW: 100, Sureness.USUAL: 200, Sureness.MORE: 500, Sureness.MOST: 1000, Sureness.EVERY: 0}
#: Set on cells that the model never saw; on others, of other hands, no more are wrong than promised at any of
#: them (docs/reading-model.md).
_LIMITS = {
    Sureness.FEW: 44_000,
    Sureness.USUAL: 25_000,
    Sureness.MORE: 3_000,
    Sureness.MOST: 700,
    Sureness.EVERY: 0,
}
