"""The evidence problem by problem."""

from onewhole.marking.diagnosis.evidence import Speaks, evidence
from onewhole.marking.diagnosis.hypothesis import Hypothesis, Reliability
from onewhole.marking.diagnosis.tables import replies
from onewhole.marking.reading.mark import Verdict
from onewhole.notations.text import text
from tests.kit.answers import marked_against
from tests.kit.odds import known

PAGE = ("9 5/8 - 4 6/8", "6 7/8 - 3 2/8", "6 3/10 - 2 7/10", "8 3/8 - 4 5/8")
ASKED, READY = known(PAGE)
A04 = Hypothesis(Reliability.SOUND, ("A04",))
A01 = Hypothesis(Reliability.SOUND, ("A01",))


def _speaks(cells: list[str], *sets: Hypothesis) -> list[tuple[str, bool, bool]]:
    marks = marked_against(ASKED, {"K01": cells})
    found = evidence(marks, READY, marks.pupils[0], replies(marks, marks.pupils[0]), sets)
    assert [one.written for one in found] == cells
    return [(one.speaks.value, one.exact, one.luck) for one in found]


def test_an_answer_speaks_for_against_or_says_nothing() -> None:
    """As the pattern writes it; rightly where it would show; where it cannot show; not at all."""
    assert _speaks(["4 9/8", "3 5/8", "3 6/10", "3 6/8"], A04) == [
        ("for", True, False),
        ("neither", False, False),
        ("neither", False, True),
        ("against", False, False),
    ]
    assert _speaks(["", "-", "?", ""], A04) == [("neither", False, False)] * 4


def test_right_by_luck_is_named_and_praised_for_nothing() -> None:
    """A04 makes ten pieces of a whole: in tenths that is right, and only there."""
    assert [luck for *_, luck in _speaks(["4 7/8", "3 5/8", "3 6/10", "3 6/8"], A04)] == [
        False,
        False,
        True,
        False,
    ]
    assert [luck for *_, luck in _speaks(["4 7/8", "3 5/8", "9 9/10", "3 6/8"], A04)] == [False] * 4


def test_the_same_amount_fits_and_is_not_exact() -> None:
    """41/8 is as much as A01's 5 1/8."""
    assert _speaks(["41/8", "", "", ""], A01)[0] == ("for", False, False)


def test_one_step_beside_what_the_pattern_writes_says_nothing() -> None:
    """5 2/8 may be A01 with a slip."""
    assert _speaks(["5 2/8", "", "", ""], A01)[0] == ("neither", False, False)


def test_several_sets_are_laid_beside_an_answer_at_once() -> None:
    """It speaks for them when it speaks for one; all that they would write is told, each once."""
    marks = marked_against(ASKED, {"K01": ["5 1/8", "", "", ""]})
    given = replies(marks, marks.pupils[0])
    found = evidence(marks, READY, marks.pupils[0], given, (A01, A04))
    assert [text(outcome) for outcome in found[0].would_write] == ["5 1/8", "4 9/8"]
    assert (found[0].speaks, found[0].verdict) == (Speaks.FOR, Verdict.WRONG)
    assert evidence(marks, READY, marks.pupils[0], given, ())[0].would_write == ()
