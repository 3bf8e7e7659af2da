"""Spoken Spanish read back to exact amounts: the other road of :mod:`onewhole.languages.spanish.speech`.

Nothing here knows how a number was said: the words of numbers stand in tables of its own, typed by hand.
"""

import re
from fractions import Fraction

_FIRST = """
cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete
dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete
veintiocho veintinueve
"""
_ONES = {word: count for count, word in enumerate(_FIRST.split())}
_ONES |= {"un": 1, "una": 1, "veintiún": 21, "veintiuna": 21}
_TENS = {"treinta": 30, "cuarenta": 40, "cincuenta": 50, "sesenta": 60, "setenta": 70, "ochenta": 80}
_TENS |= {"noventa": 90}
_STEMS = "cien doscient trescient cuatrocient quinient seiscient setecient ochocient novecient"
_HUNDREDS = {"cien": 100, "ciento": 100} | {
    f"{stem}{end}": 100 * at for at, stem in enumerate(_STEMS.split(), 1) if at > 1 for end in ("os", "as")
}
_NAMED = {"medio": 2, "tercio": 3, "cuarto": 4, "quinto": 5, "sexto": 6, "séptimo": 7, "octavo": 8}
_NAMED |= {"noveno": 9, "décimo": 10, "centésimo": 100, "milésimo": 1000}
_PLAIN = str.maketrans("áéíóúú", "aeiouu")


def count_read(words: str) -> int:
    """Read a count. Raises KeyError for a word that is none.

    >>> count_read("doscientas treinta y una"), count_read("veintiún mil ciento cinco")
    (231, 21105)
    """
    total = held = 0
    for word in words.replace(" y ", " ").split():
        if word == "mil":
            total, held = total + 1000 * (held or 1), 0
        else:
            held += _word(word)
    return total + held


def _word(word: str) -> int:
    for table in (_ONES, _TENS, _HUNDREDS):
        if word in table:
            return table[word]
    raise KeyError(word)


def pieces_read(name: str) -> int:
    """Read of how many equal parts a piece is one. Raises KeyError.

    >>> pieces_read("doceavos"), pieces_read("treintaiunavo"), pieces_read("medio")
    (12, 31, 2)
    """
    one = name.removesuffix("s")
    if one in _NAMED:
        return _NAMED[one]
    stem = one.removesuffix("avo")
    if stem == one:
        raise KeyError(name)
    plain = {word.translate(_PLAIN): count for word, count in _ONES.items()}
    for tens, worth in ((word[:-1], worth) for word, worth in _TENS.items()):
        if stem == tens:
            return worth
        if stem.startswith(f"{tens}ai"):
            return worth + plain[stem.removeprefix(f"{tens}ai")]
    return plain[stem]


def unsay_amount(words: str) -> Fraction:
    """Read a number: wholes with their noun, pieces, or both.

    >>> unsay_amount("treinta enteros y dos tercios"), unsay_amount("treinta y dos tercios")
    (Fraction(92, 3), Fraction(32, 3))
    """
    found = re.fullmatch(r"(?:(.+) enteros? y )?(.+)", words)
    assert found is not None
    wholes = count_read(found[1]) if found[1] else 0
    if " sobre " in found[2]:
        top, bottom = found[2].split(" sobre ")
        return wholes + Fraction(count_read(top), count_read(bottom))
    top, _, name = found[2].rpartition(" ")
    return wholes + (Fraction(count_read(top), pieces_read(name)) if top else Fraction(count_read(name)))
