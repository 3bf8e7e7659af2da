import pytest

from onewhole.languages.english.speech import named, say
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import mixed, places
from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_answer, read_statement
from onewhole.statements.statement import Relation

SAID = [
    ("7 2/6 - 3 5/6", "seven and two sixths minus three and five sixths"),
    ("1/2 + 2/2", "one half plus two halves"),
    ("3/4", "three fourths"),
    ("3 0/6", "three and zero sixths"),
    ("100/100 + 1/12", "one hundred hundredths plus one twelfth"),
    ("7/24", "seven twenty-fourths"),
    ("100/24", "one hundred over twenty-four"),
    ("110/44", "one hundred ten forty-fourths"),
    ("7/103", "seven over one hundred three"),
    ("3/1", "three over one"),
    ("5.2 - 2.07", "five point two minus two point zero seven"),
    ("05.2", "zero five point two"),
    ("304", "three hundred four"),
    ("4 tens 12 ones - 27", "four tens twelve ones minus twenty-seven"),
    ("1 hundred 12 tens 3 ones", "one hundred, twelve tens three ones"),
    ("4 ones 12 tenths", "four ones twelve tenths"),
    ("12 tenths", "zero ones twelve tenths"),
    ("12/10", "twelve tenths"),
    ("5 ft 2 in - 1 ft 1 in", "five feet two inches minus one foot one inch"),
    ("2 h 1 min", "two hours one minute"),
    ("7 2/6 = 6 ?/6", "seven and two sixths equals six and blank sixths"),
    ("9/? = 3/4", "nine over blank equals three fourths"),
    ("? + 2 = 5", "blank plus two equals five"),
    ("5/6 ? 7/8", "five sixths compared with seven eighths"),
    ("5/6 < 7/8", "five sixths is less than seven eighths"),
    ("7/8 > 5/6", "seven eighths is greater than five sixths"),
    ("3 x 2/5", "three times two fifths"),
    ("6 - (3 - 1)", "six minus open bracket three minus one close bracket"),
    ("(44 - 23)/6", "open bracket forty-four minus twenty-three close bracket over six"),
]


@pytest.mark.parametrize(("written", "said"), SAID)
def test_what_is_said(written: str, said: str) -> None:
    """The words for what stands on the line."""
    assert say(read_statement(written)) == said


@pytest.mark.parametrize(
    ("quantity", "said"),
    [
        (Quantity(places(5), (4, 12, 0, 0, 0)), "four ten-thousands twelve thousands"),
        (Quantity(mixed(6), (0, 8)), "zero and eight sixths"),
    ],
)
def test_quantities_as_a_strategy_makes_them(quantity: Quantity, said: str) -> None:
    """Zero wholes are said, large places are named in one word."""
    assert say(quantity) == said


def test_parts_alone() -> None:
    """An answer may be a sign, or a number that is none."""
    assert say(Relation.GREATER) == "is greater than"
    assert say(Impossible(3, 3)) == "three and three over zero"


@pytest.mark.parametrize(
    ("written", "said"),
    [
        ("-1 1/2", "minus one and one half"),
        ("-1/-2", "minus one over minus two"),
        ("1/-2", "one over minus two"),
    ],
)
def test_minus_signs_are_said_where_they_stand(written: str, said: str) -> None:
    """A child's answer with signs is said as it stands."""
    assert say(read_answer(written)) == said


def test_class_denominators_are_always_named() -> None:
    """Halves to twelfths and hundredths never come with "over", whatever the numerator."""
    assert all(named(top, bottom) for top in range(300) for bottom in (*range(2, 13), 100))


def test_the_ear_tells_numbers_apart() -> None:
    """Without hyphens and commas, as they are heard, no two of 90,000 fractions sound the same."""
    heard = {
        say(Quantity(mixed(bottom), (None, top))).replace("-", " ")
        for top in range(300)
        for bottom in range(1, 301)
    }
    assert len(heard) == 90_000
