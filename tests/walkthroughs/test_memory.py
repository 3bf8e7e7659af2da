"""Sentences are cut at their seams, and long ones are not said a dozen times."""

import re

import pytest

from onewhole.notations.aloud import MOST_WORDS, spoken_words
from onewhole.walkthroughs.memory import MOST_OFTEN, Memory, cut

LONG = (
    "For 146 - 57, think of adding: 57 + 3 = 60, then 60 + 86 = 146, then 3 + 86 = 89.",
    "It needs 12 of 14 to be as big as one, so go on and take it from the one we put on the top.",
    "The club has 5 1/3 strips of red paper and 2 2/3 strips of blue paper on a table, and uses some.",
    "one two three " * 12,
)


@pytest.mark.parametrize("sentence", LONG)
def test_no_part_is_longer_than_twenty_spoken_words(sentence: str) -> None:
    """Each part is short enough, and no word but a joining one is lost."""
    parts = cut(sentence)
    assert len(parts) > 1
    assert all(spoken_words(part) <= MOST_WORDS for part in parts)
    before, after = (set(re.findall(r"[\w/]+", told.lower())) for told in (sentence, " ".join(parts)))
    assert before - after <= {"and"}


def test_a_blank_does_not_end_a_sentence() -> None:
    """A question mark that stands for a number is no end."""
    assert cut("Find it: 2 1/3 + ? = 4. Do it now.") == ("Find it: 2 1/3 + ? = 4.", "Do it now.")


def test_a_long_sentence_is_told_four_times_and_a_short_one_always() -> None:
    """The fifth time the long one is left out, and another wording is picked."""
    memory = Memory()
    long, short = "Strips from strips, and then sixths from sixths.", "One strip is 6 sixths."
    told = [memory.tell(long, short) for _ in range(MOST_OFTEN + 1)]
    assert told[-2:] == [(long, short), (short,)]
    assert memory.pick(0, long, "Take each from its own kind.") == ("Take each from its own kind.",)


def test_wordings_take_turns() -> None:
    """The place of a problem chooses the wording, the same every time."""
    assert [Memory().pick(at, "Yes.", "No.") for at in range(3)] == [("Yes.",), ("No.",), ("Yes.",)]


def test_a_mark_is_remembered_once() -> None:
    """The first time is the first time."""
    memory = Memory()
    assert [memory.once("tens"), memory.once("tens")] == [True, False]
