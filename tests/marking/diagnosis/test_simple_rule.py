"""A simple rule that would write all wrong answers, and is none of ours."""

import pytest

from lab.outside import RULES, written
from onewhole.findings.simple_rule import PartMade, SimpleRule
from onewhole.marking.diagnosis.simple_rule import FEWEST, simple_rule
from onewhole.notations.text import text
from tests.kit.answers import all_right, by_pattern, marked, page, right

PAGE = page()


def _rule(cells: list[str]) -> SimpleRule | None:
    marks = marked(PAGE, {"K01": cells})
    return simple_rule(marks.expected, marks.pupils[0].marks)


def _by(rule: str) -> list[str]:
    wrote = [written(rule, problem.statement) for problem in PAGE]
    return [text(one) if one else right(problem) for one, problem in zip(wrote, PAGE, strict=True)]


@pytest.mark.parametrize(
    ("rule", "found"),
    [
        ("adds the pieces only where there are too few", (PartMade.WORKED, PartMade.ADDED, PartMade.FIRST)),
        ("doubles the first number", (PartMade.TWICE_FIRST, PartMade.TWICE_FIRST, PartMade.FIRST)),
        ("writes the second number", (PartMade.SECOND, PartMade.SECOND, PartMade.FIRST)),
        ("writes the pieces that are missing", (PartMade.WORKED, PartMade.MISSING, PartMade.FIRST)),
        (
            "writes the size of the pieces as their number",
            (PartMade.WORKED, PartMade.SIZE, PartMade.PIECES_ADDED),
        ),
    ],
)
def test_the_rule_that_was_followed_is_found(rule: str, found: tuple[PartMade, PartMade, PartMade]) -> None:
    """Wholes, pieces and denominator, each by itself."""
    assert _rule(_by(rule)) == SimpleRule(*found)


def test_one_answer_that_the_rule_does_not_write_and_none_is_told() -> None:
    """A rule is told only when it writes all of them; a slip, one piece beside right, does not count."""
    cells = _by("works the wholes and writes the larger number of pieces")
    assert _rule(cells) is not None
    assert _rule([*cells[:-1], "1 1/7"]) is None
    assert _rule([*cells[:-1], "<"]) is None
    assert _rule([*cells[:1], "3 4/8", *cells[2:]]) is not None


def test_too_few_answers_tell_no_rule() -> None:
    """Two numbers and a choice of ways agree too easily on two answers."""
    cells = _by("doubles the first number")
    assert _rule([*cells[:FEWEST], *all_right(PAGE)[FEWEST:]]) is not None
    assert _rule([*cells[: FEWEST - 1], *all_right(PAGE)[FEWEST - 1 :]]) is None
    assert _rule(all_right(PAGE)) is None


def test_scattered_answers_follow_no_rule() -> None:
    """Each by another pattern."""
    rows = [by_pattern(key, PAGE) for key in ("A01", "A02", "A04", "A13", "A15", "A18")]
    assert _rule([rows[at % len(rows)][at] for at in range(len(PAGE))]) is None


def test_most_rules_of_the_laboratory_are_found() -> None:
    """All but the one that writes the pieces of a whole number first, which two problems cannot show."""
    assert [rule for rule in RULES if _rule(_by(rule)) is None] == ["writes the pieces over the whole number"]
