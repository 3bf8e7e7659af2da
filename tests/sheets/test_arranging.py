from itertools import pairwise, permutations

from hypothesis import given
from hypothesis import strategies as st

from onewhole.sheets.arranging import IN_A_ROW, Hard, arranged, hard
from onewhole.sheets.page import FALL
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.to_fractions import TO_FRACTIONS


def made(rows: list[tuple[str, int]]) -> list[Hard]:
    """Problems with numbers of their own."""
    return [Hard(read_statement(f"{at + 50} - 1"), sort, score) for at, (sort, score) in enumerate(rows)]


def cost(order: tuple[Hard, ...]) -> tuple[int, int, int]:
    """What an order costs, said once more: too many in a row, falls, all falls together."""
    excess = run = 0
    leading = True
    for at, one in enumerate(order):
        again = at > 0 and order[at - 1].sort == one.sort
        leading = leading and (again or at == 0)
        run = run + 1 if again else 1
        excess += run > (max(IN_A_ROW, -(-len(order) // 4)) if leading else IN_A_ROW)
    drops = [max(0, a.score - b.score) for a, b in pairwise(order)]
    return excess, sum(drop >= FALL for drop in drops), sum(drops)


def climbs_by_sort(order: tuple[Hard, ...]) -> bool:
    """Say whether no sort falls."""
    sorts = {one.sort for one in order}
    rows = [[one.score for one in order if one.sort == sort] for sort in sorts]
    return all(row == sorted(row) for row in rows)


@given(st.lists(st.tuples(st.sampled_from("ab"), st.integers(0, 9)), max_size=7))
def test_no_order_is_better(rows: list[tuple[str, int]]) -> None:
    """Against all orders in which no sort falls."""
    problems = made(rows)
    found = arranged(problems)
    assert sorted(map(repr, found)) == sorted(map(repr, problems))
    assert climbs_by_sort(found)
    assert cost(found) == min(cost(order) for order in permutations(problems) if climbs_by_sort(order))


@given(
    st.lists(st.tuples(st.sampled_from("abc"), st.integers(0, 9)), max_size=12), st.permutations(range(12))
)
def test_the_order_that_comes_in_changes_nothing(rows: list[tuple[str, int]], order: list[int]) -> None:
    """A page is the same however its problems were found."""
    problems = made(rows)
    mixed = [problems[at] for at in order if at < len(problems)]
    assert arranged(mixed) == arranged(problems)


def test_eight_and_four_never_more_than_three_in_a_row() -> None:
    """The usual page of twelve."""
    found = arranged(made([("plain", 2)] * 4 + [("regrouping", 6)] * 8))
    assert cost(found)[0] == 0
    assert found[0].sort == "plain"


def test_how_hard_is_as_the_class_was_taught() -> None:
    """A strategy with more lines is harder."""
    asked = read_statement("7 2/6 - 3 5/6")
    first, second = hard(asked, REGROUP_FIRST), hard(asked, TO_FRACTIONS)
    assert first.sort == second.sort == "subtract, regrouping"
    assert first.score < second.score
