"""Word problems about what is had, spent and paid."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("the kite club has {a}", "it buys paper for {b}", "how much money is left"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("the red kite costs {a}", "the blue kite costs {b}", "how much more does the red kite cost"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a kite and its string cost {a}", "the kite costs {b}", "how much does the string cost"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("the kite club buys paper for {a}", "then it buys string for {b}", "how much does it pay in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "the small kite costs {a}",
            "the big kite costs {b} more than that",
            "how much does the big kite cost",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("the kite club buys paper for {a}", "now it has {b} left", "how much money did it have at first"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red kite costs {a}",
            "the blue kite costs {b}",
            "which kite costs more, or do both cost the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("the kite club has {a}", "it buys paper", "now it has {b} left", "how much did the paper cost"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("the kite club has saved {a}", "it needs {b} for a kite", "how much must it still save"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("the kite club buys paper for {a}", "now it has {b} left", "how much money did it have at first"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("the kite club earns {a}", "now it has {b}", "how much money did it have at first"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the kite club buys paper for {a}",
            "it buys string for {b} and glue for {c}",
            "how much does it pay in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        ("the kite club has {a}", "it earns {b}", "then it buys paper for {c}", "how much money is left"),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "paper costs {a}",
            "string costs {b}",
            "with glue the kite club pays {c} in all",
            "how much does the glue cost",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} kite costs {each}",
            "what is the order of the prices {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "the kite club pays {a}",
            "about how much is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "the kite club pays {a}",
            "{many} is that {form}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "the kite club buys {kites}",
            "each kite costs {b}",
            "how much does it pay in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the big kite costs {factor} times as much as the small kite",
            "the small kite costs {b}",
            "how much does the big kite cost",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each kite costs {a}",
            "the kite club buys {kites}",
            "how much does it pay in all",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "the kite club pays {factor} of its money for paper",
            "it had {b} at first",
            "how much does the paper cost",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("{who} has {a}", "it buys paper for {b}", "how much money is left"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("the red book costs {a}", "the blue book costs {b}", "how much more does the red book cost"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a book and its cover cost {a}", "the book costs {b}", "how much does the cover cost"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} buys paper for {a}", "then it buys glue for {b}", "how much does it pay in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "the small book costs {a}",
            "the big book costs {b} more than that",
            "how much does the big book cost",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} buys paper for {a}", "now it has {b} left", "how much money did it have at first"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red book costs {a}",
            "the blue book costs {b}",
            "which book costs more, or do both cost the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("{who} has {a}", "it buys paper", "now it has {b} left", "how much did the paper cost"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("{who} has saved {a}", "it needs {b} for a book", "how much must it still save"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} buys paper for {a}", "now it has {b} left", "how much money did it have at first"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} earns {a}", "now it has {b}", "how much money did it have at first"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        ("{who} buys paper for {a}", "it buys tape for {b} and glue for {c}", "how much does it pay in all"),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        ("{who} has {a}", "it earns {b}", "then it buys paper for {c}", "how much money is left"),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "paper costs {a}",
            "string costs {b}",
            "with glue {who} pays {c} in all",
            "how much does the glue cost",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} book costs {each}",
            "what is the order of the prices {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} pays {a}",
            "about how much is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} pays {a}",
            "{many} is that {form}",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} buys {books}",
            "each book costs {b}",
            "how much does it pay in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the big book costs {factor} times as much as the small book",
            "the small book costs {b}",
            "how much does the big book cost",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each book costs {a}",
            "{who} buys {books}",
            "how much does it pay in all",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} pays {factor} of its money for paper",
            "it had {b} at first",
            "how much does the paper cost",
        ),
    ),
}
