"""What a district finds, ready to be told: tables in which no small number stands, how hard each kind is."""

from collections.abc import Mapping, Sequence

from msgspec import Struct

from onewhole.findings.skill import Skill
from onewhole.marking.diagnosis.interval import Interval, interval
from onewhole.marking.district.small_counts import LEAST, hidden, with_sums, without_small_rows

#: What stands for right answers, and for wrong ones that no pattern writes, beside the ids of patterns.
RIGHT_KEY, OTHER_KEY = "right", "other"
#: More columns or ideas than this are put together as others.
MOST_COLUMNS, MOST_IDEAS = 40, 30

Counts = Mapping[tuple[str, str], int]


class ShownTable(Struct, frozen=True):
    """A table of counts with its sums, told without small numbers.

    ``cells[r][c]`` is a count, or None where it is not shown; the last row and the last column are sums.
    """

    rows: tuple[str, ...]
    columns: tuple[str, ...]
    cells: tuple[tuple[int | None, ...], ...]

    def whole(self, row: str) -> int | None:
        """Return the sum of a row; None where it is not shown."""
        return self.cells[self.rows.index(row)][-1]


class ProblemAnswers(Struct, frozen=True):
    """What was written to one problem: the commonest answers with their patterns.

    Counts are rounded down to whole ``least``s: what two tables say of one answer is never told to the last
    pupil. Answers that fewer wrote are not there.
    """

    problem: str
    kind: Skill
    answered: int
    right: int
    wrong: tuple[tuple[str, int, tuple[str, ...]], ...]


class KindFound(Struct, frozen=True):
    """A kind of problem: how much of what was answered is right, where that can be told."""

    kind: Skill
    right: Interval | None


class DistrictFound(Struct, frozen=True):
    """All that a district's papers show, with nothing of one child in it.

    ``kinds`` counts answers: rows are a kind and what was written (:func:`kind_row`), columns a grade and a
    week. ``ideas`` and ``places`` count papers whose answers fit an idea, by grade and week, and by school.
    """

    papers: int
    pages: int
    schools: int
    least: int
    difficulty: tuple[KindFound, ...]
    kinds: ShownTable
    ideas: ShownTable
    places: ShownTable
    problems: tuple[ProblemAnswers, ...]


def idea_table(counts: Counts, least: int = LEAST) -> ShownTable:
    """Put papers by idea into a table of those that have the same ideas, and so the same sums of rows.

    >>> counts = {("A01", "Elm"): 50, ("A01", "Oak"): 4, ("A02", "Elm"): 30, ("A03", "Oak"): 3}
    >>> idea_table(counts).rows, idea_table(counts).whole("A01")
    (('A01', 'other'), 54)
    """
    return shown_table(without_small_rows(few(counts), OTHER_KEY, least), least, rows_known=True)


def shown_table(counts: Counts, least: int = LEAST, *, rows_known: bool = False) -> ShownTable:
    """Put counts by row and column into a table, and leave out what must not be told.

    >>> shown_table({("A01", "Elm"): 50, ("A01", "Oak"): 4, ("A02", "Elm"): 30, ("A02", "Oak"): 60}).cells
    ((None, None, 54), (None, None, 90), (80, 64, 144))
    """
    rows = tuple(sorted({row for row, _ in counts}))
    columns = tuple(sorted({column for _, column in counts}))
    table = with_sums([[counts.get((row, column), 0) for column in columns] for row in rows])
    out = hidden(table, least, rows_known=rows_known) if rows else frozenset()
    cells = tuple(
        tuple(None if (at, place) in out else count for place, count in enumerate(line))
        for at, line in enumerate(table)
    )
    return ShownTable(rows, columns, cells if rows else ())


def few(counts: Counts, most_rows: int = MOST_IDEAS, most_columns: int = MOST_COLUMNS) -> Counts:
    """Put the rows and the columns with the smallest sums together as others, where there are too many.

    >>> few({("A", "x"): 9, ("B", "x"): 5, ("C", "x"): 1}, 2)
    {('A', 'x'): 9, ('other', 'x'): 6}
    """
    kept = [_largest(counts, 0, most_rows), _largest(counts, 1, most_columns)]
    found: dict[tuple[str, str], int] = {}
    for (row, column), count in counts.items():
        key = (row if row in kept[0] else OTHER_KEY, column if column in kept[1] else OTHER_KEY)
        found[key] = found.get(key, 0) + count
    return found


def _largest(counts: Counts, side: int, most: int) -> frozenset[str]:
    sums: dict[str, int] = {}
    for key, count in counts.items():
        sums[key[side]] = sums.get(key[side], 0) + count
    ranked = sorted(sums, key=lambda one: (-sums[one], one))
    return frozenset(ranked if len(ranked) <= most else ranked[: most - 1])


def kind_row(kind: Skill, what: str) -> str:
    """Return the name of a row of kinds: a kind and what was written there.

    >>> kind_of_row(kind_row(Skill.TAKE, "A16"))
    (<Skill.TAKE: 3>, 'A16')
    """
    return f"{kind.name} {what}"


def kind_of_row(row: str) -> tuple[Skill, str]:
    """Return the kind of a row, and what was written."""
    kind, _, what = row.partition(" ")
    return Skill[kind], what


def difficulty(kinds: ShownTable) -> tuple[KindFound, ...]:
    """Return how hard each kind is, the hardest first; what is not shown makes it None, and comes last."""
    found = []
    for kind in dict.fromkeys(kind_of_row(row)[0] for row in kinds.rows):
        sums = {row: kinds.whole(row) for row in kinds.rows if kind_of_row(row)[0] is kind}
        shown = [count for count in sums.values() if count is not None]
        of = sum(shown)
        right = sums.get(kind_row(kind, RIGHT_KEY), 0)
        told = interval(right, of) if right is not None and len(shown) == len(sums) and of else None
        found.append(KindFound(kind, told))
    return tuple(sorted(found, key=lambda one: (one.right is None, one.right.share if one.right else 0)))


def rounded_answers(
    problem: str, kind: Skill, right: int, written: Sequence[tuple[str, int, tuple[str, ...]]], least: int
) -> ProblemAnswers:
    """Tell the commonest wrong answers to a problem, in whole leasts.

    >>> rounded_answers("5 - 2", Skill.TAKE, 57, [("7", 13, ()), ("4", 3, ())], 10).wrong
    (('7', 10, ()),)
    """
    ranked = sorted(written, key=lambda one: (-one[1], one[0]))
    told = tuple((text, count // least * least, fits) for text, count, fits in ranked if count >= least)
    answered = right + sum(count for _, count, _ in written)
    return ProblemAnswers(problem, kind, answered // least * least, right // least * least, told[:8])
