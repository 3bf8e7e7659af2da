"""Spanish word problems about weights."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una caja pesa {a}", "el club le saca una cometa de {b}", "cuánto pesa ahora la caja"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cometa grande pesa {a}", "la pequeña pesa {b}", "cuánto más pesa la grande"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una cometa en su caja pesa {a}", "la cometa pesa {b}", "cuánto pesa la caja"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("la cometa roja pesa {a}", "la azul pesa {b}", "cuánto pesan las dos en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la cometa pequeña pesa {a}",
            "la grande pesa {b} más que eso",
            "cuánto pesa la grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        (
            "el club saca de una caja una cometa de {a}",
            "ahora la caja pesa {b}",
            "cuánto pesaba antes de eso",
        ),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "la cometa roja pesa {a}",
            "la cometa azul pesa {b}",
            "qué cometa pesa más, o pesan las dos lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "una caja pesa {a}",
            "el club le saca una cometa a la caja",
            "ahora la caja pesa {b}",
            "cuánto pesa la cometa",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        (
            "una caja pesa {a}",
            "el club le mete una cometa a la caja",
            "ahora la caja pesa {b}",
            "cuánto pesa la cometa",
        ),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "el club saca de una caja una cometa de {a}",
            "ahora la caja pesa {b}",
            "cuánto pesaba antes de eso",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "el club mete en una caja una cometa de {a}",
            "ahora la caja pesa {b}",
            "cuánto pesaba antes de eso",
        ),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la cometa roja pesa {a}",
            "la azul pesa {b}",
            "la verde pesa {c}",
            "cuánto pesan las tres en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una caja pesa {a}",
            "el club le mete una cometa de {b}",
            "después le saca una de {c}",
            "cuánto pesa ahora la caja",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "la cometa roja pesa {a}",
            "la azul pesa {b}",
            "con la verde pesan {c} en total",
            "cuánto pesa la verde",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "la cometa {color} pesa {each}",
            "cuál es el orden de los pesos {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "la caja de las cometas pesa {a}",
            "cuánto pesa más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "la caja de las cometas del club pesa {a}",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "una caja de cometas pesa {a}",
            "{many} {is}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "en una caja hay {kites}",
            "cada cometa pesa {b}",
            "cuánto pesan en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "la cometa grande pesa {factor} veces lo que pesa la pequeña",
            "la pequeña pesa {b}",
            "cuánto pesa la grande",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada cometa pesa {a}",
            "en una caja hay {kites}",
            "cuánto pesan en total",
        ),
    ),
    (Asks.PART_OF, Structure.TIMES_AS_MUCH): (
        (
            "la cometa pequeña pesa {factor} de lo que pesa la grande",
            "la grande pesa {b}",
            "cuánto pesa la pequeña",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una bolsa pesa {a}", "{who} le saca un libro de {b}", "cuánto pesa ahora la bolsa"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la bolsa grande pesa {a}", "la pequeña pesa {b}", "cuánto más pesa la grande"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("un libro en su caja pesa {a}", "el libro pesa {b}", "cuánto pesa la caja"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("la bolsa roja pesa {a}", "la azul pesa {b}", "cuánto pesan las dos en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la bolsa pequeña pesa {a}",
            "la grande pesa {b} más que eso",
            "cuánto pesa la grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} saca de una bolsa un libro de {a}", "ahora la bolsa pesa {b}", "cuánto pesaba antes de eso"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "la bolsa roja pesa {a}",
            "la bolsa azul pesa {b}",
            "qué bolsa pesa más, o pesan las dos lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("una bolsa pesa {a}", "{who} le saca un libro", "ahora la bolsa pesa {b}", "cuánto pesa el libro"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una bolsa pesa {a}", "{who} le mete un libro", "ahora la bolsa pesa {b}", "cuánto pesa el libro"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} saca de una bolsa un libro de {a}", "ahora la bolsa pesa {b}", "cuánto pesaba antes de eso"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} mete en una bolsa un libro de {a}", "ahora la bolsa pesa {b}", "cuánto pesaba antes de eso"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la bolsa roja pesa {a}",
            "la azul pesa {b}",
            "la verde pesa {c}",
            "cuánto pesan las tres en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una bolsa pesa {a}",
            "{who} le mete un libro de {b}",
            "después le saca uno de {c}",
            "cuánto pesa ahora la bolsa",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "la bolsa roja pesa {a}",
            "la azul pesa {b}",
            "con la verde pesan {c} en total",
            "cuánto pesa la verde",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "la bolsa {color} pesa {each}",
            "cuál es el orden de los pesos {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} tiene una bolsa de {a}",
            "cuánto pesa más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} tiene una bolsa de {a}",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "{who} tiene una bolsa de {a}",
            "{many} {is}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} tiene {bags}",
            "cada bolsa pesa {b}",
            "cuánto pesan en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "la bolsa grande pesa {factor} veces lo que pesa la pequeña",
            "la pequeña pesa {b}",
            "cuánto pesa la grande",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada bolsa pesa {a}",
            "{who} tiene {bags}",
            "cuánto pesan en total",
        ),
    ),
    (Asks.PART_OF, Structure.TIMES_AS_MUCH): (
        (
            "la bolsa pequeña pesa {factor} de lo que pesa la grande",
            "la grande pesa {b}",
            "cuánto pesa la pequeña",
        ),
    ),
}
