"""Reading what lists numbers: factors of 36, multiples of 7 to 50."""

import re

from onewhole.errors import OnewholeError
from onewhole.statements.listing import Listing, ListSort
from onewhole.statements.numerals import ReadNumber
from onewhole.statements.tokens import ReadingError

_ASKS = re.compile(
    r"\s*(?:(?:find|list|write)\s+)?(?:(?:all|the)\s+)*(?P<sort>factors|multiples)\s+of\s+(?P<number>[^\s]+)"
    r"(?:\s+(?:up\s+)?to\s+(?P<most>[^\s]+?))?\s*[.=]?\s*\Z",
    re.IGNORECASE,
)
_BEGINS = re.compile(
    r"\s*(?:(?:find|list|write)\s+)?(?:(?:all|the)\s+)*(?:factors|multiples)\b", re.IGNORECASE
)
_REMEDY = "Write for example: factors of 36, or multiples of 7 to 50."


def listing(text: str, line: int, column: int, read: ReadNumber) -> Listing | None:
    """Read what lists factors or multiples; None where the line does not ask for them.

    Raises ReadingError.

    >>> from onewhole.statements.reading import read_quantity
    >>> listing("All multiples of 7 up to 30", 1, 1, read_quantity).found
    (7, 14, 21, 28)
    """
    if _BEGINS.match(text) is None:
        return None
    asked = _ASKS.match(text)
    if asked is None:
        msg = "it is not clear which factors or multiples are asked for"
        raise ReadingError(msg, line=line, column=column, remedy=_REMEDY)
    number = read(asked["number"].rstrip(".="), line, column + asked.start("number"))
    most = read(asked["most"], line, column + asked.start("most")) if asked["most"] else None
    try:
        return Listing(ListSort(asked["sort"].lower()), number, most)
    except OnewholeError as error:
        raise ReadingError(error.what, line=line, column=column, remedy=error.remedy) from error
