"""The kite club's word problems in Spanish: what is unknown, how it is told, and the words.

Nobody in them has a name or a gender. ``{a}`` and ``{b}`` are the amounts with their units and ``{some}`` an
amount that is not known yet. ``{many}``, ``{more}`` and ``{fewer}`` begin the question: cuántas tiras, or qué
parte de una tira, with ``{left}`` or ``{good}`` for its verb. ``{pieces}`` are the pieces asked for and
``{kept}`` the wholes beside them. No other verb depends on whether an amount is one or many. The last
sentence asks. All of them are to be checked by a native speaker.
"""

from onewhole.languages.spanish.story_frames_more import MONEY, VOLUMES
from onewhole.number.unit import Kind
from onewhole.problems.story_asks import Asks
from onewhole.problems.story_frame import FrameTable, frames_of
from onewhole.problems.story_structure import Structure

_NUMBERS: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("el club de cometas tiene {a}", "usa {b} para una cometa", "{many} {left}"),
        ("alguien trae {a} al club de cometas", "el viento rompe {b}", "{many} {good} todavía"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cometa roja lleva {a}", "la cometa azul lleva {b}", "{more} lleva la cometa roja"),
        ("la cometa grande necesita {a}", "la pequeña necesita {b}", "{fewer} necesita la pequeña"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una cometa necesita {a}", "el club de cometas tiene {b}", "{more} necesita"),
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
            "la cometa pequeña necesita {a}",
            "la cometa grande necesita {b} más que eso",
            "{many} necesita la cometa grande",
        ),
        (
            "el club de cometas usa {a} un día y {b} más que eso al día siguiente",
            "{many} usa al día siguiente",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("el club de cometas usa {a} para una cometa", "todavía tiene {b}", "{many} tenía al principio"),
        ("el viento rompe {a}", "el club de cometas todavía tiene {b}", "{many} tenía al principio"),
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
        ("el club de cometas tiene {a}", "una cometa necesita {b}", "{more} necesita el club"),
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
            "{many} tenía al principio",
        ),
        (
            "alguien trae {some}",
            "el viento rompe {a}",
            "el club de cometas todavía tiene {b}",
            "{many} trajo esa persona",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "el club de cometas tiene {some}",
            "alguien trae {a} más",
            "ahora el club tiene {b}",
            "{many} tenía al principio",
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
}

_LENGTHS: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una cuerda mide {a}", "el club de cometas le corta {b}", "cuánto mide la cuerda ahora"),
        ("el club de cometas tiene {a} de cinta", "una cola lleva {b}", "cuánta cinta queda"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cola roja mide {a}", "la cola azul mide {b}", "cuánto más mide la cola roja"),
        ("la cola roja mide {a}", "la cola azul mide {b}", "cuánto menos mide la cola azul"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una cola debe medir {a}", "hasta ahora mide {b}", "cuánta cinta necesita todavía"),
        ("una cometa con su cola mide {a}", "la cola mide {b}", "cuánto mide la cometa"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("hay dos colas, una tras otra", "una mide {a}", "la otra mide {b}", "cuánto miden en total"),
        ("el club de cometas usa {a} de cinta roja y {b} de cinta azul", "cuánta cinta es en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        ("la cola roja mide {a}", "la cola azul mide {b} más", "cuánto mide la cola azul"),
        (
            "la cometa pequeña tiene {a} de cuerda",
            "la cometa grande tiene {b} más que eso",
            "cuánta cuerda tiene la cometa grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("el club de cometas le corta {a} a una cuerda", "ahora mide {b}", "cuánto medía al principio"),
        ("una cola lleva {a} de cinta", "el club todavía tiene {b}", "cuánta cinta había al principio"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        ("la cola roja mide {a}", "la cola azul mide {b}", "qué cola es más larga, o son iguales"),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("una cuerda mide {a}", "el club le corta una parte", "ahora mide {b}", "cuánto le cortó el club"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("hasta ahora una cola mide {a}", "debe medir {b}", "cuánta cinta necesita todavía"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("el club de cometas le corta {a} a una cuerda", "ahora mide {b}", "cuánto medía al principio"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("el club le agrega {a} a una cola", "ahora la cola mide {b}", "cuánto medía al principio"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la cola roja mide {a}",
            "la cola azul mide {b}",
            "la cola verde mide {c}",
            "cuánto miden en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una cola mide {a}",
            "el club de cometas le une {b}",
            "después el club corta {c}",
            "cuánto mide ahora la cola",
        ),
    ),
}

_WEIGHTS: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("una caja de cometas pesa {a}", "alguien saca una cometa de {b}", "cuánto pesa la caja ahora"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("la cometa grande pesa {a}", "la pequeña pesa {b}", "cuánto más pesa la cometa grande"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("una cometa en su caja pesa {a}", "la cometa pesa {b}", "cuánto pesa la caja"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("la cometa roja pesa {a}", "la cometa azul pesa {b}", "cuánto pesan en total"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "la cometa pequeña pesa {a}",
            "la cometa grande pesa {b} más que eso",
            "cuánto pesa la cometa grande",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        (
            "alguien saca de una caja una cometa de {a}",
            "ahora la caja pesa {b}",
            "cuánto pesaba al principio",
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
            "una caja de cometas pesa {a}",
            "alguien saca una cometa",
            "ahora la caja pesa {b}",
            "cuánto pesa la cometa",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("una caja pesa {a}", "alguien mete una cometa", "ahora la caja pesa {b}", "cuánto pesa la cometa"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "alguien saca de una caja una cometa de {a}",
            "ahora la caja pesa {b}",
            "cuánto pesaba al principio",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "alguien mete en una caja una cometa de {a}",
            "ahora la caja pesa {b}",
            "cuánto pesaba al principio",
        ),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "la cometa roja pesa {a}",
            "la cometa azul pesa {b}",
            "la cometa verde pesa {c}",
            "cuánto pesan en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "una caja de cometas pesa {a}",
            "alguien mete una cometa de {b}",
            "después otra persona saca una cometa de {c}",
            "cuánto pesa ahora la caja",
        ),
    ),
}

_TIMES: FrameTable = {
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
        ("una cometa ha volado {a}", "debe volar {b}", "cuánto tiempo más debe volar"),
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
            "el club de cometas corta papel durante {a}",
            "después pega durante {b}",
            "al final vuela cometas durante {c}",
            "cuánto tiempo es en total",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "el club de cometas tiene {a} para trabajar",
            "recibe {b} más",
            "trabaja {c}",
            "cuánto tiempo queda",
        ),
    ),
}

FRAMES = frames_of(
    {
        Kind.NUMBER: _NUMBERS,
        Kind.LENGTH: _LENGTHS,
        Kind.WEIGHT: _WEIGHTS,
        Kind.VOLUME: VOLUMES,
        Kind.TIME: _TIMES,
        Kind.METRIC_LENGTH: _LENGTHS,
        Kind.MASS: _WEIGHTS,
        Kind.METRIC_VOLUME: VOLUMES,
        Kind.MONEY: MONEY,
    }
)
