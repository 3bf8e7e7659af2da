"""Two roads to the odds of many pupils: the marking's exact ones, and the crowd's floats."""

from collections.abc import Sequence
from random import Random

import numpy as np
import pytest

from onewhole.marking.diagnosis.diagnosis import Weighed, weigh
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.answers_table import ClassAnswers, PupilAnswers
from onewhole.marking.reading.mark import mark_class
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from onewhole.presses.crowd import BLOCK, Block, Floats, Likeliest, Page, Row, crowd, likeliest, ready
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from tests.kit.answers import page as page_of

PUPILS = 1000
CLOSE = 1e-9


def rows(problems: Sequence[Problem], pupils: int, seed: int = 1) -> list[Row]:
    """Pupils who write right answers, patterns' answers, and whatever else comes into a cell."""
    chance = Random(seed)
    ideas = ("A01", "A02", "A04", "A12", "A28", "P03", "")
    found: list[Row] = [("away", [""] * len(problems))]
    for number in range(1, pupils):
        idea, steady = chance.choice(ideas), chance.random()
        cells = [_cell(one, idea if chance.random() < steady else "", chance) for one in problems]
        found.append((f"K{number}", cells))
    return found


def _cell(problem: Problem, idea: str, chance: Random) -> str:
    if chance.random() < 0.1:
        return chance.choice(["", "-", "smudge", "3", "1 1/2", "0", "77", "2/6", "3.5", "4 3/0"])
    slip = by_id(idea).slip(problem.statement) if idea else None
    return text(slip.wrote if slip else answer(problem.statement))


def exactly(problems: Sequence[Problem], found: Sequence[Row]) -> Weighed:
    """The marking's own road, all pupils as one class."""
    pupils = tuple(PupilAnswers(code, tuple(map(read_written, cells))) for code, cells in found)
    return weigh(mark_class(ClassAnswers(tuple(problems), pupils)))


def at_once(page: Page, found: Sequence[Row], workers: int = 1) -> list[Block]:
    """The crowd's road."""
    return list(crowd(page, lambda: iter(found), workers=workers))


def one_by_one(blocks: Sequence[Block]) -> list[Floats]:
    """The odds of each pupil."""
    return [block.odds[place] for block in blocks for place in block.places]


@pytest.fixture(scope="module")
def both() -> tuple[Page, Weighed, list[Block]]:
    """A thousand pupils on a page of twelve, by both roads."""
    problems = page_of()
    found = rows(problems, PUPILS)
    page = ready(problems)
    return page, exactly(problems, found), at_once(page, found)


def test_the_odds_agree(both: tuple[Page, Weighed, list[Block]]) -> None:
    """Every hypothesis has the same odds for each of a thousand pupils, within a billionth."""
    page, weighed, blocks = both
    assert page.hypotheses == weighed.page.hypotheses
    odds = one_by_one(blocks)
    assert len(odds) == PUPILS
    worst = max(
        abs(weight / whole - share)
        for exact, quick in zip(weighed.weights, odds, strict=True)
        for whole in (sum(exact),)
        for weight, share in zip(exact, quick, strict=True)
    )
    print(f"largest difference {worst:.1e}")
    assert worst < CLOSE


def test_the_best_set_agrees(both: tuple[Page, Weighed, list[Block]]) -> None:
    """What is likeliest of each pupil who answered anything is the same, with the same odds."""
    page, weighed, blocks = both
    said = [one for block in blocks for one in likeliest(page, block)]
    told = [(one, found) for one, found in zip(weighed.diagnoses, said, strict=True) if one.odds]
    assert len(told) > PUPILS // 2
    for one, found in told:
        assert one.pupil == found.pupil
        assert one.odds[0].patterns == found.patterns
        assert abs(float(one.odds[0].probability) - found.probability) < CLOSE


def test_the_number_of_workers_changes_nothing() -> None:
    """More pupils than a block holds come out in their order, to the last bit, with one worker or three."""
    problems = page_of()[:3]
    found, page = rows(problems, BLOCK + 10), ready(problems)
    one, three = at_once(page, found, 1), at_once(page, found, 3)
    assert [pupil for block in one for pupil in block.pupils] == [code for code, _ in found]
    assert len(one) == 2
    assert all(np.array_equal(a, b) for a, b in zip(one_by_one(one), one_by_one(three), strict=True))


def test_a_pupil_without_answers_is_as_supposed() -> None:
    """Nothing read leaves what was supposed: no steady pattern is likeliest, and odds add up to 1."""
    page = ready(page_of()[:2])
    (block,) = at_once(page, [("K01", ["", "smudge"])])
    (found,) = likeliest(page, block)
    assert found.patterns == ()
    assert abs(block.odds.sum() - 1) < CLOSE
    assert np.allclose(block.odds[0], page.base / page.base.sum())


def test_sets_that_write_the_same_are_told_together() -> None:
    """A12 and A26 leave the wholes alone on every problem: both are named, and their odds are added."""
    problems = page_of()[:6]
    cells = [text(slip.wrote) for one in problems if (slip := by_id("A12").slip(one.statement))]
    page = ready(problems)
    (found,) = likeliest(page, at_once(page, [("K01", cells)])[0])
    assert isinstance(found, Likeliest)
    assert {("A12",), ("A26",)} <= set(found.alike)
    assert found.together > found.probability
