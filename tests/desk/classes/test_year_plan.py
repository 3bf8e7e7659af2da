"""A year planned, and its nights composed."""

from collections import defaultdict
from datetime import date
from itertools import islice, pairwise

import pytest

from onewhole.desk.classes.year_files import composed_year, nights_told, year_ics, year_rows
from onewhole.desk.classes.year_night import NoPageError, askable, compose_night
from onewhole.desk.classes.year_plan import A_NIGHT, ALL_NIGHT, YearPlan, year_plan
from onewhole.problems.standard_code import standard_code
from onewhole.problems.twins import twin_key
from onewhole.sheets.header import Header
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.years.table import YEAR_WEEKS
from onewhole.sheets.years.topic import YearTopic
from onewhole.sheets.years.year_wishes import YearWishes
from tests.kit.how_much import WHOLE, sample
from tests.kit.marking_book import NOW

BEGINS = date(2026, 9, 8)
#: Standards of a week whose pages are on something beside them: what the program asks nothing of, asks under
#: the standard of a neighbor, or asks in another week.
NOT_ASKED = {
    4: "3.OA.C.7 3.NBT.A.2 4.NBT.A.1 4.OA.A.3 4.MD.A.1 4.NF.B.3.a 4.NF.B.3.b",
    5: "5.OA.A.2 5.NF.B.4 5.NF.B.5 5.NF.B.7",
}
#: Standards that pages are composed on: a year meets each.
ASKED = {
    4: "4.OA.B.4 4.NBT.A.2 4.NBT.A.3 4.NBT.B.4 4.NBT.B.5 4.NBT.B.6 4.NF.A.1 4.NF.A.2 4.NF.B.3 4.NF.B.4 "
    "4.NF.C.5 4.NF.C.6 4.NF.C.7 4.MD.A.1 4.MD.A.2",
    5: "5.OA.A.1 5.NBT.A.3 5.NBT.A.4 5.NBT.B.5 5.NBT.B.6 5.NBT.B.7 5.NF.A.1 5.NF.A.2 "
    "5.NF.B.4 5.NF.B.6 5.MD.A.1",
}
#: Nights that are composed, from 0.
NIGHTS: dict[int, tuple[int, ...]] = sample(
    {4: (86, 89), 5: (106,)}, {4: (0, 24, 36, 86, 110), 5: (15, 85, 106, 120, 150)}
)


#: So many problems of a whole year are a twin of an earlier one, at most.
TWINS = {4: 70, 5: 30}


def _plan(grade: int = 4) -> YearPlan:
    return year_plan(YearWishes(BEGINS, grade=grade))


@pytest.mark.parametrize("grade", YEAR_WEEKS)
def test_every_night_has_a_page_or_nothing_to_ask(grade: int) -> None:
    """A night is on its week's topic where pages on it are composed, else it brings earlier ones back."""
    plan = _plan(grade)
    for night in plan.nights:
        assert night.page is not None
        topic = night.week.topic
        assert night.own == (topic is not None and topic.composed)
        assert night.of not in night.back
        assert len(set(night.back)) == len(night.back) <= (A_NIGHT if night.own else ALL_NIGHT)


@pytest.mark.parametrize("grade", YEAR_WEEKS)
def test_nothing_comes_back_before_it_was_taught(grade: int) -> None:
    """What comes back was on an earlier night."""
    seen = set[YearTopic | None]()
    for night in _plan(grade).nights:
        assert seen.issuperset(night.back)
        seen.add(night.of)


def test_what_comes_back_is_spaced_wider_and_wider() -> None:
    """Equal fractions: taught in week 18, back after two weeks, and then later and later."""
    days: dict[int, list[date]] = defaultdict(list)
    for night in _plan().nights:
        for topic in (*night.back, night.of):
            days[topic.week if topic else 0].append(night.day)
    gaps = [(after - before).days for before, after in pairwise(days[18]) if (after - before).days > 4]
    assert gaps[0] in range(10, 18)
    assert max(gaps) >= gaps[0]
    assert len(gaps) >= 3


@pytest.mark.parametrize("grade", YEAR_WEEKS)
def test_pages_are_on_the_standards_of_their_week(grade: int) -> None:
    """Of each week's standards some problem of its pages is, but of those that nothing is asked of yet."""
    met = set()
    for topic in YEAR_WEEKS[grade]:
        codes = {
            standard_code(one, grade, story=told)
            for page in topic.pages
            for one in islice(askable(page, 1), 40)
            for told in {False, topic.stories}
        }
        met |= codes
        for code in topic.codes if topic.composed else ():
            on_it = any(one == code or one.startswith(f"{code}.") for one in codes)
            assert on_it or code in NOT_ASKED[grade].split(), (topic.called, code)
    for standard in ASKED[grade].split():
        assert any(one == standard or one.startswith(f"{standard}.") for one in met), standard


def test_nights_are_composed_within_the_minutes_without_twins() -> None:
    """Some nights of both grades: minutes kept, no two twins on a page, nothing twice, stories where due."""
    for grade, some in NIGHTS.items():
        plan, before = _plan(grade), list[str]()
        for at in some:
            night = plan.nights[at]
            made = compose_night(night, plan.wishes, Header(), before=before)
            sheet = read_sheet(made.typed)
            assert sheet.problems == made.sheet.problems
            assert made.minutes == -(-sum(2 * one.minutes for one in WorkedSheet(sheet).problems) // 2) <= 20
            twins = [twin_key(one.statement) for one in sheet.problems]
            assert len(set(twins)) == len(twins)
            assert not {one.typed for one in sheet.problems} & set(before)
            assert sheet.header.grade == grade
            assert night.of is not None
            assert any(one.story for one in sheet.problems) == (night.own and night.of.stories)
            before += [one.typed for one in sheet.problems]


def test_what_the_class_needs_comes_back_before_what_was_planned() -> None:
    """A problem that is due stands on the page; the planned topics give way."""
    plan = _plan(5)
    night = next(one for one in plan.nights if one.of and one.of.week == 22 and one.back)
    made = compose_night(night, plan.wishes, Header(class_name="Room 12"), back=("9 5/8 - 4 6/8",))
    assert "9 5/8 - 4 6/8" in [one.typed for one in made.sheet.problems]
    assert made.sheet.header.class_name == "Room 12"


def test_a_first_night_on_which_nothing_can_come_back_has_no_page() -> None:
    """A year that begins with angles: nothing was taught that could be asked."""
    wishes = YearWishes(BEGINS, left_out=tuple(at for at in range(1, 37) if at != 33))
    plan = year_plan(wishes)
    with pytest.raises(NoPageError, match="nothing yet that could come back"):
        compose_night(plan.nights[0], wishes, Header())
    assert next(composed_year(plan), None) is None


def test_rows_and_calendar_have_every_night() -> None:
    """A row a week, an event a night."""
    plan = _plan()
    rows = year_rows(plan)
    assert sum(len(row.nights) for row in rows) == len(plan.nights) == 179
    assert all(week < row.week for row in rows for week in row.back)
    assert rows[7].own
    assert not rows[3].own
    assert nights_told(plan).startswith("179 nights in 36 weeks")
    assert year_ics(plan, NOW).count(b"BEGIN:VEVENT") == 179


@pytest.mark.skipif(not WHOLE, reason="the whole walk composes both years")
@pytest.mark.parametrize("grade", YEAR_WEEKS)
def test_the_whole_year_is_composed(grade: int) -> None:
    """Every night: minutes kept, no twins on a page, hardly one in the year, and each standard is met.

    A twin comes again only where fractions are multiplied, of which there are fewer than a year asks, and
    among like fractions, which are listed whole: the same sum or difference of other numbers.
    """
    met, plan, seen, again = set(), _plan(grade), set[object](), 0
    made = list(composed_year(plan))
    assert len(made) == len(plan.nights)
    for _, one in made:
        twins = [twin_key(problem.statement) for problem in one.sheet.problems]
        assert len(set(twins)) == len(twins)
        again += len(seen.intersection(twins))
        seen.update(twins)
        assert one.minutes <= plan.wishes.minutes
        met |= {
            standard_code(problem.statement, grade, story=bool(problem.story))
            for problem in one.sheet.problems
        }
    assert again <= TWINS[grade]
    for standard in ASKED[grade].split():
        assert any(code == standard or code.startswith(f"{standard}.") for code in met), standard
