"""Word problems about weights."""

from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

#: Of the kite club.
KITES: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("a box of kites weighs {a}", "one pupil takes out a kite of {b}", "how much does the box weigh now"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("the big kite weighs {a}", "the small kite weighs {b}", "how much more does the big kite weigh"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a kite in its box weighs {a}", "the kite weighs {b}", "how much does the box weigh"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("the red kite weighs {a}", "the blue kite weighs {b}", "how much do they weigh in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "the small kite weighs {a}",
            "the big kite weighs {b} more than that",
            "how much does the big kite weigh",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        (
            "one pupil takes a kite of {a} out of a box",
            "now the box weighs {b}",
            "how much did it weigh at first",
        ),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red kite weighs {a}",
            "the blue kite weighs {b}",
            "which kite weighs more, or do both weigh the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "a box of kites weighs {a}",
            "one pupil takes out a kite",
            "now the box weighs {b}",
            "how much does the kite weigh",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        (
            "a box weighs {a}",
            "one pupil puts a kite in",
            "now the box weighs {b}",
            "how much does the kite weigh",
        ),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "one pupil takes a kite of {a} out of a box",
            "now the box weighs {b}",
            "how much did it weigh at first",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "one pupil puts a kite of {a} into a box",
            "now the box weighs {b}",
            "how much did it weigh at first",
        ),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the red kite weighs {a}",
            "the blue kite weighs {b}",
            "the green kite weighs {c}",
            "how much do they weigh in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "a box of kites weighs {a}",
            "one pupil puts in a kite of {b}",
            "then another pupil takes out a kite of {c}",
            "how much does the box weigh now",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "the red kite weighs {a}",
            "the blue kite weighs {b}",
            "with the green kite they weigh {c} in all",
            "how much does the green kite weigh",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} kite weighs {each}",
            "what is the order of the weights {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "a box of kites weighs {a}",
            "about how much is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "a box of kites weighs {a}",
            "{many} is that {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "a box of kites weighs {a}",
            "{many} is that",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "a box holds {kites}",
            "each kite weighs {b}",
            "how much do they weigh in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the big kite weighs {factor} times as much as the small kite",
            "the small kite weighs {b}",
            "how much does the big kite weigh",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each kite weighs {a}",
            "a box holds {kites}",
            "how much do they weigh in all",
        ),
    ),
    (Asks.PART_OF, Structure.TIMES_AS_MUCH): (
        (
            "the small kite weighs {factor} as much as the big kite",
            "the big kite weighs {b}",
            "how much does the small kite weigh",
        ),
    ),
}

#: Of a class that names its own things.
OWN: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("a bag weighs {a}", "{who} takes out a book of {b}", "how much does the bag weigh now"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("the big bag weighs {a}", "the small bag weighs {b}", "how much more does the big bag weigh"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a book in its box weighs {a}", "the book weighs {b}", "how much does the box weigh"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("the red bag weighs {a}", "the blue bag weighs {b}", "how much do they weigh in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "the small bag weighs {a}",
            "the big bag weighs {b} more than that",
            "how much does the big bag weigh",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        (
            "{who} takes a book of {a} out of a bag",
            "now the bag weighs {b}",
            "how much did it weigh at first",
        ),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red bag weighs {a}",
            "the blue bag weighs {b}",
            "which bag weighs more, or do both weigh the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "a bag weighs {a}",
            "{who} takes out a book",
            "now the bag weighs {b}",
            "how much does the book weigh",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        (
            "a bag weighs {a}",
            "{who} puts a book in",
            "now the bag weighs {b}",
            "how much does the book weigh",
        ),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        (
            "{who} takes a book of {a} out of a bag",
            "now the bag weighs {b}",
            "how much did it weigh at first",
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("{who} puts a book of {a} into a bag", "now the bag weighs {b}", "how much did it weigh at first"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the red bag weighs {a}",
            "the blue bag weighs {b}",
            "the green bag weighs {c}",
            "how much do they weigh in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "a bag weighs {a}",
            "{who} puts in a book of {b}",
            "then {who} takes out a book of {c}",
            "how much does the bag weigh now",
        ),
    ),
    (Asks.ONE_OF_THREE, Structure.PART_UNKNOWN): (
        (
            "the red bag weighs {a}",
            "the blue bag weighs {b}",
            "with the green bag they weigh {c} in all",
            "how much does the green bag weigh",
        ),
    ),
    (Asks.IN_ORDER, Structure.COMPARE): (
        (
            "the {color} bag weighs {each}",
            "what is the order of the weights {ends}",
        ),
    ),
    (Asks.ROUNDED, Structure.ABOUT): (
        (
            "{who} has a bag of {a}",
            "about how much is that, {nearest}",
        ),
    ),
    (Asks.OTHER_FORM, Structure.SAME_AMOUNT): (
        (
            "{who} has a bag of {a}",
            "{many} is that {form}",
        ),
    ),
    (Asks.OTHER_UNITS, Structure.SAME_AMOUNT): (
        (
            "{who} has a bag of {a}",
            "{many} is that",
        ),
    ),
    (Asks.TIMES, Structure.EQUAL_GROUPS): (
        (
            "{who} has {bags}",
            "each bag weighs {b}",
            "how much do they weigh in all",
        ),
    ),
    (Asks.TIMES, Structure.TIMES_AS_MUCH): (
        (
            "the big bag weighs {factor} times as much as the small bag",
            "the small bag weighs {b}",
            "how much does the big bag weigh",
        ),
    ),
    (Asks.EACH, Structure.EQUAL_GROUPS): (
        (
            "each bag weighs {a}",
            "{who} has {bags}",
            "how much do they weigh in all",
        ),
    ),
    (Asks.PART_OF, Structure.TIMES_AS_MUCH): (
        (
            "the small bag weighs {factor} as much as the big bag",
            "the big bag weighs {b}",
            "how much does the small bag weigh",
        ),
    ),
}
