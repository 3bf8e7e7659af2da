import re
from collections import defaultdict
from collections.abc import Iterator
from functools import cache
from typing import get_args

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.asks import ask_told
from onewhole.languages.english.thoughts import thought_told
from onewhole.misconceptions.ask import Ask
from onewhole.misconceptions.case import Case
from onewhole.misconceptions.catalogue import by_id, patterns
from onewhole.misconceptions.in_story import InStory
from onewhole.misconceptions.pattern import Pattern
from onewhole.misconceptions.telling import Doing, ToldAs
from onewhole.misconceptions.thought import Thought
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import text_of
from onewhole.sentences.node import Typed
from onewhole.sentences.sentence import End, Sentences
from onewhole.statements.reading import read_statement
from tests.kit.ladders import Belongings, ladders

WORDS = ClassWords("strip", "strips")
#: One of a thing by the word for many of it.
MANY = re.compile(
    r"(?<![-\w/])(1|[Oo]ne) "
    r"(wholes|strips|pieces|\w*(?<!o)nes|tens|hundreds|\w+(th|ird|nd)s|halves|feet|yards|inches|pounds|ounces)\b"
)

#: Ways to tell a problem: what a word suggests, and that two things are compared.
TELLINGS = tuple(ToldAs(doing, compares=True) for doing in Doing)


@cache
def cases() -> dict[str, list[tuple[str, str, Case]]]:
    """Return by pattern the problems that show it, with the ladder each stands on."""
    found = defaultdict(list)
    for ladder, typed in ladders():
        statement = read_statement(typed)
        for pattern in patterns():
            for telling in TELLINGS if isinstance(pattern.attempt, InStory) else (None,):
                if (case := pattern.case(statement, telling)) is not None:
                    found[pattern.id].append((ladder, typed, case))
    return found


def told(pattern: Pattern, case: Case) -> Iterator[Sentences]:
    """Give what is asked and what is thought."""
    yield ask_told(pattern.ask(case), WORDS)
    yield thought_told(pattern.thinking(case), WORDS)


def test_every_pattern_is_tried_on_every_ladder_it_shows_on() -> None:
    """All are, most on several problems; those that show on many ladders are tried on many."""
    found = cases()
    tried = {key: len(on) for key, on in found.items()}
    assert set(tried) == {pattern.id for pattern in patterns()}
    assert sum(tried.values()) > 2500
    pieces = {"1/2", "1/3", "1/6", "1/8", "1/10", "1/100", "unlike denominators"}
    assert {ladder for ladder, _, _ in found["A02"]} == pieces | {"inches with fractions"}
    measures = {"feet and inches", "yards and feet", "pounds and ounces", "hours and minutes"}
    assert {ladder for ladder, _, _ in found["G02"]} > measures


@pytest.mark.parametrize("pattern", patterns(), ids=lambda pattern: pattern.id)
def test_no_number_and_no_unit_is_foreign(pattern: Pattern) -> None:
    """By the tree: what is asked and thought names numbers and units of the child's own problem only."""
    for ladder, typed, case in cases()[pattern.id]:
        own = Belongings(case)
        for sentences in told(pattern, case):
            foreign = [node for one in sentences for node in one.nodes if not own.holds(node)]
            assert not foreign, (ladder, typed, text_of(sentences))


@pytest.mark.parametrize("pattern", patterns(), ids=lambda pattern: pattern.id)
def test_it_can_be_read_and_heard(pattern: Pattern) -> None:
    """Each is written and spoken; the ask asks, speech has no digit, and one of a thing is one."""
    for _, typed, case in cases()[pattern.id]:
        ask, thought = told(pattern, case)
        assert any(one.end is End.ASKS for one in ask), typed
        assert not any(one.end is End.ASKS for one in thought), typed
        for sentences in (ask, thought):
            written, heard = text_of(sentences), " ".join(map(spoken, sentences))
            assert not re.search(r"\d", heard), heard
            assert not MANY.search(written), written


def test_a_number_of_another_problem_is_foreign() -> None:
    """What the test above looks for is found where it is put in: the words of one problem beside another."""
    pattern = by_id("A06")
    mine, other = (pattern.case(read_statement(typed)) for typed in ("7 2/6 - 3 5/6", "9 5/8 - 4 6/8"))
    assert mine is not None
    assert other is not None
    own = Belongings(mine)
    nodes = [node for one in ask_told(pattern.ask(other), WORDS) for node in one.nodes]
    assert [own.holds(node) for node in nodes].count(False) == 1


def test_every_question_and_every_thought_is_asked_somewhere() -> None:
    """No member of the two families is without a pattern, and no rule without its words."""
    asks, thoughts = set(), set()
    for pattern in patterns():
        for _, _, case in cases()[pattern.id]:
            asks.add(type(pattern.ask(case)))
            thoughts.add(type(pattern.thinking(case)))
    assert asks == set(get_args(Ask))
    assert thoughts == set(get_args(Thought))
    rules = {pattern.thinking(case) for pattern in patterns() for _, _, case in cases()[pattern.id]}
    assert rules >= set(RuleThought)


def test_the_class_s_own_word_for_regrouping() -> None:
    """What a child thinks uses the class's verb, which stands as it was given."""
    case = by_id("A04").example_case
    nodes = thought_told(by_id("A04").thinking(case), ClassWords(regroup="trade"))[0].nodes
    assert Typed("trade") in nodes


@pytest.mark.parametrize(
    ("key", "typed", "says"),
    [
        ("A06", "5 1/3 - 2 3/4", "Before you cut one strip you had 4 twelfths. Where are they now?"),
        ("F04", "58.0 - 1.8", "Look at the tenths of 58.0. Are there enough tenths to take 8 tenths away?"),
        ("F04", "12.5 - 3.2", "Look at the ones of 12.5. Are there enough ones to take 3 ones away?"),
        ("P03", "2/3 + 2/3", "You made one strip from 4 thirds. Where is it in your answer"),
        ("G03", "7 lb 3 oz - 2 lb 9 oz", "Show 7 lb 3 oz. Are there enough ounces to take 9 ounces away?"),
        (
            "G05",
            "1 h 1 min - 2 min",
            "Before you changed one hour to minutes, you had 1 minute. Where is it now?",
        ),
        ("A11", "6 - 2 1/3", "There are no thirds to start with."),
        ("E03", "8000 - 2345", "There is a zero in the tens place of 8"),
    ],
)
def test_a_question_is_filled_from_the_problem(key: str, typed: str, says: str) -> None:
    """Places and pieces are those of the problem, also where the catalogue's example has others."""
    case = by_id(key).case(read_statement(typed))
    assert case is not None
    assert text_of(ask_told(by_id(key).ask(case), WORDS)).startswith(says)
