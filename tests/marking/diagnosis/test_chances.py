"""How likely each kind of reply is."""

import pytest

from onewhole.marking.diagnosis.chances import (
    AKIN_BESIDE,
    AKIN_WRITES,
    CAREFUL,
    CARELESS,
    MEANS_RIGHT,
    MILLION,
    SCATTERED,
    Chances,
    Slips,
    akin_to,
    as_line,
    chances,
)
from onewhole.marking.diagnosis.reply import OTHER, RIGHT, Reply, ReplyKind, reply
from onewhole.statements.ordering_reading import number_row
from onewhole.statements.reading import read_answer, read_quantity
from tests.kit.odds import known

EIGHT = "order 1/9, 1/8, 1/7, 1/6, 1/5, 1/4, 1/3, 1/2"
TYPED = (
    "9 5/8 - 4 6/8",
    "3/4 ? 5/6",
    "7 2/6 = 6 ?/6",
    "143 - 28",
    "3 x 2/5",
    "5 ft 2 in - 2 ft 7 in",
    "3/8 + 2/8",
    EIGHT,
    "order 1/8, 1/2, 1/4",
)
ASKED = known(TYPED)[0]
TABLES = [chances(asked) for asked in ASKED]


def _of(table: Chances, given: Reply, intention: str, slip: int = 50_000) -> int:
    return table.of(given, intention, slip, CARELESS)


@pytest.mark.parametrize("table", TABLES, ids=TYPED)
def test_every_row_is_a_share_of_a_million(table: Chances) -> None:
    """What is meant adds up exactly; what falls beside, and ideas used once, up to rounding."""
    for row in table.meant.values():
        assert sum(row.values()) == MILLION
    for spread in (*table.beside.values(), table.once):
        assert MILLION - 100 <= sum(spread.values()) <= MILLION
        assert min(spread.values()) >= 0


@pytest.mark.parametrize("table", TABLES, ids=TYPED)
@pytest.mark.parametrize("slips", [CAREFUL, CARELESS, SCATTERED])
def test_over_all_replies_the_chances_make_a_whole(table: Chances, slips: Slips) -> None:
    """For every intention and any share of slips, up to rounding: no other reply has a chance."""
    for intention in (*table.meant, *map(akin_to, table.ideas)):
        for slip in (20_000, 500_000):
            total = sum(table.of(given, intention, slip, slips) for given in table.replies)
            assert abs(total - MILLION) < 200


def test_a_pattern_writes_its_answer_and_at_times_another_form_of_it() -> None:
    """A01 for 9 5/8 - 4 6/8: 5 1/8, seldom 41/8, hardly ever something else; rightly only by a slip."""
    table, asked = TABLES[0], ASKED[0]
    own, form, other = (reply(asked, read_answer(text)) for text in ("5 1/8", "41/8", "4 6/8"))
    assert _of(table, own, "A01") > 850_000
    assert 20_000 < _of(table, form, "A01") < 100_000
    assert _of(table, form, "A01") > 50 * _of(table, other, "A01")
    assert _of(table, RIGHT, MEANS_RIGHT) >= 950_000
    assert _of(table, RIGHT, "A01") < 1_000


def test_a_reply_that_fits_is_one_that_the_pattern_may_write() -> None:
    """Its answer, its other writings and forms; not what lies beside."""
    table, asked = TABLES[0], ASKED[0]
    fits = [
        table.fits(reply(asked, read_answer(text)), "A01") for text in ("5 1/8", "41/8", "5 2/8", "4 7/8")
    ]
    assert fits == [True, True, False, False]


def test_an_idea_akin_to_a_pattern_writes_now_the_same_and_now_close_by() -> None:
    """For 9 5/8 - 4 6/8: 5 1/8 as A01 does, 6 1/8 beside it, and anything else as any other idea does."""
    table, asked = TABLES[0], ASKED[0]
    same, near, far = (reply(asked, read_answer(text)) for text in ("5 1/8", "6 1/8", "77"))
    akin = [_of(table, one, akin_to("A01")) for one in (same, near, far)]
    assert abs(akin[0] - AKIN_WRITES) < 40_000
    assert AKIN_BESIDE // 8 < akin[1] < AKIN_BESIDE // 2
    assert akin[2] * MILLION < table.unlisted[ReplyKind.OTHER] * MILLION // 2
    assert _of(table, near, akin_to("A01")) > 10 * _of(table, near, "A01")
    assert table.fits(near, akin_to("A01"))
    assert not table.fits(RIGHT, akin_to("A01"))


def test_no_reply_is_impossible() -> None:
    """A pupil may write anything: every chance is at least one in a million."""
    for table in TABLES:
        assert min(_of(table, given, key, 1) for given in table.replies for key in table.meant) >= 1


def test_a_typed_line_fits_all_patterns_with_that_line() -> None:
    """A false line that is A02's: nine times in ten under A02, a matter of one idea in many otherwise."""
    table, line = TABLES[0], as_line(["A02"])
    assert table.fits(line, "A02")
    assert not table.fits(line, "A01")
    assert _of(table, line, "A02") > 800_000
    assert _of(table, line, "A01") == _of(table, line, MEANS_RIGHT) < 2_000


def test_beside_what_is_meant_stands_one_unit_more_or_fewer() -> None:
    """One piece or one whole beside 4 7/8, evenly."""
    row = TABLES[0].beside[MEANS_RIGHT]
    beside = {reply(ASKED[0], read_answer(text)) for text in ("4 6/8", "5", "3 7/8", "5 7/8")}
    assert set(row) == beside
    assert set(row.values()) == {MILLION // 4}


def _row(written: str) -> Reply:
    return reply(ASKED[-1], number_row(written, 1, 1, read_quantity))


def test_every_order_that_a_slip_leaves_is_told_apart() -> None:
    """Beside 1/8, 1/4, 1/2 stand two orders, evenly: each change of neighbors is a reply of its own."""
    row = TABLES[-1].beside[MEANS_RIGHT]
    first, second = _row("1/4, 1/8, 1/2"), _row("1/8, 1/2, 1/4")
    assert first != second
    assert row == {first: MILLION // 2, second: MILLION // 2}
    assert OTHER not in TABLES[-1].beside["C08"]
    assert _row("1/4, 1/3, 1/2") == OTHER


def test_numbers_in_order_slip_wherever_two_neighbors_are_decided() -> None:
    """Of three numbers two are decided between, of eight seven; each keeps 0.9 of what else keeps 0.955."""
    for typed, decided in (("order 1/8, 1/2, 1/4", 2), (EIGHT, 7)):
        table = chances(known((typed,))[0][0])
        right = table.of(RIGHT, MEANS_RIGHT, 100_000, CARELESS)
        assert right == pytest.approx(MILLION * 0.955 * (0.9 / 0.955) ** decided, abs=2)


def test_a_sign_slips_into_another_sign() -> None:
    """Beside < are = and >, evenly; nothing else."""
    assert len(TABLES[1].beside[MEANS_RIGHT]) == 2
    assert OTHER not in TABLES[1].beside[MEANS_RIGHT]


def test_a_slip_has_one_share_of_each_sort() -> None:
    """Shares that make no whole are refused."""
    with pytest.raises(ValueError, match="add up to a million"):
        Slips(1, 2, 3)
    assert as_line([]).sort is ReplyKind.LINE
