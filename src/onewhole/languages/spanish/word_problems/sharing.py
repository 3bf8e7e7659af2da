"""Spanish word problems about dividing: how many each gets, how many groups, and what is left over."""

from onewhole.number.unit import Kind
from onewhole.problems.story_frame import FrameTable, joined
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

_KITES: FrameTable = {
    (Asks.DIVIDED, Structure.SHARING): (
        (
            "el club de cometas tiene {a}{of}",
            "con eso hace {kites}, y usa lo mismo en cada una",
            "{much} {takes} cada cometa",
        ),
    ),
    (Asks.DIVIDED, Structure.MEASURING_OUT): (
        (
            "el club de cometas tiene {a}{of}",
            "cada una de sus cometas {takes} {b}",
            "cuántas cometas se hacen con todo eso",
        ),
    ),
    (Asks.DIVIDED, Structure.TIMES_AS_MUCH): (
        (
            "la cometa grande {takes} {a}{of}",
            "eso es {times} lo que {takes} la pequeña",
            "{much} {takes} la pequeña",
        ),
    ),
    (Asks.DIVIDED, Structure.HOW_MANY_TIMES): (
        (
            "la cometa grande {takes} {a}{of}",
            "la pequeña {takes} {b}",
            "cuántas veces lo de la pequeña {takes} la grande",
        ),
    ),
    (Asks.DIVIDED_LEFT, Structure.MEASURING_OUT): (
        (
            "el club de cometas tiene {a}{of}",
            "cada cometa {takes} {b}",
            "cuántas cometas se hacen con eso, y {much} {left} al final",
        ),
    ),
}
_SHARED_LEFT: FrameTable = {
    (Asks.DIVIDED_LEFT, Structure.SHARING): (
        (
            "el club de cometas tiene {a}",
            "reparte el dinero en partes iguales entre {pupils}",
            "cuánto le toca a cada una, y cuánto queda al final",
        ),
    ),
}
_WHOLES: FrameTable = {
    (Asks.DIVIDED, Structure.SHARING): (
        (
            "el club de cometas tiene {a}",
            "reparte su papel en partes iguales entre {pupils}",
            "{many} tiene cada una al final",
        ),
    ),
    (Asks.DIVIDED, Structure.AREA): (
        (
            "el club de cometas corta una hoja en {all_squares}",
            "están en {rows} del mismo largo",
            "cuántos cuadrados hay en cada fila",
        ),
    ),
    (Asks.DIVIDED_LEFT, Structure.SHARING): (
        (
            "el club de cometas tiene {a}",
            "reparte lo mismo a cada una de {pupils}, sin cortar nada",
            "{many} recibe cada persona, y {how} {wholes} quedan",
        ),
    ),
    (Asks.DIVIDED_LEFT, Structure.MEASURING_OUT): (
        (
            "el club de cometas guarda {a} en paquetes",
            "un paquete lleno tiene {b}",
            "cuántos paquetes están llenos, y {how} {wholes} quedan",
        ),
    ),
    (Asks.GROUPS_NEEDED, Structure.MEASURING_OUT): (
        (
            "{all_children} del club de cometas van al parque en camionetas",
            "en cada una caben {children}",
            "cuántas camionetas hacen falta para todos",
        ),
        (
            "el club de cometas tiene {a}",
            "en una caja caben {b}",
            "cuántas cajas hacen falta para guardar todo",
        ),
    ),
    (Asks.GROUPS_FULL, Structure.MEASURING_OUT): (
        (
            "el club de cometas guarda {a} en paquetes",
            "un paquete lleno tiene {b}",
            "cuántos paquetes están llenos",
        ),
    ),
    (Asks.THINGS_LEFT, Structure.MEASURING_OUT): (
        (
            "el club de cometas guarda {a} en paquetes",
            "un paquete lleno tiene {b}",
            "el club llena todos los paquetes que puede",
            "{how} {wholes} sobran",
        ),
    ),
    (Asks.FACTORS, Structure.AREA): (
        (
            "el club de cometas tiene {all_squares} de papel",
            "los pone todos en filas del mismo largo",
            "cuáles son todos los números de filas posibles",
        ),
    ),
    (Asks.MULTIPLES, Structure.EQUAL_GROUPS): (
        (
            "un paquete tiene {a}",
            "el club de cometas compra un paquete o más, pero no más de {b}",
            "cuáles son todos los números de {wholes} posibles",
        ),
    ),
}

_OWN: FrameTable = {
    (Asks.DIVIDED, Structure.SHARING): (
        ("{who} {uses} {a}{of} en {meetings}", "cada vez es lo mismo", "{much} {uses} cada vez"),
    ),
    (Asks.DIVIDED, Structure.MEASURING_OUT): (
        ("{who} tiene {a}{of}", "cada vez {uses} {b}", "para cuántas veces es eso"),
    ),
    (Asks.DIVIDED, Structure.TIMES_AS_MUCH): (
        ("hoy {who} {uses} {a}{of}", "eso es {times} lo de ayer", "{much} era lo de ayer"),
    ),
    (Asks.DIVIDED, Structure.HOW_MANY_TIMES): (
        ("hoy {who} {uses} {a}{of}", "ayer fue {b}", "cuántas veces lo de ayer es lo de hoy"),
    ),
    (Asks.DIVIDED_LEFT, Structure.MEASURING_OUT): (
        (
            "{who} tiene {a}{of}",
            "cada vez {uses} {b}",
            "para cuántas veces es eso, y {much} {left} al final",
        ),
    ),
}
_OWN_SHARED_LEFT: FrameTable = {
    (Asks.DIVIDED_LEFT, Structure.SHARING): (
        (
            "{who} tiene {a}",
            "reparte el dinero en partes iguales entre {groups}",
            "cuánto recibe cada grupo, y cuánto queda",
        ),
    ),
}
_OWN_WHOLES: FrameTable = {
    (Asks.DIVIDED, Structure.AREA): (
        ("{who} pone {all_chairs} en {rows} del mismo largo", "cuántas sillas hay en cada fila"),
    ),
    (Asks.DIVIDED_LEFT, Structure.SHARING): (
        (
            "{who} tiene {a}",
            "reparte lo mismo a cada uno de {groups}, sin cortar nada",
            "{many} recibe cada grupo, y {how} {wholes} quedan",
        ),
    ),
    (Asks.GROUPS_NEEDED, Structure.MEASURING_OUT): (
        (
            "{who} pone mesas para {all_children}",
            "en una mesa caben {children}",
            "cuántas mesas hacen falta para todos",
        ),
    ),
    (Asks.GROUPS_FULL, Structure.MEASURING_OUT): (
        (
            "{who} tiene {all_chairs}",
            "una fila completa tiene {chairs}",
            "cuántas filas completas se pueden hacer",
        ),
    ),
    (Asks.THINGS_LEFT, Structure.MEASURING_OUT): (
        (
            "{who} tiene {all_chairs}",
            "una fila completa tiene {chairs}",
            "se hacen todas las filas completas que se puede",
            "cuántas sillas sobran",
        ),
    ),
    (Asks.FACTORS, Structure.AREA): (
        (
            "{who} pone {all_chairs} en filas del mismo largo",
            "cuáles son todos los números de filas posibles",
        ),
    ),
    (Asks.MULTIPLES, Structure.EQUAL_GROUPS): (
        (
            "{who} {does} {a} en cada reunión, una vez o más",
            "en total no {does} más de {b}",
            "cuáles son todos los números de {wholes} posibles en total",
        ),
    ),
}

_MORE = {Kind.NUMBER: (_WHOLES, _OWN_WHOLES), Kind.MONEY: (_SHARED_LEFT, _OWN_SHARED_LEFT)}
_NONE: tuple[FrameTable, FrameTable] = ({}, {})

KITES = {kind: joined(_MORE.get(kind, _NONE)[0], _KITES) for kind in Kind}
OWN = {kind: joined(_OWN, _MORE.get(kind, _NONE)[1]) for kind in Kind}
