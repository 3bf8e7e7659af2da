"""Rate limit for wrong passwords: a few free tries, then a wait that doubles with each."""

from collections.abc import Callable
from dataclasses import dataclass, field
from ipaddress import IPv6Address, ip_address
from threading import Lock

#: Wrong tries without a wait: from one address, and from all addresses together.
FREE, FREE_ALL = 5, 30
#: The longest wait in seconds: for one address, and for all together, so that nobody is kept out for long.
LONGEST, LONGEST_ALL = 15 * 60, 60
#: Wrong tries are forgotten when none came for so many seconds.
FORGOTTEN = 60 * 60
#: The most addresses remembered; the one that tried longest ago is forgotten first.
MAX_ADDRESSES = 1000
_ALL = "all"


@dataclass(slots=True)
class _Failures:
    count: int
    last: float


@dataclass(slots=True)
class RateLimit:
    """The wrong tries by address. ``ticks`` counts seconds and never goes back."""

    ticks: Callable[[], float]
    _wrong: dict[str, _Failures] = field(default_factory=dict)
    _turn: Lock = field(default_factory=Lock)

    def wait(self, address: str) -> float:
        """Return 0 and count a try, or return how many seconds to wait before one.

        A try counts as wrong until :meth:`right` says otherwise, so that many at once are not many tries.

        >>> tries = RateLimit(lambda: 0)
        >>> [tries.wait("192.0.2.7") for _ in range(7)]
        [0, 0, 0, 0, 0, 1, 1]
        """
        one = _network(address)
        with self._turn:
            now = self.ticks()
            waits = max(self._left(one, now, FREE, LONGEST), self._left(_ALL, now, FREE_ALL, LONGEST_ALL))
            if waits > 0:
                return waits
            for name in (one, _ALL):
                wrong = self._wrong.setdefault(name, _Failures(0, now))
                wrong.count, wrong.last = wrong.count + 1, now
            while len(self._wrong) > MAX_ADDRESSES:
                oldest = min(self._wrong, key=lambda name: (name == _ALL, self._wrong[name].last))
                del self._wrong[oldest]
            return 0

    def right(self, address: str) -> None:
        """Forget the wrong tries of an address, and take this one off those of all."""
        with self._turn:
            self._wrong.pop(_network(address), None)
            if _ALL in self._wrong:
                self._wrong[_ALL].count -= 1

    def _left(self, name: str, now: float, free: int, longest: int) -> float:
        wrong = self._wrong.get(name)
        if wrong is None:
            return 0
        if now - wrong.last > FORGOTTEN:
            del self._wrong[name]
            return 0
        if wrong.count < free:
            return 0
        pause = min(1 << min(wrong.count - free, 20), longest)
        return max(0.0, wrong.last + pause - now)


def _network(address: str) -> str:
    """Return an address, or for the sixth version its network: a machine has very many of those.

    >>> _network("2001:db8::1:2:3:4"), _network("192.0.2.7"), _network("somebody")
    ('2001:db8::', '192.0.2.7', 'somebody')
    """
    try:
        read = ip_address(address.partition("%")[0])
    except ValueError:
        return address
    return str(IPv6Address(int(read) >> 64 << 64)) if isinstance(read, IPv6Address) else address
