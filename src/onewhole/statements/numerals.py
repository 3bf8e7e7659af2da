"""Reading one number as people type it: 7 2/6, 3 and 5/6, 5.2, 5 ft 2 in, 5 5/8 in, $3.25, 6 ?/6."""

from collections.abc import Callable

from onewhole.number.impossible import Impossible
from onewhole.number.ladder import TEN, Ladder, Style, decimal, measure, mixed, places
from onewhole.number.quantity import Quantity, whole, with_mark
from onewhole.number.unit import DOLLAR, MEASURES
from onewhole.number.with_minus import WithMinus
from onewhole.statements.cursor import Cursor, is_unit
from onewhole.statements.gap import HOLE, Gap, type_hole
from onewhole.statements.tokens import TokenKind
from onewhole.statements.unit_words import MARKS

LARGEST_DENOMINATOR = 1000

_AND = frozenset({"and"})
#: 26 in to feet: the word before what a measure is rounded to.
_TO = frozenset({"to"})
_POWERS = {
    "one": 0,
    "ten": 1,
    "hundred": 2,
    "thousand": 3,
    "tenth": -1,
    "hundredth": -2,
    "thousandth": -3,
}
_PLACES = {word + end: power for word, power in _POWERS.items() for end in ("", "s")}
#: The places of money by their names: 2 dollars 12 dimes 5 cents.
_COINS = {"dollar": 0, "dollars": 0, "dime": -1, "dimes": -1, "cent": -2, "cents": -2, "¢": -2}
_CENT = frozenset({"cent", "cents", "¢"})
#: Fractions that people spell.
_SPELT = frozenset({"half", "third", "thirds", "quarter", "quarters", "fourth", "fourths"})
_DOLLARS = frozenset({"dollar", "dollars"})
#: Places after the point that money has.
_CENTS = 2
_MEASURE_WORDS = frozenset(MARKS)
_PLACE_WORDS = frozenset(_PLACES | _COINS)
#: Every word that a number of a problem may have.
KNOWN_WORDS = _MEASURE_WORDS | _PLACE_WORDS | _AND
_PARTS = frozenset({TokenKind.NUMBER, TokenKind.HOLE})
_RANK = {unit.mark: rank for rank, unit in enumerate(MEASURES)}
_KIND = {unit.mark: unit.kind for unit in MEASURES}

Numeral = Quantity | Gap | Impossible

#: What reads one number from a text with its line and column.
ReadNumber = Callable[[str, int, int], Quantity]

#: A slash between two numbers that is a fraction's bar wherever whole numbers stand before it: 7 2 / 6.
_BARS = frozenset({"/", "\N{DIVISION SLASH}"})
_UNCLEAR = "this may be a fraction, or one number divided by another"
UNCLEAR_REMEDY = "Write 7/4 for the fraction, and 7 / 4 or 7 \N{DIVISION SIGN} 4 to divide."


def numeral(cursor: Cursor, *, impossible: bool = False) -> Numeral:
    """Read one number, or refuse where it breaks off.

    ``impossible`` allows what a child may write and no problem has: a denominator of 0, and money with more
    places after the point than cents have. $5.5 stays refused: it may be $5.50 or $5.05.
    """
    if cursor.took(TokenKind.DOLLAR):
        return _dollars(cursor, impossible=impossible)
    if cursor.here.sort is TokenKind.POINTED:
        return _with_unit(cursor, _pointed(cursor.take().text), impossible=impossible)
    if cursor.word_ahead(1, _MEASURE_WORDS):
        return _measured(cursor)
    if cursor.word_ahead(1, _DOLLARS) and (cents := _cents_ahead(cursor)) is not None:
        return _dollars_and_cents(cursor, cents)
    if cursor.word_ahead(1, _PLACE_WORDS):
        return _placed(cursor)
    return _with_unit(cursor, _mixed(cursor, impossible=impossible), impossible=impossible)


def _with_unit(cursor: Cursor, number: Numeral, *, impossible: bool) -> Numeral:
    """Read the unit behind a fraction, a mixed number or a decimal: 5 5/8 in."""
    if not isinstance(number, Quantity):
        return number
    if number.ladder.style is Style.DECIMAL and cursor.word_ahead(0, _DOLLARS):
        _check_cents(cursor, number, more=impossible)
        cursor.take()
        return with_mark(number, DOLLAR)
    if number.ladder.style is Style.PLACES or not is_unit(cursor.here, cursor.ahead(1)):
        return number
    return with_mark(number, MARKS[cursor.take().text])


def _dollars(cursor: Cursor, *, impossible: bool) -> Numeral:
    """Read money after its dollar sign: whole dollars, or cents after the point."""
    if cursor.took(TokenKind.HOLE):
        return Gap(HOLE)
    if cursor.here.sort is not TokenKind.POINTED:
        return whole(cursor.number("how many dollars"), DOLLAR)
    found = with_mark(_pointed(cursor.here.text), DOLLAR)
    _check_cents(cursor, found, more=impossible)
    cursor.take()
    return found


def _cents_ahead(cursor: Cursor) -> int | None:
    """Return where cents stand after dollars, fewer than a dollar's: 3 dollars and 25 cents."""
    at = 3 if cursor.word_ahead(2, _AND) else 2
    cents = cursor.ahead(at)
    if cents.sort is not TokenKind.NUMBER or not cursor.word_ahead(at + 1, _CENT):
        return None
    return at if int(cents.text) < TEN**_CENTS else None


def _dollars_and_cents(cursor: Cursor, at: int) -> Quantity:
    dollars, cents = cursor.here.text, int(cursor.ahead(at).text)
    for _ in range(at + 2):
        cursor.take()
    return with_mark(_pointed(f"{int(dollars)}.{cents:0{_CENTS}}"), DOLLAR)


def _check_cents(cursor: Cursor, money: Quantity, *, more: bool) -> None:
    if money.ladder.after < _CENTS or (money.ladder.after > _CENTS and not more):
        cursor.refuse("money has two places after the point, for the cents", "Write $3.50, or $3.")


def signed(cursor: Cursor) -> WithMinus | None:
    """Read a number with a minus sign before it, before its denominator or both; None where none stands.

    A problem has no such number; a child may write one as an answer.
    """
    front = cursor.took(TokenKind.MINUS)
    if _fraction_ahead(cursor) and cursor.ahead(2).sort is TokenKind.MINUS:
        top = cursor.number("a numerator")
        cursor.take()
        cursor.take()
        _check_bottom(cursor, impossible=True)
        bottom = cursor.number("a denominator")
        inside = Quantity(mixed(bottom), (None, top)) if bottom else Impossible(None, top)
        return WithMinus(inside, front=front, below=True)
    if not front:
        return None
    found = numeral(cursor, impossible=True)
    if isinstance(found, Gap):
        cursor.refuse_hole(
            "a number with a minus sign has no missing part", "Write the number that stands there."
        )
    return WithMinus(found)


def _pointed(text: str) -> Quantity:
    before, _, after = text.partition(".")
    digits = (before or "0") + after
    ladder = decimal(len(digits) - len(after), len(after))
    return Quantity(ladder, tuple(int(digit) for digit in digits))


def _measured(cursor: Cursor) -> Quantity:
    counts: list[int] = []
    marks: list[str] = []
    while not cursor.word_ahead(0, _TO) and (
        cursor.word_ahead(1, _MEASURE_WORDS) or (counts and cursor.word_ahead(0, _AND))
    ):
        if counts and cursor.word_ahead(0, _AND):
            cursor.take()
        counts.append(cursor.number("how many of the unit"))
        marks.append(_mark(cursor, marks))
    if marks == [cursor.fraction_unit]:
        return whole(counts[0], marks[0])
    if cursor.here.sort is TokenKind.NUMBER and cursor.fraction_unit:
        cursor.refuse("a fraction beside a larger unit is not read", "Write it in one unit: 15 1/2 in.")
    return Quantity(measure(*marks), tuple(counts))


def _mark(cursor: Cursor, before: list[str]) -> str:
    """Read a unit that comes after larger ones of its kind."""
    mark = MARKS.get(cursor.here.text, "")
    if not mark:
        cursor.refuse("a unit is missing after the number", "Write a measure as in 5 ft 2 in.")
    if before and (_RANK[mark] <= _RANK[before[-1]] or _KIND[mark] is not _KIND[before[-1]]):
        cursor.refuse("the smaller unit comes second, and measures the same thing", "Write 5 ft 2 in.")
    cursor.take()
    return mark


def blanks_ahead(cursor: Cursor) -> bool:
    """Say whether a measure with its counts missing comes next: ? ft ? in."""
    return cursor.here.sort is TokenKind.HOLE and cursor.word_ahead(1, _MEASURE_WORDS)


def blanks(cursor: Cursor) -> Ladder:
    """Read the units of a measure of which every count is missing: ? ft ? in."""
    marks: list[str] = []
    while blanks_ahead(cursor):
        cursor.take()
        marks.append(_mark(cursor, marks))
    return measure(*marks)


def _placed(cursor: Cursor) -> Quantity:
    found: dict[int, int] = {}
    money = False
    while not found or (cursor.word_ahead(1, _PLACE_WORDS) and cursor.here.sort is TokenKind.NUMBER):
        count = cursor.number("how many")
        word = cursor.here.text
        money = money or word in _COINS
        power = _PLACES[word] if word in _PLACES else _COINS[word]
        if found and power >= min(found):
            cursor.refuse("places go from the largest to the smallest", "Write 4 tens 12 ones.")
        cursor.take()
        found[power] = count
    first, last = max(0, *found), min(0, *found)
    counts = tuple(found.get(power, 0) for power in range(first, last - 1, -1))
    mark = DOLLAR if money else ""
    if money and len(found) == 1 and 0 in found:
        return whole(found[0], mark)
    return Quantity(decimal(first + 1, -last, mark) if last < 0 else places(first + 1, mark), counts)


def _mixed(cursor: Cursor, *, impossible: bool) -> Numeral:
    if cursor.here.sort not in _PARTS:
        if cursor.word_ahead(0, _SPELT) or cursor.word_ahead(1, _SPELT):
            cursor.refuse("a fraction is written with digits", "Write for example 1/2 of 20, 3/4 x 2 ft.")
        cursor.refuse("a number is missing")
    if cursor.ahead(1).sort is TokenKind.UNCLEAR:
        cursor.refuse_at(cursor.ahead(1), _UNCLEAR, UNCLEAR_REMEDY)
    if _fraction_ahead(cursor):
        return _built(cursor, None, *_fraction(cursor, impossible=impossible))
    wholes = _part(cursor, "a number")
    if cursor.word_ahead(0, _AND) and not cursor.word_ahead(1, _AND):
        cursor.take()
        if not _loose_fraction_ahead(cursor):
            cursor.refuse("a fraction is missing after “and”", "Write 3 and 5/6.")
    if _loose_fraction_ahead(cursor):
        return _built(cursor, wholes, *_fraction(cursor, impossible=impossible))
    if cursor.here.sort is TokenKind.NUMBER:
        cursor.refuse(
            "two numbers stand side by side", "Put a sign between them, or write a fraction: 7 2/6."
        )
    return _whole(wholes)


def _whole(wholes: int | type_hole) -> Quantity | Gap:
    return Gap(wholes) if wholes is HOLE else whole(wholes)


def _fraction_ahead(cursor: Cursor) -> bool:
    return cursor.ahead(1).sort is TokenKind.SLASH and cursor.here.sort in _PARTS


def _loose_fraction_ahead(cursor: Cursor) -> bool:
    """Say whether a fraction comes next behind wholes, where a slash cannot divide: 7 2 / 6."""
    bar = cursor.ahead(1)
    return cursor.here.sort in _PARTS and (bar.sort is TokenKind.SLASH or bar.text in _BARS)


def _fraction(cursor: Cursor, *, impossible: bool) -> tuple[int | type_hole, int | type_hole]:
    top = _part(cursor, "a numerator")
    cursor.take()
    _check_bottom(cursor, impossible=impossible)
    return top, _part(cursor, "a denominator")


def _check_bottom(cursor: Cursor, *, impossible: bool) -> None:
    """Refuse a denominator that stands here and is 0 (but for what is impossible) or too large."""
    parts = int(cursor.here.text) if cursor.here.sort is TokenKind.NUMBER else 1
    if parts == 0 and not impossible:
        cursor.refuse("a whole cannot be cut into 0 equal parts", "Use a denominator of 1 or more.")
    if parts > LARGEST_DENOMINATOR:
        remedy = f"Use a denominator of {LARGEST_DENOMINATOR} or less; grade 4 uses 2 to 12 and 100."
        cursor.refuse("so many equal parts are not worked here", remedy)


def _part(cursor: Cursor, wanted: str) -> int | type_hole:
    if cursor.took(TokenKind.HOLE):
        return HOLE
    return cursor.number(wanted)


def _built(
    cursor: Cursor, wholes: int | type_hole | None, top: int | type_hole, bottom: int | type_hole
) -> Numeral:
    holes = [wholes, top, bottom].count(HOLE)
    if holes > 1:
        cursor.refuse_hole("only one part of a number can be missing", "Leave one ? and fill in the others.")
    if wholes is HOLE or top is HOLE or bottom is HOLE:
        return Gap(wholes, top, bottom)
    if bottom == 0:
        return Impossible(wholes, top)
    return Quantity(mixed(bottom), (wholes, top))
