import pytest

from onewhole.notations.sentences.layout import joined
from onewhole.notations.sentences.speech import spoken, words_spoken
from onewhole.notations.sentences.text import sentence_text
from onewhole.number.ladder import mixed, places
from onewhole.number.quantity import whole
from onewhole.sentences.node import Counted, Label, Naming, Node, Said, Seam, Spot, Thing, Typed
from onewhole.sentences.sentence import End, Sentence
from onewhole.statements.reading import read_expression, read_statement

SIXTHS = mixed(6).units[1]
TENS = places(2).units[0]
STRIP = Thing("strip", "strips")


@pytest.mark.parametrize(
    ("nodes", "text", "speech"),
    [
        (
            (Counted(1, STRIP, spelt=True), "is", Counted(6, SIXTHS)),
            "One strip is 6 sixths.",
            "One strip is six sixths.",
        ),
        (
            (Counted(1, STRIP), "and", Counted(0, SIXTHS)),
            "1 strip and 0 sixths.",
            "One strip and zero sixths.",
        ),
        ((Said(read_expression("7 2/6")), "is left"), "7 2/6 is left.", "Seven and two sixths is left."),
        ((Counted(8, TENS), "are", Said(whole(80))), "8 tens are 80.", "Eight tens are eighty."),
        (("open a", Naming(STRIP, many=False)), "Open a strip.", "Open a strip."),
        (("number", Label("3b"), "again"), "Number 3b again.", "Number three b again."),
        (("number", Label("A1")), "Number A1.", "Number A1."),
        (
            ("for", Said(read_expression("13 - 6")), Seam(":"), Said(read_statement("13 - 3 = 10"))),
            "For 13 - 6: 13 - 3 = 10.",
            "For thirteen minus six: thirteen minus three equals ten.",
        ),
    ],
)
def test_text_and_speech(nodes: tuple[Node, ...], text: str, speech: str) -> None:
    """One tree, two notations: capital, full stop and blanks are the notation's."""
    said = Sentence("en-US", nodes)
    assert (sentence_text(said), spoken(said)) == (text, speech)


def test_what_was_typed_stays() -> None:
    """No capital and no full stop is put to a typed text; its numbers are said where they were found."""
    story = Typed("tom has 6 in a row!", (Spot(8, 9, whole(6)),))
    said = Sentence("en-US", (story,), End.TYPED)
    assert (sentence_text(said), spoken(said)) == ("tom has 6 in a row!", "tom has six in a row!")


def test_several_sentences_and_their_words() -> None:
    """Sentences follow one another; words are counted as they are spoken."""
    said = Sentence("en-US", ("which is more, a or b",), End.ASKS)
    left = Sentence("en-US", (Said(read_expression("7 2/6")), "is left"))
    assert joined((said, left), spoken) == "Which is more, a or b? Seven and two sixths is left."
    assert words_spoken(left) == 6
