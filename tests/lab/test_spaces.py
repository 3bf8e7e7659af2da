"""Spaces of problems are listed whole."""

from collections import Counter
from itertools import islice

import pytest

from lab.spaces import additions, mixed_numbers, subtractions
from onewhole.number.ladder import Style
from onewhole.statements.statement import asked_quantities, meaning


def test_numbers_rise_and_are_written_the_usual_way() -> None:
    """Each once, from the smallest piece up."""
    numbers = list(mixed_numbers(6, 3))
    assert [number.value * 6 for number in numbers] == list(range(1, 24))
    assert all(number.ladder.style is Style.PLACES or number.counts[-1] for number in numbers)


@pytest.mark.parametrize(("denominator", "largest"), [(2, 1), (4, 3), (6, 2)])
def test_every_pair_once(denominator: int, largest: int) -> None:
    """As many as counting says: all ordered pairs, less pairs of whole numbers; differences not below 0."""
    count = denominator * (largest + 1) - 1
    pairs = count**2 - largest**2
    added, taken = list(additions([denominator], largest)), list(subtractions([denominator], largest))
    assert len(set(added)) == len(added) == pairs
    assert len(set(taken)) == len(taken) == (pairs + count - largest) // 2
    assert all(meaning(question) >= 0 for question in taken)  # type: ignore[operator]


def test_they_are_lazy_and_keep_the_denominator() -> None:
    """A space of hundredths gives its first problems without being held."""
    for question in islice(subtractions([100, 4], 200), 50):
        signed = asked_quantities(question)
        assert signed is not None
        styles = Counter(quantity.ladder.style for quantity, _ in signed)
        assert styles[Style.MIXED] >= 1
