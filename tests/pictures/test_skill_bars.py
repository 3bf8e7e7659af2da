from fractions import Fraction

import pytest

from onewhole.pictures.scene import Box
from onewhole.pictures.skill_bars import LONG, SkillCounts, skill_bars


def test_parts_are_as_long_as_their_shares() -> None:
    """Every bar is as long as any other, its parts side by side: there, not known, not there."""
    skills = [SkillCounts(10, 5, 5), SkillCounts(0, 0, 20), SkillCounts(1, 19, 0)]
    boxes = {piece.name: piece.shape for piece in skill_bars(skills).pieces if isinstance(piece.shape, Box)}
    for number, counts in enumerate(skills, start=1):
        mine = [box for name, box in boxes.items() if name.startswith(f"{number}/")]
        assert sum((box.width for box in mine), Fraction(0)) == LONG
        assert [box.x for box in mine[1:]] == [box.x + box.width for box in mine[:-1]]
        there = boxes.get(f"{number}/there")
        assert (there.width if there else 0) == LONG * counts.there / 20


def test_a_narrow_part_has_no_number_in_it_and_is_told_all_the_same() -> None:
    """One pupil of 200 is a thin part; the words hold all the numbers."""
    scene = skill_bars([SkillCounts(199, 1, 0)])
    assert [piece.name for piece in scene.pieces] == ["1/there", "1/there/number", "1/not-known"]
    assert len(scene.descriptions) == 1


def test_a_class_of_nobody_is_not_drawn() -> None:
    """Nor are counts below 0."""
    for counts in ((0, 0, 0), (2, -1, 0)):
        with pytest.raises(ValueError, match="counts of pupils"):
            SkillCounts(*counts)
