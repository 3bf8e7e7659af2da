"""Numbers in a row, said one after another in Spanish: a long row can be told in several sentences."""

from onewhole.languages.spanish.making import Nodes
from onewhole.sentences.node import Node, Said, Seam
from onewhole.statements.statement import NumberRow, Relation


def row_told(row: NumberRow) -> Nodes:
    """Say numbers in a row: with commas, or in order.

    >>> from onewhole.languages.spanish.making import told
    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_statement
    >>> text_of(told("el orden es", row_told(read_statement("order 3/4, 1/2, 2/4").ordered)))
    'El orden es 1/2, que es la misma cantidad que 2/4, luego 3/4.'
    """
    nodes: list[Node] = [Said(row.parts[0])]
    for at, part in enumerate(row.parts[1:]):
        if not row.signs:
            nodes.append(Seam(","))
        elif row.signs[at] is Relation.EQUAL:
            nodes.append(Seam(", que es la misma cantidad que", "es la misma cantidad que"))
        else:
            nodes.append(Seam(", luego", "luego"))
        nodes.append(Said(part))
    return tuple(nodes)
