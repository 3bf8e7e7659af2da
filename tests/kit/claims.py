"""What a spoken sentence claims, read back from its words to exact values: the other road of the script.

Nothing here knows how a sentence was written. Every sentence with a number word must be read by a pattern,
and what it claims must be true of the problem's working. Patterns are tried in order; one that reads and
holds is enough, so "that is" may claim a line or two amounts, but never nothing.
"""

import re
from collections.abc import Callable
from fractions import Fraction
from itertools import accumulate

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Quotient, Sum, Times, quantities, value
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Relation,
    meaning,
)
from onewhole.working.line import WholeLine
from tests.kit.column_claims import COLUMN_CLAIMS
from tests.kit.comparing_claims import COMPARING_CLAIMS
from tests.kit.dividing_claims import DIVIDING_CLAIMS
from tests.kit.factor_claims import claims_in_words
from tests.kit.group_claims import division_of, of_groups
from tests.kit.heard import (
    COUNTS,
    Heard,
    Reads,
    equal_sides,
    found_true,
    line_of,
    number_words,
    plainly,
    sides,
    spoken,
)
from tests.kit.naming_claims import NAMING_CLAIMS
from tests.kit.ordering_claims import ORDERING_CLAIMS
from tests.kit.plot_claims import led_to, of_plot
from tests.kit.product_claims import PRODUCT_CLAIMS
from tests.kit.rounding_claims import ROUNDING_CLAIMS
from tests.kit.spoken_reading import unsay, unsay_expression
from tests.kit.step_claims import STEP_CLAIMS, each_step
from tests.kit.written_claims import WRITTEN_CLAIMS


def true(sentence: str, heard: Heard) -> str | None:
    """Return the pattern that reads a spoken sentence and finds it true, or None when there is none."""
    said = re.sub(r"[.?!]$", "", sentence.strip())
    said = said[:1].lower() + said[1:]
    if (worked := led_to(heard)) is not None:
        return of_plot(said, heard) or true(sentence, worked)
    if (division := division_of(heard)) is not None:
        return found_true(of_groups(CLAIMS), said, heard) or true(sentence, division)
    in_a_step = (true(sentence, step) for step in each_step(heard))
    return found_true(_claims(heard), said, heard) or next(filter(None, in_a_step), None)


def _claims(heard: Heard) -> dict[str, Reads]:
    if isinstance(heard.item.statement, Rounding):
        return ROUNDING_CLAIMS | {said: holds for said, holds in CLAIMS.items() if said in _OF_ANY}
    if (in_words := claims_in_words(heard)) is not None:
        return in_words | {said: CLAIMS[said] for said in _OF_ANY}
    if isinstance(heard.item.statement, Ordering):
        kept = [said for said in CLAIMS if said in _OF_ANY or " than " in said or "both" in said]
        return ORDERING_CLAIMS | COMPARING_CLAIMS | {said: CLAIMS[said] for said in kept}
    if written := next((claims for way, claims in WRITTEN_CLAIMS.items() if heard.worked_by(way)), None):
        return CLAIMS | written
    match heard.item.statement:
        case Question(Times()):
            return PRODUCT_CLAIMS | CLAIMS
        case Question(Quotient()):
            return DIVIDING_CLAIMS | PRODUCT_CLAIMS | CLAIMS
        case _:
            return COLUMNS_TOO if in_columns(heard) else CLAIMS


def in_columns(heard: Heard) -> bool:
    """Say whether the problem is worked in columns."""
    return heard.worked_by("columns")


def _keeps(heard: Heard, words: str) -> bool:
    """A line that is read out keeps what the problem says, and has no number that is on no line."""
    if isinstance(heard.item.statement, Comparison):
        return _compares(heard, words)
    read = unsay(words)
    written = [number for side in sides(line_of(read)) for number in quantities(side)]
    there = set(map(plainly, heard.numbers))
    return meaning(read) == meaning(heard.item.statement) and all(
        plainly(number) in there for number in written
    )


def _compares(heard: Heard, words: str) -> bool:
    read = unsay(words)
    return isinstance(read, Comparison) and read.sign == meaning(read) == meaning(heard.item.statement)


def _answer(heard: Heard, words: str) -> bool:
    answer = heard.item.answer
    return isinstance(answer, Quantity) and unsay_expression(words) == answer


def _together(heard: Heard, groups: tuple[str, ...]) -> bool:
    *parts, whole = groups
    return sum(map(heard.amount, parts), Fraction(0)) == heard.amount(whole)


def _is(heard: Heard, groups: tuple[str, ...]) -> bool:
    return heard.amount(groups[0]) == heard.amount(groups[1])


def _all_parts(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Parts said one after another come to what the problem comes to."""
    parts = re.split(r", then ", groups[0])
    return len(parts) > 1 and sum(map(heard.amount, parts), Fraction(0)) == meaning(heard.item.statement)


def _both_counts(heard: Heard, groups: tuple[str, ...]) -> bool:
    return all(heard.stands(heard.amount(part)) for part in groups)


def _both_in_pieces(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Both numbers of the problem counted in pieces: they are the two that it gives."""
    return tuple(map(heard.amount, groups)) == heard.given


def _lacking(heard: Heard, groups: tuple[str, ...]) -> bool:
    """So many are taken, and some number on a line has fewer of them."""
    need = heard.amount(groups[0])
    unit = need / COUNTS[groups[0].rsplit(" ", 1)[0]]
    counts = [
        count
        for number in heard.numbers
        for count, one in zip(number.amounts, number.ladder.units, strict=True)
        if one.size == unit
    ]
    return need / unit in counts and (min(counts) < need / unit or len(counts) < len(heard.numbers))


def _full_groups(heard: Heard, groups: tuple[str, ...]) -> bool:
    some, one, times = groups
    many = times.removeprefix("are ").removesuffix(" full groups")
    count = 1 if times.startswith("is one ") else value(unsay_expression(many))
    return heard.amount(some) == heard.amount(one) and heard.stands(count * heard.amount(one))


def _next_one(heard: Heard, groups: tuple[str, ...]) -> bool:
    """A step from an amount on a line fills up a larger unit."""
    start, by, unit = groups
    size = Fraction(1) if unit == "whole number" else heard.amount(f"one {unit}")
    return unsay_expression(start) in heard.numbers and (heard.amount(start) + heard.amount(by)) % size == 0


def _taken_away(heard: Heard, groups: tuple[str, ...]) -> bool:
    had, gone, left = groups
    count, _, unit = left.rpartition(" ")
    return COUNTS[had] - COUNTS[gone] == COUNTS[count] and heard.stands(heard.amount(f"{count} {unit}"))


def _orders(sign: Callable[[Fraction, Fraction], bool]) -> Reads:
    return lambda heard, groups: sign(heard.amount(groups[0]), heard.amount(groups[1]))


def _statement(heard: Heard, groups: tuple[str, ...]) -> bool:
    return groups[0] in heard.labels and groups[0] == spoken(heard.item.label) and _asked(heard, groups[1])


def _asked(heard: Heard, words: str) -> bool:
    read, wanted = unsay(words), heard.item.statement
    return read == wanted or (isinstance(read, Question) and isinstance(wanted, MissingNumber))


def _asks_which(heard: Heard, groups: tuple[str, ...]) -> bool:
    sign, (first, second) = meaning(heard.item.statement), map(heard.amount, groups)
    return sign is (
        Relation.LESS if first < second else Relation.GREATER if first > second else Relation.EQUAL
    )


def _wrong_line(heard: Heard, groups: tuple[str, ...]) -> bool:
    """What someone may write is exactly what the slip shows: one of its lines, or its answer."""
    slip = heard.item.mistake
    if slip is None:
        return False
    read = line_of(unsay(groups[0])) if "over zero" not in groups[0] else None
    return isinstance(read, Comparison | None) or read in (slip.wrote, *(line.says for line in slip.lines))


def _missing(heard: Heard, groups: tuple[str, ...]) -> bool:
    return isinstance(heard.item.statement, MissingNumber) and heard.amount(groups[-1]) == _worth(heard)


def _worth(heard: Heard) -> Fraction:
    answer = heard.item.answer
    return answer.value if isinstance(answer, Quantity) else Fraction(-1)


def _deed(heard: Heard, groups: tuple[str, ...]) -> bool:
    return groups[0] in heard.labels and (not number_words(groups[1]) or true(groups[1], heard) is not None)


def _solved(heard: Heard, words: str) -> bool:
    """The problem itself, an equals sign, and its answer."""
    read, wanted = unsay(words), heard.item.statement
    if not isinstance(read, Comparison) or not isinstance(wanted, Question):
        return _compares(heard, words)
    return equal_sides(words) and read.left == wanted.asked and read.right == heard.item.answer


def _steps(heard: Heard, words: str) -> bool:
    """Each is a step of a hard fact beside a line, and true."""
    lines = heard.item.working.lines if heard.item.working else ()
    known = {
        Comparison(*step, Relation.EQUAL) for line in lines for fact in line.facts for step in fact.steps
    }
    return all(equal_sides(step) and unsay(step) in known for step in words.split(", then "))


def _hard(heard: Heard, groups: tuple[str, ...]) -> bool:
    lines = heard.item.working.lines if heard.item.working else ()
    facts = [fact for line in lines for fact in line.facts if fact.asked == unsay_expression(groups[0])]
    return bool(facts) and all(_steps(heard, words) for words in groups[1:])


def _undone(heard: Heard, groups: tuple[str, ...]) -> bool:
    """Going back is true, begins with the answer and ends with the first number."""
    read = unsay(groups[0])
    assert isinstance(read, Comparison)
    return (
        equal_sides(groups[0])
        and quantities(read.left)[0] == getattr(heard.item.answer, "quotient", heard.item.answer)
        and read.right
        == quantities(heard.lines[0] if not isinstance(heard.lines[0], WholeLine) else read.right)[0]
    )


def _jumps(heard: Heard, groups: tuple[str, ...]) -> bool:
    return any(isinstance(says, Sum) and len(says.terms) == COUNTS[groups[0]] for says in heard.lines)


def _leaves(heard: Heard, rest: Fraction) -> bool:
    """What is left of the pieces is the answer, or its pieces; with more numbers, it stands on a line."""
    answer = heard.item.answer
    if len(heard.given) > 2 or not isinstance(answer, Quantity):
        return heard.stands(rest)
    return rest in {Fraction(0), answer.value, answer.amounts[-1] * answer.ladder.finest}


def _taken(heard: Heard, amount: Fraction) -> bool:
    """An amount is the wholes or the pieces of the number that is taken away or added."""
    return any(
        amount == count * unit.size
        for number in heard.numbers
        for count, unit in zip(number.amounts, number.ladder.units, strict=True)
        if number.value in heard.given[1:]
    )


_WHOLES = r"(?:open|regroup|rename|trade) one [a-z-]+"
_STANDS = "(?:that is|now it is|so now we have|now it says|now we have|the right line is|so)"

_OF_SOME = COMPARING_CLAIMS | NAMING_CLAIMS

#: What can be claimed, as words with gaps, and what must then be so.
CLAIMS: dict[str, Reads] = (
    _OF_SOME
    | STEP_CLAIMS
    | {
        r"number (.+)(?:: | is )(.+)": _statement,
        r"number (.+)": lambda heard, groups: groups[0] in heard.labels,
        r"which is more, (.+) or (.+)": _asks_which,
        r"write (.+)": lambda heard, groups: _asked(heard, groups[0]),
        r"write it in other units: (.+)": lambda heard, groups: _asked(heard, groups[0]),
        r"find the number for the blank: (.+)": lambda heard, groups: _asked(heard, groups[0]),
        r"we work out (.+)": lambda heard, groups: _asked(heard, groups[0]),
        r"(?:as in|do it as in) number ([a-z -]+)[,:] (.+)": _deed,
        rf"{_STANDS} (.+)": lambda heard, groups: _keeps(heard, groups[0]),
        r"(?:first|that is) (.+)": _all_parts,
        r"so (.+)": lambda heard, groups: _solved(heard, groups[0]),
        r"so (.+) is the same amount as (.+)": _is,
        r"now compare (.+) with (.+)": _asks_which,
        r"so look at (.+) and at (.+)": _asks_which,
        r"(.+)": lambda heard, groups: _solved(heard, groups[0]),
        r"(.+ equals .+)": lambda heard, groups: _steps(heard, groups[0]) or _undone(heard, groups),
        r"that is (.+ [a-z-]+) and (.+)": _both_in_pieces,
        r"one ten is ten ones, and (.+) is (.+)": _is,
        r"(one .+) is (.+), so count everything in .+": _is,
        r"(one .+) is (.+)": _is,
        r"(.+) are (.+)": _is,
        r"(.+) and (.+) make (.+)": _together,
        r"(.+) make (one .+), and there (is one full group|are .+ full groups)": _full_groups,
        r"(.+) make (.+)": _is,
        r"now there are (.+)": lambda heard, groups: heard.stands(heard.amount(groups[0])),
        rf"there are not enough [a-z-]+ to take (.+), so {_WHOLES}": _lacking,
        rf"there are no [a-z-]+ to open, so {_WHOLES} first": lambda heard, _: bool(heard.lines),
        rf"{_WHOLES}(?: to get more [a-z-]+)?": lambda heard, _: bool(heard.lines),
        r"(?:open|regroup) (.+) to get more [a-z-]+": lambda heard, groups: heard.stands(
            heard.amount(groups[0])
        ),
        r"(.+) take away (.+) leaves (.+)": _taken_away,
        r"larger units first: take (.+)": lambda heard, groups: _taken(heard, heard.amount(groups[0])),
        r"take (.+) from (.+)": lambda heard, groups: (
            _both_counts(heard, groups) and _leaves(heard, heard.amount(groups[1]) - heard.amount(groups[0]))
        ),
        r"add (.+) and (.+)": lambda heard, groups: (
            _both_counts(heard, groups) and heard.stands(sum(map(heard.amount, groups), Fraction(0)))
        ),
        r"(?:take|add|jump on by) (.+)": lambda heard, groups: heard.stands(heard.amount(groups[0])),
        r"give (.+) to (.+)": lambda heard, groups: _next_one(
            heard, (groups[1], groups[0], heard.words.whole)
        ),
        r"set (.+) aside, and take from (.+)": lambda heard, groups: (
            sum(map(heard.amount, groups)) == heard.given[0] if groups else False
        ),
        r"set (.+) aside": lambda heard, groups: heard.stands(heard.amount(groups[0])),
        r"(.+) (?:is|are) left": lambda heard, groups: (
            heard.amount(groups[0]) == meaning(heard.item.statement)
            or (len(heard.given) > 2 and heard.stands(heard.amount(groups[0])))
        ),
        r"(.+) is left of (.+)": lambda heard, groups: (
            heard.amount(groups[1]) - heard.amount(groups[0]) == heard.given[1]
        ),
        r"nothing is left of (.+)": lambda heard, groups: heard.amount(groups[0]) == heard.given[1],
        r"that makes (.+) in all": lambda heard, groups: (
            heard.amount(groups[0]) == meaning(heard.item.statement)
        ),
        r"that makes (.+) so far": lambda heard, groups: (
            heard.amount(groups[0]) in list(accumulate(heard.given))[1:-1]
        ),
        r"written the usual way, this is (.+)": lambda heard, groups: _keeps(heard, groups[0]),
        r"(.+) is the same amount as (.+), and now there is enough of each unit": _is,
        r"(.+) is the same amount as (.+)": _is,
        r"another name for (.+) is (.+)": _is,
        r"as one fraction, (.+) is (.+)": _is,
        r"you may leave it as (.+)": lambda heard, groups: _answer(heard, groups[0]),
        r"write either one": lambda *_: True,
        r"count up from (.+) to (.+?)(?:, with stops at easy numbers)?": lambda heard, groups: (
            {heard.amount(groups[0]), heard.amount(groups[1])} == set(heard.given)
        ),
        r"find how long each of the (.+) jumps is": _jumps,
        r"start at (.+) and jump on by (.+)": lambda heard, groups: (
            heard.amount(groups[0]) == heard.given[0] and heard.stands(heard.amount(groups[1]))
        ),
        r"from (.+), a jump of (.+) lands on the next (.+)": _next_one,
        r"(.+) needs (.+) to reach the next (.+?)(?:, so take that from the other number)?": _next_one,
        r"you land on (.+)": lambda heard, groups: heard.stands(heard.amount(groups[0])),
        r"now add (.+) and (.+)": lambda heard, groups: (
            sum(map(heard.amount, groups)) == meaning(heard.item.statement)
        ),
        r"add (.+) to both numbers(?:: the distance between them stays the same)?": lambda heard, groups: (
            (heard.given[1] + heard.amount(groups[0])).denominator == 1
        ),
        r"(.+) is easier to take away": lambda heard, groups: heard.stands(heard.amount(groups[0])),
        r"for (.+), (?:go by way of the ten|think of adding)": _hard,
        r"for (.+), (?:go by way of the ten|think of adding): (.+)": _hard,
        r"then (.+)": lambda heard, groups: _steps(heard, groups[0]),
        r"(.+) (?:is|are) more than (.+)": _orders(lambda one, other: one > other),
        r"(.+) (?:is|are) fewer than (.+)": _orders(lambda one, other: one < other),
        r"both are (.+)": lambda heard, groups: heard.stands(heard.amount(groups[0])),
        r"the answer to number (.+) is (.+)": lambda heard, groups: (
            groups[0] == spoken(heard.item.label) and _answer(heard, groups[1])
        ),
        r"the answer is (.+)": lambda heard, groups: _answer(heard, groups[0]),
        r"so number (.+) comes to (.+)": lambda heard, groups: (
            groups[0] == spoken(heard.item.label) and _answer(heard, groups[1])
        ),
        r"so the missing number is (.+)": _missing,
        r"the missing number is (.+)": _missing,
        r"in number (.+), the missing number is (.+)": _missing,
        r"in number (.+), (.+) is less than (.+)": lambda heard, groups: _asks_which(heard, groups[1:]),
        r"in number (.+), (.+) is greater than (.+)": lambda heard, groups: _asks_which(heard, groups[1:]),
        r"in number (.+), (.+) is the same amount as (.+)": lambda heard, groups: _is(heard, groups[1:]),
        r"check it by going back: (.+)": _undone,
        r"(?:someone|a friend) may write (.+)": _wrong_line,
        r"but (.+) is not equal to (.+)": _orders(lambda one, other: one != other),
        r"but (.+) is not less than (.+)": _orders(lambda one, other: one >= other),
        r"but (.+) is not greater than (.+)": _orders(lambda one, other: one <= other),
        r"but (.+) is not the same amount as (.+)": _orders(lambda one, other: one != other),
        r"but the answer is not (.+)": lambda heard, groups: (
            heard.amount(groups[0]) != meaning(heard.item.statement)
        ),
        r"but (.+) does not fit the blank": lambda heard, groups: heard.amount(groups[0]) != _worth(heard),
        r"but one [a-z ]+ cannot be cut into zero pieces": lambda *_: True,
    }
)

#: What can be claimed of a problem of any sort.
_OF_ANY = {r"number (.+)(?:: | is )(.+)", r"number (.+)", r"the answer is (.+)"}

#: What can be claimed where a problem is worked in columns: of columns, and what is not about regrouping.
COLUMNS_TOO = COLUMN_CLAIMS | {
    pattern: holds for pattern, holds in CLAIMS.items() if _WHOLES not in pattern and holds is not _taken_away
}
