"""Braille read back: Nemeth to the plain text of a line, uncontracted UEB to words, a page to its lines.

Nothing here knows how a line was written. Source of the signs: The Nemeth Braille Code for Mathematics and
Science Notation, 1972 revision, and The Rules of Unified English Braille, 2013 (both from memory).
"""

import re
import unicodedata

BLANK = "⠀"
#: Letters of ASCII braille by rows of the braille alphabet: a to j, k to t, and so on. Source: The Rules of
#: Unified English Braille (2013), appendix 1, rows one to seven.
_ROWS = (
    ("ABCDEFGHIJ", "⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚"),
    ("KLMNOPQRST", "⠅⠇⠍⠝⠕⠏⠟⠗⠎⠞"),
    ("UVXYZ&=(!)", "⠥⠧⠭⠽⠵⠯⠿⠷⠮⠾"),
    ("*<%?:$]\\[W", "⠡⠣⠩⠹⠱⠫⠻⠳⠪⠺"),
    ("1234567890", "⠂⠆⠒⠲⠢⠖⠶⠦⠔⠴"),
    ("/+#>'-", "⠌⠬⠼⠜⠄⠤"),
    ('@^_".;,', "⠈⠘⠸⠐⠨⠰⠠"),
    (" ", BLANK),
)
_CELLS = {ord(letter): cell for letters, cells in _ROWS for letter, cell in zip(letters, cells, strict=True)}
_LETTERS = dict(zip("⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚⠅⠇⠍⠝⠕⠏⠟⠗⠎⠞⠥⠧⠺⠭⠽⠵", "abcdefghijklmnopqrstuvwxyz", strict=True))
_LOW = dict(zip("⠂⠆⠒⠲⠢⠖⠶⠦⠔⠴", "1234567890", strict=True))
_NEMETH = {
    "⠠⠄": "",  # the next word is no mathematics
    "⠠⠀": ", ",
    "⠸⠒": ":",
    "⠈⠎": "$",
    "⠈⠉": "¢",
    "⠈⠱⠈⠱": "≈",
    "⠨⠅": "=",
    "⠐⠅": "<",
    "⠨⠂": ">",
    "⠈⠡": " x ",
    "⠤⠤⠤⠤": "____",
    "⠬": " + ",
    "⠤": " - ",
    "⠷": "(",
    "⠾": ")",
    "⠿": "?",
    "⠨": ".",
    "⠰": "",
    "⠼": "",
    "⠠": "",
    BLANK: " ",
    **_LOW,
    **_LETTERS,
    **{f"⠠{cell}": letter.upper() for cell, letter in _LETTERS.items()},
    **{f"⠘⠌{cell}": f"{letter}\N{COMBINING ACUTE ACCENT}" for cell, letter in _LETTERS.items()},
}
_BY_LENGTH = sorted(_NEMETH, key=len, reverse=True)
#: A sign of comparison has a blank before it; behind a digit the same cells are a point and a digit.
_PARTED = ("⠨⠅", "⠐⠅", "⠨⠂")
#: How a fraction opens, where its line is and how it closes: with a fraction inside, mixed, simple.
_FRACTIONS = (("⠠⠹", "⠠⠌", "⠠⠼"), ("⠸⠹", "⠌", "⠸⠼"), ("⠹", "⠌", "⠼"))
#: a.m. and p.m. keep the full stops of words.
_HALF = re.compile("([⠁⠏])⠲⠍⠲")


def from_ascii(letters: str) -> str:
    """Read ASCII braille as cells; small letters are the same as capital ones.

    >>> from_ascii("_% ?1/2# _:")
    '⠸⠩⠀⠹⠂⠌⠆⠼⠀⠸⠱'
    """
    return letters.upper().translate(_CELLS)


def nemeth_read(cells: str) -> str:
    """Read a line of Nemeth braille as its plain text. Raises ValueError for a sign that is none here.

    >>> nemeth_read("⠼⠶⠸⠹⠆⠌⠖⠸⠼⠤⠒")
    '7 2/6 - 3'
    """
    text, end = _read(cells, 0, ())
    assert end == len(cells)
    return unicodedata.normalize("NFC", re.sub(" +", " ", text).strip())


def _read(cells: str, at: int, closers: tuple[str, ...]) -> tuple[str, int]:
    found = ""
    while at < len(cells):
        if any(cells.startswith(one, at) for one in closers):
            return found, at
        for opens, line, closes in _FRACTIONS:
            if cells.startswith(opens, at):
                top, middle = _read(cells, at + len(opens), (line,))
                bottom, end = _read(cells, middle + len(line), (closes,))
                found += f"{' ' if opens == '⠸⠹' else ''}{_above(top, bottom)}/{_below(bottom)}"
                at = end + len(closes)
                break
        else:
            if half := _HALF.match(cells, at):
                found, at = f"{found}{_LETTERS[half[1]]}.m.", half.end()
                continue
            parted = at == 0 or cells[at - 1] == BLANK
            signs = (one for one in _BY_LENGTH if cells.startswith(one, at))
            sign = next((one for one in signs if parted or one not in _PARTED), None)
            if sign is None:
                msg = f"{cells}: what is {cells[at]}?"
                raise ValueError(msg)
            found, at = found + _NEMETH[sign], at + len(sign)
    if closers:
        msg = f"{cells}: a fraction is not closed"
        raise ValueError(msg)
    return found, at


def _plain(part: str) -> bool:
    return part == "?" or part.isdigit()


def _above(top: str, bottom: str) -> str:
    return top if _plain(top) and _plain(bottom) else f"({top.strip()})"


def _below(bottom: str) -> str:
    return bottom if _plain(bottom) else f"({bottom.strip()})"


_UPPER = dict(zip("⠁⠃⠉⠙⠑⠋⠛⠓⠊⠚", "1234567890", strict=True)) | {"⠂": ",", "⠲": ".", "⠌": "/"}
_MARKS = {
    "⠘⠰⠦": "¿",
    "⠘⠰⠖": "¡",
    "⠐⠣": "(",
    "⠐⠜": ")",
    "⠨⠤": "_",
    "⠨⠴": "%",
    "⠈⠎": "$",
    "⠸⠌": "/",
    "⠠⠤": "–",
    "⠐⠖": "+",
    "⠐⠶": "=",
    "⠐⠤": "−",
    "⠲": ".",
    "⠂": ",",
    "⠆": ";",
    "⠒": ":",
    "⠖": "!",
    "⠄": "’",
    "⠤": "-",
    "⠴": "”",
}
_ACCENTS = {"⠘⠌": "\N{COMBINING ACUTE ACCENT}", "⠘⠻": "\N{COMBINING TILDE}", "⠘⠒": "\N{COMBINING DIAERESIS}"}


def words_read(cells: str) -> str:
    """Read uncontracted UEB as words. Raises ValueError for a sign that is none here.

    >>> words_read("⠠⠗⠕⠕⠍⠀⠼⠁⠃⠂")
    'Room 12,'
    """
    return " ".join(map(_word, cells.split(BLANK)))


def _word(cells: str) -> str:
    found, at, number, capital, accent = "", 0, False, "", ""
    while at < len(cells):
        cell = cells[at]
        if number and cell in _UPPER and not (cell in "⠂⠲⠌" and cells[at + 1 : at + 2] not in {*_UPPER}):
            found, at = found + _UPPER[cell], at + 1
            continue
        number = cell == "⠼"
        mark = next((one for one in _MARKS if cells.startswith(one, at)), None)
        if cells[at : at + 2] in _ACCENTS:
            accent, at = _ACCENTS[cells[at : at + 2]], at + 2
        elif cell == "⠠" and mark is None:
            capital, at = "word" if capital else "one", at + 1
        elif cell in _LETTERS:
            letter = _LETTERS[cell].upper() if capital else _LETTERS[cell]
            found, at, accent = found + letter + accent, at + 1, ""
            capital = capital if capital == "word" else ""
        elif cell == "⠦":
            capital = ""
            found, at = found + ("“" if not found and at + 1 < len(cells) else "?"), at + 1
        elif cell in "⠼⠰" and mark is None:
            at, capital = at + 1, ""
        elif mark is None:
            msg = f"{cells}: what is {cell}?"
            raise ValueError(msg)
        else:
            found, at, capital = found + _MARKS[mark], at + len(mark), ""
    return unicodedata.normalize("NFC", found)


_SWITCHED = re.compile("⠸⠩⠀(.*?)⠀⠸⠱")


def line_read(cells: str) -> str:
    """Read words with mathematics between its switches.

    >>> line_read("⠠⠉⠥⠞⠀⠸⠩⠀⠹⠂⠌⠆⠼⠀⠸⠱⠲")
    'Cut 1/2.'
    """
    parts = _SWITCHED.split(cells.strip(BLANK))
    read = [nemeth_read(part) if at % 2 else words_read(part) for at, part in enumerate(parts)]
    return "".join(read)
