"""Three roads over primes and multiples: the working, counting by every number, and SymPy.

The space: whether each number that is read (1 to 200; 4.OA.B.4, CCSSM 2010, has 1 to 100) is prime, and
whether each number to 100 is a multiple of each digit from 2 on, and each digit a factor of it.
ONEWHOLE_WHOLE_WALK=1 walks all of it.
"""

import pytest
from sympy import divisors, isprime  # type: ignore[import-untyped]

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.tongue import SPANISH
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Verdict, mark
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import printed, text
from onewhole.number.quantity import whole
from onewhole.pictures.arrays import arrays
from onewhole.pictures.picture import Picture
from onewhole.pictures.scene import Box, Look
from onewhole.problems.answer import answer
from onewhole.problems.problem import Problem
from onewhole.statements.expression import quantities
from onewhole.statements.factor_question import LARGEST, FactorQuestion, WordAnswer
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Comparison
from onewhole.statements.tokens import ReadingError
from onewhole.walkthroughs.lesson import Item, Lesson
from onewhole.walkthroughs.script import script
from onewhole.working.factor_question import work_factor_question
from onewhole.writers.json_lines import value_text
from tests.agreement.test_spoken_script import all_true
from tests.kit.exact import keeps, worded
from tests.kit.heard import Heard
from tests.kit.how_much import sample
from tests.kit.spanish_claims import spanish_true

WORDS = ClassWords()
DIGITS = range(2, 10)


def asked(typed: str) -> FactorQuestion:
    """Read a question that a word answers; it is written again as it was read."""
    found = read_statement(typed)
    assert isinstance(found, FactorQuestion)
    assert read_statement(text(found)) == found
    return found


def by_sympy(number: int) -> str:
    """Say what a number is, by its divisors."""
    return "neither" if len(divisors(number)) == 1 else "prime" if isprime(number) else "composite"


def the_space() -> list[FactorQuestion]:
    """Every question of the space, or some of each sort; 1, 2, 4, 49 and 121 in any case."""
    numbers = sorted({1, 2, 4, 49, 121, *range(1, LARGEST + 1, sample(23, 7, 1))})
    found = [FactorQuestion(whole(number)) for number in numbers]
    every = [(number, step) for number in range(1, 101) for step in DIGITS]
    return found + [
        FactorQuestion(whole(number), whole(step), of_factor=of_factor)
        for at, (number, step) in enumerate(every[:: sample(61, 13, 1)])
        for of_factor in sample((at % 2 > 0,), (at % 2 > 0,), (False, True))
    ]


def test_every_word_is_found_by_three_roads() -> None:
    """The word, and each line: on its left side the number, on its right what makes it, nothing tried twice.

    A prime is tried by every prime whose square is no more; a composite up to its smallest factor but 1.
    """
    for question in the_space():
        number, working = question.number.parts, work_factor_question(question)
        if question.step is None:
            assert by_sympy(number) == worded(question) == value_text(working.answer)
        else:
            assert (number % question.step.parts == 0) == (
                worded(question) == "yes" == value_text(working.answer)
            )
        assert all(
            keeps(line.says, worded(question)) or isinstance(line.says, Comparison) for line in working.lines
        )
        tried = []
        for line in working.lines[1:-1]:
            assert isinstance(line.says, Comparison)
            assert line.says.left == question.number
            by, times, *left = (int(one.value) for one in quantities(line.says.right))
            assert by * times + sum(left) == number
            assert all(0 < one < by for one in left)
            tried.append(by)
        if question.step is None:
            first = divisors(number)[1] if number > 1 else 1
            wanted = [by for by in range(2, number) if isprime(by) and by * by <= number and by <= first]
            assert tried == wanted


def test_every_sentence_reads_back_true() -> None:
    """Told in English and in Spanish, whatever is said of a number is true of it."""
    for question in the_space()[:: sample(6, 3, 1)]:
        item = Item("1", question, answer(question), work_factor_question(question))
        heard = Heard(item, WORDS, frozenset({"one"}))
        for chapter in script(Lesson("", "", "", WORDS, (item,))).chapters[1:-1]:
            assert all_true(chapter, heard)["sentences"]
        for line in item.working.lines[1:] if item.working else ():
            assert line.because is not None
            for sentence in SPANISH.working.reason(line.because, WORDS):
                assert spanish_true(sentence, heard), sentence


def test_a_prime_keeps_the_rectangle_of_one_row() -> None:
    """Every rectangle is as large as the number but for the squares hatched below; a prime ends with one."""
    for number in (1, 2, 7, 12, 37, 49, 91, 97, 100)[:: sample(2, 1, 1)]:
        drawn = arrays(work_factor_question(asked(f"is {number} prime or composite")))
        assert isinstance(drawn, Picture)
        for scene in drawn.scenes:
            boxes = [piece for piece in scene.pieces if isinstance(piece.shape, Box)]
            one = next(box.shape.height for box in boxes if box.name == f"array/1x{number}")  # type: ignore[union-attr]
            areas: list[int] = []
            for box in boxes:
                area = box.shape.width * box.shape.height / one**2  # type: ignore[union-attr]
                if box.look is Look.FILLED:
                    areas[-1] += int(area)
                else:
                    areas.append(int(area))
            assert set(areas) == {number}
        last = [piece for piece in drawn.scenes[-1].pieces if piece.name.startswith("array/")]
        assert len(last) == (2 if by_sympy(number) == "composite" else 1)


@pytest.mark.parametrize(
    ("problem", "right"),
    [
        # ../shared/domain/check-values-2.csv, FAC02 to FAC11 and FAC21: OpenStax Prealgebra 2e, section Find
        # Multiples and Factors, worked examples 1 to 4 and 8; FAC21 is the usual definition.
        ("is 83 prime or composite", "prime"),
        ("is 77 prime or composite", "composite"),
        ("is 489 a multiple of 2", "no"),
        ("is 3,714 a multiple of 2", "yes"),
        ("is 579 a multiple of 5", "no"),
        ("is 880 a multiple of 5", "yes"),
        ("is 425 a multiple of 10", "no"),
        ("is 350 a multiple of 10", "yes"),
        ("is 645 a multiple of 3", "yes"),
        ("is 10,519 a multiple of 3", "no"),
        ("is 1 prime or composite", "neither"),
        # FAC07 and FAC08 asked the other way round: a number is a multiple of each of its factors (4.OA.B.4).
        ("is 10 a factor of 425?", "no"),
        ("factor of 350 or not: 10", "yes"),
        ("is 645 divisible by 3", "yes"),
    ],
)
def test_published_examples(problem: str, right: str) -> None:
    """What the source prints is what the working reaches."""
    assert printed(work_factor_question(asked(problem)).answer) == right


def test_the_primes_to_100() -> None:
    """25 numbers to 100 are prime, the first 2 and the last 97 (FAC22 of the same file)."""
    primes = [number for number in range(1, 101) if FactorQuestion(whole(number)).found is WordAnswer.PRIME]
    assert (len(primes), primes[0], primes[-1]) == (25, 2, 97)


@pytest.mark.parametrize(
    ("problem", "written", "verdict"),
    [
        ("is 37 prime or composite", "prime", Verdict.RIGHT),
        ("is 37 prime or composite", " P. ", Verdict.RIGHT),
        ("is 37 prime or composite", "primo", Verdict.RIGHT),
        ("is 37 prime or composite", "37 is prime", Verdict.RIGHT),
        ("is 37 prime or composite", "c", Verdict.WRONG),
        ("is 37 prime or composite", "Compuesto", Verdict.WRONG),
        ("is 37 prime or composite", "37", Verdict.WRONG),
        ("is 37 prime or composite", "maybe", Verdict.UNREADABLE),
        ("is 37 prime or composite", "-", Verdict.BLANK),
        ("is 1 prime or composite", "neither", Verdict.RIGHT),
        ("is 1 prime or composite", "ninguno", Verdict.RIGHT),
        ("is 84 a multiple of 7", "Yes", Verdict.RIGHT),
        ("is 84 a multiple of 7", "sí", Verdict.RIGHT),
        ("is 84 a multiple of 7", "n", Verdict.WRONG),
        ("is 84 a multiple of 7", "prime", Verdict.UNREADABLE),
        ("is 7 a factor of 84", "Yes", Verdict.RIGHT),
        ("is 84 a factor of 7", "n", Verdict.RIGHT),
        ("is 1 a factor of 84", "no", Verdict.WRONG),
    ],
)
def test_a_word_is_read_whole_or_by_its_first_letter(problem: str, written: str, verdict: Verdict) -> None:
    """In English and in Spanish; what is no such word is left to the teacher."""
    one = Problem("1", asked(problem), problem)
    assert mark(expect(one), read_written(written, one)).verdict is verdict


@pytest.mark.parametrize(
    ("pattern", "shows", "not_shown"),
    [
        # By hand: odd and composite, or 2; 1; a product with a factor above 10, odd, not ending in 5.
        ("X06", ("9", "15", "51", "57", "91", "2"), ("1", "7", "4", "100")),
        ("X07", ("1",), ("2", "9")),
        ("X08", ("33", "51", "57", "77", "91"), ("9", "49", "55", "22", "37")),
    ],
)
def test_what_the_patterns_of_primes_show(
    pattern: str, shows: tuple[str, ...], not_shown: tuple[str, ...]
) -> None:
    """A pattern shows where its word is wrong, and a pupil's word is then told with it."""
    for number in not_shown:
        assert by_id(pattern).slip(asked(f"is {number} prime or composite")) is None
    for number in shows:
        typed = f"is {number} prime or composite"
        one = Problem("1", asked(typed), typed)
        slip = by_id(pattern).slip(one.statement)
        assert slip is not None
        assert pattern in mark(expect(one), read_written(printed(slip.wrote), one)).patterns


@pytest.mark.parametrize(
    ("problem", "ids"),
    [
        # By hand: 84 ends in 4, no multiple of 7; 26 in 6, a multiple of 3; 49 in 9, and 44 in 4.
        ("is 84 a multiple of 7", {"X09", "X10"}),
        ("is 26 a multiple of 3", {"X10"}),
        ("is 49 a multiple of 3", {"X10"}),
        ("is 45 a multiple of 5", {"X09"}),
        ("is 44 a multiple of 8", set()),
        ("is 7 a multiple of 7", set()),
        ("is 7 a factor of 84", {"X09", "X10"}),
        ("is 3 a factor of 26", {"X10"}),
        ("is 84 a factor of 7", {"X09"}),
    ],
)
def test_what_the_patterns_of_multiples_show(problem: str, ids: set[str]) -> None:
    """The factor for the multiple, and the last digit alone."""
    statement = asked(problem)
    assert {one for one in ("X09", "X10") if by_id(one).slip(statement)} == ids


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("is 5000 prime", "this is asked of numbers up to 200"),
        ("is 1/2 prime or composite", "this is asked of whole numbers from 1 on"),
        ("is 0 prime", "this is asked of whole numbers from 1 on"),
        ("is 84 a multiple of 700", "multiples are asked of numbers from 2 to 100"),
        ("is 84 a multiple", "it is not clear what is asked of this number"),
        ("is 700 a factor of 84", "factors are asked of numbers from 1 to 100"),
        ("is 7 a part of 84", "it is not clear what is asked of this number"),
    ],
)
def test_what_is_refused_says_why(typed: str, says: str) -> None:
    """In words, with what to type."""
    with pytest.raises(ReadingError) as refused:
        read_statement(typed)
    assert refused.value.what == says
    assert refused.value.remedy
