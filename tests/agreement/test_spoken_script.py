"""Two roads: every number the script speaks, read back from its words, is true of the working.

The space: sums and differences of mixed numbers up to 3 wholes in thirds under every strategy that suits,
each told in full, and a seeded page of problems up to 4 wholes in fifths told shorter and shorter.
ONEWHOLE_WHOLE_WALK=1 (`make walk`) takes a seeded sample of 20,000 workings over the grade's denominators and
numbers up to 9 wholes.
"""

import os
import random
from collections import Counter
from collections.abc import Iterable
from functools import cache
from itertools import islice

import pytest
from msgspec.structs import replace

from onewhole.languages.class_words import ClassWords
from onewhole.misconceptions.catalogue import shows
from onewhole.notations.sentences.speech import spoken as spoken_aloud
from onewhole.notations.sentences.speech import words_spoken
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, Statement
from onewhole.walkthroughs.cue import Chapter
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.memory import MOST_OFTEN, MOST_WORDS, SHORT
from onewhole.walkthroughs.script import script
from onewhole.working.questions import for_question
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.strategy import Strategy
from onewhole.working.way import NamedWay
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.kit.claims import true
from tests.kit.heard import Heard, number_words, spoken
from tests.kit.how_much import sample
from tests.kit.statements import every_question
from tests.kit.worked import question, tried

WORDS = ClassWords("strip", "strips")
EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
SAMPLE = 20_000
A_FEW = sample(3, 6)
PAGE = 40


def one(statement: Statement, working: Working | None, label: str = "1") -> Item:
    """An item of a night."""
    return Item(label, statement, answer(statement), working)


def night(items: Iterable[Item]) -> Lesson:
    """A page of items, without a name or a date."""
    return Lesson("", "", "", WORDS, tuple(items))


def all_true(chapter: Chapter, heard: Heard) -> Counter[str]:
    """Every sentence of a chapter with a number word is read by a pattern and true, and none is too long."""
    found: Counter[str] = Counter()
    for said in (said for cue in chapter.cues for said in cue.says):
        words = spoken_aloud(said)
        assert len(words.split()) <= MOST_WORDS, words
        assert not any(sign.isdigit() for sign in words), words
        if number_words(words):
            pattern = true(words, heard)
            assert pattern is not None, (words, heard.item.statement, heard.item.working)
            found[pattern] += 1
        found["sentences"] += 1
    return found


def workings() -> Iterable[tuple[Question, Strategy]]:
    """Every pair of a problem and a strategy in the space, or a seeded sample of the grade's."""
    if not EVERYTHING:
        return [(asked, strategy) for asked in every_question(3, 3) for strategy in STRATEGIES]
    chance = random.Random(20)
    pairs = [
        (asked, way)
        for d in (2, 3, 4, 5, 6, 8, 10, 12)
        for asked in every_question(d, 9)
        for way in STRATEGIES
    ]
    return chance.sample(pairs, 3 * SAMPLE)


@pytest.mark.more("laws/test_speech.py")
@pytest.mark.slow
def test_every_sentence_reads_back_true_under_every_strategy() -> None:
    """Told in full, whatever is said of a working is true of it; every pattern of the space is met."""
    found: Counter[str] = Counter()
    for asked, strategy in workings():
        working = tried(asked, strategy)
        if not isinstance(working, Working) or found["workings"] == SAMPLE:
            continue
        item = one(asked, working)
        for chapter in script(night([item])).chapters[1:-1]:
            found += all_true(chapter, Heard(item, WORDS, frozenset({"one"})))
        found["workings"] += 1
    print(dict(found))
    assert found["workings"] == (SAMPLE if EVERYTHING else 855)
    assert found["sentences"] > 8 * found["workings"]


@cache
def pages(strategy: Strategy) -> tuple[Item, ...]:
    """A seeded page of 40 problems of the space, all worked by one strategy, labelled from 1."""
    chance = random.Random(strategy.key)
    asked = (
        _in_columns(chance) if strategy is COLUMNS else chance.sample(list(every_question(5, 4)), 10 * PAGE)
    )
    suits = ((one, found) for one in asked if isinstance(found := tried(one, strategy), Working))
    worked = islice(suits, PAGE)
    return tuple(one(*pair, label=str(at)) for at, pair in enumerate(worked, start=1))


def _in_columns(chance: random.Random) -> list[Question]:
    """Whole numbers with two to four digits, which stand in columns."""
    pairs = [sorted(chance.choices(range(10, 10000), k=2), reverse=True) for _ in range(PAGE)]
    return [question(f"{first} {chance.choice('+-')} {second}") for first, second in pairs]


@pytest.mark.parametrize("merge", range(4))
@pytest.mark.parametrize("strategy", STRATEGIES, ids=lambda strategy: strategy.key)
def test_pointing_back_and_going_straight_through_stay_true(strategy: Strategy, merge: int) -> None:
    """A page of one strategy is true however short it is told, and says nothing long five times."""
    items = pages(strategy)
    told = script(night(items), merge=merge)
    labels: set[str] = set()
    for item, chapter in zip(items, told.chapters[1:-1], strict=True):
        labels.add(spoken(item.label))
        assert all_true(chapter, Heard(item, WORDS, frozenset(labels)))["sentences"]
    said = Counter(said for chapter in told.chapters for cue in chapter.cues for said in cue.says)
    often = {one: times for one, times in said.items() if times > MOST_OFTEN and words_spoken(one) > SHORT}
    assert not often


OTHER_KINDS = (
    "52 - 27",
    "403 - 87",
    "5 ft 2 in - 2 ft 7 in",
    "5.2 - 2.7",
    "1 h 10 min + 2 h 55 min",
    "3 km 250 m - 1 km 800 m",
    "2 gal 1 qt - 3 qt",
    "3 c 5 fl oz + 6 fl oz",
    "1 wk 2 d 3 h - 4 d 5 h",
    "2 yd 1 ft 3 in - 1 yd 2 ft 8 in",
    "2 min 15 s - 48 s",
    "9:45 to 11:20",
    "9:50 a.m. to 2:15 p.m.",
    "9:45 + 1 h 35 min",
    "11:20 - 45 min",
    "5 5/8 in - 2 7/8 in",
    "7/8 in - 3/8 in",
    "2 1/2 c + 1 3/4 c",
    "$3.25 + $1.80",
    "$5 - $2.35",
    "5.2 km - 2.75 km",
    "5 5/8 in ? 5 3/4 in",
    "$3.25 ? $3.05",
    "9 4/12 - 6 7/12",
    "3 1/2 - 1 2/3",
    "7 - 2 3/8 - 1 1/8",
    "5/6 ? 7/8",
    "4 1/6 ? 3 5/6",
    "5180 ? 5602",
    "1000 ? 999",
    "1 2/5 + 4/5 + 3 1/5",
    "2/4 ? 3/6",
    "7 2/6 = 6 ?/6",
    "2 1/3 + ? = 4",
    "3/4 = ?/12",
    "6/8 = ?/4",
    "8/16 = ?/4",
    "6/8 = ?/12",
    "12/18 simplest",
    "3/4 simplest",
    "2 6/8 simplest",
    "11/4 as a mixed number",
    "2.75 as a mixed number",
    "2 3/4 as a fraction",
    "5 as a fraction",
    "1 as a fraction",
    "0.75 as a fraction",
    "0.3 as a fraction",
    "6/8 as a decimal",
    "2 3/4 as a decimal",
    "0/8 simplest",
    "2 0/4 as a decimal",
    "3.0 as a mixed number",
    "5/1 simplest",
    "3 ft = ? in",
    "26 in = ? ft ? in",
    "1 yd 2 ft 3 in = ? in",
    "12 3/100 - 4 7/100",
    "146/12 - 57/12",
)


@pytest.mark.parametrize("typed", OTHER_KINDS)
def test_other_numbers_and_statements_are_told_truly(typed: str) -> None:
    """Whole numbers, measures, decimals, comparisons and missing numbers read back true too."""
    statement = read_statement(typed)
    item = one(statement, work(statement, for_class(statement)))
    (chapter,) = script(night([item])).chapters[1:-1]
    assert all_true(chapter, Heard(item, WORDS, frozenset({"one"})))["sentences"] > 1


@pytest.mark.parametrize(
    "typed", ["7 1/6 - 3 5/6", "2 4/5 + 1 3/5", "52 - 27", "5/6 ? 7/8", "9 4/12 - 6 7/12"]
)
def test_every_likely_mistake_is_said_not_to_be_so(typed: str) -> None:
    """Whatever a known wrong step writes is shown as it is written, and what is said about it is true."""
    statement = read_statement(typed)
    slips = shows(statement)
    assert slips
    for slip in slips:
        item = replace(one(statement, work(statement, for_class(statement))), mistake=slip)
        (chapter,) = script(night([item])).chapters[1:-1]
        all_true(chapter, Heard(item, WORDS, frozenset({"one"})))


def for_class(statement: Statement) -> NamedWay:
    """The strategy of a class that regroups first: for sums, its partner."""
    return for_question(statement, REGROUP_FIRST) if isinstance(statement, Question) else REGROUP_FIRST


def changed(words: str) -> Iterable[str]:
    """The sentence with one of its number words said as another, in every place; "one" is left alone."""
    spelt = words.split(" ")
    for at, word in enumerate(spelt):
        bare = word.strip(".,:").lower()
        if number_words(bare) and bare not in {"one", "blank"}:
            other = "eleven" if bare != "eleven" else "twelve"
            yield " ".join((*spelt[:at], word.lower().replace(bare, other), *spelt[at + 1 :]))


@pytest.mark.parametrize("strategy", STRATEGIES, ids=lambda strategy: strategy.key)
def test_a_changed_number_is_found(strategy: Strategy) -> None:
    """The patterns can fail: no sentence stays true when one of its numbers is said as another."""
    kept = []
    for item in pages(strategy)[:A_FEW]:
        heard = Heard(item, WORDS, frozenset({"one"}))
        (chapter,) = script(night([one(item.statement, item.working)])).chapters[1:-1]
        for said in (spoken_aloud(said) for cue in chapter.cues for said in cue.says):
            kept += [(other, true(other, heard)) for other in changed(said) if true(other, heard)]
    assert kept == [], kept
