"""The other topics of the laboratory."""

from random import Random

import pytest

from lab.measures import FAIR
from lab.pupils import Kind, Pupil
from lab.steps import Pen, cell
from lab.topics import TOPICS, class_of, other_topics
from onewhole.findings.wished_skill import WishedSkill
from onewhole.misconceptions.catalogue import by_id
from onewhole.statements.reading import read_statement
from tests.kit.how_much import sample


@pytest.mark.parametrize("name", list(TOPICS)[:: sample(1, 2, 1)])
def test_a_page_comes_from_its_seed_and_shows_its_ideas(name: str) -> None:
    """Twelve problems or twenty, the same for one seed, others for another; most ideas act thrice."""
    topic = TOPICS[name]
    size = 12 if isinstance(topic.draw, WishedSkill) else topic.size
    page = topic.page(size, 1)
    assert page == topic.page(size, 1) != topic.page(size, 2)
    assert [one.label for one in page] == [str(at) for at in range(1, size + 1)]
    acts = [sum(by_id(key).slip(one.statement, one.told) is not None for one in page) for key in topic.ideas]
    assert acts.count(0) <= 1
    assert sum(act >= FAIR for act in acts) > len(acts) / 2


def test_what_is_said_of_two_classes() -> None:
    """Nobody without an idea is said to fit one that adds measures, and who has one is told of no other."""
    seen = [one for which in (0, 1) for one in class_of(TOPICS["adding measures"], which)]
    assert len(seen) == 50
    assert any(one.truth for one in seen)
    assert not [one for one in seen if one.likely and not one.holds]


@pytest.mark.more("lab/test_pages.py")
def test_every_topic_has_its_row() -> None:
    """With as many cells as the head."""
    part = other_topics(1, None)
    assert [row[0] for row in part.rows] == list(TOPICS)
    assert {len(row) for row in part.rows} == {len(part.heads)}


def test_a_comparison_is_written_by_its_idea_rightly_and_with_a_slip() -> None:
    """The right sign, the sign of an idea, and any other sign where the pupil slips."""
    asked = read_statement("0.134 ? 0.2")
    sound = Pupil("K01", Kind.SOUND)
    assert cell(Pen(sound, Random(1)), asked) == "<"
    assert cell(Pen(Pupil("K02", Kind.STEADY, ("F06",)), Random(1)), asked) == ">"
    slipping = Pupil("K03", Kind.SHAKY, slip=1.0)
    assert {cell(Pen(slipping, Random(seed)), asked) for seed in range(20)} == {">", "="}


def test_a_sign_slips_as_often_whatever_leads_to_it() -> None:
    """One sign is written, so there is one slip to make, with an idea as without one."""
    asked = read_statement("0.134 ? 0.2")
    for ideas, meant in (((), "<"), (("F06",), ">")):
        pupil = Pupil("K01", Kind.STEADY, ideas, slip=0.5)
        kept = sum(cell(Pen(pupil, Random(seed)), asked) == meant for seed in range(400))
        assert 160 < kept < 240


def test_a_number_to_round_is_written_by_its_idea_rightly_and_with_a_slip() -> None:
    """The right one, that of an idea, and one whose place has a count too many where the pupil slips."""
    asked = read_statement("round 3460 to the nearest hundred")
    assert cell(Pen(Pupil("K01", Kind.SOUND), Random(1)), asked) == "3500"
    assert cell(Pen(Pupil("K02", Kind.STEADY, ("R01",)), Random(1)), asked) == "3400"
    slipping = {cell(Pen(Pupil("K03", Kind.SHAKY, slip=1.0), Random(seed)), asked) for seed in range(20)}
    assert slipping == {"4500", "3600", "3510", "3501"}


def test_numbers_in_order_are_written_by_their_idea_rightly_and_with_a_slip() -> None:
    """The right row, that of an idea, and one with two neighbors changed where the pupil slips."""
    asked = read_statement("order 1/4, 1/2, 1/8")
    assert cell(Pen(Pupil("K01", Kind.SOUND), Random(1)), asked) == "1/8 < 1/4 < 1/2"
    assert cell(Pen(Pupil("K02", Kind.STEADY, ("C08",)), Random(1)), asked) == "1/2 < 1/4 < 1/8"
    slipping = {cell(Pen(Pupil("K03", Kind.SHAKY, slip=1.0), Random(seed)), asked) for seed in range(20)}
    assert slipping == {"1/4, 1/8, 1/2", "1/8, 1/2, 1/4"}
    air = Pupil("K04", Kind.SCATTERED, once=1.0, air=1.0)
    assert len({cell(Pen(air, Random(seed)), asked) for seed in range(60)}) == 6


def test_a_row_slips_at_each_two_neighbors() -> None:
    """Three numbers stand in two pairs of neighbors, so that half a slip each leaves a quarter right."""
    pupil = Pupil("K01", Kind.SHAKY, slip=0.5)
    asked = read_statement("order 1/4, 1/2, 1/8")
    kept = sum(cell(Pen(pupil, Random(seed)), asked) == "1/8 < 1/4 < 1/2" for seed in range(400))
    assert 70 < kept < 130


def test_a_row_slips_as_often_whatever_leads_to_it() -> None:
    """Numbers that are written with one denominator first are put in order once: that line says no order."""
    pupil = Pupil("K01", Kind.SHAKY, slip=0.5)
    asked = read_statement("order 1 1/6, 1 2/3, 1 3/8")
    kept = sum(cell(Pen(pupil, Random(seed)), asked) == "1 1/6 < 1 3/8 < 1 2/3" for seed in range(400))
    assert 70 < kept < 130
