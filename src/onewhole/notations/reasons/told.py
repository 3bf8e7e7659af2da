"""A reason's numbers, with the names of their units in the class's own words."""

from dataclasses import dataclass

from onewhole.notations.text import text
from onewhole.notations.words import ClassWords, unit_name
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.working.reason import Reason


@dataclass(frozen=True, slots=True)
class Told:
    """A reason and the words it is told in.

    ``unit`` names are plural unless counted; the smaller unit of a reason is its ``small``. Ones are called
    ones as a smaller unit and by the class's word for a whole as a larger one.
    """

    reason: Reason
    words: ClassWords

    def count(self, name: str) -> int:
        """Return a count; TypeError when the detail is none."""
        found = self.reason[name]
        if isinstance(found, int):
            return found
        raise TypeError(_wrong(self.reason, name, "count"))

    def quantity(self, name: str) -> Quantity:
        """Return a written number; TypeError when the detail is none."""
        found = self.reason[name]
        if isinstance(found, Quantity):
            return found
        raise TypeError(_wrong(self.reason, name, "written number"))

    def unit(self, name: str) -> Unit:
        """Return a unit; TypeError when the detail is none."""
        found = self.reason[name]
        if isinstance(found, Unit):
            return found
        raise TypeError(_wrong(self.reason, name, "unit"))

    def units(self) -> tuple[Unit, ...]:
        """Return every unit of the reason, the largest first."""
        return tuple(unit for _, unit in self.reason.details if isinstance(unit, Unit))

    def number(self, name: str) -> str:
        """Return a written number in plain text: 3 5/6."""
        return text(self.quantity(name))

    def small(self, count: int = 2) -> str:
        """Return the name of the smaller unit: sixths, ones, inches."""
        return unit_name(self.unit("small"), count)

    def large(self, count: int = 2, name: str = "unit") -> str:
        """Return the name of the larger unit: wholes (or the class's word), tens, feet."""
        return unit_name(self.unit(name), count, self.words)

    def some_small(self, name: str) -> str:
        """Count the smaller unit: 5 sixths, 1 sixth."""
        return f"{self.count(name)} {self.small(self.count(name))}"

    def some_large(self, name: str) -> str:
        """Count the larger unit: 3 wholes, 1 ten."""
        return f"{self.count(name)} {self.large(self.count(name))}"


def amount(quantity: Quantity, words: ClassWords) -> str:
    """Name an amount: 3 wholes and 3 sixths, 2 feet and 7 inches; whole numbers and decimals in plain text.

    >>> from onewhole.number.ladder import mixed
    >>> amount(Quantity(mixed(6), (3, 1)), ClassWords("strip", "strips"))
    '3 strips and 1 sixth'
    """
    if quantity.ladder.style in {Style.PLACES, Style.DECIMAL}:
        return text(quantity)
    pairs = zip(quantity.counts, quantity.ladder.units, strict=True)
    named = [f"{count} {unit_name(unit, count, words)}" for count, unit in pairs if count is not None]
    return " and ".join(filter(None, (", ".join(named[:-1]), named[-1])))


def single(quantity: Quantity) -> bool:
    """Say whether an amount takes "is" and not "are": one thing, or a bare number.

    >>> from onewhole.number.ladder import mixed
    >>> single(Quantity(mixed(6), (None, 1))), single(Quantity(mixed(6), (1, 1)))
    (True, False)
    """
    if quantity.ladder.style in {Style.PLACES, Style.DECIMAL}:
        return True
    return [count for count in quantity.counts if count is not None] == [1]


def _wrong(reason: Reason, name: str, wanted: str) -> str:
    return f"{name} of the reason {reason.key} is not a {wanted}"
