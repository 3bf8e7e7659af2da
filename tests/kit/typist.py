"""Spoken words typed out: what is heard becomes text, each piece with the word it comes from."""

import re
from dataclasses import dataclass

from onewhole.languages.english.speech import HUNDRED, SIGNS, THOUSAND
from onewhole.languages.english.words import FORMS, count_words, measure_name, piece_name
from onewhole.number.ladder import TEN
from onewhole.number.unit import MEASURES
from onewhole.statements.row import Sign
from onewhole.statements.tokens import ReadingError
from onewhole.statements.unit_words import FLUID_OUNCE

LONGEST_SPEECH = 20_000
REMEDY = "Say it as in: seven and two sixths minus three and five sixths."

_WORD = re.compile(r"[^\s,]+,?")
_SMALL = {count_words(count): count for count in range(HUNDRED)}
_DIGITS = {count_words(digit): str(digit) for digit in range(TEN)}
_GROUPS = {"thousand": THOUSAND, "million": THOUSAND**2}
_NAMED = (*range(2, HUNDRED + 1), THOUSAND)
_PIECES = {piece_name(parts, count): parts for parts in _NAMED for count in (1, 2)}
_PLACE = frozenset({"one", "ten", "hundred", "thousand"})
_SMALL_PLACE = frozenset(piece_name(parts, 1) for parts in (TEN, HUNDRED, THOUSAND))
_ONE_PLACE = {("one", "hundred"), ("one", "thousand")}
_MEASURES = {measure_name(unit, count): unit.mark for unit in MEASURES for count in (1, 2)}
_MONEY = frozenset({"dollar", "dollars", "dime", "dimes"})
#: The bar of a fraction, which never divides, whatever stands beside it.
BAR = "\N{FRACTION SLASH}"
_PHRASES = (
    {phrase: BAR if sign is Sign.OVER else sign.value for sign, phrase in SIGNS.items()}
    | {phrase: phrase for phrase in FORMS.values()}
    | {"and": "and", "blank": "?"}
)


@dataclass(frozen=True, slots=True)
class Word:
    """A word as it was heard, in small letters, where it begins (from 1), and whether a rest follows it."""

    said: str
    column: int
    rest: bool = False

    def place(self) -> str:
        """Say which word it is, for a refusal."""
        return f"at the word “{self.said}”" if self.said else "at the end"


#: Typed pieces, each with the first word it comes from; the last piece is empty and stands at the end.
Typed = tuple[tuple[str, Word], ...]


def heard(words: str) -> tuple[Word, ...]:
    """Cut speech into words, ending with an empty one. Raises ReadingError for more than 20,000 characters.

    >>> [word.said for word in heard("One hundred, twelve tens.")]
    ['one', 'hundred', 'twelve', 'tens', '']
    """
    if len(words) > LONGEST_SPEECH:
        msg = f"so many words are not read: {len(words)} characters"
        raise ReadingError(msg, column=1, remedy="Say one problem at a time.")
    kept = words.rstrip().removesuffix(".")
    found = (
        Word(piece.group().rstrip(",").lower(), piece.start() + 1, rest=piece.group().endswith(","))
        for piece in _WORD.finditer(kept)
    )
    return (*found, Word("", len(kept) + 1))


def typed(words: str) -> Typed:
    """Type what was said. Raises ReadingError for a word that has no place in a problem.

    >>> " ".join(piece for piece, _ in typed("six and blank sixths equals five point two")).rstrip()
    '6 and ? \u2044 6 = 5.2'
    """
    return _Typist(heard(words)).typed()


class _Typist:
    """Goes through the words and types."""

    def __init__(self, words: tuple[Word, ...]) -> None:
        self._words = words
        self._at = 0
        self._found: list[tuple[str, Word]] = []

    def typed(self) -> Typed:
        among_places = False
        while self._here.said:
            if self._here.said in _SMALL:
                among_places = self._number(among_places=among_places)
            else:
                among_places = False
                self._sign()
        return (*self._found, ("", self._here))

    @property
    def _here(self) -> Word:
        return self._words[self._at]

    def _take(self) -> Word:
        self._at += 1
        return self._words[self._at - 1]

    def _type(self, piece: str, word: Word) -> None:
        self._found.append((piece, word))

    def _sign(self) -> None:
        """Type a sign, a blank, or the name of the pieces after a blank."""
        first = self._here
        for phrase, sign in _PHRASES.items():
            end = self._at + phrase.count(" ") + 1
            if " ".join(word.said for word in self._words[self._at : end]) == phrase:
                self._at = end
                self._type(sign, first)
                return
        if self._found and self._found[-1][0] == "?" and self._measure():
            return
        if first.said not in _PIECES or not self._found or self._found[-1][0] != "?":
            raise _refused("this word has no place here", first)
        self._type(f"{BAR} {_PIECES[self._take().said]}", first)

    def _number(self, *, among_places: bool) -> bool:
        """Type a count and what is counted; say whether a place was counted."""
        first, start = self._here, self._at
        if first.said == "zero" and self._words[start + 1].said in _DIGITS:
            digits = self._digits()
            if self._here.said != "point":
                raise _refused("a point is missing after a number that begins with zero", self._here)
            self._type(digits + self._pointed(), first)
            return False
        count = self._count()
        if (minutes := self._minutes(count)) is not None:
            self._type(f"{count}:{minutes:02}{self._half()}", first)
            return False
        said, rest = [word.said for word in self._words[start : self._at]], self._words[self._at - 1].rest
        places = _PLACE | _SMALL_PLACE if among_places else _PLACE
        if count != 1:
            places = frozenset(f"{place}s" for place in places)
        unit = self._here
        if tuple(said) in _ONE_PLACE and (rest or (among_places and unit.said not in places)):
            self._type(f"1 {said[1]}", first)
            return True
        self._type(f"{count}{self._pointed()}", first)
        if unit.said in places:
            self._type(self._take().said, unit)
        elif unit.said in _PIECES:
            self._type(f"{BAR} {_PIECES[self._take().said]}", unit)
            self._part_of_a_measure()
        elif unit.said == "of":
            self._part_of_a_measure()
        else:
            self._measure()
        return unit.said in places

    def _part_of_a_measure(self) -> None:
        """Type the unit that a fraction is of, if one is said here: of a mile."""
        if self._here.said == "of" and self._words[self._at + 1].said in {"a", "an"}:
            self._take()
            self._take()
        self._measure()

    def _measure(self) -> bool:
        """Type the unit behind a number, if one is said here, and say whether one is."""
        unit = self._here
        if unit.said in _MEASURES or unit.said in _MONEY:
            self._type(_MEASURES.get(self._take().said, unit.said), unit)
        elif unit.said == "fluid" and self._words[self._at + 1].said in {"ounce", "ounces"}:
            self._take()
            self._take()
            self._type(FLUID_OUNCE, unit)
        else:
            return False
        return True

    def _minutes(self, hour: int) -> int | None:
        """Read the minutes after an hour: forty-five, oh five, o'clock; None where it is no clock time."""
        here, after = self._here.said, self._words[min(self._at + 1, len(self._words) - 1)].said
        if not 1 <= hour <= TEN + 2:
            return None
        if here in {"o'clock", "noon", "midnight"}:
            self._at += here == "o'clock"
            return 0
        if here == "oh" and after in _DIGITS:
            self._at += 2
            return int(_DIGITS[after])
        if TEN <= _SMALL.get(here, 0) < 60 and (hour, here) != (1, "ten"):
            return _SMALL[self._take().said]
        return None

    def _half(self) -> str:
        """Read a m, p m, noon or midnight after a clock time."""
        said = [word.said for word in self._words[self._at : self._at + 2]]
        if said in (["a", "m"], ["p", "m"]):
            self._at += 2
            return f" {said[0]}m"
        if said[:1] in (["noon"], ["midnight"]):
            return f" {self._take().said}"
        return ""

    def _count(self) -> int:
        """Read a count: one thousand one hundred five."""
        total, smaller = 0, THOUSAND**3
        while True:
            group = _SMALL[self._take().said]
            if self._here.said == "hundred" and 0 < group < TEN:
                group *= HUNDRED
                if not self._take().rest and self._here.said in _SMALL:
                    group += _SMALL[self._take().said]
            scale = _GROUPS.get(self._here.said, 1)
            if scale == 1 or scale >= smaller:
                return total + group
            total, smaller = total + group * scale, scale
            if self._take().rest or self._here.said not in _SMALL:
                return total

    def _pointed(self) -> str:
        """Read the point of a decimal and the digits after it, or nothing when no point is said."""
        if self._here.said != "point":
            return ""
        self._take()
        if self._here.said not in _DIGITS:
            raise _refused("a digit is missing after the point", self._here)
        return f".{self._digits()}"

    def _digits(self) -> str:
        found = ""
        while self._here.said in _DIGITS:
            found += _DIGITS[self._take().said]
        return found


def _refused(what: str, word: Word) -> ReadingError:
    return ReadingError(what, column=word.column, where=word.place(), remedy=REMEDY)
