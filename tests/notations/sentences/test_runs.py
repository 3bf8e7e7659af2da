from onewhole.notations.sentences.runs import runs
from onewhole.number.quantity import whole
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentence
from onewhole.statements.reading import read_expression

STRIPS = read_expression("7 2/6")


def test_formulas_stand_between_the_words() -> None:
    """A fraction is a formula, a whole number stays in the words, blanks stay around both."""
    first = Sentence("en-US", ("set", Said(STRIPS), "aside, and take from", Said(whole(9))))
    second = Sentence("en-US", (Said(STRIPS), "is left"))
    assert runs((first, second)) == ("Set ", STRIPS, " aside, and take from 9. ", STRIPS, " is left.")
