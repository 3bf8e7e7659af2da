"""The pupil whom a code, a number or a name in a table means."""

import re
import unicodedata
from collections.abc import Sequence
from enum import Enum

from msgspec import Struct

_CODE = re.compile(r"k ?0*(\d{1,4})", re.IGNORECASE)
_CODE_FIRST = re.compile(r"(k ?\d{1,4})[\s.:)\]-]+(.+)", re.IGNORECASE)
_CODE_LAST = re.compile(r"(.+?)[\s(\[]+(k ?\d{1,4})[)\]]?", re.IGNORECASE)
_CODE_LIKE = re.compile(r"[A-Za-z]{1,3}[- ]?\d{1,4}")
_WORDS = re.compile(r"[^\W\d_]+")


class MatchedBy(Enum):
    """What says who is meant: the code, the whole name, a part of it, a number, or nothing."""

    CODE = "code"
    NAME = "name"
    PART = "part"
    NUMBER = "number"
    NOTHING = "nothing"


class ListedPupil(Struct, frozen=True):
    """A pupil of the class as the teacher lists them; the name is empty where none was typed."""

    code: str
    name: str = ""

    @property
    def number(self) -> int:
        """Return the number in the code: 7 of K07."""
        return int(re.sub(r"\D", "", self.code) or 0)


class PupilMatch(Struct, frozen=True):
    """Whom a text may mean, by codes; none for a stranger. ``doubted``: a part of it is of somebody else."""

    by: MatchedBy
    codes: tuple[str, ...] = ()
    doubted: bool = False


STRANGER = PupilMatch(MatchedBy.NOTHING)


def looks_like_code(text: str) -> bool:
    """Say whether a text looks like the code of a pupil, of this class or another.

    >>> looks_like_code("K99"), looks_like_code("P 3"), looks_like_code("3 3/6")
    (True, True, False)
    """
    return _CODE_LIKE.fullmatch(text) is not None


def match_pupil(text: str, pupils: Sequence[ListedPupil]) -> PupilMatch:
    """Return whom a text means: a code (K07, k7), a name in any usual order, both, or a part of a name.

    A code beside a name means who has both; where they are of two pupils, both may be meant.

    >>> listed = (ListedPupil("K01", "Maya Rivera"), ListedPupil("K02", "Ben"), ListedPupil("K03"))
    >>> [match_pupil(text, listed).codes for text in ("k1", "Rivera, Maya", "K02 Maya Rivera", "Zoe")]
    [('K01',), ('K01',), ('K02', 'K01'), ()]
    >>> match_pupil("Maya", listed).by, match_pupil("Ben Okafor", listed).by
    (<MatchedBy.PART: 'part'>, <MatchedBy.PART: 'part'>)
    """
    if found := _CODE.fullmatch(text):
        return _of_number(int(found[1]), pupils, MatchedBy.CODE)
    if found := _CODE_FIRST.fullmatch(text):
        return _both(found[1], found[2], pupils)
    if found := _CODE_LAST.fullmatch(text):
        return _both(found[2], found[1], pupils)
    if text.isascii() and text.isdecimal() and len(text) < 5:
        return _of_number(int(text), pupils, MatchedBy.NUMBER)
    words = name_words(text)
    if not words:
        return STRANGER
    same = tuple(one.code for one in pupils if one.name and sorted(name_words(one.name)) == sorted(words))
    if same:
        return PupilMatch(MatchedBy.NAME, same)
    partly = tuple(one.code for one in pupils if one.name and _partly(words, name_words(one.name)))
    return PupilMatch(MatchedBy.PART, partly) if partly else STRANGER


def name_words(text: str) -> tuple[str, ...]:
    """Return the words of a name without accents and in small letters.

    >>> name_words("José  D'Souza-Lee")
    ('jose', 'd', 'souza', 'lee')
    """
    plain = unicodedata.normalize("NFKD", text).casefold()
    return tuple(_WORDS.findall("".join(sign for sign in plain if not unicodedata.combining(sign))))


def _of_number(number: int, pupils: Sequence[ListedPupil], by: MatchedBy) -> PupilMatch:
    codes = tuple(one.code for one in pupils if one.number == number)
    return PupilMatch(by, codes) if codes else STRANGER


def _both(code: str, name: str, pupils: Sequence[ListedPupil]) -> PupilMatch:
    of_code, of_name = match_pupil(code, pupils), match_pupil(name, pupils)
    if not of_code.codes:
        return PupilMatch(of_name.by, of_name.codes, doubted=True)
    here = next(one for one in pupils if one.code == of_code.codes[0])
    if here.code in of_name.codes or not (here.name or of_name.codes):
        return of_code
    return PupilMatch(MatchedBy.CODE, (*of_code.codes, *of_name.codes), doubted=True)


def _partly(words: tuple[str, ...], name: tuple[str, ...]) -> bool:
    """Say whether the shorter of two names is a part of the longer one; an initial stands for a word."""
    short, long = sorted((words, name), key=len)
    if len(short) == 1 and len(short[0]) == 1:
        return False
    left = list(long)
    for word in short:
        fits = next((one for one in left if one == word), None) or next(
            (one for one in left if len(word) == 1 or len(one) == 1 if one[0] == word[0]), None
        )
        if fits is None:
            return False
        left.remove(fits)
    return any(len(word) > 1 and word in long for word in short)
