"""A sentence with numbers in digits, turned into the words to be spoken."""

import re
from functools import lru_cache

from onewhole.errors import OnewholeError
from onewhole.languages.english.words import count_words
from onewhole.notations.speech import say
from onewhole.statements.reading import read_answer, read_expression, read_statement
from onewhole.statements.writable import Writable

#: No sentence of a walkthrough is longer; our own aim for a nine-year-old's ear.
MOST_WORDS = 20

_UNITS = r"yd|ft|in(?!\s+all\b)|lb|oz|h|min|feet|foot|inch(?:es)?|yards?|pounds?|ounces?|hours?|minutes?"
_PLACES = r"ones?|tens?|hundreds?|thousands?|ten thousands?|tenths?|hundredths?|thousandths?"
_PIECE = re.compile(rf"\d+(?:\.\d+)?|[-+x=<>()/?](?!\w*[A-Za-z])|\b(?:{_UNITS}|{_PLACES})\b(?!-)")
_BEGINS = re.compile(r"(?<![\w.])[\d(?]")
_ONE_PLACE = re.compile(rf"(\d+) ({_PLACES})")
_LABEL = re.compile(r"(\d+)(?=[A-Za-z])")
_BLANK = re.compile(r"\s*")


@lru_cache(maxsize=4096)
def aloud(sentence: str) -> str:
    """Return the words to be spoken for a sentence with numbers, expressions and statements in digits.

    The longest thing that can be read is said as one (:func:`~onewhole.notations.speech.say`), so a statement
    in a sentence is said just as the statement alone. Everything else stays, capitals and full stops too.

    >>> aloud("Set 2/6 aside: 7 2/6 - 3 5/6 = 3 3/6.")
    'Set two sixths aside: seven and two sixths minus three and five sixths equals three and three sixths.'
    """
    said, at = [], 0
    while found := _BEGINS.search(sentence, at):
        start = found.start()
        spoken, end = _longest(sentence, start)
        if end == start:  # a bracket or a question mark that belongs to no number
            said.append(sentence[at : start + 1])
            at = start + 1
            continue
        said += [sentence[at:start], spoken]
        at = end
    whole = "".join((*said, sentence[at:]))
    return _capital(whole) if sentence[:1].isdigit() or sentence[:1] == "(" else whole


def spoken_words(sentence: str) -> int:
    """Count the words that are spoken.

    >>> spoken_words("That leaves 3 3/6.")
    6
    """
    return len(aloud(sentence).split())


def _longest(sentence: str, start: int) -> tuple[str, int]:
    """Say the longest run from here on that can be read, and where it ends; a bare count at the least."""
    ends, at = [], start
    while found := _PIECE.match(sentence, at):
        ends.append(found.end())
        after = _BLANK.match(sentence, found.end())
        at = after.end() if after else found.end()
    for end in reversed(ends):
        written = sentence[start:end]
        if counted := _ONE_PLACE.fullmatch(written):  # 8 tens are not said as eighty, nor 8 tenths as 0.8
            return f"{count_words(int(counted[1]))} {counted[2]}", end
        if not any(sign.isdigit() for sign in written):
            continue
        if (thing := _read(written)) is not None:
            tail = " " if sentence[end : end + 1].isalpha() else ""
            return say(thing) + tail, end
    label = _LABEL.match(sentence, start)
    if label:
        return f"{count_words(int(label[1]))} ", label.end()
    return "", start


def _read(written: str) -> Writable | None:
    for reader in (read_statement, read_expression, read_answer):
        try:
            return reader(written)
        except OnewholeError:
            continue
    return None


def _capital(sentence: str) -> str:
    return sentence[:1].upper() + sentence[1:]
