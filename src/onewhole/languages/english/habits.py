"""What is told of a composed page that keeps not every habit of good pages."""

from typing import assert_never

from onewhole.findings.habit import Habit
from onewhole.languages.english.making import told
from onewhole.sentences.sentence import Sentences


def no_room_for(habit: Habit) -> Sentences:
    """Say that the wishes leave no room for a habit.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(no_room_for(Habit.BOTH)).partition(": ")[2]
    'a third of the problems at least add, and a third take away.'
    """
    return told("these wishes leave no room for a habit of good pages:", _habit(habit))


def _habit(habit: Habit) -> str:
    match habit:
        case Habit.APART:
            return "every pattern about regrouping or the pieces shows, and every two of them are told apart"
        case Habit.BOTH:
            return "a third of the problems at least add, and a third take away"
        case Habit.CLIMB:
            return "a sixth of the problems are as easy as they come, and no more than half are equally hard"
        case Habit.VARIETY:
            twice = "no denominator and no form of numbers has more than twice its share"
            return f"{twice}, and no more than a sixth of the page looks alike"
        case Habit.WHOLES:
            return "in no more than a third of what is regrouped the first number is a whole number"
        case Habit.NUMBERS:
            return "hardly a number comes again"
        case _:
            assert_never(habit)
