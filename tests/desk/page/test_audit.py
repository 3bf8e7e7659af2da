"""A sheet looked over."""

from pathlib import Path

import pytest

from onewhole.desk.page.audit import as_object, audit, audit_file, told
from onewhole.sheets.document import SheetError
from onewhole.writers.finding_keys import finding_key

TWINS = "title: Kites\n\n1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6\n3. 6 7/8 - 3 2/8"


def test_lines_a_problem_and_what_is_found() -> None:
    """The page first, then a line a problem with its traps, then each finding with the next thing to do."""
    said = told(audit(TWINS))
    assert said[:4] == (
        "Kites",
        "3 problems, about 4 minutes; regrouping in 2 of 3.",
        "Falls back once on the way.",
        "Twins: 1 and 2.",
    )
    assert any(line.startswith("Not told apart by this page: A01 and A02; ") for line in said)
    assert any(line.startswith("      trap: A01 and A02 write the same, 4 3/6") for line in said)
    assert "      trap: A03 comes out right by luck" in said
    at = next(number for number, line in enumerate(said) if line.startswith("advice twins: "))
    assert said[at + 1].startswith("  next: ")
    assert not any(line.endswith(" ") for line in said)


def test_a_page_without_findings_says_so() -> None:
    """Nothing found is told, so that an empty end is not taken for a fault."""
    clean = audit("1. 9 5/8 - 4 6/8\n2. 6 7/8 - 3 2/8")
    assert clean.clean == ("Nothing found that wants a change." in told(clean))


def test_the_object_says_the_same() -> None:
    """Every finding of the audit stands in it, with its labels."""
    found = audit(TWINS)
    findings = as_object(found)["findings"]
    assert isinstance(findings, list)
    assert [(one["key"], tuple(one["labels"])) for one in findings] == [
        (finding_key(one), one.labels) for one in found.findings
    ]


def test_a_file_is_named_in_what_is_refused(tmp_path: Path) -> None:
    """A mistake in a file carries the file's name; one in a text does not."""
    path = tmp_path / "monday.txt"
    path.write_text("1. 7 2/0")
    with pytest.raises(SheetError) as refused:
        audit_file(path)
    assert refused.value.file == str(path)
    with pytest.raises(SheetError) as refused:
        audit("1. 7 2/0")
    assert refused.value.file is None
