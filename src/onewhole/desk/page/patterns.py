"""What every error pattern would write on a problem."""

from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.misconceptions.slip import Slip
from onewhole.notations.text import printed
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_statement
from onewhole.writers.json_lines import Json, patterns_object


def patterns(problem: str) -> tuple[Slip, ...]:
    """Return the slips that a typed problem can show, in the order of the catalogue.

    A pattern that does not apply here, or comes out right by luck, is left out. Raises ReadingError with line
    and column for text that is no problem.

    >>> {slip.pattern: printed(slip.wrote) for slip in patterns("9 5/8 - 4 6/8")}["A01"]
    '5 1/8'
    """
    return shows(read_statement(problem))


def as_object(problem: str) -> Json:
    """Return what each pattern would write as a JSON object."""
    statement = read_statement(problem)
    return patterns_object(statement, answer(statement), shows(statement))


def told(problem: str) -> tuple[str, ...]:
    """Return what each pattern would write as plain lines: id, raw answer, plain name."""
    statement = read_statement(problem)
    slips = shows(statement)
    width = max((len(printed(slip.wrote)) for slip in slips), default=0)
    head = f"{printed(statement)}    right: {printed(answer(statement))}"
    return (
        head,
        *(f"  {slip.pattern}  {printed(slip.wrote):>{width}}  {by_id(slip.pattern).name}" for slip in slips),
    )
