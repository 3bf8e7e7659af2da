"""The sentences of Spanish stories about liquids and money; of other amounts: :mod:`~.story_frames`."""

from onewhole.problems.story_asks import Asks
from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_structure import Structure

#: Stories of the kite club about what a pitcher holds.
VOLUMES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una jarra tiene {a} de jugo", "el club de cometas toma {b}", "cuánto jugo queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la jarra roja tiene {a}", "la jarra azul tiene {b}", "cuánto más tiene la jarra roja"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una jarra tiene {a} de ponche", "{b} de eso es jugo y el resto es agua", "cuánta agua es"),
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
            "la jarra grande tiene {b} más que eso",
            "cuánto tiene la jarra grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("el club de cometas toma {a} de jugo de una jarra", "ahora tiene {b}", "cuánto tenía al principio"),
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
            "ahora tiene {b}",
            "cuánto jugo tomó el club",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una jarra tiene {a}", "el club de cometas le echa más", "ahora tiene {b}", "cuánto le echó"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("el club de cometas toma {a} de jugo de una jarra", "ahora tiene {b}", "cuánto tenía al principio"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("el club de cometas echa {a} en una jarra", "ahora tiene {b}", "cuánto tenía al principio"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "en la jarra roja caben {a}",
            "en la jarra azul caben {b}",
            "en la jarra verde caben {c}",
            "cuánto cabe en total",
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
}

#: Stories of the kite club about what it has, spends and pays.
MONEY: FrameTable = {
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
        ("el club compra papel por {a}", "ahora tiene {b}", "cuánto dinero tenía al principio"),
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
            "el club de cometas ha ahorrado {a}",
            "necesita {b} para una cometa",
            "cuánto debe ahorrar todavía",
        ),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("el club compra papel por {a}", "ahora tiene {b}", "cuánto dinero tenía al principio"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("el club de cometas gana {a}", "ahora tiene {b}", "cuánto dinero tenía al principio"),
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
}
