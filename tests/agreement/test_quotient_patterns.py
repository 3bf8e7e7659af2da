"""Quotients by another road: the definitions L01 to L12, M09 to M18 and V08 to V10 in plain numbers.

Source of the definitions: a second collection (``tests/outside/test_second_collection.py``); V08 to V10 are
ours.
"""

from fractions import Fraction
from itertools import product

from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from tests.kit.how_much import sample

WHOLE = ("L01", "L02", "L03", "L04", "L05", "L06", "L07", "L08", "L11", "L12", "M17")
PARTS = ("M09", "M10", "M11", "M12", "M13")


def said(number: int, left: int) -> str:
    """Write a quotient with its remainder."""
    return f"{number} r {left}" if left else str(number)


def defined(a: int, b: int) -> dict[str, str]:
    """What each rule writes for a / b."""
    q, r = divmod(a, b)
    if a < b:
        return {"M17": f"{b}/{a}"}
    one, digits = str(q), str(a)
    found = {"L07": said(q - 1, r + b)} if q > 1 else {}
    if one.strip("0") and "0" in one and q:
        found["L01"] = said(int(one.replace("0", "")), r)
    if r:
        found["L02"] = said(q, 0)
        found["L03"] = f"{said(q, 0)}.{r}"
    if q > 9:
        found["L04"] = said(int(one[::-1]), r)
        found["L11"] = said(a // 10 // b, a // 10 % b)
        if one[-2] != "0":
            found["L08"] = said(int(one[:-2] + str(int(one[-2]) - 1) + str(10 + int(one[-1]))), r)
    if b < 10 and len(digits) > 1:
        each = (int(d) // b if int(d) >= b else b // int(d) if d != "0" else 0 for d in digits)
        found["L05"] = said(int("".join(map(str, each))), 0)
        found["L06"] = said(int("".join(str(int(digit) // b) for digit in digits)), 0)
    if "0" in digits[1:-1]:
        found["L12"] = said(*divmod(int(digits[0] + digits[1:-1].replace("0", "") + digits[-1]), b))
    right = said(q, r)
    return {key: wrote for key, wrote in found.items() if wrote != right}


def test_every_rule_of_whole_numbers() -> None:
    """Up to four digits by one and by two; a rule that comes out right does not show."""
    bys = (*range(2, 10), *range(11, 100, 7))
    for a, b in product(range(3, 10_000, sample(271, 61, 7)), bys):
        slips = shows(read_statement(f"{a} / {b}"))
        found = {slip.pattern: text(slip.wrote) for slip in slips if slip.pattern in WHOLE}
        assert found == _alike(defined(a, b), a, b), (a, b)


def _alike(wanted: dict[str, str], a: int, b: int) -> dict[str, str]:
    """Leave out what has the right amount, other than a remainder that is too large."""
    right = Fraction(a, b)
    return {key: one for key, one in wanted.items() if key == "L07" or _worth(one, b) != right}


def _worth(wrote: str, b: int) -> Fraction:
    number, _, left = wrote.partition(" r ")
    return Fraction(number) + Fraction(int(left or 0), b)


def test_every_rule_of_fractions() -> None:
    """Fractions with bottoms up to six by one another."""
    one = [(n, d) for d in range(2, 7) for n in range(1, d)]
    for (n1, d1), (n2, d2) in list(product(one, one))[:: sample(7, 3, 1)]:
        wanted = {
            "M09": (d1 * n2, n1 * d2),
            "M10": (d1 * d2, n1 * n2),
            "M11": (n1 * n2, d1 * d2),
        }
        high, low, deep, flat = max(n1, n2), min(n1, n2), max(d1, d2), min(d1, d2)
        if high % low == 0 and deep % flat == 0:
            wanted["M12"] = (high // low, deep // flat)
        if d1 == d2 and n1 % n2 == 0:
            wanted["M13"] = (n1 // n2, d1)
        right = Fraction(n1 * d2, d1 * n2)
        slips = shows(read_statement(f"{n1}/{d1} / {n2}/{d2}"))
        found = {slip.pattern: text(slip.wrote) for slip in slips if slip.pattern in PARTS}
        assert found == {
            key: f"{top}/{bottom}" for key, (top, bottom) in wanted.items() if Fraction(top, bottom) != right
        }


def test_rules_of_one_fraction() -> None:
    """A whole number by a unit fraction, a fraction and a mixed number by a whole number."""
    for a, d in product(range(1, 10), range(2, 9)):
        (slip,) = [one for one in shows(read_statement(f"{a} / 1/{d}")) if one.pattern == "M14"]
        assert text(slip.wrote) == f"{a}/{d}"
        for n in range(1, d):
            found = by_id("M15").slip(read_statement(f"{n}/{d} / {a}"))
            assert (found and text(found.wrote)) == (f"{n * a}/{d}" if a > 1 else None)
            for wholes in range(a, 3 * a + 1, a):
                mixed = by_id("M18").slip(read_statement(f"{wholes} {n}/{d} / {a}"))
                assert (mixed and text(mixed.wrote)) == (f"{wholes // a} {n}/{d}" if a > 1 else None)


def test_rules_of_decimals_and_measures() -> None:
    """Each unit by itself, what is left as ten, and the point left out."""
    for feet, inches, by in product(range(1, 8), range(12), range(2, 6)):
        asked = read_statement(f"{feet} ft {inches} in / {by}")
        alone = by_id("V08").slip(asked)
        over = feet % by
        each = [f"{feet // by} ft" if feet // by else "", f"{inches // by} in" if inches // by else ""]
        shown = " ".join(filter(None, each))
        assert (alone and text(alone.wrote).replace(" 0 in", "").replace("0 ft ", "")) == (
            shown if over and shown else None
        )
        ten = by_id("V09").slip(asked)
        made = inches + 10 * over
        assert (ten is not None) == bool(over and made % by == 0)
    for tenths, by in product(range(11, 99), range(2, 10)):
        found = by_id("V10").slip(read_statement(f"{tenths // 10}.{tenths % 10} / {by}"))
        assert (found and text(found.wrote)) == (str(tenths // by) if tenths % by == 0 else None)
