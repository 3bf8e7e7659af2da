"""Where a pattern was described, and whether that description was read or is remembered."""

from typing import Literal

from msgspec import Struct


class Source(Struct, frozen=True):
    """A source of a claim about children.

    ``provenance`` is "read" when a text that describes the error was read and "memory" when not; "read" is
    often second-hand, and ``note`` then says so.

    >>> COMMON.provenance
    'memory'
    """

    text: str
    page: str = ""
    provenance: Literal["read", "memory"] = "memory"
    note: str = ""

    def __post_init__(self) -> None:
        """Refuse a source without a text."""
        if not self.text.strip():
            msg = "a source names where the claim comes from"
            raise ValueError(msg)


#: Common knowledge of classrooms; no text that was read describes it.
COMMON = Source("common practice, no source")

#: How the sources with page numbers were reached.
CODED = (
    "page as coded in a public corpus of misconceptions drawn from research journals; the article itself "
    "was not opened"
)

#: Rules of one operation used for another.
WRONG_OPERATION = "wrong-operation family of Siegler & Pyke (2013), Developmental Psychology 49"

#: A teacher's public page about two regrouping errors seen in class.
CLASS_PAGE = Source("a classroom teacher's public page, 2016 (name withheld)", provenance="read")


def coded(text: str, page: str, more: str = "") -> Source:
    """Return a source that was reached through the coded corpus.

    >>> coded("Cai (1995), JRME Monograph", "58").page
    '58'
    """
    return Source(text, page, "read", f"{CODED}; {more}" if more else CODED)
