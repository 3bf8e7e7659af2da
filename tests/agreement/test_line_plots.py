"""Two roads over line plots: what the working reaches, and the measurements one by one.

The space: three values in fourths or eighths with up to four marks each, and every question that is asked of
them. The second road tallies the measurements by `collections.Counter` (`tests/kit/exact.py`).
"""

from collections.abc import Iterator
from contextlib import suppress
from fractions import Fraction
from itertools import pairwise, product

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import LANGUAGES
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.pencil import Letters, lettered
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import printed, text
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, with_mark
from onewhole.pictures.choosing import picture
from onewhole.pictures.labels import BLANK, DIGITS, across
from onewhole.pictures.limits import BOARD, PAGE, PicturePaper
from onewhole.pictures.line_plot import plot_scene
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Scene, Stroke, Words
from onewhole.problems.answer import answer
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.standard_code import standard_code
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.shared_plots import shared_plots
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.reading import read_statement
from onewhole.statements.tokens import ReadingError
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.line_plot import work_plot
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import STRATEGIES
from tests.agreement.test_spoken_script import all_true
from tests.kit.exact import keeps, plotted
from tests.kit.heard import Heard
from tests.kit.how_much import sample

WORDS = ClassWords("strip", "strips")
AXES = (("1/4", "2/4", "3/4 in"), ("1/2", "5/8", "1 1/8"), ("1/2", "2 1/4", "4 3/4 lb"))
ASKED = (
    "count", "count {1}", "count above {1}", "count below {1}", "count at least {0}", "count at most {1}",
    "total", "total above {0}", "total {2}", "share", "most", "spread",
)  # fmt: skip


def asked(typed: str) -> PlotQuestion:
    """Read a question about a line plot; it is written again as it was read."""
    found = read_statement(typed)
    assert isinstance(found, PlotQuestion)
    assert read_statement(text(found)) == found
    return found


def every() -> Iterator[PlotQuestion]:
    """Every question of the space that has an answer, some of them in the usual run."""
    for at, (axis, counts, ask) in enumerate(product(AXES, product(range(5), repeat=3), ASKED)):
        if at % sample(61, 17, 1):
            continue
        values = [value.split(" in")[0].split(" lb")[0] for value in axis]
        marks = ", ".join(f"{value}: {count}" for value, count in zip(axis, counts, strict=True))
        with suppress(ReadingError):  # such as the most common of two values with as many marks
            yield asked(f"plot {marks}; {ask.format(*values)}")


def test_every_answer_is_that_of_the_measurements() -> None:
    """Each line keeps it, by every strategy, and the answer is the one that a key has."""
    for at, question in enumerate(every()):
        working = work_plot(question, STRATEGIES[at % len(STRATEGIES)])
        assert all(keeps(line.says, plotted(question)) for line in working.lines)
        assert isinstance(working.answer, Quantity)
        assert working.answer.value == plotted(question)
        assert answer(question).value == plotted(question)  # type: ignore[union-attr]


def test_every_sentence_reads_back_true() -> None:
    """Told in full, whatever is said of a line plot is true of it; every language says it."""
    for question in list(every())[:: sample(9, 5, 1)]:
        item = Item("1", question, answer(question), work_plot(question, REGROUP_FIRST))
        for chapter in script(Lesson("", "", "", WORDS, (item,))).chapters[1:-1]:
            assert all_true(chapter, Heard(item, WORDS, frozenset({"one"})))["sentences"]
        for language in LANGUAGES.values():
            because = work_plot(question, REGROUP_FIRST).lines[1].because
            assert because is not None
            assert text_of(language.working.reason(because, WORDS))


@pytest.mark.parametrize(
    ("typed", "right"),
    [
        # ../shared/domain/check-values-2.csv, LPL01 to LPL04: own rows in the shape of 4.MD.B.4 and 5.MD.B.2.
        ("plot 1/2, 5/8, 3/4, 3/4, 1 1/8 in; longest less shortest", "5/8 in"),
        ("plot 1/4, 1/4, 1/2, 3/4 yd; total", "1 3/4 yd"),
        ("plot 1/8: 2, 1/4: 3, 1/2 lb: 1; total", "1 4/8 lb"),
        ("plot 1/4, 1/4, 1/2, 5/8, 7/8 L; share", "4/8 L"),
        # Whole units, worked by hand.
        ("plot 3: 2, 5: 3, 8: 1; total", "29"),
        ("plot 3, 5, 5, 4; most", "5"),
    ],
)
def test_examples(typed: str, right: str) -> None:
    """What the source has is what the working reaches, in pieces of the problem."""
    found = work_plot(asked(typed), REGROUP_FIRST).answer
    assert isinstance(found, Quantity)
    wanted = read_statement(right)
    assert found.value == wanted.asked.value, printed(found)  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("problem", "written", "verdict"),
    [
        ("plot 1/4: 2, 1/2: 3, 3/4 in: 1; total", "2 3/4 in", Verdict.RIGHT),
        ("plot 1/4: 2, 1/2: 3, 3/4: 1; total", "11/4", Verdict.RIGHT),
        ("plot 1/4: 2, 1/2: 3, 3/4 in: 1; count", "6", Verdict.RIGHT),
        ("plot 1/4: 2, 1/2: 3, 3/4 in: 1; most", "2/4", Verdict.RIGHT),
        ("plot 1/4: 2, 1/2: 3, 3/4 in: 1; count", "3", Verdict.WRONG),
    ],
)
def test_answers_are_marked(problem: str, written: str, verdict: Verdict) -> None:
    """By their amount, in any form of it."""
    one = Problem("1", asked(problem), problem)
    assert mark(expect(one), read_written(written, one)).verdict is verdict


@pytest.mark.parametrize(
    ("problem", "pattern", "wrote"),
    [
        # The second examples of ../shared/domain/error-patterns-2.csv, family S.
        ("plot 1 1/2: 0, 2: 5, 2 1/2: 6; total", "S01", "4 1/2"),
        ("plot 1 1/2: 0, 2: 2, 2 1/2: 6; total", "S02", "8"),
        ("plot 1 1/2: 6, 2: 1, 2 1/2: 4; total", "S03", "20"),
        ("plot 1 1/2: 6, 2: 0, 2 1/2: 2; count", "S04", "3"),
        ("plot 1 1/2: 1, 2: 6, 2 1/2: 1; count", "S05", "16"),
        ("plot 1 1/2: 0, 2: 1, 2 1/2: 6; most", "S06", "6"),
        ("plot 1 1/2: 1, 2: 6, 2 1/2: 4; spread", "S08", "5"),
        ("plot 1 1/2: 4, 2: 6, 2 1/2: 5; above 2", "S09", "1"),
        ("plot 1 1/2: 0, 2: 6, 2 1/2: 2; above 2", "S10", "8"),
    ],
)
def test_what_the_patterns_write(problem: str, pattern: str, wrote: str) -> None:
    """As the list of patterns has it, and recognised when a child writes it."""
    slip = by_id(pattern).slip(asked(problem))
    assert slip is not None
    assert printed(slip.wrote) == wrote
    assert by_id(pattern).case(asked(problem)) is not None
    one = Problem("1", asked(problem), problem)
    assert pattern in mark(expect(one), read_written(wrote, one)).patterns


NO_SUCH_VALUES = "a line plot has whole numbers, fractions and mixed numbers of one unit"
NOT_ALL = "only how many and the total are asked of some of the measurements"
FAR_APART = "from the least value to the greatest there are 500 places on the line"
OTHER_UNIT = "what is compared with the measurements is in another unit"


@pytest.mark.parametrize(
    ("typed", "says", "column"),
    [
        ("plot 1/4: 2, 1/2: 3", "a semicolon and what is asked of the line plot are missing", 20),
        ("plot 1/4: 2; banana", "it is not clear what is asked of the line plot", 14),
        ("plot 1/4: 2, 1/4: 3; total", "this value stands here twice", 13),
        ("plot 1/4: x, 1/2: 1; total", "behind the colon stands how many there are", 10),
        ("plot 1/4: 2,, 1/2: 3; total", "a value is missing", 13),
        ("plot 1/4: 2, 1/2; total", "some values have counts and others have none", 6),
        ("plot 1/4: 2, 1/2: 2; most", "no one value is most common: two have as many marks", 22),
        ("plot 1/100: 1, 5: 3; total", FAR_APART, 6),
        ("plot 1/4: 99; total", "more than 10 marks stand above one value", 6),
        ("plot 1/4 in: 2, 1/2 cm: 3; total", "the measurements of a line plot are in one unit", 6),
        ("plot 0.5: 2, 0.75: 1; total", NO_SUCH_VALUES, 6),
        ("plot 1/4: 2, 1/2: 3; count above", "a value is missing", 33),
        ("plot 1/4: 2, 1/2 in: 3; count above 3 cm", OTHER_UNIT, 25),
        ("plot 1/4: 1; count", "a line plot with 1 mark is not drawn", 6),
        ("plot 1/4: 3; spread", "all measurements are the same, so none is greater", 14),
        ("plot 1/4: 2, 1/2: 3; total above 9", "no measurement is meant, so there is no total", 22),
        ("plot 1/4: 2, 1/2: 3; most above 1/4", NOT_ALL, 22),
    ],
)
def test_hostile_text_is_refused_at_its_place(typed: str, says: str, column: int) -> None:
    """With what is wrong, where, and what to do."""
    with pytest.raises(ReadingError) as caught:
        read_statement(typed, line=7)
    assert (caught.value.what, caught.value.line, caught.value.column) == (says, 7, column)
    assert caught.value.remedy


def crosses(scene: Scene) -> dict[str, tuple[Stroke, Stroke]]:
    """The two strokes of each cross."""
    strokes = {piece.name: piece.shape for piece in scene.pieces if isinstance(piece.shape, Stroke)}
    names = {name.rpartition("/")[0] for name in strokes if name.startswith("cross")}
    return {name: (strokes[f"{name}/down"], strokes[f"{name}/up"]) for name in names}


@pytest.mark.parametrize("paper", [PAGE, BOARD])
@pytest.mark.parametrize(
    "typed",
    [
        "plot 1/4: 2, 1/2: 3, 5/8 in: 1; count",
        "plot 1/8: 1, 2: 10; count",
        "plot 1 7/8: 3, 2 3/8 in: 2; count",
        "plot 3: 2, 19: 3; count",
        "plot 1/3: 2, 1 2/3 c: 3; count",
    ],
)
def test_crosses_stand_exactly_over_their_ticks(typed: str, paper: PicturePaper) -> None:
    """Places are in proportion, no labels touch or leave the paper, and each cross is over its tick."""
    plot = asked(typed).plot
    scene = plot_scene(plot, paper)
    ticks = {
        p.name: p.shape for p in scene.pieces if isinstance(p.shape, Stroke) and p.name.startswith("tick")
    }
    gaps = {b.x - a.x for a, b in pairwise(ticks.values())}
    assert len(gaps) == 1
    for name, (down, up) in crosses(scene).items():
        tick = ticks[f"tick/{name.split('/')[1]}"]
        assert (down.x + down.to_x) / 2 == (up.x + up.to_x) / 2 == tick.x
        assert down.to_x - down.x < gaps.copy().pop()
    assert len(crosses(scene)) == plot.many
    labels = [piece.shape for piece in scene.pieces if isinstance(piece.shape, Words)]
    for one, other in pairwise(labels):
        room = (across(one.caption) + across(other.caption)) / 2 + BLANK  # type: ignore[arg-type]
        assert other.x - one.x >= room
    assert scene.width <= paper.width
    assert all(label.x - across(label.caption) / 2 >= 0 for label in labels)  # type: ignore[arg-type]
    assert all(label.x + across(label.caption) / 2 <= scene.width for label in labels)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("typed", "first", "last"),
    [
        ("plot 1/4: 2, 1/2: 3, 5/8 in: 1; count", "0 in", "1 in"),
        ("plot 3 1/4: 1, 3 1/2 lb: 2; count", "3 lb", "4 lb"),
        ("plot 4/4: 1, 6/4: 2; count", "4/4", "2"),
        ("plot 3: 1, 7: 2; most", "3", "7"),
        ("plot 1 7/8: 1, 3 7/8: 1, 3 5/8 in: 1; total", "1 in", "4 in"),
        # Two wholes in sixteenths do not all stand on the line.
        ("plot 1/16: 1, 1 1/16: 2; total", "0", "1 1/16"),
    ],
)
def test_an_axis_begins_and_ends_with_whole_numbers(typed: str, first: str, last: str) -> None:
    """From the whole number below to the one above the values: common practice, no source."""
    axis = asked(typed).plot.axis
    assert (text(axis[0]), text(axis[-1])) == (first, last)
    ticks = asked(typed).plot.ticks
    assert set(ticks) <= set(axis)


def test_a_mixed_number_is_drawn_with_its_unit() -> None:
    """Behind the fraction and no wider than what is kept for it, as a whole number has it."""
    number = with_mark(Quantity(mixed(8), (2, 1)), "in")
    drawn = lettered(Words(Fraction(20), Fraction(9), number, DIGITS), WORDS)
    letters = [part for part in drawn if isinstance(part, Letters)]
    assert [part.text for part in letters] == ["2", "1", "8", "in"]
    assert letters[0].x < letters[1].x < letters[3].x < 20 + across(number) / 2


def test_what_is_read_is_framed() -> None:
    """Only the stacks that the question is about, once the plot is read; nothing before."""
    working = work_plot(asked("plot 1/4: 2, 1/2: 3, 5/8 in: 1; total above 1/4"), REGROUP_FIRST)
    drawn = picture(working)
    assert drawn is not None
    assert drawn.kind is PictureKind.PLOT
    framed = [[p.name for p in scene.pieces if p.name.startswith("frame")] for scene in drawn.scenes]
    assert framed[0] == []
    assert set(map(tuple, framed[1:])) == {("frame/4", "frame/5")}
    for language in LANGUAGES.values():
        assert "1/4" in text_of(language.working.picture(drawn.scenes[-1], WORDS))


def test_others_like_it_ask_the_same() -> None:
    """Other measurements with as many values and marks, and the same question."""
    for question in list(every())[:: sample(8, 4, 1)]:
        found = next(parallel(question), None)
        if found is None:
            continue
        assert isinstance(found, PlotQuestion)
        assert (found.asks, found.plot.many) == (question.asks, question.plot.many)
        assert found.plot != question.plot
        assert read_statement(text(found)) == found


def test_standards() -> None:
    """By the grade of the sheet; sharing a total out equally is grade 5 (CCSSM 2010)."""
    total, share = asked("plot 1/4, 1/2; total"), asked("plot 1/4, 1/2; share")
    assert [standard_code(total, grade) for grade in (3, 4, 5)] == ["3.MD.B.4", "4.MD.B.4", "5.MD.B.2"]
    assert standard_code(share, 4) == "5.MD.B.2"


def test_neighbors_share_a_plot() -> None:
    """One drawing for the problems about it that follow one another."""
    plot = "plot 3: 1, 4: 2;"
    typed = f"1. {plot} count\n# Look again.\n2. {plot} most\n3. {plot} total\n4. 9 - 4"
    found = dict(shared_plots(read_sheet(typed).items))
    assert {label: shared.labels for label, shared in found.items()} == {"1": "1", "2": "2\N{EN DASH}3"}
