from fractions import Fraction
from pathlib import Path

import pytest

from onewhole.desk.page.parse_wishes import TypedWishes, parse_wishes
from onewhole.errors import OnewholeError
from onewhole.findings.wished_skill import WishedSkill
from onewhole.sheets.wishes import Review, WishError, Wishes

NIGHT = "1. 9 5/8 - 4 6/8\n2. 5 4/6 - 2 1/6\n"


def test_nothing_typed_is_the_usual() -> None:
    """Every wish has a usual one."""
    assert parse_wishes(TypedWishes()) == Wishes()


def test_what_is_typed_is_read() -> None:
    """However it is spaced and capitalised."""
    found = parse_wishes(
        TypedWishes(
            skill="BOTH",
            denominators="8, 4;6",
            regrouping=" 1 / 2",
            strategy="count up",
            review=("Opened-Wholes", "tens"),
            minutes=20,
        )
    )
    assert found.skill is WishedSkill.BOTH
    assert found.denominators == (4, 6, 8)
    assert found.regrouping == Fraction(1, 2)
    assert found.strategy.key == "count_up"
    assert found.review == (Review.OPENED, Review.TENS)
    assert parse_wishes(TypedWishes(regrouping="Any")).regrouping is None
    assert parse_wishes(TypedWishes(regrouping="0.25")).regrouping == Fraction(1, 4)


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        (
            TypedWishes(skill="divide"),
            f"there is no skill “divide” to compose. Wish for one of: {', '.join(WishedSkill)}.",
        ),
        (
            TypedWishes(review=("history",)),
            "there is no review “history” to compose. Wish for one of: fractions, tens, opened wholes.",
        ),
        (
            TypedWishes(denominators="4,x"),
            "“x” is no denominator. Write numbers with commas between them, such as 4,6,8.",
        ),
        (
            TypedWishes(regrouping="most"),
            "“most” is no share of a page. Write a share from 0 to 1, such as 2/3, or any.",
        ),
        (
            TypedWishes(regrouping="1/0"),
            "“1/0” is no share of a page. Write a share from 0 to 1, such as 2/3, or any.",
        ),
        (
            TypedWishes(answers=Path("a.csv")),
            (
                "answers were given, and not the sheet that they answer. "
                "Name the sheet too: --after SHEET --answers FILE."
            ),
        ),
    ],
)
def test_what_cannot_be_read_is_refused(typed: TypedWishes, words: str) -> None:
    """In plain words, with what to type."""
    with pytest.raises(WishError) as refused:
        parse_wishes(typed)
    assert str(refused.value) == words


def test_an_unknown_strategy_is_refused() -> None:
    """With those that there are."""
    with pytest.raises(OnewholeError):
        parse_wishes(TypedWishes(strategy="magic"))


def test_last_nights_do_not_come_again(tmp_path: Path) -> None:
    """Problems of every sheet that is named, the one that was answered too."""
    monday, tuesday = tmp_path / "monday.txt", tmp_path / "tuesday.txt"
    monday.write_text(NIGHT)
    tuesday.write_text("1. 6 - 2 3/4\n")
    found = parse_wishes(TypedWishes(not_again=(tuesday,), after=monday))
    assert found.avoid == ("6 - 2 3/4", "9 5/8 - 4 6/8", "5 4/6 - 2 1/6")
    assert found.questions == ()


def test_answers_leave_questions_open(tmp_path: Path) -> None:
    """A pupil who answers 5 1/8 - 2 5/8 as A01 and A02 both do leaves open which; the page will ask."""
    sheet, answers = tmp_path / "sheet.txt", tmp_path / "answers.csv"
    sheet.write_text("1. 5 1/8 - 2 5/8\n2. 7 2/8 - 3 6/8\n3. 5 4/6 - 2 1/6\n")
    answers.write_text("pupil,1,2,3\nK01,3 4/8,4 4/8,3 3/6\n")
    found = parse_wishes(TypedWishes(after=sheet, answers=answers))
    weights = {(one.first, one.second): one.weight for one in found.questions}
    assert weights[("A01",), ("A02",)] == max(weights.values())
