"""The kite club's word problems, sentence by sentence: what is unknown, how it is told, and the words.

Nobody in them has a name. ``{a}``, ``{b}`` and ``{c}`` are the amounts with their units and ``{some}`` an
amount that is not known yet. ``{many}``, ``{more}`` and ``{fewer}`` begin the question: How many strips, or
How much of a strip, with ``{are}`` for its verb. ``{pieces}`` are the pieces asked for and ``{kept}`` the
wholes beside them. No other verb depends on whether an amount is one or many. The last sentence asks.
"""

from onewhole.languages.english.story_frames_more import MONEY, VOLUMES
from onewhole.number.unit import Kind
from onewhole.problems.story_asks import Asks
from onewhole.problems.story_frame import FrameTable, frames_of
from onewhole.problems.story_structure import Structure

_NUMBERS: FrameTable = {
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
}

_LENGTHS: FrameTable = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        ("a kite string is {a} long", "the kite club cuts off {b}", "how long is the string now"),
        ("the tail maker has {a} of ribbon", "a tail takes {b}", "how much ribbon is left"),
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        ("the red tail is {a} long", "the blue tail is {b} long", "how much longer is the red tail"),
        ("the red tail is {a} long", "the blue tail is {b} long", "how much shorter is the blue tail"),
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        ("a tail must be {a} long", "so far it is {b} long", "how much ribbon does it still need"),
        ("a kite with its tail is {a} long", "the tail is {b} long", "how long is the kite"),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("two tails lie end to end", "one is {a} long", "the other is {b} long", "how long are they in all"),
        ("the tail maker uses {a} of red ribbon and {b} of blue ribbon", "how much ribbon is that in all"),
    ),
    (Asks.SUM, Structure.COMPARE): (
        ("the red tail is {a} long", "the blue tail is {b} longer", "how long is the blue tail"),
        (
            "the small kite has {a} of string",
            "the big kite has {b} more than that",
            "how much string does the big kite have",
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        ("the kite club cuts {a} off a string", "now the string is {b} long", "how long was it at first"),
        ("a tail takes {a} of ribbon", "the tail maker still has {b}", "how much ribbon was there at first"),
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "the red tail is {a} long",
            "the blue tail is {b} long",
            "which tail is longer, or are they the same",
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "a kite string is {a} long",
            "the kite club cuts some off",
            "now it is {b} long",
            "how much did the club cut off",
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        ("so far a tail is {a} long", "it must be {b} long", "how much ribbon does it still need"),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        ("the kite club cuts {a} off a string", "now the string is {b} long", "how long was it at first"),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        ("the tail maker adds {a} to a tail", "now the tail is {b} long", "how long was it at first"),
    ),
    (Asks.ALL_THREE, Structure.PUT_TOGETHER): (
        (
            "the red tail is {a} long",
            "the blue tail is {b} long",
            "the green tail is {c} long",
            "how long are they in all",
        ),
    ),
    (Asks.MORE_THEN_LESS, Structure.TAKE_FROM): (
        (
            "a tail is {a} long",
            "the tail maker adds {b}",
            "then the tail maker cuts off {c}",
            "how long is the tail now",
        ),
    ),
}

#: Centimeters are a long word: two short sentences.
_METRIC_LENGTHS: FrameTable = {
    **_LENGTHS,
    (Asks.SUM, Structure.PUT_TOGETHER): (
        ("the red ribbon is {a} long", "the blue ribbon is {b} long", "how long are both in all"),
    ),
}

_WEIGHTS: FrameTable = {
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
}

_TIMES: FrameTable = {
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
}

FRAMES = frames_of(
    {
        Kind.NUMBER: _NUMBERS,
        Kind.LENGTH: _LENGTHS,
        Kind.WEIGHT: _WEIGHTS,
        Kind.VOLUME: VOLUMES,
        Kind.TIME: _TIMES,
        Kind.METRIC_LENGTH: _METRIC_LENGTHS,
        Kind.MASS: _WEIGHTS,
        Kind.METRIC_VOLUME: VOLUMES,
        Kind.MONEY: MONEY,
    }
)
