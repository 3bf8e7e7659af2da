"""A way of working: what a class calls it, and its key."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class NamedWay:
    """A way to work a kind of problem, by its key and its usual name.

    >>> NamedWay("regroup_first", "Regroup first").typed
    'regroup first'
    """

    key: str
    name: str

    @property
    def typed(self) -> str:
        """Return the key as a person types it: regroup first."""
        return self.key.replace("_", " ")
