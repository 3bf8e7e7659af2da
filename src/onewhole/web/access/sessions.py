"""Sessions: opened by a one-time key or by a password; each has a CSRF token that its forms send back."""

from collections.abc import Callable
from dataclasses import dataclass, field
from hashlib import sha256
from hmac import compare_digest
from secrets import token_urlsafe
from threading import Lock

#: A session ends when unused for this many seconds: 12 hours; where one signs in, half an hour.
IDLE, SHARED_IDLE = 12 * 60 * 60, 30 * 60
#: However much it is used, a session ends after so many seconds: 30 days; where one signs in, 12 hours.
#: Source: NIST SP 800-63B, 4.1.3 and 4.2.3 (30 days at its first level, 12 hours at its second), from memory.
LIFE, SHARED_LIFE = 30 * 24 * 60 * 60, 12 * 60 * 60
#: The most open sessions; a new one then closes the one that was used longest ago.
MAX_SESSIONS = 32


@dataclass(slots=True)
class Session:
    """An open session."""

    csrf_token: str
    begun: float
    used: float


@dataclass(slots=True)
class Sessions:
    """The keys that are good once, and the open sessions by the hash of their cookie.

    ``ticks`` counts seconds and never goes back, whatever is done to the clock; a session ends ``idle``
    seconds after it was last used, and ``life`` seconds after it began.
    """

    ticks: Callable[[], float]
    idle: float = IDLE
    life: float = LIFE
    _keys: set[str] = field(default_factory=set)
    _open: dict[str, Session] = field(default_factory=dict)
    _turn: Lock = field(default_factory=Lock)

    def new_key(self) -> str:
        """Return a key that opens one session."""
        key = token_urlsafe(24)
        with self._turn:
            self._keys.add(_hashed(key))
        return key

    def is_good(self, key: str) -> bool:
        """Say whether a key still opens a session; it stays as it is."""
        with self._turn:
            return any(compare_digest(one, _hashed(key)) for one in self._keys)

    def opened(self, key: str) -> str | None:
        """Return the cookie of a new session, or None for a key that is not good, or not any more."""
        with self._turn:
            good = [one for one in self._keys if compare_digest(one, _hashed(key))]
            if not good:
                return None
            self._keys.difference_update(good)
        return self.begun()

    def begun(self) -> str:
        """Return the cookie of a new session. The caller must have authenticated the user."""
        cookie = token_urlsafe(24)
        with self._turn:
            now = self.ticks()
            while len(self._open) >= MAX_SESSIONS:
                del self._open[min(self._open, key=lambda name: self._open[name].used)]
            self._open[_hashed(cookie)] = Session(token_urlsafe(24), now, now)
        return cookie

    def csrf_token(self, cookie: str, *, is_use: bool = True) -> str | None:
        """Return the CSRF token of an open session, or None; where it ``is_use``, it counts as used now."""
        with self._turn:
            session = self._open.get(_hashed(cookie))
            if session is None:
                return None
            now = self.ticks()
            if now - session.used > self.idle or now - session.begun > self.life:
                del self._open[_hashed(cookie)]
                return None
            if is_use:
                session.used = now
            return session.csrf_token

    def ended(self, cookie: str) -> None:
        """End a session."""
        with self._turn:
            self._open.pop(_hashed(cookie), None)


def _hashed(secret: str) -> str:
    return sha256(secret.encode(errors="replace")).hexdigest()
