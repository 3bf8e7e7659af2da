"""What a sentence about primes and multiples claims, checked by counting by every number."""

import re
from fractions import Fraction
from math import prod

from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.listing import Listing
from tests.kit.exact import worded
from tests.kit.heard import Heard, Reads
from tests.kit.listing_claims import LISTING_CLAIMS


def _asked(heard: Heard) -> FactorQuestion:
    asked = heard.item.statement
    assert isinstance(asked, FactorQuestion)
    return asked


def _number(heard: Heard) -> int:
    return _asked(heard).number.parts


def _all(heard: Heard, groups: tuple[str, ...]) -> list[int]:
    return [int(heard.amount(one)) for one in groups]


def _product(heard: Heard, groups: tuple[str, ...]) -> bool:
    first, second, made = _all(heard, groups)
    return first * second == made == _number(heard)


def _with_rest(heard: Heard, groups: tuple[str, ...]) -> bool:
    by, times, made, left = _all(heard, groups)
    return by * times == made and made + left == _number(heard) and 0 < left < by


def _skipped(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Each number that is skipped is a product of smaller ones, so a smaller factor of it comes before."""
    numbers = [int(heard.amount(one)) for one in re.split(r", | and ", groups[0])]
    return all(any(not number % by for by in range(2, number)) for number in numbers)


def _not_said(heard: Heard, groups: tuple[str, ...]) -> bool:
    step, number = _all(heard, groups)
    return number == _number(heard) and number not in range(step, number + 1, step)


def _line(heard: Heard, words: str) -> bool:
    """An equality that is read out is true, and its left side is the number."""
    match [int(heard.amount(one)) for one in re.split(r" equals | times | plus ", words)]:
        case [number, by, times, *left]:
            return number == _number(heard) == by * times + sum(left)
        case _:
            return False


def _word(word: str) -> Reads:
    return lambda heard, groups: (
        int(heard.amount(groups[0])) == _number(heard) and worded(_asked(heard)) == word
    )


def _of_step(word: str, *, of_factor: bool = False) -> Reads:
    def reads(heard: Heard, groups: tuple[str, ...]) -> bool:
        asked = _asked(heard)
        assert asked.step is not None
        wanted = [_number(heard), asked.step.parts][:: -1 if of_factor else 1]
        return asked.of_factor is of_factor and _all(heard, groups) == wanted and worded(asked) == word

    return reads


_SO = r"(?:so |in number .+?, )?"
FACTOR_CLAIMS: dict[str, Reads] = {
    r"is (.+) prime or composite": lambda heard, groups: _all(heard, groups) == [_number(heard)],
    r"is (.+) a multiple of (.+)": lambda heard, groups: (
        not _asked(heard).of_factor
        and _all(heard, groups) == [int(one.value) for one in _asked(heard).numbers]
    ),
    r"is (.+) a factor of (.+)": lambda heard, groups: (
        _asked(heard).of_factor and _all(heard, groups) == [int(one.value) for one in _asked(heard).numbers]
    ),
    r"(.+) times (.+) is (.+), and (.+) is left": _with_rest,
    r"(.+) times (.+) is more than (.+)": lambda heard, groups: (
        prod(_all(heard, groups[:2])) > heard.amount(groups[2]) == _number(heard)
    ),
    r"(.+) times (.+) is (.+)": _product,
    r"skip (.+): smaller factors are tried": _skipped,
    r"(.+) is a factor of (.+) besides (.+) and the number itself": lambda heard, groups: (
        _number(heard) == heard.amount(groups[1])
        and (Fraction(_number(heard)) / heard.amount(groups[0])).denominator == 1
        and heard.amount(groups[2]) == 1 < heard.amount(groups[0]) < _number(heard)
    ),
    r"so the only factors are (.+) and (.+)": lambda heard, groups: (
        _all(heard, groups) == [1, _number(heard)] and worded(_asked(heard)) == "prime"
    ),
    r"the only factor of (.+) is (.+)": lambda heard, groups: (
        _all(heard, groups) == [1, 1] == [_number(heard)] * 2
    ),
    r"a prime number has (.+) factors": lambda heard, groups: _all(heard, groups) == [2],
    r"counting by (.+) comes to (.+)": lambda heard, groups: (
        not _not_said(heard, groups) and heard.amount(groups[1]) == _number(heard)
    ),
    r"counting by (.+) jumps over (.+)": _not_said,
    rf"{_SO}(.+) is prime": _word("prime"),
    rf"{_SO}(.+) is composite": _word("composite"),
    rf"{_SO}(.+) is neither prime nor composite": _word("neither"),
    rf"{_SO}(.+) is a multiple of (.+)": _of_step("yes"),
    rf"{_SO}(.+) is not a multiple of (.+)": _of_step("no"),
    rf"{_SO}(.+) is a factor of (.+)": _of_step("yes", of_factor=True),
    rf"{_SO}(.+) is not a factor of (.+)": _of_step("no", of_factor=True),
    r"so (.+ equals .+)": lambda heard, groups: _line(heard, groups[0]),
}


def claims_in_words(heard: Heard) -> dict[str, Reads] | None:
    """Return what may be claimed of factors and multiples; None for other problems."""
    match heard.item.statement:
        case Listing():
            return LISTING_CLAIMS
        case FactorQuestion():
            return FACTOR_CLAIMS
        case _:
            return None
