"""Two roads over fractions of measures and of money: the working, and SymPy's product of rational numbers.

The space: every fraction below one of 2, 3, 4, 5, 6, 8, 10 and 12 parts, of 1 to 5 of each larger unit with
and without some of the smaller one, and of dollars and cents, where it comes out even; 1 and 2 with every
third of them, and six decimals.
ONEWHOLE_WHOLE_WALK=1 walks all of it.
"""

from collections.abc import Iterator

import pytest
from sympy import Rational  # type: ignore[import-untyped]

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.tongue import SPANISH
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import printed
from onewhole.number.quantity import Quantity, overfull
from onewhole.pictures.bar import bar
from onewhole.pictures.scene import Box, Stroke
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from onewhole.sheets.spaces.measures import PAIRS
from onewhole.statements.expression import Times
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from onewhole.working.working import Working
from tests.agreement.test_spoken_script import all_true
from tests.kit.exact import keeps
from tests.kit.heard import Heard
from tests.kit.how_much import sample
from tests.kit.spanish_claims import spanish_true

WORDS = ClassWords()
PARTS = (2, 3, 4, 5, 6, 8, 10, 12)


def amounts() -> Iterator[str]:
    """Yield amounts of each pair of units, and of money."""
    for large, small in PAIRS:
        for count in range(1, 6):
            yield f"{count} {large}"
            yield f"{count} {large} {2 * count} {small}"
    for dollars in (1, 6, 12, 40, 240):
        yield f"${dollars}"
        yield f"${dollars}.{5 * dollars % 100:02}"


def problems() -> list[str]:
    """Return every problem of the space, even or not."""
    fractions = [f"{top}/{parts}" for parts in PARTS for top in range(1, parts)]
    more = [f"{count} {fraction}" for count in (1, 2) for fraction in fractions[::3]]
    decimals = ["0.5", "0.25", "0.4", "1.5", "2.25", "0.05"]
    return [f"{part} of {amount}" for amount in amounts() for part in (*fractions, *more, *decimals)]


def worked(problem: str) -> Working | None:
    """Work a problem; None where a share is no whole number of the smallest unit."""
    try:
        return work(read_statement(problem), REGROUP_FIRST)
    except NotWorkedError:
        return None


def fraction_and_amount(working: Working) -> tuple[Quantity, Quantity]:
    """Return the two numbers of a product, the fraction first."""
    asked = working.statement
    assert isinstance(asked, Question)
    assert isinstance(asked.asked, Times)
    left, right = asked.asked.left, asked.asked.right
    assert isinstance(left, Quantity)
    assert isinstance(right, Quantity)
    return left, right


def test_every_part_is_what_sympy_finds() -> None:
    """The answer is the product, and nothing of it is overfull; every line keeps it."""
    every = problems()
    even = 0
    for problem in every[:: sample(97, 31, 1)]:
        working = worked(problem)
        if working is None:
            continue
        part, amount = fraction_and_amount(working)
        wanted = Rational(part.value.numerator, part.value.denominator) * Rational(
            amount.value.numerator, amount.value.denominator
        )
        assert isinstance(working.answer, Quantity)
        assert (working.answer.value.numerator, working.answer.value.denominator) == (wanted.p, wanted.q)
        assert not overfull(working.answer)
        assert all(keeps(line.says, working.answer.value) for line in working.lines)
        even += 1
    assert even >= len(every[:: sample(97, 31, 1)]) // 3


def test_every_sentence_reads_back_true() -> None:
    """Told in English and in Spanish, whatever is said of a part of an amount is true of it."""
    for problem in problems()[:: sample(611, 97, 7)]:
        if (working := worked(problem)) is None:
            continue
        item = Item("1", working.statement, answer(working.statement), working)
        heard = Heard(item, WORDS, frozenset({"one"}))
        for chapter in script(Lesson("", "", "", WORDS, (item,))).chapters[1:-1]:
            assert all_true(chapter, heard)["sentences"]
        for line in working.lines[1:]:
            assert line.because is not None
            for sentence in SPANISH.working.reason(line.because, WORDS):
                assert spanish_true(sentence, heard), (problem, sentence)


@pytest.mark.parametrize(
    ("problem", "right"),
    [
        # By hand.
        ("3/4 of 2 ft", "1 ft 6 in"),
        ("2 ft x 3/4", "1 ft 6 in"),
        ("1/4 x 1 gal", "1 qt"),
        ("5/6 of 2 h 30 min", "2 h 5 min"),
        ("2/5 of 1 kg", "400 g"),
        ("3/4 of $12", "$9"),
        ("3/4 of $3.20", "$2.40"),
        ("3/2 of 1 gal", "1 gal 2 qt"),
        ("1 1/2 x 2 ft", "3 ft"),
        ("2 ft x 1 1/2", "3 ft"),
        ("0.5 x 2 ft", "1 ft"),
        ("0.4 of 3 kg", "1 kg 200 g"),
        ("2.5 x $4", "$10"),
        ("1 1/2 x $3.20", "$4.80"),
        ("4/8 of 3 ft", "1 ft 6 in"),
    ],
)
def test_parts_by_hand(problem: str, right: str) -> None:
    """Typed with of and with a sign, the fraction in front or behind, and marked with the unit."""
    working = worked(problem)
    assert working is not None
    assert printed(working.answer) == right
    one = Problem("1", read_statement(problem), problem)
    assert mark(expect(one), read_written(right, one)).verdict is Verdict.RIGHT


@pytest.mark.parametrize("problem", ["2/3 of 1 in", "1/7 of 2 ft", "1 1/2 x 3 in", "1/3 of $1", "0.3 x 1 yd"])
def test_what_is_not_even_is_not_worked(problem: str) -> None:
    """A share that is no whole number of the smallest unit, of a mixed number and of a decimal too."""
    assert worked(problem) is None


@pytest.mark.parametrize(
    ("problem", "pattern", "wrote"),
    [
        ("3/4 of 2 ft", "V11", "6 ft"),
        ("3/4 of 2 ft", "V12", "6 in"),
        ("5/6 x 2 h 30 min", "V11", "12 h 30 min"),
        ("5/6 x 2 h 30 min", "V12", "25 min"),
        ("$12 x 3/4", "V11", "$36"),
        ("$12 x 3/4", "V12", "$3"),
        ("1/4 of 2 ft", "V11", None),
        ("1/4 of 2 ft", "V12", None),
        ("3/4 x 12", "V12", None),
        ("1 1/2 x 2 ft", "V16", "2 ft"),
        ("1 1/2 x 2 ft", "V11", None),
        ("2.5 x $4", "V16", "$8"),
        ("3/2 x 2 ft", "V16", None),
        ("0.5 x 2 ft", "V16", None),
    ],
)
def test_what_the_patterns_write(problem: str, pattern: str, wrote: str | None) -> None:
    """By hand; one share that is asked for shows nothing."""
    slip = by_id(pattern).slip(read_statement(problem))
    assert (None if slip is None else printed(slip.wrote)) == wrote


@pytest.mark.parametrize(("problem", "taken", "shares"), [("3/4 of 2 ft", 3, 4), ("2/5 x $15", 2, 5)])
def test_the_bar_is_cut_into_equal_shares(problem: str, taken: int, shares: int) -> None:
    """The hatched part is as long as so many shares, and every cut is a share further."""
    working = worked(problem)
    assert working is not None
    pieces = bar(working).scenes[-1].pieces
    boxes = {piece.name: piece.shape for piece in pieces if isinstance(piece.shape, Box)}
    share = boxes["whole"].width / shares
    assert boxes["part/0"].width == share * taken
    strokes = {piece.name: piece.shape for piece in pieces if isinstance(piece.shape, Stroke)}
    cuts = {stroke.x for name, stroke in strokes.items() if name.startswith("share/")}
    ends = {boxes["whole"].x + share * at for at in range(1, shares)} - {boxes["part/1"].x}
    assert cuts == ends


@pytest.mark.parametrize(
    ("problem", "times", "rest"),
    [("1 1/2 x 2 ft", 1, (1, 2)), ("2.25 x $8", 2, (1, 4)), ("8/3 of 6 ft", 2, (2, 3))],
)
def test_the_bar_of_more_than_once_has_the_amount_each_time(
    problem: str, times: int, rest: tuple[int, int]
) -> None:
    """The amount as often as it is taken whole, and what is left of it; their sum is asked for."""
    working = worked(problem)
    assert working is not None
    pieces = bar(working).scenes[0].pieces
    wide = {piece.name: piece.shape.width for piece in pieces if isinstance(piece.shape, Box)}
    assert [name for name in wide if name.startswith("part/")] == [f"part/{at}" for at in range(times + 1)]
    assert len({wide[f"part/{at}"] for at in range(times)}) == 1
    assert wide[f"part/{times}"] * rest[1] == wide["part/0"] * rest[0]
    assert not [piece for piece in pieces if piece.name.startswith("share/")]
