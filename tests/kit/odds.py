"""Classes weighed against the page of twelve, whose tables are worked out once for all tests."""

from collections.abc import Mapping, Sequence
from functools import cache

from onewhole.marking.diagnosis.diagnosis import Diagnosis, Weighed, weigh
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.diagnosis.tables import Tables, tables, typed_lines
from onewhole.marking.reading.expected import Expected, expect
from tests.kit.answers import TWELVE, marked_against, page

PAGE = page()


@cache
def known(typed: tuple[str, ...] = TWELVE) -> tuple[tuple[Expected, ...], Tables]:
    """What is expected of a page, and its tables."""
    asked = tuple(expect(problem) for problem in page(typed))
    return asked, tables(asked)


def weighed(rows: Mapping[str, Sequence[str]], typed: tuple[str, ...] = TWELVE) -> Weighed:
    """A class weighed."""
    asked, ready = known(typed)
    marks = marked_against(asked, rows)
    return weigh(marks, known=None if typed_lines(marks) else ready)


def one(cells: Sequence[str], typed: tuple[str, ...] = TWELVE) -> Diagnosis:
    """The diagnosis of a pupil alone."""
    return weighed({"K01": cells}, typed).diagnoses[0]


def finding_of(cells: Sequence[str], typed: tuple[str, ...] = TWELVE) -> Finding:
    """The finding of a pupil alone."""
    asked, _ = known(typed)
    rows = {"K01": cells}
    return findings(marked_against(asked, rows), weighed(rows, typed).diagnoses)[0]
