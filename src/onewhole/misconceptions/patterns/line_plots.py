"""Line plots: marks, places on the axis and stacks are taken for one another.

That numbers on the axis are counted instead of marks, and that what a mark stands for is misread, is told by
a research overview for teachers, read second-hand; that the height of a stack is given for its value, by
notes on a public practice item. The others are common practice; no source was read.
"""

from functools import partial

from onewhole.misconceptions.asks.plotting import (
    BelowFirstTick,
    CountOfWhat,
    EndsOfPlot,
    HowManyOrMuch,
    MarkAbove,
    MarkStandsFor,
    PointAtEach,
    ValueItself,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.plotting import asks_for_more, most_marks, value_named, value_with_more
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.plotting import (
    each_value_once,
    highest_stack,
    marks_for_values,
    on_plot,
    places_beside,
    places_for_marks,
    stacks_compared,
    ticks_counted_on,
    value_too,
    values_for_marks,
)
from onewhole.statements.line_plot import PlotAsk

_read = partial(Pattern, topic=Topic.PLOTS)

OVERVIEW = Source(
    "a research overview for teachers on line plots: numbers on the axis counted instead of marks; what a "
    "mark stands for is misread",
    provenance="read",
    note="second-hand, refers to NCTM (2014)",
)
ITEM = Source(
    "notes on a public practice item: number of marks confused with the value",
    provenance="read",
    note="no count",
)

LINE_PLOTS = (
    _read(
        id="S01",
        name="adds each value once",
        family=Family.NUMERATOR,
        rule="The values that have a mark are added, each once.",
        shows_when="a total is asked and there is more than one mark above a value",
        thinking=plain(RuleThought.VALUES_ONCE),
        ask=filled(MarkAbove, value_with_more),
        source=COMMON,
        example=Example("plot 1/4: 2, 1/2: 3, 3/4: 1; total", "2 3/4", "1 2/4"),
        attempt=on_plot((PlotAsk.TOTAL, PlotAsk.SHARE), each_value_once),
    ),
    _read(
        id="S02",
        name="counts marks instead of adding values",
        family=Family.OPERATION,
        rule="The marks are counted where what they stand for is to be added.",
        shows_when="a total is asked",
        thinking=plain(RuleThought.EACH_MARK_ONE),
        ask=plain(MarkStandsFor()),
        source=OVERVIEW,
        example=Example("plot 1/4: 2, 1/2: 3, 3/4: 1; total", "2 3/4", "6"),
        attempt=on_plot((PlotAsk.TOTAL,), marks_for_values),
    ),
    _read(
        id="S03",
        name="reads the ticks as 1, 2, 3",
        family=Family.NUMERATOR,
        rule="The places on the axis are counted from the left, and these counts are added.",
        shows_when="a total is asked",
        thinking=plain(RuleThought.TICKS_COUNT_ON),
        ask=plain(BelowFirstTick()),
        source=COMMON,
        example=Example("plot 1/4: 2, 1/2: 3, 3/4: 1; total", "2 3/4", "11"),
        attempt=on_plot((PlotAsk.TOTAL,), ticks_counted_on),
    ),
    _read(
        id="S04",
        name="counts the ticks, not the marks",
        family=Family.NUMERATOR,
        rule="The places on the axis are counted where the marks are to be counted.",
        shows_when="it is asked how many there are",
        thinking=plain(RuleThought.PLACES_COUNTED),
        ask=plain(MarkStandsFor()),
        source=OVERVIEW,
        example=Example("plot 1/4: 2, 1/2: 3, 3/4: 1; count", "6", "3"),
        attempt=on_plot((PlotAsk.COUNT,), places_for_marks),
    ),
    _read(
        id="S05",
        name="adds values when a number of things is asked",
        family=Family.OPERATION,
        rule="What the marks stand for is added where they are to be counted.",
        shows_when="it is asked how many there are",
        thinking=plain(RuleThought.ADDS_WHAT_IS_THERE),
        ask=plain(HowManyOrMuch()),
        source=OVERVIEW,
        example=Example("plot 1/4: 2, 1/2: 3, 3/4: 1; count", "6", "2 3/4"),
        attempt=on_plot((PlotAsk.COUNT,), values_for_marks),
    ),
    _read(
        id="S06",
        name="gives the height of the stack",
        family=Family.NUMERATOR,
        rule="The number of marks of the highest stack is written, and not the value below it.",
        shows_when="the most common value is asked",
        thinking=plain(RuleThought.HIGHEST_IS_MOST),
        ask=filled(CountOfWhat, most_marks),
        source=ITEM,
        example=Example("plot 1/4: 2, 1/2: 3, 3/4: 1; most", "1/2", "3"),
        attempt=on_plot((PlotAsk.MOST,), highest_stack),
    ),
    _read(
        id="S08",
        name="compares stacks instead of values",
        family=Family.NUMERATOR,
        rule="The lowest stack is taken from the highest one.",
        shows_when="the difference of the greatest and the least value is asked",
        thinking=plain(RuleThought.STACKS_COMPARED),
        ask=plain(EndsOfPlot()),
        source=COMMON,
        example=Example("plot 1/4: 2, 1/2: 3, 3/4: 1; spread", "2/4", "2"),
        attempt=on_plot((PlotAsk.SPREAD,), stacks_compared),
    ),
    _read(
        id="S09",
        name="counts ticks beyond, not marks",
        family=Family.NUMERATOR,
        rule="The places on one side of the value are counted, and not the marks above them.",
        shows_when="it is asked how many are more, or less, than a value",
        thinking=plain(RuleThought.NUMBERS_BEYOND),
        ask=filled(PointAtEach, value_named, asks_for_more),
        source=OVERVIEW,
        example=Example("plot 1/4: 2, 1/2: 3, 3/4: 2; above 1/4", "5", "2"),
        attempt=on_plot((PlotAsk.COUNT,), places_beside),
    ),
    _read(
        id="S10",
        name="counts the value itself",
        family=Family.NUMERATOR,
        rule="The marks of the value itself are counted too.",
        shows_when="it is asked how many are more, or less, than a value with marks above it",
        thinking=plain(RuleThought.FROM_THAT_ON),
        ask=filled(ValueItself, value_named, asks_for_more),
        source=COMMON,
        example=Example("plot 1/4: 2, 1/2: 3, 3/4: 1; above 1/2", "1", "4"),
        attempt=on_plot((PlotAsk.COUNT,), value_too),
    ),
)
