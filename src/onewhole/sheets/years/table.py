"""The weeks of each grade that a year is planned for."""

from collections.abc import Mapping
from types import MappingProxyType

from onewhole.sheets.years.grade_4 import GRADE_4_WEEKS
from onewhole.sheets.years.grade_5 import GRADE_5_WEEKS
from onewhole.sheets.years.topic import YearTopic

#: So many weeks a school year has: common practice, no source.
WEEKS = 36
YEAR_WEEKS: Mapping[int, tuple[YearTopic, ...]] = MappingProxyType({4: GRADE_4_WEEKS, 5: GRADE_5_WEEKS})

for _weeks in YEAR_WEEKS.values():
    assert [topic.week for topic in _weeks] == list(range(1, WEEKS + 1))
