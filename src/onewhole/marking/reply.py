"""Which of the few kinds of reply an answer is: the right amount, what a pattern writes, or something else."""

from collections.abc import Hashable
from dataclasses import dataclass

from onewhole.marking.expected import Expected
from onewhole.marking.writing import alike, amount
from onewhole.misconceptions.attempt import Outcome


@dataclass(frozen=True, slots=True)
class Reply:
    """A kind of reply to one problem.

    ``kind`` is ``right`` (the right amount in any form), ``written`` (just as some pattern writes it),
    ``amount`` (what some pattern is worth, written another way), ``near`` (one unit beside one of these or
    beside the right answer) or ``other``; ``key`` tells replies of one kind apart.
    """

    kind: str
    key: Hashable = None


RIGHT = Reply("right")
OTHER = Reply("other")


def reply(asked: Expected, read: Outcome) -> Reply:
    """Return the kind of reply that an answer is.

    >>> from onewhole.marking.expected import expect
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_answer, read_statement
    >>> asked = expect(Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8"))
    >>> [reply(asked, read_answer(text)).kind for text in ("39/8", "5 1/8", "41/8", "4 6/8", "77")]
    ['right', 'written', 'amount', 'written', 'other']
    """
    if asked.is_right(read):
        return RIGHT
    written = alike(read)
    if written in asked.exact:
        return Reply("written", written)
    worth = amount(read)
    if worth is None:
        return OTHER
    if worth in asked.amounts:
        return Reply("amount", worth)
    if worth in asked.near or asked.may_be_slip(read):
        return Reply("near", worth)
    return OTHER
