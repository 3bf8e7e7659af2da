"""The name that is wanted of a number: what it is, who has it, and what has none."""

from fractions import Fraction
from math import gcd

import pytest

from onewhole.number.ladder import Style, measure, mixed
from onewhole.number.name_wanted import NoSuchNameError, NumberForm, Wanted, has_form, named_as
from onewhole.number.quantity import NotOnLadderError, Quantity
from onewhole.number.unit import KindError
from onewhole.statements.reading import read_quantity
from tests.kit.numbers import every_mixed_number

PREALGEBRA = "OpenStax Prealgebra 2e"
CCSSM = "Common Core State Standards for Mathematics (2010)"


@pytest.mark.parametrize(
    ("given", "form", "name", "source"),
    [
        ("12/18", NumberForm.SIMPLEST, "2/3", "the example of the task"),
        ("10/15", NumberForm.SIMPLEST, "2/3", PREALGEBRA),
        ("18/24", NumberForm.SIMPLEST, "3/4", PREALGEBRA),
        ("56/32", NumberForm.SIMPLEST, "7/4", PREALGEBRA),
        ("210/385", NumberForm.SIMPLEST, "6/11", PREALGEBRA),
        ("4/6", NumberForm.SIMPLEST, "2/3", f"{CCSSM}, 3.NF.A.3.b"),
        ("6/1", NumberForm.SIMPLEST, "6", f"{CCSSM}, 3.NF.A.3.c"),
        ("4/4", NumberForm.SIMPLEST, "1", f"{CCSSM}, 3.NF.A.3.c"),
        ("3", NumberForm.FRACTION, "3/1", f"{CCSSM}, 3.NF.A.3.c"),
        ("3/2", NumberForm.MIXED, "1 1/2", PREALGEBRA),
        ("8/5", NumberForm.MIXED, "1 3/5", PREALGEBRA),
        ("7/3", NumberForm.MIXED, "2 1/3", PREALGEBRA),
        ("4/3", NumberForm.MIXED, "1 1/3", PREALGEBRA),
        ("11/8", NumberForm.MIXED, "1 3/8", PREALGEBRA),
        ("11/6", NumberForm.MIXED, "1 5/6", PREALGEBRA),
        ("33/8", NumberForm.MIXED, "4 1/8", PREALGEBRA),
        ("7/2", NumberForm.MIXED, "3 1/2", PREALGEBRA),
        ("1 4/5", NumberForm.FRACTION, "9/5", PREALGEBRA),
        ("4 2/3", NumberForm.FRACTION, "14/3", PREALGEBRA),
        ("10 2/7", NumberForm.FRACTION, "72/7", PREALGEBRA),
        ("62/100", NumberForm.DECIMAL, "0.62", f"{CCSSM}, 4.NF.C.6"),
        ("24/1000", NumberForm.DECIMAL, "0.024", PREALGEBRA),
        ("4.09", NumberForm.MIXED, "4 9/100", PREALGEBRA),
        ("3.7", NumberForm.MIXED, "3 7/10", PREALGEBRA),
        ("0.286", NumberForm.FRACTION, "286/1000", PREALGEBRA),
        ("286/1000", NumberForm.SIMPLEST, "143/500", PREALGEBRA),
        ("3 ft", measure("in"), "36 in", f"{CCSSM}, 4.MD.A.1: 1 ft is 12 times as long as 1 in"),
        ("26 in", measure("ft", "in"), "2 ft 2 in", "the example of the task"),
        ("24 in", measure("ft", "in"), "2 ft 0 in", "by 12 inches a foot"),
    ],
)
def test_the_name_is_the_one_that_is_wanted(given: str, form: Wanted, name: str, source: str) -> None:
    """What books and the standards write, and what has the form."""
    assert source
    number, wanted = read_quantity(given), read_quantity(name)
    assert named_as(number, form) == wanted
    assert has_form(wanted, form)
    assert not has_form(number, form)


@pytest.mark.parametrize(
    ("given", "form"),
    [
        ("52", NumberForm.SIMPLEST),
        ("0.5", NumberForm.SIMPLEST),
        ("3/4", NumberForm.MIXED),
        ("2 3/4", NumberForm.MIXED),
        ("5", NumberForm.MIXED),
        ("0.75", NumberForm.MIXED),
        ("11/4", NumberForm.FRACTION),
        ("1/3", NumberForm.DECIMAL),
        ("1/16", NumberForm.DECIMAL),
        ("0.5", NumberForm.DECIMAL),
        ("3 ft", NumberForm.MIXED),
        ("3 ft", measure("ft")),
    ],
)
def test_what_has_no_such_name_is_refused(given: str, form: Wanted) -> None:
    """It has none, or it is written so already; the refusal says what to write."""
    with pytest.raises(NoSuchNameError) as refused:
        named_as(read_quantity(given), form)
    assert refused.value.remedy


def test_units_that_do_not_fit_are_refused() -> None:
    """26 inches are no whole number of feet, and no pounds at all."""
    with pytest.raises(NotOnLadderError):
        named_as(read_quantity("26 in"), measure("ft"))
    with pytest.raises(KindError):
        named_as(read_quantity("26 in"), measure("lb"))


def test_every_number_by_another_road() -> None:
    """Each fraction and mixed number to 3 wholes and twelfths, against ``fractions`` and ``gcd``."""
    seen = 0
    for bottom in range(2, 13):
        fractions = [Quantity(mixed(bottom), (None, top)) for top in range(1, 3 * bottom + 1)]
        for number in (*fractions, *every_mixed_number(bottom, 3)):
            if number.ladder.style is not Style.MIXED:
                continue
            amount = Fraction(number.parts, bottom)
            for form in NumberForm:
                try:
                    name = named_as(number, form)
                except NoSuchNameError:
                    continue
                seen += 1
                assert name.value == amount
                assert has_form(name, form)
                if form is NumberForm.SIMPLEST and name.ladder.style is Style.MIXED:
                    assert gcd(name.amounts[1], name.ladder.denominator) == 1
                    assert name.ladder.denominator == amount.denominator
                if form is NumberForm.DECIMAL:
                    assert (amount * 10**name.ladder.after).denominator == 1
    assert seen > 1000
