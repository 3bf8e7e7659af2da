"""What a diagnosis never depends on, and what more evidence always does."""

from fractions import Fraction

from hypothesis import given, settings
from hypothesis import strategies as st

from onewhole.marking.diagnosis.chances import MEANS_RIGHT
from onewhole.marking.diagnosis.diagnosis import Diagnosis
from onewhole.marking.diagnosis.hypothesis import Hypothesis
from onewhole.marking.diagnosis.reply import reply
from onewhole.marking.diagnosis.weighing import WAYS, column
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from tests.kit.answers import all_right, by_pattern
from tests.kit.odds import PAGE, known, one, weighed

ASKED, READY = known()
SINGLES = sorted(each.patterns[0] for each in READY.hypotheses if len(each.patterns) == 1)
STRAY = (
    "",
    "-",
    "see me",
    "5 1/8",
    "4 6/8",
    "9 1/7",
    "3",
    "39/8",
    "<",
    "3 3/0",
    "-1/-2",
    "9 13/8 - 4 6/8 = 5 7/8",
)

rows = st.sampled_from([*SINGLES, ""]).flatmap(
    lambda key: st.lists(st.sampled_from((None, None, *STRAY)), min_size=12, max_size=12).map(
        lambda stray: [
            own if other is None else other
            for own, other in zip(by_pattern(key, PAGE) if key else all_right(PAGE), stray, strict=True)
        ]
    )
)
classes = st.lists(rows, min_size=1, max_size=5).map(
    lambda found: {f"K{at:02}": row for at, row in enumerate(found, start=1)}
)


@settings(max_examples=settings().max_examples // 3)
@given(classes)
def test_odds_add_up_to_one(found: dict[str, list[str]]) -> None:
    """Weights are never below zero and some are above; the listed odds are never more than one together."""
    read = weighed(found)
    for shares, diagnosis in zip(read.weights, read.diagnoses, strict=True):
        assert sum(shares) > 0
        assert all(share >= 0 for share in shares)
        assert sum(each.probability for each in diagnosis.odds) <= 1


def _ratio(cells: list[str], hypothesis: Hypothesis) -> dict[int, Fraction]:
    """How much likelier a hypothesis is than each rival."""
    read = weighed({"K01": cells})
    shares = read.weights[0]
    own = shares[READY.hypotheses.index(hypothesis)]
    return {at: Fraction(own, share) for at, share in enumerate(shares)}


@settings(max_examples=settings().max_examples // 3)
@given(st.sampled_from(SINGLES), rows, st.integers(0, 11))
def test_more_consistent_evidence_never_lowers_a_pattern_against_its_rivals(
    key: str, cells: list[str], at: int
) -> None:
    """One more answer just as a pattern writes it: no rival that would write otherwise gains on it."""
    slip = by_id(key).slip(PAGE[at].statement)
    if slip is None:
        return
    hypothesis = next(each for each in READY.hypotheses if each.patterns == (key,))
    before = _ratio([*cells[:at], "", *cells[at + 1 :]], hypothesis)
    after = _ratio([*cells[:at], text(slip.wrote), *cells[at + 1 :]], hypothesis)
    given_ = reply(ASKED[at], slip.wrote)
    for rival, meaning in enumerate(READY.meaning[at]):
        if not READY.chances[at].fits(given_, meaning or MEANS_RIGHT):
            assert after[rival] >= before[rival]


@given(st.sampled_from(SINGLES), st.integers(0, 11))
def test_a_right_answer_lowers_a_pattern_that_would_have_shown(key: str, at: int) -> None:
    """And says next to nothing where it cannot show: there both mean the same."""
    alone = by_pattern(key, PAGE)
    blank, right = [*alone[:at], "", *alone[at + 1 :]], [*alone[:at], all_right(PAGE)[at], *alone[at + 1 :]]
    hypothesis = next(each for each in READY.hypotheses if each.patterns == (key,))
    before, after = _ratio(blank, hypothesis), _ratio(right, hypothesis)
    if key in ASKED[at].shows:
        assert after[0] < before[0]
    else:
        assert Fraction(2, 3) < after[0] / before[0] < Fraction(3, 2)


def _same(first: Diagnosis, second: Diagnosis) -> bool:
    """Say whether two diagnoses differ in nothing but what was typed."""
    return (first.odds, first.alike, first.together) == (second.odds, second.alike, second.together) and [
        (each.label, each.speaks) for each in first.evidence
    ] == [(each.label, each.speaks) for each in second.evidence]


@settings(max_examples=settings().max_examples // 3)
@given(classes, st.sets(st.integers(0, 11)))
def test_unreadable_is_as_blank(found: dict[str, list[str]], spots: set[int]) -> None:
    """What cannot be read says as much as what was not written: nothing, for anybody in the class."""
    unread = {
        pupil: ["?!" if at in spots else cell for at, cell in enumerate(row)] for pupil, row in found.items()
    }
    blank = {
        pupil: ["" if at in spots else cell for at, cell in enumerate(row)] for pupil, row in found.items()
    }
    pairs = zip(weighed(unread).diagnoses, weighed(blank).diagnoses, strict=True)
    assert all(_same(first, second) for first, second in pairs)


@given(st.sampled_from(SINGLES), st.sets(st.integers(0, 11), max_size=6))
def test_unreadable_cells_change_nothing_but_certainty(key: str, spots: set[int]) -> None:
    """A steady pupil with some cells unread is found with the same pattern among the best, or not at all."""
    whole = by_pattern(key, PAGE)
    some = one(["?!" if at in spots else cell for at, cell in enumerate(whole)])
    shown = [at for at, asked in enumerate(ASKED) if key in asked.shows and at not in spots]
    if len(shown) > 1:
        assert key in some.patterns
    assert some.together <= 1
    assert {each.label for each in some.evidence if each.speaks.value != "neither"} == {
        PAGE[at].label
        for at in range(12)
        if at not in spots and set(some.patterns) & ASKED[at].shows and _speaks(some, at)
    }


def _speaks(found: Diagnosis, at: int) -> bool:
    return found.evidence[at].speaks.value != "neither"


@settings(max_examples=settings().max_examples // 3)
@given(st.lists(st.sampled_from(READY.hypotheses), min_size=1, max_size=6, unique=True))
def test_a_column_is_each_hypothesis_by_itself(chosen: list[Hypothesis]) -> None:
    """Nothing about a hypothesis depends on which others are weighed beside it."""
    table = READY.chances[6]
    for given_ in table.replies[:6]:
        together = column(chosen, table, given_)
        apart = [column([each], table, given_) for each in chosen]
        assert [together[at : at + WAYS] for at in range(0, len(together), WAYS)] == apart
