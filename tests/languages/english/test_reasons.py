import re
from collections.abc import Callable, Iterator
from functools import cache
from typing import get_args

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.facts import fact_told
from onewhole.languages.english.reasons import reason_told
from onewhole.languages.english.unpictured import unpictured
from onewhole.languages.english.unsuited import unsuited as unsuited_said
from onewhole.languages.english.words import words_for
from onewhole.notations.sentences.text import text_of
from onewhole.number.ladder import Ladder, decimal, measure, mixed, places
from onewhole.number.quantity import Quantity, whole
from onewhole.pictures.choosing import refusal
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.unpictured import Unpictured
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.fact import Fact, hard_difference, hard_sum
from onewhole.working.form import FormWanted, form_for, led_to
from onewhole.working.line import Line
from onewhole.working.questions import unsuited
from onewhole.working.quotients.remainder_shared import RemainderForm
from onewhole.working.reason import Reason
from onewhole.working.reasons.comparing import CountDecides
from onewhole.working.reasons.parting import Parting
from onewhole.working.reasons.regrouping import OpensOne, PutTogether
from onewhole.working.reasons.renaming import FewestPieces
from onewhole.working.reasons.taking import AddedUnitByUnit, Left, TakenUnitByUnit
from onewhole.working.reasons.unsuited import Unsuited
from onewhole.working.ways import WAYS
from onewhole.working.work import work

KITES = words_for("strip of kite paper", "trade")

#: Problems that between them use every strategy, every reason and every kind of number.
PROBLEMS = [
    "50 / 8, groups needed",
    "49 / 8, full groups",
    "50 / 8, left over",
    "48 / 8, groups needed",
    "7 2/6 - 3 5/6",
    "52 - 27",
    "304 - 128",
    "304 - 108",
    "5 ft 2 in - 2 ft 7 in",
    "4 yd 1 ft 2 in - 2 yd 2 ft 7 in",
    "5.2 - 2.7",
    "12.35 - 4.7",
    "4 - 1 3/8",
    "4 + 1 3/8",
    "3/8 + 7/8",
    "1/6 + 2/6 + 5/6",
    "2 4/5 + 1 3/5",
    "3 1/2 - 2 3/2",
    "1 5/3 - 2 1/3",
    "7 1/2 - 3 2/3",
    "0.5 + 1/4",
    "5 h 10 min + 2 h 55 min",
    "3 in + 2 ft 10 in",
    "29 + 43",
    "4567 + 3789",
    "10005 - 48",
    "3 - 3",
    "5/6 - 1/6",
    "7 5/6 - 7 1/6",
    "8/16 = ?/4",
    "3/4 simplest",
    "0/8 simplest",
    "5/1 simplest",
    "5 as a fraction",
    "1 as a fraction",
    "3/4 as a decimal",
    "0.75 as a fraction",
    "5/6 ? 7/8",
    "6/6 ? 8/8",
    "4 ? 3 1/2",
    "1000 ? 999",
    "3.5 ? 3 5/10",
    "5 ft ? 58 in",
    "2 3/4 ? 2 5/8",
    "2 1/3 ? 2",
    "3/8 ? 5/8",
    "4/5 ? 4/7",
    "3/7 ? 5/8",
    "7/8 ? 13/12",
    "5/6 ? 4/7",
    "2/3 ? 4/7",
    "0.64 ? 0.6",
    "0 ? 3/4",
    "11/4 ? 2 2/3",
    "7 2/6 = 6 ?/6",
    "7 2/3 = 5 ?/6",
    "4 = 4 ?/6",
    "3/4 = ?/12",
    "44/6 = ? 2/6",
    "5 - ? = 2 1/3",
    "? + 1 1/5 = 4",
    "3 as a fraction",
    "order 2/3, 1/2, 3/4",
    "order 3/5, 2/3, 7/10",
    "order 2 3/4, 2 5/8, 1",
    "order 2 3/4, 1 5/8, 3",
    "order 3/5, 3/4, 3/8",
    "order 5 ft, 61 in",
    "round 4567 to the nearest hundred",
    "round 450 to the nearest hundred",
    "round 400 to the nearest hundred",
    "4 x 2/3",
    "1 2/5 x 3",
    "3 x 2 ft 7 in",
    "2 1/2 x 3 1/4",
    "3/4 of 2 ft",
    "2 h 30 min x 5/6",
    "3/4 of $12",
    "1/4 of 1 gal",
    "24 x 36",
    "7 x 8",
    "20 x 30",
    "1/2 x 3/4",
    "987 / 4",
    "42 / 6",
    "7 2/6 / 4",
    "1/3 / 4",
    "3 / 4",
    "5.2 / 3",
    "2 / 1/3",
    "3/4 ÷ 2/3",
    "5 ft 2 in / 2",
    "18 / 6 + 4 x (5 - 2)",
    "factors of 36",
    "multiples of 7 to 50",
    "is 37 prime or composite",
    "is 91 prime or composite",
    "is 1 prime or composite",
    "is 84 a multiple of 7",
    "is 44 a multiple of 8",
    "3 x (20 + 7)",
    "9 - 2 x 3/4",
    "(20 - 8)/5 + 1",
    "2.4 x 0.7",
    "plot 1/4: 2, 1/2: 3, 3/4: 1; count",
    "plot 1/4: 2, 1/2: 3, 3/4: 1; total",
    "plot 1/4: 2, 1/2: 3, 3/4: 1; share",
    "plot 1/4: 2, 1/2: 3, 3/4: 1; most",
    "plot 1/4: 2, 1/2: 3, 3/4: 1; spread",
]


def _lines(problem: str) -> Iterator[Line]:
    statement = read_statement(problem)
    for strategy in WAYS:
        if not isinstance(statement, Question) or unsuited(statement, strategy) is None:
            wanted = FormWanted(simplest=True, remainder=RemainderForm.FRACTION)
            yield from led_to(work(statement, strategy), form_for(statement, wanted)).lines


def _unsuited(problem: str) -> Iterator[Unsuited]:
    """Every reason why a strategy does not suit a problem."""
    statement = read_statement(problem)
    if isinstance(statement, Question):
        yield from filter(None, (unsuited(statement, strategy) for strategy in WAYS))


def _refused(problem: str) -> Iterator[Unpictured]:
    """Every reason why a picture does not suit a working of a problem."""
    statement = read_statement(problem)
    for strategy in WAYS:
        if not isinstance(statement, Question) or unsuited(statement, strategy) is None:
            found = (refusal(work(statement, strategy), kind) for kind in PictureKind)
            yield from (refused.reason for refused in found if refused)


#: Problems for which, between them, pictures are refused for every reason.
UNDRAWN = [
    "7 2/6 - 3 5/6",
    "7 2/6 = 6 ?/6",
    "100 - ? = 99 7/8",
    "52 - 27",
    "12.35 - 4.7",
    "12 5/23 ? 12 7/23",
    "9 7/8 - 1 1/8 - 1 1/8 - 1 1/8 - 1 1/8 - 1 1/8",
    "1655 / 27",
    "4 + 3 x 7",
    "plot 1/4: 2, 1/2: 3; most",
]


@cache
def reasons() -> tuple[Reason, ...]:
    """Every reason of every line."""
    return tuple(line.because for problem in PROBLEMS for line in _lines(problem) if line.because)


@cache
def not_suiting() -> tuple[Unsuited, ...]:
    """Every reason why a strategy does not suit one of the problems."""
    return tuple(reason for problem in PROBLEMS for reason in _unsuited(problem))


@cache
def undrawn() -> tuple[Unpictured, ...]:
    """Every reason why a picture is refused."""
    return tuple(reason for problem in UNDRAWN for reason in _refused(problem))


def _every(words: ClassWords) -> Iterator[str]:
    """Every sentence of every reason."""
    yield from (text_of(reason_told(reason, words)) for reason in reasons())
    yield from (text_of(unsuited_said(reason)) for reason in not_suiting())
    yield from (text_of(unpictured(reason, words)) for reason in undrawn())


@pytest.mark.parametrize(
    ("family", "found"),
    [(Reason, reasons), (Unsuited, not_suiting), (Unpictured, undrawn)],
    ids=["reasons", "unsuited", "unpictured"],
)
def test_every_reason_is_given_by_some_working(
    family: object, found: Callable[[], tuple[object, ...]]
) -> None:
    """No member of a family stands unused."""
    assert set(get_args(family)) == set(map(type, found()))


@pytest.mark.parametrize("words", [ClassWords(), KITES])
def test_sentences_are_short_and_full(words: ClassWords) -> None:
    """A capital or digit first, a full stop last, at most 22 words, and none that a class does not use."""
    for said in _every(words):
        assert re.fullmatch(r"[A-Z0-9][^\n]*\.", said), said
        assert "  " not in said
        assert all(len(part.split()) <= 22 for part in said.split(". ")), said
        assert not re.search(r"borrow|improper|reduc|carry", said)


def _opens(ladder: Ladder, have: int, need: int) -> Reason:
    one = whole(1)
    parting = Parting(one, (one,), 0, one, None, one)
    return OpensOne(ladder.units[0], ladder.units[1], have, need, parting)


@pytest.mark.parametrize(
    ("reason", "said"),
    [
        (
            _opens(mixed(6), 2, 5),
            "There are not enough sixths to take 5 sixths, so regroup one whole.",
        ),
        (
            _opens(measure("ft", "in"), 0, 1),
            "There are not enough inches to take 1 inch, so regroup one foot.",
        ),
        (_opens(places(3), 0, 0), "There are no tens to regroup, so regroup one hundred first."),
        (
            PutTogether(mixed(6).units[1], 6, 2, 8),
            "6 sixths and 2 sixths make 8 sixths.",
        ),
        (
            PutTogether(mixed(8).units[1], 8, 0, 8),
            "Now there are 8 eighths.",
        ),
        (
            TakenUnitByUnit(mixed(6).units),
            "Wholes from wholes, sixths from sixths.",
        ),
        (
            AddedUnitByUnit(places(3).units),
            "Hundreds with hundreds, tens with tens, ones with ones.",
        ),
        (
            TakenUnitByUnit(decimal(1, 2).units),
            "Wholes from wholes, tenths from tenths, hundredths from hundredths.",
        ),
        (TakenUnitByUnit(mixed(6).units[1:]), "Sixths from sixths."),
        (Left(Quantity(mixed(6), (3, 3))), "3 wholes and 3 sixths are left."),
        (Left(Quantity(mixed(6), (None, 1))), "1 sixth is left."),
        (Left(whole(0)), "Nothing is left."),
        (Left(whole(25)), "25 is left."),
        (
            CountDecides(mixed(4).units[1], 1, 3),
            "1 fourth is fewer than 3 fourths.",
        ),
        (
            FewestPieces(mixed(8).units[1], mixed(2).units[1], 4),
            "Every 4 eighths make 1 half. That is the simplest form.",
        ),
    ],
)
def test_sentences(reason: Reason, said: str) -> None:
    """Counts, plurals and verbs agree."""
    assert text_of(reason_told(reason, ClassWords())) == said


def test_the_class_has_its_own_words() -> None:
    """The whole and the verb are the class's."""
    said = text_of(reason_told(_opens(mixed(6), 2, 5), KITES))
    assert said == "There are not enough sixths to take 5 sixths, so trade one strip of kite paper."


@pytest.mark.parametrize(
    ("fact", "said"),
    [
        (hard_difference(16, 9), "For 16 - 9, go by way of the ten: 16 - 6 = 10, then 10 - 3 = 7."),
        (
            hard_difference(103, 87),
            "For 103 - 87, think of adding: 87 + 3 = 90, then 90 + 13 = 103, then 3 + 13 = 16.",
        ),
        (hard_sum(8, 7), "For 8 + 7, go by way of the ten: 8 + 2 = 10, then 10 + 5 = 15."),
    ],
)
def test_facts(fact: Fact | None, said: str) -> None:
    """A hard fact is told by its steps."""
    assert fact is not None
    assert text_of(fact_told(fact)) == said


def test_every_fact_of_the_workings_can_be_told() -> None:
    """Facts come up, and each is one sentence."""
    facts = [fact for problem in PROBLEMS for line in _lines(problem) for fact in line.facts]
    assert facts
    assert all(re.fullmatch(r"For .* = \d+\.", text_of(fact_told(fact))) for fact in facts)
