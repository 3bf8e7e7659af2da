"""What asking settles: open cases are asked, and what is said then is held to the truth."""

import pytest

from lab.asking import OUTSIDE, OpenCase, Settled, cases
from lab.nights import Night
from lab.pupils import Kind
from lab.trials import NONE

TRAPS = ("5 1/8 - 2 5/8", "7 1/4 - 3 3/4", "6 7/8 - 3 2/8")
A01, A02 = frozenset({"A01"}), frozenset({"A02"})


def _case(truth: frozenset[str], *, outside: bool = False) -> OpenCase:
    return OpenCase(Kind.STEADY, truth, outside, None, None, None, None)


@pytest.mark.parametrize(
    ("case", "said", "right"),
    [
        (_case(A01), Settled((A01,)), True),
        (_case(A01), Settled((A02, A01)), True),
        (_case(A01), Settled((A02,)), False),
        (_case(A01), Settled((NONE,)), False),
        (_case(NONE), Settled((NONE,)), True),
        (_case(NONE), Settled((A01,)), False),
        (_case(NONE, outside=True), Settled((NONE,)), False),
        (_case(NONE, outside=True), Settled((A01,)), False),
        (_case(NONE, outside=True), Settled((), unlisted=True), True),
        (_case(A01), Settled((), unlisted=True), False),
    ],
)
def test_what_is_said_is_held_to_the_truth(case: OpenCase, said: Settled, right: bool) -> None:
    """Of an idea outside the catalogue neither a pattern nor none is true."""
    assert case.rightly(said) is right


@pytest.mark.more("lab/test_steps.py")
def test_a_class_is_asked_and_the_same_seed_gives_the_same() -> None:
    """After two traps and a problem that shows little some cases are open, and asking settles some."""
    night = Night((TRAPS,), 1, OUTSIDE, "asking")
    found = cases(night, 0)
    assert found == cases(night, 0)
    assert found
    assert any(one.asked for one in found)
    assert all(one.asked is None or one.asked.unlisted or one.asked.sets for one in found)
