"""Two roads: the bars of a story are measured on the drawing, and say what the equation of the story says."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations, product

import pytest

from onewhole.errors import OnewholeError
from onewhole.languages.english.pictured import pictured
from onewhole.languages.english.words import words_for
from onewhole.languages.spanish.pictured import pictured as spanish_pictured
from onewhole.languages.spanish.words import read_whole
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.pictures.bar import DIGITS
from onewhole.pictures.bar_rows import room_across
from onewhole.pictures.caption import Count, Groups
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.scene import Box, Look, Scene, Stroke, Words
from onewhole.pictures.story_bar import story_scenes
from onewhole.problems.answer import answer
from onewhole.problems.story_asks import asked
from onewhole.problems.story_bars import NO_BARS, story_shape
from onewhole.problems.story_structure import Structure
from onewhole.sheets.stories import story
from onewhole.statements.expression import WithRemainder
from onewhole.statements.gap import HOLE
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import RightAnswer, Statement
from tests.kit.how_much import WHOLE, sample
from tests.kit.stories import EVERY

#: More seeds than there are ways to tell one statement.
SEEDS = 12
SHAPES = (
    *("{a} - {b}", "{a} + {b}", "{a} - ? = {b}", "{b} + ? = {a}", "? + {b} = {a}", "? - {a} = {b}"),
    *("{a} x {b}", "{a} / {b}", "{a} - {b} + 3", "2 x {a} + {b}", "3 x ({a} + {b})", "({a} + {b}) / 2"),
    *("{a} 1/4 - {b} 3/4", "{b} x 2/{a}", "{a} ft 2 in - {b} ft 7 in", "{a} 2/5 ÷ {b}"),
)
#: All numbers up to this one, on the whole walk.
MOST = 24


def _problems() -> Iterator[str]:
    yield from EVERY[:: sample(31, 9, 1)]
    if WHOLE:
        for shape, a, b in product(SHAPES, range(2, MOST + 1), range(1, MOST + 1)):
            yield shape.format(a=a, b=b)


def _pictures(typed: str) -> Iterator[tuple[Statement, Structure, RightAnswer, Scene, Scene]]:
    """Every picture of a problem, one for each way in which its story is built."""
    try:
        statement = read_statement(typed)
        right = answer(statement)
        told = {story(statement, seed=seed).structure for seed in range(SEEDS)}
    except (OnewholeError, ValueError, ZeroDivisionError):
        return
    for structure in sorted(told, key=lambda one: one.value):
        blank, found = (story_shape(statement, structure, one) for one in (None, right))
        assert (blank is None) == (found is None)
        if blank is None or found is None:
            nothing = isinstance(right, Quantity) and not right.value
            assert nothing or asked(statement).asks in NO_BARS or structure is Structure.PART_OF, typed
            continue
        try:
            yield statement, structure, right, *story_scenes(blank, found)
        except NotDrawnError:
            continue


def _boxes(scene: Scene) -> dict[str, Box]:
    return {piece.name: piece.shape for piece in scene.pieces if isinstance(piece.shape, Box)}


def _words(scene: Scene) -> dict[str, Words]:
    return {piece.name: piece.shape for piece in scene.pieces if isinstance(piece.shape, Words)}


def _lengths(scene: Scene) -> Iterator[tuple[Quantity, Fraction]]:
    """Each number that stands at a bar or a bracket, and how long that is on the drawing."""
    boxes = _boxes(scene)
    strokes = {piece.name: piece.shape for piece in scene.pieces if isinstance(piece.shape, Stroke)}
    for name, words in _words(scene).items():
        if not isinstance(words.caption, Quantity):
            continue
        row, _, at = name.removeprefix("story/").partition("/")
        if at.startswith("number/"):
            yield words.caption, boxes[f"story/{row}/part/{at.removeprefix('number/')}"].width
        elif at == "whole":
            bracket = strokes[f"story/{row}/over"]
            yield words.caption, bracket.to_x - bracket.x


def _check_lengths(scene: Scene, typed: str) -> None:
    scales = {long / number.value for number, long in _lengths(scene) if number.value}
    assert len(scales) <= 1, typed


def _check_sides(scene: Scene, typed: str) -> None:
    """A rectangle has the shape that its sides say, the one that was found too."""
    words, boxes = _words(scene), _boxes(scene)
    down, across = words["story/down"].caption, words["story/across"].caption
    inside = words["story/inside"].caption
    assert isinstance(down, Quantity)
    assert isinstance(across, Quantity)
    assert isinstance(inside, Quantity)
    area = boxes["story/area"]
    assert area.height * across.value == area.width * down.value, typed
    assert down.value * across.value == inside.value, typed


def _check_blank(scene: Scene, statement: Statement, typed: str) -> None:
    """Nothing stands there but numbers of the problem, and what is asked for is a blank."""
    numbers = asked(statement).numbers
    captions = [words.caption for words in _words(scene).values()]
    for caption in captions:
        if isinstance(caption, Quantity):
            assert caption in numbers, typed
        if isinstance(caption, Groups) and caption.count is not None:
            assert caption.count in {number.value for number in numbers}, typed
    assert HOLE in captions or Groups(None) in captions, typed
    groups = [name for name in _words(scene) if name.endswith("/times")]
    parts = [name for name in _boxes(scene) if "/part/" in name]
    if Groups(None) in captions:
        assert len(parts) <= 3 * len(groups), (typed, "the groups cannot be counted")


def _check_found(scene: Scene, right: RightAnswer, typed: str) -> None:
    captions = [words.caption for words in _words(scene).values()]
    assert not {HOLE, Groups(None)} & set(captions), typed
    wanted = (right.quotient, right.left) if isinstance(right, WithRemainder) else (right,)
    for one in wanted:
        assert isinstance(one, Quantity)
        assert one in captions or Groups(int(one.value)) in captions, typed


def _check_room(scene: Scene, typed: str) -> None:
    """All that is written is on the paper, and nothing of it touches anything else that is written."""
    places = [
        (one.x - half, one.x + half, one.y - DIGITS, one.y + DIGITS)
        for one in _words(scene).values()
        if not isinstance(one.caption, Count) and (half := (room_across(one.caption) - 2) / 2)
    ]
    for left, right, top, foot in places:
        assert 0 <= left < right <= scene.width, typed
        assert 0 <= top < foot <= scene.height + DIGITS / 2, typed
    for (a, b, c, d), (e, f, g, h) in combinations(places, 2):
        assert b <= e or f <= a or d - 2 <= g or h - 2 <= c, typed
    for box in _boxes(scene).values():
        assert 0 <= box.x < box.x + box.width <= scene.width, typed
        assert box.y + box.height <= scene.height, typed


@pytest.mark.parametrize("part", range(4))
def test_bars_say_what_the_equation_says(part: int) -> None:
    """Lengths are true to one scale, the blank is open, the answer stands only where it was found."""
    seen = 0
    for at, typed in enumerate(_problems()):
        if at % 4 != part:
            continue
        for statement, structure, right, blank, found in _pictures(typed):
            seen += 1
            assert [p.shape for p in blank.pieces if not isinstance(p.shape, Words)] == [
                p.shape for p in found.pieces if not isinstance(p.shape, Words)
            ], typed
            assert (blank.width, blank.height) == (found.width, found.height)
            if "story/area" in _boxes(found):
                _check_sides(found, typed)
            else:
                for scene in (blank, found):
                    _check_lengths(scene, typed)
                if structure is not Structure.HOW_MANY_TIMES:
                    looks = {piece.look for piece in blank.pieces}
                    assert looks <= {Look.PLAIN, Look.FILLED, Look.DOTTED}
            _check_blank(blank, statement, typed)
            _check_found(found, right, typed)
            for scene in (blank, found):
                _check_room(scene, typed)
                _check_told(scene, typed)
    assert seen


def _check_told(scene: Scene, typed: str) -> None:
    """Every number and the blank are told in both languages, in short sentences."""
    unknown = any(one.caption is HOLE or one.caption == Groups(None) for one in _words(scene).values())
    for tell, words, not_known in (
        (pictured, words_for("strip"), "not known"),
        (spanish_pictured, read_whole("una tira"), "no se sabe"),
    ):
        said = tell(scene, words)
        told = text_of(said)
        assert (not_known in told) or not unknown, (typed, told)
        assert all(len(text_of((one,)).split()) <= 20 for one in said), told


@pytest.mark.parametrize(
    ("typed", "structure", "rows"),
    [
        ("52 - 27", Structure.TAKE_FROM, [["27", "?"]]),
        ("52 - 27", Structure.COMPARE, [["52"], ["27", "?"]]),
        ("52 - 27", Structure.SMALLER_UNKNOWN, [["52"], ["?", "27"]]),
        ("52 + 27", Structure.TURNED, [["52", "27"], ["?"]]),
        ("? - 27 = 52", Structure.TAKE_FROM, [["27", "52"]]),
        ("4 x 36", Structure.EQUAL_GROUPS, [["36", "36", "36", "36"]]),
        ("4 x 36", Structure.TIMES_AS_MUCH, [["36"], ["", "", "", ""]]),
        ("87 / 4", Structure.SHARING, [["?", "?", "?", "?", "?"]]),
        ("87 / 4", Structure.MEASURING_OUT, [["4", "", "?"]]),
        ("9 - 2 x 3/4", Structure.SEVERAL_STEPS, [["3/4", ""], ["", "?"]]),
    ],
)
def test_the_bars_of_a_situation(typed: str, structure: Structure, rows: list[list[str]]) -> None:
    """By hand: what is written in each bar, from left to right."""
    shape = story_shape(read_statement(typed), structure)
    assert shape is not None
    scene = story_scenes(shape, shape)[0]
    words = {name: _written(one) for name, one in _words(scene).items()}
    found: list[list[str]] = []
    for name in _boxes(scene):
        if "/part/" in name:
            row, _, at = name.removeprefix("story/").partition("/part/")
            found += [[] for _ in range(int(row) + 1 - len(found))]
            found[int(row)].append(words.get(f"story/{row}/number/{at}", ""))
    assert found == rows


def _written(one: Words) -> str:
    """What is written, as it is typed."""
    if one.caption is HOLE:
        return "?"
    return text(one.caption) if isinstance(one.caption, Quantity) else ""


def test_own_words_do_not_say_whether_a_number_is_shared_or_measured_out() -> None:
    """A measure measures out; a plain number may do either, and then nothing is drawn."""
    assert story_shape(read_statement("87 / 4"), None) is None
    assert story_shape(read_statement("9 lb / 2 lb"), None) is not None
    assert story_shape(read_statement("9:45 to 11:20"), None) is None
