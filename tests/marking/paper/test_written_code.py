"""A code that was written by hand: sure, or nobody's."""

from hypothesis import given
from hypothesis import strategies as st

from onewhole.marking.paper.ink_reading import SURE, InkReading
from onewhole.marking.paper.written_code import written_code
from tests.kit.inks import inks, says

CODES = [f"K{at:02}" for at in range(1, 31)]
EMPTY = says(empty=SURE)


def _boxes(text: str, likelihood: int = 995_000) -> tuple[InkReading, ...]:
    return tuple(says((sign, likelihood)) for sign in text)


def test_the_digits_say_whose_it_is() -> None:
    """Whatever the letter looks like; a box behind the code stays empty."""
    assert written_code(_boxes("407"), CODES) == "K07"
    assert written_code((*_boxes("430"), EMPTY), CODES) == "K30"
    assert written_code(_boxes("0307"), CODES) is None
    assert written_code((says(not_an_answer=SURE), *_boxes("07")), CODES) == "K07"


def test_whose_it_is_is_never_guessed() -> None:
    """An unsure digit, two codes with the same digits, a code that nobody has, too few boxes, no digits."""
    unsure = (*_boxes("40"), says(("7", 900_000), ("1", 90_000)))
    assert written_code(unsure, CODES) is None
    assert written_code(_boxes("407"), ["K07", "M07"]) is None
    assert written_code(_boxes("499"), CODES) is None
    assert written_code(_boxes("07"), CODES) is None
    assert written_code(_boxes("123"), ["ADA"]) is None
    assert written_code((), CODES) is None


@given(st.lists(inks(), max_size=4), st.sets(st.sampled_from(CODES)))
def test_hostile_boxes_are_nobody_s_or_one_of_the_class(boxes: list[InkReading], codes: set[str]) -> None:
    """Whatever the pictures say."""
    assert written_code(boxes, codes) in {None, *codes}
