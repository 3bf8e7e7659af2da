"""What is asked of the teacher before anything of a table is placed, and the answers that can be given."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum

from msgspec import Struct

#: Answers that are no pupil, no problem and no fraction.
SKIP, ADD, EACH, TYPED = "skip", "add", "each", "typed"
#: Where a block without codes begins: at the cell that one was in, or at the first of the class or page; with
#: its rows as problems where it is turned.
HERE, FIRST = "here", "first"
HERE_TURNED, FIRST_TURNED = "here-turned", "first-turned"
#: A first line: labels of problems, or answers.
LABELS, ANSWERS = "labels", "answers"
#: Names matched by a part, and numbers of pupils: all of them so.
ALL = "all"
#: A cell that holds another answer: the one of the table takes its place, or it stays.
REPLACE, LEAVE = "replace", "leave"
#: What a date, or a fraction in its lowest terms, may have been: the first that is offered, or the second.
LIKELIEST, OTHER = "likeliest", "other"


class TableAsks(Enum):
    """What is asked; each has its words where it is shown."""

    FIRST_LINE = "first-line"
    NUMBERS = "numbers"
    ORDER = "order"
    PUPIL_ORDER = "pupil-order"
    PROBLEM_ORDER = "problem-order"
    PARTLY = "partly"
    PUPIL = "pupil"
    TWICE = "twice"
    PROBLEM = "problem"
    DATES = "dates"
    REDUCED = "reduced"
    CELL = "cell"
    OVER = "over"


class TableQuestion(Struct, frozen=True):
    """One question: its key in the form, what it asks about, the answers that can be given, the one given.

    ``about`` are texts of the table, or a text and what it may mean. ``chosen`` is None while it is open.
    ``line`` counts the rows of the table that was handed in from 1 (its columns where it is turned), 0 where
    it asks about all.
    """

    key: str
    asks: TableAsks
    about: tuple[str, ...]
    options: tuple[str, ...]
    chosen: str | None
    line: int = 0


Decided = Mapping[str, str]
"""Answers to questions by their keys."""


@dataclass(slots=True)
class TableTalk:
    """What was asked of a table so far, and what came of it: pupils to be added, headings left out.

    >>> talk = TableTalk({"dates": "each"})
    >>> (
    ...     talk.ask("dates", TableAsks.DATES, ("8-Mar",), (LIKELIEST, EACH)),
    ...     talk.ask("x", TableAsks.CELL, (), ()),
    ... )
    ('each', None)
    """

    decided: Decided
    questions: list[TableQuestion] = field(default_factory=list)
    left_out: list[str] = field(default_factory=list)
    added: list[tuple[str, str]] = field(default_factory=list)

    def ask(
        self,
        key: str,
        asks: TableAsks,
        about: tuple[str, ...],
        options: tuple[str, ...],
        *,
        line: int = 0,
        usual: str | None = None,
    ) -> str | None:
        """Ask, and return the answer that was given, if it is one of those that can be."""
        given = self.decided.get(key)
        chosen = given if given in options else usual
        self.questions.append(TableQuestion(key, asks, about, options, chosen, line))
        return chosen

    def ask_anew(self, question: TableQuestion) -> None:
        """Ask a question once more, in the place of an earlier one with its key."""
        self.questions[:] = [one for one in self.questions if one.key != question.key]
        self.questions.append(question)
