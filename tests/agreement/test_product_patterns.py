"""Products by another road: the definitions K01 to K15 and M01 to M08 in plain whole numbers and strings.

Source of the definitions: a second collection (``tests/outside/test_second_collection.py``). What it leaves
open for a multiplier of two digits or more is ours: a rule about a digit is met in every row.
"""

from collections.abc import Callable
from fractions import Fraction
from itertools import product
from math import lcm

from onewhole.misconceptions.catalogue import patterns
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from tests.kit.how_much import sample

K, M = ([pattern for pattern in patterns() if pattern.id[0] == letter] for letter in "KM")
Digit = Callable[[int, int, int], int]


def long_way(top: int, by: int, digit: Digit, part: Callable[[int], tuple[int, int]]) -> int:
    """Multiply by each digit of the multiplier from the right, and add the rows, shifted."""
    whole = 0
    for shift, multiplier in enumerate(map(int, reversed(str(by)))):
        row, carry = "", 0
        digits = [int(one) for one in reversed(str(top))]
        for at, one in enumerate(digits):
            made = digit(one, multiplier, carry)
            if at == len(digits) - 1:
                row = f"{made}{row}"
            else:
                carry, kept = part(made)
                row = f"{kept}{row}"
        whole += int(row) * 10**shift
    return whole


def tens(made: int) -> tuple[int, int]:
    """Carry the tens, write the ones."""
    return made // 10, made % 10


def turned(made: int) -> tuple[int, int]:
    """Write the tens and carry the ones, from ten on."""
    return (made % 10, made // 10) if made >= 10 else (0, made)


def defined(a: int, b: int) -> dict[str, int]:
    """What each rule writes for a x b, the right answer among it."""
    top, by = (b, a) if len(str(a)) < len(str(b)) else (a, b)
    one, other = str(top), str(by)
    found = {
        "K01": long_way(top, by, lambda x, m, _: x * m, tens),
        "K02": long_way(top, by, lambda x, m, c: (x + c) * m, tens),
        "K10": long_way(top, by, lambda x, m, c: (x * m or x + m) + c, tens),
        "K12": int(one.rstrip("0")) * int(other.rstrip("0")),
        "K13": long_way(top, by, lambda x, m, c: x * m + c if x else 0, tens),
        "K15": top + by,
    }
    if len(other) == 1 < len(one):
        found["K03"] = int("".join(str(int(digit) * by) for digit in one))
        found["K04"] = long_way(top, by, lambda x, m, c: x * m + c, turned)
        found["K05"] = top % 10 * by + top // 10 * 10
        if len(one) == 2 and top % 10 * by >= 10:
            found["K06"] = top % 10 * by // 10 * (top // 10) * 10 + top % 10 * by % 10
    if len(other) > 1:
        found["K07"] = sum(top * int(digit) for digit in other)
    if len(one) == len(other) > 1:
        found["K08"] = sum(
            int(x) * int(y) * 10**at for at, (x, y) in enumerate(zip(one[::-1], other[::-1], strict=True))
        )
        if len(one) == 2:
            found["K09"] = (top // 10) * (by // 10) * 100 + (top % 10) * (by % 10)
    if "0" in one[1:-1]:
        found["K11"] = int(one.replace("0", "")) * by
    return found


def test_every_rule_of_whole_numbers() -> None:
    """On products of every shape up to four digits by three; a rule that comes out right does not show."""
    tops = (*range(2, 100, sample(13, 5, 1)), 101, 304, 407, 250, 478, 999, 1005, 3050, 7020, 9054)
    multipliers = (*range(2, 10), 10, 12, 20, 36, 45, 50, 99, 102, 208)
    done = 0
    for a, b in product(tops, multipliers):
        asked = read_statement(f"{a} x {b}")
        slips = {one.id: slip for one in K if (slip := one.slip(asked))}
        wanted = {key: str(made) for key, made in sorted(defined(a, b).items()) if made != a * b}
        assert {key: text(slip.wrote) for key, slip in slips.items()} == wanted, (a, b)
        done += len(wanted)
    assert done > 500


def fractions_defined(
    one: tuple[int, int, int], other: tuple[int, int, int]
) -> dict[str, tuple[int, int, int]]:
    """What each rule writes for w1 n1/d1 x w2 n2/d2, as wholes, top and bottom."""
    (w1, n1, d1), (w2, n2, d2) = one, other
    if w1 and w2:
        return {"M03": (w1 * w2, n1 * n2, d1 * d2), "M06": divided(w1 * n1 * w2 * n2, d1 * d2)}
    if w1 or w2:
        return {"M08": (w1 or w2, n1 * n2, d1 * d2)}
    found = {"M04": (0, d1 * n2, n1 * d2)}
    if d1 == d2:
        return found | {"M01": (0, n1 * n2, d1)}
    common = lcm(d1, d2)
    return found | {"M02": (0, n1 * (common // d1) * n2 * (common // d2), common)}


def divided(n: int, d: int) -> tuple[int, int, int]:
    """Full wholes and what is over."""
    return n // d, n % d, d


def test_every_rule_of_fractions() -> None:
    """On every two numbers of some wholes and some pieces."""
    parts = [(w, n, d) for w in (0, 2, 5) for d in (2, 3, 4, 8) for n in range(1, d)]
    done = 0
    for one, other in product(parts, repeat=2):
        asked = read_statement(f"{typed(*one)} x {typed(*other)}")
        slips = {pattern.id: slip for pattern in M if (slip := pattern.slip(asked))}
        right = worth(*one) * worth(*other)
        rules = sorted(fractions_defined(one, other).items())
        wanted = {key: typed(*made) for key, made in rules if worth(*made) != right}
        assert {key: text(slip.wrote) for key, slip in slips.items()} == wanted
        done += len(wanted)
    assert done > 1000


def typed(w: int, n: int, d: int) -> str:
    """A number as it is typed."""
    return str(w) if not n else f"{w} {n}/{d}" if w else f"{n}/{d}"


def worth(w: int, n: int, d: int) -> Fraction:
    """Its amount."""
    return w + Fraction(n, d)
