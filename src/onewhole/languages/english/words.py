"""English: counts, units and plurals in words."""

from collections.abc import Iterable
from fractions import Fraction
from functools import cache

from msgspec.structs import replace
from num2words import num2words  # type: ignore[import-untyped]

from onewhole.languages.class_words import FIRST_TAG, ClassWords
from onewhole.number.name_wanted import NumberForm
from onewhole.number.unit import CLOCK, DOLLAR, HALVES, ONE, Kind, Unit

_MEASURES = {
    "mi": ("mile", "miles"),
    "yd": ("yard", "yards"),
    "ft": ("foot", "feet"),
    "in": ("inch", "inches"),
    "T": ("ton", "tons"),
    "lb": ("pound", "pounds"),
    "oz": ("ounce", "ounces"),
    "gal": ("gallon", "gallons"),
    "qt": ("quart", "quarts"),
    "pt": ("pint", "pints"),
    "c": ("cup", "cups"),
    "fl oz": ("fluid ounce", "fluid ounces"),
    "wk": ("week", "weeks"),
    "d": ("day", "days"),
    "h": ("hour", "hours"),
    "min": ("minute", "minutes"),
    "s": ("second", "seconds"),
    "km": ("kilometer", "kilometers"),
    "m": ("meter", "meters"),
    "cm": ("centimeter", "centimeters"),
    "mm": ("millimeter", "millimeters"),
    "kg": ("kilogram", "kilograms"),
    "g": ("gram", "grams"),
    "L": ("liter", "liters"),
    "mL": ("milliliter", "milliliters"),
    "$": ("dollar", "dollars"),
    "¢": ("cent", "cents"),
}

#: What the places after the point are called in money.
_COINS = {Fraction(1, 10): ("dime", "dimes"), Fraction(1, 100): ("cent", "cents")}

#: The words for the form in which a number is wanted, as they stand after it.
FORMS = {
    NumberForm.SIMPLEST: "in simplest form",
    NumberForm.MIXED: "as a mixed number",
    NumberForm.FRACTION: "as a fraction",
    NumberForm.DECIMAL: "as a decimal",
}


#: The BCP 47 tag of American English.
TAG = FIRST_TAG


def words_for(whole: str, regroup: str = "regroup") -> ClassWords:
    """Make the words of a class from what it calls one whole.

    >>> words_for("strip of kite paper").wholes
    'strips of kite paper'
    """
    return ClassWords(whole, plural(whole), regroup)


def known(_word: str) -> None:
    """Find no English words for a whole: those that a class says are English already."""


def read_whole(typed: str, words: ClassWords) -> ClassWords:
    """Read what a class calls a whole, with its plural; the class's other words stay.

    >>> read_whole("loaf of bread", ClassWords()).wholes
    'loaves of bread'
    """
    return replace(words, whole=typed, wholes=plural(typed))


def names_listed(names: Iterable[str]) -> str:
    """Write names as they are read out: one, two and three.

    >>> names_listed(["1", "3", "5"])
    '1, 3 and 5'
    """
    *most, last = names
    return f"{', '.join(most)} and {last}" if most else last


def plural(thing: str) -> str:
    """Return the plural of a thing's name; of "strip of paper" the strip is put in the plural.

    >>> [plural(thing) for thing in ("whole", "box", "berry", "tray", "loaf of bread")]
    ['wholes', 'boxes', 'berries', 'trays', 'loaves of bread']
    """
    head, of, rest = thing.partition(" of ")
    if head.endswith(("s", "x", "z", "ch", "sh")):
        many = f"{head}es"
    elif head.endswith("y") and not head.endswith(("ay", "ey", "oy", "uy")):
        many = f"{head[:-1]}ies"
    elif head.endswith(("loaf", "half", "leaf")):
        many = f"{head[:-1]}ves"
    else:
        many = f"{head}s"
    return f"{many}{of}{rest}"


#: Words that sound as if they began with another letter than they do: an hour, a unit, a one.
_SOUNDS_AS_VOWEL = ("hour", "heir", "honest")
_SOUNDS_AS_CONSONANT = ("uni", "eu", "use", "once")


def article(thing: str) -> str:
    """Return the word before one of a thing, a or an, by its sound.

    >>> [article(thing) for thing in ("strip", "inch", "hour", "unit")]
    ['a', 'an', 'an', 'a']
    """
    low = thing.lower()
    consonant = low.startswith(_SOUNDS_AS_CONSONANT) or low.split()[:1] == ["one"]
    vowel = low.startswith(("a", "e", "i", "o", "u")) and not consonant
    return "an" if vowel or low.startswith(_SOUNDS_AS_VOWEL) else "a"


def short(words: ClassWords) -> ClassWords:
    """Return the class's words without what the whole is made of, for every mention but the first.

    >>> short(words_for("strip of kite paper")).wholes
    'strips'
    """
    brief = words.whole.partition(" of ")[0], words.wholes.partition(" of ")[0]
    return replace(words, whole=brief[0], wholes=brief[1])


@cache
def count_words(count: int) -> str:
    """Return a count in words, without "and", which joins wholes and pieces, and without commas.

    >>> count_words(1105)
    'one thousand one hundred five'
    """
    return str(num2words(count)).replace(" and ", " ").replace(",", "")


@cache
def piece_name(parts: int, count: int = 2) -> str:
    """Return what one or more of so many equal parts are called; only one is singular, 0 sixths are sixths.

    >>> piece_name(6), piece_name(2, 1), piece_name(2), piece_name(4, 3), piece_name(24), piece_name(100, 0)
    ('sixths', 'half', 'halves', 'fourths', 'twenty-fourths', 'hundredths')
    """
    if parts == 2:
        one, many = "half", "halves"
    else:
        spelt = str(num2words(parts, to="ordinal")).replace(" and ", " ").replace(",", "")
        one = (spelt.removeprefix("one ") if spelt.count(" ") == 1 else spelt).replace(" ", "-")
        many = f"{one}s"
    return one if count == 1 else many


def place_name(unit: Unit, count: int = 2) -> str:
    """Return what one or more of a place are called: ten, ones, hundreds, ten thousands, tenths.

    >>> from onewhole.number.ladder import decimal
    >>> [place_name(unit) for unit in decimal(5, 1).units]
    ['ten thousands', 'thousands', 'hundreds', 'tens', 'ones', 'tenths']
    >>> [place_name(unit) for unit in decimal(1, 2, "$").units]
    ['dollars', 'dimes', 'cents']
    """
    if unit.mark and unit.size == 1:
        return unit_called(unit.mark, count)
    if unit.mark == DOLLAR and unit.size in _COINS:
        return _COINS[unit.size][count != 1]
    if unit.size < 1:
        return piece_name(unit.size.denominator, count)
    one = count_words(unit.size.numerator).removeprefix("one ") if unit.size > 1 else "one"
    return one if count == 1 else f"{one}s"


def place_written(unit: Unit, count: int = 2) -> str:
    """Return what a place is called on a line: ones and tenths, whatever they count, but dollars and dimes.

    >>> from onewhole.number.ladder import decimal
    >>> [place_written(unit) for unit in decimal(1, 1, "km").units]
    ['ones', 'tenths']
    """
    return place_name(unit if unit.mark == DOLLAR else replace(unit, mark=""), count)


def measure_name(unit: Unit, count: int = 2) -> str:
    """Return what one or more of a measure's unit are called: foot, feet. KeyError for a number's unit."""
    if unit.mark in {CLOCK, HALVES}:
        return unit_called("h" if unit.size > 1 else "min", count)
    return unit_called(unit.mark, count)


def unit_called(mark: str, count: int = 2) -> str:
    """Return what one or more of a unit are called, by its abbreviation.

    >>> unit_called("in"), unit_called("$", 1)
    ('inches', 'dollar')
    """
    return _MEASURES[mark][count != 1]


def unit_name(unit: Unit, count: int = 2, words: ClassWords | None = None) -> str:
    """Return what one or more of a unit are called: sixth, tens, inches, and ones or the class's wholes.

    >>> from onewhole.number.ladder import mixed
    >>> [unit_name(unit, 3, ClassWords("strip", "strips")) for unit in mixed(6).units]
    ['strips', 'sixths']
    """
    if unit.kind is not Kind.NUMBER:
        return measure_name(unit, count)
    if unit == ONE and words:
        return words.whole if count == 1 else words.wholes
    return place_name(unit, count)
