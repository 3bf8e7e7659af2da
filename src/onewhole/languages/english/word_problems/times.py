"""Word problems about how long something takes."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("the kite club has {a} for its meeting", "it uses {b} to build kites", "how much time is left"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "the red kite flies for {a}",
            "the blue kite flies for {b}",
            "how much longer does the red kite fly",
        ),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        (
            "the kite club meets for {a}",
            "it builds kites for {b} and flies them the rest of the time",
            "how long does it fly them",
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("the kite club builds kites for {a}", "then it flies them for {b}", "how long is that in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "the red kite flies for {a}",
            "the blue kite flies {b} longer than that",
            "how long does the blue kite fly",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        (
            "the kite club uses {a} of its meeting to build kites",
            "it still has {b}",
            "how long is the meeting",
        ),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red kite flies for {a}",
            "the blue kite flies for {b}",
            "which kite flies longer, or are they the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "the kite club has {a} for its meeting",
            "it builds kites",
            "now it has {b} left",
            "how long did it build kites",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("a kite has been up for {a}", "it must stay up for {b}", "how much longer must it fly"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "the kite club uses {a} of its meeting to build kites",
            "it still has {b}",
            "how long is the meeting",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "a kite flies, and then it flies for {a} more",
            "it flies for {b} in all",
            "how long did it fly at first",
        ),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the kite club builds kites for {a}",
            "then it flies them for {b}",
            "it cleans up for {c}",
            "how long is that in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        ("the kite club has {a} to build kites", "it gets {b} more", "it uses {c}", "how much time is left"),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "the kite club builds kites for {a}",
            "it cleans up for {b}",
            "the rest of the time it flies kites",
            "the meeting is {c} long",
            "how long does it fly kites",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} kite flies for {each}",
            "what is the order of the times {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "a kite stays up for {a}",
            "about how long is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "a kite stays up for {a}",
            "{many} is that {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "a kite stays up for {a}",
            "{many} is that",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "the kite club has {meetings}",
            "each meeting is {b} long",
            "how long are they in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the red kite flies {factor} times as long as the blue kite",
            "the blue kite flies for {b}",
            "how long does the red kite fly",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each meeting is {a} long",
            "the kite club has {meetings}",
            "how long are they in all",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "the kite club builds kites for {factor} of its meeting",
            "the meeting is {b} long",
            "how long does it build kites",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("{who} has {a} to work", "it works for {b}", "how much time is left"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "{who} works for {a} one day",
            "the next day it works for {b}",
            "how much longer does it work the first day",
        ),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("{who} meets for {a}", "it works for {b} and plays the rest of the time", "how long does it play"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} works for {a}", "then it plays for {b}", "how long is that in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "{who} works for {a} one day",
            "the next day it works {b} longer than that",
            "how long does it work the next day",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} works for {a} of its meeting", "it still has {b}", "how long is the meeting"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "{who} works for {a} one day",
            "the next day it works for {b}",
            "on which day does it work longer, or is it the same on both",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("{who} has {a} to work", "it works", "now it has {b} left", "how long did it work"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("{who} has been at work for {a}", "it must work for {b}", "how much longer must it work"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} works for {a} of its meeting", "it still has {b}", "how long is the meeting"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "{who} works, and then it works for {a} more",
            "it works for {b} in all",
            "how long did it work at first",
        ),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        ("{who} works for {a}", "then it plays for {b}", "it cleans up for {c}", "how long is that in all"),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        ("{who} has {a} to work", "it gets {b} more", "it works for {c}", "how much time is left"),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "{who} works for {a}",
            "it cleans up for {b}",
            "the rest of the time it plays",
            "the meeting is {c} long",
            "how long does it play",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} group works for {each}",
            "what is the order of the times {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} works for {a}",
            "about how long is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} works for {a}",
            "{many} is that {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "{who} works for {a}",
            "{many} is that",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} has {meetings}",
            "each meeting is {b} long",
            "how long are they in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the red group works {factor} times as long as the blue group",
            "the blue group works for {b}",
            "how long does the red group work",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each meeting is {a} long",
            "{who} has {meetings}",
            "how long are they in all",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} works for {factor} of its meeting",
            "the meeting is {b} long",
            "how long does it work",
        ),
    ),
}
