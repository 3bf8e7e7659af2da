"""The audit of a page as lines and as an object."""

import json
import re
from itertools import groupby

import pytest

from onewhole.sheets.audit import Audit, audit
from onewhole.writers.audit_json import audit_object
from onewhole.writers.audit_lines import audit_lines
from tests.kit.sheets import worked_sheet

PAGES = {
    "plain": "1. 9 5/8 - 4 6/8\n2. 6 7/8 - 3 2/8",
    "traps": "title: Kites\nminutes: 3\n\n1. 5 1/8 - 2 5/8\n2. 6 2/8 - 3 6/8\n3. 5 - 1 3/8",
    "every kind": (
        "1. 52 - 27\n2. 5.2 - 2.7\n3. 5 ft 2 in - 2 ft 7 in\n4. 5/6 ? 7/8\n5. 7 2/6 = 6 ?/6\n6. 3 x 2/5\n"
        "7. 3/4 + 1/6 | A kite takes 3/4 of a strip and 1/6 of a strip.\n8. 1 4/3 + 1/3"
    ),
}


@pytest.fixture(params=list(PAGES.values()), ids=list(PAGES))
def seen(request: pytest.FixtureRequest) -> Audit:
    """The audit of a page."""
    return audit(worked_sheet(request.param))


def test_a_line_a_problem(seen: Audit) -> None:
    """Every problem stands on a line with its answer; no line ends with a blank."""
    lines = audit_lines(seen)
    for problem in seen.page.problems:
        (line,) = [line for line in lines if line.lstrip().startswith(f"{problem.label}. ")]
        assert str(problem.difficulty.score) in line
        assert str(len(problem.slips)) in line
    assert not [line for line in lines if line != line.rstrip()]


def test_every_finding_and_what_to_do(seen: Audit) -> None:
    """Lines tell in the order of the object what it tells, several of one kind as one."""
    lines = [line for line in audit_lines(seen) if line.startswith(("advice ", "note "))]
    findings = audit_object(seen)["findings"]
    assert isinstance(findings, list)
    heads = [tuple(line.split(":")[0].split()) for line in lines]
    keys = [(found["severity"], found["key"]) for found in findings]
    assert [head for head, _ in groupby(heads)] == [key for key, _ in groupby(keys)]
    more = [int(said[1]) for line in lines if (said := re.search(r"true of (\d+) other", line))]
    more += [1 for line in lines if "true of one other pattern" in line]
    assert len(lines) + sum(more) == len(findings)
    assert all(found["words"] and found["remedy"] for found in findings)


def test_a_page_of_columns_is_told_in_a_handful_of_lines() -> None:
    """What hides is told in one line a problem and one a kind; patterns about zeros only where one is met."""
    seen = audit(worked_sheet("1. 52 - 27\n2. 44 - 18\n3. 57 - 20"))
    lines = audit_lines(seen)
    assert len(lines) < 20
    assert sum(line.lstrip().startswith("trap: ") for line in lines) <= 2 * len(seen.page.problems)
    lucky = [set(problem.traps.lucky) for problem in seen.page.problems]
    assert not set.union(*lucky) & {"E03", "E04", "E05", "E06", "E07", "E08", "E09", "E10", "E27", "E29"}
    several = audit_lines(audit(worked_sheet("1. 5 1/8 - 2 5/8")))
    assert "      trap: A01 and A02 write the same, 3 4/8; A05 and A06 2 3/8" in several


def test_the_object_is_json(seen: Audit) -> None:
    """It is made of plain values only and reads back the same."""
    found = audit_object(seen)
    assert json.loads(json.dumps(found)) == found


def test_needs_in_words() -> None:
    """What a problem needs is told in a few words."""
    said = "\n".join(audit_lines(audit(worked_sheet(PAGES["every kind"]))))
    for words in ("regroup once", "no regrouping", "rename the pieces", "a fraction greater than one"):
        assert words in said
