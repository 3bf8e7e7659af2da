"""One night of a class read: with what earlier nights showed of the class, and of each pupil."""

from collections.abc import Collection, Hashable, Mapping, Sequence
from datetime import date
from fractions import Fraction

from msgspec import Struct

from onewhole.marking.diagnosis.diagnosis import CONFIDENT, Weighed, weigh
from onewhole.marking.diagnosis.evidence import exactly
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.marking.diagnosis.notebook import Notebook
from onewhole.marking.diagnosis.prior import NOTHING, Learnt
from onewhole.marking.diagnosis.tables import Replies, Tables
from onewhole.marking.reading.expected import Expected
from onewhole.marking.reading.mark import ClassMarks


class NightRead(Struct, frozen=True):
    """A night read: the odds, the findings in the order of the pupils, and what it leaves of each pupil."""

    weighed: Weighed
    findings: tuple[Finding, ...]
    pupils: Mapping[str, PupilNight]


def read_night(
    marks: ClassMarks,
    earlier: Notebook,
    on: date,
    *,
    confident: Fraction = CONFIDENT,
    elsewhere: Learnt = NOTHING,
) -> NightRead:
    """Read the answers of a night; ``earlier`` are the nights before it.

    ``elsewhere`` is what was learnt of other classes, and does not fade.
    """
    histories, recent = earlier.histories(on), earlier.recent_fits(on)
    weighed = weigh(marks, earlier.learnt(on).plus(elsewhere), confident=confident, histories=histories)
    left = {}
    for pupil, given in zip(marks.pupils, weighed.replies, strict=True):
        if after := weighed.after.get(pupil.pupil):
            followed = {key for key, count in recent.get(pupil.pupil, {}).items() if count}
            left[pupil.pupil] = PupilNight(
                after.shares, exact_fits(marks.expected, weighed.page, given, followed)
            )
    return NightRead(weighed, findings(marks, weighed.diagnoses, recent), left)


def exact_fits(
    expected: Sequence[Expected], page: Tables, given: Replies, followed: Collection[str]
) -> dict[str, int]:
    """Return by pattern how many answers, on differently built problems, are just what it writes.

    In it is every pattern that has such an answer, and with 0 those of ``followed`` that could show and did
    not.
    """
    built: dict[str, set[Hashable]] = {}
    for asked, table, here in zip(expected, page.chances, given, strict=True):
        if here is not None:
            for key in table.ideas:
                exact = table.fits(here, key) and exactly(asked, here, key)
                if exact or key in followed:
                    built.setdefault(key, set()).update([asked.built] if exact else ())
    return {key: len(found) for key, found in sorted(built.items())}
