"""Sums and differences that others printed with their answers, worked in columns.

Sources: OpenStax Prealgebra 2e, sections Add Whole Numbers, Subtract Whole Numbers and Decimal Operations
(the numbers of its worked examples); Wikibooks, Basic Math for Adults; NAEP 2007 and 2009, grade 4 (U.S.
Department of Education); TIMSS 1995, grade 4, released items I9 and K2 (IEA); Progressions, Number and
Operations in Base Ten K-5, draft (from memory); CCSSM (2010), 5.OA.A.2, which leaves its sum to be computed.
"""

from fractions import Fraction

import pytest

from onewhole.number.quantity import Quantity
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.working import Working
from tests.kit.worked import question, tried

OPENSTAX = (
    ("17 + 26", "43"),
    ("28 + 61", "89"),
    ("43 + 69", "112"),
    ("324 + 586", "910"),
    ("1683 + 479", "2162"),
    ("21357 + 861 + 8596", "30814"),
    ("87 + 93 + 68 + 95 + 89", "432"),
    ("43 - 26", "17"),
    ("89 - 61", "28"),
    ("207 - 64", "143"),
    ("910 - 586", "324"),
    ("2162 - 479", "1683"),
    ("43 - 24", "19"),
    ("73 - 27", "46"),
    ("588 - 399", "189"),
    ("3.7 + 12.4", "16.1"),
    ("23.5 + 41.38", "64.88"),
    ("20 - 14.65", "5.35"),
)
WIKIBOOKS = (("134 + 937", "1071"), ("2594 - 1673", "921"))
NAEP = (("301 - 75", "226"), ("5237 + 10", "5247"))
TIMSS = (("6000 - 2369", "3631"), ("6971 + 5291", "12262"))
PROGRESSIONS = (("278 + 147", "425"), ("425 - 278", "147"))
STANDARDS = (("18932 + 921", "19853"),)


@pytest.mark.parametrize(
    ("problem", "answer"), OPENSTAX + WIKIBOOKS + NAEP + TIMSS + PROGRESSIONS + STANDARDS
)
def test_a_published_answer_is_reached(problem: str, answer: str) -> None:
    """Worked in columns, every line checked, the answer is the one that was printed."""
    working = tried(question(problem), COLUMNS)
    assert isinstance(working, Working)
    assert isinstance(working.answer, Quantity)
    assert working.answer.value == Fraction(answer)
