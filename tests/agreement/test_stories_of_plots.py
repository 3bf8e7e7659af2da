"""Stories of line plots, solved from their words and the drawn marks alone, in English and in Spanish."""

import re
from collections.abc import Callable, Iterator
from fractions import Fraction
from itertools import product

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.class_settings import CLASS_SETTINGS
from onewhole.languages.spanish.stories import KITE_PAPER
from onewhole.languages.spanish.words import read_whole
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.sheets.reading_level import AIM
from onewhole.sheets.stories import story
from onewhole.statements.reading import read_statement
from tests.kit.how_much import WHOLE, sample
from tests.kit.stories import PLOTS

Data = list[Fraction]
NUMBER = re.compile(r"(?:(\d+) )?(\d+)/(\d+)|(\d+)")
BOUNDS: tuple[tuple[str, Callable[[Fraction, Fraction], bool]], ...] = (
    (r"\bmore than|\bmás de", lambda one, a: one > a),
    (r"\bless than|\bmenos de", lambda one, a: one < a),
    (r"\bat least|\bal menos", lambda one, a: one >= a),
    (r"\bat most|\bcomo máximo", lambda one, a: one <= a),
    (r"\bexactly|\bexactamente", lambda one, a: one == a),
)


def _most(data: Data) -> Fraction:
    return max(set(data), key=data.count)


#: What the question asks of the marks that are meant: the first cue that stands in the last sentence or two.
ASKS: tuple[tuple[str, Callable[[Data], Fraction]], ...] = (
    (r"most common\?|más común\?", _most),
    (r"than the (?:least|shortest)\?|que la (?:menor|más corta)\?", lambda data: max(data) - min(data)),
    (
        r"would (?:each|that)|entonces cada",
        lambda data: sum(data, Fraction(0)) / len(data),
    ),
    (r"[Hh]ow many (?:kites|tails|days)|uánt[oa]s (?:cometas|colas|días)", lambda data: Fraction(len(data))),
    (r"in all\?|is that in all\?|uánto (?:es el total|miden)", lambda data: sum(data, Fraction(0))),
)


def solved(words: str, data: Data) -> Fraction:
    """What a reader comes to, who sees the marks and reads the words."""
    told = words.split(". ", 1)[1] if words.startswith(("All the", "Todas las")) else words
    found = NUMBER.findall(told)
    if found:
        ((wholes, top, bottom, plain),) = found
        value = Fraction(plain) if plain else int(wholes or 0) + Fraction(int(top), int(bottom))
        (holds,) = [rule for cue, rule in BOUNDS if re.search(cue, told)]
        data = [one for one in data if holds(one, value)]
    question = re.split(r"[.] ", told, maxsplit=1)[1]
    return next(solve for cue, solve in ASKS if re.search(cue, question))(data)


def _problems() -> Iterator[str]:
    """Some plots of the kit; on the whole walk every plot of up to three values with up to three marks."""
    yield from PLOTS[:: sample(7, 2, 1)]
    if not WHOLE:
        return
    bounds = ("above", "below", "at least", "at most", "exactly")
    asks = ["count", "total", "most", "spread", "share"]
    asks += [f"{one} {bound} {value}" for one in ("count", "total") for bound in bounds for value in VALUES]
    for counts in product(range(4), repeat=len(VALUES)):
        marks = ", ".join(f"{value}: {count}" for value, count in zip(VALUES, counts, strict=True))
        for unit, ask in product(("", " in", " lb", " gal", " h"), asks):
            yield f"plot {marks}{unit}; {ask}".replace(f"{unit}:", ":")


VALUES = ("1/4", "1/2", "3/4")
#: The unit stands behind the last value.
LAST = re.compile(r"^(plot .*?)(\S+): (\d+)( [a-z]+);")


def _typed(problem: str) -> str:
    return LAST.sub(r"\1\2\4: \3;", problem)


CLASSES: tuple[ClassWords | None, ...] = (
    *(None, CLASS_SETTINGS["kitchen"], CLASS_SETTINGS["garden"], CLASS_SETTINGS["school hall"]),
    *(KITE_PAPER, read_whole("una taza")),
)


def reads_to_the_answer(typed: str, words: ClassWords | None) -> int:
    """Hold that each way to tell a problem is solved to its answer; return how many were read."""
    statement = read_statement(typed)
    right, ways = answer(statement), set[str]()
    assert isinstance(right, Quantity)
    data = [value for value, count in _data(typed) for _ in range(count)]
    for seed in range(3):
        told = story(statement, words=words, seed=seed)
        if told.words in ways:
            break
        ways.add(told.words)
        assert solved(told.words, data) == right.value, told.words
        if told.told[0].language == "en":
            assert told.level.grade <= AIM, told.words
    return len(ways)


def _data(typed: str) -> list[tuple[Fraction, int]]:
    """The values with how often each was found, from what is typed before the semicolon."""
    marks = typed.removeprefix("plot ").partition(";")[0]
    found = []
    for mark in marks.split(", "):
        value, _, count = re.sub(r"(?<=\d) [a-z]+|(?<=\d) [A-Z]", "", mark).partition(": ")
        found.append((sum((Fraction(part) for part in value.split()), Fraction(0)), int(count)))
    return found


@pytest.mark.parametrize("words", CLASSES)
def test_a_reader_of_the_plot_comes_to_the_answer(words: ClassWords | None) -> None:
    """Every question of a plot, in every class setting, from the words and the marks."""
    read = 0
    for typed in _problems():
        try:
            read_statement(_typed(typed))
        except ValueError:
            continue
        read += reads_to_the_answer(_typed(typed), words)
    assert read
