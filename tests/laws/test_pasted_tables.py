"""A table in any order, with strangers among it, turned or not: nothing lands on a wrong child unasked."""

from hypothesis import given
from hypothesis import strategies as st

from onewhole.marking.reading.tables.answer_grid import AnswerGrid
from onewhole.marking.reading.tables.class_names import ListedPupil
from onewhole.marking.reading.tables.placing import place
from onewhole.marking.reading.tables.table_cell import table_of, turned
from onewhole.sheets.reading import read_sheet

NAMES = ("Maya Rivera", "Ben Okafor", "Lin", "José Núñez", "", "Ben Ruiz", "Ada", "")
PUPILS = tuple(ListedPupil(f"K{at:02d}", name) for at, name in enumerate(NAMES, start=1))
PROBLEMS = read_sheet("".join(f"{at}. {at + 3} 1/8 - {at} 3/8\n" for at in range(1, 7))).problems
GRID = AnswerGrid(PUPILS, PROBLEMS, "K03", "2")
#: How a row may call a pupil of the class.
CALLS = (
    lambda one: one.code,
    lambda one: one.code.lower(),
    lambda one: one.name or one.code,
    lambda one: f"{one.code} {one.name}".strip(),
    lambda one: one.name.partition(" ")[0] or one.code,
)
STRANGERS = ("K99", "Zoe Park", "P12", "")
HEADS = ("Name", "pupil", "Code", "", "Wer?")


@given(st.data())
def test_nothing_lands_on_a_wrong_child_unasked(data: st.DataObject) -> None:
    """Each answer tells whose it is and to which problem, so that where it lands can be held against it."""
    pupils = data.draw(st.permutations(PUPILS))[: data.draw(st.integers(2, 8))]
    labels = data.draw(st.permutations([one.label for one in PROBLEMS]))[: data.draw(st.integers(1, 6))]
    headed = data.draw(st.booleans())
    call = data.draw(st.sampled_from(CALLS))
    rows = [[call(one), *(f"{one.number} {label}/7" for label in labels)] for one in pupils]
    for at in data.draw(st.lists(st.integers(0, len(rows)), max_size=2)):
        rows.insert(at, [data.draw(st.sampled_from(STRANGERS)), *("99 1/7" for _ in labels)])
    if headed:
        rows.insert(0, [data.draw(st.sampled_from(HEADS)), *labels])
    for title in data.draw(st.lists(st.sampled_from(["Homework 12", "Trail miles, Tuesday"]), max_size=2)):
        rows.insert(0, [title])
    table = table_of(rows)
    found = place(turned(table) if data.draw(st.booleans()) else table, GRID, {})
    assert found.questions or headed or len(labels) == len(PROBLEMS)
    for cell in found.cells:
        whose, _, which = cell.text.partition(" ")
        assert f"K{int(whose):02d}" == cell.code
        if headed:
            assert which == f"{cell.label}/7"


CELLS = st.sampled_from(
    [
        *(
            "",
            "",
            "1",
            "2",
            "3",
            "1.",
            "Q2",
            "K01",
            "k2",
            "K99",
            "Maya",
            "Ben",
            "Lin",
            "Zoe",
            "Name",
            "Code",
            "No.",
        ),
        *(
            "3 3/6",
            "8-Mar",
            "45359",
            "3/8/2026",
            "smudge",
            "Total",
            "4 1/8 - 1 3/8",
            "K01 Ben",
            "=3",
            "½",
            "-",
            "#",
        ),
    ]
)


@given(st.lists(st.lists(CELLS, max_size=5), max_size=6), st.data())
def test_any_table_is_asked_about_to_its_end(rows: list[list[str]], data: st.DataObject) -> None:
    """Whatever stands where: each cell gets one answer at most, and questions come to an end."""
    table = table_of(rows)
    decided: dict[str, str] = {}
    for _ in range(60):
        found = place(table, GRID, decided)
        where = [(one.code, one.label) for one in found.cells]
        assert len(set(where)) == len(where)
        assert {code for code, _ in where} <= {*GRID.codes, *(key for key, _ in found.added)}
        assert len({one.key for one in found.questions}) == len(found.questions)
        if not found.open:
            return
        asked = found.open[0]
        tries = decided.get(asked.key)
        offers = [one for one in asked.options if one != tries] or list(asked.options)
        decided[asked.key] = "skip" if tries and "skip" in offers else data.draw(st.sampled_from(offers))
    raise AssertionError(rows, decided)
