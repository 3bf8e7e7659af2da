"""Spanish word problems about what a class counts: its wholes, and things made of them."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("el club de cometas tiene {a}", "usa {b} para una cometa", "{many} {left}"),
        ("alguien trae {a} al club de cometas", "el viento rompe {b}", "{many} {good} todavía"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cometa roja lleva {a}", "la cometa azul lleva {b}", "{more} lleva la cometa roja"),
        ("la cometa grande lleva {a}", "la pequeña lleva {b}", "{fewer} lleva la pequeña"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una cometa lleva {a}", "el club de cometas solo tiene {b}", "{many} le {lacks} al club"),
        (
            "el club de cometas usa {a} en total",
            "usa {b} para colas y lo demás para cometas",
            "{many} usa para cometas",
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("el club de cometas tiene {a} para cometas y {b} para colas", "{many} tiene en total"),
        ("alguien trae {a}", "otra persona trae {b}", "{many} traen en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la cometa pequeña lleva {a}",
            "la grande lleva {b} más que eso",
            "{many} lleva la grande",
        ),
        (
            "el club de cometas usa {a} un día",
            "al otro día usa {b} más que eso",
            "{many} usa al otro día",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("el club de cometas usa {a} para una cometa", "ahora tiene {b}", "con {many} empezó"),
        ("el viento le rompe {a} al club de cometas", "ahora el club tiene {b}", "con {many} empezó"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "la cometa roja lleva {a}",
            "la cometa azul lleva {b}",
            "qué cometa lleva más, o llevan las dos lo mismo",
        ),
        (
            "alguien corta {a}",
            "otra persona corta {b}",
            "quién corta más, o cortan lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("el club de cometas tiene {a}", "usa papel para una cometa", "ahora tiene {b}", "{many} usó"),
        ("el club de cometas empieza con {a} y termina con {b}", "{many} usó"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("el club de cometas tiene {a}", "una cometa lleva {b}", "{many} le {lacks} al club"),
        (
            "el club de cometas tiene {a}",
            "alguien trae más",
            "ahora el club tiene {b}",
            "{many} trajo esa persona",
        ),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "el club de cometas tiene {some}",
            "usa {a} para una cometa",
            "ahora tiene {b}",
            "con {many} empezó",
        ),
        (
            "alguien trae {some}",
            "el viento rompe {a}",
            "ahora el club de cometas tiene {b}",
            "{many} trajo esa persona",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "el club de cometas tiene {some}",
            "alguien trae {a} más",
            "ahora el club tiene {b}",
            "con {many} empezó",
        ),
        (
            "el club de cometas usa {some} para una cometa y {a} para su cola",
            "usa {b} en total",
            "{many} usa para la cometa",
        ),
    ),
    (Asks.RENAMED, Structure.SAME_AMOUNT): (
        ("una cometa lleva {a}", "el club muestra la misma cantidad {kept}", "cuántos {pieces} hay"),
        ("el club de cometas tiene {a}", "muestra la misma cantidad {kept}", "cuántos {pieces} muestra"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "el club de cometas usa {a} para una cometa",
            "usa {b} para una cola y {c} para lazos",
            "{many} usa en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "el club de cometas tiene {a}",
            "alguien trae {b} más",
            "después el club usa {c} para una cometa",
            "{many} {left}",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "el club de cometas usa {a} para una cometa y {b} para una cola",
            "lo demás es para lazos",
            "usa {c} en total",
            "{many} usa para lazos",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "la cometa {color} lleva {each}",
            "cuál es el orden {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "el club de cometas tiene {a}",
            "más o menos {many} {is}, {nearest}",
        ),
        (
            "una fiesta de cometas necesita {a}",
            "más o menos {many} {is}, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "el club de cometas usa {a} para una cometa",
            "cómo se escribe eso {form}",
        ),
        (
            "el club de cometas tiene {a} para colas",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "el club de cometas hace {kites}",
            "cada cometa lleva {b}",
            "{many} usa en total",
        ),
        (
            "en el club de cometas hay {pupils}",
            "cada persona trae {b}",
            "{many} traen en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "la cometa grande lleva {factor} veces lo que lleva la pequeña",
            "la pequeña lleva {b}",
            "{many} lleva la grande",
        ),
    ),
    (Asks.TIMES, Structure.AREA): (
        (
            "el club de cometas corta una hoja en {rows} de {squares}",
            "cuántos cuadrados corta",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "el club de cometas usa {factor} de su papel para una cometa",
            "al principio tenía {b}",
            "{many} usa para la cometa",
        ),
    ),
    (Asks.PART_OF, Structure.AREA): (
        (
            "el club de cometas corta un pedazo de {one}",
            "el pedazo tiene {factor} del ancho y {other} del largo {of_brief}",
            "{many} es el pedazo",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("{who} tiene {a}", "{does} {b}", "{many} le {left}"),
        ("hay {a} para {who}", "{does} {b}", "{many} le {left}"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("{who} {does} {a} un día", "al otro día {does} {b}", "{more} {does} el primer día"),
        ("el lunes {who} {does} {a}", "el martes {does} {b}", "{fewer} {does} el martes"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("{who} quiere tener {a}", "ya tiene {b}", "{many} le {lacks}"),
        (
            "{who} {does} {a} en total",
            "{does} {b} el primer día y lo demás al otro día",
            "{many} {does} al otro día",
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} {does} {a} un día y {b} al otro día", "{many} {does} en total"),
        ("en la mañana {who} {does} {a}", "en la tarde {does} {b}", "{many} {does} en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "{who} {does} {a} un día",
            "al otro día {does} {b} más que eso",
            "{many} {does} al otro día",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (("{who} {does} {a}", "al final tiene {b}", "con {many} empezó"),),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "{who} {does} {a} un día",
            "al otro día {does} {b}",
            "qué día {does} más, o es lo mismo los dos días",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("{who} tiene {a}", "{does} una parte de eso", "al final tiene {b}", "{many} {does}"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("{who} tiene {a}", "quiere tener {b}", "{many} le {lacks}"),
        ("{who} tiene {a}", "le dan más", "al final tiene {b}", "{many} le dieron"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} tiene {some}", "{does} {a}", "al final tiene {b}", "con {many} empezó"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} tiene {some}", "le dan {a} más", "al final tiene {b}", "con {many} empezó"),
    ),
    (Asks.RENAMED, Structure.SAME_AMOUNT): (
        ("{who} tiene {a}", "muestra lo mismo {kept}", "cuántos {pieces} hay"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "{who} {does} {a} un día",
            "al otro día {does} {b} y el tercer día {does} {c}",
            "{many} {does} en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "{who} tiene {a}",
            "le dan {b} más",
            "después {does} {c}",
            "{many} le {left}",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "{who} {does} {a} un día y {b} al otro día",
            "el tercer día {does} lo demás",
            "{does} {c} en total",
            "{many} {does} el tercer día",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "el grupo {color_o} {does} {each}",
            "cuál es el orden {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} {does} {a}",
            "más o menos {many} {is}, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} {does} {a}",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} se reúne {times}",
            "cada vez {does} {b}",
            "{many} {does} en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "el martes {who} {does} {factor} veces lo del lunes",
            "el lunes {does} {b}",
            "{many} {does} el martes",
        ),
    ),
    (Asks.TIMES, Structure.AREA): (
        (
            "{who} pone {rows} de {chairs}",
            "cuántas sillas pone",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} {does} {factor} de lo que tiene",
            "al principio tenía {b}",
            "{many} {does}",
        ),
    ),
}
