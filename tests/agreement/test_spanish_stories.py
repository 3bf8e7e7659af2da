"""Two roads: a Spanish story is solved from its words alone, and comes to the answer of its typed problem.

Every sentence must be read by a pattern, nouns must agree with their numbers, and the question must be
settled by what was said. CI takes more, and `make walk` numbers of every sort.
"""

import random
import re
from collections import Counter
from collections.abc import Iterator
from fractions import Fraction

import pytest
from msgspec.structs import replace

from onewhole.errors import OnewholeError
from onewhole.languages.class_words import ClassWords, OwnStory
from onewhole.languages.spanish.stories import KITE_PAPER
from onewhole.languages.spanish.words import read_whole
from onewhole.number.ladder import Ladder
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.answer import answer
from onewhole.problems.story_asks import asked
from onewhole.problems.story_structure import Structure
from onewhole.sheets.stories import Story, story
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import NumberRow, Relation, Statement
from tests.kit.how_much import sample
from tests.kit.spanish_asked import read_story
from tests.kit.spanish_stories import UnreadError, Whole
from tests.kit.stories import DIVIDED, LISTED, PLOTS, STEPS, TOLD

MILK = replace(read_whole("un vaso de leche"), story=OwnStory("el club de campo", "bebe"))
CUP = read_whole("una taza")
CLASSES = {
    KITE_PAPER: Whole("tira de papel", "tiras de papel", feminine=True),
    CUP: Whole("taza", "tazas", feminine=True),
    MILK: Whole("vaso de leche", "vasos de leche", feminine=False, who="el club de campo", does="bebe"),
}
#: What stands beside a number that has a unit, in the smallest of its kind.
MARKS = {
    "in": 1,
    "ft": 12,
    "yd": 36,
    "lb": 16,
    "h": 60,
    "qt": 32,
    "gal": 128,
    "km": 10**6,
    "m": 1000,
    "cm": 10,
}
MARKS |= {"kg": 1000, "L": 1000}
#: More seeds than there are ways to tell one statement.
SEEDS = 12
#: Built in these ways, stories are read in `test_spanish_stories_of_steps.py`.
READ_THERE = {
    *(Structure.ADD_TO, Structure.SMALLER_UNKNOWN, Structure.TURNED, Structure.SHARING),
    *(Structure.MEASURING_OUT, Structure.HOW_MANY_TIMES, Structure.SEVERAL_STEPS),
}
LESS_READ_THERE = re.compile(r"uánto menos (?:\w+ la azul que la roja|\w+ al día siguiente)\?$")
TOLD_HERE = [one for one in TOLD if one not in {*DIVIDED, *LISTED, *STEPS, *PLOTS}]
VARIED = sample(0, 1, 30)


def every(statement: Statement, words: ClassWords) -> Iterator[Story]:
    """All the stories that can be told about a statement."""
    found: set[str] = set()
    for seed in range(SEEDS):
        told = story(statement, seed=seed, words=words)
        if told.words in found:
            return
        found.add(told.words)
        if told.structure not in READ_THERE and not LESS_READ_THERE.search(told.words):
            yield told


def small(number: Quantity) -> Fraction:
    """A number in the smallest unit of its kind."""
    plain = number.kind is Kind.NUMBER
    return number.value * (MARKS.get(number.ladder.mark, 1) if plain else 1)


def truth(statement: Statement) -> object:
    """What the typed problem asks for, as a reader of words says it."""
    parts, right = asked(statement), answer(statement)
    match parts.wanted, right:
        case NumberForm() as form, _:
            return form.name, small(parts.numbers[0])
        case Ladder(units=units), _:
            return tuple(int(unit.size) for unit in units), small(parts.numbers[0])
        case _, Quantity() as number:
            return small(number)
        case _, Relation() as sign:
            return sign.value
        case _, NumberRow(parts=row):
            return tuple(map(small, row))
        case _:
            return right


def varied(typed: str, chance: random.Random) -> Statement | None:
    """The same problem with other numbers; None where those cannot be told."""

    def other(match: re.Match[str]) -> str:
        return str(chance.randrange(10 ** (len(match[0]) - 1), 10 ** len(match[0])))

    changed = re.sub(r"(?<![/.:\d])\d+(?![\d:./])|(?<=\.)\d+", other, typed)
    try:
        statement = read_statement(changed)
        asked(statement)
        answer(statement)
    except (OnewholeError, ValueError, ZeroDivisionError):
        return None
    return statement


@pytest.mark.parametrize("words", CLASSES, ids=["kites", "cup", "milk"])
def test_a_reader_of_spanish_comes_to_the_answer(words: ClassWords) -> None:
    """Every frame is told, read sentence by sentence, and asks for what its problem asks for."""
    chance, read = random.Random(16), Counter[str]()
    for typed in TOLD_HERE:
        statements = [read_statement(typed)]
        statements += [one for _ in range(VARIED) if (one := varied(typed, chance)) is not None]
        for statement in statements:
            for told in every(statement, words):
                assert read_story(told.words, CLASSES[words]) == truth(statement), told.words
                read["stories"] += 1
                read["sentences"] += len(re.findall(r"[.?](?: |$)", told.words))
    print(dict(read))
    assert read["stories"] > 400


def test_what_is_not_so_is_found() -> None:
    """A story whose words were changed is not read, or comes to another answer."""
    told = "Todas las tiras son del mismo tamaño. La cometa roja lleva 5 1/3 tiras. "
    told += "La cometa azul lleva 2 2/3 tiras."
    strip = Whole("tira", "tiras", feminine=True)
    assert read_story(f"{told} ¿Cuántas tiras más lleva la cometa roja?", strip) == Fraction(8, 3)
    for wrong in (
        f"{told} ¿Cuántas tiras más lleva la cometa azul?",
        f"{told} ¿Cuántas tiras menos lleva la cometa roja?",
        f"{told} ¿Cuántos tiras más lleva la cometa roja?",
        f"{told} ¿Cuántas tiras quedan?",
        told.replace("2 2/3 tiras", "2 2/3 tira") + " ¿Cuántas tiras más lleva la cometa roja?",
        told.replace("Todas las", "Todos los") + " ¿Cuántas tiras más lleva la cometa roja?",
        told.replace("azul lleva", "azul pierde") + " ¿Cuántas tiras más lleva la cometa roja?",
    ):
        with pytest.raises(UnreadError):
            read_story(wrong, strip)
    for changed, now in (("5 1/3", "6 1/3"), ("roja lleva", "verde lleva")):
        words = f"{told} ¿Cuántas tiras menos lleva la cometa azul?".replace(changed, now)
        assert (read_story(words, strip) == Fraction(8, 3)) is (now == "verde lleva")
