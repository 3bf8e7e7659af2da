"""Word problems about line plots: the measurements stand on the plot, and the story says of what."""

from onewhole.number.unit import Kind
from onewhole.problems.story_frame import FrameTable, joined
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

_EACH_KITE = "the line plot shows {shown} each kite {takes}"
_KITES: FrameTable = {
    (Asks.PLOT_COUNT, Structure.LINE_PLOT): ((_EACH_KITE, "how many kites are there in all"),),
    (Asks.PLOT_SOME, Structure.LINE_PLOT): ((_EACH_KITE, "how many kites {take} {bound} {a}"),),
    (Asks.PLOT_TOTAL, Structure.LINE_PLOT): ((_EACH_KITE, "{much} do all the kites {take} in all"),),
    (Asks.PLOT_PART, Structure.LINE_PLOT): (
        (_EACH_KITE, "look at the kites that {take} {bound} {a}", "{much} do these kites {take} in all"),
    ),
    (Asks.PLOT_SHARE, Structure.LINE_PLOT): (
        (
            _EACH_KITE,
            "the club could give the same to each kite, and as much in all",
            "{much} would each kite get",
        ),
    ),
    (Asks.PLOT_MOST, Structure.LINE_PLOT): ((_EACH_KITE, "which amount is the most common"),),
    (Asks.PLOT_SPREAD, Structure.LINE_PLOT): (
        (_EACH_KITE, "how much more is the greatest amount than the least"),
    ),
}

_EACH_TAIL = "the line plot shows how long each kite tail is"
#: Lengths are measured by the club.
_TAILS: FrameTable = {
    (Asks.PLOT_COUNT, Structure.LINE_PLOT): ((_EACH_TAIL, "how many tails are there in all"),),
    (Asks.PLOT_SOME, Structure.LINE_PLOT): ((_EACH_TAIL, "how many tails are {bound} {a} long"),),
    (Asks.PLOT_TOTAL, Structure.LINE_PLOT): (
        (_EACH_TAIL, "all the tails lie end to end", "how long are they in all"),
    ),
    (Asks.PLOT_PART, Structure.LINE_PLOT): (
        (_EACH_TAIL, "the tails that are {bound} {a} long lie end to end", "how long are they in all"),
    ),
    (Asks.PLOT_SHARE, Structure.LINE_PLOT): (
        (
            _EACH_TAIL,
            "the club could make all the tails the same length, with as much ribbon in all",
            "how long would each tail be",
        ),
    ),
    (Asks.PLOT_MOST, Structure.LINE_PLOT): ((_EACH_TAIL, "which length is the most common"),),
    (Asks.PLOT_SPREAD, Structure.LINE_PLOT): (
        (_EACH_TAIL, "how much longer is the longest tail than the shortest"),
    ),
}

_EACH_DAY = "the line plot shows {shown} {who} {uses} each day"
_OWN: FrameTable = {
    (Asks.PLOT_COUNT, Structure.LINE_PLOT): ((_EACH_DAY, "how many days are there in all"),),
    (Asks.PLOT_SOME, Structure.LINE_PLOT): ((_EACH_DAY, "on how many days is it {bound} {a}"),),
    (Asks.PLOT_TOTAL, Structure.LINE_PLOT): ((_EACH_DAY, "{much} does it {use} in all"),),
    (Asks.PLOT_PART, Structure.LINE_PLOT): (
        (_EACH_DAY, "look at the days on which it is {bound} {a}", "{much} is that in all"),
    ),
    (Asks.PLOT_SHARE, Structure.LINE_PLOT): (
        (_EACH_DAY, "it could be the same each day, and as much in all", "{much} would that be each day"),
    ),
    (Asks.PLOT_MOST, Structure.LINE_PLOT): ((_EACH_DAY, "which amount is the most common"),),
    (Asks.PLOT_SPREAD, Structure.LINE_PLOT): (
        (_EACH_DAY, "how much more is the greatest amount than the least"),
    ),
}

_LENGTHS = {Kind.LENGTH, Kind.METRIC_LENGTH}
#: No line plot has prices.
_MEASURED = tuple(kind for kind in Kind if kind is not Kind.MONEY)
KITES: dict[Kind, FrameTable] = {
    Kind.MONEY: {},
    **{kind: joined(_KITES, _TAILS) if kind in _LENGTHS else _KITES for kind in _MEASURED},
}
OWN: dict[Kind, FrameTable] = {Kind.MONEY: {}, **dict.fromkeys(_MEASURED, _OWN)}
