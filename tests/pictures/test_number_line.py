from fractions import Fraction
from itertools import pairwise

import pytest

from onewhole.number.quantity import Quantity, whole
from onewhole.pictures.description import Compared, EqualJumps, JumpEnds, OneJump, Shown, StillThere
from onewhole.pictures.jump import JumpPlan
from onewhole.pictures.jumps import jump_plan
from onewhole.pictures.labels import across
from onewhole.pictures.limits import BOARD, PAGE, NotDrawnError, PicturePaper
from onewhole.pictures.number_line import number_line
from onewhole.pictures.picture import Picture
from onewhole.pictures.scene import Hop, Scene, Shape, Stroke, Wedge, Words
from onewhole.statements.expression import value
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import NumberRow, Question
from onewhole.working.questions import suiting
from onewhole.working.strategies.table import strategy_named
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.kit.how_much import sample

PROBLEMS = [
    "7 2/6 - 3 5/6",
    "2 4/5 + 1 3/5",
    "4 - 1 3/8",
    "1 2/6 - 5/6",
    "5 1/2 - 2 3/4",
    "7 2/6 - 7 1/6",
    "9 3/8 - 2 1/8 - 1 3/8",
    "3/8 + 7/8",
    "52 - 27",
    "304 - 127",
    "299 + 143",
    "5.2 - 2.7",
    "12.35 - 4.7",
    "5 ft 2 in - 2 ft 7 in",
    "5 h 10 min + 2 h 55 min",
    "4 yd 1 ft 2 in - 2 yd 2 ft 7 in",
    "3 - 3",
]

#: Jumps of very different lengths side by side.
UNEVEN = [
    "9:50 a.m. to 2:15 p.m.",
    "9:45 to 11:20",
    "9:45 + 1 h 35 min",
    "6:58 to 11:02",
    "8 11/12 - 3 1/12",
    "1003 - 897",
    "3 km 250 m - 1 km 800 m",
    "2 yd 1 ft 3 in - 1 yd 2 ft 8 in",
]


def _workings(problem: str) -> list[Working]:
    question = read_statement(problem)
    assert isinstance(question, Question)
    return [work(question, strategy) for strategy in suiting(question)]


WORKINGS = [working for problem in PROBLEMS for working in _workings(problem)]


def _named(working: Working) -> str:
    return working.strategy


def _plan(working: Working) -> JumpPlan:
    found = jump_plan(working)
    assert found is not None
    return found


def _shapes(scene: Scene, kind: str) -> dict[str, Shape]:
    return {piece.name: piece.shape for piece in scene.pieces if piece.name.startswith(kind)}


def _line(problem: str, strategy: str) -> Picture:
    return number_line(work(read_statement(problem), strategy_named(strategy)))


def test_every_strategy_has_a_working_here() -> None:
    """The problems of this file are worked by every strategy."""
    assert len({working.strategy for working in WORKINGS}) == 10


@pytest.mark.parametrize("working", WORKINGS, ids=_named)
def test_a_scene_for_every_line(working: Working) -> None:
    """A scene for each line, at most 180 by 150 mm, with everything on the paper."""
    picture = number_line(working)
    assert len(picture.scenes) == len(working.lines)
    assert picture.scenes[0].width == 180
    assert picture.scenes[0].height <= 150
    for scene in picture.scenes:
        for piece in scene.pieces:
            if isinstance(piece.shape, Words):
                assert 0 < piece.shape.x < scene.width
                assert 0 < piece.shape.y < scene.height
            if isinstance(piece.shape, Hop):
                assert 0 < piece.shape.height < piece.shape.y


@pytest.mark.parametrize("working", WORKINGS, ids=_named)
def test_the_jumps_make_the_answer(working: Working) -> None:
    """The jumps, added up, lead from the start to the answer, or are the answer where they count up."""
    plan = _plan(working)
    assert isinstance(working.answer, Quantity)
    answer = working.answer.value / plan.ladder.finest
    jumps = [jump.end - jump.start for jump in plan.jumps]
    pair = isinstance(working.statement, Question) and len(plan.given) == 2
    if working.strategy == "count_up" and pair:
        assert sum(jumps) == answer
    elif working.strategy == "equal_shift" and pair:
        assert jumps[0] == jumps[1]
        assert jumps[2] == answer
    else:
        assert plan.answer == answer
        start = plan.jumps[0].start if plan.jumps else plan.given[0]
        assert start + sum(jumps) == answer
        assert all(one.end == two.start for one, two in pairwise(plan.jumps))


@pytest.mark.parametrize("working", WORKINGS, ids=_named)
def test_places_are_in_proportion(working: Working) -> None:
    """Two numbers under the line tell the scale exactly; every point, jump and tick stands by it."""
    plan, scene = _plan(working), number_line(working).scenes[-1]
    known = [shape for shape in _shapes(scene, "whole/").values() if isinstance(shape, Words)]
    assert all(isinstance(shape.caption, Quantity) for shape in known)
    first, last = known[0], known[-1]
    low, high = (value(shape.caption) for shape in (first, last) if isinstance(shape.caption, Quantity))
    scale = (last.x - first.x) / (high - low)

    def place(count: int) -> Fraction:
        return first.x + (count * plan.ladder.finest - low) * scale

    for name, shape in _shapes(scene, "point/").items():
        assert isinstance(shape, Wedge)
        assert shape.x == place(int(name.removeprefix("point/")))
    hops = [shape for shape in _shapes(scene, "jump/").values() if isinstance(shape, Hop)]
    assert [(hop.x, hop.to_x) for hop in hops] == [
        (place(jump.start), place(jump.end)) for jump in plan.jumps
    ]


@pytest.mark.parametrize("working", WORKINGS, ids=_named)
def test_ticks_are_equally_spaced(working: Working) -> None:
    """Numbered ticks are equally far apart, exactly, and so are all ticks together."""
    scene = number_line(working).scenes[0]
    strokes = _shapes(scene, "tick/") | _shapes(scene, "part/")
    for names in ("tick/", ""):
        xs = sorted(s.x for n, s in strokes.items() if n.startswith(names) and isinstance(s, Stroke))
        assert len({b - a for a, b in pairwise(xs)}) == 1


@pytest.mark.parametrize("working", WORKINGS, ids=_named)
def test_what_stands_stays(working: Working) -> None:
    """From line to line nothing goes away or moves but the words of a number; the last has all jumps."""
    scenes = number_line(working).scenes
    for before, after in pairwise(scenes):
        later = {piece.name: piece.shape for piece in after.pieces}
        for piece in before.pieces:
            if not piece.name.startswith("number/"):
                assert later[piece.name] == piece.shape
    assert len(_shapes(scenes[-1], "jump/")) == len(_plan(working).jumps)


def test_jumps_are_drawn_one_by_one() -> None:
    """Jumping on, each line that jumps draws one jump more."""
    found = _line("2 4/5 + 1 3/5", "jump_on")
    assert [len(_shapes(scene, "jump/")) for scene in found.scenes] == [0, 1, 1, 2, 2, 3]


def test_lengths_are_found_after_the_jumps() -> None:
    """Counting up, the stops come first and the lengths of the jumps one line later."""
    found = _line("7 2/6 - 3 5/6", "count_up")
    assert [len(_shapes(scene, "length/")) for scene in found.scenes] == [0, 0, 3, 3]


def test_taking_away_goes_back() -> None:
    """7 2/6 - 3 5/6 by regrouping jumps back by 3 wholes, then by 5 sixths, and ends with what is left."""
    scene = _line("7 2/6 - 3 5/6", "regroup_first").scenes[-1]
    hops = [shape for shape in _shapes(scene, "jump/").values() if isinstance(shape, Hop)]
    assert [hop.x - hop.to_x for hop in hops] == [60, Fraction(50, 3)]
    assert isinstance(scene.descriptions[-1], StillThere)
    assert [type(each) for each in scene.descriptions] == [
        Shown,
        OneJump,
        JumpEnds,
        OneJump,
        JumpEnds,
        StillThere,
    ]


def test_unlike_parts_stand_on_one_line() -> None:
    """The first scene writes the numbers as the problem does, the later ones in parts of one size."""
    scenes = _line("5 1/2 - 2 3/4", "regroup_first").scenes
    names = [_shapes(scene, "number/")["number/22"] for scene in (scenes[0], scenes[-1])]
    captions = [
        name.caption.counts
        for name in names
        if isinstance(name, Words) and isinstance(name.caption, Quantity)
    ]
    assert captions == [(5, 1), (5, 2)]


def test_a_comparison_marks_both() -> None:
    """Both numbers are marked from the first line on, and the last one tells which is compared with which."""
    found = _line("3/4 ? 5/6", "regroup_first")
    assert [len(_shapes(scene, "point/")) for scene in found.scenes] == [2] * len(found.scenes)
    assert isinstance(found.scenes[-1].descriptions[-1], Compared)
    assert not any(isinstance(each, Compared) for scene in found.scenes[:-1] for each in scene.descriptions)


@pytest.mark.parametrize("paper", [PAGE, BOARD], ids=["page", "board"])
@pytest.mark.parametrize("problem", [*UNEVEN, *PROBLEMS[: sample(3, None)]])
def test_a_length_touches_no_jump_and_no_other_length(problem: str, paper: PicturePaper) -> None:
    """The words of each length stand over every jump that they would cover, measured at 50 points of it."""
    for working in _workings(problem):
        picture = number_line(working, paper)
        shapes = [
            piece.shape for piece in picture.scenes[-1].pieces if piece.name.startswith(("jump", "length"))
        ]
        hops = [shape for shape in shapes if isinstance(shape, Hop)]
        words = [shape for shape in shapes if isinstance(shape, Words)]
        for at, one in enumerate(words):
            assert isinstance(one.caption, Quantity)
            reach = across(one.caption) / 2
            foot = one.y + Fraction(7, 2)
            for hop in hops:
                for share in (Fraction(step, 50) for step in range(51)):
                    if abs(hop.x + (hop.to_x - hop.x) * share - one.x) <= reach:
                        assert foot <= hop.y - 4 * share * (1 - share) * hop.height, (one, hop)
            for other in words[:at]:
                assert isinstance(other.caption, Quantity)
                beside = abs(other.x - one.x) >= reach + across(other.caption) / 2
                assert beside or abs(other.y - one.y) >= 7, (one, other)


def test_many_wholes_have_fewer_numbers() -> None:
    """A line up to 304 numbers every twentieth, from where it is needed, and ticks every tenth."""
    scene = _line("304 - 127", "regroup_first").scenes[0]
    words = [shape for shape in _shapes(scene, "whole/").values() if isinstance(shape, Words)]
    assert [shape.caption for shape in words] == [whole(number) for number in range(160, 321, 20)]
    assert len(_shapes(scene, "part/")) == 8
    assert Shown((whole(304),)) in scene.descriptions


def test_a_missing_number_is_refused() -> None:
    """An equation with a number missing has no place on the line, and the refusal says what to do."""
    with pytest.raises(NotDrawnError, match="only sums, differences and comparisons") as refused:
        _line("7 2/6 = 6 ?/6", "regroup_first")
    assert refused.value.remedy == "Choose another picture, or none."


def test_long_numbers_stay_on_the_paper_and_apart() -> None:
    """1,000,000 at the end of the line is not cut, and no more than six such ticks stand side by side."""
    scene = number_line(work(read_statement("345678 ? 1000000"), strategy_named("regroup_first"))).scenes[-1]
    ticks = [p.shape for p in scene.pieces if p.name.startswith("whole/") and isinstance(p.shape, Words)]
    assert [int(tick.caption.value) for tick in ticks if isinstance(tick.caption, Quantity)] == [
        *range(0, 1_000_001, 200_000)
    ]
    assert scene.width - ticks[-1].x >= Fraction(55, 4), "half of what nine signs take"


@pytest.mark.parametrize(
    ("problem", "step", "named"),
    [
        ("multiples of 7 to 50", 7, [7, 14, 21, 28, 35, 42, 49]),
        ("multiples of 25 to 110", 25, [25, 50, 75, 100]),
        ("multiples of 10 to 60", 10, []),
    ],
)
def test_multiples_are_counted_on_by_equal_jumps(problem: str, step: int, named: list[int]) -> None:
    """From 0 on; each multiple is named when it is jumped to: in a row that leaves none out, or by a tick."""
    working = work(read_statement(problem), strategy_named("regroup_first"))
    assert isinstance(working.answer, NumberRow)
    first, last = number_line(working).scenes
    assert not _shapes(first, "jump/")
    assert list(_shapes(first, "point/")) == ["point/0"]
    multiples = [int(one) for one in working.answer.values]
    assert multiples == list(range(step, multiples[-1] + 1, step))
    ends = [hop.to_x for hop in _shapes(last, "jump/").values() if isinstance(hop, Hop)]
    spots = _shapes(last, "point/")
    assert ends == [spots[f"point/{one}"].x for one in multiples]
    assert list(_shapes(last, "number/")) == [f"number/{one}" for one in named]
    assert {f"whole/{one}" for one in multiples if not named} <= {piece.name for piece in last.pieces}
    assert EqualJumps(len(multiples), whole(step), whole(multiples[-1])) in last.descriptions
