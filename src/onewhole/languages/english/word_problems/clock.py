"""Word problems about times of day on a clock; no sentence ends with one, because of a.m. and p.m."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.TIME_BETWEEN, Structure.ELAPSED_TIME): (
        ("at {a}, the kite club starts to fly kites", "at {b}, it stops", "how long does it fly kites"),
    ),
    (Asks.TIME_LATER, Structure.ELAPSED_TIME): (
        ("at {a}, the kite club starts to fly kites", "it flies them for {b}", "at what time does it stop"),
    ),
    (Asks.TIME_EARLIER, Structure.ELAPSED_TIME): (
        ("at {a}, the kite club stops flying kites", "it flew them for {b}", "at what time did it start"),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.TIME_BETWEEN, Structure.ELAPSED_TIME): (
        ("at {a}, {who} starts to work", "at {b}, it stops", "how long does it work"),
    ),
    (Asks.TIME_LATER, Structure.ELAPSED_TIME): (
        ("at {a}, {who} starts to work", "it works for {b}", "at what time does it stop"),
    ),
    (Asks.TIME_EARLIER, Structure.ELAPSED_TIME): (
        ("at {a}, {who} stops work", "it worked for {b}", "at what time did it start"),
    ),
}
