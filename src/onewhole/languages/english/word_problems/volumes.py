"""Word problems about what a pitcher holds."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("a pitcher holds {a} of juice", "the kite club drinks {b}", "how much juice is left"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "the red pitcher holds {a}",
            "the blue pitcher holds {b}",
            "how much more does the red pitcher hold",
        ),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a pitcher holds {a} of punch", "{b} of it is juice, and the rest is water", "how much water is it"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        (
            "the kite club pours {a} of juice into a pitcher",
            "then it adds {b} of water",
            "how much is that in all",
        ),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "the small pitcher holds {a}",
            "the big pitcher holds {b} more than that",
            "how much does the big pitcher hold",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        (
            "the kite club drinks {a} of juice from a pitcher",
            "now it holds {b}",
            "how much did it hold at first",
        ),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red pitcher holds {a}",
            "the blue pitcher holds {b}",
            "which pitcher holds more, or do both hold the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "a pitcher holds {a} of juice",
            "the kite club drinks some",
            "now it holds {b}",
            "how much juice is gone",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("a pitcher holds {a}", "the kite club pours some in", "now it holds {b}", "how much was poured in"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "the kite club drinks {a} of juice from a pitcher",
            "now it holds {b}",
            "how much did it hold at first",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("the kite club pours {a} into a pitcher", "now it holds {b}", "how much did it hold at first"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the red pitcher holds {a}",
            "the blue pitcher holds {b}",
            "the green pitcher holds {c}",
            "how much do they hold in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "a pitcher holds {a} of juice",
            "the kite club pours in {b} more",
            "then it drinks {c}",
            "how much juice is left",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "the red pitcher holds {a}",
            "the blue pitcher holds {b}",
            "with the green pitcher they hold {c} in all",
            "how much does the green pitcher hold",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} pitcher holds {each}",
            "what is the order of the amounts {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "the kite club makes {a} of juice",
            "about how much is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "the kite club makes {a} of juice",
            "{many} is that {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "the kite club makes {a} of juice",
            "{many} is that",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "the kite club fills {pitchers}",
            "each pitcher holds {b}",
            "how much do they hold in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the big pitcher holds {factor} times as much as the small pitcher",
            "the small pitcher holds {b}",
            "how much does the big pitcher hold",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each pitcher holds {a}",
            "the kite club fills {pitchers}",
            "how much do they hold in all",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "the kite club drinks {factor} of the juice in a pitcher",
            "the pitcher held {b} at first",
            "how much juice is that",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("a pitcher holds {a} of juice", "{who} drinks {b}", "how much juice is left"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "the red pitcher holds {a}",
            "the blue pitcher holds {b}",
            "how much more does the red pitcher hold",
        ),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a pitcher holds {a} of punch", "{b} of it is juice, and the rest is water", "how much water is it"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("{who} pours {a} of juice into a pitcher", "then it adds {b} of water", "how much is that in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "the small pitcher holds {a}",
            "the big pitcher holds {b} more than that",
            "how much does the big pitcher hold",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("{who} drinks {a} of juice from a pitcher", "now it holds {b}", "how much did it hold at first"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red pitcher holds {a}",
            "the blue pitcher holds {b}",
            "which pitcher holds more, or do both hold the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        ("a pitcher holds {a} of juice", "{who} drinks some", "now it holds {b}", "how much juice is gone"),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("a pitcher holds {a}", "{who} pours some in", "now it holds {b}", "how much was poured in"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("{who} drinks {a} of juice from a pitcher", "now it holds {b}", "how much did it hold at first"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} pours {a} into a pitcher", "now it holds {b}", "how much did it hold at first"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the red pitcher holds {a}",
            "the blue pitcher holds {b}",
            "the green pitcher holds {c}",
            "how much do they hold in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "a pitcher holds {a} of juice",
            "{who} pours in {b} more",
            "then it drinks {c}",
            "how much juice is left",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "the red pitcher holds {a}",
            "the blue pitcher holds {b}",
            "with the green pitcher they hold {c} in all",
            "how much does the green pitcher hold",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} pitcher holds {each}",
            "what is the order of the amounts {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} makes {a} of juice",
            "about how much is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} makes {a} of juice",
            "{many} is that {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "{who} makes {a} of juice",
            "{many} is that",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} fills {pitchers}",
            "each pitcher holds {b}",
            "how much do they hold in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the big pitcher holds {factor} times as much as the small pitcher",
            "the small pitcher holds {b}",
            "how much does the big pitcher hold",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each pitcher holds {a}",
            "{who} fills {pitchers}",
            "how much do they hold in all",
        ),
    ),
    (Asks.PART_OF, Structure.PART_OF): (
        (
            "{who} drinks {factor} of the juice in a pitcher",
            "the pitcher held {b} at first",
            "how much juice is that",
        ),
    ),
}
