"""What is worked out once for a page."""

from onewhole.marking.diagnosis.reply import RIGHT, ReplyKind
from onewhole.marking.diagnosis.tables import Tables, all_likelihoods, replies, tables, typed_lines
from onewhole.marking.diagnosis.weighing import column, likelihoods
from tests.kit.answers import by_pattern, marked_against
from tests.kit.odds import PAGE, known

ASKED, READY = known()


def _looks(seen: Tables) -> dict[tuple[str, ...], tuple[int, ...]]:
    """What each set of patterns looks like that is followed wherever it can show."""
    both = zip(seen.hypotheses, seen.looks, strict=True)
    return {one.patterns: looks for one, looks in both if one.patterns and one.only is None}


def test_patterns_that_write_the_same_look_the_same() -> None:
    """A12 and A26 write alike on every problem of the page; A01 and A02 do not."""
    looks = _looks(READY)
    assert looks["A12",] == looks["A26",]
    assert looks["A01",] != looks["A02",]
    assert set(looks["A01",][:2]) == {0}


def test_where_lines_were_typed_every_pattern_is_seen_for_itself() -> None:
    """A12 and A26 get there in different ways, and the lines tell."""
    seen = tables(ASKED, {6})
    looks = _looks(seen)
    assert [first == second for first, second in zip(looks["A12",], looks["A26",], strict=True)].count(
        False
    ) == 1
    assert looks["A12",][6] != looks["A26",][6]


def test_blank_and_unreadable_cells_are_no_replies() -> None:
    """They say nothing; a typed false line is a reply of its own."""
    cells = ["3 3/6", "", "?!", "9/4", *["-"] * 2, "9 13/8 - 4 6/8 = 5 7/8", *[""] * 5]
    marks = marked_against(ASKED, {"K01": cells})
    found = replies(marks, marks.pupils[0])
    assert [at for at, each in enumerate(found) if each is not None] == [0, 3, 6]
    assert found[0] == RIGHT
    assert found[6] is not None
    assert found[6].sort is ReplyKind.LINE
    assert typed_lines(marks) == {6}


def test_hypotheses_that_look_alike_are_weighed_once_and_alike() -> None:
    """All likelihoods at once are those of each hypothesis by itself."""
    rows = {"K01": by_pattern("A12", PAGE), "K02": [*by_pattern("A01", PAGE)[:6], *[""] * 6]}
    marks = marked_against(ASKED, rows)
    given = [replies(marks, pupil) for pupil in marks.pupils]
    for row, found in zip(given, all_likelihoods(READY, given), strict=True):
        columns = [
            column(READY.hypotheses, READY.chances[at], each)
            for at, each in enumerate(row)
            if each is not None
        ]
        assert found == likelihoods(columns, len(READY.hypotheses))


def test_a_page_without_problems_has_tables() -> None:
    """Nothing looks like anything."""
    assert tables(()).looks == ((), (), ())
