"""Check typed equalities."""

from collections.abc import Iterator, Sequence

from onewhole.marking.reading.checking import RUN_ON, Checked
from onewhole.marking.reading.checking import check as checked
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text as written
from onewhole.statements.reading import read_statement
from onewhole.writers.check_json import Json, checked_object


def check(text: str, *, problem: str | None = None) -> tuple[Checked, ...]:
    """Check every equals sign of one or more typed chains of equalities, one or many lines.

    ``problem`` is what they work on, where it does not stand first in the chain. Raises ReadingError with
    line and column for text that is no equality.

    >>> check("7 2/6 - 3 5/6 = 6 8/6 - 3 5/6 = 3 3/6")[0].true
    True
    """
    return checked(text, read_statement(problem) if problem else None)


def as_object(found: Sequence[Checked]) -> Json:
    """Return checked chains as a JSON object."""
    return checked_object(found)


def told(found: Sequence[Checked]) -> tuple[str, ...]:
    """Return checked chains as plain lines."""
    return tuple(line for one in found for line in _told(one))


def _told(one: Checked) -> Iterator[str]:
    yield " = ".join(written(link.says) for link in one.chain.links)
    if one.true:
        yield "  true, every equals sign"
    for sign in one.false:
        left, right = written(sign.left), written(sign.right)
        yield f"  line {sign.line}, column {sign.column}: {left} is not equal to {right}"
        if sign.runs_on:
            yield f"    {RUN_ON}"
        elif sign.would_be is not None:
            yield f"    true would be: {left} = {written(sign.would_be)}"
        for pattern in sign.patterns:
            yield f"    fits {pattern}: {by_id(pattern).name}"
    for act in one.separate:
        yield f"    {' = '.join(map(written, act))}"
