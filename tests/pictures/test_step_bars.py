"""Several steps as bars: every bar is as long as its numbers say, and stands there once its step is begun."""

from fractions import Fraction

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import LANGUAGES
from onewhole.notations.sentences.text import text_of
from onewhole.number.quantity import Quantity
from onewhole.pictures.choosing import chosen, picture
from onewhole.pictures.limits import BOARD, PAGE, PicturePaper
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Box, Look, Scene, Words
from onewhole.pictures.step_bars import LONG, step_bars
from onewhole.statements.expression import Quotient, Sum, Times, value
from onewhole.statements.gap import HOLE
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from onewhole.working.working import Working

STEPS = (
    "18 / 6 + 4 x (5 - 2)",
    "2 x (3 ft 4 in + 2 ft 9 in)",
    "(43 - 6) x 4",
    "3 x (2 1/4 + 1 3/4) - 5",
    "24 / (2 + 4)",
    "(12 + 8) x 3 - 15",
    "(7 - 2 1/3) x 4",
)


def _worked(typed: str) -> Working:
    return work(read_statement(typed), REGROUP_FIRST)


def _numbers(scene: Scene, name: str) -> list[Quantity]:
    shapes = [piece.shape for piece in scene.pieces if piece.name.startswith(name)]
    return [one.caption for one in shapes if isinstance(one, Words) and isinstance(one.caption, Quantity)]


@pytest.mark.parametrize("paper", [PAGE, BOARD])
@pytest.mark.parametrize("typed", STEPS)
def test_every_bar_is_in_proportion(typed: str, paper: PicturePaper) -> None:
    """What stands above and below a bar is as long as its parts, in one proportion on the whole picture."""
    working = _worked(typed)
    drawn = picture(working, None, paper)
    assert drawn is not None
    assert drawn.kind is PictureKind.BAR
    assert len(drawn.scenes) == len(working.lines)
    last, steps = drawn.telling, step_bars(working)
    scale = LONG / max(step.whole.value for step in steps)
    for at, step in enumerate(steps):
        boxes = [one.shape for one in last.pieces if one.name.startswith(f"step/{at}/part/")]
        widths = [one.width for one in boxes if isinstance(one, Box)]
        assert sum(widths) == scale * step.whole.value
        assert sum(widths[: step.found]) == scale * step.result.value
        assert _numbers(last, f"step/{at}/below")[0] == step.result
    answer = working.answer
    assert isinstance(answer, Quantity)
    assert steps[-1].result.value == answer.value


@pytest.mark.parametrize("typed", STEPS)
def test_a_step_stands_there_once_it_is_begun(typed: str) -> None:
    """Its result is a question mark until its line is told; bars come one after another and none goes."""
    working = _worked(typed)
    drawn = picture(working)
    assert drawn is not None
    steps = step_bars(working)
    for at, scene in enumerate(drawn.scenes):
        there = {piece.name.split("/")[1] for piece in scene.pieces}
        assert there == {str(place) for place, step in enumerate(steps) if step.begins <= at}
        asked = [one for one in scene.pieces if isinstance(one.shape, Words) and one.shape.caption is HOLE]
        assert len(asked) == sum(step.begins <= at < step.found_at for step in steps)
        assert len(scene.descriptions) >= len(there)
        for language in LANGUAGES.values():
            assert text_of(language.working.picture(scene, ClassWords()))


@pytest.mark.parametrize("typed", STEPS)
def test_the_steps_are_those_of_the_working(typed: str) -> None:
    """By another road: each bar's result is what its step comes to, worked out by fractions."""
    asked = read_statement(typed)
    assert isinstance(asked, Question)
    worth: list[Fraction] = []

    def _walk(part: object) -> None:
        match part:
            case Sum(terms):
                for term in terms:
                    _walk(term.part)
                worth.append(value(part))
            case Times(left, right) | Quotient(left, right):
                _walk(left)
                _walk(right)
                worth.append(value(part))
            case _:
                return

    _walk(asked.asked)
    found = [step.result.value for step in step_bars(_worked(typed))]
    assert set(found) >= {worth[-1]}
    assert set(found) <= set(worth) | {value(asked.asked)}


def test_what_is_taken_is_dotted() -> None:
    """And what is left is hatched."""
    drawn = picture(_worked("(43 - 6) x 4"))
    assert drawn is not None
    looks = {piece.name: piece.look for piece in drawn.telling.pieces}
    assert (looks["step/0/part/0"], looks["step/0/part/1"]) == (Look.FILLED, Look.DOTTED)


@pytest.mark.parametrize(
    "typed",
    [
        "25 x (36 - 12)",
        "13 x (20 + 7)",
        "2 x (1 + 1) + 3 x (2 + 2) - 1",
        "1000 - 2 x (1 + 1)",
        "52 - 27",
    ],
)
def test_what_cannot_be_counted_or_seen_is_not_drawn(typed: str) -> None:
    """Too many parts, too many steps, and a part too small beside the others; one step has other pictures."""
    working = _worked(typed)
    drawn = picture(working)
    assert drawn is None or not any(piece.name.startswith("step") for piece in drawn.telling.pieces)
    assert chosen(working) == (None if drawn is None else drawn.kind)
