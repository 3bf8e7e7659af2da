"""Any page with any answers is marked, found, seated and told: classes from a seed, with hostile answers.

Some dozen classes here; in `make walk` so many more. A class is drawn from its number alone, so that one
that fails can be drawn again.
"""

import os
from random import Random

import pytest

from onewhole.desk.marking.findings import most_useful
from onewhole.desk.marking.mark import Marked, mark
from onewhole.desk.pupil.report import reports
from onewhole.findings.status import Status
from onewhole.misconceptions.catalogue import shows
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_statement
from onewhole.working.working import equal_forms
from onewhole.writers.report_lines import report_lines

CLASSES = 5000 if os.environ.get("ONEWHOLE_WHOLE_WALK") else 36
CHUNKS = 6
POOL = (
    *("4 1/2 - 2 1/2", "9 1/6 - 4 4/6", "9 5/8 - 4 6/8", "5 - 1 3/8", "6 7/8 - 3 2/8", "2 4/5 + 1 3/5"),
    *("7 1/4 - 3 3/4", "3/4 - 1/2", "1/2 + 1/3", "703 - 245", "143 - 28", "3/4 ? 5/6", "7 2/6 = 6 ?/6"),
    *("5 ft 2 in - 2 ft 7 in", "5.2 - 2.7", "3 x 2/5", "1 - 1/8", "10 1/10 - 9 9/10", "2/2 + 2/2"),
)
STRAY = (
    *(
        "",
        "-",
        "see me",
        "?!",
        "0",
        "2/2",
        "4 5/6",
        "39/8",
        "<",
        "=",
        "3 3/0",
        "7.50",
        "-1/2",
        "1 1/7",
        "999",
    ),
    *("9 13/8 - 4 6/8 = 5 7/8", "1/2 = 2/4", "5 ft", "4 9/8", "1000000 1/3"),
)


def _cells(chance: Random, typed: str) -> str:
    """One answer: right, a pattern's in one of its forms, what another problem asks for, or anything."""
    statement = read_statement(typed)
    slips = shows(statement)
    pick = chance.randrange(5)
    if pick == 0 or not slips:
        return text(answer(statement))
    if pick == 1:
        return chance.choice(STRAY)
    slip = chance.choice(slips)
    forms = [*slip.outcomes]
    if isinstance(slip.wrote, Quantity):
        forms += equal_forms(slip.wrote)
    return text(chance.choice(forms))


def drawn(number: int) -> Marked:
    """Return one class, marked and seated."""
    chance = Random(number)
    page = chance.sample(POOL, chance.randrange(1, 6))
    sheet = "\n".join(f"{at}. {typed}" for at, typed in enumerate(page, start=1))
    rows = [
        ",".join([f"K{pupil:02}", *(_cells(chance, typed) for typed in page)])
        for pupil in range(1, chance.randrange(2, 12))
    ]
    head = ",".join(["pupil", *(str(at) for at in range(1, len(page) + 1))])
    return mark(sheet, "\n".join([head, *rows]))


@pytest.mark.parametrize("chunk", range(CHUNKS))
def test_a_class_with_any_answers_is_read_and_seated(chunk: int) -> None:
    """Each pupil is in one group; a pattern is named with its answers or not at all; all can be told."""
    for number in range(chunk, CLASSES, CHUNKS):
        marked = drawn(number)
        seated = sorted(pupil for group in marked.groups for pupil in group.pupils)
        assert seated == [one.pupil for one in marked.findings], number
        for found in marked.findings:
            named = found.status in {Status.LIKELY, Status.POSSIBLE}
            assert named == bool(found.patterns) == bool(found.evidence), number
            assert found.diagnosis.together + found.diagnosis.unlisted <= 1, number
        assert all(told for told in most_useful(marked))
        for report in reports(marked, tuple(one.pupil for one in marked.findings)):
            assert report_lines(report)[0] == report.pupil
