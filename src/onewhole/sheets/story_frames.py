"""Sentences of the kite club's word problems: what is unknown, how it is told, and the words.

Nobody in them has a name. ``{a}`` and ``{b}`` are the amounts with their units and ``{some}`` an amount that
is not known yet. ``{many}``, ``{more}`` and ``{fewer}`` begin the question: How many strips, or How much of a
strip, with ``{are}`` for its verb. ``{pieces}`` are the pieces asked for and ``{kept}`` the wholes beside
them. No other verb depends on whether an amount is one or many.
"""

from dataclasses import dataclass
from enum import StrEnum

from onewhole.number.unit import Kind
from onewhole.sheets.story_asks import Asks


class Structure(StrEnum):
    """How a story is built.

    Source: the kinds of addition and subtraction problems of Carpenter and Moser (1984), which table 1 in the
    glossary of the Common Core State Standards for Mathematics (2010) lists (both from memory). To tell one
    amount in other pieces is our own addition.
    """

    TAKE_FROM = "take from"
    PUT_TOGETHER = "put together"
    COMPARE = "compare"
    PART_UNKNOWN = "part unknown"
    SAME_AMOUNT = "same amount"


@dataclass(frozen=True, slots=True)
class StoryFrame:
    """One way to tell a story: for what it asks, with which structure, about what kind of amounts."""

    asks: Asks
    structure: Structure
    kind: Kind
    words: str


_NUMBERS = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        "The kite club has {a}. It uses {b} for a kite. {many} {are} left?",
        "One pupil brings {a} to the kite club. The wind tears {b}. {many} {are} still good?",
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        "The red kite takes {a}. The blue kite takes {b}. {more} does the red kite take?",
        "The big kite needs {a}. The small kite needs {b}. {fewer} does the small kite need?",
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        "A kite needs {a}. The kite club has {b}. {more} does it need?",
        (
            "The kite club uses {a} in all. It uses {b} for tails and the rest for kites. "
            "{many} does it use for kites?"
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        "The kite club has {a} for kites and {b} for tails. {many} does it have in all?",
        "One pupil brings {a}. Another pupil brings {b}. {many} do they bring in all?",
    ),
    (Asks.SUM, Structure.COMPARE): (
        "The small kite needs {a}. The big kite needs {b} more than that. {many} does the big kite need?",
        (
            "The tail maker uses {a} one day and {b} more than that the next day. "
            "{many} does the tail maker use the next day?"
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        "The kite club uses {a} for a kite. It still has {b}. {many} did it have at first?",
        "The wind tears {a}. The kite club can still use {b}. {many} did it have at first?",
    ),
    (Asks.WHICH, Structure.COMPARE): (
        "The red kite takes {a}. The blue kite takes {b}. Which kite takes more, or do both take the same?",
        "One pupil cuts up {a}. Another pupil cuts up {b}. Who cuts up more, or do both cut up the same?",
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        "The kite club has {a}. It uses some for a kite. Now it has {b}. {many} did it use?",
        "The tail maker starts with {a} and ends with {b}. {many} did the tail maker use?",
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        "The kite club has {a}. A kite needs {b}. {more} does the club need?",
        (
            "The kite club has {a}. One pupil brings some more. Now the club has {b}. "
            "{many} did the pupil bring?"
        ),
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        "The kite club has {some}. It uses {a} for a kite. Now it has {b}. {many} did it have at first?",
        (
            "One pupil brings {some}. The wind tears {a}. The kite club can still use {b}. "
            "{many} did the pupil bring?"
        ),
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "The kite club has {some}. One pupil brings {a} more. Now the club has {b}. "
            "{many} did it have at first?"
        ),
        (
            "The kite club uses {some} for a kite and {a} for its tail. It uses {b} in all. "
            "{many} does it use for the kite?"
        ),
    ),
    (Asks.RENAMED, Structure.SAME_AMOUNT): (
        "A kite takes {a}. The tail maker lays out the same amount {kept}. How many {pieces} are there?",
        "The kite club has {a}. It shows the same amount {kept}. How many {pieces} does it show?",
    ),
}

_LENGTHS = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        "A kite string is {a} long. The kite club cuts off {b}. How long is the string now?",
        "The tail maker has {a} of ribbon. A tail takes {b}. How much ribbon is left?",
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        "The red tail is {a} long. The blue tail is {b} long. How much longer is the red tail?",
        "The red tail is {a} long. The blue tail is {b} long. How much shorter is the blue tail?",
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        "A tail must be {a} long. So far it is {b} long. How much ribbon does it still need?",
        "A kite with its tail is {a} long. The tail is {b} long. How long is the kite?",
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        "Two tails lie end to end. One is {a} long. The other is {b} long. How long are they in all?",
        "The tail maker uses {a} of red ribbon and {b} of blue ribbon. How much ribbon is that in all?",
    ),
    (Asks.SUM, Structure.COMPARE): (
        "The red tail is {a} long. The blue tail is {b} longer. How long is the blue tail?",
        (
            "The small kite has {a} of string. The big kite has {b} more than that. "
            "How much string does the big kite have?"
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        "The kite club cuts {a} off a string. Now the string is {b} long. How long was it at first?",
        "A tail takes {a} of ribbon. The tail maker still has {b}. How much ribbon was there at first?",
    ),
    (Asks.WHICH, Structure.COMPARE): (
        "The red tail is {a} long. The blue tail is {b} long. Which tail is longer, or are they the same?",
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "A kite string is {a} long. The kite club cuts some off. Now it is {b} long. "
            "How much did the club cut off?"
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        "So far a tail is {a} long. It must be {b} long. How much ribbon does it still need?",
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        "The kite club cuts {a} off a string. Now the string is {b} long. How long was it at first?",
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        "The tail maker adds {a} to a tail. Now the tail is {b} long. How long was it at first?",
    ),
}

_WEIGHTS = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        "A box of kites weighs {a}. One pupil takes out a kite of {b}. How much does the box weigh now?",
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        "The big kite weighs {a}. The small kite weighs {b}. How much more does the big kite weigh?",
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        "A kite in its box weighs {a}. The kite weighs {b}. How much does the box weigh?",
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        "The red kite weighs {a}. The blue kite weighs {b}. How much do they weigh in all?",
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "The small kite weighs {a}. The big kite weighs {b} more than that. "
            "How much does the big kite weigh?"
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        "One pupil takes a kite of {a} out of a box. Now the box weighs {b}. How much did it weigh at first?",
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "The red kite weighs {a}. The blue kite weighs {b}. "
            "Which kite weighs more, or do both weigh the same?"
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "A box of kites weighs {a}. One pupil takes out a kite. Now the box weighs {b}. "
            "How much does the kite weigh?"
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        "A box weighs {a}. One pupil puts a kite in. Now the box weighs {b}. How much does the kite weigh?",
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        "One pupil takes a kite of {a} out of a box. Now the box weighs {b}. How much did it weigh at first?",
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        "One pupil puts a kite of {a} into a box. Now the box weighs {b}. How much did it weigh at first?",
    ),
}

_TIMES = {
    (Asks.DIFFERENCE, Structure.TAKE_FROM): (
        "The kite club has {a} for its meeting. It uses {b} to build kites. How much time is left?",
    ),
    (Asks.DIFFERENCE, Structure.COMPARE): (
        "The red kite flies for {a}. The blue kite flies for {b}. How much longer does the red kite fly?",
    ),
    (Asks.DIFFERENCE, Structure.PART_UNKNOWN): (
        (
            "The kite club meets for {a}. It builds kites for {b} and flies them the rest of the time. "
            "How long does it fly them?"
        ),
    ),
    (Asks.SUM, Structure.PUT_TOGETHER): (
        "The kite club builds kites for {a}. Then it flies them for {b}. How long is that in all?",
    ),
    (Asks.SUM, Structure.COMPARE): (
        (
            "The red kite flies for {a}. The blue kite flies {b} longer than that. "
            "How long does the blue kite fly?"
        ),
    ),
    (Asks.SUM, Structure.TAKE_FROM): (
        "The kite club uses {a} of its meeting to build kites. It still has {b}. How long is the meeting?",
    ),
    (Asks.WHICH, Structure.COMPARE): (
        (
            "The red kite flies for {a}. The blue kite flies for {b}. "
            "Which kite flies longer, or are they the same?"
        ),
    ),
    (Asks.CHANGE_TAKEN, Structure.TAKE_FROM): (
        (
            "The kite club has {a} for its meeting. It builds kites. Now it has {b} left. "
            "How long did it build kites?"
        ),
    ),
    (Asks.CHANGE_ADDED, Structure.PART_UNKNOWN): (
        "A kite has been up for {a}. It must stay up for {b}. How much longer must it fly?",
    ),
    (Asks.START_TAKEN, Structure.TAKE_FROM): (
        "The kite club uses {a} of its meeting to build kites. It still has {b}. How long is the meeting?",
    ),
    (Asks.START_ADDED, Structure.PART_UNKNOWN): (
        (
            "A kite flies, and then it flies for {a} more. It flies for {b} in all. "
            "How long did it fly at first?"
        ),
    ),
}

FRAMES = tuple(
    StoryFrame(asks, structure, kind, words)
    for kind, table in (
        (Kind.NUMBER, _NUMBERS),
        (Kind.LENGTH, _LENGTHS),
        (Kind.WEIGHT, _WEIGHTS),
        (Kind.TIME, _TIMES),
    )
    for (asks, structure), every in table.items()
    for words in every
)
