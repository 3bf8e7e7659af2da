"""The heat map of a night: problems by patterns, how many pupils' answers fit, and whose."""

from collections.abc import Mapping, Sequence

from msgspec import Struct

from onewhole.desk.classes.marked_nights import NightInput, marked_of
from onewhole.desk.keep.pupil_cache import pupil_cache
from onewhole.desk.marking.mark import Marked
from onewhole.marking.reading.expected import is_fact_slip
from onewhole.marking.reading.mark import Mark, Verdict
from onewhole.misconceptions.catalogue import by_id
from onewhole.writers.pattern_words import thought

#: The map is hatched in so many densities, from 1; 0 is blank paper.
DENSITIES = 5
#: A pattern that fewer pupils' answers fit has no row, unless it is in a finding.
FROM_PUPILS = 2
#: The most heat maps cached in memory.
HELD = 8


class HeatRow(Struct, frozen=True):
    """One row: ``codes`` has for each problem of the page the pupils that are counted there.

    ``pattern`` is an id; ``name`` what the teacher reads, ``thinking`` what the child may be thinking.
    """

    pattern: str
    name: str
    thinking: str
    codes: tuple[tuple[str, ...], ...]

    @property
    def pupils(self) -> tuple[str, ...]:
        """Return everybody in the row, each once."""
        return tuple(sorted({code for cell in self.codes for code in cell}))


class Heat(Struct, frozen=True):
    """The map: ``rows`` are patterns, those of most pupils first; ``rest`` how the other answers were.

    ``left_out`` counts the patterns that only one pupil's answers fit. An answer can fit several patterns,
    so columns need not add up.
    """

    labels: tuple[str, ...]
    rows: tuple[HeatRow, ...]
    rest: tuple[HeatRow, ...]
    left_out: int
    pupils: int

    @property
    def most(self) -> int:
        """Return the largest count of pupils that fit a pattern on one problem."""
        return max((len(codes) for row in self.rows for codes in row.codes), default=0)


def density(count: int, most: int) -> int:
    """Return how densely a count of pupils is hatched: 0 for none, DENSITIES for the largest count of a map.

    A map of few pupils is hatched thinly: below DENSITIES pupils each one is a step.

    >>> [density(count, 10) for count in (0, 1, 2, 3, 10)]
    [0, 1, 1, 2, 5]
    """
    return -(-count * DENSITIES // max(most, DENSITIES))


@pupil_cache(maxsize=HELD)
def heat_of(given: NightInput) -> Heat:
    """Return the map of a night by what its answers alone say; the same once more costs nothing."""
    return heat(marked_of(given))


def heat(marked: Marked) -> Heat:
    """Return the map of a marked night; fact slips are no ideas, and are in no row, nor is who was away."""
    pupils = [one for one in marked.marks.pupils if not one.paper.away]
    columns = [
        [(pupil.pupil, pupil.marks[at]) for pupil in pupils] for at in range(len(marked.sheet.problems))
    ]
    found = {key for one in marked.findings for key in one.patterns}
    keys = {key for column in columns for _, mark in column for key in fits(mark)}
    rows = [
        HeatRow(
            key,
            by_id(key).name,
            thought(
                by_id(key),
                marked.sheet.problems,
                marked.sheet.header.words,
                [mark.label for column in columns for _, mark in column if key in fits(mark)],
            ),
            tuple(tuple(code for code, mark in column if key in fits(mark)) for column in columns),
        )
        for key in keys
    ]
    shown = [row for row in rows if row.pattern in found or len(row.pupils) >= FROM_PUPILS]
    shown.sort(key=lambda row: (-len(row.pupils), -sum(map(len, row.codes)), row.pattern))
    wrote = sum(any(mark.verdict is not Verdict.BLANK for mark in pupil.marks) for pupil in pupils)
    labels = tuple(problem.label for problem in marked.sheet.problems)
    return Heat(labels, tuple(shown), tuple(_rest(columns)), len(rows) - len(shown), wrote)


def fits(mark: Mark) -> tuple[str, ...]:
    """Return the patterns that a wrong answer fits in writing or in amount, fact slips left out."""
    return tuple(key for key in mark.fits if not is_fact_slip(key))


def _rest(columns: Sequence[Sequence[tuple[str, Mark]]]) -> list[HeatRow]:
    sorts: Mapping[str, frozenset[Verdict]] = {
        "right": frozenset({Verdict.RIGHT, Verdict.FORM}),
        "not right, and fits no pattern": frozenset({Verdict.WRONG}),
        "nothing written, or not readable": frozenset({Verdict.BLANK, Verdict.UNREADABLE}),
    }
    return [
        HeatRow(
            "",
            name,
            "",
            tuple(
                tuple(code for code, mark in column if mark.verdict in verdicts and not fits(mark))
                for column in columns
            ),
        )
        for name, verdicts in sorts.items()
    ]
