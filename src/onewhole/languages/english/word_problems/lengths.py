"""Word problems about lengths."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("a kite string is {a} long", "the kite club cuts off {b}", "how long is the string now"),
        ("the tail maker has {a} of ribbon", "a tail takes {b}", "how much ribbon is left"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("the red tail is {a} long", "the blue tail is {b} long", "how much longer is the red tail"),
        ("the red tail is {a} long", "the blue tail is {b} long", "how much shorter is the blue tail"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a tail must be {a} long", "so far it is {b} long", "how much ribbon does it still need"),
        ("a kite with its tail is {a} long", "the tail is {b} long", "how long is the kite"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("two tails lie end to end", "one is {a} long", "the other is {b} long", "how long are they in all"),
        ("the tail maker uses {a} of red ribbon and {b} of blue ribbon", "how much ribbon is that in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        ("the red tail is {a} long", "the blue tail is {b} longer", "how long is the blue tail"),
        (
            "the small kite has {a} of string",
            "the big kite has {b} more than that",
            "how much string does the big kite have",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("the kite club cuts {a} off a string", "now the string is {b} long", "how long was it at first"),
        ("a tail takes {a} of ribbon", "the tail maker still has {b}", "how much ribbon was there at first"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red tail is {a} long",
            "the blue tail is {b} long",
            "which tail is longer, or are they the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "a kite string is {a} long",
            "the kite club cuts some off",
            "now it is {b} long",
            "how much did the club cut off",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("so far a tail is {a} long", "it must be {b} long", "how much ribbon does it still need"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("the kite club cuts {a} off a string", "now the string is {b} long", "how long was it at first"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("the tail maker adds {a} to a tail", "now the tail is {b} long", "how long was it at first"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the red tail is {a} long",
            "the blue tail is {b} long",
            "the green tail is {c} long",
            "how long are they in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "a tail is {a} long",
            "the tail maker adds {b}",
            "then the tail maker cuts off {c}",
            "how long is the tail now",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "the red tail is {a} long",
            "the blue tail is {b} long",
            "with the green tail they are {c} long in all",
            "how long is the green tail",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} tail is {each} long",
            "what is the order of the lengths {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "a kite string is {a} long",
            "about how long is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "a kite string is {a} long",
            "{many} is that {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "a kite string is {a} long",
            "{many} is that",
        ),
        (
            "the tail maker has {a} of ribbon",
            "{many} of ribbon is that",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "the tail maker makes {tails}",
            "each tail is {b} long",
            "how much ribbon is that in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the red tail is {factor} times as long as the blue tail",
            "the blue tail is {b} long",
            "how long is the red tail",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each tail is {a} long",
            "the tail maker makes {tails}",
            "how much ribbon is that in all",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "the tail maker uses {factor} of a ribbon",
            "the ribbon was {b} long at first",
            "how much ribbon is that",
        ),
    ),
}

#: Centimeters are a long word: short sentences.
METRIC_KITES: FrameTable = {
    **KITES,
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("the red ribbon is {a} long", "the blue ribbon is {b} long", "how long are both in all"),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        ("the kite club has a string", "it is {a} long", "{many} is that"),
        ("the kite club has a tail", "the tail is {a} long", "{many} is that"),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("a rope is {a} long", "{who} cuts off {b}", "how long is the rope now"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("the red rope is {a} long", "the blue rope is {b} long", "how much longer is the red rope"),
        ("the red rope is {a} long", "the blue rope is {b} long", "how much shorter is the blue rope"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a rope must be {a} long", "so far it is {b} long", "how much longer must it be"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("two ropes lie end to end", "one is {a} long", "the other is {b} long", "how long are they in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        ("the red rope is {a} long", "the blue rope is {b} longer", "how long is the blue rope"),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} cuts {a} off a rope", "now the rope is {b} long", "how long was it at first"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red rope is {a} long",
            "the blue rope is {b} long",
            "which rope is longer, or are they the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("a rope is {a} long", "{who} cuts some off", "now it is {b} long", "how much did {who} cut off"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("so far a rope is {a} long", "it must be {b} long", "how much longer must it be"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} cuts {a} off a rope", "now the rope is {b} long", "how long was it at first"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} ties {a} to a rope", "now the rope is {b} long", "how long was it at first"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the red rope is {a} long",
            "the blue rope is {b} long",
            "the green rope is {c} long",
            "how long are they in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        ("a rope is {a} long", "{who} ties {b} to it", "then {who} cuts off {c}", "how long is the rope now"),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "the red rope is {a} long",
            "the blue rope is {b} long",
            "with the green rope they are {c} long in all",
            "how long is the green rope",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} rope is {each} long",
            "what is the order of the lengths {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} has a rope of {a}",
            "about how long is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} has a rope of {a}",
            "{many} is that {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "{who} has a rope of {a}",
            "{many} is that",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} cuts {ropes}",
            "each rope is {b} long",
            "how long are they in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the red rope is {factor} times as long as the blue rope",
            "the blue rope is {b} long",
            "how long is the red rope",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each rope is {a} long",
            "{who} cuts {ropes}",
            "how long are they in all",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} cuts off {factor} of a rope",
            "the rope was {b} long at first",
            "how long is the piece",
        ),
    ),
}
