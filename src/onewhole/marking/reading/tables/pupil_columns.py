"""Which columns of a table name pupils: of the class, or strangers where nothing else can be meant."""

from collections.abc import Sequence

from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.tables.class_names import (
    ListedPupil,
    MatchedBy,
    looks_like_code,
    match_pupil,
    name_words,
)
from onewhole.marking.reading.tables.labels import is_surely_label, match_label
from onewhole.marking.reading.tables.table_cell import Table
from onewhole.problems.problem import Problem

#: Words that head a column of pupils, and words that head what is no problem.
_PUPIL_WORDS_TEXT = (
    "pupil pupils student students name names first last full surname forename code codes kid kids child "
    "children learner learners id nr no number initials initial"
)
_PUPIL_WORDS = frozenset(_PUPIL_WORDS_TEXT.split())
_OTHER_WORDS_TEXT = (
    "total totals sum score scores points percent grade grades mark marks right correct wrong missing "
    "average mean median class period date day notes note comment comments remarks time group"
)
_OTHER_WORDS = frozenset(_OTHER_WORDS_TEXT.split())


def is_pupil_word(text: str) -> bool:
    """Say whether a heading is of a column of pupils.

    >>> is_pupil_word("First name"), is_pupil_word("#"), is_pupil_word("Kite")
    (True, True, False)
    """
    words = name_words(text)
    return text in {"#", "№"} or (bool(words) and all(word in _PUPIL_WORDS for word in words))


def is_other_word(text: str) -> bool:
    """Say whether a heading is of what is no problem and no pupil: a total, a date, a note.

    >>> is_other_word("Total score"), is_other_word("1")
    (True, False)
    """
    words = name_words(text)
    return text == "%" or (bool(words) and any(word in _OTHER_WORDS for word in words))


def column_cells(table: Table, at: int) -> list[tuple[int, str]]:
    """Return the rows of a column that are not empty, each with its text."""
    return [(row, cells[at].plain) for row, cells in enumerate(table) if cells[at].plain]


def pupil_columns(
    table: Table, pupils: Sequence[ListedPupil], problems: Sequence[Problem]
) -> tuple[tuple[int, ...], int]:
    """Return the columns that name pupils, and how many pupils of the class they name."""
    columns = range(len(table[0])) if table else range(0)
    hits: dict[int, set[str]] = {}
    for at in columns:
        cells = [text for _, text in column_cells(table, at)]
        matches = [match_pupil(text, pupils) for text in cells]
        named = {code for one in matches if one.by is not MatchedBy.NUMBER for code in one.codes}
        others = sum(not one.codes and _is_name(text) for text, one in zip(cells, matches, strict=True))
        told = sum(bool(one.codes) and one.by is not MatchedBy.NUMBER for one in matches)
        if named and 5 * (told + others) >= 3 * len(cells):
            hits[at] = named
    if hits:
        return tuple(hits), len(set().union(*hits.values()))
    for test in (_by_heading, _by_codes, _by_numbers, _by_names):
        for at in columns:
            if test(column_cells(table, at), table, at, problems):
                return (at,), 0
    return (), 0


def _is_name(text: str) -> bool:
    """Say whether a text may name a pupil: letters that are no answer."""
    return looks_like_code(text) or (
        bool(name_words(text)) and isinstance(read_written(text).read, Unreadable)
    )


def _by_heading(cells: list[tuple[int, str]], *_: object) -> bool:
    """Whether a column is headed as one of pupils, and whoever stands under it is no answer."""
    at = next((at for at, (_, text) in enumerate(cells[:4]) if is_pupil_word(text)), None)
    if at is None or at + 1 == len(cells):
        return False
    under = [text for _, text in cells[at + 1 :]]
    return all(_is_name(text) for text in under) or counts_up(under)


def _by_codes(cells: list[tuple[int, str]], table: Table, at: int, problems: Sequence[Problem]) -> bool:
    """Whether nearly all of a column looks like codes and not like labels."""
    texts = [text for _, text in cells if match_label(text, problems) is None and not is_surely_label(text)]
    codes = [text for text in texts if looks_like_code(text)]
    return (
        len(codes) > 0
        and len(codes) >= len(cells) - 2
        and len(codes) >= len(texts) - 2
        and _beside(table, at)
    )


def _by_numbers(cells: list[tuple[int, str]], table: Table, at: int, problems: Sequence[Problem]) -> bool:
    """Whether a first column counts from 1 under a corner that is empty, beside a row of labels."""
    if at or len(cells) < 3:
        return False
    first = cells[0][0]
    if not first or not counts_up([text for _, text in cells]):
        return False
    labels = [cell.plain for cell in table[first - 1][1:] if cell.plain]
    return len(labels) > 1 and all(match_label(text, problems) for text in labels)


def _by_names(cells: list[tuple[int, str]], table: Table, at: int, problems: Sequence[Problem]) -> bool:
    """Whether most of a column is words that are no answers, no labels and no headings of something else."""
    names = [
        text
        for _, text in cells
        if _is_name(text)
        and match_label(text, problems) is None
        and not is_surely_label(text)
        and not is_other_word(text)
    ]
    return (
        len(names) > 1
        and 5 * len(names) >= 4 * len(cells)
        and len(set(names)) == len(names)
        and _beside(table, at)
    )


def _beside(table: Table, at: int) -> bool:
    """Whether something else than this column stands in the table."""
    return any(cell.plain for row in table for column, cell in enumerate(row) if column != at)


def counts_up(texts: Sequence[str]) -> bool:
    """Whether texts are whole numbers, each once, that begin with 1 or 2 and grow."""
    if not texts or not all(text.isascii() and text.isdecimal() and len(text) < 4 for text in texts):
        return False
    numbers = [int(text) for text in texts]
    return numbers == sorted(set(numbers)) and numbers[0] in {0, 1, 2} and numbers[-1] <= 2 * len(numbers) + 5
