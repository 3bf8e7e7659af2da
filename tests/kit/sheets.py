"""Sheets as a teacher can type them, for Hypothesis."""

import string

from hypothesis import strategies as st

from onewhole.languages.class_words import ClassWords
from onewhole.notations.text import text
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.document import Instruction, Sheet
from onewhole.sheets.header import Header, Paper, PictureSetting, Print
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.recipe import Recipe, write_recipe
from onewhole.sheets.room import Room, room
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.table import STRATEGIES
from tests.kit.statements import plain_questions
from tests.kit.wishes import wishes

LETTERS = string.ascii_letters + string.digits + " :;,.!?#|()[]'\"-=éüß½三🪁"


def worked_sheet(typed: str) -> WorkedSheet:
    """Read a typed sheet, to be worked."""
    return WorkedSheet(read_sheet(typed))


def room_of(problem: Problem, sheet: Sheet) -> Room:
    """Measure the room of one problem of a sheet."""
    return room(WorkedProblem(problem, sheet.header.strategy), sheet.header)


def lines(least: int = 0) -> st.SearchStrategy[str]:
    """Words on one line with single blanks."""
    words = st.text(LETTERS, min_size=least, max_size=60).map(lambda said: " ".join(said.split()))
    return words.filter(lambda said: len(said) >= least)


def headers() -> st.SearchStrategy[Header]:
    """Any header."""
    named = lines(1).filter(lambda said: said.strip())
    words = st.builds(ClassWords, named, named, st.sampled_from(("open", "regroup", "rename", "trade")))
    return st.builds(
        Header,
        title=lines(),
        date=lines(),
        class_name=lines(),
        grade=st.integers(1, 8),
        strategy=st.sampled_from(STRATEGIES),
        words=words,
        paper=st.sampled_from(Paper),
        print=st.sampled_from(Print),
        picture=st.sampled_from(PictureSetting),
        picture_stories=st.booleans(),
        columns=st.sampled_from((None, 1, 2)),
        minutes=st.one_of(st.none(), st.integers(1, 240)),
        fit=st.sampled_from((None, 1, 2, 6)),
        mixed_form=st.booleans(),
        simplest_form=st.booleans(),
        recipe=lines() | wishes(12).map(lambda one: write_recipe(Recipe("0.1.0", one))),
    )


def problems() -> st.SearchStrategy[Problem]:
    """Problems with a label of any sort, some with a story."""
    labels = st.from_regex(r"\A(?:[0-9]{1,3}[A-Za-z]?|[A-Za-z][0-9]{0,2})\Z")
    typed = plain_questions().map(text)
    return st.builds(
        lambda label, said, story: Problem(label, read_statement(said), said, story=story),
        labels,
        typed,
        lines(),
    )


@st.composite
def sheets(draw: st.DrawFn) -> Sheet:
    """Any sheet: a header, problems with labels of their own, instructions anywhere."""
    unique = st.lists(problems(), min_size=1, max_size=6, unique_by=lambda one: one.label.casefold())
    items: list[Instruction | Problem] = list(draw(unique))
    told = lines(1).filter(lambda said: bool(said) and not said.startswith("#"))
    for words in draw(st.lists(told, max_size=3)):
        items.insert(draw(st.integers(0, len(items))), Instruction(words))
    return Sheet(tuple(items), draw(headers()))
