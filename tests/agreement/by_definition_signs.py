"""The patterns of comparing (N) once more, as their definitions say it, on numbers as they are typed.

Nothing of `onewhole.misconceptions` is used here: a number is its text, and values are fractions of strings.
"""

import re
from fractions import Fraction

#: What of a pattern's answer is asked: a sign by id.
Signs = dict[str, str]
INCHES = {"yd": 36, "ft": 12, "in": 1}
OPPOSITE = {"<": ">", ">": "<"}


def amount(typed: str) -> Fraction:
    """Read a whole number, a decimal, a fraction, a mixed number, or a measure in yards, feet and inches."""
    if typed[-1].isalpha():
        words = typed.split()
        return Fraction(sum(int(n) * INCHES[mark] for n, mark in zip(words[::2], words[1::2], strict=True)))
    return sum((Fraction(part) for part in typed.split()), Fraction(0))


def sign(one: Fraction | int, other: Fraction | int) -> str:
    """Write the sign that belongs between two amounts."""
    return "=" if one == other else "<" if one < other else ">"


def signs(left: str, right: str) -> Signs:
    """Write what each pattern of comparing writes, right ones by luck among them."""
    true = sign(amount(left), amount(right))
    found = {"N15": OPPOSITE[true]} if true in OPPOSITE else {}
    if left[-1].isalpha():
        (n1, mark1, *_), (n2, mark2, *_) = left.split(), right.split()
        return found | ({"N16": sign(int(n1), int(n2))} if mark1 != mark2 and n1 != n2 else {})
    if "/" in left + right:
        return found | _fractions(left, right)
    if "." in left + right:
        return found | _decimals(left, right)
    return found | ({"N14": sign(int(left[0]), int(right[0]))} if left[0] != right[0] else {})


def _fractions(left: str, right: str) -> Signs:
    parts = [re.fullmatch(r"(?:(\d+) ?)??(?:(\d+)/(\d+))?", typed) for typed in (left, right)]
    (w1, n1, d1), (w2, n2, d2) = ([int(part or 0) for part in one.groups()] for one in parts if one)
    found: Signs = {}
    if d1 and d2 and w1 == w2 > 0 and (n1, d1) != (n2, d2):
        found["N01"] = "="
        if d1 != d2:
            found["N03"] = sign(d1, d2)
        if n1 != n2:
            found["N04"] = sign(n1, n2)
    if w1 != w2 and 0 < n1 < d1 and 0 < n2 < d2:
        found["N02"] = sign(Fraction(n1, d1), Fraction(n2, d2))
    if not w1 and not w2:
        found["N06"] = sign(n2 + d2, n1 + d1)
    if d1 and not w1 and w2:
        found["N05"] = "<"
    if d2 and not w2 and w1:
        found["N05"] = ">"
    return found


def _decimals(left: str, right: str) -> Signs:
    (w1, _, after1), (w2, _, after2) = left.partition("."), right.partition(".")
    found: Signs = {}
    if len(after1) != len(after2):
        found["N12"] = sign(int(w1 + after1), int(w2 + after2))
    if w1 != w2 or not after1 or not after2:
        return found
    zeros = after1[0] == "0", after2[0] == "0"
    found["N08"] = sign(int(after1), int(after2)) if zeros[0] == zeros[1] else "<" if zeros[0] else ">"
    if amount(left) == amount(right) and len(after1) != len(after2):
        found["N09"] = sign(len(after1), len(after2))
    if "0" in after1 + after2:
        found["N10"] = sign(*(Fraction(f"0.{after.replace('0', '') or '0'}") for after in (after1, after2)))
    if max(len(after1), len(after2)) > 2:
        found["N11"] = sign(*(Fraction(f"0.{after[:2]}") for after in (after1, after2)))
    if int(after1) and int(after2):
        found["N13"] = sign(int(after2), int(after1))
    return found
