"""Spanish word problems about what a pitcher holds."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una jarra tiene {a} de jugo", "el club de cometas toma {b}", "cuánto jugo queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la jarra roja tiene {a}", "la jarra azul tiene {b}", "cuánto más tiene la jarra roja"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        (
            "una jarra tiene {a} de ponche",
            "el ponche lleva {b} de jugo y lo demás es agua",
            "cuánta agua lleva",
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        (
            "el club de cometas echa {a} de jugo en una jarra",
            "después le echa {b} de agua",
            "cuánto es en total",
        ),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la jarra pequeña tiene {a}",
            "la grande tiene {b} más que eso",
            "cuánto tiene la grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        (
            "el club de cometas toma {a} de jugo de una jarra",
            "ahora la jarra tiene {b}",
            "cuánto tenía antes la jarra",
        ),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "la jarra roja tiene {a}",
            "la jarra azul tiene {b}",
            "qué jarra tiene más, o tienen las dos lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "una jarra tiene {a} de jugo",
            "el club de cometas toma una parte",
            "ahora la jarra tiene {b}",
            "cuánto jugo tomó el club",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una jarra tiene {a}", "el club le echa más", "ahora la jarra tiene {b}", "cuánto le echó"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "el club de cometas toma {a} de jugo de una jarra",
            "ahora la jarra tiene {b}",
            "cuánto tenía antes la jarra",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "el club de cometas echa {a} en una jarra",
            "ahora la jarra tiene {b}",
            "cuánto tenía antes la jarra",
        ),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la jarra roja tiene {a}",
            "la azul tiene {b}",
            "la verde tiene {c}",
            "cuánto tienen las tres en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una jarra tiene {a} de pintura",
            "el club de cometas le echa {b} más",
            "después usa {c}",
            "cuánta pintura queda",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "la jarra roja tiene {a}",
            "la jarra azul tiene {b}",
            "con la jarra verde tienen {c} en total",
            "cuánto tiene la jarra verde",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "la jarra {color} tiene {each}",
            "cuál es el orden de las cantidades {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "el club de cometas hace {a} de jugo",
            "cuánto es más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "el club de cometas hace {a} de jugo",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "el club de cometas hace {a} de jugo",
            "{many} {is}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "el club de cometas llena {pitchers}",
            "cada jarra tiene {b}",
            "cuánto tienen en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "la jarra grande tiene {factor} veces lo que tiene la pequeña",
            "la pequeña tiene {b}",
            "cuánto tiene la grande",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada jarra tiene {a}",
            "el club de cometas llena {pitchers}",
            "cuánto tienen en total",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "el club de cometas toma {factor} del jugo de una jarra",
            "la jarra tenía {b} al principio",
            "cuánto jugo es",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una jarra tiene {a} de jugo", "{who} toma {b}", "cuánto jugo queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la jarra roja tiene {a}", "la jarra azul tiene {b}", "cuánto más tiene la jarra roja"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        (
            "una jarra tiene {a} de ponche",
            "el ponche lleva {b} de jugo y lo demás es agua",
            "cuánta agua lleva",
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} echa {a} de jugo en una jarra", "después le echa {b} de agua", "cuánto es en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la jarra pequeña tiene {a}",
            "la grande tiene {b} más que eso",
            "cuánto tiene la grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} toma {a} de jugo de una jarra", "ahora la jarra tiene {b}", "cuánto tenía antes la jarra"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "la jarra roja tiene {a}",
            "la jarra azul tiene {b}",
            "qué jarra tiene más, o tienen las dos lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "una jarra tiene {a} de jugo",
            "{who} toma una parte",
            "ahora la jarra tiene {b}",
            "cuánto jugo tomó",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una jarra tiene {a}", "{who} le echa más", "ahora la jarra tiene {b}", "cuánto le echó"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} toma {a} de jugo de una jarra", "ahora la jarra tiene {b}", "cuánto tenía antes la jarra"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} echa {a} en una jarra", "ahora la jarra tiene {b}", "cuánto había antes en la jarra"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la jarra roja tiene {a}",
            "la azul tiene {b}",
            "la verde tiene {c}",
            "cuánto tienen las tres en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una jarra tiene {a} de jugo",
            "{who} le echa {b} más",
            "después bebe {c}",
            "cuánto jugo queda",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "la jarra roja tiene {a}",
            "la jarra azul tiene {b}",
            "con la jarra verde tienen {c} en total",
            "cuánto tiene la jarra verde",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "la jarra {color} tiene {each}",
            "cuál es el orden de las cantidades {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} hace {a} de jugo",
            "cuánto es más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} hace {a} de jugo",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "{who} hace {a} de jugo",
            "{many} {is}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} llena {pitchers}",
            "cada jarra tiene {b}",
            "cuánto tienen en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "la jarra grande tiene {factor} veces lo que tiene la pequeña",
            "la pequeña tiene {b}",
            "cuánto tiene la grande",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada jarra tiene {a}",
            "{who} llena {pitchers}",
            "cuánto tienen en total",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} toma {factor} del jugo de una jarra",
            "la jarra tenía {b} al principio",
            "cuánto jugo es",
        ),
    ),
}
