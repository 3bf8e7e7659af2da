"""One cell as a pupil wrote it, and what it is read as."""

import re
from dataclasses import dataclass

from onewhole.errors import InputError
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_answer
from onewhole.statements.statement import Relation

#: Dashes that stand for "nothing written" when they are all there is in a cell.
_DASHES = "-\N{MINUS SIGN}\N{EN DASH}\N{EM DASH}\N{HYPHEN}\N{NON-BREAKING HYPHEN}"
_MONTH = r"(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*"
_DATE = re.compile(
    rf"\d{{1,2}}-{_MONTH}(?:-\d+)?|{_MONTH}-\d{{1,4}}|\d{{1,4}}([-/.])\d{{1,2}}\1\d{{1,4}}", re.IGNORECASE
)


@dataclass(frozen=True, slots=True)
class Blank:
    """Nothing was written: an empty cell, spaces, or a dash alone."""


@dataclass(frozen=True, slots=True)
class Unreadable:
    """Something was written that is no answer the program can read; ``why`` says so in sentences.

    It is legal, is kept, and is never guessed at: a teacher looks at it.
    """

    why: str


Read = Quantity | Impossible | Relation | Blank | Unreadable


@dataclass(frozen=True, slots=True)
class Written:
    """What stood in a cell, kept exactly, and what it is read as.

    >>> read_written(" 3 3/6 ").text, read_written("-").read
    (' 3 3/6 ', Blank())
    """

    text: str
    read: Read

    @property
    def blank(self) -> bool:
        """Say whether nothing was written."""
        return isinstance(self.read, Blank)


def read_written(text: str) -> Written:
    """Read one cell; nothing is refused, and the text is kept as it is.

    >>> read_written("three").read.why
    'A number is missing: here there is “three”. Look at the paper; an answer is one number such as 3 3/6.'
    """
    if not text.strip().strip(_DASHES).strip():
        return Written(text, Blank())
    if _DATE.fullmatch(text.strip()):
        why = (
            "This looks like a date, and a spreadsheet may have made it from a fraction such as 3/6. "
            "Set the column to text, then type the answer again."
        )
        return Written(text, Unreadable(why))
    try:
        return Written(text, read_answer(text))
    except InputError as refused:
        return Written(text, Unreadable(_sentences(refused)))


def _sentences(refused: InputError) -> str:
    what = refused.what[:1].upper() + refused.what[1:]
    return f"{what}. Look at the paper; an answer is one number such as 3 3/6."
