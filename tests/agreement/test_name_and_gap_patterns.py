"""Two roads over other names of a number and missing numbers: the definitions in plain numbers and text."""

from collections.abc import Callable
from decimal import Decimal
from fractions import Fraction
from itertools import product
from math import gcd

import pytest

from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.slip import Slip
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_answer, read_statement
from onewhole.statements.statement import Relation

HERE = {letter: [pattern for pattern in patterns() if pattern.id[0] == letter] for letter in "OQ"}


def wrote(problem: str, letter: str) -> dict[str, str]:
    """Return what each pattern of a family writes on a problem."""
    statement = read_statement(problem)
    slips: list[Slip] = [slip for one in HERE[letter] if (slip := one.slip(statement))]
    return {slip.pattern: text(slip.wrote) for slip in slips if not isinstance(slip.wrote, Relation)}


def test_a_mixed_number_as_one_fraction() -> None:
    """O05 multiplies whole and numerator and adds the denominator."""
    for w, d in product(range(1, 8), (2, 3, 5, 8, 10)):
        for n in range(1, d):
            told = str(w * n + d)
            wanted = {} if w * n + d == w * d + n else {"O05": told}
            assert wrote(f"{w} {n}/{d} = ?/{d}", "O") == wanted
            whole = {key: f"{top}/{d}" for key, top in wanted.items()}
            assert wrote(f"{w} {n}/{d} as a fraction", "O") == whole


def test_a_fraction_as_a_mixed_number() -> None:
    """O08 to O11: n = q x d + r."""
    for d, n in product((2, 3, 4, 5, 8, 10), range(2, 50)):
        if n <= d:
            continue
        q, r = n // d, n % d
        wanted: dict[str, str] = {}
        if r:
            wanted |= {"O08": f"{q} {r}/{q}", "O11": str(q)}
        if n >= 10:
            first, rest = str(n)[0], int(str(n)[1:])
            wanted["O09"] = f"{first} {rest}/{d}" if rest else first
        if n > 2 * d:
            wanted["O10"] = f"1 {n - d}/{d}"
        right = Fraction(n, d)
        same = {key: sum(map(Fraction, told.split())) == right for key, told in wanted.items()}
        shown = {key: told for key, told in wanted.items() if same[key] == (key == "O10")}
        assert wrote(f"{n}/{d} = ?", "O") == shown
        assert wrote(f"{n}/{d} as a mixed number", "O") == shown


def test_simplest_form_and_decimals() -> None:
    """O15, O16, O18, O19 on every fraction below one whole with these denominators."""
    for d in (2, 4, 5, 6, 8, 10, 12, 16, 20):
        for n in range(1, d):
            wanted = {}
            common = gcd(n, d)
            if common > 1:
                wanted["O16"] = f"{n}/{d // common}"
                if n % 2 == d % 2 == 0 and common > 2:
                    wanted["O15"] = f"{n // 2}/{d // 2}"
            if d == 10 or (common == 1 and 1000 % d == 0):
                right = Decimal(n) / Decimal(d)
                decimals = {"O18": f"0.{n}{d}", "O19": f"0.{d}"}
                wanted |= {key: told for key, told in decimals.items() if Decimal(told) != right}
            assert wrote(f"{n}/{d} = ?", "O") == wanted, (n, d)
            simple = {key: told for key, told in wanted.items() if key in {"O15", "O16"}}
            assert wrote(f"{n}/{d} simplest", "O") == simple
            if 1000 * n % d == 0:
                right = Decimal(n) / Decimal(d)
                decimals = {"O18": f"0.{n}{d}", "O19": f"0.{d}"}
                pointed = {key: told for key, told in decimals.items() if Decimal(told) != right}
                assert wrote(f"{n}/{d} as a decimal", "O") == pointed


def test_a_decimal_as_a_fraction() -> None:
    """O21 and O23 on every decimal below one with one or two places, and some with three."""
    for digits in [*map(str, range(1, 10)), *(f"{n:02}" for n in range(1, 100)), "045", "125", "250"]:
        wanted = {}
        right = Fraction(f"0.{digits}")
        if digits[0] != "0" and Fraction(1, int(digits)) != right:
            wanted["O21"] = f"1/{int(digits)}"
        if len(digits) > 1 and Fraction(int(digits), 10) != right:
            wanted["O23"] = f"{int(digits)}/10"
        assert wrote(f"0.{digits} = ?", "O") == wanted, digits
        assert wrote(f"0.{digits} as a fraction", "O") == wanted, digits


NUMBERS = ("3", "8", "1/4", "2 3/4", "5 1/2", "0.5", "2.25")


#: A form, its pattern, and what is right and what is written from its two numbers.
FORMS: dict[str, tuple[str, Callable[[Fraction, Fraction], tuple[Fraction, Fraction]]]] = {
    "{a} + ? = {c}": ("Q01", lambda a, c: (c - a, a + c)),
    "? + {a} = {c}": ("Q01", lambda a, c: (c - a, a + c)),
    "? - {a} = {c}": ("Q02", lambda a, c: (c + a, abs(c - a))),
    "{a} - ? = {c}": ("Q03", lambda a, c: (a - c, a + c)),
}


@pytest.mark.parametrize("form", FORMS)
def test_one_missing_number(form: str) -> None:
    """Q01 to Q03 add or take the two numbers that are there."""
    key, made_of = FORMS[form]
    done = 0
    for one, other in product(NUMBERS, repeat=2):
        right, made = made_of(*(sum(map(Fraction, number.split()), Fraction(0)) for number in (one, other)))
        if right < 0 or {"/", "."} <= set(one + other):
            continue
        found = wrote(form.format(a=one, c=other), "Q")
        assert set(found) == ({key} if made != right else set())
        for told in found.values():
            answer = read_answer(told)
            assert isinstance(answer, Quantity)
            assert answer.value == made
            done += 1
    assert done > 5


def test_two_sides() -> None:
    """Q07 to Q09 on sums of small numbers; the gap must come right after the equals sign."""
    for a, b, c in product((1, 4, 7), (2, 4, 9), (2, 3, 5)):
        if a + b < c:
            continue
        wanted = {"Q07": a + b, "Q08": a + b + c, "Q09": a}
        assert wrote(f"{a} + {b} = ? + {c}", "Q") == {
            key: str(made) for key, made in wanted.items() if made != a + b - c
        }
        assert wrote(f"{a} + {b} = {c} + ?", "Q") == {}
        assert wrote(f"? + {c} = {a} + {b}", "Q") == {}


#: By their definitions, on one number of which a form is asked for: 2 3/4, 11/4 and 3/4 with w, n, d.
ASKED_FOR: tuple[tuple[str, dict[str, str]], ...] = (
    ("2 3/4 as a fraction", {"A24": "5/4", "A25": "6/4", "A26": "8/4", "A27": "23/4"}),
    ("11/4 as a mixed number", {"A28": "3 2/4"}),
    ("3/4 as a decimal", {"F08": "3.4", "F09": "0.3"}),
    ("11/4 as a decimal", {}),
    ("12/18 simplest", {}),
)


@pytest.mark.parametrize(("problem", "told"), ASKED_FOR)
def test_patterns_of_older_families_where_a_form_is_asked_for(problem: str, told: dict[str, str]) -> None:
    """A24 to A28, F08 and F09 show where their form is asked for, and nowhere else."""
    statement = read_statement(problem)
    shown = {pattern.id: pattern.slip(statement) for pattern in patterns() if pattern.id[0] in "AF"}
    assert {
        key: text(slip.wrote) for key, slip in shown.items() if slip and not isinstance(slip.wrote, Relation)
    } == told
