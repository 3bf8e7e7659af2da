"""What a key says beside an answer, in Spanish: what a problem needs, how it is checked, where a slip is."""

from onewhole.languages.spanish.making import Nodes, listed, told
from onewhole.problems.needs import REGROUPED, Needs, Operation
from onewhole.sentences.node import Label, Node, Said
from onewhole.sentences.sentence import End, Sentences
from onewhole.statements.expression import Expression
from onewhole.statements.statement import Comparison, Relation
from onewhole.statements.writable import Writable
from onewhole.working.checks import Estimate


def needs_told(asked: Needs) -> Sentences:
    """Say what a problem needs.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.problems.needs import needs
    >>> from onewhole.statements.reading import read_statement
    >>> text_of(needs_told(needs(read_statement("4 - 1 3/8"))))
    'Reagrupar, primero un número entero.'
    """
    if Operation.ROUND in asked.operations:
        return told("justo en el punto medio") if asked.halfway else ()
    if Operation.READ in asked.operations:
        return ()
    notes: list[Nodes] = []
    if asked.regrouping:
        notes.append(("reagrupar",))
    elif REGROUPED.intersection(asked.operations):
        notes.append(("sin reagrupar",))
    if asked.whole_first:
        notes.append(("primero un número entero",))
    if asked.renaming:
        notes.append(("denominadores diferentes" if asked.denominators else "unidades diferentes",))
    return told(listed(notes, joiner=",")) if notes else ()


def estimate_told(estimate: Estimate) -> Sentences:
    """Say what easy numbers come to, and the bounds; no whole sentence, because its name stands before it."""
    return told(*_estimate(estimate, Said(estimate.low), "a", Said(estimate.high)), end=End.TYPED)


def range_told(estimate: Estimate) -> Sentences:
    """Say what easy numbers come to, and the bounds, as a sentence of its own.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> from onewhole.statements.expression import plus
    >>> easy = plus(whole(5000), whole(4000))
    >>> text_of(range_told(Estimate(easy, whole(9000), whole(8000), whole(9000))))
    'Estimación: 5,000 + 4,000 = 9,000, así que por lo menos 8,000 y a lo más 9,000.'
    """
    bounds = ("por lo menos", Said(estimate.low), "y a lo más", Said(estimate.high))
    return told("estimación:", *_estimate(estimate, *bounds))


def _estimate(estimate: Estimate, *bounds: Node) -> Nodes:
    if estimate.easy is None or estimate.about is None:
        return bounds
    easy = Said(Comparison(estimate.easy, estimate.about, Relation.EQUAL))
    return (easy,) if estimate.exact else (easy, ", así que", *bounds)


def missing_told(missing: Writable) -> Sentences:
    """Say what the missing number is."""
    return told("el número que falta es", Said(missing))


def slip_told(sign: int, of: int, would_be: tuple[Expression, Expression], right: Writable) -> Sentences:
    """Say which equals sign of a wrong working is not true, what would be true there, and the answer."""
    return (
        *told("el signo de igual", Label(str(sign)), "de", Label(str(of)), "no es verdadero"),
        *told("lo verdadero es", Said(Comparison(*would_be, Relation.EQUAL))),
        *told("la respuesta es", Said(right)),
    )
