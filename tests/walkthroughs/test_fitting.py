"""A lesson fitted into minutes."""

import math

import pytest

from onewhole.languages.english.words import words_for
from onewhole.statements.reading import read_statement
from onewhole.walkthroughs.cue import Role
from onewhole.walkthroughs.fitting import FASTEST, TooShortError, fitted
from onewhole.walkthroughs.lesson import Item, Lesson, Pace
from onewhole.walkthroughs.script import script
from onewhole.walkthroughs.timing import timed
from tests.kit.worked import all_workings

ASKED = (
    "7 2/6 - 3 5/6",
    "5 1/8 - 2 5/8",
    "4 1/3 - 1 2/3",
    "6 3/10 - 2 7/10",
    "9 1/4 - 3 3/4",
    "8 2/5 - 4 4/5",
)


def lesson(*asked: str) -> Lesson:
    """A night of the kite club, every problem regrouped first."""
    items = []
    for label, typed in enumerate(asked, start=1):
        working = all_workings(typed)["regroup_first"]
        items.append(Item(str(label), read_statement(typed), working.answer, working))
    words = words_for("strip of kite paper")
    return Lesson("Kites", "March 5", "Room 12's kite club", words, tuple(items))


NIGHT = lesson(*ASKED)
LONGEST = fitted(NIGHT, Pace(), None)[1].length


def shortest() -> TooShortError:
    """The refusal of a minute."""
    with pytest.raises(TooShortError) as caught:
        fitted(NIGHT, Pace(), 1)
    return caught.value


def test_without_minutes_it_is_told_in_full() -> None:
    """Nothing is merged and the pace is the teacher's."""
    made, timeline = fitted(NIGHT, Pace(), None)
    assert timeline == timed(made, Pace())
    assert [cue.says for chapter in made.chapters for cue in chapter.cues] == [
        cue.says for chapter in script(NIGHT).chapters for cue in chapter.cues
    ]


def test_room_enough_changes_nothing() -> None:
    """Minutes that hold the whole film leave it as it is."""
    assert fitted(NIGHT, Pace(), math.ceil(LONGEST / 60)) == fitted(NIGHT, Pace(), None)


def test_it_fits_or_says_the_shortest_length() -> None:
    """Every number of minutes gives a film that fits, or the same refusal with the shortest length."""
    refused = shortest()
    least = int(str(refused.remedy).split()[2])
    for minutes in range(1, math.ceil(LONGEST / 60) + 1):
        if minutes < least:
            with pytest.raises(TooShortError):
                fitted(NIGHT, Pace(), minutes)
        else:
            assert fitted(NIGHT, Pace(), minutes)[1].length <= 60 * minutes


def test_the_refusal_tells_what_to_do() -> None:
    """It says the length that was asked for, the shortest there is, and what to change."""
    refused = shortest()
    assert refused.what.startswith("the film does not fit into 1 minute; the shortest is ")
    assert str(refused.remedy).startswith("Give it ")


def test_a_fast_teacher_is_not_slowed() -> None:
    """A pace above the fastest stays; only steps are merged."""
    with pytest.raises(TooShortError) as caught:
        fitted(NIGHT, Pace(words_a_minute=FASTEST + 30), 1)
    assert caught.value.what != shortest().what


def test_the_wait_before_an_answer_is_the_pace_s() -> None:
    """Answers wait as long as the teacher wishes; what does not wait does not begin to."""
    made, _ = fitted(NIGHT, Pace(think=Pace().think * 2), None)
    waits = {(cue.role, cue.think) for chapter in made.chapters for cue in chapter.cues}
    assert (Role.ANSWER, Pace().think * 2) in waits
    assert {think for _, think in waits} == {0, Pace().think * 2}
