"""Equal forms of an answer, named and not demanded, and how an answer is checked."""

from onewhole.languages.english.making import told
from onewhole.number.quantity import Quantity
from onewhole.sentences.node import Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.statements.statement import Comparison


def same_amount_told(kept: Quantity, other: Quantity) -> tuple[Sentences, ...]:
    """Name an equal form, in more than one wording."""
    return (
        told(Said(kept), "is the same amount as", Said(other)),
        told("another name for", Said(kept), "is", Said(other)),
    )


def one_fraction_told(kept: Quantity, fraction: Quantity) -> Sentences:
    """Name an answer as one fraction."""
    return told("as one fraction", ",", Said(kept), "is", Said(fraction))


def may_stay_told(kept: Quantity) -> tuple[Sentences, ...]:
    """Say that no form is demanded, in more than one wording."""
    return (
        told("you may leave it as", Said(kept)),
        told("both are right"),
        told("you need not change it"),
        told("write either one"),
    )


def check_told(back: Comparison) -> Sentences:
    """Check an answer by undoing what was done."""
    return told("check it by going back", Seam(":"), Said(back))
