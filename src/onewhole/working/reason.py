"""Why a line follows from the one before: a key and its numbers, never a sentence."""

from dataclasses import dataclass
from fractions import Fraction

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit

#: What a sentence may need: a count, an amount, a written number or a unit.
Detail = int | Fraction | Quantity | Unit


@dataclass(frozen=True, slots=True)
class Reason:
    """A key of the reasons table and the numbers its sentence needs, by name.

    Sentences, plurals and the class's own words belong to :mod:`onewhole.notations.sentences`.

    >>> because("open_one", missing=3)["missing"]
    3
    """

    key: str
    details: tuple[tuple[str, Detail], ...] = ()

    def __getitem__(self, name: str) -> Detail:
        """Return a detail by its name; KeyError when the reason has none of that name."""
        for known, detail in self.details:
            if known == name:
                return detail
        raise KeyError(name)


def because(key: str, **details: Detail) -> Reason:
    """Make a reason from a key and named details."""
    return Reason(key, tuple(details.items()))
