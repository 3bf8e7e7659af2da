"""Numbers in a row, said one after another, so that a long row can be told in more than one sentence."""

from onewhole.languages.english.making import Nodes
from onewhole.sentences.node import Node, Said, Seam
from onewhole.statements.statement import NumberRow, Relation


def row_told(row: NumberRow) -> Nodes:
    """Say numbers in a row: with commas, or in order: one half, then two thirds, then three fourths.

    >>> from onewhole.languages.english.making import told
    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_statement
    >>> text_of(told("the order is", row_told(read_statement("order 3/4, 1/2, 2/4").ordered)))
    'The order is 1/2, which is the same amount as 2/4, then 3/4.'
    """
    nodes: list[Node] = [Said(row.parts[0])]
    for at, part in enumerate(row.parts[1:]):
        if not row.signs:
            nodes.append(Seam(","))
        elif row.signs[at] is Relation.EQUAL:
            nodes.append(Seam(", which is the same amount as", "it is the same amount as"))
        else:
            nodes.append(Seam(", then", "then"))
        nodes.append(Said(part))
    return tuple(nodes)
