"""The teacher's word after a talk with a child: it was a slip, this idea, or another idea."""

import re
from collections.abc import Collection
from enum import Enum

from msgspec import Struct

from onewhole.errors import InputError

#: A word about patterns that are named: the word, a colon, their ids.
_NAMED = re.compile(r"(?P<word>[^:]*?)\s*:\s*(?P<about>.*)", re.DOTALL)


class TalkSaid(Enum):
    """What a talk showed: the wrong answers were slips, come from the idea named, or from another idea."""

    SLIP = "slip"
    THIS = "this idea"
    OTHER = "another idea"


#: What may be typed for each, beside its own value.
_ALSO = {
    "it was a slip": TalkSaid.SLIP,
    "slips": TalkSaid.SLIP,
    "this": TalkSaid.THIS,
    "another": TalkSaid.OTHER,
}


class TalkWordError(InputError):
    """This is no word about a talk."""


class TalkWord(Struct, frozen=True):
    """What the teacher says after a talk; ``about`` are the ids of the patterns that were in question.

    Where the answers could not tell several patterns apart, "this idea" means that it is one of them.

    >>> TalkWord(TalkSaid.THIS, ("A01",)).text
    'this idea: A01'
    """

    said: TalkSaid
    about: tuple[str, ...] = ()

    @property
    def text(self) -> str:
        """Return the word as it is kept; :func:`read_word` gives it back."""
        return f"{self.said.value}: {' '.join(self.about)}" if self.about else self.said.value


def read_word(text: str, known: Collection[str]) -> TalkWord | None:
    """Read a word; an empty text is none. ``known`` are the ids of all patterns.

    The id of a pattern by itself means "this idea: that one". Raises TalkWordError.

    >>> read_word("it was a slip", ()), read_word("a01", {"A01"}).text
    (TalkWord(said=<TalkSaid.SLIP: 'slip'>, about=()), 'this idea: A01')
    """
    typed = " ".join(text.split())
    if not typed:
        return None
    if typed.upper() in known:
        return TalkWord(TalkSaid.THIS, (typed.upper(),))
    named = _NAMED.fullmatch(typed)
    word, about = (named["word"], tuple(named["about"].upper().split())) if named else (typed, ())
    said = _ALSO.get(word.casefold()) or next((one for one in TalkSaid if one.value == word.casefold()), None)
    if said is None:
        msg = f"“{typed[:40]}” is no word about a talk"
        raise TalkWordError(
            msg, remedy="Write slip, this idea or another idea, the id of a pattern such as A01, or nothing."
        )
    if unknown := [key for key in about if key not in known]:
        msg = f"there is no pattern “{unknown[0][:20]}”"
        raise TalkWordError(msg, remedy="Write the id as `onewhole mark` prints it, such as A01.")
    return TalkWord(said, tuple(sorted(set(about))))
