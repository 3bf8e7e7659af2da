"""Spoken Spanish: known sayings, no two numbers alike, and every number read back from its words."""

import os
from fractions import Fraction

import pytest

from onewhole.languages.spanish.speech import say
from onewhole.languages.spanish.words import count_words, looks_feminine, piece_name, plural
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.sentences.node import Thing
from onewhole.statements.reading import read_quantity, read_statement
from tests.kit.spanish_reading import unsay_amount

#: The whole space is walked in `make walk`, a part of it in `make test`.
WHOLE_WALK = bool(os.environ.get("ONEWHOLE_WHOLE_WALK"))
#: Typed and said. Source: the rules of RAE and ASALE, *Diccionario panhispánico de dudas*, fraccionarios
#: (in excerpts), worked by hand; to be checked by a native speaker.
SAID = (
    ("1/2", "un medio"),
    ("2/3", "dos tercios"),
    ("7/12", "siete doceavos"),
    ("1/16", "un dieciseisavo"),
    ("21/4", "veintiún cuartos"),
    ("31/4", "treinta y un cuartos"),
    ("32/3", "treinta y dos tercios"),
    ("7/24", "siete veinticuatroavos"),
    ("5/56", "cinco cincuentaiseisavos"),
    ("7/103", "siete sobre ciento tres"),
    ("7 2/6", "siete enteros y dos sextos"),
    ("1 1/2", "un entero y un medio"),
    ("30 2/3", "treinta enteros y dos tercios"),
    ("8 13/8", "ocho enteros y trece octavos"),
    ("0.05", "cero punto cero cinco"),
    ("21.30", "veintiuno punto tres cero"),
    ("5 ft 2 in", "cinco pies y dos pulgadas"),
    ("21 lb 1 oz", "veintiuna libras y una onza"),
    ("1 h 31 min", "una hora y treinta y un minutos"),
    ("$3.50", "tres dólares con cincuenta centavos"),
    ("$1.01", "un dólar con un centavo"),
    ("5 5/8 in", "cinco pulgadas y cinco octavos"),
    ("1,105", "mil ciento cinco"),
    ("21000", "veintiún mil"),
    ("4 tens 12 ones", "cuatro decenas doce unidades"),
)


@pytest.mark.parametrize(("typed", "said"), SAID)
def test_a_number_is_said(typed: str, said: str) -> None:
    """As a class says it, with the noun of a mixed number."""
    assert say(read_quantity(typed)) == said


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("7 2/6 - 3", "siete enteros y dos sextos menos tres"),
        ("5/6 < 7/8", "cinco sextos es menor que siete octavos"),
        ("round 450 to the nearest hundred", "redondea cuatrocientos cincuenta a la centena más cercana"),
        ("5 + ? = 7", "cinco más en blanco es igual a siete"),
    ],
)
def test_a_line_is_said(typed: str, said: str) -> None:
    """With its signs and its words."""
    assert say(read_statement(typed)) == said


def test_every_mixed_number_is_read_back_and_like_no_other() -> None:
    """Without enteros 30 2/3 would be said as 32/3: here each is read back as the amount that it is."""
    sizes = range(2, 101) if WHOLE_WALK else (2, 3, 8, 12, 31, 100)
    most = 99 if WHOLE_WALK else 41
    heard: dict[str, tuple[Fraction, int]] = {}
    for size in sizes:
        for wholes in (None, *range(1, most + 1)):
            for top in range(1, size) if wholes else range(1, 3 * size):
                number = Quantity(mixed(size), (wholes, top))
                said = say(number)
                assert heard.setdefault(said, (number.value, size)) == (number.value, size), said
                assert unsay_amount(said) == number.value, said
    assert len(heard) > 6000


def test_a_count_agrees_with_what_is_counted() -> None:
    """Only uno and the hundreds change."""
    strip, whole = Thing("tira", "tiras", feminine=True), Thing("entero", "enteros")
    counts = (1, 21, 31, 101, 200, 21_000)
    assert [count_words(count, strip) for count in counts] == [
        "una", "veintiuna", "treinta y una", "ciento una", "doscientas", "veintiún mil",
    ]  # fmt: skip
    assert [count_words(count, whole) for count in counts] == [
        "un", "veintiún", "treinta y un", "ciento un", "doscientos", "veintiún mil",
    ]  # fmt: skip


def test_no_name_of_a_piece_is_an_ordinal_or_two_words() -> None:
    """Each is one word, and no two of them are alike."""
    names = [piece_name(parts) for parts in range(2, 101)]
    assert len(set(names)) == 99
    assert not any(" " in name for name in names)
    assert {"segundos", "terceros"}.isdisjoint(names)


def test_gender_and_plural_are_guessed() -> None:
    """By the ending, with the likely exceptions."""
    assert [looks_feminine(word) for word in ("barra", "porción", "pan", "mano", "mapa")] == [
        True, True, False, True, False,
    ]  # fmt: skip
    assert [plural(word) for word in ("barra", "pan", "lápiz", "porción")] == [
        "barras", "panes", "lápices", "porciones",
    ]  # fmt: skip
