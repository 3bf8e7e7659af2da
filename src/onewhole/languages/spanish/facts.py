"""How a hard fact is found, in Spanish."""

from onewhole.languages.spanish.making import told
from onewhole.sentences.node import Node, Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.statements.statement import Comparison, Relation
from onewhole.working.fact import Fact, Way

_WAYS = {Way.MAKE_TEN: "pasamos por la decena", Way.THINK_ADDITION: "pensamos en sumar"}


def fact_told(fact: Fact) -> Sentences:
    """Say how a hard fact is found, step after step.

    >>> from onewhole.working.fact import hard_difference
    >>> len(fact_told(hard_difference(16, 9))[0].numbers())
    3
    """
    nodes: list[Node] = ["para", Said(fact.asked), ",", _WAYS[fact.way]]
    for at, (left, right) in enumerate(fact.steps):
        nodes += [
            Seam(", luego", "luego") if at else Seam(":"),
            Said(Comparison(left, right, Relation.EQUAL)),
        ]
    return told(*nodes)
