"""A Spanish word problem read back: sentence by sentence into what it says happens, and what it asks for.

Nothing here knows how a story was made: its sentences stand as patterns in :mod:`tests.kit.spanish_told`, its
words for units in a table of our own. A sentence that no pattern reads is an error, and so is a question that
the sentences do not settle.
"""

import re
from dataclasses import dataclass, field
from fractions import Fraction

#: Each unit in the smallest of its kind, and whether its word is feminine. From memory.
UNITS = {
    "yarda": (36, True),
    "pie": (12, False),
    "pulgada": (1, True),
    "libra": (16, True),
    "onza": (1, True),
    "hora": (60, True),
    "minuto": (1, False),
    "cuarto de galón": (32, False),
    "galón": (128, False),
    "mililitro": (1, False),
    "litro": (1000, False),
    "kilogramo": (1000, False),
    "gramo": (1, False),
    "kilómetro": (1000000, False),
    "centímetro": (10, False),
    "metro": (1000, False),
}
MANY = {one: f"{one}s" for one in UNITS} | {"galón": "galones", "cuarto de galón": "cuartos de galón"}
_SIZES = {word: size for one, (size, _) in UNITS.items() for word in (one, MANY[one])}
_FIGURE = r"\d{1,3}(?:,\d{3})+|\d+"
_NUMBER = rf"(?:(?:{_FIGURE}) )?(?:{_FIGURE})/(?:{_FIGURE})|(?:{_FIGURE})(?:\.\d+)?"
_UNIT = "|".join(sorted(map(re.escape, _SIZES), key=len, reverse=True))
_MEASURE = rf"(?:{_NUMBER})(?: de)? (?:{_UNIT})\b"
_COUNTED = (
    r"cometas?|colas?|personas?|reuni(?:ón|ones)|jarras?|vez|veces|cuerdas?|bolsas?|libros?|filas?"
    r"|cuadrados?|sillas?"
)


class UnreadError(Exception):
    """Words that no rule reads."""


@dataclass(frozen=True, slots=True)
class Whole:
    """What a class calls its wholes, and whom its stories tell of."""

    one: str
    many: str
    feminine: bool
    who: str = "la clase"
    does: str = "usa"

    @property
    def brief(self) -> tuple[str, str]:
        """One and many without what the whole is made of."""
        return self.one.partition(" de ")[0], self.many.partition(" de ")[0]


@dataclass(slots=True)
class Ledger:
    """What the sentences of a story say: amounts in the smallest unit; None stands for one that is not said.

    ``named`` are amounts of things told apart by a color, a size or a day; ``scaled`` says that one of them
    is so many times another. ``parts`` make up ``total``; ``changes`` lead from ``start`` to ``end``.
    """

    start: Fraction | None = None
    end: Fraction | None = None
    need: Fraction | None = None
    total: Fraction | None = None
    changes: list[tuple[int, Fraction | None]] = field(default_factory=list)
    parts: list[Fraction] = field(default_factory=list)
    named: dict[str, Fraction] = field(default_factory=dict)
    scaled: tuple[str, Fraction, str] | None = None
    factors: list[Fraction] = field(default_factory=list)
    counts: list[Fraction] = field(default_factory=list)
    each: Fraction | None = None
    times: list[int] = field(default_factory=list)
    kept: tuple[Fraction, str] | None = None
    order: list[Fraction] = field(default_factory=list)
    seen: list[Fraction] = field(default_factory=list)

    def all_named(self) -> dict[str, Fraction]:
        """Return every named amount, that of a multiple too."""
        if self.scaled is None:
            return self.named
        name, factor, of = self.scaled
        return self.named | {name: factor * self.named[of]}


def sentences(words: str) -> list[str]:
    """Part a story into sentences, in small letters and without the marks at their ends."""
    plain = re.sub(r"\b([ap])\.m\.", r"\1m", words)
    found = re.findall(r"(?:¿?)(.+?)[.?](?: |$)", plain)
    return [one[:1].lower() + one[1:] for one in found]


def lifted(sentence: str, whole: Whole) -> tuple[str, list[Fraction]]:
    """Return a sentence with its amounts as signs, and the amounts.

    # is an amount of something that is measured, paid or counted in wholes, & a count of things, % a number
    that stands alone and @ a time of day in minutes. Raises UnreadError where a noun does not agree with its
    number.
    """
    found: list[Fraction] = []
    one, many = (
        rf"{re.escape(full)}|{re.escape(short)}"
        for full, short in zip((whole.one, whole.many), whole.brief, strict=True)
    )
    part = "una" if whole.feminine else "un"
    pattern = (
        rf"(?P<clock>\d\d?:\d\d(?: [ap]m)?)|(?P<money>\$(?:{_FIGURE})(?:\.\d\d)?)"
        rf"|(?P<measure>{_MEASURE}(?:(?:, | y ){_MEASURE})*)"
        rf"|(?P<part>{_NUMBER}) de {part} (?:{one})\b|(?P<wholes>{_NUMBER}) (?P<noun>{many}|{one})\b"
        rf"|(?P<count>{_NUMBER}) (?P<thing>{_COUNTED})\b(?! lo)|(?P<bare>{_NUMBER})"
    )

    def sign(match: re.Match[str]) -> str:
        kind = match.lastgroup or ""
        kind = {"noun": "wholes", "thing": "count"}.get(kind, kind)
        said = match[kind]
        if kind == "clock":
            found.append(minutes(said))
            return "@"
        if kind == "measure":
            found.append(sum(map(_measured, re.findall(_MEASURE, said)), Fraction(0)))
            return "#"
        found.append(number(said.removeprefix("$")))
        if kind == "wholes":
            _agree(match["noun"] in (whole.one, whole.brief[0]), said == "1", match[0])
        if kind == "count":
            _agree(not match["thing"].endswith("s"), said == "1", match[0])
            return "% veces" if match["thing"] in {"vez", "veces"} and found[-1].denominator > 1 else "&"
        return "%" if kind == "bare" else "#"

    return re.sub(pattern, sign, sentence), found


def number(said: str) -> Fraction:
    """Read a number in digits: 5 1/3, 4,567, 0.7."""
    wholes, _, rest = said.replace(",", "").rpartition(" ")
    return Fraction(int(wholes or 0)) + Fraction(rest)


def minutes(said: str) -> Fraction:
    """Read a time of day, in minutes after midnight where a half of the day is said."""
    hour, minute = re.findall(r"\d+", said)
    half = said[-2:] if said.endswith("m") else ""
    hours = int(hour) % 12 + (12 if half == "pm" else 0) if half else int(hour)
    return Fraction(60 * hours + int(minute))


def _measured(said: str) -> Fraction:
    match = re.fullmatch(rf"({_NUMBER})( de)? ({_UNIT})", said)
    assert match is not None
    amount, one = number(match[1]), match[3] in UNITS
    _agree(one, match[1] == "1" or (match[2] is not None and amount < 1), said)
    return amount * _SIZES[match[3]]


def _agree(one: bool, single: bool, said: str) -> None:
    if one is not single:
        msg = f"a noun does not agree with its number: {said}"
        raise UnreadError(msg)


def worth(named: str) -> int:
    """Return how many of the smallest unit one of the named unit is."""
    return _SIZES[named]


def feminine(noun: str, whole: Whole) -> bool:
    """Say whether a noun in the singular or the plural is feminine."""
    if noun in {whole.one, whole.many, *whole.brief}:
        return whole.feminine
    return next(is_so for one, (_, is_so) in UNITS.items() if noun in (one, MANY[one]))
