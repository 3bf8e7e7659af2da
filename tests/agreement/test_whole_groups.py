"""Three roads over things in groups: the working, divmod, and laying them out one by one.

The space: each number to 120 in groups of 2 to 12, and each of the three numbers that may be asked for.
ONEWHOLE_WHOLE_WALK=1 walks all of it.
"""

from fractions import Fraction

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.tongue import SPANISH
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.notations.mathml import mathml
from onewhole.notations.text import printed, text
from onewhole.number.quantity import Quantity, whole
from onewhole.pictures.bar_rows import Bars
from onewhole.pictures.caption import Groups
from onewhole.pictures.choosing import picture
from onewhole.pictures.picture import PictureKind
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from onewhole.problems.story_bars import story_shape
from onewhole.problems.story_structure import Structure
from onewhole.sheets.stories import story
from onewhole.sheets.story_readings import story_readings
from onewhole.statements.expression import WithRemainder
from onewhole.statements.reading import read_statement
from onewhole.statements.tokens import ReadingError
from onewhole.statements.whole_groups import GroupsAsk, WholeGroups
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.line import WholeLine, leads
from onewhole.working.quotients.long_division import LONG_DIVISION
from onewhole.working.quotients.partial_quotients import PARTIAL_QUOTIENTS
from onewhole.working.whole_groups import work_groups
from onewhole.working.working import Working
from tests.agreement.test_spoken_script import all_true
from tests.kit.exact import amount, in_groups
from tests.kit.heard import Heard
from tests.kit.how_much import sample
from tests.kit.spanish_claims import spanish_true

WORDS = ClassWords()
LAST, SIZES = 120, range(2, 13)


def asked(typed: str) -> WholeGroups:
    """Read what is asked of things in groups; it is written again as it was read."""
    found = read_statement(typed)
    assert isinstance(found, WholeGroups)
    assert read_statement(text(found)) == found
    return found


def by_divmod(asks: GroupsAsk, number: int, by: int) -> int:
    """Return the number that is asked for."""
    full, left = divmod(number, by)
    return {GroupsAsk.NEEDED: full + (left > 0), GroupsAsk.FULL: full, GroupsAsk.LEFT: left}[asks]


def the_space() -> list[WholeGroups]:
    """Every question of the space, or some."""
    every = [(asks, number, by) for by in SIZES for number in range(by, LAST + 1) for asks in GroupsAsk]
    return [WholeGroups(whole(number), whole(by), asks) for asks, number, by in every[:: sample(97, 29, 1)]]


def ways(question: WholeGroups) -> tuple[Working, ...]:
    """Work a question by each way that takes groups out."""
    return work_groups(question, PARTIAL_QUOTIENTS), work_groups(question, LONG_DIVISION)


def test_every_number_is_found_by_three_roads() -> None:
    """Each line of the division is worth the quotient, no sign stands before one that is not, and the last
    line is what divmod gives.
    """
    for question in the_space():
        number, by = question.number.parts, question.by.parts
        right = by_divmod(question.asks, number, by)
        assert in_groups(question) == right == answer(question).parts  # type: ignore[union-attr]
        for working in ways(question):
            first, *division, last = working.lines
            assert first.says == question
            assert isinstance(last.says, WholeGroups)
            assert last.says.gives == working.answer == whole(right)
            for line in division:
                assert not isinstance(line.says, WholeLine)
                assert amount(line.says) == Fraction(number, by)
            led = [leads(working.lines, at) for at in range(len(working.lines))]
            assert led == [False, False, *[True] * (len(division) - 1), False]


def test_every_sentence_reads_back_true() -> None:
    """Told in English and in Spanish, whatever is said of the groups is true of them."""
    for question in the_space()[:: sample(4, 3, 1)]:
        for working in ways(question):
            item = Item("1", question, answer(question), working)
            heard = Heard(item, WORDS, frozenset({"one"}))
            for chapter in script(Lesson("", "", "", WORDS, (item,))).chapters[1:-1]:
                assert all_true(chapter, heard)["sentences"]
            for line in working.lines[1:]:
                assert line.because is not None
                for sentence in SPANISH.working.reason(line.because, WORDS):
                    assert spanish_true(sentence, heard), sentence


def test_a_picture_shows_the_division_at_every_line() -> None:
    """A scene for each line; the first two are alike, for nothing is worked yet, and so are the last two."""
    for question in the_space()[:: sample(5, 3, 1)]:
        for working in ways(question):
            drawn = picture(working)
            if drawn is None:
                continue
            assert len(drawn.scenes) == len(working.lines)
            assert drawn.scenes[0] == drawn.scenes[1]
            assert drawn.scenes[-1] == drawn.scenes[-2]


def test_long_division_stands_in_squares() -> None:
    """As for the division alone."""
    drawn = picture(work_groups(asked("365 / 7, left over"), LONG_DIVISION))
    assert drawn is not None
    assert drawn.kind is PictureKind.COLUMNS


def test_bars_are_true_and_open() -> None:
    """The bar is as long as all things; what is asked is open until it is found, and then right."""
    for question in the_space()[:: sample(5, 3, 1)]:
        number, by = question.number.parts, question.by.parts
        blank = story_shape(question, Structure.MEASURING_OUT)
        if blank is None:
            assert question.asks is GroupsAsk.LEFT
            assert not number % by
            continue
        found = story_shape(question, Structure.MEASURING_OUT, answer(question))
        assert isinstance(blank, Bars)
        assert isinstance(found, Bars)
        ((row,), (filled,)) = blank.rows, found.rows
        assert sum(one.amount for one in row.there) == number
        right = by_divmod(question.asks, number, by)
        if question.asks is GroupsAsk.LEFT:
            assert filled.there[-1].written == whole(right)
            assert filled.there[-1].amount == right
        else:
            assert (row.under, filled.under) == (Groups(None), Groups(right))
            counted = filled.stretches[: filled.counted]
            assert sum(one.amount for one in counted) == right * by


def test_stories_tell_both_numbers_and_ask_for_whole_things() -> None:
    """Of every question a story is told, in which nothing is cut."""
    for asks in GroupsAsk:
        told = story(WholeGroups(whole(50), whole(8), asks))
        assert {"50", "8"} <= set(told.words.split())
        assert told.structure is Structure.MEASURING_OUT
        assert "part of" not in told.words


@pytest.mark.parametrize(
    ("typed", "asks"),
    [
        ("50 ÷ 8; up", GroupsAsk.NEEDED),
        ("50 / 8 up", GroupsAsk.NEEDED),
        ("50/8, Groups needed.", GroupsAsk.NEEDED),
        ("50 : 8, round up", GroupsAsk.NEEDED),
        ("50 ÷ 8 = ?, grupos necesarios", GroupsAsk.NEEDED),
        ("50 ÷ 8, full groups", GroupsAsk.FULL),
        ("50 ÷ 8, whole groups only", GroupsAsk.FULL),
        ("50 ÷ 8; grupos completos", GroupsAsk.FULL),
        ("50 ÷ 8, left over", GroupsAsk.LEFT),
        ("50 ÷ 8 leftovers", GroupsAsk.LEFT),
        ("50 ÷ 8, remainder", GroupsAsk.LEFT),
        ("50 ÷ 8, ¿cuántos sobran?", GroupsAsk.LEFT),
    ],
)
def test_a_teachers_words_are_read(typed: str, asks: GroupsAsk) -> None:
    """In English and in Spanish, with a comma, a semicolon or nothing before them."""
    assert asked(typed) == WholeGroups(whole(50), whole(8), asks)


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("50 ÷ 8, hello", "it is not clear what is asked of this division"),
        ("5 ÷ 8, up", "a number that is put in groups of 8 is 8 to 9,999 here"),
        ("50 ÷ 1, up", "a group holds 2 to 99 here"),
        ("50 in ÷ 8 in, full groups", "this is asked of whole numbers without a unit"),
        ("7 1/2 ÷ 2, full groups", "this is asked of whole numbers without a unit"),
        ("50 + 8, left over", "only one whole number divided by another is put in groups"),
    ],
)
def test_what_is_refused_says_why(typed: str, says: str) -> None:
    """In words, with what to type."""
    with pytest.raises(ReadingError) as refused:
        read_statement(typed)
    assert refused.value.what == says
    assert refused.value.remedy


@pytest.mark.parametrize(
    ("problem", "written", "verdict", "patterns"),
    [
        ("50 ÷ 8, groups needed", "7", Verdict.RIGHT, ()),
        ("50 ÷ 8, groups needed", "7 vans", Verdict.RIGHT, ()),
        ("50 ÷ 8, groups needed", "7 groups", Verdict.RIGHT, ()),
        ("50 ÷ 8, groups needed", "6", Verdict.WRONG, ("T06",)),
        ("50 ÷ 8, groups needed", "6 r 2", Verdict.WRONG, ("T07",)),
        ("50 ÷ 8, groups needed", "6 1/4", Verdict.WRONG, ("V15",)),
        ("50 ÷ 8, groups needed", "6.25", Verdict.WRONG, ("V15",)),
        ("50 ÷ 8, full groups", "6 full groups", Verdict.RIGHT, ()),
        ("50 ÷ 8, full groups", "7", Verdict.WRONG, ("V13",)),
        ("50 ÷ 8, full groups", "6 r 2", Verdict.WRONG, ("T07",)),
        ("50 ÷ 8, left over", "2 left over", Verdict.RIGHT, ()),
        ("50 ÷ 8, left over", "6", Verdict.WRONG, ("V14",)),
        ("50 ÷ 8, left over", "6 r 2", Verdict.WRONG, ("T07",)),
        ("48 ÷ 8, left over", "0", Verdict.RIGHT, ()),
    ],
)
def test_what_a_child_writes_is_marked(
    problem: str, written: str, verdict: Verdict, patterns: tuple[str, ...]
) -> None:
    """The number alone or with a word behind it is right; the division is not what is asked."""
    told = "50 children ride in vans. A van has room for 8 children."
    one = Problem("1", asked(problem), problem, story=told if "needed" in problem else "")
    found = mark(expect(one), read_written(written, one))
    assert found.verdict is verdict
    assert found.patterns[: len(patterns)] == patterns


def test_what_patterns_write_by_divmod() -> None:
    """On every number with something left over; on one that comes out even none of them shows."""
    for question in the_space():
        full, left = divmod(question.number.parts, question.by.parts)
        found = {one.pattern: one.wrote for one in shows(question)}
        if not left:
            assert not found
            continue
        assert found.pop("T07") == WithRemainder(whole(full), whole(left), question.by)
        cut = found.pop("V15")
        assert isinstance(cut, Quantity)
        assert cut.value == Fraction(question.number.parts, question.by.parts)
        by_rule = {
            GroupsAsk.NEEDED: {"T06": whole(full)},
            GroupsAsk.FULL: {"V13": whole(full + 1)},
            GroupsAsk.LEFT: {"V14": whole(full)} if full != left else {},
        }
        assert found == by_rule[question.asks]


def test_a_pattern_shows_on_numbers_alone() -> None:
    """What is asked stands in the problem, and not only in a story."""
    assert by_id("T06").slip(asked("65 ÷ 9, up")) is not None


def test_what_stands_on_a_line() -> None:
    """In words of a teacher, in both languages, and no equals sign before what is asked."""
    last = work_groups(asked("50 ÷ 8, up"), PARTIAL_QUOTIENTS).lines[-1].says
    assert printed(last) == "groups needed: 7"
    assert printed(last, SPANISH) == "grupos necesarios: 7"
    assert "Groups needed:" in mathml(last)


@pytest.mark.parametrize(
    ("story_typed", "first"),
    [
        ("50 children ride. Each van holds 8 children. How many vans do they need?", "50 ÷ 8, groups needed"),
        ("Kim has 50 kites. Each box holds 8 kites. How many boxes are full?", "50 ÷ 8, full groups"),
        ("Kim has 50 kites and puts 8 in each box. How many kites are left over?", "50 ÷ 8, left over"),
    ],
)
def test_a_story_of_a_teachers_own_is_offered_its_question(story_typed: str, first: str) -> None:
    """By its question and equal shares; the others are offered too, and nothing is said to be sure."""
    found = story_readings(story_typed)
    assert text(found.asked[0]) == first
    assert not found.sure
    assert sum(isinstance(one, WholeGroups) for one in found.asked) == len(GroupsAsk)
