"""Spanish word problems of adding and taking away, told of every kind of amount alike.

In the turned wording the word points the other way ("eso es 3 más que", and it is taken away).
"""

from onewhole.number.unit import Kind
from onewhole.problems.story_frame import FrameTable, joined
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

_KITES: FrameTable = {
    (Asks.SUM, Structure.ADD_TO): (
        ("el club de cometas tiene {a}{of}", "le dan {b} más", "{much} tiene ahora"),
    ),
    (Asks.CHANGE_ADDED, Structure.ADD_TO): (
        ("el club de cometas tiene {a}{of}", "le dan más", "ahora tiene {b}", "{much} le dan"),
    ),
    (Asks.START_ADDED, Structure.ADD_TO): (
        ("le dan {a}{of} al club de cometas", "ahora tiene {b} en total", "{much} tenía ya"),
    ),
    (Asks.DIFFERENCE, Structure.SMALLER_UNKNOWN): (
        ("la cometa roja {takes} {a}{of}", "la azul {takes} {b} menos que la roja", "{much} {takes} la azul"),
    ),
    (Asks.DIFFERENCE, Structure.TURNED): (
        ("la cometa roja {takes} {a}{of}", "eso es {b} más que la azul", "{much} {takes} la azul"),
    ),
    (Asks.SUM, Structure.TURNED): (
        ("la cometa roja {takes} {a}{of}", "eso es {b} menos que la azul", "{much} {takes} la azul"),
    ),
}
_LESS: FrameTable = {
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "la cometa roja {takes} {a}{of}",
            "la azul {takes} {b}",
            "cuánto menos {takes} la azul que la roja",
        ),
    ),
}

_OWN: FrameTable = {
    (Asks.SUM, Structure.ADD_TO): (("{who} tiene {a}{of}", "le dan {b} más", "{much} tiene ahora"),),
    (Asks.CHANGE_ADDED, Structure.ADD_TO): (
        ("{who} tiene {a}{of}", "le dan más", "ahora tiene {b}", "{much} le dan"),
    ),
    (Asks.START_ADDED, Structure.ADD_TO): (
        ("{who} gana {a}{of} más", "ahora tiene {b} en total", "{much} tenía ya"),
    ),
    (Asks.DIFFERENCE, Structure.SMALLER_UNKNOWN): (
        (
            "{who} {uses} {a}{of} un día",
            "al día siguiente {uses} {b} menos",
            "{much} {uses} al día siguiente",
        ),
    ),
    (Asks.DIFFERENCE, Structure.TURNED): (
        ("hoy {who} {uses} {a}{of}", "eso es {b} más que lo de ayer", "{much} era lo de ayer"),
    ),
    (Asks.SUM, Structure.TURNED): (
        ("hoy {who} {uses} {a}{of}", "eso es {b} menos que lo de ayer", "{much} era lo de ayer"),
    ),
}
_OWN_LESS: FrameTable = {
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "{who} {uses} {a}{of} un día",
            "al día siguiente {uses} {b}",
            "cuánto menos {uses} al día siguiente",
        ),
    ),
}

KITES = {kind: _KITES if kind is Kind.NUMBER else joined(_KITES, _LESS) for kind in Kind}
OWN = {kind: _OWN if kind is Kind.NUMBER else joined(_OWN, _OWN_LESS) for kind in Kind}
