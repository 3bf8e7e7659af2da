"""Columns on the board: they change in their place, sums stand beside them, and nothing is too long."""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.notations.text import text
from onewhole.pictures.choosing import picture
from onewhole.problems.answer import answer
from onewhole.sentences.sentence import Sentence
from onewhole.statements.reading import read_statement
from onewhole.walkthroughs.cue import Draw, Write
from onewhole.walkthroughs.lesson import Item, Lesson, Pace
from onewhole.walkthroughs.on_board import on_board
from onewhole.walkthroughs.script import script
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import TimedChapter
from onewhole.walkthroughs.timing import timed
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.work import work

PAGE = ("304 - 128", "4006 - 1278", "8000 - 2345", "12.05 - 3.8", "1234 + 2876 + 777", "1000000 - 345678")


def item(problem: str, label: str = "1", *, drawn: bool = True) -> Item:
    """A problem worked in columns, with its picture or without."""
    statement = read_statement(problem)
    working = work(statement, COLUMNS)
    return Item(label, statement, answer(statement), working, picture(working) if drawn else None)


def chapters(*items: Item, shape: Shape = Shape.WIDE) -> tuple[TimedChapter, ...]:
    """The problems of a film, laid out on the board."""
    told = script(Lesson("Kites", "", "", ClassWords(), items))
    return on_board(timed(told, Pace()), shape).chapters[1:-1]


def written(chapter: TimedChapter) -> list[str]:
    """Everything that is written on the board as mathematics."""
    acts = [act for cue in chapter.cues for act in cue.cue.acts if isinstance(act, Write)]
    return [text(act.content) for act in acts if not isinstance(act.content, str)]


def test_the_board_shows_columns_and_their_sums() -> None:
    """304 - 128: the problem, a difference for each column, the answer; the columns change on every line."""
    (chapter,) = chapters(item("304 - 128"))
    assert written(chapter) == [
        "304 - 128",
        "14 - 8 = 6",
        "9 - 2 = 7",
        "2 - 1 = 1",
        "176",
        "176 + 128 = 304",
    ]
    drawn = [act.scene for cue in chapter.cues for act in cue.cue.acts if isinstance(act, Draw)]
    assert len(drawn) == 6
    assert len(set(map(id, drawn))) == 6


@pytest.mark.parametrize("shape", Shape)
@pytest.mark.parametrize("drawn", [True, False])
@pytest.mark.parametrize("problem", [*PAGE, "999999 + 987654 + 876543", "999999.99 - 123456.78"])
def test_nothing_is_too_long_for_the_board(problem: str, *, drawn: bool, shape: Shape) -> None:
    """Up to 1,000,000, with the columns drawn and without; no line is a row of place words."""
    (chapter,) = chapters(item(problem, drawn=drawn), shape=shape)
    assert not [line for line in written(chapter) if "thousands" in line]


def test_how_numbers_stand_is_said_once_and_once_for_points() -> None:
    """Ones under ones; then, at the first number with a point, point under point."""
    found = chapters(*(item(problem, str(at)) for at, problem in enumerate(PAGE, start=1)))
    said = [sentence for chapter in found for cue in chapter.cues for sentence in cue.cue.says]
    assert sum(_holds(sentence, "ones under ones") for sentence in said) == 1
    assert sum(_holds(sentence, "point under point") for sentence in said) == 1


def _holds(sentence: Sentence, words: str) -> bool:
    return any(isinstance(node, str) and words in node for node in sentence.nodes)
