"""Portuguese of Brazil: counts, units and plurals in words as they agree, and lines read aloud.

From memory, all of it: to be checked by a native speaker who teaches. Decimal point as in the child's page.
"""

from dataclasses import replace
from typing import assert_never

from onewhole.errors import InputError
from onewhole.languages.english.words import ClassWords
from onewhole.number.clock import shown
from onewhole.number.digits import in_digits, named_places
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import TEN, Style
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import CENT, CLOCK, DOLLAR, HALVES, ONE, Kind, Unit, unit_marked
from onewhole.number.with_minus import WithMinus
from onewhole.sentences.node import Thing
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.row import Blanks, FlatPiece, Part, Sign, flat
from onewhole.statements.wording import FromEnd, Phrase, ToNearest, Wording
from onewhole.statements.writable import Writable

TAG = "pt-BR"
USUAL = ClassWords("inteiro", "inteiros", "regroup", TAG)

_SMALL = (
    "zero", "um", "dois", "três", "quatro", "cinco", "seis", "sete", "oito", "nove", "dez", "onze", "doze",
    "treze", "quatorze", "quinze", "dezesseis", "dezessete", "dezoito", "dezenove",
)  # fmt: skip
_TENS = ("vinte", "trinta", "quarenta", "cinquenta", "sessenta", "setenta", "oitenta", "noventa")
_HUNDREDS = (
    "cento", "duzentos", "trezentos", "quatrocentos", "quinhentos", "seiscentos", "setecentos", "oitocentos",
    "novecentos",
)  # fmt: skip
_PIECES = {
    2: "meio", 3: "terço", 4: "quarto", 5: "quinto", 6: "sexto", 7: "sétimo", 8: "oitavo", 9: "nono",
    10: "décimo", 100: "centésimo", 1000: "milésimo",
}  # fmt: skip
_PLACES = {1: ("unidade", "unidades"), 10: ("dezena", "dezenas"), 100: ("centena", "centenas")}
_HUNDRED, _THOUSAND, _MILLION = 100, 1000, 1_000_000
#: One and many of a measure; the words that end in -a, and a few more, are feminine.
_MEASURES = {
    "mi": ("milha", "milhas"), "yd": ("jarda", "jardas"), "ft": ("pé", "pés"),
    "in": ("polegada", "polegadas"), "T": ("tonelada", "toneladas"), "lb": ("libra", "libras"),
    "oz": ("onça", "onças"), "gal": ("galão", "galões"), "qt": ("quarto de galão", "quartos de galão"),
    "pt": ("pinta", "pintas"), "c": ("xícara", "xícaras"), "fl oz": ("onça líquida", "onças líquidas"),
    "wk": ("semana", "semanas"), "d": ("dia", "dias"), "h": ("hora", "horas"),
    "min": ("minuto", "minutos"), "s": ("segundo", "segundos"), "km": ("quilômetro", "quilômetros"),
    "m": ("metro", "metros"), "cm": ("centímetro", "centímetros"), "mm": ("milímetro", "milímetros"),
    "kg": ("quilograma", "quilogramas"), "g": ("grama", "gramas"), "L": ("litro", "litros"),
    "mL": ("mililitro", "mililitros"), "$": ("dólar", "dólares"), "¢": ("centavo", "centavos"),
}  # fmt: skip
_MASCULINE_IN_A = frozenset({"dia", "quilograma", "grama", "problema", "mapa"})
KNOWN = {"strip": "uma tira", "strip of paper": "uma tira de papel", "bar": "uma barra", "pizza": "uma pizza"}
KNOWN |= {"strip of kite paper": "uma tira de papel", "box": "uma caixa", "circle": "um círculo"}
FORMS = {
    NumberForm.SIMPLEST: "na forma mais simples",
    NumberForm.MIXED: "como número misto",
    NumberForm.FRACTION: "como fração",
    NumberForm.DECIMAL: "como decimal",
}
SIGNS = {
    Sign.PLUS: "mais", Sign.MINUS: "menos", Sign.TIMES: "vezes", Sign.EQUALS: "é igual a",
    Sign.LESS: "é menor que", Sign.GREATER: "é maior que", Sign.ABOUT: "é perto de", Sign.COMMA: ",",
    Sign.WHICH: "comparado com", Sign.OPEN: "abre parêntese", Sign.CLOSE: "fecha parêntese",
    Sign.OVER: "sobre", Sign.UNTIL: "até",
}  # fmt: skip
BLANK = "em branco"
WHOLE = Thing("inteiro", "inteiros")


def count_words(count: int, of: Unit | Thing | None = None) -> str:
    """Say a count, as it agrees with what is counted.

    >>> count_words(21, Thing("tira", "tiras", feminine=True)), count_words(1105), count_words(1200)
    ('vinte e uma', 'mil cento e cinco', 'mil e duzentos')
    """
    said = _words(count)
    if of is not None and is_feminine(of):
        agreeing = {"um": "uma", "dois": "duas"}
        said = " ".join(
            agreeing.get(word, f"{word[:-2]}as" if word.endswith("entos") else word) for word in said.split()
        )
    return said


def _words(count: int) -> str:
    for worth, one, many in ((_MILLION, "milhão", "milhões"), (_THOUSAND, "mil", "mil")):
        if count >= worth:
            high, rest = divmod(count, worth)
            front = one if (high, worth) == (1, _THOUSAND) else f"{_words(high)} {one if high == 1 else many}"
            joined = " e " if rest < _HUNDRED or not rest % _HUNDRED else " "
            return f"{front}{joined}{_words(rest)}" if rest else front
    if count == _HUNDRED:
        return "cem"
    if count < len(_SMALL):
        return _SMALL[count]
    high, rest = divmod(count, _HUNDRED if count > _HUNDRED else TEN)
    front = _HUNDREDS[high - 1] if count > _HUNDRED else _TENS[high - 2]
    return f"{front} e {_words(rest)}" if rest else front


def is_feminine(of: Unit | Thing) -> bool:
    """Say whether the word for a unit or a thing is feminine."""
    if isinstance(of, Thing):
        return of.feminine
    if of.mark in {CLOCK, HALVES}:
        return of.size > 1
    if (of.mark and of.size == 1) or of.kind is not Kind.NUMBER:
        return _looks_feminine(_MEASURES[of.mark][0])
    return of.size >= 1


def _looks_feminine(word: str) -> bool:
    head = word.partition(" ")[0].lower()
    return head not in _MASCULINE_IN_A and head.endswith(("a", "ção", "dade"))


def piece_name(parts: int, count: int = 2) -> str:
    """Return what one or more of so many equal parts are called.

    >>> piece_name(6), piece_name(2, 1), piece_name(12, 1)
    ('sextos', 'meio', 'doze avos')
    """
    if parts not in _PIECES:
        return f"{count_words(parts)} avos"
    return _PIECES[parts] if count == 1 else f"{_PIECES[parts]}s"


def called(unit: Unit | Thing, count: int = 2) -> str:
    """Return what so many of a unit or a thing are called."""
    if isinstance(unit, Thing):
        return unit.one if count == 1 else unit.many
    if unit.mark in {CLOCK, HALVES}:
        return _MEASURES["h" if unit.size > 1 else "min"][count != 1]
    if unit.kind is not Kind.NUMBER or (unit.mark and unit.size == 1):
        return _MEASURES[unit.mark][count != 1]
    if unit.size < 1:
        return piece_name(unit.size.denominator, count)
    size, thousands = unit.size.numerator, ""
    for of, worth in ((" de milhão", _MILLION), (" de milhar", _THOUSAND)):
        if size >= worth:
            size, thousands = size // worth, of
            break
    return f"{_PLACES[size][count != 1]}{thousands}"


def place_written(unit: Unit, count: int = 2) -> str:
    """Return what a place is called on a line."""
    return called(unit if unit.mark == DOLLAR else replace(unit, mark=""), count)


def read_whole(said: str, words: ClassWords = USUAL) -> ClassWords:
    """Read what a class calls a whole: tira, uma tira, or um pão, pães. Raises InputError for nothing.

    >>> read_whole("uma tira de papel").wholes, read_whole("um pão, pães").wholes
    ('tiras de papel', 'pães')
    """
    one, _, many = (part.strip() for part in said.partition(","))
    article, _, rest = one.partition(" ")
    told_gender = {"um": False, "o": False, "uma": True, "a": True}.get(article.lower())
    name = one if told_gender is None else rest.strip()
    if not name:
        raise InputError(f"“{said[:40]}” names nothing", remedy="Write one of them, as in: uma tira.")
    head, space, behind = name.partition(" ")
    plural = f"{head}{'es' if head.endswith(('r', 'z', 's')) else 's'}{space}{behind}"
    feminine = _looks_feminine(name) if told_gender is None else told_gender
    return replace(words, whole=name, wholes=many or plural, feminine=feminine)


def short(words: ClassWords) -> ClassWords:
    """Return the class's words without what the whole is made of."""
    return replace(words, whole=words.whole.partition(" de ")[0], wholes=words.wholes.partition(" de ")[0])


def wording_parts(thing: Wording) -> tuple[str, ...]:
    """Write words of a line in parts between which it may be broken."""
    match thing:
        case Phrase.ROUND:
            return ("arredonde",)
        case Phrase.ORDER:
            return ("coloque em ordem",)
        case FromEnd(falling):
            return ("do maior", "ao menor") if falling else ("do menor", "ao maior")
        case ToNearest(unit):
            rung: Unit | Thing = Thing("número inteiro", "", None) if unit == ONE else unit
            the, end = ("a", "a") if is_feminine(rung) else ("o", "o")
            return f"para {the} {called(rung, 1)}", f"mais próxim{end}"
        case _:
            assert_never(thing)


def say(thing: Writable) -> str:
    """Say a line in words; a mixed number is said with its noun, for trinta e dois terços is another.

    >>> from onewhole.statements.reading import read_statement
    >>> say(read_statement("30 2/3 - 5/12"))
    'trinta inteiros e dois terços menos cinco doze avos'
    """
    return " ".join(_said(piece) for piece in flat(thing)).replace(" ,", ",")


def _said(piece: FlatPiece) -> str:
    match piece:
        case Sign():
            return SIGNS[piece]
        case Phrase() | ToNearest() | FromEnd():
            return " ".join(wording_parts(piece))
        case Quantity():
            return _quantity(piece)
        case Gap(wholes, top, bottom):
            return _mixed(wholes, top, bottom)
        case Impossible(wholes, top):
            return _mixed(wholes, top, 0)
        case WithMinus(below=True):
            top, bottom = piece.fraction
            front = "menos " if piece.front else ""
            return f"{front}{count_words(top)} sobre menos {count_words(bottom)}"
        case WithMinus():
            return f"menos {_said(piece.unsigned)}"
        case Blanks(units):
            return " e ".join(f"{BLANK} {called(unit)}" for unit in units.units)
        case NumberForm():
            return FORMS[piece]
        case _:
            assert_never(piece)


def _quantity(number: Quantity) -> str:
    ladder = number.ladder
    match ladder.style:
        case Style.MIXED:
            wholes, top = number.counts
            return _mixed(wholes, top, ladder.denominator, ladder.mark)
        case Style.MEASURE if ladder.clock:
            hour, minutes, half = shown(number)
            part = {"a.m.": " da manhã", "p.m.": " da tarde", "": ""}[half]
            return f"{count_words(hour, unit_marked('h'))} e {count_words(minutes)}{part}"
        case Style.MEASURE:
            return " e ".join(map(_counted, number.amounts, ladder.units))
        case Style.PLACES | Style.DECIMAL if not in_digits(number):
            return " ".join(
                f"{count_words(at, unit)} {place_written(unit, at)}" for at, unit in named_places(number)
            )
        case Style.PLACES | Style.DECIMAL if ladder.mark == DOLLAR:
            dollars, cents = divmod(int(number.value * _HUNDRED), _HUNDRED)
            with_cents = f" e {_counted(cents, unit_marked(CENT))}" if ladder.after else ""
            return f"{_counted(dollars, unit_marked(DOLLAR))}{with_cents}"
        case Style.PLACES | Style.DECIMAL:
            before = number.amounts[: len(number.amounts) - ladder.after]
            before_point = count_words(
                int("".join(map(str, before)) or "0"), unit_marked(ladder.mark) if ladder.mark else None
            )
            after = "".join(f" {count_words(digit)}" for digit in number.amounts[len(before) :])
            unit = f" {_MEASURES[ladder.mark][1]}" if ladder.mark else ""
            return f"{before_point}{' ponto' if after else ''}{after}{unit}"
        case _:
            assert_never(ladder.style)


def _counted(count: int, unit: Unit) -> str:
    return f"{count_words(count, unit)} {called(unit, count)}"


def _mixed(wholes: Part, top: Part, bottom: Part, mark: str = "") -> str:
    noun: Unit | Thing = unit_marked(mark) if mark else WHOLE
    if top is None:
        return _part(wholes, None)
    named = isinstance(bottom, int) and (1 < bottom <= _HUNDRED or bottom == _THOUSAND)
    pieces = piece_name(bottom, 1 if top == 1 else 2) if named and isinstance(bottom, int) else ""
    fraction = f"{_part(top, None)} {pieces or f'sobre {_part(bottom, None)}'}"
    if wholes is None:
        return f"{fraction} de {called(noun, 1)}" if mark else fraction
    return f"{_part(wholes, noun)} {called(noun, 1 if wholes == 1 else 2)} e {fraction}"


def _part(count: Part, of: Unit | Thing | None) -> str:
    return BLANK if count is HOLE else count_words(count or 0, of)


def say_before(thing: Writable, _rest: str) -> tuple[str, int]:
    """Say a number as it stands before the rest of a typed text."""
    return say(thing), 0


def agree(feminine: str, masculine: str, of: Unit | Thing) -> str:
    """Choose the word that agrees with a unit or a thing.

    >>> agree("cortada", "cortado", Thing("tira", "tiras", feminine=True))
    'cortada'
    """
    return feminine if is_feminine(of) else masculine
