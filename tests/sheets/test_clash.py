from collections.abc import Callable
from fractions import Fraction

import pytest

from onewhole.sheets.clash import Wish, clash
from onewhole.sheets.wishes import Review, Wishes
from onewhole.working.strategies.count_up import COUNT_UP

Fits = Callable[[Wishes], bool]
SHORT = Wishes(number=12, minutes=10)


def needs_a_minute_each(wishes: Wishes) -> bool:
    """A world in which nothing else matters."""
    return wishes.minutes is None or wishes.number <= wishes.minutes


def few_of_a_denominator(wishes: Wishes) -> bool:
    """A world with as many problems as pieces in all, for each whole."""
    return wishes.number <= sum(wishes.denominators) * wishes.largest


@pytest.mark.parametrize(
    ("wishes", "fits", "words", "names"),
    [
        (
            SHORT,
            needs_a_minute_each,
            (
                "10 minutes and 12 problems cannot both be met. "
                "The nearest that can: 12 minutes, or 10 problems."
            ),
            (Wish.MINUTES, Wish.NUMBER),
        ),
        (
            Wishes(number=12, denominators=(2,), largest=2),
            few_of_a_denominator,
            (
                "the denominator 2, wholes up to 2 and 12 problems cannot all be met. "
                "The nearest that can: the denominators 2, 3, 4, or wholes up to 6, or 4 problems."
            ),
            (Wish.DENOMINATORS, Wish.LARGEST, Wish.NUMBER),
        ),
        (
            Wishes(number=6, review=(Review.TENS, Review.OPENED), regrouping=Fraction(1, 6)),
            lambda one: one.kept_regrouping is None or len(one.review) <= one.kept_regrouping,
            (
                "review of tens and opened wholes and 1 problem with regrouping cannot both be met. "
                "The nearest that can: review of tens, or 2 problems with regrouping."
            ),
            (Wish.REVIEW, Wish.REGROUPING),
        ),
        (
            Wishes(number=6, avoid=("5 1/4 - 2 3/4",)),
            lambda one: not one.avoid,
            (
                "none of the last nights' problems cannot be met. "
                "The nearest that can: problems of the last nights again."
            ),
            (Wish.AVOID,),
        ),
        (
            Wishes(number=6, strategy=COUNT_UP),
            lambda one: one.strategy is not COUNT_UP,
            "the strategy count up cannot be met. The nearest that can: the strategy regroup first.",
            (Wish.STRATEGY,),
        ),
        (
            Wishes(number=2, review=(Review.TENS,)),
            lambda one: not one.review,
            "review of tens cannot be met. The nearest that can: no review.",
            (Wish.REVIEW,),
        ),
        (
            Wishes(minutes=1, number=1),
            lambda one: one.minutes is None,
            "1 minute cannot be met. Change more than one of these wishes.",
            (Wish.MINUTES,),
        ),
    ],
)
def test_what_clashes_and_what_is_nearest(
    wishes: Wishes, fits: Fits, words: str, names: tuple[Wish, ...]
) -> None:
    """The wishes that cannot be met together are named, each with the nearest that can."""
    found = clash(wishes, fits)
    assert str(found) == words
    assert found.names == names
    assert all(fits(near) for near in found.nearest)


def test_other_wishes_stay_as_they_are() -> None:
    """What is offered changes one wish only."""
    for near in clash(SHORT, needs_a_minute_each).nearest:
        assert (near.number == SHORT.number) != (near.minutes == SHORT.minutes)
        assert (near.skill, near.denominators, near.regrouping) == (
            SHORT.skill,
            SHORT.denominators,
            SHORT.regrouping,
        )


def test_what_is_named_cannot_be_made_smaller() -> None:
    """Dropping any one of the wishes named makes the rest fit."""
    asked: list[Wishes] = []

    def fits(wishes: Wishes) -> bool:
        asked.append(wishes)
        return few_of_a_denominator(wishes) or needs_a_minute_each(wishes)

    found = clash(Wishes(number=12, minutes=10, denominators=(2,), largest=1), fits)
    assert set(found.names) <= {Wish.DENOMINATORS, Wish.LARGEST, Wish.MINUTES, Wish.NUMBER}
    assert len(found.names) > 1
