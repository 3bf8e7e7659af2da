"""Who wrote an answer that came from a picture: the program alone, or a person who looked at the picture."""

import re

from msgspec import Struct

_BY = re.compile(r"paper ([0-9]{1,6})(, checked)?")


class PaperReading(Struct, frozen=True):
    """One reading of a night's papers, by its number within the night; ``checked`` once a person looked.

    >>> PaperReading(2).by, PaperReading(2, checked=True).by
    ('paper 2', 'paper 2, checked')
    """

    number: int
    checked: bool = False

    @property
    def by(self) -> str:
        """Return who wrote its answers, as it is kept beside each of them."""
        return f"paper {self.number}{', checked' if self.checked else ''}"


def reading_of(by: str) -> PaperReading | None:
    """Return the reading that an answer came from; None for one that was typed or pasted.

    >>> reading_of("paper 2, checked"), reading_of("paste 2") is None
    (PaperReading(number=2, checked=True), True)
    """
    found = _BY.fullmatch(by)
    return PaperReading(int(found[1]), checked=bool(found[2])) if found else None
