"""The patterns of whole-number subtraction once more, as their definitions say it, in plain digits.

Nothing of `onewhole.misconceptions` is used here. Digits run from the ones up; a bottom digit is None where
nothing stands below. Where a definition leaves something open, the reading is the one under which the
collection's own predictions and its column of patterns that answer alike come out
(`tests/outside/test_column_examples.py`).
"""

from collections.abc import Callable

Digits = list[int]
Below = list[int | None]
#: From top digits, bottom digits and the place to trade from: the top digits after it, or None.
Lend = Callable[[Digits, Below, int], Digits | None]
#: From top digits now, bottom digits, top digits as typed and the place: what is written at once, or None.
Special = Callable[[Digits, Below, Digits, int], int | None]


def answers(first: int, second: int) -> dict[str, int]:
    """Answer first - second by every pattern that gives an answer, right ones by luck among them."""
    found = {key: _worked(first, second, *how) for key, how in HOW.items()}
    found |= {key: how(first, second) for key, how in OTHERS.items()}
    return {key: answer for key, answer in found.items() if answer is not None}


def _digits(first: int, second: int) -> tuple[Digits, Below]:
    top = [int(digit) for digit in reversed(str(first))]
    bottom: Below = [int(digit) for digit in reversed(str(second))]
    return top, [*bottom, *[None] * (len(top) - len(bottom))]


def _worked(first: int, second: int, lend: Lend, special: Special) -> int | None:
    typed, bottom = _digits(first, second)
    return _columns(typed, bottom, lend, special)


def _columns(typed: Digits, bottom: Below, lend: Lend, special: Special) -> int | None:
    top, total = list(typed), 0
    for at in range(len(top)):
        below = bottom[at] or 0
        written = special(top, bottom, typed, at)
        if written is None:
            if top[at] < below:
                after = lend(top, bottom, at + 1)
                if after is None:
                    return None
                top = after
                top[at] += 10
            written = top[at] - below
        if written < 0:
            return None
        total += written * 10**at
    return total


def _set(top: Digits, at: int, digit: int) -> Digits:
    return [*top[:at], digit, *top[at + 1 :]]


def right(top: Digits, bottom: Below, at: int) -> Digits | None:
    """Zeros become nines and the next digit pays."""
    end = next((place for place in range(at, len(top)) if top[place]), None)
    if end is None:
        return None
    return [*top[:at], *[9] * (end - at), top[end] - 1, *top[end + 1 :]]


def _nobody(top: Digits, _: Below, __: int) -> Digits:
    return list(top)


def _nine_and_stop(top: Digits, _: Below, at: int) -> Digits | None:
    return None if at == len(top) else _set(top, at, top[at] - 1 if top[at] else 9)


def _skip(top: Digits, _: Below, at: int) -> Digits | None:
    end = next((place for place in range(at, len(top)) if top[place]), None)
    return None if end is None else _set(top, end, top[end] - 1)


def _stop(top: Digits, _: Below, at: int) -> Digits | None:
    return None if at == len(top) else _set(top, at, max(top[at] - 1, 0))


def _all_nines(top: Digits, _: Below, at: int) -> Digits | None:
    if at == len(top):
        return None
    if top[at]:
        return _set(top, at, top[at] - 1)
    end = next((place for place in range(at, len(top)) if top[place]), len(top))
    return [*top[:at], *[9] * (end - at), *top[end:]]


def _still_counted(top: Digits, _: Below, at: int) -> Digits | None:
    end = next((place for place in range(at, len(top)) if top[place]), None)
    return None if end is None else [*top[:at], *[9] * (end - at), *top[end:]]


def _stays_ten(top: Digits, _: Below, at: int) -> Digits | None:
    end = next((place for place in range(at, len(top)) if top[place]), None)
    if end is None:
        return None
    return [*top[:at], *[10] * (end - at), top[end] - 1, *top[end + 1 :]]


def _far_left(top: Digits, _: Below, at: int) -> Digits | None:
    return _set(top, len(top) - 1, top[-1] - 1) if at < len(top) and top[-1] else None


def _not_over_blank(top: Digits, bottom: Below, at: int) -> Digits | None:
    place = at
    after = list(top)
    while place < len(top) and bottom[place] is not None:
        if top[place]:
            after[place] -= 1
            return after
        after[place] = 9
        place += 1
    return after if place < len(top) else None


def _up(top: Digits, bottom: Below, at: int) -> Digits | None:
    if at < len(top) and top[at] < (bottom[at] or 0):
        return _set(top, at, top[at] + 1)
    return right(top, bottom, at)


def _blank_one(top: Digits, bottom: Below, at: int) -> Digits | None:
    if at < len(top) and top[at] == 0 and bottom[at] is None:
        return _set(top, at, 1)
    return right(top, bottom, at)


def _skip_over_zero(top: Digits, bottom: Below, at: int) -> Digits | None:
    end = next((place for place in range(at, len(top)) if top[place]), None)
    if end is None:
        return None
    between = [0 if bottom[place] == 0 else 9 for place in range(at, end)]
    return [*top[:at], *between, top[end] - 1, *top[end + 1 :]]


def never(_: Digits, __: Below, ___: Digits, ____: int) -> None:
    """Answer every column by trading where it must be."""
    return


def _turned(top: Digits, bottom: Below, _: Digits, at: int) -> int:
    return abs(top[at] - (bottom[at] or 0))


def _zero_typed(digit: Callable[[int], int]) -> Special:
    def special(_: Digits, bottom: Below, typed: Digits, at: int) -> int | None:
        return digit(bottom[at] or 0) if typed[at] == 0 and bottom[at] else None

    return special


def _over_zero(_: Digits, bottom: Below, __: Digits, at: int) -> int | None:
    return 0 if bottom[at] == 0 else None


def _equal(top: Digits, bottom: Below, _: Digits, at: int) -> int | None:
    return top[at] if top[at] == bottom[at] else None


def _too_small(write: Callable[[int, int], int]) -> Special:
    def special(top: Digits, bottom: Below, _: Digits, at: int) -> int | None:
        below = bottom[at] or 0
        return write(top[at], below) if top[at] < below else None

    return special


def _before_zero(top: Digits, bottom: Below, _: Digits, at: int) -> int | None:
    below = bottom[at] or 0
    return below - top[at] if top[at] < below and top[at + 1 : at + 2] == [0] else None


def _zero_is_ten(top: Digits, bottom: Below, typed: Digits, at: int) -> int | None:
    return 10 - (bottom[at] or 0) if top[at] == typed[at] == 0 and bottom[at] else None


HOW: dict[str, tuple[Lend, Special]] = {
    "E01": (right, _turned),
    "E02": (_nobody, never),
    "E03": (_nine_and_stop, never),
    "E04": (_skip, never),
    "E05": (_stop, never),
    "E06": (_all_nines, never),
    "E07": (_stays_ten, never),
    "E08": (right, _zero_typed(lambda below: below)),
    "E09": (right, _zero_typed(lambda _: 0)),
    "E10": (right, _over_zero),
    "E11": (right, _equal),
    "E13": (right, _too_small(lambda _, __: 0)),
    "E14": (right, _too_small(lambda top, _: top)),
    "E18": (_far_left, never),
    "E20": (_not_over_blank, never),
    "E24": (_up, never),
    "E25": (_blank_one, never),
    "E27": (right, _before_zero),
    "E29": (_skip_over_zero, never),
    "E30": (right, _zero_is_ten),
    "E31": (_still_counted, never),
}


def _paid(write: Callable[[int, int], int]) -> Callable[[int, int], int | None]:
    """Pay, and answer the column in another way."""

    def answer(first: int, second: int) -> int | None:
        (top, bottom), total = _digits(first, second), 0
        for at in range(len(top)):
            below = bottom[at] or 0
            digit = top[at] - below
            if digit < 0:
                after = right(top, bottom, at + 1)
                if after is None:
                    return None
                top, digit = after, write(top[at], below)
            total += digit * 10**at
        return total

    return answer


def _one_is_ten(first: int, second: int) -> int | None:
    (top, bottom), less = _digits(first, second), 0
    for at in range(len(top)):
        if top[at] < (bottom[at] or 0):
            less += 10**at * (top[at] == 1)
            after = right(top, bottom, at + 1)
            if after is None:
                return None
            top = after
    return first - second - less


def _once(first: int, second: int) -> int | None:
    (top, bottom), total, paid = _digits(first, second), 0, False
    for at in range(len(top)):
        digit = top[at] - (bottom[at] or 0)
        if digit < 0:
            after = top if paid else right(top, bottom, at + 1)
            if after is None:
                return None
            top, digit, paid = after, digit + 10, True
        total += digit * 10**at
    return total


def _each_blank(first: int, second: int) -> int | None:
    top, bottom = _digits(first, second)
    top = [digit - (below is None) for digit, below in zip(top, bottom, strict=True)]
    return None if min(top) < 0 else _columns(top, bottom, _not_over_blank, never)


def _stutter(first: int, second: int) -> int | None:
    digits = str(second)
    again = int(digits[0] * (len(str(first)) - len(digits)) + digits)
    return first - again if first >= again else None


def _leading_one(first: int, second: int) -> int:
    after = first - second
    leading = 10 ** (len(str(first)) - 1)
    return after - leading if len(str(second)) < len(str(first)) and after // leading == 1 else after


def _just_enough(first: int, second: int) -> int | None:
    (top, bottom), total = _digits(first, second), 0
    for at in range(len(top)):
        digit = top[at] - (bottom[at] or 0)
        if digit < 0:
            if at + 1 == len(top) or top[at + 1] < -digit:
                return None
            top, digit = _set(top, at + 1, top[at + 1] + digit), 0
        total += digit * 10**at
    return total


OTHERS: dict[str, Callable[[int, int], int | None]] = {
    "E12": _one_is_ten,
    "E15": _paid(lambda top, below: below - top),
    "E16": _paid(lambda _, __: 0),
    "E17": _paid(lambda top, _: top),
    "E19": _once,
    "E21": _each_blank,
    "E22": _stutter,
    "E23": _leading_one,
    "E26": _just_enough,
    "E28": lambda first, second: first + second,
}
