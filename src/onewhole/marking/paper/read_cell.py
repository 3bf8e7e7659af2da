"""One cell of a paper with its verdict, and how the verdict follows from doubt and what is allowed."""

from msgspec import Struct
from msgspec.structs import replace

from onewhole.marking.paper.ink_reading import SURE
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy

#: So many readings are offered on keys.
MOST_CHOICES = 3
#: Below this doubt a cell is empty, at all settings but the one that shows every cell; our own.
EMPTY_BELOW = 20_000


class ReadCell(Struct, frozen=True):
    """A cell as it was read: ``text`` is what its picture says likeliest by itself, empty for nothing.

    ``doubt`` is how likely the text is wrong, in parts per million, ``alone`` the same by the picture alone;
    ``choices`` are the likeliest readings, best first. A cell that is read or empty has no reason to be
    shown, and one that is shown is neither.

    >>> cell = ReadCell(PaperVerdict.READ, "3 3/6", ("3 3/6", "3 5/6"), 1_200, 1_200, PaperWhy.ALONE)
    >>> by_limit(cell, 1_000).verdict
    <PaperVerdict.UNSURE: 'unsure'>
    """

    verdict: PaperVerdict
    text: str
    choices: tuple[str, ...]
    doubt: int
    alone: int
    why: PaperWhy

    def __post_init__(self) -> None:
        """Refuse a verdict that its reason does not go with, and doubts that cannot be."""
        because = {
            PaperVerdict.READ: self.why in {PaperWhy.ALONE, PaperWhy.CONFIRMED} and bool(self.text),
            PaperVerdict.EMPTY: self.why is PaperWhy.NOTHING and not self.text,
            PaperVerdict.UNSURE: self.why.always_shown or self.why is PaperWhy.DOUBTFUL,
        }
        if not because[self.verdict]:
            msg = f"a cell cannot be {self.verdict.value} because of {self.why.value}"
            raise ValueError(msg)
        if not 0 <= self.doubt <= self.alone <= SURE or len(self.choices) > MOST_CHOICES:
            msg = f"a cell cannot have the doubts {self.doubt} and {self.alone}, or these choices"
            raise ValueError(msg)


def by_limit(cell: ReadCell, limit: int) -> ReadCell:
    """Return a cell judged anew: it stands without being looked at where its doubt is below the limit.

    What is always shown stays so, whatever the limit; with the limit 0 every cell is shown. That nothing is
    written is plainer to see than what is, and stands below a doubt of its own.
    """
    if cell.why.always_shown:
        return cell
    if cell.doubt >= (limit if cell.text or not limit else max(limit, EMPTY_BELOW)):
        return replace(cell, verdict=PaperVerdict.UNSURE, why=PaperWhy.DOUBTFUL)
    if not cell.text:
        return replace(cell, verdict=PaperVerdict.EMPTY, why=PaperWhy.NOTHING)
    why = PaperWhy.ALONE if cell.alone < limit else PaperWhy.CONFIRMED
    return replace(cell, verdict=PaperVerdict.READ, why=why)


def to_be_shown(cell: ReadCell, why: PaperWhy) -> ReadCell:
    """Return a cell that is to be looked at for a reason; one that is already keeps its own."""
    if cell.verdict is PaperVerdict.UNSURE and cell.why.always_shown:
        return cell
    return replace(cell, verdict=PaperVerdict.UNSURE, why=why)
