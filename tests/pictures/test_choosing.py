from itertools import product

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.unpictured import unpictured
from onewhole.notations.sentences.text import text_of
from onewhole.pictures.choosing import (
    MOST_JUMPS,
    OF_STEPS,
    PictureRefusedError,
    chosen,
    picture,
    refusal,
)
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.unpictured import (
    NoArea,
    NoPartsOfWhole,
    NoPlaceOnLine,
    NoRoom,
    NothingToSplit,
    NotHundredths,
    NotPlaceByPlace,
    SeveralSteps,
    TooManyJumps,
    TooManyParts,
    TooManyWholes,
    TooSmallBeside,
    Unpictured,
)
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.questions import unsuited
from onewhole.working.strategies.table import strategy_named
from onewhole.working.ways import WAYS
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.kit.how_much import sample
from tools.topics.table import TOPICS

PROBLEMS = [
    "7 2/6 - 3 5/6",
    "2 4/5 + 1 3/5",
    "4 - 1 3/8",
    "5 1/2 - 2 3/4",
    "9 3/8 - 2 1/8 - 1 3/8",
    "3/8 + 7/8",
    "7 5/11 - 2 9/11",
    "52 - 27",
    "304 - 127",
    "299 + 143",
    "5.2 - 2.7",
    "3.45 - 1.27",
    "5 ft 2 in - 2 ft 7 in",
    "5 h 10 min + 2 h 55 min",
    "5/6 ? 7/8",
    "52 ? 27",
    "7 2/6 = 6 ?/6",
    "5 - ? = 2 1/3",
    "5 5/8 in - 2 7/8 in",
    "4 x 2/3",
    "24 x 36",
    "1/2 x 3/4",
    "87 / 4",
    "2 / 1/3",
    *sample(("$5 - $2.35", "5.2 km + 2.75 km", "$8 - $3"), tuple(topic.typed for topic in TOPICS)),
]


#: Several steps of which neither a bar nor a rectangle shows all: they have no picture.
def _workings(problem: str) -> list[Working]:
    statement = read_statement(problem)
    ways = [s for s in WAYS if not isinstance(statement, Question) or unsuited(statement, s) is None]
    return [work(statement, strategy) for strategy in ways]


def _worked(problem: str, strategy: str = "regroup_first") -> Working:
    return work(read_statement(problem), strategy_named(strategy))


@pytest.mark.more("agreement/test_products.py")
def test_every_kind_can_be_drawn() -> None:
    """Each kind of picture is drawn for some working here."""
    workings = [working for problem in PROBLEMS for working in _workings(problem)]
    for kind in PictureKind:
        assert any(refusal(working, kind) is None for working in workings), kind


@pytest.mark.parametrize("problem", PROBLEMS)
def test_every_working_has_a_picture(problem: str) -> None:
    """Every strategy on every kind of problem here: a scene for each line, of the kind that was chosen."""
    for working in _workings(problem):
        found = picture(working)
        assert found is not None, working.strategy
        assert found.kind is chosen(working)
        assert len(found.scenes) == len(working.lines)


@pytest.mark.parametrize("problem", PROBLEMS)
def test_a_kind_is_drawn_or_refused(problem: str) -> None:
    """What is not refused can be drawn as asked; what is refused raises, and what is offered suits."""
    for working, kind in product(_workings(problem)[:: sample(1, 5, 1)], PictureKind):
        refused = refusal(working, kind)
        if refused is None:
            found = picture(working, kind)
            assert found is not None
            assert found.kind is kind
            assert found.scenes[0].height <= 150
            continue
        assert refused.instead is not None
        assert refusal(working, refused.instead) is None
        with pytest.raises(PictureRefusedError) as error:
            picture(working, kind)
        assert (error.value.kind, error.value.why, error.value.instead) == (
            kind,
            refused.reason,
            refused.instead,
        )


@pytest.mark.parametrize(
    ("problem", "strategy", "kind"),
    [
        ("7 2/6 - 3 5/6", "regroup_first", PictureKind.STRIPS),
        ("7 2/6 - 3 5/6", "count_up", PictureKind.LINE),
        ("7 2/6 - 3 5/6", "equal_shift", PictureKind.LINE),
        ("7 2/6 - 3 5/6", "from_whole", PictureKind.LINE),
        ("2 4/5 + 1 3/5", "jump_on", PictureKind.LINE),
        ("2 4/5 + 1 3/5", "make_a_whole", PictureKind.STRIPS),
        ("52 - 27", "regroup_first", PictureKind.BLOCKS),
        ("52 - 27", "count_up", PictureKind.LINE),
        ("1234 - 27", "regroup_first", PictureKind.LINE),
        ("3.45 - 1.27", "regroup_first", PictureKind.GRID),
        ("11/100 + 1/10", "units_apart", PictureKind.GRID),
        ("5.2 - 2.7", "regroup_first", PictureKind.STRIPS),
        ("7 5/20 - 2 9/20", "regroup_first", PictureKind.RECTANGLES),
        ("7 5/30 - 2 9/30", "regroup_first", PictureKind.LINE),
        ("40 1/6 - 2 5/6", "regroup_first", PictureKind.LINE),
        ("40 1/6 = 39 ?/6", "regroup_first", PictureKind.SPLIT),
        ("9 - ? = 3 1/2", "regroup_first", PictureKind.BAR),
        ("9 - ? = 3 1/2", "count_up", PictureKind.BAR),
        ("? - 27 = 52", "regroup_first", PictureKind.BAR),
        ("100 - ? = 99 7/8", "regroup_first", PictureKind.SPLIT),
        ("multiples of 7 to 50", "regroup_first", PictureKind.LINE),
        ("4 + 3 x 7", "regroup_first", PictureKind.BAR),
    ],
)
def test_chosen(problem: str, strategy: str, kind: PictureKind) -> None:
    """The strategy chooses first, then the numbers."""
    assert chosen(_worked(problem, strategy)) is kind


@pytest.mark.parametrize(
    ("problem", "strategy", "kind", "why", "instead"),
    [
        (
            "11/100 + 1/10",
            "units_apart",
            PictureKind.STRIPS,
            TooManyParts(100, 12),
            "“hundred grid”",
        ),
        (
            "40 1/6 - 2 5/6",
            "regroup_first",
            PictureKind.DISCS,
            TooManyWholes(40, 12),
            "“number line”",
        ),
        (
            "7 2/6 - 3 5/6",
            "regroup_first",
            PictureKind.GRID,
            NotHundredths(6),
            "“strips”",
        ),
        (
            "7 2/6 - 3 5/6",
            "count_up",
            PictureKind.SPLIT,
            NothingToSplit(),
            "“number line”",
        ),
        (
            "7 2/6 = 6 ?/6",
            "regroup_first",
            PictureKind.LINE,
            NoPlaceOnLine(),
            "“strips”",
        ),
        (
            "52 - 27",
            "count_up",
            PictureKind.BLOCKS,
            NotPlaceByPlace(),
            "“number line”",
        ),
        (
            "9 - 3 1/2",
            "regroup_first",
            PictureKind.BAR,
            NoPartsOfWhole(),
            "“strips”",
        ),
        (
            "100 - ? = 99 7/8",
            "regroup_first",
            PictureKind.BAR,
            TooSmallBeside(),
            "“split and join”",
        ),
    ],
)
def test_refused(problem: str, strategy: str, kind: PictureKind, why: Unpictured, instead: str) -> None:
    """A refusal says what, why and what to choose instead."""
    with pytest.raises(PictureRefusedError) as refused:
        picture(_worked(problem, strategy), kind)
    assert refused.value.why == why
    what = f"the picture “{kind.value}” does not suit this problem."
    assert str(refused.value) == f"{what} Choose {instead}, or no picture."


def test_jumps_have_an_end() -> None:
    """Six numbers make ten jumps, more than stand on one line."""
    working = _worked("9 7/8 - 1 1/8 - 1 1/8 - 1 1/8 - 1 1/8 - 1 1/8")
    refused = refusal(working, PictureKind.LINE)
    assert refused is not None
    assert refused.reason == TooManyJumps(10, MOST_JUMPS)
    assert MOST_JUMPS < 10


@pytest.mark.parametrize("problem", ["18 / 6 + 4 x (5 - 2)", "2 x (3 ft 4 in + 2 ft 9 in)", "4 + 3 x 7"])
def test_a_picture_of_several_steps_shows_them_all(problem: str) -> None:
    """One that would show a single step is refused in words; a bar and a rectangle have their own reasons."""
    working = _worked(problem)
    for kind in PictureKind:
        refused = refusal(working, kind)
        if kind in OF_STEPS:
            assert refused is None or refused.reason in {NoPartsOfWhole(), NoArea(), NoRoom()}
        else:
            assert refused is not None
            assert refused.reason == SeveralSteps()
    words = text_of(unpictured(SeveralSteps(), ClassWords()))
    assert words == "These are several steps, and this picture would show only one of them."


def test_nothing_suits() -> None:
    """A renaming with too much for strips that opens nothing has no picture, and none is drawn."""
    working = _worked("40/2 = ?/26")
    assert chosen(working) is None
    assert picture(working) is None
    refused = refusal(working, PictureKind.STRIPS)
    assert refused is not None
    assert refused.instead is None
    with pytest.raises(PictureRefusedError) as error:
        picture(working, PictureKind.STRIPS)
    assert error.value.remedy == "Choose no picture."
