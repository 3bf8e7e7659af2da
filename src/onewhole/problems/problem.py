"""One problem of a page: its label, what it asks, and the text it was typed as."""

import re
from dataclasses import dataclass, field

from onewhole.errors import InputError
from onewhole.misconceptions.telling import PLAIN_STORY, ToldAs
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

#: A label without its dot or bracket: 1, 12b, a, Q3.
LABEL = re.compile(r"[0-9]{1,3}[A-Za-z]?|[A-Za-z][0-9]{0,2}")


class ProblemError(InputError):
    """A problem that cannot be put on a page as it is."""


@dataclass(frozen=True, slots=True)
class Problem:
    """A labelled statement.

    ``label`` is the teacher's own (``1``, ``2a``, ``b``), without the dot or bracket; ``typed`` is the text
    as it stands in the sheet, with single blanks, and reads back to ``statement``. ``line`` (from 1) is where
    it was typed; that is no part of what the problem is, so ``==`` leaves it out. ``story`` holds the words
    of a word problem and is empty for any other; the statement is the equation that the story asks for.
    ``telling`` is how they tell it, where that is known.
    Raises ProblemError for a label, a text or a story that a line of a sheet cannot hold.

    >>> from onewhole.statements.reading import read_statement
    >>> Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6", 4).label
    '1'
    """

    label: str
    statement: Statement
    typed: str
    line: int = field(default=1, compare=False)
    story: str = ""
    telling: ToldAs | None = None

    @property
    def told(self) -> ToldAs | None:
        """Return how its story tells it: without what is not known; None for a problem without a story.

        >>> from onewhole.statements.reading import read_statement
        >>> Problem("1", read_statement("5 - 2"), "5 - 2", story="Ana has 5 kites ...").told
        ToldAs(suggests=None, compares=False)
        """
        return (self.telling or PLAIN_STORY) if self.story else None

    def __post_init__(self) -> None:
        """Refuse what would not read back."""
        if not LABEL.fullmatch(self.label):
            msg = f"“{self.label[:40]}” is no label for a problem"
            raise ProblemError(msg, remedy="Use a number, a letter or both, such as 1, 2a or b.")
        for said in (self.typed, self.story):
            if said != " ".join(said.split()) or not said.isprintable():
                msg = f"problem {self.label} does not stand on one line"
                raise ProblemError(msg, remedy="Write it on one line with single blanks.")
        if read_statement(self.typed) != self.statement:
            msg = f"problem {self.label} is typed as another problem than it asks"
            raise ProblemError(msg, remedy="Type the problem that is meant.")
