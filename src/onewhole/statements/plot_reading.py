"""Reading a line plot and what is asked of it: plot 1/4: 2, 1/2: 3, 5/8 in: 1; total above 1/4."""

import re
from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import NoReturn

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import OnewholeError
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole, with_mark
from onewhole.number.unit import Kind
from onewhole.statements.line_plot import REMEDY, Among, Bound, LinePlot, PlotAsk, PlotQuestion
from onewhole.statements.numerals import ReadNumber
from onewhole.statements.tokens import ReadingError

_BEGINS = re.compile(r"\s*(?:line\s+)?plot\b\s*", re.IGNORECASE)
_FIND = re.compile(r"\s*(?:find\s+)?", re.IGNORECASE)
_ASKS = (
    (re.compile(r"(?:how\s+many|count)\b(?:\s+there)?(?:\s+are)?(?:\s+in\s+all)?"), PlotAsk.COUNT),
    (re.compile(r"how\s+much\s+each\b.*|share\b.*|each\b.*"), PlotAsk.SHARE),
    (re.compile(r"(?:the\s+)?total\b(?:\s+of\s+(?:all|those))?(?:\s+that\s+are)?"), PlotAsk.TOTAL),
    (re.compile(r"(?:the\s+)?most(?:\s+(?:common|often)\b.*)?"), PlotAsk.MOST),
    (re.compile(r"(?:the\s+)?(?:spread|range|difference)\b.*"), PlotAsk.SPREAD),
    (re.compile(r"(?:the\s+)?(?:greatest|longest|largest)\s+(?:less|minus)\b.*"), PlotAsk.SPREAD),
)
_BOUNDS = (
    (re.compile(r"\s*(?:(?:longer|more|greater|heavier|larger)\s+than|above|over)\b\s*"), Bound.MORE),
    (re.compile(r"\s*(?:(?:shorter|less|fewer|smaller|lighter)\s+than|below|under)\b\s*"), Bound.LESS),
    (re.compile(r"\s*at\s+least\b\s*"), Bound.AT_LEAST),
    (re.compile(r"\s*at\s+most\b\s*"), Bound.AT_MOST),
    (re.compile(r"\s*(?:exactly|at|of)\b\s*"), Bound.EXACTLY),
)
_COUNT = re.compile(r"\s*[0-9]{1,3}\s*\Z")
_ASKS_REMEDY = (
    "Write one of: count, total, share, most, spread; behind count and total also above, below, at least, "
    "at most or exactly with a value: count above 1/2."
)


class _Typed(Struct, frozen=True):
    """A value as it was typed, how many there are (None in a list without counts), and its column."""

    value: Quantity
    count: int | None
    column: int


def plot_question(text: str, line: int, column: int, read: ReadNumber) -> PlotQuestion | None:
    """Read a line plot with a question; None where the line does not begin with "plot".

    The measurements are a list (plot 1/4, 1/4, 1/2) or have counts (plot 1/4: 2, 1/2: 1); their unit stands
    once or behind each. Raises ReadingError with the place of what is wrong.

    >>> from onewhole.statements.reading import read_quantity
    >>> asked = plot_question("plot 1/4, 1/2, 1/4 in; count above 1/4", 1, 1, read_quantity)
    >>> asked.plot.many, asked.plot.mark, asked.among.bound.value
    (3, 'in', 'more than')
    """
    begins = _BEGINS.match(text)
    if begins is None:
        return None
    text = text.rstrip().rstrip(".?").rstrip()
    data, semicolon, asked = text.partition(";")
    if not semicolon or not asked.strip():
        msg = "a semicolon and what is asked of the line plot are missing"
        raise ReadingError(msg, line=line, column=column + len(data), remedy=REMEDY)
    start = column + begins.end()
    typed = _in_one_unit(tuple(_typed(data[begins.end() :], line, start, read)))
    marks = _tallied(typed, line)
    try:
        plot = LinePlot(marks)
    except OnewholeError as error:
        raise ReadingError(error.what, line=line, column=start, remedy=error.remedy) from error
    return _asked(plot, asked, line, column + len(data) + 1, read)


def _typed(text: str, line: int, column: int, read: ReadNumber) -> Iterator[_Typed]:
    """Read the values one after another, each with its count where it has one."""
    for piece in text.split(","):
        said, colon, count = piece.partition(":")
        if not said.strip():
            _refuse("a value is missing", line, column)
        if colon and not _COUNT.match(count):
            _refuse("behind the colon stands how many there are", line, column + len(said) + 1)
        yield _Typed(read(said, line, column), int(count) if colon else None, column)
        column += len(piece) + 1


def _in_one_unit(found: Sequence[_Typed]) -> Sequence[_Typed]:
    """Give every value the unit that stands behind one of them."""
    marks = {one.value.ladder.units[-1].mark for one in found} - {""}
    if len(marks) != 1:
        return found
    (mark,) = marks
    return [replace(one, value=_with_unit(one.value, mark)) for one in found]


def _with_unit(value: Quantity, mark: str) -> Quantity:
    if value.ladder.style is Style.MEASURE:
        alone = tuple(unit.mark for unit in value.ladder.units) == (mark,)
        return whole(value.parts, mark) if alone else value
    bare = not value.ladder.mark and value.ladder.style is not Style.DECIMAL
    return with_mark(value, mark) if bare else value


def _tallied(found: Sequence[_Typed], line: int) -> tuple[tuple[Quantity, int], ...]:
    """Return each value with how often it was found, the least first."""
    counted = [one for one in found if one.count is not None]
    if counted and len(counted) < len(found):
        _refuse("some values have counts and others have none", line, found[0].column)
    marks: dict[tuple[Kind, Fraction], tuple[Quantity, int]] = {}
    for one in found:
        key = one.value.kind, one.value.value
        if key in marks and one.count is not None:
            _refuse("this value stands here twice", line, one.column)
        first, before = marks.get(key, (one.value, 0))
        marks[key] = first, before + (1 if one.count is None else one.count)
    return tuple(sorted(marks.values(), key=lambda pair: pair[0].value))


def _asked(plot: LinePlot, text: str, line: int, column: int, read: ReadNumber) -> PlotQuestion:
    found = _FIND.match(text)
    at = found.end() if found else 0
    start = column + at
    asks, at = _asks(text.lower(), at)
    if asks is None:
        msg = "it is not clear what is asked of the line plot"
        raise ReadingError(msg, line=line, column=start, remedy=_ASKS_REMEDY)
    bound, at = _bound(text.lower(), at)
    if bound is not None and not text[at:].strip():
        _refuse("a value is missing", line, column + at)
    among = _among(plot, bound, read(text[at:], line, column + at)) if text[at:].strip() else None
    try:
        return PlotQuestion(plot, asks, among)
    except OnewholeError as error:
        raise ReadingError(error.what, line=line, column=start, remedy=error.remedy) from error


def _asks(text: str, at: int) -> tuple[PlotAsk | None, int]:
    """Read what is asked, and where it ends; a bound alone asks how many."""
    for pattern, asks in _ASKS:
        if found := pattern.match(text, at):
            return asks, found.end()
    return (None if _bound(text, at)[0] is None else PlotAsk.COUNT), at


def _bound(text: str, at: int) -> tuple[Bound | None, int]:
    """Read which of the measurements are meant, and where that ends."""
    for pattern, bound in _BOUNDS:
        if found := pattern.match(text, at):
            return bound, found.end()
    return None, at


def _among(plot: LinePlot, bound: Bound | None, value: Quantity) -> Among:
    own = _with_unit(value, plot.mark) if plot.mark else value
    written = next(
        (known for known in plot.ticks if known.value == own.value and known.kind is own.kind), own
    )
    return Among(bound or Bound.EXACTLY, written if written.ladder.mark == own.ladder.mark else own)


def _refuse(msg: str, line: int, column: int) -> NoReturn:
    raise ReadingError(msg, line=line, column=column, remedy=REMEDY)
