from itertools import pairwise

import pytest

from onewhole.number.ladder import places
from onewhole.number.quantity import Quantity
from onewhole.pictures.blocks import blocks
from onewhole.pictures.blocks_state import BlocksState, blocks_of, blocks_states
from onewhole.pictures.caption import Count
from onewhole.pictures.description import CrossedOut, CutInto, Makes
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.scene import Box, Look, Scene
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.questions import suiting
from onewhole.working.strategies.table import strategy_named
from onewhole.working.work import work
from onewhole.working.working import Working

PROBLEMS = [
    "52 - 27",
    "304 - 127",
    "354 - 170",
    "300 - 7",
    "999 - 999",
    "9 - 4",
    "9 + 4",
    "29 + 43",
    "299 + 143",
    "555 + 444",
    "5.2 - 2.7",
    "0.35 + 0.7",
    "4 - 1.25",
]
HUNDREDS, TENS, ONES = places(3).units


def _worked(problem: str, strategy: str) -> Working:
    return work(read_statement(problem), strategy_named(strategy))


def _workings(problem: str) -> list[Working]:
    question = read_statement(problem)
    assert isinstance(question, Question)
    found = [work(question, strategy) for strategy in suiting(question)]
    return [working for working in found if blocks_of(working) is not None]


WORKINGS = [working for problem in PROBLEMS for working in _workings(problem)]


def _piles(working: Working) -> tuple[BlocksState, ...]:
    counted = blocks_of(working)
    assert counted is not None
    return blocks_states(working, counted)


def _blocks(scene: Scene) -> dict[str, Box]:
    return {piece.name: piece.shape for piece in scene.pieces if isinstance(piece.shape, Box)}


def test_the_ways_of_places_are_all_here() -> None:
    """Columns, regrouping first, larger units first and units apart are followed, each on some problems."""
    ways = [working.strategy for working in WORKINGS]
    assert min(ways.count(way) for way in ("columns", "regroup_first", "wholes_first", "units_apart")) >= 4
    assert len(set(ways)) == 4


@pytest.mark.parametrize("working", WORKINGS, ids=lambda working: working.strategy)
def test_the_blocks_are_the_numbers(working: Working) -> None:
    """Blocks struck or not never change their amount on a line; those left at the end are the answer."""
    found = _piles(working)
    lying = [zip(each.units, map(len, each.blocks), strict=True) for each in found]
    amounts = {sum(unit.size * count for unit, count in pairs) for pairs in lying}
    assert len(amounts) == 1
    left = zip(found[-1].units, found[-1].count(struck=False), strict=True)
    assert isinstance(working.answer, Quantity)
    assert sum(unit.size * count for unit, count in left) == working.answer.value


@pytest.mark.parametrize("working", WORKINGS, ids=lambda working: working.strategy)
def test_blocks_of_a_unit_are_equal_and_apart(working: Working) -> None:
    """Each block is on the paper, has the exact size of its unit, and lies on no other."""
    picture = blocks(working)
    assert len(picture.scenes) == len(working.lines)
    for scene in picture.scenes:
        boxes = list(_blocks(scene).values())
        side = min((box.width for box in boxes), default=0)
        assert {(box.width / side, box.height / side) for box in boxes} <= {(1, 1), (1, 10), (10, 10)}
        for box in boxes:
            assert box.x >= 0
            assert box.x + box.width <= scene.width
            assert box.y + box.height <= scene.height
        for at, one in enumerate(boxes):
            for two in boxes[at + 1 :]:
                beside = one.x + one.width <= two.x or two.x + two.width <= one.x
                assert beside or one.y + one.height <= two.y or two.y + two.height <= one.y


def test_one_ten_is_opened_into_ten_ones() -> None:
    """In 52 - 27 a rod goes, and ten cells that carry its name come."""
    scenes = blocks(_worked("52 - 27", "regroup_first")).scenes
    gone = _blocks(scenes[1]).keys() - _blocks(scenes[2]).keys()
    new = _blocks(scenes[2]).keys() - _blocks(scenes[1]).keys()
    assert gone == {"first/1/4"}
    assert new == {f"first/1/4/{number}" for number in range(10)}
    assert CutInto(Count(1, TENS), Count(10, ONES)) in scenes[2].descriptions


def test_what_is_taken_is_struck() -> None:
    """2 rods and 7 cells are struck, and nothing but looks changes."""
    scenes = blocks(_worked("52 - 27", "regroup_first")).scenes
    struck = [piece.name for piece in scenes[-1].pieces if piece.look is Look.STRUCK]
    assert len(struck) == 9
    assert _blocks(scenes[3]) == _blocks(scenes[-1])
    assert CrossedOut((Count(2, TENS), Count(7, ONES))) in scenes[-1].descriptions


def test_larger_units_are_struck_first_where_they_are_taken_first() -> None:
    """Taking the tens first, the rods are struck before a ten is opened."""
    found = _piles(_worked("52 - 27", "wholes_first"))
    assert [each.count(struck=True)[1:] for each in found] == [(0, 0), *[(2, 0)] * 5, (2, 7), (2, 7)]


def test_ten_ones_are_made_into_a_ten() -> None:
    """29 + 43 lies as two sets, then as one; the last line makes 12 ones into 1 ten and 2 ones."""
    found = _piles(_worked("29 + 43", "units_apart"))
    assert [each.count(struck=False)[1:] for each in found] == [(6, 12)] * 4 + [(7, 2)]
    looks = {block.look for pile in found[0].blocks for block in pile}
    assert looks == {Look.FILLED, Look.PLAIN}
    assert {block.look for pile in found[1].blocks for block in pile} == {Look.FILLED}
    scenes = blocks(_worked("29 + 43", "units_apart")).scenes
    assert Makes(Count(10, ONES), Count(1, TENS)) in scenes[-1].descriptions


def test_names_stay() -> None:
    """From line to line a block that stays keeps its name and its size."""
    for working in WORKINGS:
        for before, after in pairwise(blocks(working).scenes):
            later = _blocks(after)
            same = [(box, later[name]) for name, box in _blocks(before).items() if name in later]
            assert all((a.width, a.height) == (b.width, b.height) for a, b in same)


@pytest.mark.parametrize(
    ("problem", "strategy"),
    [
        ("7 2/6 - 3 5/6", "regroup_first"),
        ("52 - 27", "count_up"),
        ("1000 - 1", "regroup_first"),
        ("999 + 1", "units_apart"),
        ("12.35 - 4.7", "regroup_first"),
        ("5 ft 2 in - 2 ft 7 in", "regroup_first"),
        ("52 - 20 - 7", "regroup_first"),
        ("52 ? 27", "regroup_first"),
    ],
)
def test_what_cannot_be_laid_in_blocks_is_refused(problem: str, strategy: str) -> None:
    """Other units, other ways, more than 999 and more than two numbers: refused, with what to do."""
    with pytest.raises(NotDrawnError, match="cannot be laid in tens and ones") as refused:
        blocks(_worked(problem, strategy))
    assert refused.value.remedy == "Choose the number line, or no picture."
