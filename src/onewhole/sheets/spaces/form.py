"""A form of problems: a template as typed, and what may stand at each of its places."""

import re
from collections.abc import Iterator, Sequence
from hashlib import sha256
from math import gcd, prod

from msgspec import Struct

#: Where one of a place stands in a template.
PLACE = re.compile(r"\{(\d)\}")
#: The step between two problems of a walk, as a share of all: the golden section spreads them evenly.
SHARE = (618, 1000)


class ProblemForm(Struct, frozen=True):
    """Problems that are typed alike: ``{0}`` in the template stands for one of the first place, and so on.

    ``places`` name what may stand there. The problems are numbered in the order of the places.

    >>> ProblemForm("{0} - {1}", (range(50, 60), (17, 28))).problem(3)
    '51 - 28'
    """

    template: str
    places: tuple[Sequence[object], ...]

    @property
    def size(self) -> int:
        """Return how many problems there are."""
        return prod(map(len, self.places))

    def problem(self, at: int) -> str:
        """Return the problem of a number, as typed."""
        found: list[object] = []
        for place in reversed(self.places):
            at, which = divmod(at, len(place))
            found.append(place[which])
        found.reverse()
        return PLACE.sub(lambda place: str(found[int(place[1])]), self.template)

    def walk(self, seed: int, most: int) -> Iterator[str]:
        """Yield problems, each once and so many at most, in wide steps from a place that the seed gives.

        >>> sorted(ProblemForm("{0} - {1}", (range(50, 52), (17, 28))).walk(1, most=9))
        ['50 - 17', '50 - 28', '51 - 17', '51 - 28']
        """
        size = self.size
        if not size:
            return
        own = int.from_bytes(sha256(f"{seed} {size} {self.template}".encode()).digest()[:8])
        near = size * SHARE[0] // SHARE[1]
        step = next(step for step in range(near, 2 * size + 2) if gcd(step, size) == 1)
        for turn in range(min(size, most)):
            yield self.problem((own + turn * step) % size)
