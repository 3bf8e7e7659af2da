from fractions import Fraction

import pytest

from onewhole.errors import InputError
from onewhole.sheets.wishes import OpenQuestion, Review, WishError, Wishes, open_questions

HALF = Fraction(1, 2)


@pytest.mark.parametrize(
    ("wish", "words"),
    [
        ({"number": 0}, "the number of problems is 0. Wish for a number from 1 to 40."),
        ({"number": 41}, "the number of problems is 41. Wish for a number from 1 to 40."),
        ({"largest": 13}, "the largest whole is 13. Wish for a number from 1 to 12."),
        ({"minutes": 0}, "the minutes is 0. Wish for a number from 1 to 240."),
        ({"seed": -1}, "the seed is -1. Wish for a number from 0 to 999999999."),
        (
            {"regrouping": Fraction(3, 2)},
            "the share that needs regrouping is 3/2. Wish for a share from 0 to 1, such as 2/3.",
        ),
        (
            {"denominators": (4, 7)},
            "grade 4 does not meet the denominator 7. Wish for some of 2, 3, 4, 5, 6, 8, 10, 12, 100.",
        ),
        (
            {"denominators": ()},
            "no denominator is wished for. Wish for some of 2, 3, 4, 5, 6, 8, 10, 12, 100.",
        ),
        (
            {"number": 2, "review": (Review.TENS, Review.TENS)},
            "2 review problems leave no room on a page of 2. Wish for more problems or for less review.",
        ),
    ],
)
def test_a_wish_that_no_page_can_meet_is_refused(wish: dict[str, object], words: str) -> None:
    """Each by itself, in plain words, with what to wish for."""
    with pytest.raises(WishError) as refused:
        Wishes(**wish)  # type: ignore[arg-type] # one wish of each type
    assert str(refused.value) == words


def test_a_problem_to_avoid_has_to_be_one() -> None:
    """What cannot be read is refused as everywhere."""
    with pytest.raises(InputError):
        Wishes(avoid=("nine",))


def test_sets_are_put_in_order_and_problems_are_written_one_way() -> None:
    """So that the same wishes are equal however they are said."""
    one = Wishes(denominators=(8, 4, 8), avoid=("9 5/8-4 6/8", "9 5/8 − 4 6/8"))
    assert one.denominators == (4, 8)
    assert one.avoid == ("9 5/8 - 4 6/8",)
    first, second = OpenQuestion((), ("A01",), 3), OpenQuestion(("A02",), ("A01",), 5)
    assert Wishes(questions=(first, second)) == Wishes(questions=(second, first))


@pytest.mark.parametrize(
    ("number", "share", "count"),
    [
        (12, Fraction(2, 3), 8),
        (8, Fraction(2, 3), 5),
        (4, Fraction(1, 10), 1),
        (4, Fraction(9, 10), 3),
        (4, Fraction(0), 0),
        (4, Fraction(1), 4),
        (1, HALF, 1),
        (5, HALF, 3),
    ],
)
def test_the_nearest_count_to_a_share(number: int, share: Fraction, count: int) -> None:
    """Both kinds stay on a page of several, unless the share is 0 or 1."""
    assert Wishes(number=number, regrouping=share).kept_regrouping == count


def test_an_open_share_keeps_nothing() -> None:
    """None is as it comes."""
    assert Wishes(regrouping=None).kept_regrouping is None


@pytest.mark.parametrize(
    ("first", "second", "weight"),
    [((), (), 1), (("A01",), ("A01",), 1), (("A01",), (), 0), (("A01", "A02", "A03"), (), 1)],
)
def test_no_open_question(first: tuple[str, ...], second: tuple[str, ...], weight: int) -> None:
    """Two different sets of at most two patterns, and a weight."""
    with pytest.raises(WishError, match="is no open question"):
        OpenQuestion(first, second, weight)


def test_doubt_becomes_thousandths() -> None:
    """The weightiest first; one set twice, and what is next to nothing, is left out."""
    a, b, none = frozenset({"A01"}), frozenset({"A02"}), frozenset[str]()
    found = open_questions(
        {(a, b): HALF, (b, a): HALF, (none, a): Fraction(1), (none, b): Fraction(1, 9999), (a, a): HALF}
    )
    assert [(one.first, one.second, one.weight) for one in found] == [
        ((), ("A01",), 499),
        (("A01",), ("A02",), 499),
    ]
    assert open_questions({}) == ()
    assert open_questions({(a, b): Fraction(0)}) == ()


def test_only_the_weightiest_questions_are_kept() -> None:
    """Forty at most, so that a recipe stays a line."""
    keys = [f"A{at:02}" for at in range(1, 13)]
    doubt = {
        (frozenset({one}), frozenset({other})): Fraction(at + 1)
        for at, (one, other) in enumerate((x, y) for x in keys for y in keys if x < y)
    }
    found = open_questions(doubt)
    assert len(found) == 40
    assert found[0].weight == max(one.weight for one in found)
