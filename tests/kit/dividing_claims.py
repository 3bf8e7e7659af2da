"""What a sentence about dividing claims, checked by multiplying and dividing the amounts that it names."""

from collections.abc import Callable, Iterator
from fractions import Fraction

from onewhole.statements.expression import Expression, Quotient, Sum, Times, WithRemainder
from onewhole.statements.statement import meaning
from tests.kit.exact import amount
from tests.kit.heard import COUNTS, Heard, sides

Reads = Callable[[Heard, tuple[str, ...]], bool]


def _quotients(heard: Heard) -> Iterator[Quotient]:
    """Every quotient that stands on a line."""
    for says in heard.lines:
        for side in sides(says):
            yield from _inside(side)


def _inside(side: Expression) -> Iterator[Quotient]:
    match side:
        case Quotient():
            yield side
        case Sum(terms):
            for term in terms:
                yield from _inside(term.part)
        case Times(_, taken):
            yield from _inside(taken)
        case _:
            return


def _by(heard: Heard, words: str) -> Fraction:
    """Read a number that is divided by on some line."""
    found = heard.amount(words)
    if found not in {amount(one.right) for one in _quotients(heard)}:
        raise KeyError(words)
    return found


def _shared(heard: Heard, groups: tuple[str, ...]) -> bool:
    """So much of a unit, or so many whole dollars, are in a number that is divided by so many."""
    by, shared = _by(heard, groups[1]), heard.amount(groups[0])
    dollars = any(amount(one.left) // 1 == shared and amount(one.right) == by for one in _quotients(heard))
    return dollars or heard.stands(shared)


def _too_few(heard: Heard, groups: tuple[str, ...]) -> bool:
    """There are fewer of the unit than shares."""
    count = COUNTS[groups[0].split(" ")[0]]
    return count < _by(heard, groups[1]) and heard.stands(heard.amount(groups[0]))


def _equal(heard: Heard, groups: tuple[str, ...]) -> bool:
    one, other = map(heard.amount, groups)
    return one == other


def _product(heard: Heard, groups: tuple[str, ...]) -> bool:
    often, much, made = map(heard.amount, groups)
    return often * much == made


def _divided(heard: Heard, groups: tuple[str, ...]) -> bool:
    number, by, found = map(heard.amount, groups)
    return number == by * found


def _left_over(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The remainder, which is less than what is divided by."""
    left, by = map(heard.amount, groups)
    ends = [side for says in heard.lines for side in sides(says) if isinstance(side, WithRemainder)]
    return any(amount(end.left) == left and end.by and amount(end.by) == by for end in ends)


def _cut(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Pieces of a size stand on a line, and pieces so many times as fine."""
    piece, into = heard.amount(f"one {groups[0]}"), COUNTS[groups[1]]
    sizes = {number.ladder.finest for number in heard.numbers}
    return {piece, piece / into} <= sizes


def _more(heard: Heard, groups: tuple[str, ...]) -> bool:
    return heard.stands(heard.amount(groups[0]))


def _with_remainder(heard: Heard, groups: tuple[str, ...]) -> bool:
    """The number is the divisor so many times, and the remainder, which is less than the divisor."""
    number, by, found, left = map(heard.amount, groups)
    shared = number == by * found + left and (left < by or left.denominator == 1)
    return shared and isinstance(heard.item.answer, WithRemainder)


DIVIDING_CLAIMS: dict[str, Reads] = {
    r"(?:so |in number [a-z]+, )?(.+) divided by (.+) equals (.+) remainder (.+)": _with_remainder,
    r"share (?!the )(.+) among (.+)": _shared,
    r"each gets (.+)": lambda heard, groups: heard.stands(heard.amount(groups[0])),
    r"with the (.+) that is (.+)": lambda heard, groups: all(
        heard.stands(heard.amount(said)) or heard.amount(said) < heard.amount(groups[1]) for said in groups
    ),
    r"(.+) (?:is|are) not enough to share among (.+)": _too_few,
    r"(.+) (?:is|are) left over, and that is (?:less than|not enough to share among) (.+)": _left_over,
    r"(.+?) (?:is|are) left": lambda heard, groups: heard.stands(heard.amount(groups[0])),
    r"cut each of the (.+) that are left into (.+) equal parts": _shared,
    r"each share gets (.+) more": _more,
    r"cut each (?!of )(.+) into (.+) equal parts": _cut,
    r"(.+) groups? of (.+) (?:is|are) (.+)": _product,
    r"(.+) times (.+) is (.+), so (.+) divided by (.+) is (.+)": lambda heard, groups: (
        _product(heard, groups[:3]) and _divided(heard, groups[3:])
    ),
    r"(?:so )?(.+) divided by (.+) is (.+)": _divided,
    r"cut (.+) into (.+) equal parts each": lambda heard, groups: (
        heard.amount(groups[0]) in heard.given and heard.amount(groups[1]) in heard.given
    ),
    r"one part of each makes (.+)": lambda heard, groups: (
        heard.amount(groups[0]) == meaning(heard.item.statement)
    ),
    r"count in (.+)": lambda heard, groups: any(
        number.ladder.finest == heard.amount(f"one {groups[0].removesuffix('s')}") for number in heard.numbers
    ),
    r"(.+) is (.+) and (.+) is (.+)": lambda heard, groups: (
        _equal(heard, groups[:2]) and _equal(heard, groups[2:])
    ),
    r"measure groups of (.+) out of (.+)": lambda heard, groups: any(
        (amount(one.right), amount(one.left)) == tuple(map(heard.amount, groups)) for one in _quotients(heard)
    ),
    r"the digits would never end, so write (.+) as (.+)": _equal,
    r"so write (.+) as (.+)": _equal,
    r"(.+) (?:is|are) (.+)": _equal,
}
