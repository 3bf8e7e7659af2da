"""Several steps: products and quotients beside sums, with brackets and without (5.OA.A.1, CCSSM 2010)."""

from collections.abc import Iterator

from onewhole.sheets.spaces.amounts import decimals, fractions
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

#: Factors that are known by heart, and numbers beside them. Common practice, no source.
FACTORS, MORE, TENS = range(2, 10), range(11, 60), range(20, 100)


def several_steps(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield shapes of two and three operations with whole numbers, then some with pieces and decimals."""
    for shape in ("{0} + {1} x {2}", "{0} - {1} x {2}"):
        yield ProblemForm(shape, (TENS, FACTORS, FACTORS))
    for shape in ("{0} x ({1} + {2})", "({1} - {2}) x {0}"):
        yield ProblemForm(shape, (FACTORS, MORE, FACTORS))
    for shape in ("{0} - ({1} + {2})", "{0} - ({1} - {2})", "{0} - {1} + {2}"):
        yield ProblemForm(shape, (TENS, MORE, FACTORS))
    exact = tuple(f"{by * times} / {by}" for by in FACTORS for times in FACTORS)
    for shape in ("{0} + {1}", "{0} - {1}", "{1} x {2}"):
        yield ProblemForm(shape, (TENS, exact, FACTORS))
    yield ProblemForm("{1} + {0} x ({2} - {3})", (FACTORS, exact, range(11, 20), FACTORS))
    for denominator in wishes.denominators:
        parts = fractions(denominator)
        yield ProblemForm("{0} x ({1} + {2})", (range(2, 6), parts, parts))
        yield ProblemForm("{0} - {1} x {2}", (range(3, 10), range(2, 4), parts))
    lengths = tuple(
        f"{feet} ft {inches} in" for feet in range(1, wishes.largest + 1) for inches in range(1, 12)
    )
    yield ProblemForm("{0} x ({1} + {2})", (range(2, 5), lengths, lengths))
    yield ProblemForm("{0} + {1} x {2}", (decimals(1, wishes.largest), FACTORS, decimals(1, 1)))
