"""Two roads: every Spanish sentence of every ladder is read back, and what it claims is so.

Problems of every ladder (:mod:`tests.kit.ladders`) are worked in every way that suits; CI takes more, and
`make walk` all of them. A sentence that no pattern reads is a failure, as is one that is not true.
"""

from collections import Counter
from collections.abc import Iterator

from onewhole.errors import OnewholeError
from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.words import read_whole
from onewhole.languages.table import LANGUAGES
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import text_of
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import ONE
from onewhole.problems.answer import answer
from onewhole.sentences.node import Counted, Said
from onewhole.sentences.sentence import Sentence
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, Statement
from onewhole.walkthroughs.lesson import Item
from onewhole.working.questions import suiting
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.kit.heard import Heard
from tests.kit.how_much import sample
from tests.kit.ladders import ladders
from tests.kit.scenes import SIXTH
from tests.kit.spanish_claims import spanish_true
from tests.kit.spanish_reading import count_read, unsay_amount

SPANISH = LANGUAGES["es-US"]
STRIP = read_whole("una tira de papel")
#: Problems of what divides, is put in order and is told by a half: they stand on no ladder of the kit.
MORE = (
    "52 / 4", "53 / 4", "7 / 3", "157 / 6", "3 / 4", "1 / 8", "2 1/2 / 5", "4 / 1/3", "1/2 / 4", "8 ft / 3",
    "7.2 / 3", "$7.50 / 3", "3/4 / 1/8", "5 ft 4 in / 4", "9/10 / 3", "1024 / 8", "22 / 7", "6 / 8",
    "905 / 5", "84 / 7", "100 / 9", "12.6 / 4", "2 h 30 min / 3", "840 / 8", "306 / 3", "5 / 2", "9 / 4",
    "order 3/4, 1/2, 2/4", "order 0.5, 0.45, 0.405", "order 2 1/8, 1 7/8, 2 1/4", "order 304, 340, 403",
    "order 2/3, 3/4, 5/6",
)  # fmt: skip
STEP = sample(9, 2, 1)


def _workings() -> Iterator[tuple[Statement, Working]]:
    typed = (*(one for _, one in tuple(ladders())[::STEP]), *MORE[:: min(STEP, 3)])
    for one in typed:
        statement = read_statement(one)
        ways = suiting(statement) if isinstance(statement, Question) else (REGROUP_FIRST,)
        for way in ways:
            try:
                working = work(statement, way)
            except OnewholeError:
                continue
            if isinstance(working, Working):
                yield statement, working


def _said() -> Iterator[tuple[Sentence, Heard]]:
    for statement, working in _workings():
        item = Item("1", statement, answer(statement), working)
        heard = Heard(item, ClassWords("strip", "strips"), frozenset({"one"}))
        for line in working.lines:
            if line.because is not None:
                for sentence in SPANISH.working.reason(line.because, STRIP):
                    yield sentence, heard


def test_every_sentence_is_read_back_and_true() -> None:
    """Each is read by a pattern, and what that claims of its numbers holds in the working."""
    met: Counter[str] = Counter()
    wrong: dict[str, str] = {}
    for sentence, heard in _said():
        pattern = spanish_true(sentence, heard)
        if pattern is None:
            wrong.setdefault(text_of((sentence,)), str(heard.item.statement))
        else:
            met[pattern] += 1
    assert wrong == {}
    assert len(met) > sample(60, 80, 90)


def test_every_number_is_heard_as_it_is() -> None:
    """The words of counts, fractions and mixed numbers are read back by a reader of its own."""
    heard: Counter[str] = Counter()
    for sentence, _ in _said():
        for node in sentence.nodes:
            match node:
                case Counted(count, unit):
                    words = spoken(Sentence("es-US", (node,))).rstrip(".")
                    name = SPANISH.called(unit, count)
                    assert count_read(words.lower().removesuffix(name).strip()) == count, words
                    heard["counts"] += 1
                case Said(Quantity() as number) if (
                    number.ladder.style is Style.MIXED and not number.ladder.mark
                ):
                    assert unsay_amount(SPANISH.say(number)) == number.value
                    heard["numbers"] += 1
    assert min(heard.values()) > 50


def test_what_is_not_so_is_found() -> None:
    """A sentence with its numbers changed about, with another number, or in words that nobody reads."""
    statement = read_statement("7 2/6 - 3 5/6")
    working = work(statement, REGROUP_FIRST)
    assert isinstance(working, Working)
    item = Item("1", statement, answer(statement), working)
    heard = Heard(item, ClassWords("strip", "strips"), frozenset({"one"}))
    eight, five, three = (Counted(count, SIXTH) for count in (8, 5, 3))
    assert spanish_true(Sentence("es-US", ("a", eight, "les quitamos", five)), heard)
    for wrong in (
        ("a", five, "les quitamos", eight),
        ("a", eight, "les quitamos", three),
        (Counted(1, ONE), "tiene", five),
        ("a", eight, "les ponemos", five),
        ("en total son", eight),
    ):
        assert spanish_true(Sentence("es-US", wrong), heard) is None, wrong
