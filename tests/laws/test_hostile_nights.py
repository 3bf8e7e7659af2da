"""Any page with any answers is marked, found, seated, told and planned: classes with hostile answers.

Each class is drawn from its number alone, so that one that fails can be drawn again; every ninth is a full
one of 25 pupils and a dozen problems, in `make walk` every second. They go on until so many answers went
through; in `make walk` that is a million.
"""

import os
from collections.abc import Iterator
from datetime import UTC, datetime
from functools import lru_cache
from itertools import islice
from random import Random

import pytest

from onewhole.desk.marking.findings import most_useful
from onewhole.desk.marking.mark import Marked, mark
from onewhole.desk.page.print_pages import pressed
from onewhole.desk.pupil.report import reports
from onewhole.desk.tomorrow.plan import by_file, plan_pages
from onewhole.desk.tomorrow.practice_pages import Tomorrow
from onewhole.findings.status import Status
from onewhole.misconceptions.catalogue import shows
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.parallel import parallel
from onewhole.statements.reading import read_statement
from onewhole.working.working import equal_forms
from onewhole.writers.report_lines import report_lines
from tests.kit.how_much import sample

ANSWERS = int(os.environ.get("ONEWHOLE_ANSWERS", sample("300", "400")))
CHUNKS = 5
#: Which classes are full, and which are also printed; of those that are not full, which are told pupil by
#: pupil too: the plan tells each of them already.
FULL, PRINTED, TOLD = 9 if ANSWERS < 10_000 else 2, 101, 5
#: A page is no longer than this.
LONGEST = 12
WHEN = datetime(2026, 11, 24, tzinfo=UTC)
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


@lru_cache(maxsize=4096)
def _alike(typed: str) -> tuple[str, ...]:
    """Return a problem and some with its structure and new numbers."""
    return typed, *(text(one) for one in islice(parallel(read_statement(typed)), 8))


@lru_cache(maxsize=4096)
def _written(typed: str) -> tuple[str, tuple[tuple[str, ...], ...]]:
    """Return the right answer, and what each pattern writes, in each of its forms."""
    statement = read_statement(typed)
    wrong = []
    for slip in shows(statement):
        forms = [*slip.outcomes]
        if isinstance(slip.wrote, Quantity):
            forms += equal_forms(slip.wrote)
        wrong.append(tuple(map(text, forms)))
    return text(answer(statement)), tuple(wrong)


def _cell(chance: Random, typed: str) -> str:
    """One answer: right, a pattern's in one of its forms, or anything."""
    right, wrong = _written(typed)
    pick = chance.randrange(5)
    if pick == 0 or not wrong:
        return right
    return chance.choice(STRAY) if pick == 1 else chance.choice(chance.choice(wrong))


def drawn(number: int) -> Marked:
    """Return one class, marked and seated."""
    chance, full = Random(number), number % FULL == FULL - 1
    models = chance.sample(POOL, LONGEST if full else chance.randrange(1, 6))
    page = [chance.choice(_alike(typed)) if chance.randrange(2) else typed for typed in models]
    sheet = "\n".join(f"{at}. {typed}" for at, typed in enumerate(page, start=1))
    pupils = 25 if full else chance.randrange(1, 11)
    rows = [
        ",".join([f"K{pupil:02}", *(_cell(chance, typed) for typed in page)])
        for pupil in range(1, pupils + 1)
    ]
    head = ",".join(["pupil", *(str(at) for at in range(1, len(page) + 1))])
    return mark(sheet, "\n".join([head, *rows]))


def held(number: int) -> int:
    """Check one class, and return how many answers it wrote."""
    marked = drawn(number)
    codes = [one.pupil for one in marked.findings]
    assert sorted(pupil for group in marked.groups for pupil in group.pupils) == codes
    for found in marked.findings:
        named = found.status in {Status.LIKELY, Status.POSSIBLE}
        assert named == bool(found.patterns) == bool(found.evidence)
        assert found.diagnosis.together + found.diagnosis.unlisted <= 1
    assert all(told for told in most_useful(marked))
    full = number % FULL == FULL - 1
    if not full and number % TOLD == 0:
        for report in reports(marked, tuple(codes)):
            assert report_lines(report)[0] == report.pupil
    _planned(marked, number, codes[:1] if full else codes)
    return len(codes) * len(marked.sheet.problems)


def _planned(marked: Marked, number: int, codes: list[str]) -> None:
    """Plan the morning as `onewhole plan` does, with an earlier night for every second class."""
    earlier = (marked.sheet,) * (number % 2)
    pages = plan_pages(marked, Tomorrow(tuple(codes), earlier))
    files = [paper.file for paper, _ in pages]
    assert files[0] == "morning"
    assert len(set(files)) == len(files)
    assert files[1:-1][-len(codes) :] == [f"pupil-{code.lower()}" for code in codes] or not any(
        len(_alike(problem.typed)) > 1 for problem in marked.sheet.problems
    )
    assert all(page.content for _, page in pages)
    if number % PRINTED == PRINTED - 1:
        assert all(one.content for one in pressed(by_file(pages), when=WHEN))


def _classes(chunk: int) -> Iterator[tuple[int, int]]:
    """Check the classes of a chunk until its part of the answers went through: give numbers and answers."""
    number, answers = chunk, 0
    while answers < ANSWERS // CHUNKS:
        try:
            wrote = held(number)
        except Exception as fault:
            fault.add_note(f"class {number}")
            raise
        answers += wrote
        yield number, wrote
        number += CHUNKS


@pytest.mark.parametrize("chunk", range(CHUNKS))
def test_a_class_with_any_answers_is_read_seated_and_planned(chunk: int) -> None:
    """Each pupil is in one group; a pattern is named with its answers or not at all; all can be told."""
    tried = list(_classes(chunk))
    print(f"{len(tried)} classes, {sum(wrote for _, wrote in tried)} answers")
    assert tried
