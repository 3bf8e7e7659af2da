"""Spanish word problems about lengths."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una cuerda mide {a}", "el club de cometas le corta {b}", "cuánto mide la cuerda ahora"),
        ("el club de cometas tiene {a} de cinta", "una cola lleva {b}", "cuánta cinta queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cola roja mide {a}", "la cola azul mide {b}", "cuánto más mide la cola roja"),
        ("la cola roja mide {a}", "la cola azul mide {b}", "cuánto menos mide la cola azul"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una cola tiene que medir {a}", "ya mide {b}", "cuánta cinta le falta"),
        ("una cometa con su cola mide {a}", "la cola mide {b}", "cuánto mide la cometa"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("hay dos colas, una tras otra", "una mide {a}", "la otra mide {b}", "cuánto miden en total"),
        (
            "el club de cometas usa {a} de cinta roja",
            "también usa {b} de cinta azul",
            "cuánta cinta es en total",
        ),
    ),
    (Asks.SUM, Structure.COMPARE): (
        ("la cola roja mide {a}", "la cola azul mide {b} más", "cuánto mide la cola azul"),
        (
            "la cometa pequeña tiene {a} de cuerda",
            "la grande tiene {b} más que eso",
            "cuánta cuerda tiene la grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("el club de cometas le corta {a} a una cuerda", "ahora mide {b}", "cuánto medía antes de eso"),
        ("una cola lleva {a} de cinta", "ahora el club tiene {b}", "con cuánta cinta empezó el club"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        ("la cola roja mide {a}", "la cola azul mide {b}", "qué cola es más larga, o son iguales"),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("una cuerda mide {a}", "el club le corta una parte", "ahora mide {b}", "cuánto le cortó el club"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una cola ya mide {a}", "tiene que medir {b}", "cuánta cinta le falta"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("el club de cometas le corta {a} a una cuerda", "ahora mide {b}", "cuánto medía antes de eso"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("el club le pone {a} más a una cola", "ahora la cola mide {b}", "cuánto medía antes de eso"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la cola roja mide {a}",
            "la azul mide {b}",
            "la verde mide {c}",
            "cuánto miden las tres en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una cola mide {a}",
            "el club de cometas le pone {b} más",
            "después le corta {c}",
            "cuánto mide ahora la cola",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "la cola roja mide {a}",
            "la cola azul mide {b}",
            "con la cola verde miden {c} en total",
            "cuánto mide la cola verde",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "la cola {color} mide {each}",
            "cuál es el orden de las medidas {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "el club de cometas tiene una cuerda de {a}",
            "cuánto mide más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "el club de cometas tiene una cuerda de {a}",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "el club de cometas tiene una cuerda de {a}",
            "{many} {is}",
        ),
        (
            "el club de cometas tiene {a} de cinta",
            "{many} de cinta {is}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "el club de cometas hace {tails}",
            "cada cola mide {b}",
            "cuánto miden en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "la cola roja mide {factor} veces lo que mide la cola azul",
            "la cola azul mide {b}",
            "cuánto mide la cola roja",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada cola mide {a}",
            "el club de cometas hace {tails}",
            "cuánto miden en total",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "el club de cometas corta {factor} de una cinta",
            "la cinta medía {b} al principio",
            "cuánto mide el pedazo",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una cuerda mide {a}", "{who} le corta {b}", "cuánto mide la cuerda ahora"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cuerda roja mide {a}", "la cuerda azul mide {b}", "cuánto más mide la cuerda roja"),
        ("la cuerda roja mide {a}", "la cuerda azul mide {b}", "cuánto menos mide la cuerda azul"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una cuerda tiene que medir {a}", "ya mide {b}", "cuánto le falta"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("hay dos cuerdas, una tras otra", "una mide {a}", "la otra mide {b}", "cuánto miden en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        ("la cuerda roja mide {a}", "la cuerda azul mide {b} más", "cuánto mide la cuerda azul"),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} le corta {a} a una cuerda", "ahora la cuerda mide {b}", "cuánto medía antes de eso"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        ("la cuerda roja mide {a}", "la cuerda azul mide {b}", "qué cuerda es más larga, o son iguales"),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("una cuerda mide {a}", "{who} le corta una parte", "ahora mide {b}", "cuánto le cortó"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una cuerda ya mide {a}", "tiene que medir {b}", "cuánto le falta"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} le corta {a} a una cuerda", "ahora la cuerda mide {b}", "cuánto medía antes de eso"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} le pone {a} más a una cuerda", "ahora la cuerda mide {b}", "cuánto medía antes de eso"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la cuerda roja mide {a}",
            "la azul mide {b}",
            "la verde mide {c}",
            "cuánto miden las tres en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una cuerda mide {a}",
            "{who} le pone {b} más",
            "después le corta {c}",
            "cuánto mide ahora la cuerda",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "la cuerda roja mide {a}",
            "la cuerda azul mide {b}",
            "con la cuerda verde miden {c} en total",
            "cuánto mide la cuerda verde",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "la cuerda {color} mide {each}",
            "cuál es el orden de las medidas {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} tiene una cuerda de {a}",
            "cuánto mide más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} tiene una cuerda de {a}",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "{who} tiene una cuerda de {a}",
            "{many} {is}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} corta {ropes}",
            "cada cuerda mide {b}",
            "cuánto miden en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "la cuerda roja mide {factor} veces lo que mide la cuerda azul",
            "la cuerda azul mide {b}",
            "cuánto mide la cuerda roja",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada cuerda mide {a}",
            "{who} corta {ropes}",
            "cuánto miden en total",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} corta {factor} de una cinta",
            "la cinta medía {b} al principio",
            "cuánto mide el pedazo",
        ),
    ),
}
