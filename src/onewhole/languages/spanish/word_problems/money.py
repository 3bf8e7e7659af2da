"""Spanish word problems about what is had, spent and paid."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("el club de cometas tiene {a}", "compra papel por {b}", "cuánto dinero queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cometa roja cuesta {a}", "la cometa azul cuesta {b}", "cuánto más cuesta la cometa roja"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una cometa y su cuerda cuestan {a}", "la cometa cuesta {b}", "cuánto cuesta la cuerda"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("el club compra papel por {a}", "después compra cuerda por {b}", "cuánto paga en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la cometa pequeña cuesta {a}",
            "la cometa grande cuesta {b} más que eso",
            "cuánto cuesta la cometa grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("el club compra papel por {a}", "ahora tiene {b}", "con cuánto dinero empezó"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "la cometa roja cuesta {a}",
            "la cometa azul cuesta {b}",
            "qué cometa cuesta más, o cuestan las dos lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("el club tiene {a}", "compra papel", "ahora tiene {b}", "cuánto costó el papel"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        (
            "el club de cometas tiene {a}",
            "una cometa cuesta {b}",
            "cuánto dinero le falta al club",
        ),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("el club compra papel por {a}", "ahora tiene {b}", "con cuánto dinero empezó"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("el club de cometas gana {a}", "ahora tiene {b}", "con cuánto dinero empezó"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "el club compra papel por {a}",
            "compra cuerda por {b} y pegamento por {c}",
            "cuánto paga en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "el club de cometas tiene {a}",
            "gana {b}",
            "después compra papel por {c}",
            "cuánto dinero queda",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "el papel cuesta {a}",
            "la cuerda cuesta {b}",
            "con el pegamento el club de cometas paga {c} en total",
            "cuánto cuesta el pegamento",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "la cometa {color} cuesta {each}",
            "cuál es el orden de los precios {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "el club de cometas paga {a}",
            "cuánto es más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "el club de cometas paga {a}",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "el club de cometas compra {kites}",
            "cada cometa cuesta {b}",
            "cuánto paga en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "la cometa grande cuesta {factor} veces lo que cuesta la pequeña",
            "la pequeña cuesta {b}",
            "cuánto cuesta la grande",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada cometa cuesta {a}",
            "el club de cometas compra {kites}",
            "cuánto paga en total",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "el club de cometas paga {factor} de su dinero por papel",
            "al principio tenía {b}",
            "cuánto cuesta el papel",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("{who} tiene {a}", "compra papel por {b}", "cuánto dinero queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("el libro rojo cuesta {a}", "el libro azul cuesta {b}", "cuánto más cuesta el libro rojo"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("un libro y su forro cuestan {a}", "el libro cuesta {b}", "cuánto cuesta el forro"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} compra papel por {a}", "después compra pegamento por {b}", "cuánto paga en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "el libro pequeño cuesta {a}",
            "el libro grande cuesta {b} más que eso",
            "cuánto cuesta el libro grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} compra papel por {a}", "ahora tiene {b}", "con cuánto dinero empezó"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "el libro rojo cuesta {a}",
            "el libro azul cuesta {b}",
            "qué libro cuesta más, o cuestan los dos lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("{who} tiene {a}", "compra papel", "ahora tiene {b}", "cuánto costó el papel"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("{who} tiene {a}", "un libro cuesta {b}", "cuánto dinero le falta"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} compra papel por {a}", "ahora tiene {b}", "con cuánto dinero empezó"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} gana {a}", "al final tiene {b}", "con cuánto dinero empezó"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "{who} compra papel por {a}",
            "compra cinta por {b} y pegamento por {c}",
            "cuánto paga en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "{who} tiene {a}",
            "gana {b}",
            "después compra papel por {c}",
            "cuánto dinero queda",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "el papel cuesta {a}",
            "la cuerda cuesta {b}",
            "con el pegamento {who} paga {c} en total",
            "cuánto cuesta el pegamento",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "el libro {color_o} cuesta {each}",
            "cuál es el orden de los precios {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} paga {a}",
            "cuánto es más o menos, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} paga {a}",
            "cómo se escribe eso {form}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} compra {books}",
            "cada libro cuesta {b}",
            "cuánto paga en total",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "el libro grande cuesta {factor} veces lo que cuesta el pequeño",
            "el pequeño cuesta {b}",
            "cuánto cuesta el grande",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "cada libro cuesta {a}",
            "{who} compra {books}",
            "cuánto paga en total",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} paga {factor} de su dinero por papel",
            "al principio tenía {b}",
            "cuánto cuesta el papel",
        ),
    ),
}
