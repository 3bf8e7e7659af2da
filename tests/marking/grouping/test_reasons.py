"""Every reason for a pupil's place is true, over many invented classes, kept groups and teachers' moves."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace as changed
from random import Random

import pytest
from msgspec.structs import replace

from lab.answers import class_rows
from lab.pages import room12
from onewhole.desk.tomorrow.seats import seated
from onewhole.findings.attendance import PaperWord
from onewhole.findings.placing import WhyPlaced
from onewhole.marking.diagnosis.diagnosis import weigh
from onewhole.marking.diagnosis.finding import findings
from onewhole.marking.diagnosis.notebook import Sat, Stay
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.group_settings import GroupSettings, Sizes
from onewhole.marking.grouping.keeping import Seating
from onewhole.marking.reading.mark import ClassMarks, PupilMarks, Verdict
from tests.kit.answers import marked_against
from tests.kit.classes import sat
from tests.kit.how_much import sample
from tests.kit.odds import known
from tests.kit.reasons import Place, is_true

#: How many classes of the lab; each is seated as it came, and with late papers, moves and a kept seating.
CLASSES = sample(5, 12, 1000)
#: Reasons that the teacher's own act brings, told where it is told: tests/desk/tomorrow/test_morning.py.
NEVER_HERE = {"FindingSetAside"}


def _places(marks: ClassMarks, made: Seating, alone: tuple[Group, ...], word: "_Word") -> Iterator[Place]:
    by_pupil = {found.pupil: found for found in word.found}
    pupils = {one.pupil: one for one in marks.pupils}
    for group in made.groups:
        for one in group.placings:
            yield Place(
                pupils[one.pupil],
                by_pupil[one.pupil],
                one,
                group,
                made.groups,
                alone,
                word.settings,
                marks.expected,
                frozenset(word.put),
            )


class _Word:
    """What one class is seated with."""

    def __init__(self, marks: ClassMarks, chance: Random) -> None:
        self.found = findings(marks, weigh(marks, known=known(room12())[1]).diagnoses)
        self.settings = GroupSettings(
            chance.randint(1, 5), chance.choice([Sizes(), Sizes(2, 4), Sizes(4, 5), Sizes(1, 3)])
        )
        self.put: dict[str, Sat] = {}


def _with_word(pupil: PupilMarks, chance: Random) -> PupilMarks:
    """Say of a paper that is not there why, or nothing."""
    is_there = any(mark.verdict is not Verdict.BLANK for mark in pupil.marks)
    return pupil if is_there else replace(pupil, paper=chance.choice(list(PaperWord)))


def _seatings(which: int) -> Iterator[Place]:
    """One class: as it came; with half its papers come late into kept groups; with pupils moved."""
    chance = Random(which)
    asked, _ = known(room12())
    rows = {code: list(cells) for code, *cells in class_rows(room12(), which)}
    marks = marked_against(asked, rows)
    word = _Word(marks, chance)
    made = seated(marks.pupils, word.found, word.settings)
    yield from _places(marks, made, made.said, word)
    early = marked_against(
        asked, {code: cells if chance.random() < 0.6 else [""] * len(cells) for code, cells in rows.items()}
    )
    early = replace(early, pupils=tuple(_with_word(one, chance) for one in early.pupils))
    before = _Word(early, Random(which))
    before.settings = word.settings
    first = seated(early.pupils, before.found, before.settings)
    yield from _places(early, first, first.said, before)
    sits = sat(first.groups)
    late = seated(marks.pupils, word.found, word.settings, sits=sits)
    yield from _places(marks, late, late.said, word)
    word.put = {
        code: replace(chance.choice(made.groups).seat, stays=Stay.TONIGHT)
        for code in chance.sample(list(rows), 3)
    }
    moved = seated(marks.pupils, word.found, word.settings, places=word.put)
    yield from _places(marks, moved, made.said, word)


def test_every_reason_is_true() -> None:
    """Of each pupil, finding and group; and every reason there is is met on the way."""
    met: Counter[str] = Counter()
    for which in range(CLASSES):
        for place in _seatings(which):
            for why in place.placing.because:
                assert is_true(why, place), (which, place.marks.pupil, why)
                met[type(why).__name__] += 1
    every = {one.__name__ for one in WhyPlaced.__args__}
    if CLASSES > 100:
        assert set(met) == every - NEVER_HERE - {"SteadyNotOurs"}
    assert sum(met.values()) > CLASSES * 60
    print(sorted(met.items()))


@pytest.mark.parametrize("which", range(3))
def test_a_reason_of_somebody_else_is_found_untrue(which: int) -> None:
    """The predicates can fail: what is said of one pupil is not true of one whose answers are others."""
    places = list(_seatings(which))[:24]
    wrong = sum(
        not is_true(why, changed(one, marks=other.marks, found=other.found, placing=other.placing))
        for one, other in zip(places, reversed(places), strict=True)
        for why in one.placing.because
    )
    assert wrong > 10
