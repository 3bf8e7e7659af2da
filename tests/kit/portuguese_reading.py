"""Spoken Portuguese read back to exact amounts: the other road of :mod:`onewhole.languages.portuguese`.

The words of numbers stand in tables of its own, typed by hand.
"""

import re
from fractions import Fraction

_FIRST = """
zero um dois três quatro cinco seis sete oito nove dez onze doze treze quatorze quinze dezesseis dezessete
dezoito dezenove
"""
_COUNTS = {word: at for at, word in enumerate(_FIRST.split())} | {
    "uma": 1,
    "duas": 2,
    "cem": 100,
    "cento": 100,
}
_COUNTS |= {"vinte": 20, "trinta": 30, "quarenta": 40, "cinquenta": 50, "sessenta": 60, "setenta": 70}
_COUNTS |= {"oitenta": 80, "noventa": 90, "duzentos": 200}
_NAMED = {"meio": 2, "terço": 3, "quarto": 4, "quinto": 5, "sexto": 6, "sétimo": 7, "oitavo": 8, "nono": 9}
_NAMED |= {"décimo": 10, "centésimo": 100}


def count_read(words: str) -> int:
    """Read a count below a thousand. Raises KeyError for a word that is none.

    >>> count_read("cento e vinte e um")
    121
    """
    return sum(_COUNTS[word] for word in words.split() if word != "e")


def unsay_amount(words: str) -> Fraction:
    """Read a number: wholes with their noun, pieces, or both.

    >>> unsay_amount("trinta inteiros e dois terços"), unsay_amount("vinte e dois doze avos")
    (Fraction(92, 3), Fraction(11, 6))
    """
    found = re.fullmatch(r"(?:(.+) inteiros? e )?(.+)", words)
    assert found is not None
    wholes = count_read(found[1]) if found[1] else 0
    pieces = found[2]
    if pieces.endswith(" avos"):
        return wholes + _avos(pieces.removesuffix(" avos").split())
    top, _, name = pieces.rpartition(" ")
    return wholes + Fraction(count_read(top), _NAMED[name.removesuffix("s")])


def _avos(words: list[str]) -> Fraction:
    """Read two counts that stand one after the other: a new one begins where no "e" joins."""
    at = next(at for at in range(1, len(words)) if "e" not in words[at - 1 : at + 1])
    return Fraction(count_read(" ".join(words[:at])), count_read(" ".join(words[at:])))
