"""Times of day by another road: Python's own clock times and durations.

Source of the named problems: check values TIM06 to TIM09 and TIM13 of a collection of ours for crossing the
hour, noon and midnight (shape of 3.MD.A.1 and 4.MD.A.2, *Common Core State Standards for Mathematics* 2010).
"""

import random
import re
from datetime import datetime, timedelta
from itertools import islice

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.reasons import reason_told
from onewhole.languages.english.speech import say
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.pictures.choosing import picture
from onewhole.pictures.picture import PictureKind
from onewhole.problems.answer import answer
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.sheets.reading import read_sheet
from onewhole.statements.expression import Sum
from onewhole.statements.reading import read_expression, read_statement
from onewhole.statements.statement import Question
from onewhole.statements.tokens import ReadingError
from onewhole.working.checks import Estimate
from onewhole.working.questions import suiting, work_as_taught, work_question
from onewhole.working.strategies.table import USUAL
from tests.kit.exact import amount

MIDNIGHT = datetime(2001, 1, 1)  # noqa: DTZ001 - a clock on the wall, in no time zone

PUBLISHED = (
    ("10:45 a.m. to 11:20 a.m.", "35 min"),
    ("9:50 a.m. to 2:15 p.m.", "4 h 25 min"),
    ("11:45 a.m. to 12:10 p.m.", "25 min"),
    ("11:40 p.m. to 12:25 a.m.", "45 min"),
    ("3:05 p.m. - 1 h 40 min", "1:25 p.m."),
)


def shown(moment: datetime, *, halves: bool) -> str:
    """A moment as a clock shows it, by the library's own words."""
    face = f"{moment:%I:%M}".lstrip("0")
    return f"{face} {'a.m.' if f'{moment:%p}' == 'AM' else 'p.m.'}" if halves else face


def lasting(minutes: int) -> str:
    """A duration in hours and minutes, empty units left out."""
    hours, rest = divmod(minutes, 60)
    return (
        " ".join(part for part in (f"{hours} h" * bool(hours), f"{rest} min" * bool(rest)) if part) or "0 min"
    )


def reached(problem: str) -> set[str]:
    """What every way that suits reaches, each line worth the same as the one before."""
    asked = read_statement(problem)
    assert isinstance(asked, Question)
    found = set()
    for way in suiting(asked):
        working = work_question(asked, way)
        wanted = amount(asked.asked)
        assert all(amount(line.says) == wanted for line in working.lines), (problem, way.key)  # type: ignore[arg-type]
        assert isinstance(working.answer, Quantity)
        found.add(text(working.answer))
    assert text(answer(asked)) in found
    return found


@pytest.mark.parametrize(("problem", "right"), PUBLISHED)
def test_named_problems(problem: str, right: str) -> None:
    """Inside an hour, over noon, over midnight."""
    assert reached(problem) == {right}


@pytest.mark.parametrize("halves", [True, False])
def test_the_library_says_the_same(*, halves: bool) -> None:
    """Seeded times: how long it is, and what time it is later and earlier; up to a round of the clock."""
    chance = random.Random(9)
    for _ in range(60):
        start = MIDNIGHT + timedelta(minutes=chance.randint(0, 1439))
        minutes = chance.randint(1, 719)
        end = start + timedelta(minutes=minutes)
        first, second = shown(start, halves=halves), shown(end, halves=halves)
        assert reached(f"{first} to {second}") == {lasting(minutes)}
        assert reached(f"{first} + {lasting(minutes)}") == {second}
        assert reached(f"{second} - {lasting(minutes)}") == {first}


@pytest.mark.parametrize(("problem", "_"), [*PUBLISHED, ("9:45 + 1 h 35 min", ""), ("9:45 to 11:20", "")])
def test_it_is_drawn_on_a_line_of_hours(problem: str, _: str) -> None:
    """A scene for each line, on a number line."""
    asked = read_statement(problem)
    assert isinstance(asked, Question)
    working = work_question(asked, suiting(asked)[0])
    drawn = picture(working, PictureKind.LINE)
    assert drawn is not None
    assert len(drawn.scenes) == len(working.lines)


def test_it_is_written_and_said() -> None:
    """As a clock shows it, and as it is told."""
    said = {
        "9:45 to 11:20": "nine forty-five to eleven twenty",
        "9:05 + 55 min": "nine oh five plus fifty-five minutes",
        "10:00 - 15 min": "ten o'clock minus fifteen minutes",
        "9:50 a.m. to 12:00 p.m.": "nine fifty a m to twelve noon",
    }
    for typed, words in said.items():
        assert (text(read_statement(typed)), say(read_statement(typed))) == (typed, words)
    for spelt in ("from 9:45 to 11:20", "9:45 until 11:20", "11:20 - 9:45", "9:45 to 11:20 = ?"):
        assert text(read_statement(spelt)) == "9:45 to 11:20"
    assert text(read_expression("(9:45 to 10:00) + (10:00 to 11:20)")) == "(9:45 to 10:00) + (10:00 to 11:20)"
    assert text(read_statement("9:50AM to 2:15 pm")) == "9:50 a.m. to 2:15 p.m."


@pytest.mark.parametrize(
    ("typed", "column", "what"),
    [
        ("9:45", 1, "a clock time stands here by itself"),
        ("9:45 ? 10:20", 1, "a clock time stands here by itself"),
        ("13:15 to 14:00", 1, "a clock shows the hours from 1 to 12: here there is “13:15”"),
        ("9:45 + 11:20", 8, "only a time in hours and minutes goes with a clock time"),
        ("9:45 + 20", 8, "only a time in hours and minutes goes with a clock time"),
        ("9:45 + 20 s", 8, "only a time in hours and minutes goes with a clock time"),
        ("9:45 to 20 min", 15, "a clock time is missing after “to”: here the line ends"),
        ("9:45 a.m. to 11:20", 19, "one time has a.m. or p.m. and the other has not: here the line ends"),
        ("1:10 noon to 2:00", 1, "noon and midnight are at 12:00: here there is “1:10 noon”"),
    ],
)
def test_what_is_no_problem_is_refused_where_it_stands(typed: str, column: int, what: str) -> None:
    """In words for a teacher, with what to do next."""
    with pytest.raises(ReadingError) as refused:
        read_statement(typed)
    assert (refused.value.column, refused.value.what) == (column, what)
    assert refused.value.remedy


def _marked(typed: str, written: str) -> Verdict:
    (problem,) = read_sheet(f"1. {typed}").problems
    assert isinstance(problem, Problem)
    found = read_written(written, problem)
    assert not isinstance(found.read, Unreadable), written
    return mark(expect(problem), found).verdict


@pytest.mark.parametrize(
    ("typed", "written", "verdict"),
    [
        ("9:45 to 11:20", "1 h 35 min", Verdict.RIGHT),
        ("9:45 to 11:20", "95 min", Verdict.RIGHT),
        ("9:45 to 11:20", "1:35", Verdict.RIGHT),
        ("9:45 to 11:20", "2 h 25 min", Verdict.WRONG),
        ("9:45 + 1 h 35 min", "11:20", Verdict.RIGHT),
        ("9:45 + 1 h 35 min", "11:20 a.m.", Verdict.RIGHT),
        ("9:45 + 1 h 35 min", "11:10", Verdict.WRONG),
        ("11:50 + 1 h 25 min", "1:15", Verdict.RIGHT),
        ("11:50 a.m. + 1 h 25 min", "1:15", Verdict.RIGHT),
        ("11:50 a.m. + 1 h 25 min", "1:15 p.m.", Verdict.RIGHT),
        ("11:50 a.m. + 1 h 25 min", "1:15 a.m.", Verdict.WRONG),
    ],
)
def test_answers_are_marked(typed: str, written: str, verdict: Verdict) -> None:
    """A time of day shows the same twice a day; a duration may be written as a clock shows it."""
    assert _marked(typed, written) is verdict


def test_a_clock_time_is_no_label() -> None:
    """9:45 begins the problem; a label before it stays one."""
    sheet = read_sheet("9:45 to 11:20\n2. 9:50 a.m. to 2:15 p.m.\n3: 5 - 2")
    assert [(one.label, text(one.statement)) for one in sheet.problems] == [
        ("1", "9:45 to 11:20"),
        ("2", "9:50 a.m. to 2:15 p.m."),
        ("3", "5 - 2"),
    ]


@pytest.mark.parametrize(
    "typed", ["9:45 to 11:20", "9:50 a.m. to 2:15 p.m.", "9:45 + 1 h 35 min", "12:30 - 45 min"]
)
def test_a_problem_once_more_reads_back(typed: str) -> None:
    """Every problem like it is what is read from its text; its answer is a time where one is asked for."""
    found = list(islice(parallel(read_statement(typed)), 5))
    assert len(found) == 5
    for one in found:
        assert read_statement(text(one)) == one


@pytest.mark.parametrize(
    "problem",
    ["12:15 a.m. + 10 min", "12:05 a.m. + 10 min + 5 min", "3:05 p.m. - 1 h 40 min", "9:45 + 1 h 35 min"],
)
def test_a_working_ends_on_the_time_of_day(problem: str) -> None:
    """Also in the first hour after midnight; what is told of it has one full stop, and no hour past 12."""
    asked = read_statement(problem)
    assert isinstance(asked, Question)
    for way in suiting(asked):
        working = work_question(asked, way)
        assert isinstance(working.answer, Quantity)
        assert working.lines[-1].says == working.answer == answer(asked)
        told = [text_of(reason_told(line.because, ClassWords())) for line in working.lines if line.because]
        assert not [one for one in told if ".." in one or re.search(r"1[3-9] (take|hours)", one)]


@pytest.mark.parametrize(
    ("problem", "easy"),
    [
        ("9:45 to 11:20", "10:00 to 11:00"),
        ("12:59 to 1:00", None),
        ("3:05 p.m. - 1 h 40 min", "3:00 p.m. - 2 h"),
    ],
)
def test_an_estimate_speaks_of_times_of_day(problem: str, easy: str | None) -> None:
    """By hand; from an hour to the same hour nothing is told but the bounds."""
    asked = read_statement(problem)
    assert isinstance(asked, Question)
    (found,) = [check for check in work_as_taught(asked, USUAL).checks if isinstance(check, Estimate)]
    assert (text(found.easy) if found.easy else None) == easy


def test_no_such_time_is_told() -> None:
    """Sixty minutes are the next hour."""
    with pytest.raises(ReadingError) as refused:
        read_statement("9:60 to 10:00")
    assert "minutes from 00 to 59" in str(refused.value.remedy)


@pytest.mark.parametrize(
    "problem",
    ["12:40 a.m. - 30 min", "1:10 a.m. - 30 min", "12:20 a.m. + 50 min", "12:00 a.m. + 5 min"],
)
def test_in_the_first_hour_every_line_begins_with_a_time_of_day(problem: str) -> None:
    """A time of day is no duration: 12:40 a.m. is not written as 40 min, by any way."""
    asked = read_statement(problem)
    assert isinstance(asked, Question)
    for way in suiting(asked):
        for line in work_question(asked, way).lines:
            first = line.says.terms[0].part if isinstance(line.says, Sum) else line.says
            assert isinstance(first, Quantity)
            assert first.ladder.clock or " h " in text(first), (problem, way.key, text(line.says))
