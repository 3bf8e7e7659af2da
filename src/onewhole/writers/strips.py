"""A difference drawn as strips: one opened into its pieces, what is taken crossed out."""

from dataclasses import dataclass

from onewhole.notations.words import ClassWords, count_words, piece_name
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.statement import Question, asked_quantities
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.working import Working
from onewhole.writers.printed import Json

#: More equal parts, or more strips, cannot be drawn to be counted.
MOST_PARTS = 12
MOST_STRIPS = 9


@dataclass(frozen=True, slots=True)
class Strips:
    """A drawing to be counted: closed strips, opened ones, loose pieces, and what is crossed out.

    Raises ValueError when more is crossed out than there is.

    >>> Strips(parts=3, closed=6, opened=1, loose=1, gone=2, pieces_gone=2).left
    (4, 2)
    """

    parts: int
    closed: int
    opened: int
    loose: int
    gone: int
    pieces_gone: int

    def __post_init__(self) -> None:
        """Refuse to cross out what is not there."""
        if min(self.left) < 0:
            msg = "more is crossed out than there is"
            raise ValueError(msg)

    @property
    def left(self) -> tuple[int, int]:
        """Return the closed strips and the pieces that are not crossed out."""
        return self.closed - self.gone, self.opened * self.parts + self.loose - self.pieces_gone

    def told(self, words: ClassWords) -> str:
        """Tell the drawing in words that hold every number of it.

        >>> Strips(3, 6, 1, 1, 2, 2).told(ClassWords("strip", "strips")).split(". ")[1]
        'Opened: one strip, into three thirds'
        """
        said = [f"Drawn: {self._some(self.closed + self.opened, self.loose, words)}."]
        if self.opened:
            pieces = self._some(0, self.opened * self.parts, words)
            said.append(f"Opened: {self._some(self.opened, 0, words)}, into {pieces}.")
        said.append(f"Crossed out: {self._some(self.gone, self.pieces_gone, words)}.")
        said.append(f"Left: {self._some(*self.left, words)}.")
        return " ".join(said)

    def _some(self, wholes: int, pieces: int, words: ClassWords) -> str:
        named = []
        if wholes:
            named.append(f"{count_words(wholes)} {words.whole if wholes == 1 else words.wholes}")
        if pieces:
            named.append(f"{count_words(pieces)} {piece_name(self.parts, pieces)}")
        return " and ".join(named) or "nothing"

    def data(self, words: ClassWords) -> Json:
        """Return the drawing as the page takes it."""
        opened = f"one {words.whole}, opened into {self.parts} {piece_name(self.parts)}"
        taken = "crossed out: taken away"
        return {
            "parts": self.parts,
            "wholes": self.closed,
            "opened": self.opened,
            "extra": self.loose,
            "take_wholes": self.gone,
            "take_parts": self.pieces_gone,
            "captions": {"opened": opened, "taken": taken} if self.opened else {"taken": taken},
            "alt": self.told(words),
        }


def strips_of(shown: Working) -> Strips | None:
    """Return the drawing of a difference worked by opening one whole first, or None where none can be drawn.

    Both numbers are mixed with the same pieces, at most 12 to a whole, and there are at most 9 strips.
    """
    signed = asked_quantities(shown.statement) if isinstance(shown.statement, Question) else None
    if signed is None or len(signed) != 2 or not signed[1][1] or shown.strategy != REGROUP_FIRST.key:
        return None
    first, second = signed[0][0], signed[1][0]
    parts = _parts(first, second)
    if parts is None or parts > MOST_PARTS:
        return None
    (wholes, loose), (gone, pieces) = _counts(first), _counts(second)
    opened = int(loose < pieces)
    if wholes > MOST_STRIPS or loose >= parts or wholes - opened < gone or loose + opened * parts < pieces:
        return None
    return Strips(parts, wholes - opened, opened, loose, gone, pieces)


def _parts(first: Quantity, second: Quantity) -> int | None:
    """Return how many pieces make a whole in both numbers; a whole number goes with any pieces."""
    if {first.ladder.style, second.ladder.style} - {Style.MIXED, Style.PLACES}:
        return None
    found = {one.ladder.denominator for one in (first, second) if one.ladder.style is Style.MIXED}
    found.discard(1)
    return found.pop() if len(found) == 1 else None


def _counts(number: Quantity) -> tuple[int, int]:
    if number.ladder.style is Style.MIXED:
        wholes, pieces = number.amounts
        return wholes, pieces
    return int(number.value), 0
