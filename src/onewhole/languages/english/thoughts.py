"""What a child may be thinking, in a child's words, filled from the child's own problem."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.thoughts_of_columns import thought_of_columns
from onewhole.languages.english.thoughts_of_opening import thought_of_opening
from onewhole.languages.english.thoughts_of_pieces import thought_of_pieces
from onewhole.languages.english.thoughts_of_rules import thought_of_rules
from onewhole.languages.english.thoughts_of_sizes import thought_of_sizes
from onewhole.misconceptions.thought import Thought
from onewhole.misconceptions.thoughts.columns import ColumnThought
from onewhole.misconceptions.thoughts.opening import OpeningThought
from onewhole.misconceptions.thoughts.pieces import PieceThought
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.thoughts.sizes import SizeThought
from onewhole.sentences.sentence import Sentences


def thought_told(thought: Thought, words: ClassWords) -> Sentences:
    """Say what a child may be thinking.

    >>> from onewhole.misconceptions.thoughts.opening import TurnedAround
    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(thought_told(TurnedAround(2, 5), ClassWords()))
    "I can't take 5 from 2, so I take 2 from 5."
    """
    if isinstance(thought, RuleThought):
        return thought_of_rules(thought)
    if isinstance(thought, OpeningThought):
        return thought_of_opening(thought, words)
    if isinstance(thought, PieceThought):
        return thought_of_pieces(thought, words)
    if isinstance(thought, SizeThought):
        return thought_of_sizes(thought)
    if isinstance(thought, ColumnThought):
        return thought_of_columns(thought)
    assert_never(thought)
