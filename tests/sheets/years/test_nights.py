"""The weeks of a year, their nights and their topics."""

from datetime import date, timedelta

import pytest

from onewhole.sheets.years.nights import topics_of, weeks_of
from onewhole.sheets.years.table import WEEKS, YEAR_WEEKS
from onewhole.sheets.years.year_wishes import WeeksMoved, YearError, YearWishes, read_year

BEGINS = date(2026, 9, 8)
#: The standards of each grade: *Common Core State Standards for Mathematics* (2010), read; geometry and
#: volume are no pages of ours, and stand in the year so that its weeks add up.
STANDARDS = {
    4: "OA.A.1 OA.A.2 OA.A.3 OA.B.4 OA.C.5 NBT.A.1 NBT.A.2 NBT.A.3 NBT.B.4 NBT.B.5 NBT.B.6 NF.A.1 NF.A.2 "
    "NF.B.3 NF.B.4 NF.C.5 NF.C.6 NF.C.7 MD.A.1 MD.A.2 MD.A.3 MD.B.4 MD.C.5 MD.C.6 MD.C.7 G.A.1 G.A.2 G.A.3",
    5: "OA.A.1 OA.A.2 OA.B.3 NBT.A.1 NBT.A.2 NBT.A.3 NBT.A.4 NBT.B.5 NBT.B.6 NBT.B.7 NF.A.1 NF.A.2 NF.B.3 "
    "NF.B.4 NF.B.5 NF.B.6 NF.B.7 MD.A.1 MD.B.2 MD.C.3 MD.C.4 MD.C.5 G.A.1 G.A.2 G.B.3 G.B.4",
}


@pytest.mark.parametrize("grade", YEAR_WEEKS)
def test_every_standard_of_the_grade_has_a_week(grade: int) -> None:
    """Each standard is taught in some week, whole or by its parts."""
    taught = {code for topic in YEAR_WEEKS[grade] for code in topic.codes}
    for standard in STANDARDS[grade].split():
        whole = f"{grade}.{standard}"
        assert any(code == whole or code.startswith(f"{whole}.") for code in taught), whole


@pytest.mark.parametrize("grade", YEAR_WEEKS)
def test_the_names_of_topics_differ(grade: int) -> None:
    """A topic is known by its name."""
    assert len({topic.called for topic in YEAR_WEEKS[grade]}) == WEEKS


def test_a_week_without_school_is_no_week_of_the_year() -> None:
    """Two weeks of holidays move everything after them by two weeks; none is lost."""
    free = frozenset(date(2026, 12, 21) + timedelta(days=at) for at in range(12))
    weeks = weeks_of(YearWishes(BEGINS, free=free))
    assert len(weeks) == WEEKS
    assert not {day for week in weeks for day in week.nights} & free
    before, after = weeks_of(YearWishes(BEGINS))[-1], weeks[-1]
    assert (after.monday - before.monday).days == 14
    assert [week.topic for week in weeks] == list(YEAR_WEEKS[4])


def test_the_teachers_own_nights_are_kept() -> None:
    """Only the nights that are named are nights, from the first day on."""
    weeks = weeks_of(read_year("first day: 2026-09-09\nnights: Mon Wed Thu"))
    assert weeks[0].nights == (date(2026, 9, 9), date(2026, 9, 10))
    assert {day.weekday() for week in weeks for day in week.nights} == {0, 2, 3}


def test_weeks_moved_and_left_out() -> None:
    """A block goes where the teacher says; the others keep their order and close up."""
    year = YearWishes(BEGINS, moves=(WeeksMoved(18, 25, 9), WeeksMoved(12, 12, 1)), left_out=(33, 34))
    order = [topic.week for topic in topics_of(year)]
    assert order == [12, *range(1, 9), *range(18, 26), 9, 10, 11, *range(13, 18), *range(26, 33), 35, 36]
    assert weeks_of(year)[-1].topic is None


def test_a_year_that_does_not_fit_is_refused() -> None:
    """One night a week, and no school on most of those days."""
    free = frozenset(BEGINS + timedelta(days=at) for at in range(0, 420, 7) if at % 14)
    with pytest.raises(YearError, match="only 30 weeks with a night fit"):
        weeks_of(YearWishes(BEGINS, weekdays=frozenset({1}), free=free))
