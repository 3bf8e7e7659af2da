"""Two roads over factors and multiples: every number of the grade, divided by every smaller one.

The space: the factors of 1 to 100 (4.OA.B.4, CCSSM 2010) and of the numbers to 200 that are read, and the
multiples of one digit. `make test` walks all of it: it is small.
"""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import printed, text
from onewhole.number.quantity import whole
from onewhole.pictures.choosing import picture
from onewhole.pictures.picture import Picture
from onewhole.pictures.scene import Box
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from onewhole.statements.expression import Times
from onewhole.statements.listing import LARGEST, Listing, ListSort
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Comparison, NumberRow
from onewhole.statements.tokens import ReadingError
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.listing import work_listing
from tests.agreement.test_spoken_script import all_true
from tests.kit.heard import Heard
from tests.kit.how_much import sample

WORDS = ClassWords("strip", "strips")


def by_trial(number: int) -> list[int]:
    """Every number that goes into it, by taking it off again and again."""
    found = []
    for by in range(1, number + 1):
        left = number
        while left >= by:
            left -= by
        if not left:
            found.append(by)
    return found


def asked(typed: str) -> Listing:
    """Read what lists numbers; it is written again as it was read."""
    found = read_statement(typed)
    assert isinstance(found, Listing)
    assert read_statement(text(found)) == found
    return found


def test_the_factors_of_every_number_of_the_grade() -> None:
    """Each line is a product that makes the number, and the last one has all numbers that go into it."""
    for number in range(1, LARGEST + 1, sample(3, 1, 1)):
        working = work_listing(asked(f"factors of {number}"))
        products = [line.says for line in working.lines[1:-1]]
        pairs = []
        for says in products:
            assert isinstance(says, Comparison)
            assert isinstance(says.left, Times)
            first, second = says.left.left, says.left.right
            pairs.append((first.value, second.value))  # type: ignore[union-attr]
        assert all(first * second == number for first, second in pairs)
        last = working.lines[-1].says
        assert isinstance(last, NumberRow)
        assert [int(one) for one in last.values] == by_trial(number)
        assert answer(working.statement) == working.answer == last


def test_the_multiples_of_one_digit() -> None:
    """They are those numbers up to the end into which the digit goes."""
    for step in range(1, 10):
        for most in range(step, 10 * step + 1, 3):
            found = work_listing(asked(f"multiples of {step} to {most}")).answer
            assert isinstance(found, NumberRow)
            assert [int(one) for one in found.values] == [
                n for n in range(1, most + 1) if step in by_trial(n)
            ]


def test_every_sentence_reads_back_true() -> None:
    """Told in full, whatever is said of a list is true of it."""
    problems = [f"factors of {number}" for number in range(2, 101, sample(9, 4, 1))]
    problems += [f"multiples of {step} to {5 * step + 2}" for step in range(3, 10)]
    for problem in problems:
        statement = asked(problem)
        working = work_listing(statement)
        item = Item("1", statement, answer(statement), working)
        for chapter in script(Lesson("", "", "", WORDS, (item,))).chapters[1:-1]:
            assert all_true(chapter, Heard(item, WORDS, frozenset({"one"})))["sentences"]


def test_each_pair_is_a_rectangle_of_the_same_area() -> None:
    """The sides are the two numbers, and all have as many squares as the number says."""
    for number in (1, 7, 12, 36, 60, 97, 100):
        working = work_listing(asked(f"factors of {number}"))
        drawn = picture(working)
        assert isinstance(drawn, Picture)
        boxes = [piece.shape for piece in drawn.scenes[-1].pieces if isinstance(piece.shape, Box)]
        assert len({box.width * box.height for box in boxes}) == 1
        ratios = {box.width / box.height for box in boxes}
        assert ratios == {whole(pair[1]).value / pair[0] for pair in working.statement.pairs}  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("problem", "right"),
    [
        # ../shared/domain/check-values-2.csv, FAC01: OpenStax Prealgebra 2e, Find Multiples and Factors.
        ("factors of 72", "1, 2, 3, 4, 6, 8, 9, 12, 18, 24, 36, 72"),
        # FAC02 and FAC03, the same section: 83 is prime, 77 is 7 x 11.
        ("factors of 83", "1, 83"),
        ("factors of 77", "1, 7, 11, 77"),
    ],
)
def test_published_examples(problem: str, right: str) -> None:
    """What the source prints is what the working reaches."""
    assert printed(work_listing(asked(problem)).answer) == right


def test_the_primes_to_100() -> None:
    """25 numbers to 100 have just two factors, the first 2 and the last 97 (FAC22 of the same file)."""
    primes = [
        number
        for number in range(1, 101)
        if len(Listing(ListSort.FACTORS, whole(number)).found) == len((1, number))
    ]
    assert (len(primes), primes[0], primes[-1]) == (25, 2, 97)


@pytest.mark.parametrize(
    ("problem", "written", "verdict"),
    [
        ("factors of 12", "1, 2, 3, 4, 6, 12", Verdict.RIGHT),
        ("factors of 12", "1, 12, 2, 6, 3, 4", Verdict.RIGHT),
        ("factors of 12", "12; 6; 4; 3; 2; 1", Verdict.RIGHT),
        ("factors of 12", "2, 3, 4, 6", Verdict.WRONG),
        ("factors of 12", "1, 2, 3, 4, 5, 6, 12", Verdict.WRONG),
        ("multiples of 7 to 30", "28, 7, 21, 14", Verdict.RIGHT),
        ("multiples of 7 to 30", "14, 21, 28", Verdict.WRONG),
    ],
)
def test_a_list_is_right_in_any_order(problem: str, written: str, verdict: Verdict) -> None:
    """As long as nothing is missing, and nothing is there that does not belong."""
    one = Problem("1", asked(problem), problem)
    assert mark(expect(one), read_written(written, one)).verdict is verdict


@pytest.mark.parametrize(
    ("problem", "pattern", "wrote"),
    [
        ("factors of 36", "X01", "2, 3, 4, 6, 9, 12, 18"),
        ("factors of 36", "X02", "1, 2, 3, 4, 6"),
        ("factors of 7", "X03", "7, 14, 21, 28, 35"),
        ("multiples of 4 to 20", "X04", "8, 12, 16, 20"),
        ("multiples of 4 to 20", "X05", "1, 2, 4"),
    ],
)
def test_what_the_patterns_write(problem: str, pattern: str, wrote: str) -> None:
    """By hand, and recognised in any order."""
    slip = by_id(pattern).slip(asked(problem))
    assert slip is not None
    assert printed(slip.wrote) == wrote
    one = Problem("1", asked(problem), problem)
    turned = ", ".join(reversed(wrote.split(", ")))
    assert pattern in mark(expect(one), read_written(turned, one)).patterns


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("factors of 5000", "factors are asked of numbers up to 200"),
        ("factors of 1/2", "factors are asked of whole numbers from 1 on"),
        ("multiples of 7", "multiples have an end, and factors have none"),
        ("multiples of 7 to 700", "so many multiples cannot be listed; 1 to 15 can"),
        ("factors", "it is not clear which factors or multiples are asked for"),
    ],
)
def test_what_is_refused_says_why(typed: str, says: str) -> None:
    """In words, with what to type."""
    with pytest.raises(ReadingError) as refused:
        read_statement(typed)
    assert refused.value.what == says
    assert refused.value.remedy
