"""Word problems about dividing: how many each gets, how many groups there are, and what is left over."""

from onewhole.number.unit import Kind
from onewhole.problems.story_frame import FrameTable, joined
from onewhole.problems.story_question import Asks
from onewhole.problems.story_structure import Structure

_KITES: FrameTable = {
    (Asks.DIVIDED, Structure.SHARING): (
        (
            "the kite club has {a}{of}",
            "it uses all of that for {kites}, the same for each",
            "{much} does each kite {take}",
        ),
    ),
    (Asks.DIVIDED, Structure.MEASURING_OUT): (
        ("the kite club has {a}{of}", "each kite {takes} {b}", "how many kites can it make"),
    ),
    (Asks.DIVIDED, Structure.TIMES_AS_MUCH): (
        (
            "the big kite {takes} {a}{of}",
            "that is {times} as much as the small kite {takes}",
            "{much} does the small kite {take}",
        ),
    ),
    (Asks.DIVIDED, Structure.HOW_MANY_TIMES): (
        (
            "the big kite {takes} {a}{of}",
            "the small kite {takes} {b}",
            "how many times as much does the big kite {take}",
        ),
    ),
    (Asks.DIVIDED_LEFT, Structure.MEASURING_OUT): (
        (
            "the kite club has {a}{of}",
            "each kite {takes} {b}",
            "how many kites can it make, and {much} {are} left over",
        ),
    ),
}
_SHARED_LEFT: FrameTable = {
    (Asks.DIVIDED_LEFT, Structure.SHARING): (
        (
            "the kite club has {a}",
            "it shares the money equally among {pupils}",
            "how much does each pupil get, and how much is left over",
        ),
    ),
}
_WHOLES: FrameTable = {
    (Asks.DIVIDED, Structure.SHARING): (
        (
            "the kite club has {a}",
            "it shares its paper equally among {pupils}",
            "{many} does each pupil get",
        ),
    ),
    (Asks.DIVIDED, Structure.AREA): (
        (
            "the kite club cuts a sheet of paper into {all_squares}",
            "they lie in {rows} of the same length",
            "how many squares are in each row",
        ),
    ),
    (Asks.DIVIDED_LEFT, Structure.SHARING): (
        (
            "the kite club has {a}",
            "each of {pupils} gets the same whole number of {wholes}",
            "{many} does each pupil get, and how many {wholes} are left over",
        ),
    ),
    (Asks.DIVIDED_LEFT, Structure.MEASURING_OUT): (
        (
            "the kite club puts {a} into packs",
            "a full pack holds {b}",
            "how many packs are full, and how many {wholes} are left over",
        ),
    ),
    (Asks.GROUPS_NEEDED, Structure.MEASURING_OUT): (
        (
            "{all_children} of the kite club ride to the park in vans",
            "a van has room for {children}",
            "how many vans do they need",
        ),
        (
            "the kite club has {a}",
            "a box holds {b}",
            "how many boxes does it need for all of them",
        ),
    ),
    (Asks.GROUPS_FULL, Structure.MEASURING_OUT): (
        (
            "the kite club puts {a} into packs",
            "a full pack holds {b}",
            "how many packs are full",
        ),
    ),
    (Asks.THINGS_LEFT, Structure.MEASURING_OUT): (
        (
            "the kite club puts {a} into packs",
            "a full pack holds {b}",
            "it makes as many full packs as it can",
            "how many {wholes} are left over",
        ),
    ),
    (Asks.FACTORS, Structure.AREA): (
        (
            "the kite club has {all_squares} of paper",
            "it lays all of them in rows of the same length",
            "what are all the possible numbers of rows",
        ),
    ),
    (Asks.MULTIPLES, Structure.EQUAL_GROUPS): (
        (
            "a pack holds {a}",
            "the kite club buys one pack or more, but no more than {b}",
            "what are all the numbers of {wholes} that it can buy",
        ),
    ),
}

_OWN: FrameTable = {
    (Asks.DIVIDED, Structure.SHARING): (
        ("{who} {uses} {a}{of} at {meetings}", "it is the same each time", "{much} does it {use} each time"),
    ),
    (Asks.DIVIDED, Structure.MEASURING_OUT): (
        ("{who} has {a}{of}", "at each meeting it {uses} {b}", "for how many meetings is that enough"),
    ),
    (Asks.DIVIDED, Structure.TIMES_AS_MUCH): (
        (
            "today {who} {uses} {a}{of}",
            "that is {times} as much as the day before",
            "{much} did it {use} the day before",
        ),
    ),
    (Asks.DIVIDED, Structure.HOW_MANY_TIMES): (
        (
            "today {who} {uses} {a}{of}",
            "the day before it was {b}",
            "how many times as much does it {use} today",
        ),
    ),
    (Asks.DIVIDED_LEFT, Structure.MEASURING_OUT): (
        (
            "{who} has {a}{of}",
            "at each meeting it {uses} {b}",
            "for how many full meetings is that enough, and {much} {are} left over",
        ),
    ),
}
_OWN_SHARED_LEFT: FrameTable = {
    (Asks.DIVIDED_LEFT, Structure.SHARING): (
        (
            "{who} has {a}",
            "it shares the money equally among {groups}",
            "how much does each group get, and how much is left over",
        ),
    ),
}
_OWN_WHOLES: FrameTable = {
    (Asks.DIVIDED, Structure.AREA): (
        (
            "{who} sets up {all_chairs} in {rows} of the same length",
            "how many chairs are in each row",
        ),
    ),
    (Asks.DIVIDED_LEFT, Structure.SHARING): (
        (
            "{who} has {a}",
            "each of {groups} gets the same whole number of {wholes}",
            "{many} does each group get, and how many {wholes} are left over",
        ),
    ),
    (Asks.GROUPS_NEEDED, Structure.MEASURING_OUT): (
        (
            "{who} sets up tables for {all_children}",
            "a table has room for {children}",
            "how many tables does it need",
        ),
    ),
    (Asks.GROUPS_FULL, Structure.MEASURING_OUT): (
        (
            "{who} has {all_chairs}",
            "a full row has {chairs}",
            "how many full rows can it set up",
        ),
    ),
    (Asks.THINGS_LEFT, Structure.MEASURING_OUT): (
        (
            "{who} has {all_chairs}",
            "a full row has {chairs}",
            "it sets up as many full rows as it can",
            "how many chairs are left over",
        ),
    ),
    (Asks.FACTORS, Structure.AREA): (
        (
            "{who} sets up {all_chairs} in rows of the same length",
            "what are all the possible numbers of rows",
        ),
    ),
    (Asks.MULTIPLES, Structure.EQUAL_GROUPS): (
        (
            "at each meeting {who} {does} {a}",
            "it meets one time or more, and it {does} no more than {b} in all",
            "what are all the numbers of {wholes} that it can {do} in all",
        ),
    ),
}

_MORE = {Kind.NUMBER: (_WHOLES, _OWN_WHOLES), Kind.MONEY: (_SHARED_LEFT, _OWN_SHARED_LEFT)}
_NONE: tuple[FrameTable, FrameTable] = ({}, {})

KITES = {kind: joined(_MORE.get(kind, _NONE)[0], _KITES) for kind in Kind}
OWN = {kind: joined(_OWN, _MORE.get(kind, _NONE)[1]) for kind in Kind}
