"""Wishes for composed pages, for Hypothesis: small spaces, so that a page is composed in a moment."""

from fractions import Fraction

from hypothesis import strategies as st

from onewhole.findings.wished_skill import LIKE, WishedSkill
from onewhole.misconceptions.catalogue import patterns
from onewhole.sheets.wishes import OpenQuestion, Review, Wishes
from onewhole.working.strategies.table import STRATEGIES

SETS = [(), *((one.id,) for one in patterns()), ("A01", "A10"), ("A02", "A20")]


def shares() -> st.SearchStrategy[Fraction | None]:
    """A share of the page, or none."""
    return st.none() | st.fractions(0, 1, max_denominator=12)


@st.composite
def open_questions(draw: st.DrawFn) -> tuple[OpenQuestion, ...]:
    """A few open questions, no two about the same sets."""
    pairs = st.lists(st.sampled_from(SETS), min_size=2, max_size=2, unique=True)
    found: dict[frozenset[tuple[str, ...]], OpenQuestion] = {}
    for first, second in draw(st.lists(pairs, max_size=5)):
        found[frozenset((first, second))] = OpenQuestion(first, second, draw(st.integers(1, 1000)))
    return tuple(found.values())


def wishes(most: int = 9) -> st.SearchStrategy[Wishes]:
    """Any wishes for a page of few problems with few denominators."""
    return st.builds(
        Wishes,
        skill=st.sampled_from([skill for skill in WishedSkill if skill in LIKE]),
        number=st.integers(4, most),
        denominators=st.lists(
            st.sampled_from((2, 3, 4, 5, 6, 8, 10, 12)), min_size=1, max_size=3, unique=True
        ).map(tuple),
        largest=st.integers(2, 6),
        regrouping=shares(),
        strategy=st.sampled_from(STRATEGIES),
        minutes=st.none() | st.integers(6, 40),
        avoid=st.sampled_from(((), ("9 5/8 - 4 6/8", "52 - 27", "5 1/4 - 2 3/4"))),
        review=st.lists(st.sampled_from(Review), max_size=2).map(tuple),
        back=st.sampled_from(((), ("52 - 27",), ("2/8 + 3/8",))),
        faded=st.booleans(),
        questions=open_questions(),
        seed=st.integers(0, 999_999_999),
        told=st.integers(0, 2),
    )
