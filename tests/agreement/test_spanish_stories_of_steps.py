"""Spanish stories of dividing, of several steps and of every situation, solved from their words alone."""

import re
from collections.abc import Callable
from fractions import Fraction

import pytest

from onewhole.languages.spanish.stories import KITE_PAPER
from onewhole.languages.spanish.words import read_whole
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.story_structure import Structure
from onewhole.sheets.stories import story
from onewhole.statements.expression import WithRemainder
from onewhole.statements.reading import read_statement
from tests.kit.stories import DIVIDED, STEPS

CLASSES = (KITE_PAPER, read_whole("una taza"))
#: Feet and inches stand for all measures: one way to tell serves them all.
NUMBER = re.compile(
    r"(\d+) pies?(?: y? ?(\d+) pulgadas?)?|(\d+) pulgadas?"
    r"|((?:\d+ )?\d+/\d+|[\d,]*\d\.\d+|\d{1,3}(?:,\d{3})+|\d+)"
)
#: More seeds than there are ways to tell one problem.
SEEDS = 12
OTHERS = re.compile(r"lb|oz|\bh\b|min|gal|qt|\bm\b|cm|kg|\bg\b|\bL\b|mL|\$|¢")


def numbers(words: str) -> list[Fraction]:
    """Every number of a story in its order; lengths in inches."""
    return [_worth(*found) for found in NUMBER.findall(words)]


def _worth(feet: str, inches: str, alone: str, plain: str) -> Fraction:
    if plain:
        return sum((Fraction(part) for part in plain.replace(",", "").split()), Fraction(0))
    return Fraction(int(feet or 0) * 12 + int(inches or 0) + int(alone or 0))


#: What the Spanish asks for: the first cue that stands in the words. Written from the sentences alone.
CUES: tuple[tuple[str, Callable[..., Fraction]], ...] = (
    (r"hacen falta para", lambda a, b: Fraction(-(-a // b))),
    (r"paquetes están llenos|filas completas se pueden", lambda a, b: Fraction(a // b)),
    (r"paquetes que puede|completas que se puede", lambda a, b: a % b),
    (r"Eso es \d+ veces lo|¿Cuántas veces lo", lambda a, b: a / b),
    (r"por igual a .* Luego, en cada una de", lambda a, n, k, b, c: a / n + k * (b - c)),
    (r"^Alguien del club .* reparte|^Primero .* hasta el fin", lambda a, b, n: a + b / n),
    (r"cometas iguales\. Hace una|alcanza para .* una de ellas\?", lambda a, b, n: a - b / n),
    (r"^Con .* iguales\. Hace|¿.* en \d+ reuniones\?$", lambda a, n, k: a / n * k),
    (r"recibe .* más\. \w+ todo", lambda a, b, n: (a + b) / n),
    (r"[Ll]o demás", lambda a, b, n: (a - b) / n),
    (r"¿(Cuántas cometas|Cuántos paquetes|Para cuántas veces)", lambda a, b: a / b),
    (
        r"(?<!recibe) (cada vez|cada cometa|cada fila|cada una al final)\?$|recibe cada|le toca",
        lambda a, b: a / b,
    ),
    (r"bandera\. También|un día\. Después se reúne", lambda a, k, b: a + k * b),
    (r"También hace una bandera|Después de la última .* más\.", lambda k, a, b: k * a + b),
    (r"Después de la última", lambda k, a, b: k * a - b),
    (r"tiene .*\. Hace \d+ cometas\.|tiene .*\. En cada una de", lambda a, k, b: a - k * b),
    (r"^En cada una de .* en total\?", lambda k, a, b: k * (a - b)),
    (r"^En cada reunión .* en total\?", lambda a, b, k: (a - b) * k),
    (r"hace \d+ cometas\. Cada cometa|se reúne \d+ veces\. Cada vez", lambda k, a, b: k * (a + b)),
    (r"^Cada cometa|^Cada vez que", lambda a, b, k: (a + b) * k),
    (r"sin cola|día corto", lambda a, b, c: a - (b - c)),
    (r"cometa con su cola|por la mañana", lambda a, b, c: a - (b + c)),
    (r"Después recibe \d", lambda a, b, c: a - b + c),
    (r"su cola|\d.* al día siguiente\. ¿", lambda a, b, c: a - b - c),
    (r"Eso es .* menos que|(?:Recibe|Le dan) .* más\. .* ahora\?$", lambda a, b: a + b),
    (r"Eso es .* más que|menos(?: que la roja)?\. ¿|[Cc]uánto menos", lambda a, b: a - b),
    (r"Le dan más\. Ahora|Ahora tiene .* en total", lambda a, b: b - a),
)


def solved(words: str) -> Fraction:
    """What a reader comes to: the first cue says what is done with the numbers in their order."""
    plain = words.partition(" son del mismo tamaño. ")[2] or words
    return next(solve for cue, solve in CUES if re.search(cue, plain))(*numbers(plain))


@pytest.mark.parametrize("typed", [one for one in (*DIVIDED, *STEPS) if not OTHERS.search(one)])
def test_a_reader_of_spanish_comes_to_the_answer(typed: str) -> None:
    """Every way to tell a division or several steps asks for what the problem asks for."""
    statement = read_statement(typed)
    right = answer(statement)
    for own in CLASSES:
        for words in {story(statement, seed=seed, words=own).words for seed in range(SEEDS)}:
            found = solved(words)
            if isinstance(right, WithRemainder):
                first, second = numbers(words)
                assert right.quotient.value == found // 1, words
                assert right.left.value == first - right.quotient.value * second, words
                assert re.search(r"qued(?:a|an)(?: al final)?\?$", words)
            else:
                assert isinstance(right, Quantity)
                assert found == right.value, words


@pytest.mark.parametrize(
    ("typed", "structures"),
    [
        *((f"{a} + {b}", {Structure.ADD_TO, Structure.TURNED}) for a, b in (("5 1/3", "2 2/3"), ("30", "8"))),
        *(
            (f"{a} - {b}", {Structure.SMALLER_UNKNOWN, Structure.TURNED})
            for a, b in (("5.2", "0.7"), ("2", "1"))
        ),
        ("2 2/3 + ? = 5 1/3", {Structure.ADD_TO}),
        ("? + 2 ft 3 in = 5 ft 1 in", {Structure.ADD_TO}),
    ],
)
def test_a_reader_of_spanish_adds_and_takes_away(typed: str, structures: set[Structure]) -> None:
    """What is added to, and what is compared in both wordings, asks for what the problem asks for."""
    statement = read_statement(typed)
    right = answer(statement)
    assert isinstance(right, Quantity)
    for own in CLASSES:
        for structure in structures:
            words = story(statement, structure=structure, words=own).words
            assert solved(words) == right.value, words


def test_a_reader_of_spanish_says_how_much_less() -> None:
    """How much less one of two takes is told of every kind of amount: 34 inches."""
    statement = read_statement("5 ft 1 in - 2 ft 3 in")
    for own in CLASSES:
        told = {
            story(statement, structure=Structure.COMPARE, seed=seed, words=own).words for seed in range(SEEDS)
        }
        less = [words for words in told if re.search(r"uánto menos (?:lleva|usa)", words)]
        assert [solved(words) for words in less] == [34]
