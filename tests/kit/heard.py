"""What a listener knows of a problem when a sentence is said, and amounts read from spoken words."""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from onewhole.errors import OnewholeError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.words import count_words
from onewhole.number.quantity import Quantity, with_mark
from onewhole.number.unit import Kind, unit_marked
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Expression, kind, quantities, value
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
from onewhole.walkthroughs.lesson import Item
from onewhole.working.line import LineContent
from tests.kit.spoken_reading import unsay_expression

COUNTS = {count_words(count): count for count in range(1000)}
_NUMBER_WORDS = {word for words in COUNTS for word in words.split()} | {"point", "blank"}
#: Places whose names are two words, which cannot be typed.
_PLACES = {"ten thousand": 10**4, "hundred thousand": 10**5}
_WORD = re.compile(r"[a-z]+(?:-[a-z]+)*")


@dataclass(frozen=True, slots=True)
class Heard:
    """What a listener knows when a sentence is said: the problem, the class's words, the labels so far."""

    item: Item
    words: ClassWords
    labels: frozenset[str]

    @property
    def lines(self) -> tuple[LineContent, ...]:
        """Every line of the working, or the problem alone."""
        if self.item.working is not None:
            return tuple(line.says for line in self.item.working.lines)
        match self.item.statement:
            case Question(amount) | AnotherName(amount):
                return (amount,)
            case _:
                return ()

    def worked_by(self, way: str) -> bool:
        """Say whether the problem is worked by a way, given by its key."""
        return self.item.working is not None and self.item.working.strategy == way

    @property
    def numbers(self) -> tuple[Quantity, ...]:
        """Every number that stands on a line."""
        return tuple(number for says in self.lines for side in sides(says) for number in quantities(side))

    @property
    def given(self) -> tuple[Fraction, ...]:
        """The amounts that the problem itself gives."""
        first = self.lines[:1]
        return tuple(number.value for says in first for side in sides(says) for number in quantities(side))

    def amount(self, words: str) -> Fraction:
        """Read an amount: four and two fifths, four strips and two fifths, twelve inches, one ten."""
        try:
            return self._value(words)
        except OnewholeError:
            parts = [part for piece in words.split(" and ") for part in piece.split(", ")]
            return sum((self._counted(part) for part in parts), Fraction(0))

    def _counted(self, part: str) -> Fraction:
        for name in (self.words.whole, self.words.wholes):
            if part.endswith(f" {name}"):
                return value(unsay_expression(part.removesuffix(f" {name}")))
        for place, worth in _PLACES.items():
            count = part.removesuffix("s").removesuffix(f" {place}")
            if count != part.removesuffix("s"):
                return Fraction(COUNTS[count] * worth)
        return self._value(part)

    def _value(self, words: str) -> Fraction:
        """Read an amount; where a unit stands behind the numbers of the problem, two cups are 2 of them."""
        said = unsay_expression(words)
        marks = (one.ladder.mark for one in self.numbers if one.kind is Kind.NUMBER)
        unit = next((mark for mark in marks if mark), "")
        return value(said) / (1 if kind(said) is Kind.NUMBER else unit_marked(unit).size)

    def stands(self, amount: Fraction) -> bool:
        """Say whether an amount is on a line: a number, or the wholes or pieces of one."""
        parts = (
            count * unit.size
            for number in self.numbers
            for count, unit in zip(number.amounts, number.ladder.units, strict=True)
        )
        return amount in {number.value for number in self.numbers} or amount in set(parts)


#: What must be so of the words in the gaps of a pattern.
Reads = Callable[[Heard, tuple[str, ...]], bool]


def equal_sides(words: str) -> bool:
    """Say whether what is said to be equal is of one kind and one amount."""
    both = [unsay_expression(side) for side in words.split(" equals ")]
    return len(both) == 2 and kind(both[0]) is kind(both[1]) and value(both[0]) == value(both[1])


def spoken(label: str) -> str:
    """Say a label: two, two a."""
    digits = re.match(r"\d+", label)
    return label if digits is None else f"{count_words(int(digits[0]))} {label[digits.end() :]}".strip()


def line_of(read: Statement) -> LineContent:
    """Return what stands on a line where a statement was read."""
    match read:
        case Question(amount) | AnotherName(amount):
            return amount
        case Comparison() | Ordering() | MissingNumber() | Rounding() | AskedInWords():
            return read


def plainly(number: Quantity) -> Quantity:
    """A number without its unit, which is not said where it stands by its places: four ones twelve tenths."""
    return with_mark(number, "") if number.kind is Kind.NUMBER else number


def ways(pattern: str, said: str) -> Iterable[tuple[str, ...]]:
    """Return the groups of a match, reading as little and as much as can be in the first one."""
    seen: set[tuple[str, ...]] = set()
    for spelt in (pattern, pattern.replace("(.+)", "(.+?)", 1)):
        found = re.fullmatch(spelt, said)
        if found and found.groups() not in seen:
            seen.add(found.groups())
            yield tuple(group or "" for group in found.groups())


def found_true(claims: Mapping[str, Reads], said: str, heard: Heard) -> str | None:
    """Return the first pattern that reads what is said and whose claim holds, or None when there is none."""
    for pattern, holds in claims.items():
        for groups in ways(pattern, said):
            try:
                if holds(heard, groups):
                    return pattern
            except (OnewholeError, KeyError):
                continue
    return None


def sides(says: LineContent) -> tuple[Expression, ...]:
    """Take a line apart into its expressions."""
    match says:
        case Comparison(left, right):
            return left, right
        case Ordering(parts) | NumberRow(parts):
            return parts
        case MissingNumber():
            return says.rest, *(part for part, _ in says.beside)
        case PlotQuestion(plot, _, among):
            return *(one for one, _ in plot.marks), *((among.value,) if among else ())
        case AskedInWords():
            return says.numbers
        case Rounding(number, _, between, gives):
            return number, *(between or ()), *((gives,) if gives else ())
        case _:
            return (says,)


def number_words(sentence: str) -> list[str]:
    """Return the number words of a spoken sentence; "one" that counts nothing is none.

    >>> number_words("That was the last one."), number_words("One strip is six sixths.")
    ([], ['one', 'six'])
    """
    plain = re.sub(r"(the last|either|another|that|this|which) one\b|the blank\b", "", sentence.lower())
    return [word for found in _WORD.findall(plain) for word in [found] if _counts(word)]


def _counts(word: str) -> bool:
    return word in _NUMBER_WORDS or ("-" in word and all(part in _NUMBER_WORDS for part in word.split("-")))
