"""What pictures of cells may say, for tests of what is made of it."""

from hypothesis import strategies as st

from onewhole.marking.paper.ink_reading import MOST_READINGS, SURE, InkReading

#: Texts that a child writes, that no child writes, and that are no answers at all.
TEXTS = st.one_of(
    st.sampled_from(("3 3/6", "3 5/6", "4 3/6", "3 1/2", "21/6", "-", "5.2", "3 3/0", "5 ft 2 in", "/")),
    st.from_regex(r"[0-9]{1,3}( [0-9]{1,3}/[0-9]{1,3})?", fullmatch=True),
    st.text(min_size=1, max_size=12),
)


def says(*readings: tuple[str, int], empty: int = 0, not_an_answer: int = 0, struck: int = 0) -> InkReading:
    """Return a picture that says these texts."""
    return InkReading(readings, empty, not_an_answer, struck)


@st.composite
def inks(draw: st.DrawFn) -> InkReading:
    """Draw what a picture may say, the strangest too: sure of nonsense, torn, sure of nothing."""
    texts = draw(st.lists(TEXTS, max_size=MOST_READINGS, unique=True))
    cuts = sorted(draw(st.lists(st.integers(0, SURE), min_size=len(texts) + 2, max_size=len(texts) + 2)))
    parts = [after - before for before, after in zip([0, *cuts], cuts, strict=False)]
    empty, not_an_answer, *likely = parts
    return InkReading(
        tuple(zip(texts, sorted(likely, reverse=True), strict=True)),
        empty,
        not_an_answer,
        draw(st.one_of(st.just(0), st.integers(0, SURE))),
        draw(st.booleans()),
        draw(st.booleans()),
    )
