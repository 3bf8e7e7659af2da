"""What a person typed is read once: "in" is a word where it is one, and a number is a number."""

from fractions import Fraction

import pytest

from onewhole.notations.sentences.layout import joined
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import text_of
from onewhole.sentences.sentence import Sentence
from onewhole.sentences.typed import typed, typed_sentences
from onewhole.statements.expression import value
from onewhole.statements.statement import Question

SAID = {
    "Today 6 in the back row are away.": "Today six in the back row are away.",
    "She cuts 4 in half.": "She cuts four in half.",
    "That makes 25 in all.": "That makes twenty-five in all.",
    "A tail is 5 in long.": "A tail is five inches long.",
    "It needs 3 ft 6 in of string.": "It needs three feet six inches of string.",
    "They fly for 2 h 30 min.": "They fly for two hours thirty minutes.",
    "A kite takes 2 2/3 strips.": "A kite takes two and two thirds strips.",
    "Is 5/6 more than 7/8?": "Is five sixths more than seven eighths?",
    "Room 12 has 1,200 beads.": "Room twelve has one thousand two hundred beads.",
    "It weighs 5.2 kilograms.": "It weighs five point two kilograms.",
    "Work out 7 2/6 - 3 5/6.": "Work out seven and two sixths minus three and five sixths.",
    "On 11/25/2026 or 2026-11-25 at 4:30.": "On 11/25/2026 or 2026-11-25 at 4:30.",
    "Page 3b (and 4).": "Page 3b (and four).",
    "It has 1,000/2 of them.": "It has one thousand halves of them.",
    "1/0 is no number.": "1/0 is no number.",
    "take five": "take five",
}


@pytest.mark.parametrize("text", SAID)
def test_a_typed_text_is_said_by_its_numbers_and_kept_to_the_letter(text: str) -> None:
    """Numbers become words where they were found; the words round them stay what they are."""
    sentence = typed_sentences(text, "en-US")
    assert joined(sentence, spoken) == SAID[text]
    assert text_of(sentence) == text


def test_a_text_is_parted_after_its_marks_and_not_in_a_blank() -> None:
    """A question mark below a fraction bar is a blank, and does not end a sentence."""
    parts = typed_sentences("Look at 6 ?/6 now. Who is right? Ana!", "en-US")
    assert [spoken(part) for part in parts][1:] == ["Who is right?", "Ana!"]
    assert typed_sentences("   ", "en-US") == ()


def test_what_is_found_are_numbers_of_statements() -> None:
    """The tree knows the numbers: nobody reads the words again."""
    (sentence,) = typed_sentences("Of 7 2/6 strips 3 5/6 are cut.", "en-US")
    assert isinstance(sentence, Sentence)
    found = sentence.numbers()
    assert [value(thing) for thing in found] == [Fraction(22, 3), Fraction(23, 6)]  # type: ignore[arg-type]


def test_a_sum_in_a_text_is_one_thing() -> None:
    """7 - 3 = 4 is found as one statement."""
    spots = typed("Write 7 - 3 here.").spots
    assert [(spot.start, spot.end) for spot in spots] == [(6, 11)]
    assert not isinstance(spots[0].thing, Question)
