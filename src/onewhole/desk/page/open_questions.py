"""The open questions of a class: doubt between sets of patterns that a composed page can settle."""

from collections import defaultdict
from collections.abc import Iterable
from fractions import Fraction
from itertools import combinations

from onewhole.marking.diagnosis.diagnosis import Diagnosis

Doubt = dict[tuple[frozenset[str], frozenset[str]], Fraction]


def left_open(diagnoses: Iterable[Diagnosis]) -> Doubt:
    """Return how much doubt a class's answers leave between every two sets of patterns.

    For one pupil that is the product of the odds of both sets: how often one of two independent guesses by
    those odds says one and the other says the other. The pupils' doubts are added up.
    """
    doubt: Doubt = defaultdict(Fraction)
    for found in diagnoses:
        for one, other in combinations(found.odds, 2):
            first, second = sorted((one.patterns, other.patterns))
            doubt[frozenset(first), frozenset(second)] += one.probability * other.probability
    return dict(doubt)
