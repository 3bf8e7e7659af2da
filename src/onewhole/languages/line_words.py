"""The words that stand on a line itself: what is asked of a number, and what places are called."""

from collections.abc import Callable, Mapping

from msgspec import Struct

from onewhole.number.name_wanted import NumberForm
from onewhole.number.unit import Unit
from onewhole.statements.wording import Wording


class LineWords(Struct, frozen=True):
    """What a notation writes beside the numbers of a line.

    ``wording`` gives the words of what is asked in parts between which a line may be broken, ``forms`` are
    the words behind a number whose form is wanted, ``place`` is what so many of a place are called (4 tens),
    and ``until`` stands between two times of day.
    """

    wording: Callable[[Wording], tuple[str, ...]]
    forms: Mapping[NumberForm, str]
    place: Callable[[Unit, int], str]
    until: str

    def wordings(self, thing: Wording) -> str:
        """Return the words of what is asked, in one run."""
        return " ".join(self.wording(thing))
