"""A likely mistake, in Spanish: how it is shown, and why it is not so."""

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import PIECE, Nodes, a_single, told
from onewhole.number.quantity import Quantity
from onewhole.number.unit import ONE
from onewhole.sentences.node import Counted, Said
from onewhole.sentences.sentence import Sentences
from onewhole.statements.expression import Expression
from onewhole.statements.statement import Comparison, Relation
from onewhole.statements.writable import Writable

_NOT_SO = {
    Relation.LESS: "no es menor que",
    Relation.EQUAL: "no es la misma cantidad que",
    Relation.GREATER: "no es mayor que",
}


def may_be_written(wrong: Writable) -> tuple[Sentences, ...]:
    """Show what somebody may write, in more than one wording."""
    return (told("alguien puede escribir", Said(wrong)), told("otra persona puede escribir", Said(wrong)))


def still_the_same(wrote: Quantity, answer: Quantity) -> Sentences:
    """Say that an answer in another form is the same amount."""
    return (
        told("alguien puede escribir", Said(wrote))
        + told(Said(wrote), "es la misma cantidad que", Said(answer))
        + told("todavía se puede escribir como siempre")
    )


def no_pieces_told(words: ClassWords) -> Sentences:
    """Say why nothing is cut into 0 pieces."""
    return told("pero", a_single(ONE, words), "no se puede cortar en", Counted(0, PIECE))


def not_so_told(wrong: Comparison) -> Sentences:
    """Say that a comparison with the wrong sign is not so. Raises ValueError for one without a sign."""
    if wrong.sign is None:
        msg = "a comparison without a sign claims nothing"
        raise ValueError(msg)
    return told("pero", Said(wrong.left), _NOT_SO[wrong.sign], Said(wrong.right))


def does_not_fit(wrote: Quantity) -> Sentences:
    """Say that a number does not fit the blank."""
    return told("pero", Said(wrote), "no es lo que falta en el espacio")


def not_the_answer(wrote: Writable) -> Sentences:
    """Say that something is not the answer."""
    return told("pero", "la respuesta no es", Said(wrote))


def not_equal_told(was: Expression, became: Expression) -> Sentences:
    """Say that one part of a line is not equal to what was written for it."""
    return told("pero", Said(was), "no es igual a", Said(became))


def right_line_told(line: Writable) -> Sentences:
    """Say the line that should stand there."""
    return told("el renglón correcto es", Said(line))


def truth_told(outcome: Nodes) -> Sentences:
    """Say what is so."""
    return told(outcome)


def answer_is_told(answer: Quantity) -> Sentences:
    """Say the answer alone."""
    return told("la respuesta es", Said(answer))
