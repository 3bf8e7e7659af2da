"""Word problems of several steps: some of it is worked first, and then the rest."""

from onewhole.number.unit import Kind
from onewhole.problems.story_frame import FrameTable, joined
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

_STEPS = Structure.SEVERAL_STEPS

_KITES: FrameTable = {
    (Asks.LESS_LESS, _STEPS): (
        ("the kite club has {a}{of}", "it uses {b} for a kite and {c} for its tail", "{much} {are} left"),
    ),
    (Asks.LESS_MORE, _STEPS): (
        (
            "the kite club has {a}{of}",
            "it uses {b} for a kite",
            "then it gets {c} more",
            "{much} does it have now",
        ),
    ),
    (Asks.LESS_BOTH, _STEPS): (
        (
            "the kite club has {a}{of}",
            "a kite {takes} {b}, and its tail {takes} {c}",
            "the club makes the kite with its tail",
            "{much} {are} left",
        ),
    ),
    (Asks.LESS_PART, _STEPS): (
        (
            "the kite club has {a}{of}",
            "a kite with a tail {takes} {b}, and one with no tail {takes} {c} less",
            "the club makes the one with no tail",
            "{much} {are} left",
        ),
    ),
    (Asks.MORE_TIMES, _STEPS): (
        (
            "the kite club uses {a}{of} for a flag",
            "it also makes {kites}",
            "each kite {takes} {c}",
            "{much} does it use in all",
        ),
    ),
    (Asks.LESS_TIMES, _STEPS): (
        ("the kite club has {a}{of}", "it makes {kites}", "each kite {takes} {c}", "{much} {are} left"),
    ),
    (Asks.TIMES_MORE, _STEPS): (
        (
            "the kite club makes {kites}",
            "each kite {takes} {b}{of}",
            "it also makes a flag that {takes} {c}",
            "{much} does it use in all",
        ),
    ),
    (Asks.TIMES_LESS, _STEPS): (
        (
            "at each of {meetings} the kite club gets {b}{of}",
            "after the last one it uses {c} for a kite",
            "{much} {are} left",
        ),
    ),
    (Asks.TIMES_BOTH, _STEPS): (
        (
            "the kite club makes {kites}",
            "each kite {takes} {b}{of}, and its tail {takes} {c}",
            "{much} does it use in all",
        ),
    ),
    (Asks.BOTH_TIMES, _STEPS): (
        (
            "each kite {takes} {a}{of}, and its tail {takes} {b}",
            "the kite club makes {kites}",
            "{much} does it use in all",
        ),
    ),
    (Asks.TIMES_LEFT, _STEPS): (
        ("at each of {meetings} the kite club gets {b}{of} and uses {c}", "{much} {are} left in all"),
    ),
    (Asks.LEFT_TIMES, _STEPS): (
        (
            "at each meeting the kite club gets {a}{of} and uses {b}",
            "it meets {times}",
            "{much} {are} left in all",
        ),
    ),
    (Asks.BOTH_SHARED, _STEPS): (
        (
            "the kite club has {a}{of} and gets {b} more",
            "it uses all of that for {kites}, the same for each",
            "{much} does each kite {take}",
        ),
    ),
    (Asks.LEFT_SHARED, _STEPS): (
        (
            "the kite club has {a}{of}",
            "it uses {b} for a flag",
            "it uses the rest for {kites}, the same for each",
            "{much} does each kite {take}",
        ),
    ),
}
_WHOLES: FrameTable = {
    (Asks.MORE_SHARE, _STEPS): (
        (
            "one pupil has {a}",
            "then the kite club shares {b} equally among {pupils}",
            "that pupil is one of them",
            "{many} does that pupil have now",
        ),
    ),
    (Asks.LESS_SHARE, _STEPS): (
        (
            "the kite club has {a}",
            "it knows that {b} are enough for {kites} of one size",
            "it makes one such kite",
            "{many} {are} left",
        ),
    ),
    (Asks.SHARE_TIMES, _STEPS): (
        (
            "the kite club knows that {a} are enough for {kites} of one size",
            "it makes {then_kites} of that size",
            "{many} does it use",
        ),
    ),
    (Asks.SHARE_AND_TIMES, _STEPS): (
        (
            "the kite club shares {a} equally among {pupils}",
            "then at each of {then_meetings} each pupil gets {d} and uses {e}",
            "{many} does each pupil have now",
        ),
    ),
}

_OWN: FrameTable = {
    (Asks.LESS_LESS, _STEPS): (
        ("{who} has {a}{of}", "it {uses} {b} one day and {c} the next day", "{much} {are} left"),
    ),
    (Asks.LESS_MORE, _STEPS): (
        ("{who} has {a}{of}", "it {uses} {b}", "then it gets {c} more", "{much} does it have now"),
    ),
    (Asks.LESS_BOTH, _STEPS): (
        (
            "{who} has {a}{of}",
            "each day it {uses} {b} in the morning and {c} later",
            "{much} {are} left after one day",
        ),
    ),
    (Asks.LESS_PART, _STEPS): (
        (
            "{who} has {a}{of}",
            "on a long day it {uses} {b}, and on a short day it {uses} {c} less",
            "{much} {are} left after one short day",
        ),
    ),
    (Asks.MORE_TIMES, _STEPS): (
        (
            "{who} {uses} {a}{of} one day",
            "then it meets {times}, and each time it {uses} {c}",
            "{much} does it {use} in all",
        ),
    ),
    (Asks.LESS_TIMES, _STEPS): (
        ("{who} has {a}{of}", "at each of {meetings} it {uses} {c}", "{much} {are} left"),
    ),
    (Asks.TIMES_MORE, _STEPS): (
        (
            "at each of {meetings} {who} {uses} {b}{of}",
            "after the last one it {uses} {c} more",
            "{much} does it {use} in all",
        ),
    ),
    (Asks.TIMES_LESS, _STEPS): (
        ("at each of {meetings} {who} gets {b}{of}", "after the last one it {uses} {c}", "{much} {are} left"),
    ),
    (Asks.TIMES_BOTH, _STEPS): (
        (
            "{who} meets {times}",
            "each time it {uses} {b}{of} and then {c} more",
            "{much} does it {use} in all",
        ),
    ),
    (Asks.BOTH_TIMES, _STEPS): (
        (
            "each time {who} meets, it {uses} {a}{of} and then {b} more",
            "it meets {times}",
            "{much} does it {use} in all",
        ),
    ),
    (Asks.TIMES_LEFT, _STEPS): (
        ("at each of {meetings} {who} gets {b}{of} and {uses} {c}", "{much} {are} left in all"),
    ),
    (Asks.LEFT_TIMES, _STEPS): (
        ("at each meeting {who} gets {a}{of} and {uses} {b}", "it meets {times}", "{much} {are} left in all"),
    ),
    (Asks.BOTH_SHARED, _STEPS): (
        (
            "{who} has {a}{of} and gets {b} more",
            "it {uses} all of that at {meetings}, the same each time",
            "{much} does it {use} each time",
        ),
    ),
    (Asks.LEFT_SHARED, _STEPS): (
        (
            "{who} has {a}{of}",
            "first it {uses} {b}",
            "it {uses} the rest at {meetings}, the same each time",
            "{much} does it {use} at each meeting",
        ),
    ),
}
_OWN_WHOLES: FrameTable = {
    (Asks.MORE_SHARE, _STEPS): (
        (
            "first {who} {does} {a}",
            "then it {does} {b} at {meetings}, the same each time",
            "{many} does it {do} up to the end of the first meeting",
        ),
    ),
    (Asks.LESS_SHARE, _STEPS): (
        (
            "{who} has {a}",
            "it knows that {b} are enough for {meetings}, the same each time",
            "{many} {are} left after one such meeting",
        ),
    ),
    (Asks.SHARE_TIMES, _STEPS): (
        ("{who} {does} {a} at {meetings}, the same each time", "{many} does it {do} at {then_meetings}"),
    ),
    (Asks.SHARE_AND_TIMES, _STEPS): (
        (
            "{who} shares {a} equally among {groups}",
            "then at each of {then_meetings} each group gets {d} and gives back {e}",
            "{many} does each group have now",
        ),
    ),
}

KITES = {kind: joined(_KITES, _WHOLES) if kind is Kind.NUMBER else _KITES for kind in Kind}
OWN = {kind: joined(_OWN, _OWN_WHOLES) if kind is Kind.NUMBER else _OWN for kind in Kind}
