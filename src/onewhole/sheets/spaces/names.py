"""The same amount in another form: 3.NF.A.3, 4.NF.A.1, 4.NF.B.3.b, 4.NF.C.6 (CCSSM 2010)."""

from collections.abc import Iterator

from onewhole.sheets.spaces.amounts import decimals, fractions, mixed_numbers
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes


def equal_fractions(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield fractions to be cut finer or joined, whole numbers as fractions, and a whole opened."""
    for coarse in wishes.denominators:
        finer = [fine for fine in wishes.denominators if fine > coarse and fine % coarse == 0]
        if not finer:
            continue
        tops = range(1, coarse)
        yield ProblemForm("{0}", (tuple(f"{top}/{coarse} = ?/{fine}" for fine in finer for top in tops),))
        joined = tuple(f"{top * fine // coarse}/{fine} = ?/{coarse}" for fine in finer for top in tops)
        yield ProblemForm("{0}", (joined,))
    for denominator in wishes.denominators:
        yield ProblemForm(f"{{0}} = ?/{denominator}", (range(1, wishes.largest + 1),))
        opened = tuple(
            f"{wholes} {part} = {wholes - 1} ?/{denominator}"
            for wholes in range(2, wishes.largest + 1)
            for part in fractions(denominator)
        )
        yield ProblemForm("{0}", (opened,))


def other_names(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield fractions above one, mixed and whole numbers, decimals and fractions, with the name wanted."""
    for denominator in wishes.denominators:
        above = range(denominator + 1, min(wishes.largest + 1, 6) * denominator)
        tops = tuple(top for top in above if top % denominator)
        yield ProblemForm(f"{{0}}/{denominator} as a mixed number", (tops,))
        yield ProblemForm("{0} as a fraction", (mixed_numbers(denominator, wishes.largest),))
        yield ProblemForm("{0} in simplest form", (fractions(denominator),))
        yield ProblemForm(f"{{0}}/{denominator}", (tops,))
        yield ProblemForm("{0}", (mixed_numbers(denominator, wishes.largest),))
    yield ProblemForm("{0} as a fraction", (range(2, wishes.largest + 1),))
    yield from of_decimals(wishes)


def of_decimals(_: Wishes) -> Iterator[ProblemForm]:
    """Yield decimals as fractions, and tenths and hundredths as decimals: 4.NF.C.6."""
    yield ProblemForm("{0}", (decimals(1, 0),))
    yield ProblemForm("{0}", (decimals(2, 0),))
    yield ProblemForm("{0} as a fraction", (decimals(2, 0),))
    yield ProblemForm("{0} as a decimal", ((*fractions(10), *fractions(100)),))
