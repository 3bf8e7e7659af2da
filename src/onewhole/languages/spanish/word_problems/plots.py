"""Spanish word problems about line plots: the measurements stand on the plot, the story says of what."""

from onewhole.number.unit import Kind
from onewhole.problems.story_frame import FrameTable, joined
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

_EACH_KITE = "el diagrama de puntos muestra {shown} {takes} cada cometa"
_MOST = "cuál es la cantidad más común"
_SPREAD = "cuánto más es la mayor cantidad que la menor"
_KITES: FrameTable = {
    (Asks.PLOT_COUNT, Structure.LINE_PLOT): ((_EACH_KITE, "cuántas cometas hay en total"),),
    (Asks.PLOT_SOME, Structure.LINE_PLOT): ((_EACH_KITE, "en cuántas cometas es {bound} {a}"),),
    (Asks.PLOT_TOTAL, Structure.LINE_PLOT): ((_EACH_KITE, "cuánto es el total de todas las cometas"),),
    (Asks.PLOT_PART, Structure.LINE_PLOT): (
        (_EACH_KITE, "mira las cometas en que es {bound} {a}", "cuánto es el total de esas cometas"),
    ),
    (Asks.PLOT_SHARE, Structure.LINE_PLOT): (
        (
            _EACH_KITE,
            "el club puede dar lo mismo a cada cometa, con el mismo total",
            "{much} {takes} entonces cada cometa",
        ),
    ),
    (Asks.PLOT_MOST, Structure.LINE_PLOT): ((_EACH_KITE, _MOST),),
    (Asks.PLOT_SPREAD, Structure.LINE_PLOT): ((_EACH_KITE, _SPREAD),),
}

_EACH_TAIL = "el diagrama de puntos muestra cuánto mide cada cola"
#: Lengths are measured by the club.
_TAILS: FrameTable = {
    (Asks.PLOT_COUNT, Structure.LINE_PLOT): ((_EACH_TAIL, "cuántas colas hay en total"),),
    (Asks.PLOT_SOME, Structure.LINE_PLOT): ((_EACH_TAIL, "cuántas colas miden {bound} {a}"),),
    (Asks.PLOT_TOTAL, Structure.LINE_PLOT): ((_EACH_TAIL, "cuánto miden en total todas las colas"),),
    (Asks.PLOT_PART, Structure.LINE_PLOT): (
        (_EACH_TAIL, "mira las colas que miden {bound} {a}", "cuánto miden esas colas en total"),
    ),
    (Asks.PLOT_SHARE, Structure.LINE_PLOT): (
        (
            _EACH_TAIL,
            "el club puede cortar todas las colas del mismo largo, con el mismo total",
            "cuánto mide entonces cada cola",
        ),
    ),
    (Asks.PLOT_MOST, Structure.LINE_PLOT): ((_EACH_TAIL, "cuál es el largo más común"),),
    (Asks.PLOT_SPREAD, Structure.LINE_PLOT): (
        (_EACH_TAIL, "cuánto más mide la cola más larga que la más corta"),
    ),
}

_EACH_DAY = "el diagrama de puntos muestra {shown} {uses} {who} cada día"
_OWN: FrameTable = {
    (Asks.PLOT_COUNT, Structure.LINE_PLOT): ((_EACH_DAY, "cuántos días hay en total"),),
    (Asks.PLOT_SOME, Structure.LINE_PLOT): ((_EACH_DAY, "en cuántos días es {bound} {a}"),),
    (Asks.PLOT_TOTAL, Structure.LINE_PLOT): ((_EACH_DAY, "cuánto es el total de todos los días"),),
    (Asks.PLOT_PART, Structure.LINE_PLOT): (
        (_EACH_DAY, "mira los días en que es {bound} {a}", "cuánto es el total de esos días"),
    ),
    (Asks.PLOT_SHARE, Structure.LINE_PLOT): (
        (_EACH_DAY, "puede ser lo mismo cada día, con el mismo total", "{much} {uses} entonces cada día"),
    ),
    (Asks.PLOT_MOST, Structure.LINE_PLOT): ((_EACH_DAY, _MOST),),
    (Asks.PLOT_SPREAD, Structure.LINE_PLOT): ((_EACH_DAY, _SPREAD),),
}

_LENGTHS = {Kind.LENGTH, Kind.METRIC_LENGTH}
#: No line plot has prices.
_MEASURED = tuple(kind for kind in Kind if kind is not Kind.MONEY)
KITES: dict[Kind, FrameTable] = {
    Kind.MONEY: {},
    **{kind: joined(_KITES, _TAILS) if kind in _LENGTHS else _KITES for kind in _MEASURED},
}
OWN: dict[Kind, FrameTable] = {Kind.MONEY: {}, **dict.fromkeys(_MEASURED, _OWN)}
