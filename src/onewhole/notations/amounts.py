"""An amount as it stands in a sentence: 1 strip, 2 1/6 strips, 5/6 of a strip, 5 feet 2 inches."""

import re

from onewhole.languages.english.words import ClassWords, measure_name
from onewhole.notations.text import text
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity

#: Words that sound as if they began with another letter than they do: an hour, a unit, a one.
_SOUNDS_AS_VOWEL = re.compile(r"hour|heir|honest")
_SOUNDS_AS_CONSONANT = re.compile(r"uni|eu|use|one\b|once")


def amount(quantity: Quantity, words: ClassWords) -> str:
    """Write an amount in digits with its unit, one or many; a number counts what the class calls a whole.

    An amount under one, and one whole in pieces, is *of* a whole; only the digit 1 stands before the
    singular. The digits read back to the same quantity.

    >>> from onewhole.statements.reading import read_expression
    >>> strip = ClassWords.for_whole("strip of paper")
    >>> [amount(read_expression(typed), strip) for typed in ("1", "2 1/6", "5/6", "5 ft 1 in")]
    ['1 strip of paper', '2 1/6 strips of paper', '5/6 of a strip of paper', '5 feet 1 inch']
    """
    if quantity.ladder.style is Style.MEASURE:
        pairs = zip(quantity.amounts, quantity.ladder.units, strict=True)
        return " ".join(f"{count} {measure_name(unit, count)}" for count, unit in pairs)
    said = text(quantity)
    if said == "1":
        return f"1 {words.whole}"
    if 0 < quantity.value < 1 or (quantity.value == 1 and quantity.ladder.style is Style.MIXED):
        return f"{said} of {with_article(words.whole)}"
    return f"{said} {words.wholes}"


def with_article(thing: str) -> str:
    """Put a or an before a thing, by its sound.

    >>> [with_article(thing) for thing in ("strip", "inch", "hour", "unit")]
    ['a strip', 'an inch', 'an hour', 'a unit']
    """
    low = thing.lower()
    vowel = low[:1] in set("aeiou") and not _SOUNDS_AS_CONSONANT.match(low)
    return f"an {thing}" if vowel or _SOUNDS_AS_VOWEL.match(low) else f"a {thing}"
