"""Spanish word problems of several steps: some of it is worked first, and then the rest."""

from onewhole.number.unit import Kind
from onewhole.problems.story_frame import FrameTable, joined
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

_STEPS = Structure.SEVERAL_STEPS

_KITES: FrameTable = {
    (Asks.LESS_LESS, _STEPS): (
        ("el club de cometas tiene {a}{of}", "usa {b} para una cometa y {c} para su cola", "{much} {left}"),
    ),
    (Asks.LESS_MORE, _STEPS): (
        (
            "el club de cometas tiene {a}{of}",
            "usa {b} para una cometa",
            "después recibe {c} más",
            "{much} tiene ahora",
        ),
    ),
    (Asks.LESS_BOTH, _STEPS): (
        (
            "el club de cometas tiene {a}{of}",
            "una cometa {takes} {b} y su cola {takes} {c}",
            "el club hace la cometa con su cola",
            "{much} {left}",
        ),
    ),
    (Asks.LESS_PART, _STEPS): (
        (
            "el club de cometas tiene {a}{of}",
            "una cometa con cola {takes} {b}, y una sin cola {takes} {c} menos",
            "el club hace la cometa sin cola",
            "{much} {left}",
        ),
    ),
    (Asks.MORE_TIMES, _STEPS): (
        (
            "el club de cometas usa {a}{of} para una bandera",
            "también hace {kites}",
            "cada cometa {takes} {c}",
            "{much} usa en total",
        ),
    ),
    (Asks.LESS_TIMES, _STEPS): (
        ("el club de cometas tiene {a}{of}", "hace {kites}", "cada cometa {takes} {c}", "{much} {left}"),
    ),
    (Asks.TIMES_MORE, _STEPS): (
        (
            "el club de cometas hace {kites}",
            "cada cometa {takes} {b}{of}",
            "también hace una bandera que {takes} {c}",
            "{much} usa en total",
        ),
    ),
    (Asks.TIMES_LESS, _STEPS): (
        (
            "en cada una de {meetings} el club de cometas recibe {b}{of}",
            "después de la última usa {c} para una cometa",
            "{much} {left}",
        ),
    ),
    (Asks.TIMES_BOTH, _STEPS): (
        (
            "el club de cometas hace {kites}",
            "cada cometa {takes} {b}{of} y su cola {takes} {c}",
            "{much} usa en total",
        ),
    ),
    (Asks.BOTH_TIMES, _STEPS): (
        (
            "cada cometa {takes} {a}{of} y su cola {takes} {b}",
            "el club de cometas hace {kites}",
            "{much} usa en total",
        ),
    ),
    (Asks.TIMES_LEFT, _STEPS): (
        ("en cada una de {meetings} el club de cometas recibe {b}{of} y usa {c}", "{much} {left} en total"),
    ),
    (Asks.LEFT_TIMES, _STEPS): (
        (
            "en cada reunión el club de cometas recibe {a}{of} y usa {b}",
            "se reúne {times}",
            "{much} {left} en total",
        ),
    ),
    (Asks.BOTH_SHARED, _STEPS): (
        (
            "el club de cometas tiene {a}{of} y recibe {b} más",
            "usa todo para {kites}, lo mismo para cada una",
            "{much} {takes} cada cometa",
        ),
    ),
    (Asks.LEFT_SHARED, _STEPS): (
        (
            "el club de cometas tiene {a}{of}",
            "usa {b} para una bandera",
            "usa lo demás para {kites}, lo mismo para cada una",
            "{much} {takes} cada cometa",
        ),
    ),
}
_WHOLES: FrameTable = {
    (Asks.MORE_SHARE, _STEPS): (
        (
            "alguien del club de cometas tiene {a}",
            "después el club reparte {b} en partes iguales entre {pupils}",
            "esa persona recibe una de las partes",
            "{many} tiene ahora esa persona",
        ),
    ),
    (Asks.LESS_SHARE, _STEPS): (
        (
            "el club de cometas tiene {a}",
            "con {b} puede hacer {kites} iguales",
            "hace una de esas cometas",
            "{many} {left}",
        ),
    ),
    (Asks.SHARE_TIMES, _STEPS): (
        (
            "con {a} el club de cometas puede hacer {kites} iguales",
            "hace {then_kites} como esas",
            "{many} usa",
        ),
    ),
    (Asks.SHARE_AND_TIMES, _STEPS): (
        (
            "el club de cometas da {a} por igual a {pupils}",
            "luego, en cada una de {then_meetings}, a cada una le da {d} más y le quita {e}",
            "{many} tiene ahora cada una de ellas",
        ),
    ),
}

_OWN: FrameTable = {
    (Asks.LESS_LESS, _STEPS): (
        ("{who} tiene {a}{of}", "{uses} {b} un día y {c} al día siguiente", "{much} {left}"),
    ),
    (Asks.LESS_MORE, _STEPS): (
        ("{who} tiene {a}{of}", "{uses} {b}", "después recibe {c} más", "{much} tiene ahora"),
    ),
    (Asks.LESS_BOTH, _STEPS): (
        (
            "{who} tiene {a}{of}",
            "cada día {uses} {b} por la mañana y {c} más tarde",
            "{much} {left} después de un día",
        ),
    ),
    (Asks.LESS_PART, _STEPS): (
        (
            "{who} tiene {a}{of}",
            "en un día largo {uses} {b}, y en un día corto {c} menos",
            "{much} {left} después de un día corto",
        ),
    ),
    (Asks.MORE_TIMES, _STEPS): (
        (
            "{who} {uses} {a}{of} un día",
            "después se reúne {times}, y cada vez {uses} {c}",
            "{much} {uses} en total",
        ),
    ),
    (Asks.LESS_TIMES, _STEPS): (
        ("{who} tiene {a}{of}", "en cada una de {meetings} {uses} {c}", "{much} {left}"),
    ),
    (Asks.TIMES_MORE, _STEPS): (
        (
            "en cada una de {meetings} {who} {uses} {b}{of}",
            "después de la última {uses} {c} más",
            "{much} {uses} en total",
        ),
    ),
    (Asks.TIMES_LESS, _STEPS): (
        (
            "en cada una de {meetings} {who} recibe {b}{of}",
            "después de la última {uses} {c}",
            "{much} {left}",
        ),
    ),
    (Asks.TIMES_BOTH, _STEPS): (
        (
            "{who} se reúne {times}",
            "cada vez {uses} {b}{of} y después {c} más",
            "{much} {uses} en total",
        ),
    ),
    (Asks.BOTH_TIMES, _STEPS): (
        (
            "cada vez que se reúne, {who} {uses} {a}{of} y después {b} más",
            "se reúne {times}",
            "{much} {uses} en total",
        ),
    ),
    (Asks.TIMES_LEFT, _STEPS): (
        ("en cada una de {meetings} {who} recibe {b}{of} y {uses} {c}", "{much} {left} en total"),
    ),
    (Asks.LEFT_TIMES, _STEPS): (
        ("en cada reunión {who} recibe {a}{of} y {uses} {b}", "se reúne {times}", "{much} {left} en total"),
    ),
    (Asks.BOTH_SHARED, _STEPS): (
        (
            "{who} tiene {a}{of} y recibe {b} más",
            "{uses} todo en {meetings}, lo mismo cada vez",
            "{much} {uses} cada vez",
        ),
    ),
    (Asks.LEFT_SHARED, _STEPS): (
        (
            "{who} tiene {a}{of}",
            "primero {uses} {b}",
            "lo demás lo {uses} en {meetings}, lo mismo cada vez",
            "{much} {uses} en cada reunión",
        ),
    ),
}
_OWN_WHOLES: FrameTable = {
    (Asks.MORE_SHARE, _STEPS): (
        (
            "primero {who} {does} {a}",
            "después {does} {b} en {meetings}, lo mismo cada vez",
            "{many} {does} hasta el fin de la primera reunión",
        ),
    ),
    (Asks.LESS_SHARE, _STEPS): (
        (
            "{who} tiene {a}",
            "con {b} alcanza para {meetings}, lo mismo cada vez",
            "{many} {left} después de una de ellas",
        ),
    ),
    (Asks.SHARE_TIMES, _STEPS): (
        ("{who} {does} {a} en {meetings}, lo mismo cada vez", "{many} {does} en {then_meetings}"),
    ),
    (Asks.SHARE_AND_TIMES, _STEPS): (
        (
            "{who} da {a} por igual a {groups}",
            "luego, en cada una de {then_meetings}, a cada grupo le da {d} más y le quita {e}",
            "{many} tiene ahora cada grupo",
        ),
    ),
}

KITES = {kind: joined(_KITES, _WHOLES) if kind is Kind.NUMBER else _KITES for kind in Kind}
OWN = {kind: joined(_OWN, _OWN_WHOLES) if kind is Kind.NUMBER else _OWN for kind in Kind}
