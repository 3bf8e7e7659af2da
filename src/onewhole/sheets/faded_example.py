"""A worked example with its last line left out, as words to the pupil."""

from onewhole.languages.language import Language
from onewhole.languages.table import SPOKEN
from onewhole.notations.text import text
from onewhole.problems.taught import as_taught
from onewhole.statements.statement import Statement
from onewhole.working.form import ANY_FORM, FormWanted
from onewhole.working.taught import AsTaught

BLANK = "____"


def faded_example(
    statement: Statement,
    taught: AsTaught,
    wanted: FormWanted = ANY_FORM,
    language: Language = SPOKEN,
) -> str | None:
    """Return what a pupil writes for a problem, its last line left out; None for what is not worked.

    That the last step is taken away first: Atkinson, Renkl and Merrill (2003), from memory.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> faded_example(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST)
    'Here is one to finish: 7 2/6 - 3 5/6 = 6 8/6 - 3 5/6 = ____'
    """
    working = as_taught(statement, taught, wanted)
    if working is None:
        return None
    lines = [text(line.says) for line in working.brief()]
    return f"{language.page.to_finish} {' = '.join((*lines[:-1], BLANK))}"
