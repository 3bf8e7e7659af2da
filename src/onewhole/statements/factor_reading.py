"""Reading what a word answers: is 37 prime or composite, is 84 a multiple of 7, is 7 a factor of 84."""

import re
from collections.abc import Mapping
from types import MappingProxyType

from onewhole.errors import OnewholeError
from onewhole.statements.factor_question import REMEDY, FactorQuestion, WordAnswer
from onewhole.statements.numerals import ReadNumber
from onewhole.statements.tokens import ReadingError

_PRIME = r"(?:a\s+)?prime(?:\s+number)?"
_COMPOSITE = r"(?:a\s+)?composite(?:\s+number)?"
_ASKS = re.compile(
    rf"\s*(?:is\s+(?P<number>\S+?)\s+(?:{_PRIME}(?:(?:,|\s+or)\s+{_COMPOSITE})?(?:,?\s+or\s+neither)?"
    r"|(?:(?:a\s+)?multiple\s+of|divisible\s+by)\s+(?P<step>\S+?)(?:\s+or\s+not)?"
    r"|(?:a\s+)?factor\s+of\s+(?P<whole>\S+?)(?:\s+or\s+not)?)"
    rf"|{_PRIME}\s+or\s+{_COMPOSITE}(?:\s+or\s+neither)?\s*[:,]\s*(?P<prime>\S+?)"
    r"|multiple\s+of\s+(?P<by>\S+?)\s+or\s+not\s*[:,]\s*(?P<of>\S+?)"
    r"|factor\s+of\s+(?P<all>\S+?)\s+or\s+not\s*[:,]\s*(?P<into>\S+?))\s*[.?=]?\s*\Z",
    re.IGNORECASE,
)
_BEGINS = re.compile(r"\s*(?:is\s+[\d?]|prime\b|(?:multiple|factor)\s+of\b)", re.IGNORECASE)

#: What a child writes for each word, small, without full stops and accents at the end. Short forms are those
#: that are seen on paper: common practice, no source.
_WRITTEN: Mapping[WordAnswer, tuple[str, ...]] = MappingProxyType(
    {
        WordAnswer.PRIME: (
            "prime",
            "a prime",
            "prime number",
            "a prime number",
            "p",
            "primo",
            "número primo",
        ),
        WordAnswer.COMPOSITE: (
            *("composite", "a composite", "composite number", "a composite number", "c"),
            *("compuesto", "número compuesto"),
        ),
        WordAnswer.NEITHER: (
            *("neither", "neither one", "neither prime nor composite", "not prime or composite"),
            *("ninguno", "ni uno ni otro", "ni primo ni compuesto"),
        ),
        WordAnswer.YES: ("yes", "y", "sí", "si", "s", "true"),
        WordAnswer.NO: ("no", "n", "not", "false"),
    }
)
_NUMBER_IS = re.compile(r"(?:yes,?\s+)?(?:it\s+is|it's|is|es|\d+\s+is|\d+\s+es)\s+", re.IGNORECASE)


def factor_question(text: str, line: int, column: int, read: ReadNumber) -> FactorQuestion | None:
    """Read a question that a word answers; None where the line is none.

    Raises ReadingError.

    >>> from onewhole.statements.reading import read_quantity
    >>> factor_question("Is 37 a prime number?", 1, 1, read_quantity).found.value
    'prime'
    >>> factor_question("is 84 a multiple of 7", 1, 1, read_quantity).found.value
    'yes'
    >>> factor_question("is 7 a factor of 84", 1, 1, read_quantity).number.parts
    84
    """
    if _BEGINS.match(text) is None:
        return None
    asked = _ASKS.match(text)
    if asked is None:
        msg = "it is not clear what is asked of this number"
        raise ReadingError(msg, line=line, column=column, remedy=REMEDY)
    of_factor = bool(asked["whole"] or asked["all"])
    numbers: tuple[str, ...] = ("number", "prime", "of")
    steps = ("step", "by")
    if of_factor:
        numbers, steps = ("whole", "all"), ("number", "into")
    number, step = (
        next((read(asked[at], line, column + asked.start(at)) for at in places if asked[at]), None)
        for places in (numbers, steps)
    )
    assert number is not None, "every way to ask names a number"
    try:
        return FactorQuestion(number, step, of_factor=of_factor)
    except OnewholeError as error:
        raise ReadingError(error.what, line=line, column=column, remedy=error.remedy) from error


def word_answer(text: str, asked: FactorQuestion) -> WordAnswer | None:
    """Read the word that a child wrote, in English or Spanish, whole or its first letter; None for no word.

    >>> from onewhole.number.quantity import whole
    >>> asked = FactorQuestion(whole(37))
    >>> [word_answer(text, asked) for text in ("P", "compuesto", "37 is prime.", "maybe")]
    [<WordAnswer.PRIME: 'prime'>, <WordAnswer.COMPOSITE: 'composite'>, <WordAnswer.PRIME: 'prime'>, None]
    """
    plain = " ".join(text.casefold().split()).strip(" .!?=")
    for written in (plain, _NUMBER_IS.sub("", plain, count=1)):
        for word in asked.choices:
            if written in _WRITTEN[word]:
                return word
    return None
