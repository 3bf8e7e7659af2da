"""Every reason that a cell is shown for has its words."""

import pytest

from onewhole.desk.paper.why_told import UNSEEN_HANDS, why_told
from onewhole.marking.paper.verdict import PaperWhy


@pytest.mark.parametrize("why", PaperWhy)
def test_every_reason_has_words(why: PaperWhy) -> None:
    """In a few words, without a full stop, and unlike every other one."""
    assert 2 < len(why_told(why)) < 60
    assert not why_told(why).endswith(".")
    assert [one for one in PaperWhy if why_told(one) == why_told(why)] == [why]


def test_the_caution_is_one_sentence() -> None:
    """It says what was not seen, and what to do."""
    assert UNSEEN_HANDS.count(".") == 1
    assert "before you rely on it" in UNSEEN_HANDS
