"""Two roads over missing numbers and three numbers: every form on every kind, against ``fractions``.

The space: the forms below with each choice of numbers of one kind; ONEWHOLE_WHOLE_WALK=1 takes more numbers.
"""

import os
from collections.abc import Callable
from fractions import Fraction
from itertools import product

import pytest

from onewhole.misconceptions.catalogue import patterns
from onewhole.number.quantity import Quantity
from onewhole.pictures.choosing import picture
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import MissingNumber, Question
from onewhole.statements.tokens import ReadingError
from onewhole.working.questions import work_as_taught
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import USUAL
from onewhole.working.work import work
from tests.kit.exact import amount

WHOLE = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
KINDS = {
    "whole": ("7", "19", "45", "304") + (("68", "1250") if WHOLE else ()),
    "decimal": ("0.4", "1.75", "4.2") + (("12", "3.08") if WHOLE else ()),
    "like": ("3/8", "2 5/8", "5 1/8", "9") + (("7/8", "4 4/8") if WHOLE else ()),
    "unlike": ("1/2", "2 2/3", "5 1/4") + (("7/12", "3 5/6") if WHOLE else ()),
    "length": ("8 in", "2 ft 7 in", "5 ft 2 in") + (("1 yd 1 ft", "11 ft") if WHOLE else ()),
    "time": ("35 min", "1 h 50 min", "3 h 20 min") + (("45 s", "2 min 15 s") if WHOLE else ()),
}
#: Each form with what the gap is worth, from a, b and c.
FORMS: dict[str, Callable[[Fraction, Fraction, Fraction], Fraction]] = {
    "{a} + ? = {c}": lambda a, _b, c: c - a,
    "? + {a} = {c}": lambda a, _b, c: c - a,
    "{c} = ? + {a}": lambda a, _b, c: c - a,
    "{a} - ? = {c}": lambda a, _b, c: a - c,
    "? - {a} = {c}": lambda a, _b, c: a + c,
    "{a} + ? + {b} = {c}": lambda a, b, c: c - a - b,
    "? + {a} + {b} = {c}": lambda a, b, c: c - a - b,
    "{a} - ? - {b} = {c}": lambda a, b, c: a - b - c,
    "{a} - {b} - ? = {c}": lambda a, b, c: a - b - c,
    "? - {a} - {b} = {c}": lambda a, b, c: a + b + c,
    "{a} + {b} = ? + {c}": lambda a, b, c: a + b - c,
    "{a} - ? = {b} + {c}": lambda a, b, c: a - b - c,
}


@pytest.mark.parametrize("kind", KINDS)
def test_every_form_of_every_kind(kind: str) -> None:
    """The answer, and every line with the gap alone: its other side is worth what the gap is worth."""
    seen = pictured = 0
    for form, found in FORMS.items():
        for a, b, c in product(KINDS[kind], repeat=3):
            if "{b}" not in form and b != KINDS[kind][0]:
                continue
            worth = found(*(amount(read_quantity(one)) for one in (a, b, c)))
            typed = form.format(a=a, b=b, c=c)
            if worth < 0:
                with pytest.raises(ReadingError):
                    read_statement(typed)
                continue
            asked = read_statement(typed)
            working = work(asked, USUAL)
            assert isinstance(working.answer, Quantity)
            assert amount(working.answer) == worth, typed
            right = answer(asked)
            assert isinstance(right, Quantity)
            assert amount(right) == worth, typed
            alone = [line.says for line in working.lines[1:] if isinstance(line.says, MissingNumber)]
            assert all(not says.beside and amount(says.rest) == worth for says in alone), typed
            assert all(line.because is not None for line in working.lines[1:])
            pictured += picture(working) is not None
            seen += 1
    assert seen > 60
    assert pictured > seen // 3


#: Sums of three numbers and what they come to.
SUMS = {"{a} + {b} + {c}": (1, 1, 1), "{a} + {b} - {c}": (1, 1, -1), "{a} - {b} - {c}": (1, -1, -1)}


@pytest.mark.parametrize("kind", KINDS)
def test_three_numbers_of_every_kind(kind: str) -> None:
    """From left to right, added and taken away; U01 leaves the last one out, U02 adds it."""
    by = {pattern.id: pattern for pattern in patterns() if pattern.id in {"U01", "U02"}}
    seen = 0
    for form, signs in SUMS.items():
        for typed in product(KINDS[kind], repeat=3):
            a, b, c = (sign * amount(read_quantity(one)) for sign, one in zip(signs, typed, strict=True))
            if min(a, a + b, a + b + c) < 0:
                continue
            asked = read_statement(form.format(**dict(zip("abc", typed, strict=True))))
            assert isinstance(asked, Question)
            working = work_as_taught(asked, REGROUP_FIRST)
            assert isinstance(working.answer, Quantity)
            assert amount(working.answer) == a + b + c
            assert all(amount(line.says) == a + b + c for line in working.lines)  # type: ignore[arg-type]
            wanted = {"U01": a + b} | ({"U02": a + b - c} if signs == (1, 1, -1) else {})
            slips = {key: slip for key, one in by.items() if (slip := one.slip(asked))}
            wrote = {key: slip.wrote for key, slip in slips.items()}
            assert {key: one.value for key, one in wrote.items() if isinstance(one, Quantity)} == wanted
            seen += 1
    assert seen > 30


def test_one_of_three_addends_by_wrong_rules() -> None:
    """Q01 adds all that is there; U03 takes only the first of the known numbers away."""
    by = {pattern.id: pattern for pattern in patterns() if pattern.id in {"Q01", "U03"}}
    seen = 0
    for kind, numbers in KINDS.items():
        for a, b, c in product(numbers, repeat=3):
            first, second, total = (amount(read_quantity(one)) for one in (a, b, c))
            if total < first + second:
                continue
            asked = read_statement(f"{a} + ? + {b} = {c}")
            for key, worth in (("Q01", first + second + total), ("U03", total - first)):
                slip = by[key].slip(asked)
                assert slip is not None, (kind, a, b, c)
                assert isinstance(slip.wrote, Quantity)
                assert amount(slip.wrote) == worth != Fraction(total - first - second)
                seen += 1
    assert seen > 20
