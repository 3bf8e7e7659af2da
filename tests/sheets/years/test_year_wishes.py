"""A year as a teacher types it."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.sheets.years.year_wishes import WeeksMoved, YearError, YearWishes, read_year, write_year

BEGINS = "first day: 2026-09-08\n"


def test_what_is_left_out_is_as_usual() -> None:
    """The first day is enough: grade 4, Monday to Friday."""
    year = read_year(BEGINS)
    assert (year.grade, year.weekdays, year.minutes, year.problems) == (4, frozenset(range(5)), 20, 10)


def test_every_setting_is_read() -> None:
    """Nights in any spelling, days off one by one and from one to another, weeks moved and left out."""
    year = read_year(
        "# our year\nGrade: 5\nfirst day: 2026-08-24\nnights: Monday, tu Wed THU\nminutes: 25\nproblems: 8\n"
        "no school: 2026-09-07, 2026-11-26 to 2026-11-27\nno school: 2026-12-24\n"
        "move: 15-19 to 2\nmove: 26 to 20\nleave out: 31, 30\n"
    )
    assert (year.grade, year.weekdays, year.minutes, year.problems) == (5, frozenset(range(4)), 25, 8)
    assert year.free == {date(2026, 9, 7), date(2026, 11, 26), date(2026, 11, 27), date(2026, 12, 24)}
    assert year.moves == (WeeksMoved(15, 19, 2), WeeksMoved(26, 26, 20))
    assert year.left_out == (30, 31)


@pytest.mark.parametrize(
    ("line", "column", "what"),
    [
        ("grade: 9", 8, "“9” is no grade that a year is planned for"),
        ("nights: Mon Fo", 13, "“Fo” is no day of the week"),
        ("nights: T", 9, "“T” is no day of the week"),
        ("no school: 2026-11-26 to 2026-11-31", 26, "“2026-11-31” is not a day of a school year"),
        ("no school: 2026-11-26, 26 Nov", 24, "“26 Nov” is not a day of a school year"),
        ("no school: 2026-11-27 to 2026-11-26", 12, "from 2026-11-27 to 2026-11-26 there are 0 days"),
        ("no school:", 11, "no day is named"),
        ("move: 18-99 to 9", 10, "“99” is no week"),
        ("move: 25-18 to 9", 7, "week 18 is before week 25"),
        ("move: 18", 7, "“18” says not where to"),
        ("leave out: 3, x", 15, "“x” is no week"),
        ("minutes: a few", 10, "“a few” is no number of minutes"),
        ("problems: 2", 11, "“2” is no number of problems"),
        ("scool: 3", 1, "there is no setting “scool”"),
        ("kites", 1, "this line is no setting of a year"),
        ("first day: 2026-09-09", 1, "“first day” stands on line 1 already"),
    ],
)
def test_what_is_wrong_is_told_with_its_place(line: str, column: int, what: str) -> None:
    """Line and column are those where the mistake begins."""
    with pytest.raises(YearError) as raised:
        read_year(f"{BEGINS}{line}\n")
    (mistake,) = raised.value.mistakes
    assert (mistake.what, mistake.line, mistake.column) == (what, 2, column)
    assert mistake.remedy


def test_every_mistake_is_told() -> None:
    """A year without a first day, and with two slips, has three mistakes."""
    with pytest.raises(YearError, match="3 things in this year need a change") as raised:
        read_year("grade: 3\nnights: never\n", file="year.txt")
    assert [one.line for one in raised.value.mistakes] == [1, 2, 1]
    assert all(one.file == "year.txt" for one in raised.value.mistakes)


_DAYS = st.dates(date(2026, 8, 1), date(2027, 7, 1))
_WEEKS = st.integers(1, 36)


@given(
    st.builds(
        YearWishes,
        _DAYS,
        st.sampled_from((4, 5)),
        st.frozensets(st.integers(0, 6), min_size=1),
        st.frozensets(_DAYS, max_size=12),
        st.integers(5, 60),
        st.integers(4, 20),
        st.lists(
            st.tuples(_WEEKS, _WEEKS, _WEEKS).map(lambda at: WeeksMoved(min(at[:2]), max(at[:2]), at[2])),
            max_size=3,
        ).map(tuple),
        st.frozensets(_WEEKS, max_size=4).map(lambda weeks: tuple(sorted(weeks))),
    )
)
def test_what_is_written_reads_back(year: YearWishes) -> None:
    """Every year reads back the same."""
    assert read_year(write_year(year)) == year
