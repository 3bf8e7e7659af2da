"""Spanish: counts, units and plurals in words, as they agree with what is counted.

Names of pieces are nouns from a table and no ordinals: 1/12 is un doceavo. Source: RAE and ASALE,
*Diccionario panhispánico de dudas*, fraccionarios (seen in excerpts); above thirty by its rule, to be checked
by a native speaker. Decimal point, comma for thousands and $ as in the child's English page: Unicode CLDR,
es-US.
"""

from functools import cache

from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.languages.class_words import ClassWords
from onewhole.number.name_wanted import NumberForm
from onewhole.number.unit import CLOCK, DOLLAR, HALVES, Kind, Unit
from onewhole.sentences.node import Thing

#: The BCP 47 tag of Spanish as families in the United States read it.
TAG = "es-US"

#: One and many of a measure, and whether the word is feminine.
_MEASURES = {
    "mi": ("milla", "millas", True),
    "yd": ("yarda", "yardas", True),
    "ft": ("pie", "pies", False),
    "in": ("pulgada", "pulgadas", True),
    "T": ("tonelada", "toneladas", True),
    "lb": ("libra", "libras", True),
    "oz": ("onza", "onzas", True),
    "gal": ("galón", "galones", False),
    "qt": ("cuarto de galón", "cuartos de galón", False),
    "pt": ("pinta", "pintas", True),
    "c": ("taza", "tazas", True),
    "fl oz": ("onza líquida", "onzas líquidas", True),
    "wk": ("semana", "semanas", True),
    "d": ("día", "días", False),
    "h": ("hora", "horas", True),
    "min": ("minuto", "minutos", False),
    "s": ("segundo", "segundos", False),
    "km": ("kilómetro", "kilómetros", False),
    "m": ("metro", "metros", False),
    "cm": ("centímetro", "centímetros", False),
    "mm": ("milímetro", "milímetros", False),
    "kg": ("kilogramo", "kilogramos", False),
    "g": ("gramo", "gramos", False),
    "L": ("litro", "litros", False),
    "mL": ("mililitro", "mililitros", False),
    "$": ("dólar", "dólares", False),
    "¢": ("centavo", "centavos", False),
}

#: The words for the form in which a number is wanted, as they stand after it.
FORMS = {
    NumberForm.SIMPLEST: "en su mínima expresión",
    NumberForm.MIXED: "como número mixto",
    NumberForm.FRACTION: "como fracción",
    NumberForm.DECIMAL: "como decimal",
}

_SMALL = (
    "cero", "uno", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce",
    "trece", "catorce", "quince", "dieciséis", "diecisiete", "dieciocho", "diecinueve", "veinte", "veintiuno",
    "veintidós", "veintitrés", "veinticuatro", "veinticinco", "veintiséis", "veintisiete", "veintiocho",
    "veintinueve",
)  # fmt: skip
_TENS = ("treinta", "cuarenta", "cincuenta", "sesenta", "setenta", "ochenta", "noventa")
_HUNDREDS = (
    "ciento", "doscientos", "trescientos", "cuatrocientos", "quinientos", "seiscientos", "setecientos",
    "ochocientos", "novecientos",
)  # fmt: skip
_PIECES = {
    2: "medio", 3: "tercio", 4: "cuarto", 5: "quinto", 6: "sexto", 7: "séptimo", 8: "octavo", 9: "noveno",
    10: "décimo", 100: "centésimo", 1000: "milésimo",
}  # fmt: skip
_PLAIN = str.maketrans("áéíóú", "aeiou")
_PLACES = {1: ("unidad", "unidades"), 10: ("decena", "decenas"), 100: ("centena", "centenas")}
_HUNDRED, _THOUSAND, _MILLION = 100, 1000, 1_000_000
#: What the places after the point are called in money.
_COINS = {10: ("décimo de dólar", "décimos de dólar"), 100: ("centavo", "centavos")}

#: Words that end as if they were of the other gender, among those that a class may cut, share or measure.
#: From memory, to be checked by a native speaker.
_MASCULINE_IN_A = frozenset({"problema", "día", "mapa", "papa"})
_FEMININE_ELSE = frozenset({"mano", "torre", "clase", "calle", "parte", "base", "llave", "nube", "serpiente"})
_FEMININE_ENDS = ("a", "ción", "sión", "dad", "tad", "tud")

USUAL = ClassWords("entero", "enteros", "regroup", TAG)
#: What a class that works in English calls a whole, in Spanish with its word before it. A kite is
#: papalote in Mexico, barrilete in Central America. From memory, to be checked by a native speaker.
_KNOWN = {
    "strip": "una tira",
    "strip of paper": "una tira de papel",
    "strip of kite paper": "una tira de papel",
    "bar": "una barra",
    "circle": "un círculo",
    "box": "una caja",
    "loaf": "un pan",
    "loaf of bread": "un pan",
    "pan": "un molde",
    "pan of brownies": "un molde de brownies",
    "brownie": "un brownie",
    "pizza": "una pizza",
    "kite": "una cometa",
    "ribbon": "una cinta",
    "string": "una cuerda",
    "mile": "una milla",
    "cup": "una taza",
    "page": "una página",
}


def looks_feminine(word: str) -> bool:
    """Guess the gender of a word by its ending.

    >>> [looks_feminine(word) for word in ("tira", "tira de papel", "entero", "pan", "torre", "problema")]
    [True, True, False, False, True, False]
    """
    head = word.partition(" ")[0].lower()
    if head in _MASCULINE_IN_A:
        return False
    return head in _FEMININE_ELSE or head.endswith(_FEMININE_ENDS)


def plural(thing: str) -> str:
    """Return the plural of a thing's name; of "tira de papel" the tira is put in the plural.

    >>> [plural(thing) for thing in ("tira de papel", "pan", "lápiz", "porción", "brownie", "club")]
    ['tiras de papel', 'panes', 'lápices', 'porciones', 'brownies', 'clubes']
    """
    head, space, rest = thing.partition(" ")
    if head.endswith(("a", "e", "i", "o", "u", "é")):
        many = f"{head}s"
    elif head.endswith("z"):
        many = f"{head[:-1]}ces"
    elif head.endswith(("ón", "án", "ín", "és", "ás")):
        many = f"{head[:-2]}{head[-2:].translate(_PLAIN)}es"
    else:
        many = f"{head}es"
    return f"{many}{space}{rest}"


def known(word: str) -> str | None:
    """Return a word for a whole in Spanish, as it is typed, by what an English class says.

    >>> known("strip of paper"), known("sandwich")
    ('una tira de papel', None)
    """
    return _KNOWN.get(word)


def read_whole(typed: str, words: ClassWords = USUAL) -> ClassWords:
    """Read what a class calls a whole: tira, una tira, or una tira, tiras.

    The word "un" or "una" before it tells the gender, and after a comma stands the plural; both are guessed
    where they are left out. Raises InputError for nothing.

    >>> (
    ...     read_whole("una tira de papel").wholes,
    ...     read_whole("un papalote").feminine,
    ...     read_whole("la torta").whole,
    ... )
    ('tiras de papel', False, 'torta')
    """
    one, _, many = (part.strip() for part in typed.partition(","))
    article, _, rest = one.partition(" ")
    told = {"un": False, "el": False, "una": True, "la": True}.get(article.lower())
    whole = one if told is None else rest.strip()
    if not whole:
        msg = f"“{typed[:40]}” names nothing"
        raise InputError(msg, remedy="Write one of them with its word before it, as in: una tira de papel.")
    feminine = looks_feminine(whole) if told is None else told
    return replace(words, whole=whole, wholes=many or plural(whole), feminine=feminine)


def short(words: ClassWords) -> ClassWords:
    """Return the class's words without what the whole is made of, for every mention but the first.

    >>> short(read_whole("una tira de papel")).wholes
    'tiras'
    """
    brief = words.whole.partition(" de ")[0], words.wholes.partition(" de ")[0]
    return replace(words, whole=brief[0], wholes=brief[1])


def is_feminine(of: Unit | Thing) -> bool:
    """Say whether the word for a unit or a thing is feminine.

    >>> from onewhole.number.unit import ONE
    >>> is_feminine(ONE), is_feminine(Unit(ONE.size / 6)), is_feminine(Thing("tira", "tiras", feminine=True))
    (True, False, True)
    """
    if isinstance(of, Thing):
        return of.feminine
    if of.mark in {CLOCK, HALVES}:
        return of.size > 1
    if of.kind is not Kind.NUMBER or (of.mark and of.size == 1):
        return _MEASURES[of.mark][2]
    return of.size >= 1 and not of.mark


@cache
def count_words(count: int, of: Unit | Thing | None = None) -> str:
    """Return a count in words as it stands before what is counted, and as it stands alone.

    Only uno and the hundreds agree: un sexto, veintiuna tiras, doscientas tiras. Source: RAE, answers on
    treinta y una personas and veintiún mil (seen in excerpts).

    >>> tira = Thing("tira", "tiras", feminine=True)
    >>> count_words(21), count_words(21, tira), count_words(231, Thing("paso", "pasos"))
    ('veintiuno', 'veintiuna', 'doscientos treinta y un')
    >>> count_words(21_105), count_words(1000), count_words(100)
    ('veintiún mil ciento cinco', 'mil', 'cien')
    """
    if of is None:
        return _words(count, "uno", feminine=False)
    feminine = is_feminine(of)
    said = _words(count, "una" if feminine else "un", feminine=feminine)
    return f"{said} de" if count >= _MILLION and not count % _MILLION else said


def _words(count: int, one: str, *, feminine: bool) -> str:
    millions, rest = divmod(count, _MILLION)
    thousands, rest = divmod(rest, _THOUSAND)
    parts = []
    if millions:
        parts.append("un millón" if millions == 1 else f"{_words(millions, 'un', feminine=False)} millones")
    if thousands:
        before = "" if thousands == 1 else _below_thousand(thousands, "un", feminine=feminine)
        parts.append(f"{before} mil".strip())
    if rest or not parts:
        parts.append(_below_thousand(rest, one, feminine=feminine))
    return " ".join(parts)


def _below_thousand(count: int, one: str, *, feminine: bool) -> str:
    if count == _HUNDRED:
        return "cien"
    hundreds, rest = divmod(count, _HUNDRED)
    said = []
    if hundreds:
        word = _HUNDREDS[hundreds - 1]
        said.append(f"{word[:-2]}as" if feminine and hundreds > 1 else word)
    if rest or not hundreds:
        said.append(_below_hundred(rest, one))
    return " ".join(said)


def _below_hundred(count: int, one: str) -> str:
    if count == 1:
        return one
    if count == 21:
        return {"uno": "veintiuno", "un": "veintiún", "una": "veintiuna"}[one]
    if count < len(_SMALL):
        return _SMALL[count]
    tens, ones = divmod(count, 10)
    word = _TENS[tens - 3]
    return f"{word} y {one if ones == 1 else _SMALL[ones]}" if ones else word


@cache
def piece_name(parts: int, count: int = 2) -> str:
    """Return what one or more of so many equal parts are called; only one is singular.

    >>> piece_name(6), piece_name(2, 1), piece_name(12), piece_name(16, 1), piece_name(100, 0)
    ('sextos', 'medio', 'doceavos', 'dieciseisavo', 'centésimos')
    >>> piece_name(25), piece_name(30), piece_name(56), piece_name(31, 1), piece_name(103)
    ('veinticincoavos', 'treintavos', 'cincuentaiseisavos', 'treintaiunavo', 'cientotresavos')
    """
    if parts in _PIECES:
        one = _PIECES[parts]
    else:
        stem = count_words(parts).translate(_PLAIN).replace(" y ", "i").replace(" ", "")
        one = f"{stem[:-1] if stem.endswith(('a', 'uno')) else stem}avo"
    return one if count == 1 else f"{one}s"


def place_name(unit: Unit, count: int = 2) -> str:
    """Return what one or more of a place are called: decena, unidades, unidades de millar, décimos.

    >>> from onewhole.number.ladder import decimal
    >>> [place_name(unit) for unit in decimal(5, 1).units]
    ['decenas de millar', 'unidades de millar', 'centenas', 'decenas', 'unidades', 'décimos']
    """
    many = count != 1
    if unit.mark and unit.size == 1:
        return unit_called(unit.mark, count)
    if unit.mark == DOLLAR and unit.size < 1 and unit.size.denominator in _COINS:
        return _COINS[unit.size.denominator][many]
    if unit.size < 1:
        return piece_name(unit.size.denominator, count)
    size = unit.size.numerator
    for of, worth in (("", 1), (" de millar", _THOUSAND), (" de millón", _MILLION)):
        if size < _THOUSAND * worth:
            one, more = _PLACES[size // worth]
            return f"{more if many else one}{of}"
    return piece_name(size, count)


def place_written(unit: Unit, count: int = 2) -> str:
    """Return what a place is called on a line, whatever its number counts; but dollars and their parts."""
    return place_name(unit if unit.mark == DOLLAR else replace(unit, mark=""), count)


def unit_called(mark: str, count: int = 2) -> str:
    """Return what one or more of a unit are called, by its abbreviation.

    >>> unit_called("in"), unit_called("$", 1)
    ('pulgadas', 'dólar')
    """
    one, many, _ = _MEASURES[mark]
    return one if count == 1 else many


def measure_name(unit: Unit, count: int = 2) -> str:
    """Return what one or more of a measure's unit are called: pie, pies. KeyError for a number's unit."""
    if unit.mark in {CLOCK, HALVES}:
        return unit_called("h" if unit.size > 1 else "min", count)
    return unit_called(unit.mark, count)


def called(unit: Unit | Thing, count: int = 2) -> str:
    """Return what so many of a unit or a thing are called.

    >>> from onewhole.number.ladder import mixed
    >>> called(mixed(6).units[1], 1), called(Thing("tira", "tiras"), 0)
    ('sexto', 'tiras')
    """
    if isinstance(unit, Thing):
        return unit.one if count == 1 else unit.many
    return measure_name(unit, count) if unit.kind is not Kind.NUMBER else place_name(unit, count)
