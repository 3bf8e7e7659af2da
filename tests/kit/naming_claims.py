"""What is said of one number that is written another way, read back from its words."""

from collections.abc import Callable
from fractions import Fraction
from math import gcd

from onewhole.languages.english.words import piece_name
from onewhole.number.ladder import Style
from onewhole.statements.statement import AnotherName, Comparison, Relation, meaning
from tests.kit.heard import COUNTS, Heard
from tests.kit.spoken_reading import unsay

_Reads = Callable[[Heard, tuple[str, ...]], bool]
_ORDINAL_ENDS = ("tenths", "hundredths", "thousandths")


def _goes_into(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A factor of the numerator and the denominator of a fraction that stands on a line."""
    by, top, bottom = (COUNTS[words] for words in groups)
    return by > 1 and top % by == bottom % by == 0 and _stands(heard, top, bottom)


def _simplest(heard: Heard, groups: tuple[str, ...]) -> bool:
    top, bottom = (COUNTS[words] for words in groups)
    return gcd(top, bottom) == 1 and _stands(heard, top, bottom)


def _stands(heard: Heard, top: int, bottom: int) -> bool:
    return any(
        number.ladder.style is Style.MIXED and (number.amounts[1], number.ladder.denominator) == (top, bottom)
        for number in heard.numbers
    )


def _places(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Tenths take one place, hundredths two; and the answer has as many."""
    named, said = groups
    places = COUNTS[said]
    after = [number.ladder.after for number in heard.numbers if number.ladder.style is Style.DECIMAL]
    return _ORDINAL_ENDS.index(named) + 1 == places and places in after


def _last_digit(heard: Heard, groups: tuple[str, ...]) -> bool:
    named, bottom = groups
    size = Fraction(1, COUNTS.get(bottom, 1000))
    after = [number.ladder.finest for number in heard.numbers if number.ladder.style is Style.DECIMAL]
    return size == Fraction(1, 10 ** (_ORDINAL_ENDS.index(named) + 1)) and size in after


def _uncut(_heard: Heard, groups: tuple[str, ...]) -> bool:
    wholes, pieces = groups
    return COUNTS[wholes] == COUNTS[pieces]


def _none_there(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The number that is given has none of its smallest unit, and that unit is named."""
    first = heard.numbers[0]
    return not first.amounts[-1] and piece_name(first.ladder.finest.denominator) == groups[0]


def _over_one(heard: Heard, groups: tuple[str, ...]) -> bool:
    return COUNTS[groups[0]] == 1 and any(
        number.ladder.style is Style.MIXED and number.ladder.denominator == 1 for number in heard.numbers
    )


def _made(heard: Heard, groups: tuple[str, ...]) -> bool:
    """So many small pieces are worth one larger piece, and both stand on lines."""
    few, one = map(heard.amount, groups)
    return few == one and any(number.ladder.finest == one for number in heard.numbers)


def _named(heard: Heard, words: str) -> bool:
    """The number that is given is as much as its answer, and both are said as they are written."""
    asked, read = heard.item.statement, unsay(words)
    if not isinstance(asked, AnotherName) or not isinstance(read, Comparison):
        return False
    return (read.left, read.right) == (asked.number, heard.item.answer) and meaning(read) is Relation.EQUAL


NAMING_CLAIMS: dict[str, _Reads] = {
    r"only one goes into (.+) and into (.+): it is in simplest form already": _simplest,
    r"(.+) is a factor of (.+) and of (.+)": _goes_into,
    r"every (.+) make (.+)": _made,
    r"so (.+ equals .+)": lambda heard, groups: _named(heard, groups[0]),
    r"in number [a-z -]+, (.+ equals .+)": lambda heard, groups: _named(heard, groups[0]),
    r"so (.+) stays as it is": lambda heard, groups: heard.amount(groups[0]) == heard.given[0],
    r"([a-z]+) takes? (.+) places? after the point": _places,
    r"the last digit stands for ([a-z]+), so the denominator is (.+)": _last_digit,
    r"(.+) (?:strips?|wholes?) not cut (?:is|are) (.+) pieces?": _uncut,
    r"so the denominator is (.+)": _over_one,
    r"zero ([a-z-]+) are nothing, so they are not written": _none_there,
    r"the denominator is (.+), so each piece is one (?:strip|whole)": _over_one,
}
