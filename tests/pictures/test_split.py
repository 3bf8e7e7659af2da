from fractions import Fraction

import pytest

from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.pictures.description import Gathered, Makes, Shown, SplitInto
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.scene import Scene, Stroke, Words
from onewhole.pictures.split import grown, split
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.questions import unsuited
from onewhole.working.strategies.table import STRATEGIES, strategy_named
from onewhole.working.work import work
from onewhole.working.working import Working

PROBLEMS = [
    "7 2/6 - 3 5/6",
    "2 4/5 + 1 3/5",
    "4 - 1 3/8",
    "1 2/6 - 5/6",
    "5 1/2 - 2 3/4",
    "9 3/8 - 2 1/8 - 1 3/8",
    "3/8 + 7/8",
    "52 - 27",
    "304 - 127",
    "299 + 143",
    "5.2 - 2.7",
    "5 ft 2 in - 2 ft 7 in",
    "7 2/6 = 5 ?/6",
]


def _workings(problem: str) -> list[Working]:
    statement = read_statement(problem)
    ways = [s for s in STRATEGIES if not isinstance(statement, Question) or unsuited(statement, s) is None]
    found = [work(statement, strategy) for strategy in ways]
    return [working for working in found if any(grown(working))]


WORKINGS = [working for problem in PROBLEMS for working in _workings(problem)]


def _written(scene: Scene) -> list[str]:
    found = [piece.shape.caption for piece in scene.pieces if isinstance(piece.shape, Words)]
    return [text(caption) for caption in found if isinstance(caption, Quantity)]


def _split(problem: str, strategy: str) -> tuple[Scene, ...]:
    return split(work(read_statement(problem), strategy_named(strategy))).scenes


def test_regrouping_grows_line_by_line() -> None:
    """7 2/6 is parted into 6, 1 and 2/6; the one is 6/6; 6/6 and 2/6 are 8/6; and all of it is 6 8/6."""
    scenes = _split("7 2/6 - 3 5/6", "regroup_first")
    assert [_written(scene) for scene in scenes[:4]] == [
        ["7 2/6"],
        ["7 2/6", "6", "1", "2/6"],
        ["7 2/6", "6", "1", "2/6", "6/6"],
        ["7 2/6", "6", "1", "2/6", "6/6", "8/6", "6 8/6"],
    ]
    assert scenes[3] == scenes[4] == scenes[5]


def test_nothing_loose_makes_no_number_of_its_own() -> None:
    """4 has no loose eighths: 3 and 8/8 make 3 8/8 at once."""
    scenes = _split("4 - 1 3/8", "regroup_first")
    assert _written(scenes[-1]) == ["4", "3", "1", "8/8", "3 8/8"]


def test_a_ten_is_opened_like_a_whole() -> None:
    """52 is 40, 10 and 2, and the ten is 10 ones."""
    scenes = _split("52 - 27", "regroup_first")
    assert _written(scenes[-1]) == ["52", "40", "10", "2", "10 ones", "12 ones", "4 tens 12 ones"]


def test_a_second_opening_is_a_second_tree() -> None:
    """304 - 127 opens a hundred and then a ten: the second tree begins with what the first one made."""
    scenes = _split("304 - 127", "regroup_first")
    names = [{piece.name.split("/")[0] for piece in scene.pieces} for scene in scenes]
    assert names == [{"tree1"}] * 4 + [{"tree2"}] * 5
    assert _written(scenes[4])[0] == _written(scenes[3])[-1] == "2 hundreds 10 tens 4 ones"


def test_full_groups_are_made_into_wholes() -> None:
    """2 4/5 + 1 3/5 stands as two numbers, then as 3 7/5, of which 5/5 is 1."""
    scenes = _split("2 4/5 + 1 3/5", "units_apart")
    assert _written(scenes[0]) == ["2 4/5", "1 3/5"]
    assert _written(scenes[2]) == ["3 7/5"]
    assert _written(scenes[-1]) == ["3 7/5", "3", "5/5", "2/5", "1", "4 2/5"]
    assert [type(each) for each in scenes[-1].descriptions] == [Shown, SplitInto, Makes, Gathered]


@pytest.mark.parametrize("working", WORKINGS, ids=lambda working: working.strategy)
def test_every_working_that_opens_or_makes_is_drawn(working: Working) -> None:
    """A scene for every line, of one size, with every number and branch on the paper."""
    found = split(working)
    assert len(found.scenes) == len(working.lines)
    for scene in found.scenes:
        for piece in scene.pieces:
            assert isinstance(piece.shape, Words | Stroke)
            assert 0 < piece.shape.x < scene.width
            assert 0 < piece.shape.y < scene.height


@pytest.mark.parametrize("working", WORKINGS, ids=lambda working: working.strategy)
def test_parts_are_worth_the_number(working: Working) -> None:
    """The parts of a row, and what they make together, are worth the number on top."""
    for each in filter(None, grown(working)):
        tree = each.tree
        assert sum((part.value for part in tree.parts), Fraction(0)) == tree.top.value == tree.joined.value
        if tree.pieces is not None:
            assert sum((part.value for part in tree.parts[tree.at :]), Fraction(0)) == tree.pieces.value


@pytest.mark.parametrize("problem", ["2 1/3 - 1 2/3", "7 2/6 - 3 5/6", "204 - 127"])
def test_the_part_that_is_opened_is_the_one_that_changes(problem: str) -> None:
    """Of two parts that are alike the second is opened, and the first stays."""
    for each in filter(None, grown(work(read_statement(problem), strategy_named("regroup_first")))):
        assert each.tree.parts[each.tree.at] != each.tree.changed
        assert each.tree.at == 1


@pytest.mark.parametrize("strategy", ["count_up", "equal_shift"])
def test_a_way_that_opens_nothing_is_refused(strategy: str) -> None:
    """A way without opening has no tree, and the refusal says what to do."""
    with pytest.raises(NotDrawnError, match="nothing is opened or made") as refused:
        _split("7 2/6 - 3 5/6", strategy)
    assert refused.value.remedy == "Choose another picture, or none."
