"""A district's odds in floats are a class's exact odds: two roads, one answer."""

from fractions import Fraction
from pathlib import Path

import numpy as np

from onewhole.marking.diagnosis.prior import supposed
from onewhole.marking.diagnosis.tables import all_likelihoods
from onewhole.marking.diagnosis.weighing import weights as exact_weights
from onewhole.marking.district.page_asked import page_asked
from onewhole.presses.district.counting import count, paper_files, to_count
from onewhole.presses.district.page_rows import page_rows
from onewhole.presses.district.weighing import reply_rows, weighed, weights
from tests.kit.district_papers import PAGE, small_district


def test_the_floats_are_the_fractions(tmp_path: Path) -> None:
    """For every different paper: the likeliest set, its odds and those of no idea, to a millionth."""
    (tmp_path / "counts").mkdir()
    _, asked = to_count(paper_files([small_district(tmp_path / "papers")]), tmp_path / "counts")
    rows = page_rows([count(one) for one in asked], page_asked(PAGE))
    different = reply_rows(rows)
    codes, papers, place = different.codes, different.papers, different.place
    found = weighed(known := weights(rows, different.problems), codes, papers)
    page = rows.asked.tables
    given = [tuple(rows.seen[at][code].reply for at, code in enumerate(row)) for row in rows.codes.tolist()]
    prior = supposed(page.hypotheses)
    for at, likely in enumerate(all_likelihoods(page, given)):
        shares = exact_weights(prior, likely)
        sets: dict[str, int] = {}
        for name, share in zip(rows.asked.sets, shares, strict=True):
            sets[name] = sets.get(name, 0) + share
        best = max(sets, key=lambda one: sets[one])
        mine = place[at]
        assert known.names[found.sets[mine]] == best
        assert abs(int(found.odds[mine]) - Fraction(sets[best] * 10**6, sum(shares))) <= 1
        assert abs(int(found.none[mine]) - Fraction(sets[""] * 10**6, sum(shares))) <= 1
    assert int(rows.papers.sum()) == int(papers.sum()) == 837
    assert np.isclose(found.pupils.sum(), 837)
