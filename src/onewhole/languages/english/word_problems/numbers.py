"""Word problems about what a class counts: its wholes, and things made of them."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("the kite club has {a}", "it uses {b} for a kite", "{many} {are} left"),
        ("one pupil brings {a} to the kite club", "the wind tears {b}", "{many} {are} still good"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("the red kite takes {a}", "the blue kite takes {b}", "{more} does the red kite take"),
        ("the big kite needs {a}", "the small kite needs {b}", "{fewer} does the small kite need"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a kite needs {a}", "the kite club has {b}", "{more} does it need"),
        (
            "the kite club uses {a} in all",
            "it uses {b} for tails and the rest for kites",
            "{many} does it use for kites",
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("the kite club has {a} for kites and {b} for tails", "{many} does it have in all"),
        ("one pupil brings {a}", "another pupil brings {b}", "{many} do they bring in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "the small kite needs {a}",
            "the big kite needs {b} more than that",
            "{many} does the big kite need",
        ),
        (
            "the tail maker uses {a} one day and {b} more than that the next day",
            "{many} does the tail maker use the next day",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("the kite club uses {a} for a kite", "it still has {b}", "{many} did it have at first"),
        ("the wind tears {a}", "the kite club can still use {b}", "{many} did it have at first"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red kite takes {a}",
            "the blue kite takes {b}",
            "which kite takes more, or do both take the same",
        ),
        (
            "one pupil cuts up {a}",
            "another pupil cuts up {b}",
            "who cuts up more, or do both cut up the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("the kite club has {a}", "it uses some for a kite", "now it has {b}", "{many} did it use"),
        ("the tail maker starts with {a} and ends with {b}", "{many} did the tail maker use"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("the kite club has {a}", "a kite needs {b}", "{more} does the club need"),
        (
            "the kite club has {a}",
            "one pupil brings some more",
            "now the club has {b}",
            "{many} did the pupil bring",
        ),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "the kite club has {some}",
            "it uses {a} for a kite",
            "now it has {b}",
            "{many} did it have at first",
        ),
        (
            "one pupil brings {some}",
            "the wind tears {a}",
            "the kite club can still use {b}",
            "{many} did the pupil bring",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "the kite club has {some}",
            "one pupil brings {a} more",
            "now the club has {b}",
            "{many} did it have at first",
        ),
        (
            "the kite club uses {some} for a kite and {a} for its tail",
            "it uses {b} in all",
            "{many} does it use for the kite",
        ),
    ),
    (Asks.RENAMED, Structure.SAME_AMOUNT): (
        ("a kite takes {a}", "the tail maker lays out the same amount {kept}", "how many {pieces} are there"),
        ("the kite club has {a}", "it shows the same amount {kept}", "how many {pieces} does it show"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the kite club uses {a} for a kite",
            "it uses {b} for a tail and {c} for bows",
            "{many} does it use in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "the kite club has {a}",
            "one pupil brings {b} more",
            "then the club uses {c} for a kite",
            "{many} {are} left",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "the kite club uses {a} for a kite and {b} for a tail",
            "the rest is for bows",
            "it uses {c} in all",
            "{many} does it use for bows",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} kite takes {each}",
            "what is the order of the amounts {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "the kite club has {a}",
            "about {many} is that, {nearest}",
        ),
        (
            "a kite show needs {a}",
            "rounded {nearest}, {many} does it need",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "the kite club uses {a} for a kite",
            "{many} is that {form}",
        ),
        (
            "the tail maker has {a} for tails",
            "how is that amount written {form}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "the kite club makes {kites}",
            "each kite takes {b}",
            "{many} does it use in all",
        ),
        (
            "the kite club has {pupils}",
            "each pupil brings {b}",
            "{many} do they bring in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the big kite takes {factor} times as much paper as the small kite",
            "the small kite takes {b}",
            "{many} does the big kite take",
        ),
    ),
    (Asks.TIMES, Structure.AREA): (
        (
            "the kite club cuts a sheet of paper into {rows} of {squares}",
            "how many squares does it cut",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "the kite club uses {factor} of its paper for a kite",
            "it had {b} at first",
            "{many} does it use for the kite",
        ),
    ),
    (Asks.PART_OF, Structure.AREA): (
        (
            "the kite club cuts a piece out of {one}",
            "the piece is {factor} as wide and {other} as long as the {brief}",
            "{many} is the piece",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("{who} has {a}", "it {does} {b}", "{many} {are} left"),
        ("{who} gets {a}", "it {does} {b}", "{many} {are} left"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("{who} {does} {a} one day", "the next day it {does} {b}", "{more} does it {do} the first day"),
        ("{who} {does} {a} one week", "the next week it {does} {b}", "{fewer} does it {do} the next week"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("{who} needs {a}", "it has {b}", "{more} does it need"),
        (
            "{who} {does} {a} in all",
            "it {does} {b} the first day and the rest the next day",
            "{many} does it {do} the next day",
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} {does} {a} one day and {b} the next day", "{many} does it {do} in all"),
        ("{who} {does} {a}", "then it {does} {b}", "{many} does it {do} in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "{who} {does} {a} one day",
            "the next day it {does} {b} more than that",
            "{many} does it {do} the next day",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} {does} {a}", "it still has {b}", "{many} did it have at first"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "{who} {does} {a} one day",
            "the next day it {does} {b}",
            "on which day does it {do} more, or is it the same on both",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("{who} has {a}", "it {does} some", "now it has {b}", "{many} did it {do}"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("{who} has {a}", "it needs {b}", "{more} does it need"),
        ("{who} has {a}", "it gets some more", "now it has {b}", "{many} did it get"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} has {some}", "it {does} {a}", "now it has {b}", "{many} did it have at first"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} has {some}", "it gets {a} more", "now it has {b}", "{many} did it have at first"),
    ),
    (Asks.RENAMED, Structure.SAME_AMOUNT): (
        ("{who} has {a}", "it shows the same amount {kept}", "how many {pieces} does it show"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "{who} {does} {a} one day",
            "it {does} {b} the next day and {c} the day after",
            "{many} does it {do} in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        ("{who} has {a}", "it gets {b} more", "then it {does} {c}", "{many} {are} left"),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "{who} {does} {a} one day and {b} the next day",
            "the day after it {does} the rest",
            "it {does} {c} in all",
            "{many} does it {do} on the last day",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} group {does} {each}",
            "what is the order of the amounts {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} {does} {a}",
            "about {many} is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} {does} {a}",
            "{many} is that {form}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} meets {times}",
            "each time it {does} {b}",
            "{many} does it {do} in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "today {who} {does} {factor} times as much as it did the day before",
            "the day before it was {b}",
            "{many} does it {do} today",
        ),
    ),
    (Asks.TIMES, Structure.AREA): (
        (
            "{who} sets up {rows} of {chairs}",
            "how many chairs does it set up",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} {does} {factor} of what it has",
            "it had {b} at first",
            "{many} does it {do}",
        ),
    ),
}
