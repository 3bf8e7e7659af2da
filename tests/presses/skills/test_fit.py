from fractions import Fraction

import numpy as np
import pytest

from onewhole.errors import InputError
from onewhole.mastery.profile import SkillSign
from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.right_wrong import MISSING
from onewhole.mastery.skill_model import SkillModel
from onewhole.presses.skills import fit_checks
from onewhole.presses.skills.cells import cells_of
from onewhole.presses.skills.fit import fit_skills, profiles_of
from onewhole.presses.skills.rows import row_arrays
from tests.kit.skill_tables import THREE, answered_by, counted


def test_a_profile_is_bayes_rule() -> None:
    """The odds of a group are its share times the chance of the row, over all groups: worked out by hand."""
    table, _ = answered_by(THREE, SkillModel.DINA, 500, seed=7, missing=0.1)
    fitted = fit_skills(table, THREE, SkillModel.DINA, climbs=1, seed=1)
    (profile,) = profiles_of(fitted, [table.rows[0]])
    odds = []
    for each in fitted.groups:
        one = each.share.value
        for sign, seen, problem in zip(profile.row, each.group.seen, fitted.problems, strict=True):
            right = problem.chances[seen].right.value
            one *= {"1": right, "0": 1 - right, MISSING: Fraction(1)}[sign]
        odds.append(one)
    assert float(profile.odds) == pytest.approx(float(max(odds) / sum(odds)))
    assert profile.group == odds.index(max(odds))
    for at, told in enumerate(profile.skills):
        having = sum(one for one, each in zip(odds, fitted.groups, strict=True) if each.group.having(at))
        assert float(told.most) == pytest.approx(float(having / sum(odds)))


def test_nothing_answered_tells_what_the_class_is() -> None:
    """A pupil without an answer has the odds of the shares."""
    table, _ = answered_by(THREE, SkillModel.DINA, 500, seed=7)
    fitted = fit_skills(table, THREE, SkillModel.DINA, climbs=1, seed=1)
    (profile,) = profiles_of(fitted, [MISSING * 10])
    for told, share in zip(profile.skills, fitted.skills, strict=True):
        assert float(told.least) == pytest.approx(float(share.least), abs=1e-9)
        assert float(told.most) == pytest.approx(float(share.most), abs=1e-9)


def test_a_skill_that_the_problems_cannot_tell_is_told_as_that() -> None:
    """Where a skill shows only beside another one, who lacks the other may have it or not, however sure the
    rest.
    """
    q = QMatrix(("first", "second"), tuple("ABCDEF"), (0b01, 0b01, 0b01, 0b11, 0b11, 0b11))
    rows = ["111111"] * 30 + ["111000"] * 30 + ["000000"] * 30 + ["111011", "000001", "010000", "110000"]
    fitted = fit_skills(counted(q, rows), q, SkillModel.DINA, climbs=4, seed=1)
    assert [len(each.group.sets) for each in fitted.groups] == [2, 1, 1]
    signs = [
        [one.sign for one in profile.skills]
        for profile in profiles_of(fitted, ["111111", "111000", "000000"])
    ]
    assert signs == [
        [SkillSign.THERE, SkillSign.THERE],
        [SkillSign.THERE, SkillSign.NOT_THERE],
        [SkillSign.NOT_THERE, SkillSign.UNTOLD],
    ]
    assert fitted.skills[1].most - fitted.skills[1].least == pytest.approx(Fraction(1, 3), abs=0.05)


def test_calls_are_right_as_often_as_is_said() -> None:
    """Of invented pupils, whose skills are known, the share of right calls is the accuracy told, within 3
    in 100.
    """
    chance = np.random.default_rng(3)
    cells = cells_of(THREE, SkillModel.DINA)
    _, truth = answered_by(THREE, SkillModel.DINA, 10, seed=21)
    groups = chance.choice(len(cells.groups), 3_000, p=truth.shares)
    right = (chance.random((3_000, 10)) < truth.chances[cells.of_group[:, groups]].T).astype(int)
    rows = ["".join("01"[one] for one in row) for row in right]
    table = counted(THREE, rows)
    fitted = fit_skills(table, THREE, SkillModel.DINA, climbs=1, seed=1)
    called = dict(zip(table.rows, profiles_of(fitted, table.rows), strict=True))
    sets = [cells.groups[group].sets[0] for group in groups]
    for at, skill in enumerate(fitted.skills):
        hits = [
            (called[row].skills[at].even > Fraction(1, 2)) == bool(had >> at & 1)
            for row, had in zip(rows, sets, strict=True)
        ]
        assert np.mean(hits) == pytest.approx(float(skill.accuracy), abs=0.03)
    whole = np.mean([called[row].group == group for row, group in zip(rows, groups, strict=True)])
    assert whole == pytest.approx(float(fitted.accuracy), abs=0.03)


def test_pairs_fit_where_the_model_made_the_answers() -> None:
    """Of 40 tables that the model made at most 4 have a pair beyond the bound, which one in twenty has by
    chance.
    """
    beyond = 0
    for seed in range(40):
        table, _ = answered_by(THREE, SkillModel.DINA, 400, seed=seed)
        fitted = fit_skills(table, THREE, SkillModel.DINA, climbs=1, seed=1)
        beyond += any(one.worst and abs(one.worst.deviate) > fitted.pair_bound for one in fitted.problems)
    assert beyond <= 4


def test_few_pupils_are_no_test_of_a_pair() -> None:
    """Of 49 pupils no pair is told; of 50 each problem has its worst."""
    for pupils, told in ((49, False), (50, True)):
        table, _ = answered_by(THREE, SkillModel.DINA, pupils, seed=2)
        fitted = fit_skills(table, THREE, SkillModel.DINA, climbs=1, seed=1)
        assert [one.worst is not None for one in fitted.problems] == [told] * len(THREE.problems)


def test_a_wrong_row_of_the_q_matrix_is_seen() -> None:
    """Where a problem needs two skills and the Q-matrix tells one, its own explain too little and the two
    are named.
    """
    true = QMatrix(THREE.skills, (*THREE.problems, *"KLMNOPQRST"), THREE.needs * 2)
    table, _ = answered_by(true, SkillModel.DINA, 4_000, seed=13)
    told = QMatrix(true.skills, true.problems, (*true.needs[:3], 0b001, *true.needs[4:]))
    wrong = fit_skills(table, told, SkillModel.DINA, climbs=1, seed=1).problems[3]
    assert wrong.check.explained < Fraction(1, 2)
    assert wrong.check.rather == 0b011
    right = fit_skills(table, true, SkillModel.DINA, climbs=1, seed=1).problems[3]
    assert right.check.explained > Fraction(19, 20)
    assert right.check.rather is None


def test_all_skills_explain_all_and_more_skills_never_less() -> None:
    """What a set of skills explains lies between 0 and 1 and grows with the set."""
    table, truth = answered_by(THREE, SkillModel.GDINA, 700, seed=4)
    cells = cells_of(THREE, SkillModel.GDINA)
    found = fit_checks.expected_right(cells, row_arrays(table), truth)
    told = fit_checks.explained(THREE, cells, truth, found)
    assert told[0] == pytest.approx(0, abs=1e-9)
    assert told[-1] == pytest.approx(1)
    for some in range(8):
        for more in range(8):
            if some & more == some:
                assert (told[some] <= told[more] + 1e-9).all()


def test_several_summits_are_told() -> None:
    """G-DINA on few pupils ends at different summits, and it is said how many came to the best."""
    table, _ = answered_by(THREE, SkillModel.GDINA, 60, seed=3)
    climbed = fit_skills(table, THREE, SkillModel.GDINA, climbs=12, seed=1).climbed
    assert climbed.climbs == 12
    assert 1 <= climbed.same < 12
    alone = fit_skills(table, THREE, SkillModel.GDINA, climbs=1, seed=1).climbed
    assert climbed.log_likelihood >= alone.log_likelihood
    again = fit_skills(table, THREE, SkillModel.GDINA, climbs=12, seed=1).climbed
    assert again == climbed


def test_too_many_chances_are_refused() -> None:
    """A model that would have more than a thousand says so, and what to do."""
    q = QMatrix(tuple("abcdefghij"), ("1", "2"), (1023, 1))
    table = counted(q, ["10", "01"])
    with pytest.raises(InputError, match="1,026 chances would be fitted, and at most 1,000 are"):
        fit_skills(table, q, SkillModel.GDINA, climbs=1, seed=1)
