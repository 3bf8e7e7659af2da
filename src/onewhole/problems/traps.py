"""Numbers that hide what a pupil thinks: answers that several patterns share, and answers right by luck."""

from collections import defaultdict
from collections.abc import Iterable
from functools import lru_cache
from typing import assert_never

from msgspec import Struct

from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import by_id, met, patterns
from onewhole.misconceptions.pattern import Family, Luck
from onewhole.misconceptions.slip import Slip
from onewhole.misconceptions.telling import ToldAs
from onewhole.statements.statement import Statement
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.units_apart import UNITS_APART

#: Of so many problems the core traps are kept: choosing practice looks at each two or three times.
KEPT = 4096


class Traps(Struct, frozen=True):
    """What the numbers of one problem show and hide; patterns by their ids, in the order of the catalogue.

    ``shown`` are the patterns that can show here, ``alike`` groups of two or more of them that write one and
    the same answer, and ``lucky`` patterns that apply and still give the right answer.
    """

    shown: tuple[str, ...]
    alike: tuple[tuple[str, ...], ...]
    lucky: tuple[str, ...]

    @property
    def core(self) -> "Traps":
        """Return the traps of the core patterns only.

        They are what practice on regrouping is for; some of the others share an answer on every problem.
        """
        groups = (tuple(key for key in group if is_core(key)) for group in self.alike)
        return Traps(
            tuple(key for key in self.shown if is_core(key)),
            tuple(group for group in groups if len(group) > 1),
            tuple(key for key in self.lucky if is_core(key)),
        )

    def within(self, other: "Traps") -> bool:
        """Say whether this problem shows all that the other shows, and hides nothing that the other does not.

        >>> Traps(("A01", "A02"), (), ()).within(Traps(("A01", "A02"), (("A01", "A02"),), ()))
        True
        """
        return (
            set(self.shown) >= set(other.shown)
            and set(self.lucky) <= set(other.lucky)
            and all(any(set(group) <= set(wider) for wider in other.alike) for group in self.alike)
        )


def is_core(key: str) -> bool:
    """Say whether a pattern is a core pattern: about regrouping or the pieces, one unit after another."""
    pattern = by_id(key)
    return pattern.family in {Family.REGROUPING, Family.NUMERATOR} and pattern.strategy in {
        COLUMNS.key,
        REGROUP_FIRST.key,
        UNITS_APART.key,
    }


_CORE = tuple(pattern for pattern in patterns() if is_core(pattern.id))


@lru_cache(maxsize=KEPT)
def core_traps(statement: Statement) -> Traps:
    """Return ``traps(statement).core`` without looking at any other pattern, which is much quicker.

    Of a problem that was looked at not long ago it is known.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("5 1/8 - 2 5/8")
    >>> core_traps(asked) == traps(asked).core
    True
    """
    return _traps((pattern.id, one) for pattern in _CORE if (one := pattern.meets(statement)))


def traps(statement: Statement, telling: ToldAs | None = None) -> Traps:
    """Return what the numbers of a statement show and hide.

    Two patterns are alike here when the answers they write are written the same (4 8/5 is not 5 3/5).
    ``telling`` is how a story tells it.

    >>> from onewhole.statements.reading import read_statement
    >>> found = traps(read_statement("5 1/8 - 2 5/8"))
    >>> any({"A01", "A02"} <= set(group) for group in found.alike)
    True
    """
    return _traps(met(statement, telling))


def _traps(met: Iterable[tuple[str, Slip | Luck]]) -> Traps:
    """Group what is met by what it writes; patterns that are right by luck stand by themselves."""
    shown: list[str] = []
    lucky: list[str] = []
    wrote: dict[Outcome, list[str]] = defaultdict(list)
    for key, one in met:
        match one:
            case Slip():
                shown.append(key)
                wrote[one.wrote].append(key)
            case Luck():
                lucky.append(key)
            case _:
                assert_never(one)
    alike = tuple(tuple(group) for group in wrote.values() if len(group) > 1)
    return Traps(tuple(shown), alike, tuple(lucky))
