"""What a child may be thinking: a closed family of thoughts with their holes filled, never a sentence.

It is our own guess. Read a thought with ``match`` and end with ``assert_never``.

>>> from onewhole.misconceptions.catalogue import by_id
>>> from onewhole.statements.reading import read_statement
>>> pattern = by_id("A01")
>>> thought = pattern.thinking(pattern.case(read_statement("7 2/6 - 3 5/6")))
>>> thought.have, thought.need
(2, 5)
"""

from onewhole.misconceptions.thoughts.columns import ColumnThought
from onewhole.misconceptions.thoughts.opening import OpeningThought
from onewhole.misconceptions.thoughts.pieces import PieceThought
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.thoughts.sizes import SizeThought

#: Every thought.
Thought = RuleThought | OpeningThought | PieceThought | SizeThought | ColumnThought
