"""A lesson fitted into so many minutes."""

import math
from collections.abc import Iterator
from fractions import Fraction

from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.walkthroughs.cue import Script
from onewhole.walkthroughs.lesson import Lesson, Pace
from onewhole.walkthroughs.manner import MOST_MERGED
from onewhole.walkthroughs.script import script
from onewhole.walkthroughs.timeline import Timeline
from onewhole.walkthroughs.timing import timed

#: Words a minute that are still followed, and by how much the pace is raised at a time.
FASTEST, FASTER = 150, 5


class TooShortError(InputError):
    """The lesson cannot be told in so few minutes."""


def fitted(lesson: Lesson, pace: Pace, minutes: int | None) -> tuple[Script, Timeline]:
    """Return a lesson's script and its film in time; no longer than ``minutes`` where given.

    First steps are told together, more and more; only then the pace is raised, up to 150 words a minute. No
    reason is left out the first time. A cue that waits waits as long as the pace says. Raises TooShortError,
    which tells the shortest length there is.

    >>> from onewhole.languages.class_words import ClassWords
    >>> from onewhole.problems.answer import answer
    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.walkthroughs.lesson import Item
    >>> asked = read_statement("3 x 2/5")
    >>> night = Lesson("Tails", "", "", ClassWords(), (Item("1", asked, answer(asked)),))
    >>> _, film = fitted(night, Pace(), 2)
    >>> film.length < 120
    True
    """
    ways = _ways(lesson, pace)
    if minutes is None:
        return next(ways)
    shortest: Fraction | None = None
    for made, timeline in ways:
        if timeline.length <= 60 * minutes:
            return made, timeline
        shortest = timeline.length if shortest is None else min(shortest, timeline.length)
    assert shortest is not None, "there is always a first way"
    whole = math.ceil(shortest / 60)
    msg = f"the film does not fit into {_minutes(minutes)}; the shortest is {_length(shortest)}"
    raise TooShortError(msg, remedy=f"Give it {_minutes(whole)}, or film fewer problems.")


def _ways(lesson: Lesson, pace: Pace) -> Iterator[tuple[Script, Timeline]]:
    """Yield the lesson told shorter and shorter, then faster and faster."""
    made = _made(lesson, pace, 0)
    yield made, timed(made, pace)
    for merge in range(1, MOST_MERGED + 1):
        made = _made(lesson, pace, merge)
        yield made, timed(made, pace)
    slow = pace.words_a_minute
    for faster in (*range(slow + FASTER, FASTEST, FASTER), *([FASTEST] if slow < FASTEST else [])):
        yield made, timed(made, replace(pace, words_a_minute=faster))


def _made(lesson: Lesson, pace: Pace, merge: int) -> Script:
    return _thinking(script(lesson, merge=merge), pace.think)


def _thinking(made: Script, think: Fraction) -> Script:
    chapters = [
        replace(chapter, cues=tuple(replace(cue, think=think) if cue.think else cue for cue in chapter.cues))
        for chapter in made.chapters
    ]
    return replace(made, chapters=tuple(chapters))


def _minutes(count: int) -> str:
    return f"{count} minute{'' if count == 1 else 's'}"


def _length(seconds: Fraction) -> str:
    """Write minutes and seconds, seconds rounded up."""
    minutes, rest = divmod(math.ceil(seconds), 60)
    return f"{minutes} min {rest} s"
