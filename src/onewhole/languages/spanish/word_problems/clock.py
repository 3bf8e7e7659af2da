"""Spanish word problems about times of day on a clock; no sentence ends with one, because of a.m. and p.m."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.TIME_BETWEEN, Structure.ELAPSED_TIME): (
        (
            "{at_a}, el club de cometas empieza a volar cometas",
            "{at_b}, termina",
            "cuánto tiempo vuela cometas",
        ),
    ),
    (Asks.TIME_LATER, Structure.ELAPSED_TIME): (
        ("{at_a}, el club de cometas empieza a volar cometas", "las vuela por {b}", "a qué hora termina"),
    ),
    (Asks.TIME_EARLIER, Structure.ELAPSED_TIME): (
        ("{at_a}, el club de cometas termina de volar cometas", "las voló por {b}", "a qué hora empezó"),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.TIME_BETWEEN, Structure.ELAPSED_TIME): (
        ("{at_a}, {who} empieza a trabajar", "{at_b}, termina", "cuánto tiempo trabaja"),
    ),
    (Asks.TIME_LATER, Structure.ELAPSED_TIME): (
        ("{at_a}, {who} empieza a trabajar", "trabaja por {b}", "a qué hora termina"),
    ),
    (Asks.TIME_EARLIER, Structure.ELAPSED_TIME): (
        ("{at_a}, {who} termina de trabajar", "trabajó por {b}", "a qué hora empezó"),
    ),
}
