"""What a language says in a film beside the reasons: its beginning and end, its lines, what follows."""

from collections.abc import Callable, Sequence
from typing import Protocol

from msgspec import Struct

from onewhole.languages.class_words import ClassWords
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Node
from onewhole.sentences.sentence import Sentences
from onewhole.statements.expression import Expression
from onewhole.statements.statement import Comparison, RightAnswer, Statement
from onewhole.statements.writable import Writable
from onewhole.working.line import LineContent
from onewhole.working.reason import Reason

#: What is done, or what comes out, as a part of a sentence.
Clause = tuple[Node, ...]


class OpenedTold(Protocol):
    """Say in how many of all problems a larger unit is opened; None for units that differ."""

    def __call__(
        self,
        count: int,
        every: int,
        small: Unit | None,
        large: Unit | None,
        words: ClassWords,
        *,
        lacking: bool,
    ) -> Sentences:
        """Say it."""
        ...


class ColumnsTold(Protocol):
    """Say how numbers are written under each other; ``pointed`` where one of them has a point."""

    def __call__(self, *, pointed: bool) -> Sentences:
        """Say it."""
        ...


class OpeningTold(Struct, frozen=True):
    """The beginning and the end of a film, and what is told once in it.

    ``tonight`` and ``the_end`` are what its first and last parts are called. ``one_adds`` and ``one_takes``
    take the label of the one problem with the other sign. ``tens`` links a larger unit that is opened, and
    what it becomes, to a ten and a one. ``your_turn`` leaves the answer to the family, and
    ``turn_written`` is what the board says then.
    """

    tonight: str
    the_end: str
    greeting: Callable[[str], Sentences]
    date: Callable[[str], Sentences]
    title: Callable[[str], Sentences]
    count: Callable[[int], Sentences]
    whole: Callable[[ClassWords], Sentences]
    opened: OpenedTold
    column_opened: Callable[[int, int, ClassWords], Sentences]
    one_adds: Callable[[str], Sentences]
    one_takes: Callable[[str], Sentences]
    both_signs: Callable[[int, int], Sentences]
    try_first: Callable[[], Sentences]
    your_turn: Callable[[], Sentences]
    turn_written: str
    closing: Callable[[], Sentences]
    columns: ColumnsTold
    tens: Callable[[Unit, Unit, Sequence[Unit], ClassWords], Sentences]


class LinesTold(Struct, frozen=True):
    """A problem read out, what stands on its lines and is done at them, and its answer.

    Several wordings of one meaning are several sentences. ``deed`` is what is done at a line, as a part of a
    sentence; ``done`` makes a sentence of it, ``then`` one that goes on, ``as_before`` one that points back
    to a problem by its label. ``outcome`` is a problem with its answer, as a part of a sentence.
    """

    asked: Callable[[str, Statement, str, int], Sentences]
    stands: Callable[[LineContent], tuple[Sentences, ...]]
    parts_stand: Callable[[tuple[Expression, ...]], tuple[Sentences, ...]]
    deed: Callable[[Reason | None, ClassWords], Clause | None]
    done: Callable[[Clause], Sentences]
    then: Callable[[Clause], Sentences]
    as_before: Callable[[Clause, str], tuple[Sentences, ...]]
    outcome: Callable[[Statement, RightAnswer], Clause]
    answers: Callable[[str, Statement, RightAnswer], tuple[Sentences, ...]]


class AfterTold(Struct, frozen=True):
    """What may follow an answer: equal forms, that none is demanded, and how it is checked."""

    same_amount: Callable[[Quantity, Quantity], tuple[Sentences, ...]]
    one_fraction: Callable[[Quantity, Quantity], Sentences]
    may_stay: Callable[[Quantity], tuple[Sentences, ...]]
    check: Callable[[Comparison], Sentences]


class MistakeTold(Struct, frozen=True):
    """A likely mistake shown and mended: what may be written, why it is not so, and what is so."""

    may_be_written: Callable[[Writable], tuple[Sentences, ...]]
    still_the_same: Callable[[Quantity, Quantity], Sentences]
    no_pieces: Callable[[ClassWords], Sentences]
    not_so: Callable[[Comparison], Sentences]
    does_not_fit: Callable[[Quantity], Sentences]
    not_the_answer: Callable[[Writable], Sentences]
    not_equal: Callable[[Expression, Expression], Sentences]
    right_line: Callable[[Writable], Sentences]
    truth: Callable[[Clause], Sentences]
    answer_is: Callable[[Quantity], Sentences]
