"""Which kind of reply an answer is."""

import pytest

from onewhole.marking.diagnosis.reply import OTHER, RIGHT, Reply, ReplyKind, reply
from onewhole.statements.reading import read_answer
from tests.kit.odds import known

ASKED = known(("9 5/8 - 4 6/8", "3/4 ? 5/6"))[0]


@pytest.mark.parametrize(
    ("written", "sort"),
    [
        ("4 7/8", ReplyKind.RIGHT),
        ("39/8", ReplyKind.RIGHT),
        ("5 1/8", ReplyKind.WRITTEN),
        ("5 7/8", ReplyKind.WRITTEN),
        ("41/8", ReplyKind.AMOUNT),
        ("5 14/16", ReplyKind.AMOUNT),
        ("5 2/8", ReplyKind.NEAR),
        ("77", ReplyKind.OTHER),
        ("<", ReplyKind.OTHER),
        ("3 3/0", ReplyKind.OTHER),
    ],
)
def test_a_number_is_right_as_a_pattern_writes_it_or_beside(written: str, sort: ReplyKind) -> None:
    """The right amount in any form; raw answers of patterns; their amounts; one unit beside; the rest."""
    assert reply(ASKED[0], read_answer(written)).sort is sort


def test_replies_of_one_sort_are_told_apart_by_what_was_written() -> None:
    """A01's answer and A02's are two replies; the same answer spelt otherwise is one."""
    first, second, again = (reply(ASKED[0], read_answer(text)) for text in ("5 1/8", "5 7/8", "5 and 1/8"))
    assert first == again != second


def test_a_sign_is_right_or_of_a_pattern_or_another() -> None:
    """For a comparison the three signs are all there is, and a number is something else."""
    sorts = [reply(ASKED[1], read_answer(text)).sort for text in ("<", ">", "=", "5")]
    assert sorts[0] is ReplyKind.RIGHT
    assert sorts[1:3] == [ReplyKind.WRITTEN, ReplyKind.WRITTEN]
    assert sorts[3] is ReplyKind.OTHER


def test_two_replies_need_no_key() -> None:
    """There is one way to be right, and one to be something else."""
    assert (Reply(ReplyKind.RIGHT), Reply(ReplyKind.OTHER)) == (RIGHT, OTHER)
