from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from onewhole.sheets.candidates import LikePair
from onewhole.sheets.numbers_for import Wanted, numbers_for
from onewhole.sheets.page_program import Crowded


def like(twin: int, turn: int) -> LikePair:
    """A problem whose twins have the same first count."""
    return LikePair(5 + turn, 1 + twin, 3 + turn, 1, 12, taken=True)


@st.composite
def wanted(draw: st.DrawFn) -> list[Wanted]:
    """Up to four kinds, each with some of six twins, two problems a twin."""
    sets = st.lists(st.integers(0, 5), min_size=1, max_size=4, unique=True)
    kinds = draw(st.lists(st.tuples(sets, st.integers(1, 3)), min_size=1, max_size=4))
    return [
        Wanted(place, count, tuple(like(twin, 2 * place + turn) for twin in twins for turn in (0, 1)))
        for place, (twins, count) in enumerate(kinds)
    ]


def can(kinds: list[Wanted]) -> bool:
    """Say whether every place can have a problem of its own, by trying all."""
    slots = [
        sorted({one.twin for one in kind.members}, key=repr) for kind in kinds for _ in range(kind.count)
    ]
    if len(slots) > 6:
        return False
    return any(len(set(choice)) == len(slots) for choice in product(*slots))


@given(wanted(), st.integers(0, 5))
def test_each_place_has_a_problem_or_the_crowd_is_named(kinds: list[Wanted], seed: int) -> None:
    """No two are twins; where that cannot be, the kinds named have fewer twins than are wanted of them."""
    found = numbers_for(kinds, seed)
    if isinstance(found, Crowded):
        assert not can(kinds)
        twins = {one.twin for place in found.places for one in kinds[place].members}
        assert found.most == len(twins) < sum(kinds[place].count for place in found.places)
    else:
        assert can(kinds)
        assert len({one.twin for one in found}) == len(found) == sum(kind.count for kind in kinds)
        members = [kind.members for kind in kinds for _ in range(kind.count)]
        assert all(one in these for one, these in zip(found, members, strict=True))


def test_a_seed_chooses_and_numbers_do_not_repeat() -> None:
    """Another seed takes other problems; a number on the page is passed over while there are others."""
    members = tuple(LikePair(w1, 1, w1 - 2, n2, 8, taken=True) for w1 in range(3, 9) for n2 in (3, 4, 6, 7))
    pages = {numbers_for([Wanted(0, 3, members)], seed) for seed in range(8)}
    assert len(pages) > 1
    for page in pages:
        assert not isinstance(page, Crowded)
        assert len({one.top for one in page}) == 3
