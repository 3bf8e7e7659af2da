"""Equalities on one or many lines, as a pupil or a teacher writes them."""

import pytest

from onewhole.statements.chain import Chain
from onewhole.statements.reading import read_chains, read_expression
from onewhole.statements.tokens import ReadingError


def ends(chain: Chain) -> list[tuple[int, int]]:
    """Where each link of a chain begins."""
    return [(link.line, link.column) for link in chain.links]


class TestChains:
    def test_one_line(self) -> None:
        """Every link with its place."""
        (chain,) = read_chains("7 2/6 - 3 5/6 = 6 8/6 - 3 5/6 = 3 3/6")
        assert ends(chain) == [(1, 1), (1, 17), (1, 33)]
        assert chain.first_false() is None

    @pytest.mark.parametrize(
        "typed",
        [
            "7 2/6 - 3 5/6\n  = 6 8/6 - 3 5/6\n  = 3 3/6",
            "7 2/6 - 3 5/6 =\n6 8/6 - 3 5/6 =\n3 3/6",
            "7 2/6 - 3 5/6 =\n = 6 8/6 - 3 5/6\n\n = 3 3/6\n",
        ],
    )
    def test_many_lines(self, typed: str) -> None:
        """The equals sign stands at the end of one line, or at the beginning of the next, or both."""
        (chain,) = read_chains(typed)
        assert [link.says for link in chain.links] == [
            read_expression("7 2/6 - 3 5/6"),
            read_expression("6 8/6 - 3 5/6"),
            read_expression("3 3/6"),
        ]

    def test_many_chains(self) -> None:
        """A line that does not begin with an equals sign begins a new chain."""
        chains = read_chains("2 + 3 = 5\n\n4 + 4 = 8\n = 10 - 2", line=7, column=3)
        assert [ends(chain) for chain in chains] == [[(7, 3), (7, 11)], [(9, 1), (9, 9), (10, 4)]]

    @pytest.mark.parametrize(
        ("typed", "place", "what"),
        [
            ("", (1, 1), "there is no equality to check"),
            ("\n\n", (1, 1), "there is no equality to check"),
            ("4", (1, 1), "only one side of an equality stands here"),
            ("4 =", (1, 1), "only one side of an equality stands here"),
            ("4 = 4\n5", (2, 1), "only one side of an equality stands here"),
            ("= 4", (1, 3), "nothing stands before the equals sign: here there is “4”"),
            ("4 == 5", (1, 4), "a number is missing: here there is “=”"),
            ("4 < 5", (1, 3), "an equals sign is missing: here there is “<”"),
            ("4 = 4\n = 2/0", (2, 6), "a whole cannot be cut into 0 equal parts: here there is “0”"),
            ("4 = 2 + ?", (1, 9), "a missing number has no place in this problem"),
            ("5 ft + 2 = 7", (1, 1), "a length and a number cannot be put together"),
        ],
    )
    def test_what_is_refused(self, typed: str, place: tuple[int, int], what: str) -> None:
        """Each with its line and column."""
        with pytest.raises(ReadingError) as refused:
            read_chains(typed)
        assert ((refused.value.line, refused.value.column), refused.value.what) == (place, what)
