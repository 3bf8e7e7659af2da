"""What every error pattern would write on a problem."""

from onewhole.languages.class_words import ClassWords
from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.misconceptions.slip import Slip
from onewhole.misconceptions.telling import PLAIN_STORY, ToldAs
from onewhole.notations.text import printed
from onewhole.problems.answer import answer
from onewhole.sheets.stories import known_telling
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement
from onewhole.writers.json_lines import Json, patterns_object


def patterns(problem: str) -> tuple[Slip, ...]:
    """Return the slips that a typed problem can show, in the order of the catalogue.

    Behind a bar stands the story that tells it, where there is one.
    A pattern that does not apply here, or comes out right by luck, is left out. Raises ReadingError with line
    and column for text that is no problem.

    >>> {slip.pattern: printed(slip.wrote) for slip in patterns("9 5/8 - 4 6/8")}["A01"]
    '5 1/8'
    >>> told = "3 x 12 - 20 | Sam buys 3 rolls of 12 m and uses 20 m. How many are left?"
    >>> [slip.pattern for slip in patterns(told) if slip.pattern.startswith("T")]
    ['T02', 'T08']
    """
    statement, telling = _read(problem)
    return shows(statement, telling)


def _read(problem: str) -> tuple[Statement, ToldAs | None]:
    """Read a problem, with the words of its story behind a bar where it is told."""
    asked, _, said = problem.partition("|")
    statement, words = read_statement(asked), " ".join(said.split())
    return statement, (known_telling(statement, words, ClassWords()) or PLAIN_STORY) if words else None


def as_object(problem: str) -> Json:
    """Return what each pattern would write as a JSON object."""
    statement, telling = _read(problem)
    return patterns_object(statement, answer(statement), shows(statement, telling))


def told(problem: str) -> tuple[str, ...]:
    """Return what each pattern would write as plain lines: id, raw answer, plain name."""
    statement, telling = _read(problem)
    slips = shows(statement, telling)
    width = max((len(printed(slip.wrote)) for slip in slips), default=0)
    head = f"{printed(statement)}    right: {printed(answer(statement))}"
    return (
        head,
        *(f"  {slip.pattern}  {printed(slip.wrote):>{width}}  {by_id(slip.pattern).name}" for slip in slips),
    )
