"""What to ask a child about a pattern: a closed family with its holes filled, never a sentence.

Read a question with ``match`` and end with ``assert_never``.

>>> from onewhole.misconceptions.catalogue import by_id
>>> from onewhole.statements.reading import read_statement
>>> pattern = by_id("A06")
>>> pattern.ask(pattern.case(read_statement("7 2/6 - 3 5/6"))).have
2
"""

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

#: Every question.
Ask = (
    OpeningAsk
    | PieceAsk
    | AmountAsk
    | SizeAsk
    | ColumnAsk
    | AddingAsk
    | ComparingAsk
    | GapAsk
    | NamingAsk
    | ProductAsk
    | QuotientAsk
    | RoundingAsk
    | StepAsk
    | ListAsk
    | PlotAskedOf
    | StoryAsk
)
