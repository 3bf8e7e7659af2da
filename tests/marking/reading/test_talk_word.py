"""The teacher's word after a talk."""

import pytest

from onewhole.marking.reading.talk_word import TalkSaid, TalkWord, TalkWordError, read_word

KNOWN = {"A01", "A02", "B04"}


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("", None),
        ("  ", None),
        ("slip", TalkWord(TalkSaid.SLIP)),
        ("It was  a slip", TalkWord(TalkSaid.SLIP)),
        ("this", TalkWord(TalkSaid.THIS)),
        ("This Idea", TalkWord(TalkSaid.THIS)),
        ("another", TalkWord(TalkSaid.OTHER)),
        ("b04", TalkWord(TalkSaid.THIS, ("B04",))),
        ("this idea: A02 a01 A01", TalkWord(TalkSaid.THIS, ("A01", "A02"))),
        ("another idea: A01", TalkWord(TalkSaid.OTHER, ("A01",))),
    ],
)
def test_a_word_is_read_as_a_teacher_types_it(typed: str, said: TalkWord | None) -> None:
    """Large and small letters and blanks make no difference."""
    assert read_word(typed, KNOWN) == said


@pytest.mark.parametrize("said", TalkSaid)
@pytest.mark.parametrize("about", [(), ("A01",), ("A01", "B04")])
def test_a_word_that_is_kept_reads_back(said: TalkSaid, about: tuple[str, ...]) -> None:
    """The kept text holds all of it."""
    word = TalkWord(said, about)
    assert read_word(word.text, KNOWN) == word


@pytest.mark.parametrize(
    ("typed", "told"),
    [("perhaps", "“perhaps” is no word"), ("this idea: A99", "no pattern “A99”"), ("A99", "no word")],
)
def test_what_is_no_word_is_refused(typed: str, told: str) -> None:
    """The refusal says what may be written."""
    with pytest.raises(TalkWordError, match=told) as refused:
        read_word(typed, KNOWN)
    assert "such as A01" in str(refused.value)
