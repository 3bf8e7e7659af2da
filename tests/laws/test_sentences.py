"""The laws of sentences: numbers and units are nodes, so a sentence is checked without reading English."""

from collections.abc import Iterator
from fractions import Fraction

from onewhole.languages.english.facts import fact_told
from onewhole.languages.english.reasons import reason_told
from onewhole.languages.english.words import measure_name, piece_name, place_name, words_for
from onewhole.languages.table import LANGUAGES
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import sentence_text
from onewhole.number.ladder import places
from onewhole.number.unit import MEASURES, Unit
from onewhole.sentences.node import Counted, Thing
from onewhole.sentences.sentence import Sentence
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.line import Line
from onewhole.working.questions import suiting
from onewhole.working.reasons.regrouping import AreWorth, OneIsWorth
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work

PROBLEMS = (
    "7 2/6 - 3 5/6",
    "304 - 128",
    "12.35 - 4.7",
    "5 ft 2 in - 2 ft 7 in",
    "3 lb 5 oz + 2 lb 14 oz",
    "2 4/5 + 1 3/5",
    "7 1/2 - 3 2/3",
    "29 + 43",
    "5/6 ? 7/8",
    "7 2/3 = 5 ?/6",
)
WORDS = words_for("strip of kite paper", "trade")
#: Units by their names; "one" and "ones" are left out, because English says "the one that".
UNITS = {
    *(piece_name(parts, count) for parts in range(2, 101) for count in (1, 2)),
    *(place_name(unit) for unit in places(7).units[:-1]),
    *(measure_name(unit, count) for unit in MEASURES for count in (1, 2)),
}


def _lines() -> Iterator[Line]:
    for problem in PROBLEMS:
        statement = read_statement(problem)
        ways = suiting(statement) if isinstance(statement, Question) else (REGROUP_FIRST,)
        for way in ways:
            yield from work(statement, way).lines


LINES = tuple(_lines())


def _said() -> Iterator[Sentence]:
    for line in LINES:
        if line.because:
            yield from reason_told(line.because, WORDS)
        for fact in line.facts:
            yield from fact_told(fact)


def test_no_unit_hides_among_the_words() -> None:
    """A unit or the class's word for a whole is a node, never a word."""
    said = tuple(_said())
    words = {
        word.strip(",:;")
        for one in said
        for node in one.nodes
        if isinstance(node, str)
        for word in node.split()
    }
    assert len(said) > 100
    assert words & (UNITS | {"strip", "strips"}) == set()


def test_worth_is_true_of_the_tree() -> None:
    """What is said to be worth so much is worth it: the sentence is checked by its nodes alone."""
    checked = 0
    for line in LINES:
        if not isinstance(line.because, OneIsWorth | AreWorth):
            continue
        (said,) = reason_told(line.because, WORDS)
        left, right = (_size(node) * node.count for node in said.nodes if isinstance(node, Counted))
        assert left == right
        checked += 1
    assert checked > 10


def _size(counted: Counted) -> Fraction:
    worth = counted.unit.worth if isinstance(counted.unit, Thing) else counted.unit
    assert isinstance(worth, Unit)
    return worth.size


def test_every_sentence_is_written_and_spoken() -> None:
    """Speech holds no digit; both begin with a capital or a number and end with a full stop."""
    for said in _said():
        assert said.language in LANGUAGES
        speech = spoken(said)
        assert not any(sign.isdigit() for sign in speech), speech
        assert speech[0].isupper()
        assert speech.endswith(".")
        assert sentence_text(said).endswith(".")
