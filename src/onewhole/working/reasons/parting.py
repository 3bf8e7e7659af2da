"""A number parted, one part of it changed for what it is worth, and all put together again."""

from msgspec import Struct

from onewhole.number.quantity import Quantity


class Parting(Struct, frozen=True):
    """A number parted into ``parts``; the part at ``at`` is as much as ``changed``; ``joined`` is the end.

    ``pieces`` is what ``changed`` makes with the parts after it, where it makes a number of its own: 6/6 and
    2/6 are 8/6. All numbers of a row are worth the number on top: ValueError otherwise.
    """

    top: Quantity
    parts: tuple[Quantity, ...]
    at: int
    changed: Quantity
    pieces: Quantity | None
    joined: Quantity

    def __post_init__(self) -> None:
        """Refuse parts that are not worth the whole, and a change that changes the amount."""
        amounts = {self.top.value, sum(part.value for part in self.parts), self.joined.value}
        if len(amounts) != 1 or self.parts[self.at].value != self.changed.value:
            msg = "a number and its parts are worth the same"
            raise ValueError(msg)
