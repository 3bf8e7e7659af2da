"""What a group got wrong."""

from onewhole.marking.grouping.missed import missed
from tests.kit.answers import all_right, grouped, marked, page

PAGE = page()
RIGHT = all_right(PAGE)
#: Nothing that a pattern writes, so that both pupils are in one group: 3 twice, 2 and 10 once.
ROWS = {
    "K01": [RIGHT[0], RIGHT[1], "9 1/7", *RIGHT[3:9], "9 1/7", *RIGHT[10:]],
    "K02": [RIGHT[0], "9 1/7", "9 1/7", *RIGHT[3:]],
    "K03": RIGHT,
}


def test_the_most_often_missed_comes_first_then_the_order_of_the_page() -> None:
    """Counted in one group; blanks and right answers do not count, nor do pupils of other groups."""
    talk, further = grouped(PAGE, ROWS)
    assert missed(talk, marked(PAGE, ROWS)) == ("3", "2", "10")
    assert missed(further, marked(PAGE, ROWS)) == ()
