"""Spanish word problems about how long something takes."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("el club de cometas tiene {a} para su reunión", "usa {b} para hacer cometas", "cuánto tiempo queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cometa roja vuela {a}", "la cometa azul vuela {b}", "cuánto tiempo más vuela la cometa roja"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        (
            "el club de cometas se reúne {a}",
            "hace cometas por {b} y el resto del tiempo las vuela",
            "cuánto tiempo las vuela",
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("el club hace cometas por {a}", "después las vuela por {b}", "cuánto tiempo es en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la cometa roja vuela {a}",
            "la cometa azul vuela {b} más que eso",
            "cuánto tiempo vuela la cometa azul",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        (
            "el club usa {a} de su reunión para hacer cometas",
            "todavía tiene {b}",
            "cuánto dura la reunión",
        ),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "la cometa roja vuela {a}",
            "la cometa azul vuela {b}",
            "qué cometa vuela más tiempo, o vuelan lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "el club de cometas tiene {a} para su reunión",
            "hace cometas",
            "ahora tiene {b}",
            "cuánto tiempo hizo cometas",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una cometa ha volado {a}", "tiene que volar {b}", "cuánto tiempo más tiene que volar"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "el club usa {a} de su reunión para hacer cometas",
            "todavía tiene {b}",
            "cuánto dura la reunión",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "una cometa vuela, y después vuela {a} más",
            "vuela {b} en total",
            "cuánto tiempo voló al principio",
        ),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "el club de cometas corta papel por {a}",
            "después pega por {b}",
            "al final vuela cometas por {c}",
            "cuánto tiempo es en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "el club de cometas tiene {a} para hacer cometas",
            "le dan {b} más",
            "hace cometas por {c}",
            "cuánto tiempo le queda",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "el club de cometas hace cometas por {a}",
            "recoge por {b}",
            "el resto del tiempo vuela cometas",
            "la reunión dura {c}",
            "cuánto tiempo vuela cometas",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "la cometa {color} vuela por {each}",
            "cuál es el orden de los tiempos {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "una cometa vuela por {a}",
            "cuánto tiempo es más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "una cometa vuela por {a}",
            "cómo se escribe ese tiempo {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "una cometa vuela por {a}",
            "{many} {is}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "el club de cometas tiene {meetings}",
            "cada reunión dura {b}",
            "cuánto tiempo es en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "la cometa roja vuela {factor} veces el tiempo de la azul",
            "la azul vuela por {b}",
            "cuánto tiempo vuela la roja",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada reunión dura {a}",
            "el club de cometas tiene {meetings}",
            "cuánto tiempo es en total",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "el club de cometas hace cometas por {factor} de su reunión",
            "la reunión dura {b}",
            "cuánto tiempo hace cometas",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("{who} tiene {a} para trabajar", "trabaja por {b}", "cuánto tiempo queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "{who} trabaja por {a} un día",
            "al otro día trabaja por {b}",
            "cuánto tiempo más trabaja el primer día",
        ),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("{who} se reúne por {a}", "trabaja por {b} y el resto del tiempo juega", "cuánto tiempo juega"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} trabaja por {a}", "después juega por {b}", "cuánto tiempo es en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "{who} trabaja por {a} un día",
            "al otro día trabaja {b} más que eso",
            "cuánto tiempo trabaja al otro día",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} trabaja por {a} en su reunión", "todavía tiene {b}", "cuánto dura la reunión"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "{who} trabaja por {a} un día",
            "al otro día trabaja por {b}",
            "qué día trabaja más tiempo, o es lo mismo los dos días",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "{who} tiene {a} para trabajar",
            "trabaja por un rato",
            "al final aún tiene {b}",
            "por cuánto tiempo trabajó",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("{who} ha trabajado por {a}", "tiene que trabajar por {b}", "cuánto tiempo le falta"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} trabaja por {a} en su reunión", "todavía tiene {b}", "cuánto dura la reunión"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "{who} trabaja, y después trabaja por {a} más",
            "trabaja por {b} en total",
            "cuánto tiempo trabajó al principio",
        ),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "{who} trabaja por {a}",
            "después juega por {b}",
            "al final recoge por {c}",
            "cuánto tiempo es en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "{who} tiene {a} para trabajar",
            "le dan {b} más",
            "trabaja por {c}",
            "cuánto tiempo le queda",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "{who} trabaja por {a}",
            "recoge por {b}",
            "el resto del tiempo juega",
            "la reunión dura {c}",
            "cuánto tiempo juega",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "el grupo {color_o} trabaja por {each}",
            "cuál es el orden de los tiempos {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} trabaja por {a}",
            "cuánto tiempo es más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} trabaja por {a}",
            "cómo se escribe ese tiempo {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "{who} trabaja por {a}",
            "{many} {is}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} tiene {meetings}",
            "cada reunión dura {b}",
            "cuánto tiempo es en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "el grupo rojo trabaja {factor} veces el tiempo del azul",
            "el azul trabaja por {b}",
            "cuánto tiempo trabaja el rojo",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada reunión dura {a}",
            "{who} tiene {meetings}",
            "cuánto tiempo es en total",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} trabaja por {factor} de su reunión",
            "la reunión dura {b}",
            "cuánto tiempo trabaja",
        ),
    ),
}
