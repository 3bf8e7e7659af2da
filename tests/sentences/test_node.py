import pytest

from onewhole.sentences.node import Seam, check_words


@pytest.mark.parametrize(
    "words", ["take 5", "a + b", "x", "so =", "½ of it", "one/two", "- that", "two  blanks", ""]
)
def test_words_hold_no_number_and_no_operator(words: str) -> None:
    """A number or a sign is a node of its own."""
    with pytest.raises(ValueError, match="“"):
        check_words(words)


@pytest.mark.parametrize("words", ["take away", "part-whole", "a box", ", so", "the next"])
def test_words_of_a_sentence(words: str) -> None:
    """Hyphens and letters inside words are no signs."""
    check_words(words)


def test_a_seam_holds_words() -> None:
    """Both sides of a seam are words."""
    with pytest.raises(ValueError, match="number"):
        Seam(", then 5")
    with pytest.raises(ValueError, match="number"):
        Seam(", so", "so 5")
