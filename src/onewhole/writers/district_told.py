"""What a district's report says: its sentences, and its tables as rows of words. HTML and PDF share them."""

from collections.abc import Callable, Iterator, Sequence

from msgspec import Struct

from onewhole.findings.skill import Skill
from onewhole.languages.english.skills import skill_called
from onewhole.marking.district.district_found import (
    OTHER_KEY,
    RIGHT_KEY,
    DistrictFound,
    ShownTable,
    kind_of_row,
)
from onewhole.misconceptions.catalogue import by_id

DISTRICT_TITLE = "What the answers of a district show"
DISTRICT_CAUTION = (
    "Answers that fit an idea are a hint for a talk with a child, never a label, and never a measure of a "
    "teacher or a school: schools set other pages, to other children, on other days."
)
OTHERS_NOT_SHOWN = (
    "and neither are others from which they could be worked out. 0 is shown. "
    "No pupil and no class is in this report."
)
BAND_TOLD = (
    "The band is a 95 % interval. It takes answers as independent; those of one evening are not, so the true "
    "one is wider."
)
NOT_SHOWN = "·"


class ToldTable(Struct, frozen=True):
    """A table in words: its heading, what it counts, the heads of its columns, its rows."""

    title: str
    says: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


def district_sentences(found: DistrictFound) -> tuple[str, ...]:
    """Return what stands above the tables."""
    return (
        f"{found.papers:,} papers of {found.schools:,} schools, {found.pages:,} pages.",
        f"Numbers from 1 to {found.least - 1} are not shown ({NOT_SHOWN}), {OTHERS_NOT_SHOWN}",
        BAND_TOLD,
        DISTRICT_CAUTION,
    )


def district_tables(found: DistrictFound) -> Iterator[ToldTable]:
    """Give the tables of the report in order."""
    yield _table(
        "What was written, by kind of problem",
        "Answers by grade and week (its Monday). One that fits several patterns is counted with the first.",
        found.kinds,
        "Kind of problem, and what was written",
        _kind_told,
    )
    yield _table(
        "Which ideas the papers fit, by grade and week",
        "Papers whose answers fit an idea with odds of 0.9 or more.",
        found.ideas,
        "Idea",
        idea_told,
    )
    yield _table(
        "Which ideas go round where",
        "The same papers by school.",
        found.places,
        "Idea",
        idea_told,
    )
    yield ToldTable(
        "Problem by problem",
        f"The commonest answers. Counts are rounded down to whole {found.least}s.",
        ("Problem", "Kind", "Answered", "Right", "Most often written instead"),
        tuple(
            (
                one.problem,
                skill_called(one.kind),
                f"{one.answered:,}",
                f"{one.right:,}",
                "; ".join(f"{text} ({count:,}{_fits(fits)})" for text, count, fits in one.wrong) or "-",
            )
            for one in found.problems
            if one.answered
        ),
    )


def idea_told(key: str) -> str:
    """Name a set of patterns.

    >>> idea_told("-"), idea_told("other")
    ('an idea that is not listed', 'others together')
    """
    match key:
        case "-":
            return "an idea that is not listed"
        case "other":
            return "others together"
        case _:
            return " with ".join(f"{one} {by_id(one).name}" for one in key.split())


def _kind_told(row: str) -> str:
    kind, what = kind_of_row(row)
    named = {RIGHT_KEY: "right", OTHER_KEY: "what no pattern writes"}
    return f"{skill_called(kind)}: {named[what] if what in named else idea_told(what)}"


def _fits(fits: Sequence[str]) -> str:
    return f", {' or '.join(fits[:3])}" if fits else ""


def _table(title: str, says: str, table: ShownTable, head: str, called: Callable[[str], str]) -> ToldTable:
    if not table.rows:
        return ToldTable(title, f"{says} There are none.", (head,), ())
    *lines, sums = table.cells
    told = sorted(zip(table.rows, lines, strict=True), key=lambda one: _place(*one))
    rows = [
        (name, *(NOT_SHOWN if cell is None else f"{cell:,}" for cell in line))
        for name, line in [*((called(row), line) for row, line in told), ("Together", sums)]
    ]
    return ToldTable(title, says, (head, *table.columns, "Together"), tuple(rows))


def _place(row: str, line: Sequence[int | None]) -> tuple[str, bool, bool, int, str]:
    """Say where a row stands: kind by kind, what is right first, then the commonest, others together last.

    A row whose sum is not shown stands by its name where one of nobody would: its place tells nothing.

    >>> counts = {"TAKE A16": [7], "TAKE other": [9], "TAKE right": [5], "ADD A01": [None], "TAKE A01": [8]}
    >>> sorted(counts, key=lambda row: _place(row, counts[row]))
    ['ADD A01', 'TAKE right', 'TAKE A01', 'TAKE A16', 'TAKE other']
    """
    kind, _, what = row.rpartition(" ") if row.partition(" ")[0] in Skill.__members__ else ("", "", row)
    return kind, what != RIGHT_KEY, what == OTHER_KEY, -(line[-1] or 0), what
