"""Items of published fraction tests: every strategy that suits gives the exact answer.

The item texts and answers are facts and are given in our own layout, with the source beside each table.
"""

import csv
from pathlib import Path

import pytest

from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_expression, read_quantity
from onewhole.working.questions import suiting
from tests.kit.exact import amount, keeps
from tests.kit.worked import all_workings, question

#: Source: K. K. Tatsuoka (1984), final report NIE-G-81-0002: 20 fraction-subtraction items, given to 536
#: middle-school students; published with C. Tatsuoka (2002), Journal of the Royal Statistical Society C 51,
#: 337-350, and in two open R data packages. Answers: exact, computed. The item text was read in three places.
SUBTRACTION = (
    ("1", "5/3 - 3/4", "11/12"),
    ("2", "3/4 - 3/8", "3/8"),
    ("3", "5/6 - 1/9", "13/18"),
    ("4", "3 1/2 - 2 3/2", "0"),
    ("5", "4 3/5 - 3 4/10", "1 1/5"),
    ("6", "6/7 - 4/7", "2/7"),
    ("7", "3 - 2 1/5", "4/5"),
    ("8", "2/3 - 2/3", "0"),
    ("9", "3 7/8 - 2", "1 7/8"),
    ("10", "4 4/12 - 2 7/12", "1 3/4"),
    ("11", "4 1/3 - 2 4/3", "1"),
    ("12", "11/8 - 1/8", "1 1/4"),
    ("12, as two of the three places print it", "1 1/8 - 1/8", "1"),
    ("13", "3 3/8 - 2 5/6", "13/24"),
    ("14", "3 4/5 - 3 2/5", "2/5"),
    ("15", "2 - 1/3", "1 2/3"),
    ("16", "4 5/7 - 1 4/7", "3 1/7"),
    ("17, as two of the three places print it", "7 3/5 - 4/5", "6 4/5"),
    ("17, as one place prints it", "7 3/5 - 2 4/5", "4 4/5"),
    ("18", "4 1/10 - 2 8/10", "1 3/10"),
    ("19", "4 - 1 4/3", "1 2/3"),
    ("19, a variant from memory", "7 - 1 4/3", "4 2/3"),
    ("20", "4 1/3 - 1 5/3", "1 2/3"),
)

#: Source: sums and one difference among 22 items on fractions, worked by 191 first-year middle-school pupils
#: in Italy; an open R data package on school arithmetic, in part L. Stefanutti and D. de Chiusole (2017).
#: Answers: exact, computed.
SUMS = (
    ("7/10 + 9/10", "1 6/10"),
    ("7/5 + 1/5", "1 3/5"),
    ("2 - 3/4", "1 1/4"),
    ("8/13 + 5/2", "81/26"),
    ("8/12 + 4/15", "14/15"),
    ("2/9 + 5/6", "19/18"),
    ("2/7 + 3/14", "1/2"),
    ("5/9 + 1/6", "13/18"),
)

#: From the same test: read and weighed, not worked line by line.
PRODUCTS = (
    ("7/11 x 2/3", "14/33"),
    ("2/5 x 15/4", "3/2"),
)

#: Source: Common Core State Standards for Mathematics (2010), the standards' own samples.
STANDARDS = (
    ("3/10 + 4/100", "34/100"),  # 4.NF.C.5
    ("2/5 + 1/2", "9/10"),  # 5.NF.A.2
    ("2/3 + 5/4", "23/12"),  # 5.NF.A.1
)


def check(typed: str, answer: str) -> None:
    """Every strategy that suits gives this amount, line by line, and two roads or more suit."""
    wanted = amount(read_quantity(answer))
    workings = all_workings(typed)
    assert len(workings) >= 2
    assert set(workings) == {strategy.key for strategy in suiting(question(typed))}
    for working in workings.values():
        assert isinstance(working.answer, Quantity)
        assert amount(working.answer) == wanted
        assert all(keeps(line.says, wanted) for line in working.lines)
        assert len(working.checks) == 3


@pytest.mark.parametrize(("item", "typed", "answer"), SUBTRACTION)
def test_twenty_subtraction_items(item: str, typed: str, answer: str) -> None:
    """Unlike denominators, whole minus mixed, fraction parts greater than one: all come out exactly."""
    check(typed, answer)


@pytest.mark.parametrize(("typed", "answer"), SUMS)
def test_sums_of_a_second_published_test(typed: str, answer: str) -> None:
    """Sums with unlike denominators, and a whole minus a fraction."""
    check(typed, answer)


@pytest.mark.parametrize(("typed", "answer"), STANDARDS)
def test_the_standards_own_sums(typed: str, answer: str) -> None:
    """The sums that the standards print."""
    check(typed, answer)


@pytest.mark.parametrize(("typed", "answer"), PRODUCTS)
def test_products_of_fractions_are_weighed(typed: str, answer: str) -> None:
    """Products are read, and their value is exact; grade 5 works them (5.NF.B.4)."""
    assert amount(read_expression(typed)) == amount(read_quantity(answer))


def test_the_table_of_items_is_the_published_one() -> None:
    """The twenty items above are those of the open table, where it is at hand."""
    table = Path("../shared/data/fraction_items.csv")
    if not table.exists():
        pytest.skip("the open table of items is not beside the project")
    with table.open(encoding="utf-8", newline="") as rows:
        published = {(row["text"], row["answer_mixed"]) for row in csv.DictReader(rows)}
    assert len(published) == 20
    assert published <= {(typed, answer) for _, typed, answer in SUBTRACTION}
