"""An invented pupil works the steps, and slips inside a step."""

from collections import Counter
from fractions import Fraction

import pytest

from lab.pages import room12
from lab.pupils import SUBTRACTING, Kind, Only, Pupil
from lab.steps import page_of
from lab.trials import problems
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.misconceptions.pattern import Family
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem

PAGE = problems(room12())
MANY = 60
SOUND = Pupil("K01", Kind.SOUND)


def verdicts(cells: tuple[str, ...], page: tuple[Problem, ...] = PAGE) -> list[Verdict]:
    """How each cell is marked."""
    return [mark(expect(one), read_written(cell)).verdict for one, cell in zip(page, cells, strict=True)]


def pages(pupil: Pupil, many: int = MANY) -> list[tuple[str, ...]]:
    """What a pupil writes on the page, on so many nights."""
    return [page_of(pupil, PAGE, f"night {at}") for at in range(many)]


def test_a_page_comes_from_its_seed() -> None:
    """The same pupil writes the same under one seed and something else under another."""
    pupil = Pupil("K01", Kind.SHAKY, slip=0.3, once=0.3)
    assert page_of(pupil, PAGE, "a") == page_of(pupil, PAGE, "a")
    assert len(set(pages(pupil))) > MANY // 2


def test_without_slips_everything_is_right() -> None:
    """Whichever strategy a pupil takes, the answers are right and in the usual form."""
    right = tuple(text(answer(problem.statement)) for problem in PAGE)
    assert set(pages(SOUND)) == {right}


@pytest.mark.parametrize("idea", SUBTRACTING)
def test_a_steady_pupil_writes_what_the_pattern_writes(idea: str) -> None:
    """On each problem that shows the pattern its own answer, on all others the right one."""
    wanted = []
    for problem in PAGE:
        slip = by_id(idea).slip(problem.statement)
        wanted.append(text(slip.wrote if slip else answer(problem.statement)))
    assert page_of(Pupil("K01", Kind.STEADY, (idea,)), PAGE, "steady") == tuple(wanted)


def test_turning_back_is_as_often_as_set() -> None:
    """A pupil back at the right way four times in ten is right on about as many that show the idea."""
    cells = pages(Pupil("K01", Kind.SWITCHING, ("A01",), back=0.4))
    showing = [at for at, problem in enumerate(PAGE) if by_id("A01").slip(problem.statement)]
    marked = [verdicts(row) for row in cells]
    right = sum(row[at] is Verdict.RIGHT for row in marked for at in showing)
    assert abs(right / (len(cells) * len(showing)) - 0.4) < 0.08


def test_a_pair_acts_each_on_its_own_problems() -> None:
    """A01 where a whole must be opened, A10 where none need be; where both could act, the first does."""
    cells = page_of(Pupil("K01", Kind.PAIRED, ("A01", "A10")), PAGE, "pair")
    for problem, cell in zip(PAGE, cells, strict=True):
        slips = [slip for key in ("A01", "A10") if (slip := by_id(key).slip(problem.statement))]
        assert cell == text(slips[0].wrote if slips else answer(problem.statement))


def test_two_ideas_in_turn_take_turns() -> None:
    """On one problem now the one and now the other is written, about equally often."""
    cells = Counter(row[6] for row in pages(Pupil("K01", Kind.IN_TURN, ("A01", "A02"))))
    assert set(cells) == {"5 1/8", "5 7/8"}
    assert min(cells.values()) > MANY // 4


def test_a_dropped_idea_is_never_tried_again() -> None:
    """A scattered pupil writes some pattern's answer each time, and could be using a new one each time."""
    pupil = Pupil("K01", Kind.SCATTERED, once=1.0)
    for row in pages(pupil, 10):
        fits = [
            {
                slip.pattern
                for slip in shows(problem.statement)
                if not slip.form
                and by_id(slip.pattern).family is not Family.FACT
                and text(slip.wrote) == cell
            }
            for problem, cell in zip(PAGE, row, strict=True)
        ]
        assert all(fits)
        assert distinct(fits)


def distinct(sets: list[set[str]], taken: frozenset[str] = frozenset()) -> bool:
    """Say whether one can be taken from each set, none twice."""
    if not sets:
        return True
    rest = sorted(sets, key=lambda one: len(one - taken))
    return any(distinct(rest[1:], taken | {key}) for key in sorted(rest[0] - taken))


def test_a_slip_is_one_unit_in_some_line() -> None:
    """A sound pupil who slips in every problem is wrong nearly always, mostly by one piece or one whole."""
    near = wrong = 0
    for row in pages(Pupil("K01", Kind.SHAKY, slip=1.0)):
        for problem, cell in zip(PAGE, row, strict=True):
            right, read = answer(problem.statement), read_written(cell).read
            assert isinstance(right, Quantity)
            assert isinstance(read, Quantity)
            step = abs(read.value - right.value)
            wrong += step > 0
            near += step in {1, right.ladder.finest, Fraction(1, expect(problem).steps[-1].denominator)}
    assert wrong > 0.9 * MANY * len(PAGE)
    assert near > 0.8 * wrong


def test_a_slip_before_the_false_line_is_carried_through_the_idea() -> None:
    """A pupil of A02 who slips writes other answers than A02's own, and not only those one unit beside it."""
    steps = set()
    own = by_id("A02").slip(PAGE[6].statement)
    assert own is not None
    assert isinstance(own.wrote, Quantity)
    for row in pages(Pupil("K01", Kind.STEADY, ("A02",), slip=1.0), 200):
        read = read_written(row[6]).read
        assert isinstance(read, Quantity)
        steps.add(read.value - own.wrote.value)
    assert {Fraction(1, 8), Fraction(-1, 8), Fraction(1), Fraction(-1)} <= steps


def test_a_number_copied_wrongly_is_worked_as_it_was_copied() -> None:
    """Every answer is the right one to a problem that differs in one digit."""
    rows = pages(Pupil("K01", Kind.SOUND, copied=1.0))
    answers = {row[6] for row in rows}
    assert len(answers) > 10
    assert "4 7/8" not in answers or len(answers) > 1
    assert any(verdict is Verdict.WRONG for verdict in verdicts(rows[0]))


def test_another_form_is_the_same_amount() -> None:
    """A pupil who always writes another form is right all the same."""
    rows = pages(Pupil("K01", Kind.SOUND, other_form=1.0))
    assert all(verdict is Verdict.RIGHT for row in rows for verdict in verdicts(row))
    assert text(answer(PAGE[6].statement)) not in {row[6] for row in rows}


def test_blanks_and_numbers_out_of_the_air() -> None:
    """An empty cell is empty; a number out of the air has the look of an answer."""
    assert set(page_of(Pupil("K01", Kind.SOUND, blank=1.0), PAGE, "blank")) == {""}
    air = pages(Pupil("K01", Kind.SCATTERED, once=1.0, air=1.0))
    assert len({row[6] for row in air}) > MANY // 3
    assert all(isinstance(read_written(cell).read, Quantity) for row in air for cell in row)


def test_columns_are_worked_too() -> None:
    """Whole numbers: right without slips, the pattern's answer with one, readable with slips and copies."""
    page = problems(("703 - 245", "143 - 28", "301 - 27"))
    assert page_of(SOUND, page, "columns") == ("458", "115", "274")
    assert page_of(Pupil("K01", Kind.STEADY, ("E01",)), page, "columns")[0] == "542"
    sloppy = page_of(Pupil("K01", Kind.SHAKY, slip=1.0, copied=0.5), page, "columns")
    assert all(isinstance(read_written(cell).read, Quantity) for cell in sloppy)


@pytest.mark.parametrize("only", Only)
def test_an_idea_on_some_problems_only(only: Only) -> None:
    """A14 shows on every difference with a whole to take: written on some of them, and not on all."""
    cells = page_of(Pupil("K01", Kind.PARTLY, ("A14",), only=only), PAGE, "partly")
    whole = page_of(Pupil("K01", Kind.STEADY, ("A14",)), PAGE, "partly")
    right = [text(answer(problem.statement)) for problem in PAGE]
    used = [cell == by for cell, by, own in zip(cells, whole, right, strict=True) if by != own]
    assert 0 < sum(used) < len(used)
    assert all(cell in {by, own} for cell, by, own in zip(cells, whole, right, strict=True))


def test_two_digits_change_places() -> None:
    """Every answer has the digits of the right one, in another order."""
    cells = page_of(Pupil("K01", Kind.SOUND, transposed=1.0), PAGE, "transposed")
    right = [text(answer(problem.statement)) for problem in PAGE]
    assert all(sorted(cell) == sorted(own) for cell, own in zip(cells, right, strict=True))
    assert all(cell != own or len(set(own) - {" ", "/"}) == 1 for cell, own in zip(cells, right, strict=True))
