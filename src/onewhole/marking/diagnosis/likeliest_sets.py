"""Which sets of patterns fit best, and which of them one pupil's answers cannot distinguish."""

from collections import Counter
from collections.abc import Iterable, Sequence
from fractions import Fraction

from onewhole.marking.diagnosis.hypothesis import Hypothesis
from onewhole.marking.diagnosis.tables import Replies, Tables

#: Sets with a smaller share of the odds are not looked at, unless each of their patterns is sure by itself.
LEAST = Fraction(1, 1000)
#: One with less than a millionth is not even put with others like it.
FAR_BELOW = 1_000_000
#: A set with less than a tenth of the weight of another one with the same evidence counts as distinguished.
TOLD_APART = 10
#: The same where earlier nights of the pupil count: one slip of one night is not to tell sets apart for good.
TOLD_APART_BY_NIGHTS = 100


def holding(hypotheses: Sequence[Hypothesis], sets: Iterable[Hypothesis], weights: Sequence[int]) -> int:
    """Return the weight of all hypotheses that contain one of these sets.

    >>> from onewhole.marking.diagnosis.hypothesis import Reliability
    >>> one, two = (Hypothesis(Reliability.SOUND, ids) for ids in (("A01",), ("A10", "A01")))
    >>> holding((one, two), (one,), (5, 2)), holding((one, two), (two,), (5, 2))
    (7, 2)
    """
    wanted = [frozenset(one.patterns) for one in sets]
    singly = frozenset().union(*(each for each in wanted if len(each) == 1))
    paired = {each for each in wanted if len(each) > 1}
    return sum(
        weight
        for one, weight in zip(hypotheses, weights, strict=True)
        if not singly.isdisjoint(one.patterns) or (paired and frozenset(one.patterns) in paired)
    )


def likeliest_sets(
    page: Tables, given: Replies, weights: Sequence[int], confident: Fraction, apart: int = TOLD_APART
) -> tuple[Hypothesis, ...]:
    """Return the best sets of patterns that the answers cannot tell apart; none where all are unlikely.

    Sets are alike when the same answers speak for them and the same ones against, and none is ten times
    (``apart``) as likely as another. Of each such group only the minimal sets are kept. Best are two patterns
    that together reach the odds asked for, else one that does, else the group with the most weight.
    """
    whole = sum(weights)
    enough, least_weight = confident * whole, -(-whole // FAR_BELOW)
    sure = _sure(page, weights, enough)
    weighty = [
        at
        for at, one in enumerate(page.hypotheses)
        if one.patterns and (weights[at] >= least_weight or sure.issuperset(one.patterns))
    ]
    found: list[tuple[tuple[bool, bool, int], tuple[Hypothesis, ...]]] = []
    for bunch in _bunches(page, given, weighty):
        own = sum(weights[at] for at in bunch)
        if own < LEAST * whole and not any(sure.issuperset(page.hypotheses[at].patterns) for at in bunch):
            continue
        least = _alike(page, bunch, weights, apart)
        held = holding(page.hypotheses, least, weights)
        two = all(len(one.patterns) > 1 for one in least)
        found.append(((held >= enough, held >= enough and two, held if held >= enough else own), least))
    return max(found, key=lambda one: (one[0], _names(one[1])))[1] if found else ()


def _alike(page: Tables, bunch: Sequence[int], weights: Sequence[int], apart: int) -> tuple[Hypothesis, ...]:
    sets = {at: set(page.hypotheses[at].patterns) for at in bunch}
    whole = {page.hypotheses[at].patterns for at in bunch if page.hypotheses[at].only is None}
    least = [
        at
        for at in bunch
        if not any(other < sets[at] for other in sets.values())
        and (page.hypotheses[at].only is None or page.hypotheses[at].patterns not in whole)
    ]
    most = max(weights[at] for at in least)
    return tuple(page.hypotheses[at] for at in least if weights[at] * apart >= most)


def _names(sets: Iterable[Hypothesis]) -> list[tuple[str, ...]]:
    return sorted(one.ids for one in sets)


def _sure(page: Tables, weights: Sequence[int], enough: Fraction) -> set[str]:
    """Return the patterns that reach the odds asked for, summed over all sets that contain them."""
    held: Counter[str] = Counter()
    for one, weight in zip(page.hypotheses, weights, strict=True):
        for key in one.patterns:
            held[key] += weight
    return {key for key, weight in held.items() if weight >= enough}


def _bunches(page: Tables, given: Replies, places: Sequence[int]) -> Iterable[list[int]]:
    """Group the hypotheses that the same answers speak for and against."""
    found: dict[tuple[bool | None, ...], list[int]] = {}
    answered = [(at, here) for at, here in enumerate(given) if here is not None]
    for place in places:
        meaning = [(at, here, page.meaning[at][place]) for at, here in answered]
        speaks = (None if key is None else page.chances[at].fits(here, key) for at, here, key in meaning)
        found.setdefault(tuple(speaks), []).append(place)
    return found.values()
