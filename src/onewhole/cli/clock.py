"""The time, for those who may ask for it."""

from datetime import UTC, datetime


def now() -> datetime:
    """Return the time, to the second, in UTC.

    >>> now().tzinfo is UTC
    True
    """
    return datetime.now(UTC).replace(microsecond=0)
