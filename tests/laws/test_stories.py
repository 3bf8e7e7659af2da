"""What holds for every word problem: its numbers, its one whole, its reading level, nobody's name."""

import re
from collections import Counter, defaultdict

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.findings.standard import StandardCode
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.word_problems.frames import FRAMES, OWN_FRAMES
from onewhole.languages.english.words import article, measure_name, short, words_for
from onewhole.notations.text import text
from onewhole.number.unit import MEASURES, Kind
from onewhole.problems.problem import Problem
from onewhole.problems.story_asks import asked
from onewhole.problems.story_frame import StoryFrame
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Header
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.reading_level import AIM
from onewhole.sheets.standards import notes
from onewhole.sheets.stories import Story, story
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import Statement, meaning
from onewhole.statements.whole_groups import WholeGroups
from tests.kit.stories import EVERY, TOLD, TRAIL, WORDS, every, grouped, tellable

UNIT = rf"(?:{'|'.join(measure_name(unit, count) for unit in MEASURES for count in (2, 1))})"
FIGURE = r"(?:\d{1,3}(?:,\d{3})+|\d+)"
CLOCK = r"\d{1,2}:\d\d(?: [ap]\.m\.)?"
AMOUNT = re.compile(
    rf"{CLOCK}|\$\d+(?:\.\d\d)?|(?:{FIGURE} {UNIT}\b ?)+"
    rf"|{FIGURE}(?:\.\d+)?(?: {FIGURE}/{FIGURE}|/{FIGURE})?(?:(?: of an?)? {UNIT}\b)?"
)

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
    Asks.ONE_OF_THREE: "{} + {} + ? = {}",
    Asks.TIMES: "{} x {}",
    Asks.PART_OF: "{} x {}",
    Asks.EACH: "{} x {}",
    Asks.DIVIDED: "{} / {}",
    Asks.DIVIDED_LEFT: "{} / {}",
    Asks.GROUPS_NEEDED: "{} / {}, groups needed",
    Asks.GROUPS_FULL: "{} / {}, full groups",
    Asks.THINGS_LEFT: "{} / {}, left over",
    Asks.FACTORS: "factors of {}",
    Asks.MULTIPLES: "multiples of {} to {}",
    Asks.LESS_LESS: "{} - {} - {}",
    Asks.LESS_MORE: "{} - {} + {}",
    Asks.LESS_BOTH: "{} - ({} + {})",
    Asks.LESS_PART: "{} - ({} - {})",
    Asks.MORE_TIMES: "{} + {} x {}",
    Asks.LESS_TIMES: "{} - {} x {}",
    Asks.TIMES_MORE: "{} x {} + {}",
    Asks.TIMES_LESS: "{} x {} - {}",
    Asks.TIMES_BOTH: "{} x ({} + {})",
    Asks.TIMES_LEFT: "{} x ({} - {})",
    Asks.BOTH_TIMES: "({} + {}) x {}",
    Asks.LEFT_TIMES: "({} - {}) x {}",
    Asks.MORE_SHARE: "{} + {} / {}",
    Asks.LESS_SHARE: "{} - {} / {}",
    Asks.SHARE_TIMES: "{} / {} x {}",
    Asks.BOTH_SHARED: "({} + {}) / {}",
    Asks.LEFT_SHARED: "({} - {}) / {}",
    Asks.SHARE_AND_TIMES: "{} / {} + {} x ({} - {})",
    Asks.TIME_BETWEEN: "{} to {}",
    Asks.TIME_LATER: "{} + {}",
    Asks.TIME_EARLIER: "{} - {}",
}
#: The words of a question that say what is wanted of one number, or of many.
WANTED = re.compile(
    r"(?P<falling>from greatest to least)|from least to greatest|to the nearest (?P<place>[a-z ]+?)[?,]"
    r"|(?P<form>in simplest form|as a [a-z ]+)\?|[Hh]ow many (?P<units>[a-z ]+?)(?: of ribbon)? is that\?"
)
#: What the counting factor of a product counts, and what stands behind a factor that counts nothing.
COUNTED = r"kites?|tails?|pupils?|meetings?|pitchers?|times?|ropes?|bags?|books?|rows?|squares?|chairs?"
COUNTED += r"|groups?|children"
BARE = re.compile(rf" (?:{COUNTED}|of its|of what|as wide|as long)\b")


def written(told: Story) -> list[str]:
    """The amounts that stand in a story, in order."""
    return [re.sub(" of an? ", " ", found.group()).strip() for found in AMOUNT.finditer(told.words)]


def reads_back(told: Story) -> None:
    """Hold that the amounts in the words make the statement again, number by number as written."""
    parts = asked(told.statement)
    if parts.asks is Asks.RENAMED:
        first, *kept = written(told)
        assert read_quantity(first) == parts.numbers[0]
        assert kept == re.findall(r"(\d+) \?", told.problem("1").typed)
        return
    if (typed := _about_wanted(told, parts.asks)) is not None:
        assert asked(read_statement(typed)) == parts
        return
    numbers = written(told)
    if isinstance(told.statement, PlotQuestion):
        among = told.statement.among
        assert [text(read_quantity(number)) for number in numbers] == ([text(among.value)] if among else [])
        return
    if parts.asks in {Asks.TIME_BETWEEN, Asks.TIME_LATER, Asks.TIME_EARLIER}:
        assert asked(read_statement(READ_BACK[parts.asks].format(*numbers))) == parts
        return
    assert [read_quantity(number) for number in numbers] == list(parts.numbers)
    again = read_statement(READ_BACK[parts.asks].format(*numbers))
    assert asked(again) == parts
    assert meaning(again) == meaning(told.statement)


def _about_wanted(told: Story, asks: Asks) -> str | None:
    """What is wanted of a number or of many in the words, typed; None for a story of another sort."""
    found = WANTED.search(told.words)
    if asks is Asks.IN_ORDER and found:
        ends = "greatest to least" if found["falling"] else "least to greatest"
        return f"order {', '.join(written(told))} from {ends}"
    if asks not in {Asks.ROUNDED, Asks.OTHER_FORM, Asks.OTHER_UNITS} or found is None:
        return None
    (number,) = written(told)
    if asks is Asks.ROUNDED:
        whole = found["place"].startswith("whole ")
        return f"round {number} to the nearest {'whole number' if whole else found['place']}"
    if asks is Asks.OTHER_FORM:
        return f"{number} {found['form']}"
    marks = {measure_name(unit): unit.mark for unit in MEASURES}
    return f"{number} = {' '.join(f'? {marks[name]}' for name in found['units'].split(' and '))}"


def _measured(statement: Statement) -> Kind:
    """What the numbers of a statement measure, also where a unit or a dollar sign stands beside a number."""
    return asked(statement).kind


def one_whole(told: Story) -> None:
    """Hold that each number counts the same whole, and that the whole is named in full."""
    if _measured(told.statement) is not Kind.NUMBER:
        return
    full, brief = told.whole, short(told.whole)
    names = [brief.wholes, f"whole {brief.wholes}", f"whole {brief.whole}"]
    names += [f"of {article(brief.whole)} {brief.whole}", f"1 {brief.whole}".removeprefix("1 ")]
    for found in AMOUNT.finditer(told.words):
        if BARE.match(told.words, found.end()):
            continue
        after = told.words[found.end() :].lstrip()
        assert after.startswith(tuple(names)), (found.group(), told.words)
        if found.group() == "1":
            assert not after.startswith(brief.wholes)
    named = full.wholes in told.words or full.whole in told.words
    assert named or told.structure is Structure.AREA or isinstance(told.statement, WholeGroups)


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
    told: dict[tuple[Asks, Kind, Structure], set[str]] = defaultdict(set)
    for typed in EVERY:
        parts = asked(read_statement(typed))
        for structure, same in grouped(every(typed, words)).items():
            key = parts.asks, parts.kind, structure
            told[key] = max(told[key], same, key=len)
    assert len({(frame.asks, frame.kind, frame.sentences) for frame in frames}) == len(frames)
    counted = Counter((frame.asks, frame.kind, frame.structure) for frame in frames)
    assert {key: len(words) for key, words in told.items()} == counted


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
    told = every("5 1/3 - 2 2/3", words_for("strip"))[0].problem("1")
    assert isinstance(told, Problem)
    codes = {
        note.standard.code for note in notes(WorkedSheet(Sheet((told,), Header(words=words_for("circle")))))
    }
    assert StandardCode.ONE_WHOLE in codes
