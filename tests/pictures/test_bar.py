from fractions import Fraction
from itertools import combinations, pairwise

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.notations.pencil import Letters, lettered
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.pictures.bar import LONG, bar
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.scene import Box, Look, Scene, Stroke, Words
from onewhole.statements.gap import HOLE
from onewhole.statements.reading import read_statement
from onewhole.working.form import FormWanted, led_to
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from onewhole.working.working import Working

F = Fraction

#: A problem, the amount of the whole, and the amounts of its parts; worked out by hand.
BARS = [
    ("9 - ? = 3 1/2", F(9), (F(11, 2), F(7, 2))),
    ("? - 2 3/4 = 1 1/2", F(17, 4), (F(11, 4), F(3, 2))),
    ("3 + ? = 5 1/4", F(21, 4), (F(3), F(9, 4))),
    ("? + 2 1/3 = 5", F(5), (F(8, 3), F(7, 3))),
    ("5 1/4 = 3 + ?", F(21, 4), (F(3), F(9, 4))),
    ("9 - 2 - ? = 3 1/2", F(9), (F(2), F(7, 2), F(7, 2))),
    ("1 1/8 + ? + 2 = 12", F(12), (F(9, 8), F(71, 8), F(2))),
    ("? - 1/2 - 1/3 = 1/6", F(1), (F(1, 2), F(1, 3), F(1, 6))),
    ("403 - ? = 178", F(403), (F(225), F(178))),
    ("5.2 - ? = 2.7", F(26, 5), (F(5, 2), F(27, 10))),
]


def _worked(problem: str) -> Working:
    return work(read_statement(problem), REGROUP_FIRST)


def _boxes(scene: Scene) -> tuple[Box, list[Box]]:
    whole, *parts = (piece.shape for piece in scene.pieces if isinstance(piece.shape, Box))
    return whole, parts


def _letters(scene: Scene) -> list[tuple[Fraction, Fraction, Fraction, Fraction]]:
    """Left, top, right and foot of what is written, 54/100 of its size a letter: a little more than it is."""
    written = [piece.shape for piece in scene.pieces if isinstance(piece.shape, Words)]
    parts = [part for one in written for part in lettered(one, ClassWords()) if isinstance(part, Letters)]
    reach = [part.size * len(part.text) * F(27, 100) for part in parts]
    return [(p.x - r, p.y - p.size * F(7, 10), p.x + r, p.y) for p, r in zip(parts, reach, strict=True)]


def _inside(scene: Scene) -> bool:
    edges = [(box.x, box.y, box.x + box.width, box.y + box.height) for box in _all(scene)]
    return all(
        left >= 0 and top >= 0 and right <= scene.width and foot <= scene.height
        for left, top, right, foot in (*edges, *_letters(scene))
    )


def _all(scene: Scene) -> list[Box]:
    whole, parts = _boxes(scene)
    return [whole, *parts]


def _numbers(scene: Scene) -> list[str]:
    found = [piece.shape.caption for piece in scene.pieces if isinstance(piece.shape, Words)]
    return [text(one) if isinstance(one, Quantity) else "?" for one in found]


@pytest.mark.parametrize(("problem", "amount", "amounts"), BARS)
def test_lengths_are_in_proportion(problem: str, amount: Fraction, amounts: tuple[Fraction, ...]) -> None:
    """Exactly: each part is as long a share of the whole as its amount is, end to end below it."""
    picture = bar(_worked(problem))
    for scene in picture.scenes:
        whole, parts = _boxes(scene)
        assert [part.width / whole.width for part in parts] == [one / amount for one in amounts]
        assert parts[0].x == whole.x
        assert all(before.x + before.width == after.x for before, after in pairwise(parts))
        assert parts[-1].x + parts[-1].width == whole.x + whole.width
        assert {part.y > whole.y + whole.height for part in parts} == {True}
        assert _inside(scene)


@pytest.mark.parametrize("problem", [problem for problem, _, _ in BARS])
def test_the_blank_alone_is_hatched(problem: str) -> None:
    """Without colour: one bar is hatched, the one with the question mark, also when it is found."""
    working = _worked(problem)
    picture = bar(working)
    names = {piece.name for piece in picture.scenes[0].pieces if piece.look is Look.FILLED}
    (hatched,) = names
    number = "number/" + hatched.removeprefix("part/")
    for scene in picture.scenes:
        assert {piece.name for piece in scene.pieces if piece.look is not Look.PLAIN} == names
    first, last = (_caption(scene, number) for scene in (picture.scenes[0], picture.scenes[-1]))
    assert (first, last) == (HOLE, working.answer)
    assert picture.telling is picture.scenes[0]


def _caption(scene: Scene, name: str) -> object:
    (found,) = (piece.shape for piece in scene.pieces if piece.name == name)
    assert isinstance(found, Words)
    return found.caption


def test_numbers_are_those_of_the_problem() -> None:
    """In its order, the whole first; the last scene holds the answer in the place of the blank."""
    scenes = bar(_worked("9 - ? = 3 1/2")).scenes
    assert [_numbers(scenes[0]), _numbers(scenes[-1])] == [["9", "?", "3 1/2"], ["9", "5 1/2", "3 1/2"]]


def test_a_line_that_writes_the_answer_with_fewer_pieces_writes_it_on_the_bar() -> None:
    """The form that is asked for stands on the last scene, the counted one on the scene before."""
    working = led_to(_worked("? + 1/8 = 5/8"), FormWanted(simplest=True))
    assert [_numbers(scene)[1] for scene in bar(working).scenes[-2:]] == ["4/8", "1/2"]


def test_numbers_do_not_run_into_one_another() -> None:
    """A part too narrow for its number beside another has it a row lower, with a line to it."""
    scene = bar(_worked("? + 2/8 + 3/8 = 9")).scenes[0]
    (line,) = (piece for piece in scene.pieces if isinstance(piece.shape, Stroke))
    assert line.name == "line/2"
    assert _inside(scene)
    for one, other in combinations(_letters(scene), 2):
        assert one[2] < other[0] or other[2] < one[0] or one[3] < other[1] or other[3] < one[1]


def test_a_measure_at_the_edge_stays_on_the_paper() -> None:
    """What is wide is moved in, and stands lower where it would stand under another part."""
    scene = bar(_worked("? - 30 ft 4 in = 1 ft 1 in")).scenes[-1]
    (line,) = (piece.shape for piece in scene.pieces if isinstance(piece.shape, Stroke))
    (part,) = (piece.shape for piece in scene.pieces if piece.name == "part/1")
    assert isinstance(part, Box)
    assert line.x == part.x + part.width / 2
    assert line.to_x == 120 - 23
    assert _inside(scene)


@pytest.mark.parametrize(
    "problem", ["7 2/6 - 3 5/6", "5/6 ? 7/8", "7 2/6 = 6 ?/6", "? = 5/6", "5 + ? - 2 = 6"]
)
def test_what_tells_no_parts_is_not_drawn(problem: str) -> None:
    """A question, a comparison, a renaming, a blank alone, and what both adds and takes."""
    working = _worked(problem)
    with pytest.raises(NotDrawnError, match="does not tell a whole and its parts"):
        bar(working)


@pytest.mark.parametrize("problem", ["100 - ? = 99 7/8", "9 - ? = 9", "? + 0 = 0"])
def test_what_cannot_be_seen_is_not_drawn(problem: str) -> None:
    """A part that is narrower than 2 mm, or nothing at all."""
    with pytest.raises(NotDrawnError, match="too small to be seen"):
        bar(_worked(problem))


def test_the_narrowest_part() -> None:
    """A fifty-second of the whole is 2 mm and is drawn."""
    _, parts = _boxes(bar(_worked("52 - ? = 51")).scenes[0])
    assert LONG == 104
    assert parts[0].width == 2
