"""Word problems of a class that names its own things, sentence by sentence.

The holes are those of the kite club. Besides, ``{who}`` is of whom they tell, ``{does}`` what they do with
the wholes, and ``{do}`` the same after "did". Who does it is one: a class, a club, a team. Nothing is made,
torn or flown: the verb may be any.
"""

from onewhole.number.unit import Kind
from onewhole.problems.story_asks import Asks
from onewhole.problems.story_frame import FrameTable, frames_of
from onewhole.problems.story_structure import Structure

_NUMBERS: FrameTable = {
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
}

_LENGTHS: FrameTable = {
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
}

_WEIGHTS: FrameTable = {
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
}

_TIMES: FrameTable = {
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
}

_VOLUMES: FrameTable = {
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
}

_MONEY: FrameTable = {
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
