"""Problems on every ladder that a pattern may show on, and what numbers and units belong to a problem."""

from collections.abc import Iterator
from fractions import Fraction

from onewhole.misconceptions.case import Case
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import ONE, Unit, unit_marked
from onewhole.sentences.node import Counted, Naming, Node, Said, Thing
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Times,
    WithRemainder,
    quantities,
    value,
)
from onewhole.statements.gap import Gap
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    NumberRow,
    Ordering,
    Question,
    Statement,
)
from onewhole.working.line import LineContent
from tests.kit.heard import sides

_LIKE = (
    "9 {a} - 4 {b}; 9 {b} - 4 {a}; 1 {a} - {b}; 6 - 2 {b}; 1 - {b}; 4 - {a}; 5 {a} - 2; "
    "12 {a} - 7 {a}; {b} - {a}; 2 {a} + 1 {b}; {a} + {b}; {b} + {b}; 3 {b} + 4; "
    "1 {b} + 2 {b}; 5 {b} - 5 {a}; 7 {b} - {a}; 3 {a} - 1 {b}"
)
_UNLIKE = "{a} + {b}; 1 {b} - {a}; 5 {a} - 2 {b}; 3 {b} + 1 {a}; {b} + 4 {a}; 9 {b} - 3 {a}"
_DENOMINATORS = (2, 3, 6, 8, 10, 100)
_PAIRS = ((2, 3), (3, 4), (4, 8), (6, 4), (5, 10), (12, 6), (10, 100), (8, 12))

#: Problems that need no filling, by the ladder that they stand on.
TYPED = {
    "whole numbers": (
        "42 - 16; 71 - 38; 143 - 28; 703 - 245; 904 - 7; 1300 - 522; 3006 - 1807; 506 - 318; "
        "207 - 169; 140 - 21; 57 - 20; 83 - 23; 73 - 24; 65 - 48; 733 - 216; 535 - 278; "
        "347 - 9; 548 - 2; 4369 - 22; 143 - 22; 833 - 277; 402 - 6; 86 - 29; 306 - 8; "
        "32 - 15; 802 - 304; 40 - 27; 8000 - 2345; 12005 - 3978; 1204 - 387; 5006 - 1308; "
        "1111 - 999; 110 - 15; 200 - 101; 1010 - 202; 54321 - 12345; 100 - 1; 61 - 9; "
        "555 - 455; 53 - 44"
    ),
    "whole-number sums": (
        "478 + 256; 423 + 315; 345 + 27; 308 + 451; 876 + 145; 478 + 756; 47 + 25; 437 + 284; 46 + 3; "
        "478 + 56; 9878 + 609; 930 + 94; 9988 + 802; 698 + 5; 4999 + 888; 98 + 7; 5 + 38; 109 + 203; "
        "345678 + 54322; 1005 + 96; 907 + 841; 300 + 45; 60 + 50; 27 + 8; 999999 + 1"
    ),
    "decimals": (
        "7.31 - 6.4; 4.7 - 0.24; 20 - 7.70; 3.00 - 0.45; 58.0 - 1.8; 5.2 - 2.7; 12.05 - 3.8; "
        "0.8 + 0.4; 5 + 0.3; 0.45 + 0.3; 2.75 + 1.5; 6 - 0.05; 40.06 - 8.7; 9.1 - 0.35; "
        "100 - 0.1; 7.5 - 2.5; 3.85 + 0.4; 1.25 - 0.5; 0.134 ? 0.2; 1.35 ? 1.2; 3.05 ? 3.4; "
        "3.7 + 2.5; 3.76 + 2.58; 0.3 + 0.4; 3 + 4.25; 9.80 + 5.4; 7.93 + 2.9; 9 + 1.53; 2.6 + 4.54; "
        "0.68 + 0.4; 12.5 + 3.46; 5.95 + 12.07; 45.6 + 7; 0.05 + 0.02; "
        "2 ? 1.95; 0.7 ? 0.65; 4.5 ? 4.25; 1 - 0.5; 2 - 0.25; 10.2 - 9.75"
    ),
    "one fraction": (
        "3/4 = ?; 3/100 = ?; 7/10 = ?; 1/2 = ?; 2/5 = ?; 45/100 = ?; 2 3/4 = ?/4; 11/4 = ?; "
        "1 5/6 = ?/6; 7 1/2 = ?; 23/8 = ?; 3 9/10 = ?/10; 4 2/5 = ?/5; 17/5 = ?; 22/3 = ?; 31/4 = ?; "
        "12/16 = ?; 8/12 = ?; 6/18 = ?; 1/4 = ?; 0.4 = ?; 0.49 = ?; 0.35 = ?; 0.05 = ?; 11/8 = ?"
    ),
    "rounding": (
        "round 3472 to hundreds; round 3431 to hundreds; round 3446 to hundreds; round 3428 to hundreds; "
        "round 74580 to ten thousands; round 47 to tens; round 3.46 to tenths; "
        "round 18.379 to the nearest tenth; round 2 5/8 to the nearest whole number; "
        "round 2 1/8 to the nearest whole number; round 5 ft 8 in to the nearest foot"
    ),
    "missing numbers": (
        "2 3/8 + ? = 5 1/8; 1 + ? = 8; ? + 3/4 = 2; ? - 2/8 = 3/8; ? - 5 = 8; 9 - ? = 3 1/2; 4 - ? = 1; "
        "8 + 4 = ? + 5; 7 + 8 = ? + 6; 1/2 + 1/4 = ? + 1/8; 2.5 + ? = 4; 3 ft - ? = 1 ft 4 in; "
        "2 + ? + 3 = 9; 1/2 + ? + 1/4 = 1; 2 1/4 + 1 3/4 + 3/4; 345 + 128 + 67; 5 1/6 + 2 3/6 - 1 5/6"
    ),
    "factors and multiples": (
        "factors of 12; factors of 36; factors of 7; multiples of 7 to 30; multiples of 6 to 30; "
        "multiples of 9 to 60"
    ),
    "what a remainder means": (
        "50 / 8, groups needed; 65 / 9, groups needed; 1128 / 36, groups needed; 50 / 8, full groups; "
        "87 / 4, full groups; 50 / 8, left over; 34 / 8, left over; 13 / 9, left over"
    ),
    "prime or composite, a multiple or not": (
        "is 15 prime or composite; is 2 prime or composite; is 1 prime or composite; "
        "is 51 prime or composite; "
        "is 91 prime or composite; is 37 prime or composite; is 84 a multiple of 7; is 26 a multiple of 3; "
        "is 7 a factor of 84"
    ),
    "line plots": (  # no blank behind the semicolon of a plot: one stands between two problems
        "plot 1/4: 2, 1/2: 3, 3/4: 1;total; plot 1/4: 2, 1/2: 3, 3/4 in: 1;count; plot 2: 3, 5: 1;most; "
        "plot 1/4: 2, 1/2: 3, 3/4 in: 1;spread; plot 1/4: 2, 1/2: 3, 3/4 in: 2;count above 1/4; "
        "plot 3/8: 3, 1 1/8: 2, 1 1/2 lb: 1;count below 1 1/2; plot 1/2: 3, 1: 1;share"
    ),
    "several steps": (
        "4 + 3 x 7; 3 x (2 + 5); 20 - 3 x 4; 18 / 9 x 2; 10 - 3 + 2; 18 / 6 + 4 x (5 - 2); 10 - (3 + 2); "
        "2 x (3 ft 4 in + 2 ft 9 in); 24 / (2 x 3); 9 - 2 x 3/4; (20 - 8)/4"
    ),
    "equal fractions": (
        "3/4 = ?/8; 2/3 = 4/?; 2/3 = ?/6; 4/8 = 1/?; 18/20 = 9/?; 6/8 = ?/4; 12/24 = 1/?; "
        "1/2 = ?/4; 9/12 = ?/4; 1/5 = 2/?; 16/64 = 1/?; 6/9 = ?/3; 3/5 = ?/100; 4/4 = 2/?; "
        "1/3 = ?/12; 10/100 = ?/10"
    ),
    "comparing": (
        "1/8 ? 1/4; 3/8 ? 2/3; 2/5 ? 3/7; 4/5 ? 11/12; 9/13 ? 4/13; 5/6 ? 8/19; 2/5 ? 1/2; "
        "3/4 ? 6/8; 7/8 ? 1/2; 1/100 ? 1/10; 1/2 ? 1/3; 5/6 ? 3/4; 2/2 ? 3/4; 5/8 ? 3/8; "
        "7/10 ? 1/10; 3/2 ? 5/4; 1/12 ? 11/12; 7/3 ? 2; 3 ? 9/4; 4/2 ? 2; 7/2 ? 5/4"
    ),
    "comparing mixed numbers": (
        "3 1/4 ? 3 3/4; 1 2/5 ? 1 1/2; 2 3/4 ? 5 1/4; 3 2/4 ? 1 1/2; 2 1/8 ? 2 1/4; 2 2/3 ? 2 4/6; "
        "2 3/8 ? 2 2/3; 1 1/6 ? 1 2/3; 5 1/100 ? 5 1/10; 12 7/10 ? 12 1/2"
    ),
    "comparing decimals": (
        "4.63 ? 4.8; 3.06 ? 3.6; 0.50 ? 0.5; 4.08 ? 4.8; 1.7 ? 1.09; 4.452 ? 4.45; 0.134 ? 2.5; 0.4 ? 0.5; "
        "1.20 ? 1.2; 12.05 ? 12.5; 2.100 ? 2.1; 0.07 ? 0.070"
    ),
    "comparing whole numbers": "999 ? 1001; 36 ? 452; 8 ? 15; 70000 ? 654321",
    "products of whole numbers": (
        "47 x 6; 63 x 8; 24 x 36; 407 x 8; 24 x 30; 8 x 304; 5078 x 3; 3050 x 5; 9054 x 3; 58 x 20; 7 x 8"
    ),
    "products of fractions": (
        "1/2 x 3/4; 2/5 x 3/5; 2/3 x 4/7; 2 1/2 x 3 1/4; 5 2/3 x 2 3/4; 1/2 x 3 1/4; 3 4/5 x 1/6; 6/8 x 2/8"
    ),
    "quotients of whole numbers": (
        "824 / 4; 87 / 4; 84 / 3; 246 / 4; 74 / 2; 1211 / 7; 95 / 4; 705 / 5; 1655 / 27; 3 / 4; "
        "916 / 9; 50 / 8"
    ),
    "quotients of fractions": (
        "3/4 / 2/5; 2/7 / 3/5; 2/9 / 4/3; 6/8 / 2/8; 3 / 1/4; 1/3 / 4; 6 3/4 / 3; 1/5 / 6; 8 / 1/3"
    ),
    "quotients of measures and decimals": "5 ft 2 in / 2; 5.2 / 4; 6.3 / 3; $5 / 3; 7 lb 8 oz / 4",
    "a whole opened in a name": "7 2/6 = 6 ?/6; 3 5/8 = 2 ?/8; 4 1/10 = 3 ?/10; 1 2/3 = ?/3",
    "whole numbers as fractions": "3 as a fraction; 8 as a fraction; 12 as a fraction",
    "cents": "75¢ + 50¢; 85¢ + 47¢; 75¢ - 48¢; 90¢ - 8¢; 99¢ + 1¢",
    "one unit": "46 ft + 27 ft; 50 min - 35 min",
    "parts of amounts": "3/4 of 2 ft; 5/6 x 2 h 30 min; $12 x 3/4; 2/5 of $15; 1 1/2 x 2 ft; 2 2/3 x $6",
    "times": (
        "6 x 4/7; 3 x 2/5; 3 x 2/7; 3 x 2 1/4; 3 x 2 2/4; 2/3 x 4; 1 3/8 x 5; 10 x 3/100; "
        "2 x 1/2; 4 x 5/6; 2 x 1 1/2; 12 x 2/3; 3 x 1/3"
    ),
    "feet and inches": (
        "5 ft 3 in - 2 ft 8 in; 5 ft - 2 ft 8 in; 1 ft 1 in - 2 in; 12 ft 7 in - 4 ft 11 in; "
        "6 ft 1 in - 1 ft 9 in; 5 ft 8 in + 2 ft 7 in; 1 ft 3 in + 4 ft 9 in; 4 ft 9 in + 1 in; "
        "2 ft ? 20 in; 40 in ? 3 ft"
    ),
    "yards and feet": "6 yd 1 ft - 2 yd 2 ft; 4 yd - 1 yd 1 ft; 2 yd 1 ft - 2 ft; 2 yd 2 ft + 1 yd 2 ft",
    "pounds and ounces": (
        "7 lb 3 oz - 2 lb 9 oz; 4 lb - 1 lb 6 oz; 20 lb 12 oz - 6 lb 13 oz; 2 lb 9 oz + 9 oz"
    ),
    "hours and minutes": (
        "7 h 8 min - 2 h 53 min; 3 h - 45 min; 1 h 1 min - 2 min; 5 h 30 min - 1 h 45 min; "
        "1 h 50 min + 20 min; 1 h 50 min + 2 h 55 min; 59 min + 2 h 1 min"
    ),
    "inches with fractions": (
        "5 5/8 in - 2 7/8 in; 5 in - 2 3/8 in; 2 1/2 in + 1 3/4 in; 7/8 in - 3/8 in; 3 3/4 in + 2 3/4 in; "
        "5 5/8 in ? 5 3/4 in"
    ),
    "money": "$3.25 + $1.80; $5 - $2.35; $50 - $31.64; $7.05 - $0.98; $3.25 ? $3.05; $5 - ? = $2.35",
    "conversions": (
        "36 in = ? ft; 36 ft = ? in; 3 ft = ? in; 3 h = ? min; 6 yd = ? ft; 4 km = ? m; 2 gal = ? qt; "
        "5 ft 3 in = ? in; 2 km 4 m = ? m; 1 h 20 min = ? min; 3 lb 2 oz = ? oz; 9 ft = ? yd; 24 qt = ? gal; "
        "26 in = ? ft ? in; 130 min = ? h ? min; 90 min = ?; 26 in = ?; 250 cm = ? m ? cm; 21 oz = ? lb ? oz"
    ),
    "minutes and seconds": "2 min 15 s - 48 s; 5 min - 1 min 20 s; 3 min 50 s + 2 min 35 s",
    "three units": (
        "2 yd 1 ft 3 in - 1 yd 2 ft 8 in; 5 yd - 1 yd 2 ft 8 in; 2 yd 1 ft 8 in + 1 yd 1 ft 9 in; "
        "3 h 5 min 20 s - 1 h 40 min 50 s; 1 h 50 min 40 s + 2 h 55 min 30 s"
    ),
    "weeks and days": "3 wk 2 d - 1 wk 5 d; 4 wk - 1 wk 3 d; 1 wk 6 d + 2 wk 4 d",
    "days and hours": "3 d 5 h - 1 d 20 h; 2 d - 9 h; 1 d 18 h + 15 h",
    "miles": "2 mi 1500 ft - 1 mi 3000 ft; 2 mi 200 yd - 1 mi 900 yd; 1 mi 1000 yd + 900 yd",
    "tons and pounds": "3 T 500 lb - 1 T 800 lb; 1 T 1500 lb + 700 lb",
    "gallons and quarts": "2 gal 1 qt - 3 qt; 5 gal - 2 gal 3 qt; 1 gal 3 qt + 2 gal 2 qt",
    "quarts, pints and cups": "3 qt - 1 qt 1 pt; 2 pt - 1 c; 2 qt 1 pt + 1 pt; 3 pt 1 c + 1 c",
    "cups and fluid ounces": "3 c 2 fl oz - 1 c 5 fl oz; 2 c 6 fl oz + 5 fl oz",
    "kilometers and meters": "3 km 250 m - 1 km 800 m; 5 km - 2 km 600 m; 2 km 700 m + 450 m",
    "meters and centimeters": "3 m 5 cm - 1 m 38 cm; 2 m 70 cm + 1 m 45 cm; 1 m - 4 cm",
    "centimeters and millimeters": "3 cm 2 mm - 1 cm 9 mm; 3 cm 8 mm + 4 cm 9 mm",
    "kilograms and grams": "4 kg 50 g - 1 kg 975 g; 3 kg - 450 g; 2 kg 800 g + 700 g",
    "liters and milliliters": "5 L 200 mL - 2 L 900 mL; 1 L 500 mL + 750 mL",
}


def ladders() -> Iterator[tuple[str, str]]:
    """Give problems as typed, each with the ladder it stands on."""
    for bottom in _DENOMINATORS:
        few, many = f"{max(1, bottom // 3)}/{bottom}", f"{bottom - 1}/{bottom}"
        yield from _split(f"1/{bottom}", _LIKE.format(a=few, b=many))
    for one, another in _PAIRS:
        yield from _split(
            "unlike denominators", _UNLIKE.format(a=f"{one - 1}/{one}", b=f"{another // 2}/{another}")
        )
    for ladder, typed in TYPED.items():
        yield from _split(ladder, typed)


def _split(ladder: str, typed: str) -> Iterator[tuple[str, str]]:
    for problem in typed.split("; "):
        yield ladder, problem.strip()


class Belongings:
    """The numbers and units of a problem, of a working with its false line, and of the answer written."""

    def __init__(self, case: Case) -> None:
        """Gather them."""
        self.asked, self.wrote = case.statement, case.wrote
        self.found: set[Quantity] = set()
        self.numbers: set[int] = {0}
        self.units: set[Unit] = set()
        for said in (case.statement, *(line.says for line in case.slip.lines)):
            self._says(said)
        for outcome in case.slip.outcomes:
            if isinstance(outcome, Quantity):
                self._quantity(outcome)
            if isinstance(outcome, Impossible):
                self.numbers |= {outcome.top, outcome.wholes or 0}
        self.units |= {unit for one in self.found for unit in one.ladder.units}
        if any(one.ladder.style is Style.MIXED for one in self.found):
            self.units.add(ONE)
        self._renamed(case)
        self.numbers |= {part for number in self.numbers for part in divmod(number, 10)}

    def _says(self, says: LineContent | Statement) -> None:
        match says:
            case Comparison(left, right):
                self._expression(left)
                self._expression(right)
            case Question(asked) | AnotherName(asked):
                self._expression(asked)
            case MissingNumber(rest, gap, beside):
                for part in (rest, *(one for one, _ in beside)):
                    self._expression(part)
                self._gap(gap)
            case Ordering() | NumberRow():
                for part in sides(says):
                    self._expression(part)
            case Rounding():
                for part in (*sides(says), says.low, says.high):
                    self._expression(part)
                self.units.add(says.to)
            case PlotQuestion():
                self.numbers |= {count for _, count in says.plot.marks} | {says.plot.many}
                for part in (*sides(says), says.leads_to):
                    self._expression(part)
            case AskedInWords():
                for quantity in says.numbers:
                    self._quantity(quantity)
            case _:
                self._expression(says)

    def _gap(self, gap: Gap) -> None:
        self.numbers |= {part for part in (gap.wholes, gap.top, gap.bottom) if isinstance(part, int)}

    def _expression(self, expression: Expression) -> None:
        for quantity in quantities(expression):
            self._quantity(quantity)
        for part in _parts(expression):
            if isinstance(part, Over) and value(part.bottom):
                self.units.add(Unit(1 / value(part.bottom)))

    def _quantity(self, quantity: Quantity) -> None:
        self.found.add(quantity)
        self.numbers |= {*quantity.amounts, quantity.parts, int(quantity.value)}
        if quantity.ladder.style is Style.MIXED:
            self.numbers.add(quantity.ladder.denominator)
        if quantity.ladder.style is Style.MEASURE:
            self.numbers |= set(quantity.ladder.ratios)
            self._counted(quantity)
        if quantity.ladder.style is Style.DECIMAL and quantity.ladder.mark:
            self.units.add(unit_marked(quantity.ladder.mark))
        after = quantity.ladder.after
        if quantity.ladder.style is Style.DECIMAL:
            self.numbers.add(int("".join(map(str, quantity.amounts[-after:]))))

    def _counted(self, quantity: Quantity) -> None:
        """A count of one unit is worked in columns: its digits and their places are its own."""
        if len(quantity.counts) == 1:
            self._quantity(whole(quantity.parts))
            self.found.add(whole(quantity.parts // 10 % 10))

    def _renamed(self, case: Case) -> None:
        """A fraction that a child says to be equal: its pieces are what was given and what was written."""
        if isinstance(case.statement, MissingNumber):
            self.units |= {Unit(Fraction(1, number)) for number in self.numbers if number}

    def holds(self, node: Node) -> bool:
        """Say whether a node names nothing but what is the problem's own."""
        match node:
            case Counted(count, unit, spelt):
                return self._unit(unit) and count > 0 and (count in self.numbers or (spelt and count == 1))
            case Naming(unit):
                return self._unit(unit)
            case Said(Quantity() as quantity):
                return self._is_part(quantity)
            case Said(Impossible(_, top)):
                return top in self.numbers
            case Said(thing):
                parts = list(_parts(self.asked.asked)) if isinstance(self.asked, Question) else []
                return thing in parts or thing in {self.asked, self.wrote}
            case _:
                return isinstance(node, str) or not isinstance(node, Counted | Naming | Said)

    def _unit(self, unit: Unit | Thing) -> bool:
        if isinstance(unit, Thing):
            return unit.worth is None or unit.worth in self.units
        return unit in self.units

    def _is_part(self, quantity: Quantity) -> bool:
        """A number that stands there, a part of one, one turned over, or a fraction made of two of them."""
        if quantity in self.found or any(_part(quantity, one) for one in self.found):
            return True
        if quantity.counts[0] is None and any(_turned_over(quantity, one) for one in self.found):
            return True
        if quantity == whole(quantity.parts):
            return quantity.parts in self.numbers
        if quantity.ladder.style is Style.MIXED and isinstance(self.asked, MissingNumber):
            return {quantity.parts, quantity.ladder.denominator} <= self.numbers
        return False


def _parts(expression: Expression) -> Iterator[Expression]:
    """An expression and everything that it is made of."""
    yield expression
    match expression:
        case Sum(terms):
            for term in terms:
                yield from _parts(term.part)
        case Times(one, other) | Over(one, other) | Quotient(one, other):
            yield from _parts(one)
            yield from _parts(other)
        case InBrackets(inside):
            yield from _parts(inside)
        case Quantity() | WithRemainder():
            pass


def _turned_over(quantity: Quantity, of: Quantity) -> bool:
    """Say whether one is the fraction of the other with top and bottom exchanged: 5/3 of 3/5."""
    return of.ladder.style is Style.MIXED and (of.amounts[-1], of.ladder.denominator) == (
        quantity.ladder.denominator,
        quantity.parts,
    )


def _part(quantity: Quantity, of: Quantity) -> bool:
    """Say whether an amount is what some of another's units count: 5/8 of 9 5/8, 0.31 of 7.31."""
    if quantity.ladder.finest != of.ladder.finest or quantity.kind is not of.kind:
        return False
    wholes = len(of.ladder.units) - max(of.ladder.after, 1)
    kept = Quantity(of.ladder, (*(0 for _ in of.amounts[:wholes]), *of.amounts[wholes:]))
    return kept.value == quantity.value
