"""What a terminal is shown: plain signs only, whatever stands in a file, in its name or in a refusal."""

from io import TextIOBase
from typing import Final, TextIO
from unicodedata import category

#: Signs that count as printable and show nothing: joiners and fillers, from the Unicode Standard's property
#: Default_Ignorable_Code_Point (DerivedCoreProperties.txt, from memory); the choosers of emoji stay.
UNSEEN: Final = frozenset("\u034f\u115f\u1160\u17b4\u17b5\u3164\uffa0")
_LAYOUT: Final = "\n\t"


def plain(text: str) -> str:
    r"""Return a text as a terminal may show it: a control sign, an escape, one that turns the direction of
    writing, one of no width and half a sign are each a ?. Lines and tabs stay, and so do é, ñ, ⅔ and 米.

    >>> plain("Zoé \x1b[2J ⅔\n\u202eLiv")
    'Zoé ?[2J ⅔\n?Liv'
    """
    if text.isascii() and text.isprintable():
        return text
    return "".join(sign if sign in _LAYOUT or _shows(sign) else "?" for sign in text)


def plain_line(text: str) -> str:
    r"""Return a name as a terminal may show it within a line: as :func:`plain`, and on one line.

    >>> plain_line("Kites\nAll is well")
    'Kites?All is well'
    """
    return text if text.isprintable() and not UNSEEN.intersection(text) else plain(text.translate(_ONE_LINE))


_ONE_LINE: Final = dict.fromkeys(map(ord, _LAYOUT), "?")


def _shows(sign: str) -> bool:
    """Say whether a sign shows what it is; a blank of any width does."""
    return (sign.isprintable() and sign not in UNSEEN) or category(sign) == "Zs"


class Screen(TextIOBase):
    r"""A stream to a terminal on which all that is written is plain; `beneath` is the stream itself.

    It has no `buffer`: nobody writes bytes past it by mistake.

    >>> from io import StringIO
    >>> there = StringIO()
    >>> print("Kites\x1b]0;", file=Screen(there), end="")
    >>> there.getvalue()
    'Kites?]0;'
    """

    def __init__(self, beneath: TextIO) -> None:
        self.beneath = beneath

    @property
    def encoding(self) -> str:  # type: ignore[override]
        """The encoding of the stream beneath."""
        return self.beneath.encoding

    @property
    def errors(self) -> str | None:  # type: ignore[override]
        """What the stream beneath does with a sign that it cannot encode."""
        return self.beneath.errors

    def write(self, text: str) -> int:
        """Write a text, plain."""
        self.beneath.write(plain(text))
        return len(text)

    def flush(self) -> None:
        """Flush the stream beneath."""
        self.beneath.flush()

    def isatty(self) -> bool:
        """Say whether a person looks on."""
        return self.beneath.isatty()

    def fileno(self) -> int:
        """Return the number of the file beneath."""
        return self.beneath.fileno()


def beneath(stream: TextIO | Screen) -> TextIO:
    """Return the stream under a screen, for colours and progress: only for what holds no text from a file,
    or text that is plain already.
    """
    return stream.beneath if isinstance(stream, Screen) else stream
