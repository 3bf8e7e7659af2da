"""Spanish word problems of adding and taking away, told of every kind of amount alike.

In the turned wording the word points the other way ("eso es 3 más que", and it is taken away).
"""

from onewhole.number.unit import Kind
from onewhole.problems.story_frame import FrameTable, joined
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

_KITES: FrameTable = {
    (Asks.SUM, Structure.ADD_TO): (
        ("el club de cometas tiene {a}{of}", "recibe {b} más", "{much} tiene ahora"),
    ),
    (Asks.CHANGE_ADDED, Structure.ADD_TO): (
        ("el club de cometas tiene {a}{of}", "después recibe más", "ahora tiene {b}", "{much} recibió"),
    ),
    (Asks.START_ADDED, Structure.ADD_TO): (
        ("el club de cometas recibe {a}{of}", "ahora tiene {b}", "{much} tenía al principio"),
    ),
    (Asks.DIFFERENCE, Structure.SMALLER_UNKNOWN): (
        ("la cometa grande {takes} {a}{of}", "la pequeña {takes} {b} menos", "{much} {takes} la pequeña"),
    ),
    (Asks.DIFFERENCE, Structure.TURNED): (
        ("la cometa grande {takes} {a}{of}", "eso es {b} más que la pequeña", "{much} {takes} la pequeña"),
    ),
    (Asks.SUM, Structure.TURNED): (
        ("la cometa pequeña {takes} {a}{of}", "eso es {b} menos que la grande", "{much} {takes} la grande"),
    ),
}
_LESS: FrameTable = {
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "la cometa roja {takes} {a}{of}",
            "la cometa azul {takes} {b}",
            "cuánto menos {takes} la cometa azul",
        ),
    ),
}

_OWN: FrameTable = {
    (Asks.SUM, Structure.ADD_TO): (("{who} tiene {a}{of}", "recibe {b} más", "{much} tiene ahora"),),
    (Asks.CHANGE_ADDED, Structure.ADD_TO): (
        ("{who} tiene {a}{of}", "después recibe más", "ahora tiene {b}", "{much} recibió"),
    ),
    (Asks.START_ADDED, Structure.ADD_TO): (
        ("{who} recibe {a}{of}", "ahora tiene {b}", "{much} tenía al principio"),
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
