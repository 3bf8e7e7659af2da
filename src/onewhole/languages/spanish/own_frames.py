"""The Spanish word problems of a class that names its own things, sentence by sentence.

The holes are those of the kite club. Besides, ``{who}`` is of whom they tell and ``{does}`` what they do with
the wholes. Who does it is one: a class, a club, a team. A verb of the class's own stands in the present
alone, because no rule gives its past. All of them are to be checked by a native speaker.
"""

from onewhole.number.unit import Kind
from onewhole.problems.story_asks import Asks
from onewhole.problems.story_frame import FrameTable, frames_of
from onewhole.problems.story_structure import Structure

_NUMBERS: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("{who} tiene {a}", "{does} {b}", "{many} {left}"),
        ("{who} recibe {a}", "{does} {b}", "{many} {left}"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("{who} {does} {a} un día", "al día siguiente {does} {b}", "{more} {does} el primer día"),
        ("{who} {does} {a} una semana", "la otra semana {does} {b}", "{fewer} {does} la otra semana"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("{who} necesita {a}", "tiene {b}", "{more} necesita"),
        (
            "{who} {does} {a} en total",
            "{does} {b} el primer día y lo demás al día siguiente",
            "{many} {does} al día siguiente",
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} {does} {a} un día y {b} al día siguiente", "{many} {does} en total"),
        ("{who} {does} {a}", "después {does} {b}", "{many} {does} en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "{who} {does} {a} un día",
            "al día siguiente {does} {b} más que eso",
            "{many} {does} al día siguiente",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} {does} {a}", "todavía tiene {b}", "{many} tenía al principio"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "{who} {does} {a} un día",
            "al día siguiente {does} {b}",
            "qué día {does} más, o es lo mismo los dos días",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("{who} tiene {a}", "{does} una parte de eso", "ahora tiene {b}", "{many} {does}"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("{who} tiene {a}", "necesita {b}", "{more} necesita"),
        ("{who} tiene {a}", "recibe más", "ahora tiene {b}", "{many} recibió"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} tiene {some}", "{does} {a}", "ahora tiene {b}", "{many} tenía al principio"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} tiene {some}", "recibe {a} más", "ahora tiene {b}", "{many} tenía al principio"),
    ),
    (Asks.RENAMED, Structure.SAME_AMOUNT): (
        ("{who} tiene {a}", "muestra la misma cantidad {kept}", "cuántos {pieces} muestra"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "{who} {does} {a} un día",
            "{does} {b} al día siguiente y {c} un día después",
            "{many} {does} en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "{who} tiene {a}",
            "recibe {b} más",
            "después {does} {c}",
            "{many} {left}",
        ),
    ),
}

_LENGTHS: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una cuerda mide {a}", "{who} le corta {b}", "cuánto mide la cuerda ahora"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cuerda roja mide {a}", "la cuerda azul mide {b}", "cuánto más mide la cuerda roja"),
        ("la cuerda roja mide {a}", "la cuerda azul mide {b}", "cuánto menos mide la cuerda azul"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una cuerda debe medir {a}", "hasta ahora mide {b}", "cuánto más debe medir"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("hay dos cuerdas, una tras otra", "una mide {a}", "la otra mide {b}", "cuánto miden en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        ("la cuerda roja mide {a}", "la cuerda azul mide {b} más", "cuánto mide la cuerda azul"),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} le corta {a} a una cuerda", "ahora la cuerda mide {b}", "cuánto medía al principio"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        ("la cuerda roja mide {a}", "la cuerda azul mide {b}", "qué cuerda es más larga, o son iguales"),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("una cuerda mide {a}", "{who} le corta una parte", "ahora mide {b}", "cuánto le cortó"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("hasta ahora una cuerda mide {a}", "debe medir {b}", "cuánto más debe medir"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} le corta {a} a una cuerda", "ahora la cuerda mide {b}", "cuánto medía al principio"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} le agrega {a} a una cuerda", "ahora la cuerda mide {b}", "cuánto medía al principio"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la cuerda roja mide {a}",
            "la cuerda azul mide {b}",
            "la cuerda verde mide {c}",
            "cuánto miden en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una cuerda mide {a}",
            "{who} le une {b}",
            "después {who} corta {c}",
            "cuánto mide ahora la cuerda",
        ),
    ),
}

_WEIGHTS: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una bolsa pesa {a}", "{who} saca un libro de {b}", "cuánto pesa la bolsa ahora"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la bolsa grande pesa {a}", "la bolsa pequeña pesa {b}", "cuánto más pesa la bolsa grande"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("un libro en su caja pesa {a}", "el libro pesa {b}", "cuánto pesa la caja"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("la bolsa roja pesa {a}", "la bolsa azul pesa {b}", "cuánto pesan en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la bolsa pequeña pesa {a}",
            "la bolsa grande pesa {b} más que eso",
            "cuánto pesa la bolsa grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} saca de una bolsa un libro de {a}", "ahora la bolsa pesa {b}", "cuánto pesaba al principio"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "la bolsa roja pesa {a}",
            "la bolsa azul pesa {b}",
            "qué bolsa pesa más, o pesan las dos lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("una bolsa pesa {a}", "{who} saca un libro", "ahora la bolsa pesa {b}", "cuánto pesa el libro"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una bolsa pesa {a}", "{who} mete un libro", "ahora la bolsa pesa {b}", "cuánto pesa el libro"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} saca de una bolsa un libro de {a}", "ahora la bolsa pesa {b}", "cuánto pesaba al principio"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} mete en una bolsa un libro de {a}", "ahora la bolsa pesa {b}", "cuánto pesaba al principio"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la bolsa roja pesa {a}",
            "la bolsa azul pesa {b}",
            "la bolsa verde pesa {c}",
            "cuánto pesan en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una bolsa pesa {a}",
            "{who} mete un libro de {b}",
            "después {who} saca un libro de {c}",
            "cuánto pesa ahora la bolsa",
        ),
    ),
}

_TIMES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("{who} tiene {a} para trabajar", "trabaja por {b}", "cuánto tiempo queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "{who} trabaja por {a} un día",
            "al día siguiente trabaja por {b}",
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
            "al día siguiente trabaja {b} más que eso",
            "cuánto tiempo trabaja al día siguiente",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} trabaja por {a} en su reunión", "todavía tiene {b}", "cuánto dura la reunión"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "{who} trabaja por {a} un día",
            "al día siguiente trabaja por {b}",
            "qué día trabaja más tiempo, o es lo mismo los dos días",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("{who} tiene {a} para trabajar", "trabaja", "ahora tiene {b}", "cuánto tiempo trabajó"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("{who} ha trabajado por {a}", "debe trabajar por {b}", "cuánto tiempo más debe trabajar"),
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
            "{who} trabaja {a}",
            "después juega {b}",
            "al final recoge durante {c}",
            "cuánto tiempo es en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "{who} tiene {a} para trabajar",
            "recibe {b} más",
            "trabaja {c}",
            "cuánto tiempo queda",
        ),
    ),
}

_VOLUMES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una jarra tiene {a} de jugo", "{who} toma {b}", "cuánto jugo queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la jarra roja tiene {a}", "la jarra azul tiene {b}", "cuánto más tiene la jarra roja"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una jarra tiene {a} de ponche", "{b} de eso es jugo y el resto es agua", "cuánta agua es"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} echa {a} de jugo en una jarra", "después le echa {b} de agua", "cuánto es en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la jarra pequeña tiene {a}",
            "la jarra grande tiene {b} más que eso",
            "cuánto tiene la jarra grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} toma {a} de jugo de una jarra", "ahora la jarra tiene {b}", "cuánto tenía al principio"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "la jarra roja tiene {a}",
            "la jarra azul tiene {b}",
            "qué jarra tiene más, o tienen las dos lo mismo",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("una jarra tiene {a} de jugo", "{who} toma una parte", "ahora tiene {b}", "cuánto jugo se tomó"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una jarra tiene {a}", "{who} le echa más", "ahora tiene {b}", "cuánto se le echó"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} toma {a} de jugo de una jarra", "ahora la jarra tiene {b}", "cuánto tenía al principio"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} echa {a} en una jarra", "ahora la jarra tiene {b}", "cuánto tenía al principio"),
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
            "una jarra tiene {a} de jugo",
            "{who} le echa {b} más",
            "después bebe {c}",
            "cuánto jugo queda",
        ),
    ),
}

_MONEY: FrameTable = {
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
        ("{who} compra papel por {a}", "ahora tiene {b}", "cuánto dinero tenía al principio"),
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
        ("{who} ha ahorrado {a}", "necesita {b} para un libro", "cuánto debe ahorrar todavía"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} compra papel por {a}", "ahora tiene {b}", "cuánto dinero tenía al principio"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} gana {a}", "ahora tiene {b}", "cuánto dinero tenía al principio"),
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
}

OWN_FRAMES = frames_of(
    {
        Kind.NUMBER: _NUMBERS,
        Kind.LENGTH: _LENGTHS,
        Kind.WEIGHT: _WEIGHTS,
        Kind.VOLUME: _VOLUMES,
        Kind.TIME: _TIMES,
        Kind.METRIC_LENGTH: _LENGTHS,
        Kind.MASS: _WEIGHTS,
        Kind.METRIC_VOLUME: _VOLUMES,
        Kind.MONEY: _MONEY,
    }
)
