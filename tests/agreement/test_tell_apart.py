"""How many patterns a problem tells apart: the counts of the collection come out of our patterns too.

The collection of patterns lists, for each denominator, the four problems on which the most subtraction
patterns give an answer of their own, computed by its own code. Its rows come out, every one and in their
order, under these conventions, which are therefore ours: answers are compared by amount; slips and forms
(A32 to A35) are left out; A24 and A25 take the smaller from the larger; a count below zero is no answer;
right by luck counts A28 where quotient and remainder are alike, and A04 and A27 in tenths.
"""

from collections import Counter
from fractions import Fraction

import pytest

from onewhole.misconceptions.attempt import answer_claim
from onewhole.misconceptions.catalogue import by_id, patterns, shows
from onewhole.misconceptions.pattern import Luck
from onewhole.statements.reading import read_answer, read_statement
from tests.agreement.by_definition import subtracted

#: Problem, patterns with an answer of their own, patterns that are right by luck.
#: Source: the collection's own list of problems that tell the most patterns apart (computed there).
ROWS = (
    ("9 1/3 - 3 2/3", 18, 0),
    ("8 1/3 - 3 2/3", 18, 0),
    ("9 1/3 - 6 2/3", 17, 1),
    ("6 1/3 - 3 2/3", 17, 1),
    ("9 1/4 - 6 2/4", 17, 0),
    ("9 1/4 - 3 2/4", 17, 0),
    ("6 1/4 - 3 2/4", 17, 0),
    ("8 1/4 - 4 2/4", 16, 1),
    ("9 3/5 - 5 4/5", 20, 0),
    ("9 1/5 - 6 2/5", 20, 0),
    ("7 3/5 - 3 4/5", 20, 0),
    ("9 3/5 - 1 4/5", 19, 0),
    ("9 4/6 - 4 5/6", 20, 0),
    ("9 3/6 - 5 4/6", 20, 0),
    ("9 3/6 - 4 4/6", 20, 0),
    ("8 3/6 - 4 4/6", 20, 0),
    ("9 5/8 - 6 6/8", 22, 0),
    ("9 5/8 - 4 6/8", 22, 0),
    ("9 2/8 - 4 3/8", 22, 0),
    ("9 2/8 - 3 3/8", 22, 0),
    ("9 7/10 - 5 8/10", 22, 2),
    ("9 7/10 - 4 8/10", 22, 2),
    ("9 7/10 - 3 8/10", 22, 2),
    ("9 6/10 - 7 9/10", 22, 2),
    ("9 7/12 - 6 8/12", 24, 0),
    ("9 7/12 - 4 9/12", 24, 0),
    ("9 4/12 - 6 5/12", 24, 0),
    ("8 7/12 - 5 8/12", 24, 0),
)
LEFT_OUT = ("A32", "A33", "A34", "A35")


@pytest.mark.parametrize(("problem", "own", "lucky"), ROWS)
def test_as_many_patterns_are_told_apart(problem: str, own: int, lucky: int) -> None:
    """Ours give as many answers of their own, and as many right by luck."""
    statement = read_statement(problem)
    kept = [pattern for pattern in patterns() if pattern.id not in LEFT_OUT]
    slips = [slip for pattern in kept if (slip := pattern.slip(statement))]
    times = Counter(answer_claim(slip.wrote) for slip in slips)
    assert sum(times[answer_claim(slip.wrote)] == 1 for slip in slips) == own
    assert sum(pattern.meets(statement) is Luck.RIGHT for pattern in kept) == lucky


#: Problem, right answer, pattern and what only that pattern writes. Chosen by computing all patterns.
ONLY_ITS_OWN = (
    ("2/8 - 1/6", "1/12", "A17", "10/24"),
    ("2/8 - 1/10", "3/20", "B02", "1/2"),
    ("2/8 - 1/6", "1/12", "B03", "1/24"),
    ("2/8 - 1/10", "3/20", "B04", "1/10"),
    ("2/8 - 1/10", "3/20", "B09", "1/8"),
    ("2/8 - 1/6", "1/12", "B10", "1/48"),
    ("1/8 + 2/6", "11/24", "B11", "5/24"),
    ("1/8 + 1/6", "7/24", "B12", "9/7"),
    ("1/8 + 1/8", "2/8", "B12", "9/9"),
    ("2/8 - 1/6", "1/12", "B12", "7/4"),
    ("2/8 - 1/8", "1/8", "B12", "7/6"),
    ("1/8 + 1/6", "7/24", "B13", "2/13"),
    ("1/8 + 1/8", "2/8", "B13", "2/15"),
    ("2/8 - 1/6", "1/12", "B13", "1/1"),
)


@pytest.mark.parametrize(("problem", "right", "key", "wrote"), ONLY_ITS_OWN)
def test_a_problem_on_which_only_one_pattern_writes_this(
    problem: str, right: str, key: str, wrote: str
) -> None:
    """Nobody else's answer is that amount, in any way to write it, and it is not the right one."""
    slips = shows(read_statement(problem))
    mine = by_id(key).slip(read_statement(problem))
    assert mine is not None
    assert mine.wrote == read_answer(wrote)
    amounts = {answer_claim(outcome) for outcome in mine.outcomes}
    others = {answer_claim(outcome) for slip in slips if slip.pattern != key for outcome in slip.outcomes}
    assert amounts.isdisjoint(others | {answer_claim(read_answer(right))})


@pytest.mark.parametrize("denominator", [3, 4, 5, 6, 8, 10, 12])
def test_the_listed_problems_are_the_best_by_definition_too(denominator: int) -> None:
    """Among all with 1 to 9 wholes that need regrouping, these four tell the most apart, in this order."""
    ranked = sorted(_ranked(denominator), reverse=True)[:4]
    listed = [(problem, own, lucky) for problem, own, lucky in ROWS if f"/{denominator} -" in problem]
    shown = [
        (f"{w1} {n1}/{denominator} - {w2} {n2}/{denominator}", own, -lucky)
        for own, lucky, w1, n1, w2, n2 in ranked
    ]
    assert shown == listed


def _ranked(d: int) -> list[tuple[int, int, int, int, int, int]]:
    found = []
    for w1 in range(1, 10):
        for w2 in range(1, w1):
            for n1 in range(1, d):
                for n2 in range(n1 + 1, d):
                    own, lucky = _counted(w1, n1, w2, n2, d)
                    found.append((own, -lucky, w1, n1, w2, n2))
    return found


def _counted(w1: int, n1: int, w2: int, n2: int, d: int) -> tuple[int, int]:
    right = Fraction((w1 - w2) * d + n1 - n2, d)
    answers = {key: a for key, a in subtracted(w1, n1, w2, n2, d).items() if key not in LEFT_OUT}
    times = Counter(amount for _, amount in answers.values())
    own = sum(times[amount] == 1 and amount != right for _, amount in answers.values())
    lucky = sum(amount == right for _, amount in answers.values())
    return own, lucky + (right // 1 == right % 1 * d) + 2 * (d == 10)
