"""The weeks of a term, drawn."""

from fractions import Fraction

from onewhole.number.quantity import whole
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words
from onewhole.pictures.term_weeks import HEAD, LANE, NAME, WEEK, SkillLanes, term_weeks, top

SKILLS = (SkillLanes((0, 3, 0), (False, True, True)), SkillLanes((0, 0, 0), (False, False, False)))


def _scene() -> Scene:
    return term_weeks(SKILLS, (16, 23, 30), 1)


def _at(piece: Piece) -> Box:
    assert isinstance(piece.shape, Box)
    return piece.shape


def test_what_was_on_a_page_is_hatched_and_what_is_planned_has_a_bold_edge() -> None:
    """Each in its lane of its week, and apart without colour; the number of nights stands in its box."""
    pieces = {piece.name: piece for piece in _scene().pieces}
    gone, planned = pieces["1/week-2/on-page"], pieces["1/week-3/planned"]
    assert (gone.look, planned.look) == (Look.FILLED, Look.PLAIN)
    assert _at(planned).x - _at(gone).x == WEEK
    assert _at(planned).y - _at(gone).y == LANE
    assert _at(gone).y >= top(1) + NAME
    edge = [pieces[f"1/week-3/{side}"] for side in ("above", "right", "below", "left")]
    assert {piece.look for piece in edge} == {Look.FILLED}, "bold"
    corners = [(one.shape.x, one.shape.y) for one in edge if isinstance(one.shape, Stroke)]
    right, low = _at(planned).x + _at(planned).width, _at(planned).y + _at(planned).height
    assert set(corners) == {(x, y) for x in (_at(planned).x, right) for y in (_at(planned).y, low)}
    nights = pieces["1/week-2/nights"].shape
    assert isinstance(nights, Words)
    assert nights.caption == whole(3)
    assert (nights.x - _at(gone).x, nights.y - _at(gone).y) == (_at(gone).width / 2, _at(gone).height / 2)


def test_this_week_stands_between_bold_lines_that_leave_the_names_free() -> None:
    """Two lines in the head and two in the lanes of each skill, a week apart; none where it is not shown."""
    scene = _scene()
    lines = [
        one.shape for one in scene.pieces if one.name.startswith("now/") and isinstance(one.shape, Stroke)
    ]
    assert len(lines) == 2 * (1 + len(SKILLS))
    assert {right.x - left.x for left, right in zip(lines[::2], lines[1::2], strict=True)} == {WEEK}
    for row in (1, 2):
        assert not any(line.y < top(row) + Fraction(4) < line.to_y for line in lines)
    elsewhere = term_weeks(SKILLS, (16, 23, 30), None)
    assert not any(piece.name.startswith("now/") for piece in elsewhere.pieces)


def test_it_grows_with_weeks_and_skills_and_all_is_on_it() -> None:
    """Nothing reaches over the paper, and what it shows is told skill by skill."""
    scene = _scene()
    assert scene.height == HEAD + 2 * (top(2) - top(1))
    for piece in scene.pieces:
        match piece.shape:
            case Box(x, y, width, height):
                ends = [(x, y), (x + width, y + height)]
            case Stroke(x, y, to_x, to_y):
                ends = [(x, y), (to_x, to_y)]
            case shape:
                ends = [(shape.x, shape.y)]
        assert all(0 <= x <= scene.width and 0 <= y <= scene.height for x, y in ends), piece.name
    assert len(scene.descriptions) == len(SKILLS)
