"""Small programs in whole numbers, for Hypothesis: every choice can be tried."""

from hypothesis import strategies as st

from onewhole.number.program import Limit, Program


@st.composite
def programs(draw: st.DrawFn) -> Program:
    """Up to four counts from 0 to 3 under up to five limits; all of them whole."""
    size = draw(st.integers(1, 4))
    small = st.integers(-3, 3)
    rows = st.dictionaries(st.integers(0, size - 1), small, max_size=size)
    side = st.none() | st.integers(-4, 6)
    limits = draw(st.lists(st.builds(Limit, st.sampled_from("abc"), rows, side, side), max_size=5))
    counts = st.lists(st.integers(0, 3), min_size=size, max_size=size)
    gains = draw(st.lists(st.integers(-5, 9), min_size=size, max_size=size))
    return Program(tuple(gains), tuple(draw(counts)), tuple(limits), size)
