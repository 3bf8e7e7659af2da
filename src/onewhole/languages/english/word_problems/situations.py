"""Word problems of adding and taking away whose situation is told of every kind of amount alike.

What is added to something with the result, the change or the start unknown, and two amounts compared with
the smaller or the bigger one unknown, in both wordings: in the turned one the word points the other way
("that is 3 more than", and it is taken away).
"""

from onewhole.number.unit import Kind
from onewhole.problems.story_frame import FrameTable, joined
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

_KITES: FrameTable = {
    (Asks.SUM, Structure.ADD_TO): (
        ("the kite club has {a}{of}", "it gets {b} more", "{much} does it have now"),
    ),
    (Asks.CHANGE_ADDED, Structure.ADD_TO): (
        ("the kite club has {a}{of}", "then it gets more", "now it has {b}", "{much} did it get"),
    ),
    (Asks.START_ADDED, Structure.ADD_TO): (
        ("the kite club gets {a}{of}", "now it has {b}", "{much} did it have at first"),
    ),
    (Asks.DIFFERENCE, Structure.SMALLER_UNKNOWN): (
        (
            "the big kite {takes} {a}{of}",
            "the small kite {takes} {b} less than that",
            "{much} does the small kite {take}",
        ),
    ),
    (Asks.DIFFERENCE, Structure.TURNED): (
        (
            "the big kite {takes} {a}{of}",
            "that is {b} more than the small kite {takes}",
            "{much} does the small kite {take}",
        ),
    ),
    (Asks.SUM, Structure.TURNED): (
        (
            "the small kite {takes} {a}{of}",
            "that is {b} less than the big kite {takes}",
            "{much} does the big kite {take}",
        ),
    ),
}
_LESS: FrameTable = {
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "the red kite {takes} {a}{of}",
            "the blue kite {takes} {b}",
            "how much less does the blue kite {take}",
        ),
    ),
}

_OWN: FrameTable = {
    (Asks.SUM, Structure.ADD_TO): (("{who} has {a}{of}", "it gets {b} more", "{much} does it have now"),),
    (Asks.CHANGE_ADDED, Structure.ADD_TO): (
        ("{who} has {a}{of}", "then it gets more", "now it has {b}", "{much} did it get"),
    ),
    (Asks.START_ADDED, Structure.ADD_TO): (
        ("{who} gets {a}{of}", "now it has {b}", "{much} did it have at first"),
    ),
    (Asks.DIFFERENCE, Structure.SMALLER_UNKNOWN): (
        (
            "{who} {uses} {a}{of} one day",
            "the next day it {uses} {b} less than that",
            "{much} does it {use} the next day",
        ),
    ),
    (Asks.DIFFERENCE, Structure.TURNED): (
        (
            "today {who} {uses} {a}{of}",
            "that is {b} more than the day before",
            "{much} did it {use} the day before",
        ),
    ),
    (Asks.SUM, Structure.TURNED): (
        (
            "today {who} {uses} {a}{of}",
            "that is {b} less than the day before",
            "{much} did it {use} the day before",
        ),
    ),
}
_OWN_LESS: FrameTable = {
    (Asks.DIFFERENCE, Structure.COMPARE): (
        (
            "{who} {uses} {a}{of} one day",
            "the next day it {uses} {b}",
            "how much less does it {use} the next day",
        ),
    ),
}

KITES = {kind: _KITES if kind is Kind.NUMBER else joined(_KITES, _LESS) for kind in Kind}
OWN = {kind: _OWN if kind is Kind.NUMBER else joined(_OWN, _OWN_LESS) for kind in Kind}
