"""The strategies line by line, as they are taught, with the same numbers throughout.

Source: the strategies are common practice, no source; that a class may be taught any of them is 4.NF.B.3.c,
Common Core State Standards for Mathematics (2010). The worked problem is our own: of a kite 7 2/6 strips of
paper long, 3 5/6 strips are cut off.
"""

from fractions import Fraction

import pytest

from onewhole.number.quantity import whole
from onewhole.number.unit import ONE, Unit
from onewhole.statements.expression import Expression
from onewhole.statements.reading import read_chains, read_expression, read_quantity
from onewhole.working.checks import Estimate, Undone
from onewhole.working.reasons.columns import ColumnAdded, ColumnOpened, ColumnTaken
from onewhole.working.reasons.renaming import WholesInPieces
from onewhole.working.strategies.table import STRATEGIES, strategy_named
from onewhole.working.working import Working
from tests.kit.worked import all_workings, question, tried

TEN_ONES, HUNDRED = Unit(Fraction(10)), Unit(Fraction(100))

KITE = "7 2/6 - 3 5/6"

#: Subtraction: every line after the problem itself.
TAKEN = {
    "regroup_first": (
        "6 + 1 + 2/6 - 3 5/6",
        "6 + 6/6 + 2/6 - 3 5/6",
        "6 8/6 - 3 5/6",
        "(6 - 3) + (8/6 - 5/6)",
        "3 3/6",
    ),
    "wholes_first": (
        "7 2/6 - 3 - 5/6",
        "4 2/6 - 5/6",
        "3 + 1 + 2/6 - 5/6",
        "3 + 6/6 + 2/6 - 5/6",
        "3 8/6 - 5/6",
        "3 + (8/6 - 5/6)",
        "3 3/6",
    ),
    "to_fractions": (
        "(42/6 + 2/6) - (18/6 + 5/6)",
        "44/6 - 23/6",
        "(44 - 23)/6",
        "21/6",
        "18/6 + 3/6",
        "3 3/6",
    ),
    "count_up": (
        "(4 - 3 5/6) + (7 - 4) + (7 2/6 - 7)",
        "1/6 + 3 + 2/6",
        "3 3/6",
    ),
    "from_whole": (
        "(7 - 3 5/6) + 2/6",
        "(6 6/6 - 3 5/6) + 2/6",
        "3 1/6 + 2/6",
        "3 3/6",
    ),
    "equal_shift": (
        "(7 2/6 + 1/6) - (3 5/6 + 1/6)",
        "7 3/6 - 4",
        "3 3/6",
    ),
}

#: Addition, 2 4/5 + 1 3/5.
ADDED = {
    "units_apart": (
        "(2 + 1) + (4/5 + 3/5)",
        "3 7/5",
        "3 + 5/5 + 2/5",
        "4 2/5",
    ),
    "make_a_whole": (
        "(2 4/5 + 1/5) + (1 3/5 - 1/5)",
        "3 + 1 2/5",
        "4 2/5",
    ),
    "to_fractions": (
        "(10/5 + 4/5) + (5/5 + 3/5)",
        "14/5 + 8/5",
        "(14 + 8)/5",
        "22/5",
        "20/5 + 2/5",
        "4 2/5",
    ),
    "jump_on": (
        "2 4/5 + 1 + 3/5",
        "3 4/5 + 3/5",
        "3 4/5 + 1/5 + 2/5",
        "4 + 2/5",
        "4 2/5",
    ),
}

#: The same digits on six ladders: what is opened, and what is left.
RATIOS = (
    ("7 2/6 - 3 5/6", "6 8/6", "3 3/6"),
    ("52 - 27", "4 tens 12 ones", "25"),
    ("5.2 - 2.7", "4 ones 12 tenths", "2.5"),
    ("5 ft 2 in - 2 ft 7 in", "4 ft 14 in", "2 ft 7 in"),
    ("5 lb 2 oz - 2 lb 7 oz", "4 lb 18 oz", "2 lb 11 oz"),
    ("5 h 2 min - 2 h 7 min", "4 h 62 min", "2 h 55 min"),
    ("12 1/4 - 9 3/4", "11 5/4", "2 2/4"),
    ("304 - 128", "2 hundreds 9 tens 14 ones", "176"),
)

#: What is said in pieces about the same problem, also by strategies that have no lines of their own here.
SAID = """
7 2/6 = 6 + 1 + 2/6 = 6 + 6/6 + 2/6 = 6 8/6
6 8/6 - 3 5/6 = (6 - 3) + (8/6 - 5/6) = 3 3/6
7 2/6 - 3 = 4 2/6
4 2/6 = 3 8/6
3 8/6 - 5/6 = 3 3/6
5/6 = 2/6 + 3/6
4 2/6 - 2/6 = 4
4 - 3/6 = 3 3/6
7 2/6 = 42/6 + 2/6 = 44/6
3 5/6 = 18/6 + 5/6 = 23/6
44/6 - 23/6 = 21/6 = 18/6 + 3/6 = 3 3/6
3 5/6 + 1/6 = 4
4 + 3 = 7
7 + 2/6 = 7 2/6
1/6 + 3 + 2/6 = 3 3/6
7 - 3 5/6 = 3 1/6
3 1/6 + 2/6 = 3 3/6
7 2/6 + 1/6 = 7 3/6
7 3/6 - 4 = 3 3/6
7 - 3 = 4
2 + 1 = 3
4/5 + 3/5 = 7/5
3 7/5 = 3 + 5/5 + 2/5 = 4 2/5
2 4/5 + 1/5 = 3
1 3/5 - 1/5 = 1 2/5
3 + 1 2/5 = 4 2/5
14/5 + 8/5 = 22/5 = 4 2/5
2 4/5 + 1 = 3 4/5
3 4/5 + 1/5 = 4
4 + 2/5 = 4 2/5
304 = 2 hundreds 10 tens 4 ones = 2 hundreds 9 tens 14 ones
3 3/6 + 3 5/6 = 6 8/6 = 7 2/6
"""


def says(working: Working) -> list[object]:
    """What stands on the lines after the problem."""
    return [line.says for line in working.lines[1:]]


def read(lines: tuple[str, ...]) -> list[Expression]:
    """The same lines, typed."""
    return [read_expression(line) for line in lines]


def worked(typed: str, key: str) -> Working:
    """Work it by one strategy that suits."""
    found = tried(question(typed), strategy_named(key))
    assert isinstance(found, Working)
    return found


@pytest.mark.parametrize("key", TAKEN)
def test_a_difference_is_worked_as_it_is_taught(key: str) -> None:
    """7 2/6 - 3 5/6, by every strategy for subtraction, in full."""
    assert says(worked(KITE, key)) == read(TAKEN[key])


@pytest.mark.parametrize("key", ADDED)
def test_a_sum_is_worked_as_it_is_taught(key: str) -> None:
    """2 4/5 + 1 3/5, by every strategy for addition, in full."""
    assert says(worked("2 4/5 + 1 3/5", key)) == read(ADDED[key])


def test_no_strategy_is_missing() -> None:
    """Every strategy is described for the problem it suits, and no other one suits it."""
    assert set(all_workings(KITE)) == set(TAKEN)
    assert set(all_workings("2 4/5 + 1 3/5")) == set(ADDED)
    assert {strategy.key for strategy in STRATEGIES} == {"columns", *TAKEN, *ADDED}


#: In columns: every line after the problem itself, with what is written for it.
IN_COLUMNS = {
    "304 - 128": (
        ("2 hundreds 10 tens 4 ones - 128", ColumnOpened(HUNDRED, TEN_ONES, ONE, 4, 8, 2, 10, begins=True)),
        ("2 hundreds 9 tens 14 ones - 128", ColumnOpened(TEN_ONES, ONE, ONE, 4, 8, 9, 14, begins=False)),
        ("290 - 120 + 6", ColumnTaken(ONE, 14, 8, blank=False)),
        ("200 - 100 + 70 + 6", ColumnTaken(TEN_ONES, 9, 2, blank=False)),
        ("176", ColumnTaken(HUNDRED, 2, 1, blank=False)),
    ),
    "246 + 85 + 9": (
        ("240 + 80 + 20 + 0", ColumnAdded(ONE, TEN_ONES, (6, 5, 9), 0, outermost=False)),
        ("200 + 100 + 40 + 0", ColumnAdded(TEN_ONES, HUNDRED, (4, 8), 2, outermost=False)),
        ("340", ColumnAdded(HUNDRED, Unit(Fraction(1000)), (2,), 1, outermost=True)),
    ),
}


@pytest.mark.parametrize("typed", IN_COLUMNS)
def test_in_columns_line_by_line(typed: str) -> None:
    """Right to left, one line a column, and one for each unit that is regrouped (4.NBT.B.4, CCSSM 2010)."""
    working = all_workings(typed)["columns"]
    told = [(line.says, line.because) for line in working.lines[1:]]
    assert told == [(read_expression(says), because) for says, because in IN_COLUMNS[typed]]
    assert [line.says for line in working.brief()] == [working.lines[0].says, working.answer]


@pytest.mark.parametrize(("typed", "opened", "left"), RATIOS)
def test_one_idea_with_other_ratios(typed: str, opened: str, left: str) -> None:
    """Trade 1 of the larger unit for its worth in the smaller: only the ratio changes."""
    second = typed.split(" - ")[1]
    brief = [line.says for line in worked(typed, "regroup_first").brief()]
    assert brief[-2:] == read((f"{opened} - {second}", left))


def test_everything_that_is_said_is_true() -> None:
    """Every equals sign in the description of the strategies is true."""
    chains = read_chains(SAID)
    assert len(chains) == len(SAID.split("\n")) - 2
    assert [chain for chain in chains if chain.first_false() is not None] == []


def test_with_enough_pieces_nothing_is_opened() -> None:
    """Where no regrouping is needed, regrouping first and taking wholes first write no opened number."""
    assert says(worked("5 4/6 - 2 1/6", "regroup_first")) == read(("(5 - 2) + (4/6 - 1/6)", "3 3/6"))
    assert says(worked("5 4/6 - 2 1/6", "wholes_first")) == read(
        ("5 4/6 - 2 - 1/6", "3 4/6 - 1/6", "3 + (4/6 - 1/6)", "3 3/6")
    )


def test_jumps_may_join_to_a_whole() -> None:
    """From 2 1/6 up to 5 4/6 the jumps are 5/6, 2 and 4/6: 2 9/6, which is 3 3/6."""
    lines = read(
        (
            "(3 - 2 1/6) + (5 - 3) + (5 4/6 - 5)",
            "5/6 + 2 + 4/6",
            "2 9/6",
            "2 + 6/6 + 3/6",
            "3 3/6",
        )
    )
    assert says(worked("5 4/6 - 2 1/6", "count_up")) == lines


def test_one_jump_is_enough_within_a_whole() -> None:
    """With the same wholes a single jump leads up."""
    assert says(worked("3 5/6 - 3 1/6", "count_up")) == read(("4/6",))


def test_the_checks_of_the_worked_problem() -> None:
    """7 1/2 - 4 is about it, and it is not far from that; 3 3/6 + 3 5/6 is 7 2/6 again."""
    for working in all_workings(KITE).values():
        estimate, undone, _ = working.checks
        assert estimate == _estimate("7 1/2 - 4", "3 1/2", "3 1/4", "3 3/4")
        assert undone == Undone((read_expression("3 3/6 + 3 5/6"), read_expression("7 2/6")))


def _estimate(easy: str, about: str, low: str, high: str) -> Estimate:
    return Estimate(read_expression(easy), *map(read_quantity, (about, low, high)))


@pytest.mark.parametrize(
    ("typed", "easy", "about", "low", "high"),
    [
        ("9 5/8 - 4 6/8", "9 1/2 - 5", "4 1/2", "4 1/2", "5"),  # a little more from a little less
        ("2 4/5 + 1 3/5", "3 + 1 1/2", "4 1/2", "4 1/4", "4 3/4"),
        ("7/8 + 5/12", "1 + 1/2", "1 1/2", "1", "1 1/2"),
        ("1/8 + 2/8", "0 + 1/2", "1/2", "1/4", "3/4"),
        ("304 - 128", "300 - 100", "200", "150", "250"),
        ("1000000 - 345678", "1000000 - 300000", "700000", "650000", "700000"),
        ("4567 + 89", "4600 + 100", "4700", "4600", "4700"),
        ("9876 - 9812", "9900 - 9800", "100", "0", "100"),
        ("5.2 - 2.75", "5 - 3", "2", "2", "3"),
        ("0.45 + 0.3", "0.5 + 0.3", "0.8", "0.75", "0.8"),
        ("12.5 + 3.75", "13 + 4", "17", "16", "17"),
        ("5 h 2 min - 2 h 7 min", "5 h - 2 h", "3 h", "2 h 30 min", "3 h 30 min"),
        ("50 min + 25 min", "50 min + 30 min", "80 min", "75 min", "80 min"),
        ("$3.46 + $2.50", "$3 + $3", "$6", "$5.50", "$6.50"),
        ("300 + 200", "300 + 200", "500", "500", "500"),
    ],
)
def test_an_estimate_by_easy_numbers(typed: str, easy: str, about: str, low: str, high: str) -> None:
    """Halves for pieces, one place for whole numbers and decimals, the larger unit for measures."""
    for working in all_workings(typed).values():
        assert working.checks[0] == _estimate(easy, about, low, high)


def test_easy_numbers_below_zero_leave_the_bounds_alone() -> None:
    """5/8 - 3/8 - 2/8 would be 1/2 - 1/2 - 1/2."""
    for working in all_workings("5/8 - 3/8 - 2/8").values():
        assert working.checks[0] == Estimate(None, None, whole(0), read_quantity("1/4"))


def test_a_decimal_is_counted_by_what_a_one_is_worth() -> None:
    """28.53 has tens, and yet it is the one that is 100 hundredths. Common practice, no source."""
    found = tried(question("28.53 + 7.9"), strategy_named("to_fractions"))
    assert isinstance(found, Working)
    assert WholesInPieces(ONE, Unit(Fraction(1, 100)), 100) in [line.because for line in found.lines]
