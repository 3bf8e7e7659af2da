"""A way of working: what a class calls it, and its key."""

from collections.abc import Sequence
from typing import TypeVar

from msgspec import Struct

from onewhole.errors import InputError


class NamedWay(Struct, frozen=True):
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


Named = TypeVar("Named", bound=NamedWay)


class UnknownStrategyError(InputError, KeyError):
    """There is no strategy of that name."""

    __str__ = InputError.__str__


def named_among(name: str, ways: Sequence[Named]) -> Named:
    """Return a way by its key or by its usual name, however spaced and capitalised.

    Raises UnknownStrategyError, with the keys that there are.

    >>> named_among("Regroup first", [NamedWay("regroup_first", "Regroup first, then take away")]).key
    'regroup_first'
    """
    plain = _plain(name)
    for way in ways:
        if plain in {way.key, _plain(way.name)}:
            return way
    msg = f"there is no strategy called “{name}”"
    raise UnknownStrategyError(msg, remedy=f"Choose one of: {', '.join(way.key for way in ways)}.")


def _plain(name: str) -> str:
    """Return a name in the form of a key: lower case, single underscores, no other characters."""
    return "_".join("".join(sign if sign.isalnum() else " " for sign in name.lower()).split())
