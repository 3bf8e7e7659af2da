"""What marking never depends on: the order of pupils and problems, and cells that cannot be read."""

from collections.abc import Sequence

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from onewhole.desk.tomorrow.seats import seated
from onewhole.marking.diagnosis.diagnosis import weigh
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.diagnosis.tables import Tables, tables
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.group_settings import GroupSettings
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.answers_table import AnswersError, read_answers
from onewhole.marking.reading.checking import Checked, check
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import ClassMarks, Verdict
from onewhole.marking.reading.problem_stats import problem_stats
from onewhole.misconceptions.catalogue import by_id, patterns, shows
from onewhole.notations.text import text
from onewhole.problems.problem import Problem
from onewhole.statements.expression import Expression, kind, value
from onewhole.statements.reading import read_statement
from onewhole.statements.tokens import ReadingError
from tests.kit.answers import TWELVE, all_right, by_pattern, marked_against, page
from tests.kit.statements import any_expressions

PAGE = page()
EXPECTED = tuple(expect(problem) for problem in PAGE)
TABLES = tables(EXPECTED)
PATTERNS = [pattern.id for pattern in patterns()]
SORTS = {pattern: by_pattern(pattern, PAGE) for pattern in PATTERNS} | {"right": all_right(PAGE)}
STRAY = ("", "-", "see me", "5 1/8", "4 6/8", "9 1/7", "3", "39/8", "<", "3 3/0", "-1/2", "2 ft")

cells = st.sampled_from(sorted(SORTS)).flatmap(
    lambda sort: st.lists(st.sampled_from((None, None, None, *STRAY)), min_size=12, max_size=12).map(
        lambda stray: [own if other is None else other for own, other in zip(SORTS[sort], stray, strict=True)]
    )
)
classes = st.lists(cells, min_size=1, max_size=12).map(
    lambda rows: {f"K{at:02}": row for at, row in enumerate(rows, start=1)}
)


_Night = tuple[list[Finding], tuple[Group, ...]]


def _read(marks: ClassMarks, known: Tables = TABLES, meets: int = 4) -> _Night:
    """Findings and groups of a class."""
    found = findings(marks, weigh(marks, known=known).diagnoses)
    return list(found), seated(marks.pupils, found, GroupSettings(meets)).groups


def _told(finding: Finding, problems: Sequence[Problem]) -> object:
    """What a finding says, apart from the order of the labels."""
    assert {problem.label for problem in problems} >= set(finding.evidence) | set(finding.against)
    pairs = {(one.pattern, frozenset(one.evidence), frozenset(one.against)) for one in finding.fittings}
    odds = finding.diagnosis.odds, finding.diagnosis.alike, finding.diagnosis.together
    return finding.status, pairs, frozenset(finding.wrong), frozenset(finding.slips), odds


@settings(max_examples=settings().max_examples // 4)
@given(classes)
def test_the_order_of_pupils_changes_nothing(rows: dict[str, list[str]]) -> None:
    """Groups are the same tuple, and everyone keeps marks, odds and finding."""
    backwards = dict(reversed(rows.items()))
    one, other = marked_against(EXPECTED, rows), marked_against(EXPECTED, backwards)
    assert {pupil.pupil: pupil for pupil in one.pupils} == {pupil.pupil: pupil for pupil in other.pupils}
    (found, made), (again, made_again) = _read(one), _read(other)
    assert (found, made) == (again[::-1], made_again)
    assert problem_stats(one) == problem_stats(other)


@settings(max_examples=settings().max_examples // 4)
@given(classes, st.permutations(range(12)))
def test_the_order_of_problems_changes_nothing(rows: dict[str, list[str]], order: list[int]) -> None:
    """Findings say the same, and the same pupils meet, when the page is shuffled with its labels."""
    moved = {pupil: [row[at] for at in order] for pupil, row in rows.items()}
    asked = [EXPECTED[at] for at in order]
    one, other = marked_against(EXPECTED, rows), marked_against(asked, moved)
    (found, made), (again, made_again) = _read(one), _read(other, tables(asked))
    assert [_told(finding, PAGE) for finding in found] == [_told(finding, PAGE) for finding in again]
    assert [group.pupils for group in made] == [group.pupils for group in made_again]
    assert set(problem_stats(one)) == set(problem_stats(other))


@given(classes, st.sets(st.tuples(st.integers(0, 11), st.integers(0, 11))))
def test_unreadable_cells_change_no_verdict_elsewhere(
    rows: dict[str, list[str]], spots: set[tuple[int, int]]
) -> None:
    """Every other mark stays, and nobody's finding gets stronger from what cannot be read."""
    smudged = {
        pupil: ["??" if (who, at) in spots else cell for at, cell in enumerate(row)]
        for who, (pupil, row) in enumerate(rows.items())
    }
    one, other = marked_against(EXPECTED, rows), marked_against(EXPECTED, smudged)
    for who, (before, after) in enumerate(zip(one.pupils, other.pupils, strict=True)):
        for at, (mark, again) in enumerate(zip(before.marks, after.marks, strict=True)):
            assert again == mark if (who, at) not in spots else again.verdict is Verdict.UNREADABLE


@settings(max_examples=settings().max_examples // 4)
@given(classes, st.integers(1, 6))
def test_every_pupil_is_placed_once(rows: dict[str, list[str]], meets: int) -> None:
    """Nobody is lost, nobody is in two groups, no group is empty, and every reason has words."""
    marks = marked_against(EXPECTED, rows)
    _, made = _read(marks, meets=meets)
    assert sorted(pupil for group in made for pupil in group.pupils) == sorted(rows)
    assert all(placed.because for group in made for placed in group.placings)
    assert len({group.name for group in made}) == len(made)


@pytest.mark.parametrize("pattern", PATTERNS)
def test_what_a_pattern_writes_is_marked_with_its_id(pattern: str) -> None:
    """On every problem of the page that shows it: wrong and fitting exactly, or right with the form's id."""
    marks = marked_against(EXPECTED, {"K01": SORTS[pattern]}).pupils[0].marks
    for problem, mark in zip(PAGE, marks, strict=True):
        slip = by_id(pattern).slip(problem.statement)
        if slip is not None:
            assert pattern in mark.patterns
            assert mark.verdict is (Verdict.RIGHT if slip.form else Verdict.WRONG)


@pytest.mark.parametrize("typed", [*TWELVE, "2/3 + 1/4", "3/4 - 1/6", "4 - 3/8", "3/8 + 2/8", "1/7 + 1/7"])
def test_the_working_of_a_pattern_is_checked_as_that_pattern(typed: str) -> None:
    """Typed as a chain, its one false line is found where it is, with something true to stand there."""
    slips = [slip for slip in shows(read_statement(typed)) if slip.false_at and len(slip.lines) > 1]
    assert slips
    for slip in slips:
        [checked] = check("\n= ".join(text(line.says) for line in slip.lines))
        [false] = checked.false
        assert false.line == (slip.false_at or 0) + 1
        assert slip.pattern in false.patterns
        assert false.would_be is not None
        assert (kind(false.would_be), value(false.would_be)) == (kind(false.left), value(false.left))


@given(st.text(max_size=60))
def test_any_cell_is_kept(cell: str) -> None:
    """Nothing typed into a cell is lost or stops the reading."""
    assert read_written(cell).text == cell


@given(
    st.text(alphabet='pupil,;\t\n\r"123 4/6<=-\N{GRINNING FACE}\N{ZERO WIDTH NO-BREAK SPACE}', max_size=80)
)
def test_any_table_is_read_or_refused_with_a_line(table: str) -> None:
    """No text stops the program: it is a table of this page, or a refusal that says on which line."""
    assert _read_or_placed(table)


def _read_or_placed(table: str) -> bool:
    try:
        return bool(read_answers(table, PAGE[:3]).pupils)
    except AnswersError as refused:
        return all(one.line is not None for one in refused.refusals)


@given(any_expressions(), any_expressions())
def test_what_is_offered_is_true(left: Expression, right: Expression) -> None:
    """Any two expressions said to be equal: false exactly when they differ, and mended truly if at all."""
    [checked] = check(f"{text(left)} = {text(right)}")
    assert checked.true == ((kind(left), value(left)) == (kind(right), value(right)))
    for false in checked.false:
        offered = false.would_be
        assert offered is None or (kind(offered), value(offered)) == (kind(left), value(left))


@given(st.text(alphabet="0123456789 /+-=x()\n.?<>ftin", max_size=60))
def test_any_chain_is_checked_or_refused_with_its_place(typed: str) -> None:
    """Every false sign that can be mended is offered something that is true."""
    found = _checked_or_placed(typed)
    assert found is not None
    for false in (false for checked in found for false in checked.false):
        if false.would_be is not None:
            assert (kind(false.would_be), value(false.would_be)) == (kind(false.left), value(false.left))


def _checked_or_placed(typed: str) -> tuple[Checked, ...] | None:
    """Return what was checked, nothing for a refusal with its line, None for one without."""
    try:
        return check(typed)
    except ReadingError as refused:
        return None if refused.line is None else ()


def test_the_stray_answers_are_of_every_sort() -> None:
    """The laws above meet blanks, unreadable cells, right, wrong and impossible answers."""
    reads = [read_written(cell).read for cell in STRAY]
    assert len(TWELVE) == 12
    assert {type(read).__name__ for read in reads} == {
        "Blank",
        "Unreadable",
        "Quantity",
        "Relation",
        "Impossible",
        "WithMinus",
    }
    assert sum(isinstance(read, Unreadable) for read in reads) == 1
