"""What a sentence is made of: a closed family of nodes.

Read a node with ``match`` and end with ``assert_never``. Words of a language are ``str`` nodes; every number,
unit and thing is a node of its own, so that nobody has to find it among the words again.
"""

import re

from msgspec import Struct

from onewhole.number.unit import ONE, Unit
from onewhole.statements.writable import Writable

_SIGNS = set("+=<>/\N{MINUS SIGN}\N{MULTIPLICATION SIGN}\N{DIVISION SIGN}")
#: A minus or a times sign, and not a hyphen or a letter inside a word.
_ALONE = re.compile(r"(?<!\w)[-x](?!\w)")


class Said(Struct, frozen=True):
    """Something as it is written on a line: 7 2/6, 13 - 6, 8/8 = 1."""

    thing: Writable


class Thing(Struct, frozen=True):
    """A thing by its own word, one and many; ``worth`` is the unit that it stands for, if it stands for one.

    ``feminine`` is the word's gender, in a language that has one.

    >>> Thing("strip", "strips").worth == ONE
    True
    """

    one: str
    many: str
    worth: Unit | None = ONE
    feminine: bool = False


class Counted(Struct, frozen=True):
    """So many of a unit or a thing: 6 sixths, 3 strips; ``spelt`` writes the count as a word: one strip."""

    count: int
    unit: Unit | Thing
    spelt: bool = False


class Naming(Struct, frozen=True):
    """A unit or a thing without a count: sixths, or sixth where it is not ``many``."""

    unit: Unit | Thing
    many: bool = True


class Label(Struct, frozen=True):
    """A problem's number on its page: 3, 3b; or the number of an equals sign in its working."""

    problem: str


class Spot(Struct, frozen=True):
    """Where a number stands in a typed text: from ``start`` up to ``end``, and what it is."""

    start: int
    end: int
    thing: Writable


class Typed(Struct, frozen=True):
    """A text that somebody typed, kept to the letter; ``spots`` are its numbers, found when it was read."""

    text: str
    spots: tuple[Spot, ...] = ()


class Seam(Struct, frozen=True):
    """Where a long sentence may end: ``joined`` stands inside one, ``parted`` begins the next.

    >>> Seam(", so", "so").parted
    'so'
    """

    joined: str
    parted: str = ""

    def __post_init__(self) -> None:
        """Refuse words with a number in them."""
        check_words(self.joined)
        check_words(self.parted or "so")


Node = str | Said | Counted | Naming | Label | Typed | Seam


def check_words(words: str) -> None:
    """Refuse words that hold a digit or an operator, or that are not words with single blanks between them.

    Raises ValueError.

    >>> check_words("take 5")
    Traceback (most recent call last):
    ...
    ValueError: “take 5” holds a number or an operator: give it a node of its own
    """
    if not words or words.split(" ") != words.split():
        msg = f"“{words}” is not words with single blanks between them"
        raise ValueError(msg)
    if any(sign.isnumeric() for sign in words) or _SIGNS & set(words) or _ALONE.search(words):
        msg = f"“{words}” holds a number or an operator: give it a node of its own"
        raise ValueError(msg)
