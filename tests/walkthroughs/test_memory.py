"""Sentences are cut at their seams, and long ones are not said a dozen times."""

from onewhole.languages.english.facts import fact_told
from onewhole.languages.english.making import told
from onewhole.notations.sentences.speech import words_spoken
from onewhole.sentences.node import Seam
from onewhole.sentences.sentence import Sentences
from onewhole.statements.reading import read_expression
from onewhole.walkthroughs.memory import MOST_OFTEN, MOST_WORDS, Memory, Once, cut, fits
from onewhole.working.fact import hard_difference
from tests.kit.saying import says, written

YES, NO = says("Yes."), says("No.")


def test_a_long_fact_is_cut_at_its_steps() -> None:
    """Each part has 20 spoken words at most, and nothing is lost but the joining words."""
    fact = hard_difference(146, 57)
    assert fact is not None
    assert written(cut(fact_told(fact))) == [
        "For 146 - 57, think of adding: 57 + 3 = 60.",
        "Then 60 + 86 = 146, then 3 + 86 = 89.",
    ]


def test_the_last_seam_that_is_early_enough_is_taken() -> None:
    """A sentence is cut as late as it can be, and what is left is cut again."""
    words = "one two three four five six seven eight nine"
    parts = cut(told(words, Seam(", and"), words, Seam(", so", "so"), words))
    assert written(parts) == [
        "One two three four five six seven eight nine, and one two three four five six seven eight nine.",
        "So one two three four five six seven eight nine.",
    ]
    assert all(words_spoken(part) <= MOST_WORDS for part in parts)


def test_what_has_no_seam_stays_whole() -> None:
    """Nobody cuts between two words."""
    long: Sentences = told(" ".join(["kite"] * (MOST_WORDS + 1)))
    assert cut(long) == long
    assert not fits(long)
    assert fits(YES)


def test_a_long_sentence_is_told_four_times_and_a_short_one_always() -> None:
    """The fifth time the long one is left out, and another wording is picked."""
    memory = Memory()
    long = says("Strips from strips, and then sixths from sixths.")
    short = says("One strip is 6 sixths.")
    heard = [memory.tell(long + short) for _ in range(MOST_OFTEN + 1)]
    assert heard[-2:] == [long + short, short]
    other = says("Take each from its own kind.")
    assert memory.pick(0, long, other) == other


def test_wordings_take_turns() -> None:
    """The place of a problem chooses the wording, the same every time."""
    assert [Memory().pick(at, YES, NO) for at in range(3)] == [YES, NO, YES]


def test_a_mark_and_a_fact_are_told_once() -> None:
    """The first time is the first time."""
    memory = Memory()
    fact = read_expression("13 - 5")
    assert [memory.once(Once.TENS), memory.once(fact), memory.once(Once.TENS), memory.once(fact)] == [
        True,
        True,
        False,
        False,
    ]
