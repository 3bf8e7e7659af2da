"""What to ask a child about a pattern, in a fourth-grade teacher's words and on the child's own problem."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.asks_of_adding import ask_of_adding
from onewhole.languages.english.asks_of_amounts import ask_of_amounts
from onewhole.languages.english.asks_of_columns import ask_of_columns
from onewhole.languages.english.asks_of_comparing import ask_of_comparing
from onewhole.languages.english.asks_of_gaps import ask_of_gaps
from onewhole.languages.english.asks_of_listing import ask_of_listing
from onewhole.languages.english.asks_of_naming import ask_of_naming
from onewhole.languages.english.asks_of_opening import ask_of_opening
from onewhole.languages.english.asks_of_pieces import ask_of_pieces
from onewhole.languages.english.asks_of_plotting import ask_of_plotting
from onewhole.languages.english.asks_of_products import ask_of_products
from onewhole.languages.english.asks_of_quotients import ask_of_quotients
from onewhole.languages.english.asks_of_rounding import ask_of_rounding
from onewhole.languages.english.asks_of_sizes import ask_of_sizes
from onewhole.languages.english.asks_of_steps import ask_of_steps
from onewhole.languages.english.asks_of_stories import ask_of_stories
from onewhole.misconceptions.ask import Ask
from onewhole.misconceptions.asks.adding import AddingAsk
from onewhole.misconceptions.asks.amounts import AmountAsk
from onewhole.misconceptions.asks.columns import ColumnAsk
from onewhole.misconceptions.asks.comparing import ComparingAsk
from onewhole.misconceptions.asks.gaps import GapAsk
from onewhole.misconceptions.asks.listing import ListAsk
from onewhole.misconceptions.asks.naming import NamingAsk
from onewhole.misconceptions.asks.opening import OpeningAsk
from onewhole.misconceptions.asks.pieces import PieceAsk
from onewhole.misconceptions.asks.plotting import PlotAskedOf
from onewhole.misconceptions.asks.products import ProductAsk
from onewhole.misconceptions.asks.quotients import QuotientAsk
from onewhole.misconceptions.asks.rounding import RoundingAsk
from onewhole.misconceptions.asks.sizes import SizeAsk
from onewhole.misconceptions.asks.steps import StepAsk
from onewhole.misconceptions.asks.stories import StoryAsk
from onewhole.sentences.sentence import Sentences


def ask_told(ask: Ask, words: ClassWords) -> Sentences:
    """Say what to ask a child.

    >>> from onewhole.misconceptions.asks.opening import HadBefore
    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(ask_told(HadBefore(*mixed(6).units, 2), ClassWords("strip", "strips")))
    'Before you cut one strip you had 2 sixths. Where are they now?'
    """
    if isinstance(ask, OpeningAsk):
        return ask_of_opening(ask, words)
    if isinstance(ask, PieceAsk):
        return ask_of_pieces(ask, words)
    if isinstance(ask, AmountAsk):
        return ask_of_amounts(ask, words)
    if isinstance(ask, SizeAsk):
        return ask_of_sizes(ask)
    if isinstance(ask, ColumnAsk):
        return ask_of_columns(ask)
    if isinstance(ask, AddingAsk):
        return ask_of_adding(ask)
    if isinstance(ask, ComparingAsk):
        return ask_of_comparing(ask, words)
    if isinstance(ask, GapAsk):
        return ask_of_gaps(ask)
    if isinstance(ask, NamingAsk):
        return ask_of_naming(ask, words)
    if isinstance(ask, RoundingAsk):
        return ask_of_rounding(ask)
    if isinstance(ask, ProductAsk):
        return ask_of_products(ask)
    if isinstance(ask, StepAsk):
        return ask_of_steps(ask)
    if isinstance(ask, StoryAsk):
        return ask_of_stories(ask)
    if isinstance(ask, PlotAskedOf):
        return ask_of_plotting(ask)
    if isinstance(ask, ListAsk):
        return ask_of_listing(ask)
    if isinstance(ask, QuotientAsk):
        return ask_of_quotients(ask)
    assert_never(ask)
