"""The workings page: few pages, no problem split, every line with its reason, every check."""

from typing import Any

import pytest

from onewhole.languages.english.reasons import reason_told
from onewhole.languages.english.speech import say
from onewhole.languages.table import SPOKEN
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import Question
from onewhole.writers.formula import set_words
from onewhole.writers.workings_page import workings_page
from tests.kit import pdf
from tests.kit.pages import COMBINED, PAPERS, made, plain, pressed, sheet
from tests.kit.sheets import worked_sheet


@pytest.mark.parametrize("paper", PAPERS)
def test_room_12_takes_four_pages(paper: str) -> None:
    """Twelve problems with every line and a picture stand on four pages in ordinary print."""
    assert pdf.pages(pressed("room12/workings", paper, "ordinary")) == 4


@pytest.mark.parametrize("name", ["room12", "sorts"])
def test_every_line_is_spoken_and_has_its_reason(name: str) -> None:
    """The lines are those of the working after the problem, in its order, each with its sentence."""
    night = sheet(name)
    data: Any = workings_page(WorkedSheet(night)).data
    for entry, shown in zip(WorkedSheet(night).problems, data["problems"], strict=True):
        assert shown["label"] == f"{entry.problem.label}."
        assert shown["formula"]["alt"] == say(entry.problem.statement)
        if entry.working is None:
            assert [line["formula"]["alt"] for line in shown["lines"]] == [f"equals {say(entry.answer)}"]
            continue
        lead = "equals " if isinstance(entry.problem.statement, Question) else ""
        lines = entry.working.lines[1:]
        seen = [line for line in lines if "columns" not in shown or not line.aside]
        assert [line["formula"]["alt"] for line in shown["lines"] if "formula" in line] == [
            lead + say(line.says) for line in seen
        ]
        for line, row in zip(lines, shown["lines"], strict=True):
            assert row["because"] == (
                set_words(reason_told(line.because, night.header.words)) if line.because else ""
            )
            assert row.get("aside", False) == line.aside
            assert [len(fact) > 1 for fact in row.get("facts", [])] == [True] * len(line.facts)
        assert len(shown["checks"]) == len(entry.working.checks)


def test_a_hard_fact_is_its_sentence_with_formulas() -> None:
    """Read with the formulas as they are typed, a hard fact is the sentence of the notations."""
    data: Any = workings_page(worked_sheet("1. 9 5/8 - 4 6/8")).data
    (fact,) = [fact for line in data["problems"][0]["lines"] for fact in line.get("facts", [])]
    typed = "".join(part if isinstance(part, str) else part["math"] for part in fact)
    assert (
        typed.replace("\N{MINUS SIGN}", "-")
        == "For 13 - 6, go by way of the ten: 13 - 3 = 10, then 10 - 3 = 7."
    )


@pytest.mark.more("writers/test_look.py")
@pytest.mark.parametrize(("paper", "size"), COMBINED)
def test_no_problem_is_split(paper: str, size: str) -> None:
    """Label, lines and checks of a problem of Room 12 stand on one page."""
    pages = [plain(text) for text in pdf.words(pressed("room12/workings", paper, size))]
    found = [text.count("Estimate") for text in pages]
    assert found == [text.count("Put it back") for text in pages]
    assert sum(found) == len(sheet("room12").problems)
    tops = [pdf_labels(text) for text in pages]
    assert [len(labels) for labels in tops] == found


def pdf_labels(text: str) -> list[str]:
    """The problems that begin on a page: each names its strategy."""
    data: Any = workings_page(WorkedSheet(sheet("room12"))).data
    names = {problem["strategy"] for problem in data["problems"]}
    return [name for name in names for _ in range(text.count(name))]


def test_the_lighter_lines_are_explained() -> None:
    """The note over the workings says what the lighter lines are for."""
    assert SPOKEN.page.lighter_lines in plain(pdf.words(pressed("room12/workings", "letter", "ordinary"))[0])


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("strategy: count up\n\n1. 7 2/6 - 3 5/6", "The jump ends at 4 wholes."),
        ("1. 9 - ? = 3 1/2", "In all: 9 wholes. One part: not known yet. One part: 3 wholes and 1 half."),
    ],
)
def test_a_drawing_with_numbers_stands_under_its_working(typed: str, told: str) -> None:
    """A number line and a bar are printed, each with its words for those who do not see it."""
    figures = pdf.tags(made(workings_page(worked_sheet(typed))))
    assert [told in alt for tag, alt in figures if tag == "/Figure"] == [True]


def test_words_stand_for_a_drawing_that_large_print_leaves_out() -> None:
    """The numbers of a number line are too small for large print: what it shows is said."""
    typed = "print: large\nstrategy: count up\n\n1. 7 2/6 - 3 5/6"
    page = plain(" ".join(pdf.words(made(workings_page(worked_sheet(typed))))))
    assert "The jump ends at 4 wholes." in page


@pytest.mark.parametrize("typed", ["304 - 128", "5.2 - 2.75", "1000000 - 234567"])
def test_the_result_of_columns_follows_its_last_reason(typed: str) -> None:
    """It stands right behind the last word, and not at the other side of the page."""
    signs = pdf.signs(made(workings_page(worked_sheet(f"1. {typed}"))))
    text = "".join(sign.sign for sign in signs)
    at = text.index("=", text.rindex("leaves"))
    before, sign = signs[at - 1], signs[at]
    assert before.sign == "."
    assert 1 < sign.left - before.right < 6
    assert abs(sign.bottom - before.bottom) < 3


@pytest.mark.parametrize(
    ("typed", "rows"),
    [
        ("304 - 128", ["304", "128", "176"]),
        ("1000000 - 234567", ["1000000", "234567", "765433"]),
        ("345678 + 54322", ["345678", "54322", "400000"]),
        ("100.4 - 99.65", ["10040", "9965", "075"]),
    ],
)
def test_columns_line_up(typed: str, rows: list[str]) -> None:
    """The digits of one place stand under one another, to half a millimetre, and none is cut off."""
    page = made(workings_page(worked_sheet(f"1. {typed}")))
    large = [sign for sign in pdf.signs(page) if sign.sign.isdigit() and sign.points > 12 and sign.left < 75]
    by_row: list[list[pdf.Box]] = []
    for sign in sorted(large, key=lambda one: one.bottom):
        if by_row and sign.bottom - by_row[-1][-1].bottom < 1:
            by_row[-1].append(sign)
        else:
            by_row.append([sign])
    written = [sorted(row, key=lambda sign: -sign.left) for row in by_row]
    found = [row for row in written if "".join(sign.sign for sign in reversed(row)) in rows]
    assert ["".join(sign.sign for sign in reversed(row)) for row in found] == rows
    middles = [[(sign.left + sign.right) / 2 for sign in row] for row in found]
    for place in range(max(map(len, middles))):
        there = [row[place] for row in middles if len(row) > place]
        assert max(there) - min(there) < 0.5


def test_a_missing_number_has_its_bar_and_its_columns() -> None:
    """The lines that a pupil writes are equations, beside the columns; the bar stands under them."""
    data: Any = workings_page(worked_sheet("1. ? + 128 = 304")).data
    (shown,) = data["problems"]
    assert [one["alt"][:10] for one in shown["columns"]] == ["In columns"]
    assert "across" in shown["drawing"]
    spoken = [line["formula"]["alt"] for line in shown["lines"] if "formula" in line]
    assert len(spoken) == 2
    assert not [said for said in spoken if said.startswith("equals")]
