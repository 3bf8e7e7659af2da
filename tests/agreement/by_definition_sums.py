"""The patterns of adding once more, as their definitions say it, by digits in strings.

Nothing of `onewhole.misconceptions` is used here. The definitions are those of a second collection of error
patterns. Where they leave something open, the reading is the one under which its own examples and the
problems that tell its patterns apart come out (`tests/outside/test_second_collection.py`).
"""

from decimal import Decimal


def answers(first: int, second: int) -> dict[str, int]:
    """Answer first + second by every pattern that applies, right ones by luck among them."""
    one, other = str(first), str(second)
    wide = max(len(one), len(other))
    rows = one.rjust(wide), other.rjust(wide)
    made = [sum(int(digit) for digit in column if digit != " ") for column in zip(*rows, strict=True)]
    ten = any(total >= 10 for total in made[1:])
    found = _carried_wrongly(first, second, rows, made) if ten else {}
    if ten:
        found["H01"] = int(str(made[0]) + "".join(str(total)[-1] for total in made[1:]))
        found["H02"] = int("".join(map(str, made)))
    if len(one) != len(other):
        found["H06"] = int(one.ljust(wide, "0")) + int(other.ljust(wide, "0"))
    if wide > 1:
        found["H11"] = sum(map(int, one + other))
        if 1 in {len(one), len(other)}:
            found["H13"] = max(first, second) + sum(min(first, second) * 10**at for at in range(wide))
    if len(str(first + second)) > wide:
        found["H10"] = int(str(first + second)[1:])
    if any(total >= 10 for total in made[:-1]):
        found["H12"] = _from_the_left(made)
    if any("0" in column and " " not in column for column in zip(*rows, strict=True)):
        found["H08"] = _zeros(rows)
    coming = [_coming(first, second, at) for at in range(wide)]
    if 0 in coming[1:]:
        found["H03"] = _always(made)
    return found


def _coming(first: int, second: int, at: int) -> int:
    """What the right sum carries into a place: the rest of both numbers below it makes one of it."""
    one: int = 10**at
    return (first % one + second % one) // one


def _carried_wrongly(first: int, second: int, rows: tuple[str, str], made: list[int]) -> dict[str, int]:
    """Answer by the patterns that need a carry."""
    wide = len(made)
    coming = [_coming(first, second, at) for at in range(wide)]
    found = {"H04": _two_left(made), "H05": _ones_on(made), "H07": _twice(made)}
    if sum(coming) > 1:
        found["H09"] = _only_the_first(made)
    if any(coming[at] and " " in (rows[0][-1 - at] + rows[1][-1 - at]) for at in range(wide)):
        found["H14"] = _not_over_blanks(rows, made)
    return found


def _two_left(made: list[int]) -> int:
    """A ten of a column is worth a hundred of it when it lands two columns to the left."""
    total, landing = 0, dict.fromkeys(range(len(made) + 2), 0)
    for at, here in enumerate(reversed(made)):
        count = here + landing[at]
        total += count % 10 * 10**at
        landing[at + 2] += count // 10
    past: int = 10 ** len(made)
    return total + landing[len(made)] * past + landing[len(made) + 1] * past * 10


def _ones_on(made: list[int]) -> int:
    written, carry = "", 0
    for total in reversed(made[1:]):
        digits = str(total + carry)
        written = digits[0] + written
        carry = int(digits[1]) if len(digits) == 2 else 0
    return int(str(made[0] + carry) + written)


def _twice(made: list[int]) -> int:
    written, carry = "", 0
    for total in reversed(made[1:]):
        count = total + carry + carry
        written, carry = str(count % 10) + written, count // 10
    return int(str(made[0] + carry + carry) + written)


def _only_the_first(made: list[int]) -> int:
    written, carry, done = "", 0, False
    for total in reversed(made[1:]):
        count = total + carry
        written = str(count)[-1] + written
        carry = 1 if count >= 10 and not done else 0
        done = done or count >= 10
    return int(str(made[0] + carry) + written)


def _not_over_blanks(rows: tuple[str, str], made: list[int]) -> int:
    written, carry = "", 0
    for at in range(len(made) - 1, -1, -1):
        alone = " " in (rows[0][at], rows[1][at])
        count = made[at] + (0 if alone else carry)
        written, carry = (str(count) if at == 0 else str(count)[-1]) + written, int(count >= 10)
    return int(written)


def _from_the_left(made: list[int]) -> int:
    written, carry = "", 0
    for total in made[:-1]:
        count = total + carry
        written += str(count)[-1]
        carry = count // 10
    return int(written + str(made[-1] + carry))


def _zeros(rows: tuple[str, str]) -> int:
    written, carry = "", 0
    for at in range(len(rows[0]) - 1, -1, -1):
        column = [row[at] for row in rows if row[at] != " "]
        count = 0 if "0" in column else sum(map(int, column)) + carry
        written, carry = (str(count) if at == 0 else str(count)[-1]) + written, count // 10
    return int(written)


def _always(made: list[int]) -> int:
    middle = [str(total + 1)[-1] for total in made[1:-1]]
    return int("".join([str(made[0] + 1), *middle, str(made[-1])[-1]]))


def decimal_answers(first: str, second: str) -> dict[str, str]:
    """Answer first + second by every pattern of decimals that applies, right ones by luck among them."""
    (one, _, after1), (other, _, after2) = first.partition("."), second.partition(".")
    places = max(len(after1), len(after2))
    filled = int(after1.ljust(places, "0")), int(after2.ljust(places, "0"))
    joined = str(int(one + after1.ljust(places, "0")) + int(other + after2.ljust(places, "0")))
    found = {"I07": str(int(joined))}
    if len(str(sum(filled))) > places:
        found["I02"] = f"{int(one) + int(other)}.{str(sum(filled))[1:]}"
    if after1 and after2:
        found["I04"] = point(joined, len(after1) + len(after2))
    if bool(after1) != bool(after2):
        tenths = [text if "." in text else point(text, 1) for text in (first, second)]
        found["I06"] = str(Decimal(tenths[0]) + Decimal(tenths[1]))
    if len(after1) != len(after2):
        made = str(int(after1 or "0") + int(after2 or "0")).rjust(places, "0")
        over = made[:-places] or "0"
        found["I05"] = f"{int(one) + int(other) + int(over)}.{made[-places:]}"
    rows = (
        one.rjust(len(other)) + after1.ljust(places, "0"),
        other.rjust(len(one)) + after2.ljust(places, "0"),
    )
    made_each = [sum(int(digit) for digit in column if digit != " ") for column in zip(*rows, strict=True)]
    if any(total >= 10 for total in made_each[1:]):
        found["I03"] = point(str(made_each[0]) + "".join(str(total)[-1] for total in made_each[1:]), places)
    return found


def point(digits: str, places: int) -> str:
    """Mark off so many places."""
    long = digits.rjust(places + 1, "0")
    return f"{int(long[:-places])}.{long[-places:]}"


def measure_answers(
    first: tuple[int, int], second: tuple[int, int], ratio: int
) -> dict[str, tuple[int, int]]:
    """Answer a sum of larger and smaller units by every pattern that applies, as counts of the two."""
    larger, smaller = first[0] + second[0], first[1] + second[1]
    found = {}
    if smaller >= 100 and ratio not in {100, 1000}:
        found["J01"] = (larger + int(str(smaller)[:-2]), int(str(smaller)[-2:]))
    if smaller >= 10 and ratio in {12, 16}:
        found["J02"] = (larger + 1, smaller - 10)
    if smaller >= ratio:
        found |= {"J03": (larger, smaller), "J04": (larger, smaller - ratio), "J05": (larger + 1, smaller)}
    return found
