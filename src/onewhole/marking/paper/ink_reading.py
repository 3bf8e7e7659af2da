"""What the picture of one answer cell says by itself, before anyone looks at what was expected there."""

from msgspec import Struct

#: What is certain, in parts per million.
SURE = 1_000_000
#: So many readings are told at most.
MOST_READINGS = 8


class InkReading(Struct, frozen=True):
    """The likeliest readings of one cell, best first, and how likely it holds none.

    A reading is the text that a child would type (``7 2/6``, ``-``, ``5.2``, ``13/4``, ``2 ft 7 in``) and how
    likely it is, in parts per million; all readings, ``empty`` and ``not_an_answer`` (scribbles, words, two
    answers, only a crossed-out one) together are at most one million. ``struck`` is how likely a digit
    inside the answer was crossed out or written over; an answer that was crossed out whole and written anew
    beside is not struck. ``decimal`` and ``unit`` say that the best
    reading has a decimal point, or a unit or another word.

    >>> cell = InkReading((("7 2/6", 930_000), ("7 2/8", 20_000)), empty=1_000, not_an_answer=4_000)
    >>> cell.text, cell.likelihood
    ('7 2/6', 930000)
    >>> InkReading((), empty=1_000_000, not_an_answer=0).text
    ''
    """

    readings: tuple[tuple[str, int], ...]
    empty: int
    not_an_answer: int
    struck: int = 0
    decimal: bool = False
    unit: bool = False

    def __post_init__(self) -> None:
        texts = [text for text, _ in self.readings]
        likely = [parts for _, parts in self.readings]
        assert len(texts) == len(set(texts)) <= MOST_READINGS, texts
        assert all(texts), texts
        assert likely == sorted(likely, reverse=True), likely
        assert min(*likely, self.empty, self.not_an_answer, self.struck, SURE) >= 0, self
        assert sum(likely) + self.empty + self.not_an_answer <= SURE >= self.struck, self

    @property
    def text(self) -> str:
        """Return the best reading, or nothing where there is none."""
        return self.readings[0][0] if self.readings else ""

    @property
    def likelihood(self) -> int:
        """Return how likely the best reading is, in parts per million."""
        return self.readings[0][1] if self.readings else 0
