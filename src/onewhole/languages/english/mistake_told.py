"""A likely mistake: how it is shown, and why it is not so."""

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import Nodes, a_single, told
from onewhole.number.quantity import Quantity
from onewhole.number.unit import ONE
from onewhole.sentences.node import Counted, Said, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.statements.expression import Expression
from onewhole.statements.statement import Comparison, Relation
from onewhole.statements.writable import Writable

_PIECE = Thing("piece", "pieces", None)
_NOT_SO = {
    Relation.LESS: "is not less than",
    Relation.EQUAL: "is not the same amount as",
    Relation.GREATER: "is not greater than",
}


def may_be_written(wrong: Writable) -> tuple[Sentences, ...]:
    """Show what somebody may write, in more than one wording."""
    return (told("someone may write", Said(wrong)), told("a friend may write", Said(wrong)))


def still_the_same(wrote: Quantity, answer: Quantity) -> Sentences:
    """Say that an answer in another form is the same amount."""
    return (
        told("someone may write", Said(wrote))
        + told(Said(wrote), "is the same amount as", Said(answer))
        + told("it can still be written the usual way")
    )


def no_pieces_told(words: ClassWords) -> Sentences:
    """Say why nothing is cut into 0 pieces."""
    return told("but", a_single(ONE, words), "cannot be cut into", Counted(0, _PIECE))


def not_so_told(wrong: Comparison) -> Sentences:
    """Say that a comparison with the wrong sign is not so. Raises ValueError for one without a sign."""
    if wrong.sign is None:
        msg = "a comparison without a sign claims nothing"
        raise ValueError(msg)
    return told("but", Said(wrong.left), _NOT_SO[wrong.sign], Said(wrong.right))


def does_not_fit(wrote: Quantity) -> Sentences:
    """Say that a number does not fit the blank."""
    return told("but", Said(wrote), "does not fit the blank")


def not_the_answer(wrote: Writable) -> Sentences:
    """Say that something is not the answer."""
    return told("but", "the answer is not", Said(wrote))


def not_equal_told(was: Expression, became: Expression) -> Sentences:
    """Say that one part of a line is not equal to what was written for it."""
    return told("but", Said(was), "is not equal to", Said(became))


def right_line_told(line: Writable) -> Sentences:
    """Say the line that should stand there."""
    return told("the right line is", Said(line))


def truth_told(outcome: Nodes) -> Sentences:
    """Say what is so."""
    return told(outcome)


def answer_is_told(answer: Quantity) -> Sentences:
    """Say the answer alone."""
    return told("the answer is", Said(answer))
