"""What holds for every word problem: its numbers, its one whole, its reading level, nobody's name."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.findings.standard import StandardCode
from onewhole.languages.english.own_frames import OWN_FRAMES
from onewhole.languages.english.story_frames import FRAMES
from onewhole.languages.english.words import ClassWords, article, measure_name, short
from onewhole.number.unit import MEASURES, Kind, unit_marked
from onewhole.problems.problem import Problem
from onewhole.problems.story_asks import Asks, asked
from onewhole.problems.story_frame import StoryFrame
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Header
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.reading_level import AIM
from onewhole.sheets.standards import notes
from onewhole.sheets.stories import Story, story
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import Statement, meaning
from tests.kit.stories import TOLD, TRAIL, WORDS, tellable

UNIT = rf"(?:{'|'.join(measure_name(unit, count) for unit in MEASURES for count in (2, 1))})"
FIGURE = r"(?:\d{1,3}(?:,\d{3})+|\d+)"
AMOUNT = re.compile(
    rf"\$\d+(?:\.\d\d)?|(?:{FIGURE} {UNIT}\b ?)+|{FIGURE}(?:\.\d+)?(?: {FIGURE}/{FIGURE}|/{FIGURE})?"
)
MOST = max(sum(one.asks is frame.asks and one.kind is frame.kind for one in FRAMES) for frame in FRAMES)

#: The statement that stands behind each unknown, written from the two amounts in the order of the words.
READ_BACK = {
    Asks.DIFFERENCE: "{} - {}",
    Asks.SUM: "{} + {}",
    Asks.WHICH: "{} ? {}",
    Asks.CHANGE_TAKEN: "{} - ? = {}",
    Asks.CHANGE_ADDED: "{} + ? = {}",
    Asks.START_TAKEN: "? - {} = {}",
    Asks.START_ADDED: "? + {} = {}",
    Asks.ALL_THREE: "{} + {} + {}",
    Asks.MORE_THEN_LESS: "{} + {} - {}",
}


def every(typed: str, words: ClassWords | None = None) -> list[Story]:
    """All the stories that can be told about a statement."""
    return [story(read_statement(typed), seed=seed, words=words) for seed in range(MOST)]


def written(told: Story) -> list[str]:
    """The amounts that stand in a story, in order."""
    return [found.group().strip() for found in AMOUNT.finditer(told.words)]


def reads_back(told: Story) -> None:
    """Hold that the amounts in the words make the statement again, number by number as written."""
    parts = asked(told.statement)
    if parts.asks is Asks.RENAMED:
        first, *kept = written(told)
        assert read_quantity(first) == parts.first
        assert kept == re.findall(r"(\d+) \?", told.problem("1").typed)
        return
    numbers = written(told)
    assert [read_quantity(number) for number in numbers] == list(parts.numbers)
    again = read_statement(READ_BACK[parts.asks].format(*numbers))
    assert asked(again) == parts
    assert meaning(again) == meaning(told.statement)


def _measured(statement: Statement) -> Kind:
    """What the numbers of a statement measure, also where a unit or a dollar sign stands beside a number."""
    return unit_marked(asked(statement).first.ladder.mark).kind


def one_whole(told: Story) -> None:
    """Hold that each number counts the same whole, and that the whole is named in full."""
    if _measured(told.statement) is not Kind.NUMBER:
        return
    full, brief = told.whole, short(told.whole)
    names = [brief.wholes, f"whole {brief.wholes}", f"whole {brief.whole}"]
    names += [f"of {article(brief.whole)} {brief.whole}", f"1 {brief.whole}".removeprefix("1 ")]
    for found in AMOUNT.finditer(told.words):
        after = told.words[found.end() :].lstrip()
        assert after.startswith(tuple(names)), (found.group(), told.words)
        if found.group() == "1":
            assert not after.startswith(brief.wholes)
    assert full.wholes in told.words or full.whole in told.words


@pytest.mark.parametrize("typed", TOLD)
def test_the_words_hold_the_statement(typed: str) -> None:
    """Read back from its words, every story gives the numbers and the equation it was made from."""
    for words in WORDS:
        for told in every(typed, words):
            reads_back(told)


@pytest.mark.parametrize("typed", TOLD)
def test_one_whole(typed: str) -> None:
    """K7: every amount of a story counts the same whole, named with the class's own word."""
    for words in WORDS:
        for told in every(typed, words):
            one_whole(told)


@given(tellable(), st.integers(0, 50), st.sampled_from(WORDS))
def test_any_statement(statement: Statement, seed: int, words: ClassWords) -> None:
    """The same for any two amounts of a kind; the same seed gives the same words, on a sheet too."""
    told = story(statement, seed=seed, words=words)
    reads_back(told)
    one_whole(told)
    assert story(statement, seed=seed, words=words) == told
    sheet = Sheet((told.problem("1"),), Header(words=words))
    assert read_sheet(write_sheet(sheet)) == sheet


@pytest.mark.parametrize(("frames", "words"), [(FRAMES, None), (OWN_FRAMES, TRAIL)])
def test_every_sentence_is_told(frames: tuple[StoryFrame, ...], words: ClassWords | None) -> None:
    """The statements of the kit reach every frame, and every frame gives words of its own."""
    told = {
        (asked(one.statement).asks, _measured(one.statement), one.structure)
        for typed in TOLD
        for one in every(typed, words)
    }
    assert told == {(frame.asks, frame.kind, frame.structure) for frame in frames}
    assert len({(frame.asks, frame.kind, frame.sentences) for frame in frames}) == len(frames)
    for frame in frames:
        same = sum((one.asks, one.kind) == (frame.asks, frame.kind) for one in frames)
        typed = next(
            t
            for t in TOLD
            if (asked(read_statement(t)).asks, _measured(read_statement(t))) == (frame.asks, frame.kind)
        )
        assert len({one.words for one in every(typed, words)}) == same


@pytest.mark.parametrize("typed", TOLD)
def test_words_are_easy_and_name_nobody(typed: str) -> None:
    """At or below the grade that is aimed at; a capital stands only at the start of a sentence."""
    for told in (*every(typed), *every(typed, TRAIL)):
        assert told.level.grade <= AIM
        starts = re.findall(r"(?:^|[.?] )([A-Z])", told.words)
        assert len(re.findall(r"[A-Z]", told.words)) == len(starts)
        assert told.words.endswith("?")
        assert "{" not in told.words


@pytest.mark.parametrize("typed", TOLD)
def test_the_audit_of_standards_is_content(typed: str) -> None:
    """K7 has nothing to say about a story told with the words of its sheet."""
    for words in WORDS:
        items = tuple(one.problem(str(at)) for at, one in enumerate(every(typed, words)))
        codes = {note.standard.code for note in notes(WorkedSheet(Sheet(items, Header(words=words))))}
        assert StandardCode.ONE_WHOLE not in codes


def test_k7_can_speak() -> None:
    """The same sheet with another word for the whole is told so."""
    told = every("5 1/3 - 2 2/3", ClassWords.for_whole("strip"))[0].problem("1")
    assert isinstance(told, Problem)
    codes = {
        note.standard.code
        for note in notes(WorkedSheet(Sheet((told,), Header(words=ClassWords.for_whole("circle")))))
    }
    assert StandardCode.ONE_WHOLE in codes
