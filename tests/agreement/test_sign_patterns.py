"""Two roads over comparisons: each pattern by what it looks at and by its definition."""

from collections import Counter
from itertools import product

import pytest

from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Luck
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Relation
from tests.agreement.by_definition_signs import amount, sign, signs

SIGNS = [pattern for pattern in patterns() if pattern.id[0] == "N"]
FRACTIONS = [f"{n}/{d}" for d in (2, 3, 4) for n in range(1, d)]
SPACES = {
    "mixed": [
        *(f"{w} {one}" for w in (1, 2) for one in FRACTIONS),
        *FRACTIONS,
        "7/3",
        "4/2",
        "9/4",
        "2",
        "3",
    ],
    "decimals": [
        *(f"{w}.{after}" for w in (0, 4) for after in ("0", "5", "05", "50", "8", "45", "452", "005", "080")),
        "4",
        "12",
        "4.10",
    ],
    "measures": ["5 ft", "61 in", "2 yd", "20 in", "2 ft", "1 yd 1 ft", "4 ft 11 in", "1 ft 8 in"],
    "whole numbers": ["7", "12", "36", "99", "100", "452", "999", "1001", "4520"],
}


@pytest.mark.parametrize("space", SPACES)
def test_comparisons_agree(space: str) -> None:
    """N01 to N16 write what their definitions say, and are right by luck where those are right."""
    done: Counter[str] = Counter()
    for left, right in product(SPACES[space], repeat=2):
        statement = read_statement(f"{left} ? {right}")
        wanted, true = signs(left, right), sign(amount(left), amount(right))
        slips = {pattern.id: slip.wrote for pattern in SIGNS if (slip := pattern.slip(statement))}
        assert slips == {key: Relation(said) for key, said in wanted.items() if said != true}, (left, right)
        lucky = {pattern.id for pattern in SIGNS if pattern.meets(statement) is Luck.RIGHT}
        assert lucky == {key for key, said in wanted.items() if said == true}, (left, right)
        done.update(slips.keys())
    found = {
        "mixed": {"N01", "N02", "N03", "N04", "N05", "N06", "N15"},
        "decimals": {"N08", "N09", "N10", "N11", "N12", "N13", "N14", "N15"},
        "measures": {"N15", "N16"},
        "whole numbers": {"N14", "N15"},
    }
    assert set(done) == found[space]
