"""One cell as a pupil wrote it, and what it is read as."""

import re
from contextlib import suppress

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.marking.reading.dates import fractions_of_date
from onewhole.marking.reading.last_unit import lacks_last_unit, with_last_unit
from onewhole.marking.reading.units import read_with_unit
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind, unit_marked
from onewhole.number.with_minus import WithMinus
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.statements.chain import Chain
from onewhole.statements.expression import WithRemainder
from onewhole.statements.factor_question import FactorQuestion, WordAnswer
from onewhole.statements.factor_reading import word_answer
from onewhole.statements.listing import Listing
from onewhole.statements.ordering_reading import number_row
from onewhole.statements.reading import Answer, read_answer, read_chains, read_quantity
from onewhole.statements.statement import NumberRow, Ordering

#: Dashes that mean "nothing written" when they are all there is in a cell.
_DASHES = "-\N{MINUS SIGN}\N{EN DASH}\N{EM DASH}\N{HYPHEN}\N{NON-BREAKING HYPHEN}"
#: An apostrophe that a spreadsheet, or a table of ours, puts before what would begin a formula.
_KEPT_AS_TEXT = re.compile(rf"\s*'([{_DASHES}=].*)", re.DOTALL)


class Blank(Struct, frozen=True):
    """Nothing was written: an empty cell, spaces, or a dash alone."""


class Unreadable(Struct, frozen=True):
    """Something was written that is no answer the program can read.

    It is legal, is kept, and is never guessed at: a teacher looks at it. ``why`` says so in sentences; the
    last has no full stop yet.
    """

    why: str


Read = Answer | NumberRow | WordAnswer | Blank | Unreadable


class Written(Struct, frozen=True):
    """What stood in a cell, kept exactly, and what it is read as.

    Where the lines of a working were typed, joined by equals signs, ``chain`` has them and the last side is
    the answer. ``other_unit`` says that a unit stands behind the number that the problem does not ask for;
    ``last_unit_missing`` that the last of two or more was left away, as in 1 h 35.

    >>> read_written(" 3 3/6 ").text, read_written("-").read
    (' 3 3/6 ', Blank())
    """

    text: str
    read: Read
    chain: Chain | None = None
    other_unit: bool = False
    last_unit_missing: bool = False

    @property
    def blank(self) -> bool:
        """Say whether nothing was written."""
        return isinstance(self.read, Blank)


def read_written(text: str, problem: Problem | None = None) -> Written:
    """Read one cell; nothing is refused, and the text is kept as it is.

    A cell holds an answer, or a working that ends with it. With the problem that it answers, a unit or a word
    of its story may stand behind the number.

    >>> read_written("9 5/8 - 4 6/8 = 8 13/8 - 4 6/8 = 4 7/8").read.counts
    (4, 7)

    >>> read_written("three").read.why
    'A number is missing: here there is “three”. Look at the paper; an answer is one number such as 3 3/6'
    """
    if (kept := _KEPT_AS_TEXT.fullmatch(text)) is not None:
        inside = read_written(kept.group(1), problem)
        return replace(inside, text=text)
    if not text.strip().strip(_DASHES).strip():
        return Written(text, Blank())
    if problem is not None and isinstance(problem.statement, Ordering | Listing):
        return _in_a_row(text, any_order=isinstance(problem.statement, Listing))
    if problem is not None and isinstance(problem.statement, FactorQuestion):
        return _in_a_word(text, problem.statement)
    if (offers := fractions_of_date(text)) is not None:
        return Written(text, Unreadable(_dated(offers)))
    if problem is not None and (said := read_with_unit(text, problem)) is not None:
        return Written(text, said.number, None, said.other)
    try:
        return _without_unit(text, read_answer(text), problem)
    except InputError as refused:
        return (
            _with_lines(text)
            or _below_zero(text)
            or _without_last_unit(text, problem)
            or Written(text, Unreadable(_sentences(refused.what)))
        )


def _without_last_unit(text: str, problem: Problem | None) -> Written | None:
    """Read a measure whose last unit was left away where the problem says which; None for anything else."""
    if problem is not None and (ended := with_last_unit(text, problem)) is not None:
        return replace(read_written(ended, problem), text=text, last_unit_missing=True)
    why = "a unit is missing behind the last number, and the problem does not say which"
    return Written(text, Unreadable(_sentences(why))) if lacks_last_unit(text) else None


def _without_unit(text: str, read: Answer, problem: Problem | None) -> Written:
    """Leave a number with a unit to the teacher where the problem has another one, or none.

    Where it is in measures of that kind, 2.2 ft and 1.25¢ are read as they stand.
    """
    if (
        problem is None
        or not isinstance(read, Quantity)
        or read.kind is not Kind.NUMBER
        or not read.ladder.mark
    ):
        return Written(text, read)
    numbers = numbers_of(problem.statement)
    plain = (number.ladder.mark for number in numbers if number.kind is Kind.NUMBER)
    kind = unit_marked(read.ladder.mark).kind
    pointed = read.ladder.style is Style.DECIMAL and any(number.kind is kind for number in numbers)
    asked = read.ladder.mark in plain or pointed
    why = "a unit stands behind the number, and the problem has none"
    return Written(text, read) if asked else Written(text, Unreadable(_sentences(why)))


def _in_a_row(text: str, *, any_order: bool) -> Written:
    """Read numbers in order; where they may stand in ``any_order``, the least comes first."""
    try:
        row = number_row(text, 1, 1, read_quantity)
        if any_order and not row.signs:
            row = NumberRow(tuple(sorted(row.parts, key=lambda part: part.value)))
        return Written(text, row)
    except InputError as refused:
        what = refused.what[:1].upper() + refused.what[1:]
        return Written(text, Unreadable(f"{what}. Look at the paper; an answer is such as 1/2, 2/3, 3/4"))


def _in_a_word(text: str, asked: FactorQuestion) -> Written:
    """Read the word that answers a question about a number; a number in its place is an answer too."""
    word = word_answer(text, asked)
    if word is not None:
        return Written(text, word)
    with suppress(InputError):
        return Written(text, read_answer(text))
    *some, last = (choice.value for choice in asked.choices)
    words = f"{', '.join(some)} or {last}"
    return Written(text, Unreadable(f"This is none of the words that answer. An answer is {words}"))


def _with_lines(text: str) -> Written | None:
    """Read a working of two or more sides; None where it is none, or more than one."""
    try:
        chains = read_chains(text.strip().removeprefix("="))
    except InputError:
        return None
    if len(chains) > 1:
        return None
    last = chains[0].links[-1].says
    if isinstance(last, Quantity | WithRemainder):
        return Written(text, last, chains[0])
    return Written(text, Unreadable(_sentences("the working stops before its answer")))


def _below_zero(text: str) -> Written | None:
    """Read the last side of a working where it has a minus sign; its lines are not checked then."""
    try:
        last = read_answer(text.rpartition("=")[2])
    except InputError:
        return None
    return Written(text, last) if isinstance(last, WithMinus) else None


def _dated(offers: tuple[str, ...]) -> str:
    made = f", such as {' or '.join(offers)}" if offers else ""
    return (
        f"This looks like a date, and a spreadsheet may have made it from a fraction{made}. "
        "Look at the paper, and say under the grid how it is read"
    )


def _sentences(what: str) -> str:
    return f"{what[:1].upper()}{what[1:]}. Look at the paper; an answer is one number such as 3 3/6"
