"""One review problem of an earlier skill: from an earlier sheet, or easier than tonight's."""

from collections.abc import Collection, Iterable, Sequence
from itertools import islice

from onewhole.errors import OnewholeError
from onewhole.misconceptions.pair import pair_of
from onewhole.number.ladder import joined
from onewhole.number.quantity import Quantity, trimmed
from onewhole.problems.answer import answer
from onewhole.problems.needs import Operation, needs
from onewhole.problems.parallel import parallel
from onewhole.statements.expression import minus, plus
from onewhole.statements.statement import Question, Statement


def earlier_skill(statement: Statement) -> Statement | None:
    """Return a problem with the same units that asks for less, or None where there is none.

    Where something is regrouped, it is taking away without regrouping; where nothing is, it is the addition
    that undoes the taking away. An addition without regrouping, a comparison and a missing number have no
    earlier skill here.

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_statement
    >>> [text(earlier_skill(read_statement(typed))) for typed in ("9 5/8 - 4 6/8", "6 7/8 - 3 2/8")]
    ['9 6/8 - 4 5/8', '3 5/8 + 3 2/8']
    """
    pair = pair_of(statement)
    if pair is None:
        return None
    try:
        if needs(statement).regrouping:
            found: Statement | None = _without_regrouping(pair.first, pair.second)
        elif pair.taken:
            found = _undone(statement, pair.second)
        else:
            return None
        return found if _fits(found) else None
    except OnewholeError:
        return None


def _without_regrouping(first: Quantity, second: Quantity) -> Statement:
    """Give the first number the larger count of each unit, and the second the smaller."""
    ladder = joined(first.ladder, second.ladder)
    rungs = [sorted(pair) for pair in zip(first.on(ladder).amounts, second.on(ladder).amounts, strict=True)]
    more, less = (Quantity(ladder, tuple(rung[at] for rung in rungs)) for at in (1, 0))
    return Question(minus(trimmed(more), trimmed(less)))


def _undone(statement: Statement, taken: Quantity) -> Statement | None:
    left = answer(statement)
    return Question(plus(left, taken)) if isinstance(left, Quantity) else None


def _fits(found: Statement | None) -> bool:
    """Say whether nothing is regrouped, nothing taken away is 0, and something is left."""
    pair = pair_of(found) if found else None
    if found is None or pair is None or not pair.second.value:
        return False
    left = answer(found)
    return not needs(found).regrouping and isinstance(left, Quantity) and left.value > 0


def review(
    models: Sequence[Statement],
    earlier: Iterable[Statement],
    taken: Collection[Statement],
    *,
    due: Sequence[Statement] = (),
    skip: int = 0,
) -> Statement | None:
    """Return one review problem with new numbers, or None without any.

    It is parallel to the first that can be of problems whose skill is ``due``; without any, to a problem of
    an ``earlier`` sheet, one without regrouping first, then an addition; with no earlier sheet it is parallel
    to the earlier skill of the first of the ``models`` that has one. None is in ``taken``. ``skip`` passes
    over so many, for another group or pupil.

    Source of coming back to earlier content: Pashler and others (2007), as quoted in their official summary;
    that spacing shows in a class is not certain (Ebersbach and Barzagar Nazari 2020, abstract).
    """
    simple = sorted(earlier, key=_hard)
    steps = (step for model in models if (step := earlier_skill(model)))
    for model in (*due, *simple, *steps):
        found = next(islice((one for one in parallel(model) if one not in taken), skip, None), None)
        if found is not None:
            return found
        if model not in taken:
            return model
    return None


def _hard(statement: Statement) -> tuple[bool, bool]:
    """Return what earlier problems are put in order by: those without regrouping first, then additions."""
    asked = needs(statement)
    return asked.regrouping, Operation.ADD not in asked.operations
