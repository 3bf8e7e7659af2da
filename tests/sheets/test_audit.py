"""What is found in a page, and what may be done about it."""

from fractions import Fraction
from pathlib import Path

import pytest

from onewhole.findings.in_page import Alike, HardToRead, NumbersUntold, OverEvening, Severity, severity
from onewhole.findings.searched import Searched
from onewhole.languages.english.in_page import found_in_page, how_known, page_mended
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import printed, text
from onewhole.problems.near import near
from onewhole.sheets.audit import TELLING, _telling, audit
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.writers.finding_keys import finding_key
from tests.kit.sheets import worked_sheet

ROOM_12 = Path(__file__).parents[2] / "examples" / "room12" / "sheet.txt"


def found(text: str) -> list[tuple[str, tuple[str, ...]]]:
    """Return key and labels of every finding."""
    return [(finding_key(finding), finding.labels) for finding in audit(worked_sheet(text)).findings]


@pytest.mark.parametrize(
    ("text", "key", "labels"),
    [
        ("1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6", "twins", ("1", "2")),
        ("minutes: 1\n\n1. 7 2/6 - 3 5/6", "minutes", ()),
        ("1. 5 1/8 - 2 5/8\n2. 5 4/6 - 2 1/6", "alike", ("1",)),
        ("1. 7 2/6 - 3 5/6\n2. 5 4/6 - 2 1/6", "climb", ("1", "2")),
        ("1. 7 2/6 - 3 5/6", "hidden", ("1",)),
        ("1. 7 2/6 - 3 5/6\n2. 5 1/8 - 2 6/8", "K11", ()),
        ("1. 3/4 - 1/6", "K9", ("1",)),
    ],
)
def test_findings(text: str, key: str, labels: tuple[str, ...]) -> None:
    """Each sort of finding, with the problems it is about."""
    assert (key, labels) in found(text)


@pytest.mark.parametrize(
    "text",
    [
        "1. 18 / 6 + 4 x (5 - 2)\n2. 3 x (20 + 7)\n3. 4 + 3 x 7",
        "1. plot 1/4: 2, 3/4: 3; total\n2. plot 1/4: 2, 3/4: 3; spread",
    ],
)
def test_several_steps_and_line_plots_are_no_page_on_regrouping(text: str) -> None:
    """Nothing is advised of regrouping where the page is about something else."""
    assert "K11" not in dict(found(text))


def test_an_evening_is_a_budget_too() -> None:
    """Thirty regrouping problems are more than ten minutes a grade."""
    page = "\n".join(f"{at}. {at} 1/8 - {at - 1} 6/8" for at in range(1, 30))
    (over,) = (one for one in audit(worked_sheet(page)).findings if isinstance(one, OverEvening))
    assert over == OverEvening(Fraction(87, 2), 40)
    usual = "; ten minutes a grade is 40 for one evening, all subjects together."
    assert text_of(found_in_page(over)) == f"The page takes about 43 1/2 minutes{usual}"


def test_one_note_where_two_standards_say_one_thing() -> None:
    """Sevenths are told as sevenths (K12) and unlike denominators as grade 5 (K9), once each."""
    keys = dict(found("1. 3 2/7 - 1 5/7\n2. 2/3 + 1/4\n3. 3/13 + 1/13"))
    assert keys["K12"] == ("1",)
    assert keys["K1"] == ("3",)
    assert keys["K9"] == ("2",)
    assert "K3" not in keys


def test_advice_comes_first_and_everything_has_a_remedy() -> None:
    """A note never stands above advice."""
    findings = audit(worked_sheet("minutes: 1\n\n1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6\n3. 1/7 + 1/7")).findings
    weights = list(map(severity, findings))
    assert weights == sorted(weights, key=[Severity.ADVICE, Severity.NOTE].index)
    assert len(set(weights)) == 2
    assert all(
        text_of(page_mended(finding)) and text_of(found_in_page(finding)).endswith(".")
        for finding in findings
    )


def test_the_remedy_names_a_problem_that_tells_apart() -> None:
    """And adding it takes the finding away."""
    typed = "1. 5 1/8 - 2 5/8\n2. 5 4/6 - 2 1/6"
    (alike,) = (one for one in _alike(typed) if "A01" in one.patterns)
    told = next(problem for problem in TELLING if problem in text_of(page_mended(alike)))
    assert not _alike(f"{typed}\n3. {told}")


def test_problems_named_in_remedies_can_be_read() -> None:
    """Each of the list."""
    assert all(read_statement(typed) for typed in TELLING)


def test_the_page_of_room_12_is_clean() -> None:
    """A strict audit finds nothing in it."""
    assert audit(worked_sheet(ROOM_12.read_text(encoding="utf-8"))).clean


def test_a_page_with_findings_is_not_clean() -> None:
    """A strict audit asks for none."""
    assert not audit(worked_sheet("1. 3 2/7 - 1 5/7")).clean


def test_a_story_that_tells_other_numbers() -> None:
    """A word problem whose words lost a number, and one that is hard to read, are noted and not stopped."""
    typed = (
        "whole: strip\npicture: strip\n\n"
        "1. 5 1/3 - 2 2/3 | The club has 5 2/3 strips. A kite takes 2 2/3 strips. How many are left?\n"
        "2. 5 1/3 - 2 1/3 | Considering environmental circumstances, approximately 5 1/3 strips minus "
        "additional decorative applications requiring 2 1/3 strips remain.\n"
    )
    found = {finding_key(finding): finding for finding in audit(worked_sheet(typed)).findings}
    story, reading = found["story"], found["reading"]
    assert story == NumbersUntold("1", (read_quantity("5 1/3"),))
    assert text_of(found_in_page(story)) == "The words of problem 1 do not tell 5 1/3."
    assert isinstance(reading, HardToRead)
    assert reading.labels == ("2",)
    assert text_of(found_in_page(reading)).startswith("The words of problem 2 read at about grade ")
    assert {severity(story), severity(reading)} == {Severity.NOTE}


def test_a_usual_story_is_quiet() -> None:
    """The sample of the sheet's page reads easily and tells its numbers."""
    typed = (
        "1. 5 1/3 - 2 2/3 | Room 12 has 5 1/3 strips of kite paper. A kite takes 2 2/3 strips. "
        "How much is left?"
    )
    assert not {"story", "reading"} & {key for key, _ in found(typed)}


@pytest.mark.parametrize(
    ("typed", "keys", "example"),
    [
        ("5.2 - 2.7", ("F04", "F05"), "3.00 - 0.45"),
        ("207 - 169", ("E05", "E07"), "5006 - 1308"),
        ("143 - 28", ("E01", "E02"), "703 - 245"),
    ],
)
def test_a_problem_that_tells_apart_is_looked_for_before_anything_is_said(
    typed: str, keys: tuple[str, str], example: str
) -> None:
    """Where one is known to exist (with more places, or zeros), one is found, and it does what is said."""
    assert _written(example, keys[0]) != _written(example, keys[1])
    (alike,) = (one for one in _alike(f"1. {typed}") if set(keys) <= set(one.patterns))
    assert alike.telling
    adds = text(alike.telling)
    assert _written(adds, keys[0]) != _written(adds, keys[1])
    assert printed(alike.telling) in text_of(page_mended(alike))


def _alike(typed: str) -> list[Alike]:
    return [one for one in audit(worked_sheet(typed)).findings if isinstance(one, Alike)]


def _written(typed: str, key: str) -> object:
    slip = by_id(key).slip(read_statement(typed))
    return slip and slip.wrote


def test_what_was_looked_at_in_vain_is_said() -> None:
    """Two mistakes of columns are not told apart by decimals: that is all that is claimed, with the count."""
    asked = read_statement("5.2 - 2.7")
    told, space = _telling(("E13", "E14"), (asked,)), near(asked)
    assert space is not None
    assert (told.problem, told.searched) == (None, (space,))
    searched = (Searched(space.sort, space.taken, len(space.problems)),)
    found = Alike(("E13", "E14"), ("1",), None, len(TELLING), searched)
    assert text_of(page_mended(found)) == (
        "Ask the child to show each step: no other problem tells them apart."
    )
    assert text_of(how_known(found)) == (
        "In the list of mistakes they are E13 and E14. They are not told apart by the answer to any of the "
        f"{len(TELLING)} problems that tell most, nor by one to {len(space.problems)} differences of "
        "decimals with up to two places, zeros among them."
    )
    assert _telling(("E13", "E14"), (read_statement("506 - 318"),)).problem
