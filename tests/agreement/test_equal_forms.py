"""Two roads over equal forms: every working of one number written another way, against ``fractions``.

The space: every fraction and mixed number to 2 wholes in the grade's denominators, in every form that it has
and with every denominator of the grade that counts it; every decimal of one or two places below 3. Here each
is worked once; ONEWHOLE_WHOLE_WALK=1 goes to 5 wholes and to denominators of 24.
"""

import os
from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise
from math import gcd

import pytest

from onewhole.number.ladder import Style, mixed
from onewhole.number.name_wanted import NoSuchNameError, NumberForm, has_form, named_as
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import AnotherName, MissingNumber
from onewhole.working.alone import joined_in_steps
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from tests.kit.exact import amount

WHOLE = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
WHOLES = 5 if WHOLE else 2
BOTTOMS = tuple(range(2, 25)) if WHOLE else (2, 3, 4, 5, 6, 8, 10, 12, 100)
#: Of hundredths only every so many, so that the walk stays short.
STRIDE = 1 if WHOLE else 13


def _fractions() -> Iterator[Quantity]:
    for bottom in (1, *BOTTOMS):
        for top in range(0, WHOLES * bottom, STRIDE if bottom > 24 else 1):
            yield Quantity(mixed(bottom), (None, top))
            if top >= bottom:
                yield Quantity(mixed(bottom), divmod(top, bottom))
                yield Quantity(mixed(bottom), (0, top))


def _names() -> Iterator[AnotherName]:
    decimals = [read_quantity(f"{n // 10}.{n % 10}") for n in range(1, 30)]
    decimals += [read_quantity(f"{n // 100}.{n % 100:02}") for n in range(1, 300, STRIDE)]
    for number in (*_fractions(), *decimals):
        for form in NumberForm:
            try:
                named_as(number, form)
            except NoSuchNameError:
                continue
            yield AnotherName(number, form)


def test_every_number_in_every_form() -> None:
    """Each line is worth the number, the last is the answer, has the form, and is what ``fractions`` says."""
    seen = 0
    for asked in _names():
        working = work(asked, REGROUP_FIRST)
        worth = sum(
            (
                Fraction(n) * unit.size
                for n, unit in zip(asked.number.amounts, asked.number.ladder.units, strict=True)
            ),
            Fraction(0),
        )
        last = working.lines[-1].says
        assert isinstance(working.answer, Quantity)
        assert last == working.answer == answer(asked)
        assert all(amount(line.says) == worth for line in working.lines)  # type: ignore[arg-type]
        assert has_form(working.answer, asked.wanted)
        top, bottom = worth.numerator, worth.denominator
        match asked.wanted:
            case NumberForm.SIMPLEST if working.answer.ladder.style is Style.MIXED:
                assert working.answer.ladder.denominator == bottom
            case NumberForm.MIXED:
                wholes, rest = divmod(worth, 1)
                assert working.answer.only(0).value == wholes or working.answer.ladder.style is Style.PLACES
                assert working.answer.value - wholes == rest
            case NumberForm.DECIMAL:
                assert working.answer.value == Fraction(top, bottom)
            case _:
                pass
        assert all(line.because is not None for line in working.lines[1:])
        assert len(working.lines) > 1
        seen += 1
    assert seen > 400


def test_every_fraction_with_every_denominator() -> None:
    """n/d = ?/D and n/d = N/?: the number in the blank by cross product, no line said twice."""
    seen = 0
    for bottom in BOTTOMS:
        for top in range(1, 2 * bottom, STRIDE if bottom > 24 else 1):
            for other in BOTTOMS:
                new, uneven = divmod(top * other, bottom)
                if uneven or other == bottom:
                    continue
                for typed, wanted in (
                    (f"{top}/{bottom} = ?/{other}", new),
                    (f"{top}/{bottom} = {new}/?", other),
                ):
                    asked = read_statement(typed)
                    working = work(asked, REGROUP_FIRST)
                    assert isinstance(working.answer, Quantity)
                    assert working.answer.value == wanted
                    rests = [line.says.rest for line in working.lines if isinstance(line.says, MissingNumber)]
                    assert {amount(rest) for rest in rests} == {Fraction(top, bottom)}
                    assert rests[-1] == Quantity(mixed(other), (None, new))
                    assert all(one != other_ for one, other_ in pairwise(rests))
                    seen += 1
    assert seen > 450


def test_joining_in_steps_ends_where_joining_at_once_does() -> None:
    """By one prime factor after another: as many lines as prime factors, and the same answer."""
    seen = 0
    for bottom in range(2, 49):
        for top in range(1, bottom):
            shared = gcd(top, bottom)
            asked = read_statement(f"{top}/{bottom} simplest")
            assert isinstance(asked, AnotherName)
            found = joined_in_steps(asked)
            primes = [p for p in range(2, shared + 1) if all(p % q for q in range(2, p))]
            count = sum(1 for p in primes for power in range(1, 7) if shared % p**power == 0)
            assert (found is None) == (count < 2)
            if found is not None:
                assert len(found.lines) == count + 1
                assert found.answer == work(asked, REGROUP_FIRST).answer
                seen += 1
    assert seen > 100


@pytest.mark.parametrize(
    ("problem", "right", "source"),
    [
        ("1/2 = ?/4", "2", "CCSSM (2010) 3.NF.A.3.b"),
        ("4/6 = ?/3", "2", "CCSSM (2010) 3.NF.A.3.b"),
        ("3 as a fraction", "3/1", "CCSSM (2010) 3.NF.A.3.c"),
        ("6/1 simplest", "6", "CCSSM (2010) 3.NF.A.3.c"),
        ("4/4 = ?", "1", "CCSSM (2010) 3.NF.A.3.c"),
        ("3/10 = ?/100", "30", "CCSSM (2010) 4.NF.C.5"),
        ("62/100 as a decimal", "0.62", "CCSSM (2010) 4.NF.C.6"),
        ("1/2 = ?/20", "10", "OpenStax Prealgebra 2e, Visualize Fractions, example 13"),
        ("2/5 = ?/15", "6", "OpenStax Prealgebra 2e, Visualize Fractions, example 14"),
        ("2/7 = ?/21", "6", "OpenStax Prealgebra 2e, Visualize Fractions, example 15"),
        ("10/15 simplest", "2/3", "OpenStax Prealgebra 2e, Multiply and Divide Fractions, example 1"),
        ("18/24 simplest", "3/4", "OpenStax Prealgebra 2e, Multiply and Divide Fractions, example 2"),
        ("56/32 simplest", "7/4", "OpenStax Prealgebra 2e, Multiply and Divide Fractions, example 3"),
        ("210/385 simplest", "6/11", "OpenStax Prealgebra 2e, Multiply and Divide Fractions, example 4"),
        ("1/4 = ?/12", "3", "OpenStax Prealgebra 2e, Different Denominators, example 3"),
        ("8/15 = ?/120", "64", "OpenStax Prealgebra 2e, Different Denominators, example 4"),
        ("11/24 = ?/120", "55", "OpenStax Prealgebra 2e, Different Denominators, example 4"),
        ("33/8 as a mixed number", "4 1/8", "OpenStax Prealgebra 2e, Visualize Fractions, example 10"),
        ("4 2/3 as a fraction", "14/3", "OpenStax Prealgebra 2e, Visualize Fractions, example 11"),
        ("10 2/7 as a fraction", "72/7", "OpenStax Prealgebra 2e, Visualize Fractions, example 12"),
        ("7/2 as a mixed number", "3 1/2", "OpenStax Prealgebra 2e, Visualize Fractions, example 16"),
        ("4.09 as a mixed number", "4 9/100", "OpenStax Prealgebra 2e, Decimals, example 4"),
        ("0.286 as a fraction", "286/1000", "OpenStax Prealgebra 2e, Decimals, example 4"),
        ("14 37/100 as a decimal", "14.37", "OpenStax Prealgebra 2e, Decimals, example 2"),
        ("24/1000 as a decimal", "0.024", "OpenStax Prealgebra 2e, Decimals, example 3"),
    ],
)
def test_published_examples(problem: str, right: str, source: str) -> None:
    """What the standards and an open textbook give (numbers only; the book is CC BY-NC-SA 4.0)."""
    assert source
    working = work(read_statement(problem), REGROUP_FIRST)
    assert working.answer == read_quantity(right)
