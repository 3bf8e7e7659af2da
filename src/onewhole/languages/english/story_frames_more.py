"""The sentences of stories about liquids and money; those about other amounts: :mod:`~.story_frames`."""

from onewhole.problems.story_asks import Asks
from onewhole.problems.story_frame import FrameTable
from onewhole.problems.story_structure import Structure

#: Stories of the kite club about what a pitcher holds.
VOLUMES: FrameTable = {
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
}

#: Stories of the kite club about what it has, spends and pays.
MONEY: FrameTable = {
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
}
