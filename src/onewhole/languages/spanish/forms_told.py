"""Equal forms of an answer, in Spanish, named and not demanded, and how an answer is checked."""

from onewhole.languages.spanish.making import told
from onewhole.number.quantity import Quantity
from onewhole.sentences.node import Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.statements.statement import Comparison


def same_amount_told(kept: Quantity, other: Quantity) -> tuple[Sentences, ...]:
    """Name an equal form, in more than one wording."""
    return (
        told(Said(kept), "es la misma cantidad que", Said(other)),
        told("otra forma de escribir", Said(kept), "es", Said(other)),
    )


def one_fraction_told(kept: Quantity, fraction: Quantity) -> Sentences:
    """Name an answer as one fraction."""
    return told("como una sola fracción", ",", Said(kept), "es", Said(fraction))


def may_stay_told(kept: Quantity) -> tuple[Sentences, ...]:
    """Say that no form is demanded, in more than one wording."""
    return (
        told("puedes dejarlo como", Said(kept)),
        told("las dos formas están bien"),
        told("no hace falta cambiarlo"),
        told("escribe la que quieras"),
    )


def check_told(back: Comparison) -> Sentences:
    """Check an answer by undoing what was done."""
    return told("lo comprobamos al revés", Seam(":"), Said(back))
