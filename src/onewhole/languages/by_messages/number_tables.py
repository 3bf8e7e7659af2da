"""Numbers, units and lines read aloud, from a language's tables of words."""

from collections.abc import Callable, Mapping
from typing import assert_never

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.language import CountWords
from onewhole.number.clock import shown
from onewhole.number.digits import in_digits, named_places
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import CENT, CLOCK, DOLLAR, HALVES, ONE, Kind, Unit, unit_marked
from onewhole.number.with_minus import WithMinus
from onewhole.sentences.node import Thing
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.line_plot import Bound, PlotAsk
from onewhole.statements.row import Blanks, FlatPiece, Part, Sign, flat
from onewhole.statements.wording import (
    FactorWords,
    FromEnd,
    GroupWords,
    OfPlot,
    Phrase,
    ToNearest,
    Wording,
    WordsBefore,
    WordsBehind,
)
from onewhole.statements.writable import Writable

_HUNDRED, _THOUSAND, _MILLION = 100, 1000, 1_000_000


class NumberTables(Struct, frozen=True):
    """The words for numbers of a language, and what follows from them for every line.

    ``counts`` says a count as it agrees with what is counted, ``pieces`` names one or more of so many equal
    parts. ``whole`` is the noun of a mixed number, which keeps 30 2/3 and 32/3 apart. ``measures`` are, by
    their abbreviation, one and many; ``places`` one and many by their worth, with ``thousands`` and
    ``millions`` behind the small ones. ``feminine`` says whether a word is feminine, ``places_feminine``
    whether those of places are. ``articles`` tell the gender of a whole that a class names; ``plurals`` makes
    one word many. ``joins`` is "and", ``of`` stands between pieces and their unit, ``point`` in a decimal;
    ``halves`` are by a.m. and p.m. ``asks_order``, ``asks_round``, ``asks_factors`` and ``asks_multiples``
    ask for that, ``falling`` and ``rising`` are the two parts of an order, and ``nearest`` what stands before
    and behind the unit that is rounded to, where its word is masculine and where it is feminine.
    """

    counts: CountWords
    pieces: Callable[[int, int], str]
    whole: Thing
    measures: Mapping[str, tuple[str, str]]
    places: Mapping[int, tuple[str, str]]
    thousands: str
    millions: str
    feminine: Callable[[str], bool]
    places_feminine: bool
    articles: Mapping[str, bool]
    plurals: Callable[[str], str]
    signs: Mapping[Sign, str]
    forms: Mapping[NumberForm, str]
    halves: Mapping[str, str]
    blank: str
    joins: str
    of: str
    point: str
    whole_number: Thing
    asks_order: str
    asks_round: str
    asks_factors: str
    asks_multiples: str
    of_factors: Mapping[Phrase | FactorWords | GroupWords, str]
    asks_of_plot: Mapping[PlotAsk, str]
    bounds: Mapping[Bound, str]
    falling: tuple[str, str]
    rising: tuple[str, str]
    nearest: tuple[tuple[str, str], tuple[str, str]]
    example: str

    def is_feminine(self, of: Unit | Thing) -> bool:
        """Say whether the word for a unit or a thing is feminine."""
        if isinstance(of, Thing):
            return of.feminine
        if of.mark in {CLOCK, HALVES}:
            return of.size > 1
        if (of.mark and of.size == 1) or of.kind is not Kind.NUMBER:
            return self.feminine(self.measures[of.mark][0])
        return of.size >= 1 and self.places_feminine

    def called(self, unit: Unit | Thing, count: int = 2) -> str:
        """Return what so many of a unit or a thing are called."""
        if isinstance(unit, Thing):
            return unit.one if count == 1 else unit.many
        if unit.mark in {CLOCK, HALVES}:
            return self.measures["h" if unit.size > 1 else "min"][count != 1]
        if unit.kind is not Kind.NUMBER or (unit.mark and unit.size == 1):
            return self.measures[unit.mark][count != 1]
        if unit.size < 1:
            return self.pieces(unit.size.denominator, count)
        size, behind = unit.size.numerator, ""
        for words, worth in ((self.millions, _MILLION), (self.thousands, _THOUSAND)):
            if size >= worth:
                size, behind = size // worth, words
                break
        return f"{self.places[size][count != 1]}{behind}"

    def place_written(self, unit: Unit, count: int = 2) -> str:
        """Return what a place is called on a line."""
        return self.called(unit if unit.mark == DOLLAR else replace(unit, mark=""), count)

    def read_whole(self, typed: str, words: ClassWords) -> ClassWords:
        """Read what a class calls a whole: tira, uma tira, or um pão, pães. Raises InputError for nothing."""
        one, _, many = (part.strip() for part in typed.partition(","))
        article, _, rest = one.partition(" ")
        told_gender = self.articles.get(article.lower())
        name = one if told_gender is None else rest.strip()
        if not name:
            msg = f"“{typed[:40]}” names nothing"
            raise InputError(msg, remedy=f"Write one of them, as in: {self.example}.")
        head, space, behind = name.partition(" ")
        plural = f"{self.plurals(head)}{space}{behind}"
        feminine = self.feminine(name) if told_gender is None else told_gender
        return replace(words, whole=name, wholes=many or plural, feminine=feminine)

    def short(self, words: ClassWords) -> ClassWords:
        """Return the class's words without what the whole is made of."""
        brief = (name.partition(f" {self.of} ")[0] for name in (words.whole, words.wholes))
        whole, wholes = brief
        return replace(words, whole=whole, wholes=wholes)

    def wording_parts(self, thing: Wording) -> tuple[str, ...]:
        """Write words of a line in parts between which it may be broken."""
        match thing:
            case Phrase.ROUND:
                return (self.asks_round,)
            case Phrase.ORDER:
                return (self.asks_order,)
            case Phrase.FACTORS:
                return (self.asks_factors,)
            case Phrase.MULTIPLES:
                return (self.asks_multiples,)
            case Phrase() | FactorWords() | GroupWords():
                return (self.of_factors[thing],)
            case OfPlot(asks, bound):
                return (self.asks_of_plot[asks], *((self.bounds[bound],) if bound else ()))
            case FromEnd(falling):
                return self.falling if falling else self.rising
            case ToNearest(unit):
                rung: Unit | Thing = self.whole_number if unit == ONE else unit
                before, behind = self.nearest[self.is_feminine(rung)]
                return f"{before} {self.called(rung, 1)}", behind
            case _:
                assert_never(thing)

    def say(self, thing: Writable) -> str:
        """Say a line in words; a mixed number is said with its noun."""
        return " ".join(self._said(piece) for piece in flat(thing)).replace(" ,", ",")

    def say_before(self, thing: Writable, _rest: str) -> tuple[str, int]:
        """Say a number as it stands before the rest of a typed text."""
        return self.say(thing), 0

    def _said(self, piece: FlatPiece) -> str:
        match piece:
            case Sign():
                return self.signs[piece]
            case WordsBefore() | WordsBehind():
                return " ".join(self.wording_parts(piece))
            case Quantity():
                return self._quantity(piece)
            case Gap(wholes, top, bottom):
                return self._mixed(wholes, top, bottom)
            case Impossible(wholes, top):
                return self._mixed(wholes, top, 0)
            case WithMinus(below=True):
                top, bottom = piece.fraction
                minus, over = self.signs[Sign.MINUS], self.signs[Sign.OVER]
                front = f"{minus} " if piece.front else ""
                return f"{front}{self.counts(top)} {over} {minus} {self.counts(bottom)}"
            case WithMinus():
                return f"{self.signs[Sign.MINUS]} {self._said(piece.unsigned)}"
            case Blanks(units):
                return f" {self.joins} ".join(f"{self.blank} {self.called(unit)}" for unit in units.units)
            case NumberForm():
                return self.forms[piece]
            case _:
                assert_never(piece)

    def _quantity(self, number: Quantity) -> str:
        ladder = number.ladder
        match ladder.style:
            case Style.MIXED:
                wholes, top = number.counts
                return self._mixed(wholes, top, ladder.denominator, ladder.mark)
            case Style.MEASURE if ladder.clock:
                hour, minutes, half = shown(number)
                return f"{self.counts(hour, unit_marked('h'))} {self.joins} {self.counts(minutes)}" + (
                    f" {self.halves[half]}" if half else ""
                )
            case Style.MEASURE:
                return f" {self.joins} ".join(map(self._counted, number.amounts, ladder.units))
            case Style.PLACES | Style.DECIMAL if not in_digits(number):
                return " ".join(
                    f"{self.counts(at, unit)} {self.place_written(unit, at)}"
                    for at, unit in named_places(number)
                )
            case Style.PLACES | Style.DECIMAL if ladder.mark == DOLLAR:
                dollars, cents = divmod(int(number.value * _HUNDRED), _HUNDRED)
                said = self._counted(dollars, unit_marked(DOLLAR))
                return (
                    f"{said} {self.joins} {self._counted(cents, unit_marked(CENT))}" if ladder.after else said
                )
            case Style.PLACES | Style.DECIMAL:
                return self._digits(number)
            case _:
                assert_never(ladder.style)

    def _digits(self, number: Quantity) -> str:
        mark, amounts = number.ladder.mark, number.amounts
        before = amounts[: len(amounts) - number.ladder.after]
        ones = int("".join(map(str, before)) or "0")
        said = [self.counts(ones, unit_marked(mark) if mark else None)]
        if number.ladder.after:
            said += [self.point, *(self.counts(digit) for digit in amounts[len(before) :])]
        return " ".join([*said, self.measures[mark][1]] if mark else said)

    def _counted(self, count: int, unit: Unit) -> str:
        return f"{self.counts(count, unit)} {self.called(unit, count)}"

    def _mixed(self, wholes: Part, top: Part, bottom: Part, mark: str = "") -> str:
        noun: Unit | Thing = unit_marked(mark) if mark else self.whole
        if top is None:
            return self._part(wholes, None)
        named = isinstance(bottom, int) and (1 < bottom <= _HUNDRED or bottom == _THOUSAND)
        pieces = self.pieces(bottom, 1 if top == 1 else 2) if named and isinstance(bottom, int) else ""
        behind = pieces or f"{self.signs[Sign.OVER]} {self._part(bottom, None)}"
        fraction = f"{self._part(top, None)} {behind}"
        if wholes is None:
            return f"{fraction} {self.of} {self.called(noun, 1)}" if mark else fraction
        return (
            f"{self._part(wholes, noun)} {self.called(noun, 1 if wholes == 1 else 2)} {self.joins} {fraction}"
        )

    def _part(self, count: Part, of: Unit | Thing | None) -> str:
        return self.blank if count is HOLE else self.counts(count or 0, of)
