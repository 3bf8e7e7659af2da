"""What may be written in a cell: numbers without any prior, units, words; and the slots that tell them."""

from dataclasses import dataclass
from typing import Final

import torch

from onewhole.presses.paper.ink_text import UNITS
from tools.ink.chance import Array, Chance
from tools.ink.material import SIGNS

#: Places of a line of writing: first what stands on the line from left to right, then over and under a bar.
DOLLAR, SIGN, WHOLE, POINT, AFTER, FRACTION, UNIT, SECOND, UNIT_2 = 0, 1, 2, 6, 7, 10, 11, 18, 20
LINE: Final = 27
TOP, BOTTOM, PLACES = 27, 30, 33
LETTERS: Final = 7
NONE: Final = 10
#: Kinds of cells.
EMPTY, ANSWER, NOT = 0, 1, 2

#: What may be in a cell. The share of each is how often it is trained on.
PLAIN, REWRITTEN, INSIDE, OVERWRITTEN, BESIDE, BLANK, RUBBED, SCRIBBLE, TWO, STRUCK, WORD = range(11)
SHARES: Final = (53.0, 6.0, 3.0, 5.0, 7.0, 4.0, 4.0, 4.0, 6.0, 5.5, 2.5)
NAMES: Final = (
    *(
        "plain",
        "struck and written anew",
        "a digit struck inside",
        "a digit written over",
        "other working beside",
    ),
    *("empty", "rubbed out", "scribbles", "two answers", "only struck answers", "words"),
)

#: How each unit is written.
SPELT: Final = {
    "in": ("in", "in", "in.", "inches", '"'),
    "ft": ("ft", "ft", "ft.", "feet", "'"),
    "yd": ("yd", "yd", "yards", "yds"),
    "lb": ("lb", "lb", "lbs", "pounds"),
    "oz": ("oz", "oz", "ounces", "oz."),
    "h": ("h", "hr", "hrs", "hours", "hour"),
    "min": ("min", "min", "mins", "minutes", "min."),
    "s": ("sec", "secs"),
    "mi": ("mi", "miles", "mi.", "mile"),
    "km": ("km",),
    "m": ("m", "meters"),
    "cm": ("cm", "cm"),
    "mm": ("mm",),
    "kg": ("kg", "kg"),
    "g": ("g", "grams"),
    "L": ("L", "liters"),
    "mL": ("mL", "ml"),
    "gal": ("gal", "gallons"),
    "qt": ("qt", "quarts"),
    "pt": ("pt", "pints"),
    "cups": ("cups", "cup"),
    "tsp": ("tsp",),
    "days": ("days", "day"),
    "$": ("$", "dollars"),
}
WORDS: Final = (
    *(
        "idk",
        "no",
        "help",
        "why",
        "hard",
        "what",
        "?",
        "??",
        "???",
        "skip",
        "later",
        "done",
        "yes",
        "ok",
        "hi",
    ),
    *(
        "mia",
        "leo",
        "Sam",
        "fun",
        "I dont",
        "cant",
        "two",
        "ask",
        "oops",
        "wait",
        "try",
        "same",
        "not",
        "know",
    ),
)
THINGS: Final = (
    *(
        "kites",
        "more",
        "left",
        "pies",
        "pizza",
        "apples",
        "cakes",
        "pieces",
        "slices",
        "eggs",
        "books",
        "parts",
    ),
    *(
        "red",
        "blue",
        "miles m",
        "bags",
        "boxes",
        "whole",
        "wholes",
        "pens",
        "cards",
        "stars",
        "balls",
        "hats",
    ),
)
_MEASURES: Final = (("ft", "in"), ("yd", "ft"), ("lb", "oz"), ("h", "min"))


#: Letters that are not written like digits.
_CLEAR: Final = "acdefhjkmnprtuvwxyACDEFHJKMNPQRTUVWXY"


def _clear(chance: Chance, rows: int) -> Array:
    """Draw letters that make no word, none of them one that looks like a digit."""
    letters = torch.tensor([SIGNS.index(letter) for letter in _CLEAR], device=chance.device)
    return letters[chance.below(len(_CLEAR), rows, LETTERS)]


def _coded(words: list[str], device: str) -> Array:
    rows = [[SIGNS.index(sign) if sign != " " else -1 for sign in word[:LETTERS]] for word in words]
    return torch.tensor([row + [-1] * (LETTERS - len(row)) for row in rows], device=device)


@dataclass(frozen=True, slots=True)
class Vocabulary:
    """Words as signs on the device: units with the class of each, things behind a number, other words."""

    units: Array
    unit_class: Array
    things: Array
    words: Array
    pairs: Array
    pair_class: Array

    @classmethod
    def on(cls, device: str) -> "Vocabulary":
        """Return all words on a device."""
        spelt = [(word, UNITS.index(name)) for name, words in SPELT.items() for word in words if word != "$"]
        pairs = [
            (SPELT[first][at], SPELT[second][at], UNITS.index(f"{first} {second}"))
            for first, second in _MEASURES
            for at in (0, 0, 2 % len(SPELT[first]), len(SPELT[first]) - 1)
            if at < len(SPELT[second])
        ]
        return cls(
            _coded([word for word, _ in spelt], device),
            torch.tensor([name for _, name in spelt], device=device),
            _coded(list(THINGS), device),
            _coded(list(WORDS), device),
            torch.stack(
                [
                    _coded([first for first, *_ in pairs], device),
                    _coded([second for _, second, _ in pairs], device),
                ],
                1,
            ),
            torch.tensor([name for *_, name in pairs], device=device),
        )


@dataclass(frozen=True, slots=True)
class Writings:
    """What is written, a row each: the sign at each place, and the slots that tell it."""

    code: Array
    slots: Array
    sign: Array
    unit: Array
    bar: Array

    def at(self, rows: Array) -> "Writings":
        """Return some of the rows."""
        return Writings(self.code[rows], self.slots[rows], self.sign[rows], self.unit[rows], self.bar[rows])


#: Which places the digit slots stand at: whole x 4, over x 3, under x 3, after the point x 3.
SLOTS: Final = (
    *range(WHOLE, WHOLE + 4),
    *range(TOP, TOP + 3),
    *range(BOTTOM, BOTTOM + 3),
    *range(AFTER, AFTER + 3),
)


def _run(chance: Chance, rows: int, most: int, weights: list[float], *, nought: float) -> Array:
    """Draw whole numbers as digits from the left, -1 behind; the first is nought only where it is alone."""
    long = 1 + chance.pick(weights, rows)
    digits = chance.below(10, rows, most)
    first = 1 + chance.below(9, rows)
    alone = chance.coin(nought, rows) & (long == 1)
    digits[:, 0] = torch.where(alone, 0, first)
    return torch.where(torch.arange(most, device=chance.device) < long[:, None], digits, -1)


def numbers(
    chance: Chance, rows: int, words: Vocabulary, forms: list[float], plain: bool = False
) -> Writings:
    """Draw numbers: whole, fraction, mixed, decimal, of two measures, a mere dash; and what follows."""
    form = chance.pick(forms, rows)
    code = torch.full((rows, PLACES), -1, device=chance.device)
    whole = _run(chance, rows, 4, [0.46, 0.36, 0.13, 0.05], nought=0.1)
    short = _run(chance, rows, 4, [0.62, 0.34, 0.04], nought=0.03)
    has_whole = (form == 0) | (form == 2) | (form == 3) | (form == 4)
    code[:, WHOLE : WHOLE + 4] = torch.where(
        has_whole[:, None], torch.where(((form == 2) | (form == 4))[:, None], short, whole), -1
    )
    part = ((form == 1) | (form == 2))[:, None]
    code[:, TOP : TOP + 3] = torch.where(part, _run(chance, rows, 3, [0.64, 0.3, 0.06], nought=0.04), -1)
    code[:, BOTTOM : BOTTOM + 3] = torch.where(
        part, _run(chance, rows, 3, [0.64, 0.3, 0.06], nought=0.03), -1
    )
    after = chance.below(10, rows, 3)
    long = 1 + chance.pick([0.46, 0.4, 0.14], rows)
    after = torch.where(torch.arange(3, device=chance.device) < long[:, None], after, -1)
    code[:, AFTER : AFTER + 3] = torch.where((form == 3)[:, None], after, -1)
    code[:, POINT] = torch.where(form == 3, 1, -1)
    bare = (form == 3) & chance.coin(0.04, rows)
    code[:, WHOLE : WHOLE + 4] = torch.where(bare[:, None], -1, code[:, WHOLE : WHOLE + 4])
    sign = chance.coin(0.05, rows) | (form == 5)
    code[:, SIGN] = torch.where(sign, 1, -1)
    unit = torch.zeros(rows, dtype=torch.long, device=chance.device)
    second = _run(chance, rows, 2, [0.6, 0.4], nought=0.1)
    pair = form == 4
    code[:, SECOND : SECOND + 2] = torch.where(pair[:, None], second, -1)
    chosen = chance.below(len(words.pairs), rows)
    code[:, UNIT : UNIT + 7] = torch.where(pair[:, None], words.pairs[chosen, 0], -1)
    code[:, UNIT_2 : UNIT_2 + 7] = torch.where(pair[:, None], words.pairs[chosen, 1], -1)
    unit = torch.where(pair, words.pair_class[chosen], unit)
    if not plain:
        kind = chance.pick([0.77, 0.16, 0.035, 0.035], rows)
        kind = torch.where(form >= 4, 0, kind)
        chosen = chance.below(len(words.units), rows)
        code[:, UNIT : UNIT + 7] = torch.where(
            (kind == 1)[:, None], words.units[chosen], code[:, UNIT : UNIT + 7]
        )
        unit = torch.where(kind == 1, words.unit_class[chosen], unit)
        dollar = (kind == 2) & ((form == 0) | (form == 3))
        code[:, DOLLAR] = torch.where(dollar, SIGNS.index("$"), -1)
        unit = torch.where(dollar, UNITS.index("$"), unit)
        thing = words.things[chance.below(len(words.things), rows)]
        wild = _clear(chance, rows)
        wild = torch.where(
            torch.arange(LETTERS, device=chance.device) < (3 + chance.below(5, rows))[:, None], wild, -1
        )
        thing = torch.where(chance.coin(0.5, rows)[:, None], thing, wild)
        code[:, UNIT : UNIT + 7] = torch.where((kind == 3)[:, None], thing, code[:, UNIT : UNIT + 7])
        unit = torch.where(kind == 3, UNITS.index("other"), unit)
    bar = torch.where(part[:, 0], 1 + chance.coin(0.3, rows).long(), 0)
    return slotted(code, unit, bar)


def slotted(code: Array, unit: Array, bar: Array) -> Writings:
    """Return what is written with the slots that tell it; a second measure's number stands over nothing."""
    slots = code[:, list(SLOTS)]
    second = torch.nn.functional.pad(code[:, SECOND : SECOND + 2], (0, 1), value=-1)
    slots[:, 4:7] = torch.where((code[:, SECOND] >= 0)[:, None], second, slots[:, 4:7])
    return Writings(code, torch.where(slots < 0, NONE, slots), (code[:, SIGN] >= 0).long(), unit, bar)


def other_words(chance: Chance, rows: int, words: Vocabulary) -> Writings:
    """Draw words that are no answer."""
    code = torch.full((rows, PLACES), -1, device=chance.device)
    word = words.words[chance.below(len(words.words), rows)]
    wild = _clear(chance, rows)
    wild = torch.where(
        torch.arange(LETTERS, device=chance.device) < (2 + chance.below(6, rows))[:, None], wild, -1
    )
    code[:, UNIT : UNIT + 7] = torch.where(chance.coin(0.5, rows)[:, None], word, wild)
    longer = chance.coin(0.3, rows)[:, None]
    code[:, UNIT_2 : UNIT_2 + 7] = torch.where(longer, words.words[chance.below(len(words.words), rows)], -1)
    none = torch.zeros(rows, dtype=torch.long, device=chance.device)
    return slotted(code, none, none)
