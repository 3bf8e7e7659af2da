"""Which kind of reply an answer is: the right amount, what a pattern writes, or something else."""

from collections.abc import Hashable
from dataclasses import dataclass, field
from enum import Enum

from onewhole.marking.reading.expected import Expected
from onewhole.marking.reading.writing import alike, amount
from onewhole.misconceptions.attempt import Outcome


class ReplyKind(Enum):
    """What an answer is beside the right one and those of the patterns.

    The right amount in any form; a false line just as some patterns write it; an answer just as some pattern
    writes it; what some pattern is worth, written in another way; one unit beside one of these or beside the
    right answer, or two neighbors of such an order changed; anything else.
    """

    RIGHT = "right"
    LINE = "line"
    WRITTEN = "written"
    AMOUNT = "amount"
    NEAR = "near"
    OTHER = "other"


@dataclass(frozen=True, slots=True)
class Reply:
    """A kind of reply to one problem; ``key`` distinguishes replies of one kind (of a line: the ids it fits).

    >>> Reply(ReplyKind.RIGHT) == RIGHT
    True
    """

    sort: ReplyKind
    key: Hashable = None
    #: Worked out once: a reply is looked up in every table of its problem, and its key may be long.
    hashed: int = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Work out the hash."""
        object.__setattr__(self, "hashed", hash((self.sort.value, self.key)))

    def __hash__(self) -> int:
        """Return the hash that was worked out."""
        return self.hashed

    def __reduce__(self) -> tuple[type["Reply"], tuple[ReplyKind, Hashable]]:
        """Be made anew in another process, where texts have other hashes."""
        return Reply, (self.sort, self.key)


RIGHT = Reply(ReplyKind.RIGHT)
OTHER = Reply(ReplyKind.OTHER)


def reply(asked: Expected, read: Outcome) -> Reply:
    """Return the kind of reply that an answer is.

    >>> from onewhole.marking.reading.expected import expect
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_answer, read_statement
    >>> asked = expect(Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8"))
    >>> [reply(asked, read_answer(text)).sort.value for text in ("39/8", "5 1/8", "41/8", "4 6/8", "77")]
    ['right', 'written', 'amount', 'written', 'other']
    """
    if asked.is_right(read):
        return RIGHT
    written = alike(read)
    if written in asked.exact:
        return Reply(ReplyKind.WRITTEN, written)
    if written in asked.orders:
        return Reply(ReplyKind.NEAR, written)
    worth = amount(read)
    if worth is None:
        return OTHER
    if worth in asked.amounts:
        return Reply(ReplyKind.AMOUNT, worth)
    if worth in asked.near or asked.may_be_slip(read):
        return Reply(ReplyKind.NEAR, worth)
    return OTHER
