"""What a key says beside an answer: what a problem needs, how its answer is checked, where a slip is."""

from onewhole.languages.english.making import Nodes, listed, told
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
    'Regroup, a whole number first.'
    """
    if Operation.ROUND in asked.operations:
        return told("exactly halfway") if asked.halfway else ()
    if Operation.READ in asked.operations:
        return ()
    notes: list[Nodes] = []
    if asked.regrouping:
        notes.append(("regroup",))
    elif REGROUPED.intersection(asked.operations):
        notes.append(("no regrouping",))
    if asked.whole_first:
        notes.append(("a whole number first",))
    if asked.renaming:
        notes.append(("unlike denominators" if asked.denominators else "unlike units",))
    return told(listed(notes, joiner=",")) if notes else ()


def estimate_told(estimate: Estimate) -> Sentences:
    """Say what easy numbers come to, and the bounds; no whole sentence, because its name stands before it."""
    return told(*_estimate(estimate, Said(estimate.low), "to", Said(estimate.high)), end=End.TYPED)


def range_told(estimate: Estimate) -> Sentences:
    """Say what easy numbers come to, and the bounds, as a sentence of its own.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> from onewhole.statements.expression import plus
    >>> easy = plus(whole(5000), whole(4000))
    >>> text_of(range_told(Estimate(easy, whole(9000), whole(8000), whole(9000))))
    'Estimate: 5,000 + 4,000 = 9,000, so at least 8,000 and at most 9,000.'
    """
    bounds = ("at least", Said(estimate.low), "and at most", Said(estimate.high))
    return told("estimate:", *_estimate(estimate, *bounds))


def _estimate(estimate: Estimate, *bounds: Node) -> Nodes:
    if estimate.easy is None or estimate.about is None:
        return bounds
    easy = Said(Comparison(estimate.easy, estimate.about, Relation.EQUAL))
    return (easy,) if estimate.exact else (easy, ", so", *bounds)


def missing_told(missing: Writable) -> Sentences:
    """Say what the missing number is."""
    return told("the missing number is", Said(missing))


def slip_told(sign: int, of: int, would_be: tuple[Expression, Expression], right: Writable) -> Sentences:
    """Say which equals sign of a wrong working is not true, what would be true there, and the answer."""
    return (
        *told("equals sign", Label(str(sign)), "of", Label(str(of)), "is not true"),
        *told("true would be", Said(Comparison(*would_be, Relation.EQUAL))),
        *told("the answer is", Said(right)),
    )
