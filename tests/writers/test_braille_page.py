"""The pupil page and the key in braille, read back line by line."""

import re

from onewhole.notations.braille.cells import BLANK
from onewhole.statements.reading import read_statement
from onewhole.writers.braille_page import HEIGHT, WIDTH, BraillePage, braille_key_page, braille_pupil_page
from tests.kit.braille_reading import from_ascii, line_read, nemeth_read
from tests.kit.sheets import worked_sheet

SHEET = """title: Kite tails
class: Room 12
whole: strip
strategy: regroup first

# Cut 1/2 of each strip. How much is left?
1. 7 2/6 - 3 5/6
2. 5/6 ? 7/8
3. order 2/3, 1/2, 3/4
4. round 4,567 to the nearest hundred
5. 9 11/12 - 3 5/12 - 2 7/12 - 1 1/12
6. 12/18 in simplest form
7. 3 ft = ? in
8. 4 1/4 - 1 3/4 | The club has 4 1/4 strips. It uses 1 3/4 strips. How many are left?
9. $3.50 - $2.75
"""


def _read(page: BraillePage) -> list[str]:
    """What stands on the pages: a line that goes on below is put together first."""
    lines = [line for one in page.pages for line in one[: HEIGHT - 1] if line]
    joined: list[str] = []
    for line in lines:
        runover = line.startswith(BLANK * 2) and not line.startswith(BLANK * 3)
        if runover and joined and joined[-1].count("⠸⠩") > joined[-1].count("⠸⠱"):
            between = BLANK if line.strip(BLANK)[0] not in "⠤⠬" else ""
            joined[-1] += between + re.sub("^⠤⠼", "⠤", line.strip(BLANK))
        else:
            joined.append(line)
    return [line_read(line) for line in joined]


def test_a_pupil_reads_every_problem() -> None:
    """Mathematics in Nemeth, words in UEB, a line to write on where print has one."""
    read = _read(braille_pupil_page(worked_sheet(SHEET)))
    assert read[:3] == ["Kite tails", "Room 12", "Name _ Date _"]
    assert " ".join(read[3:]) == (
        "Cut 1/2 of each strip. How much is left?"
        " 1. 7 2/6 - 3 5/6 = ____"
        " 2. 5/6 ? 7/8"
        " 3. Order 2/3, 1/2, 3/4 from least to greatest"
        " 4. Round 4567 to the nearest hundred"
        " 5. 9 11/12 - 3 5/12 - 2 7/12 - 1 1/12 = ____"
        " 6. 12/18 in simplest form"
        " 7. 3 ft = ? in"
        " 8. The club has 4 1/4 strips. It uses 1 3/4 strips. How many are left?"
        " 9. $3.50 - $2.75 = ____"
    )


def test_a_key_names_every_answer_and_equal_form() -> None:
    """Each on a line of its own."""
    read = _read(braille_key_page(worked_sheet("1. 7 2/6 - 3 5/6\n2. 5/6 ? 7/8\n3. 7 2/6 = 6 ?/6")))
    assert read == [
        *("Answer key", "Fractions"),
        *("1. 7 2/6 - 3 5/6", "Answer: 3 3/6", "Also right: 3 1/2", "Also right: 21/6", "Regroup."),
        *("2. 5/6 ? 7/8", "Answer: <", "Unlike denominators."),
        *("3. 7 2/6 = 6 ?/6", "Answer: 8", "Regroup."),
    ]


def test_columns_stand_under_each_other() -> None:
    """Where the class works in columns: the switch, an empty line, the numbers, and the switch back."""
    page = braille_pupil_page(worked_sheet("title: Coins\n\n1. 304 - 128\n2. 5 ft - 2 ft"))
    lines = [line.rstrip(BLANK) for line in page.pages[0]]
    at = next(at for at, line in enumerate(lines) if line.startswith("⠼⠁⠲"))
    assert lines[at : at + 8] == [
        from_ascii("#A4 _%"),
        "",
        from_ascii("    304"),
        from_ascii("   -128"),
        from_ascii("  333333"),
        "",
        from_ascii("_:"),
        from_ascii("#B4 _% #5 FT -#2 FT .K ---- _:"),
    ]


def test_a_page_has_as_many_lines_and_cells_as_paper_holds() -> None:
    """Source: BANA, Braille Formats, 2016 (from memory): 25 lines of 40 cells, the number below."""
    long = f"# {'w' * 90} {'1/2 ' * 26}".rstrip() + "\n"
    many = "".join(f"{at}. {at} 2/6 - 3 5/6\n" for at in range(4, 70))
    made = braille_pupil_page(worked_sheet(f"title: {'Kite ' * 20}\n\n{long}{many}"))
    assert len(made.pages) > 2
    assert {len(page) for page in made.pages} == {HEIGHT}
    assert all(len(line) <= WIDTH for page in made.pages for line in page)
    assert [line_read(page[-1]) for page in made.pages] == [str(at + 1) for at in range(len(made.pages))]
    read = [nemeth_read(part) for part in re.findall("⠸⠩⠀(.*?)⠀⠸⠱", "\n".join(map("\n".join, made.pages)))]
    asked = [one.removesuffix(" = ____") for one in read if one.endswith("____")]
    assert [read_statement(one) for one in asked] == [
        read_statement(f"{at} 2/6 - 3 5/6") for at in range(4, 70)
    ]


def test_a_problem_is_not_torn_over_two_pages() -> None:
    """A block that does not fit begins on the next page."""
    problems = "".join(f"{at}. {at}04 - 128\n" for at in range(2, 12))
    for page in braille_pupil_page(worked_sheet(f"title: Coins\n\n{problems}")).pages:
        assert sum(line.endswith("⠸⠩") for line in page) == sum(line == "⠸⠱" for line in page)


def test_brf_and_unicode_hold_the_same() -> None:
    """ASCII letters with a form feed behind each page; Unicode with an empty line between pages."""
    made = braille_pupil_page(worked_sheet(SHEET))
    assert made.brf.count(b"\f") == len(made.pages)
    letters = [from_ascii(line) for line in made.brf.decode("ascii").replace("\f", "").split("\r\n")]
    assert [line for line in letters if line] == [line for line in made.text.decode().split("\n") if line]


def test_a_spanish_page_is_in_spanish_braille() -> None:
    """Its words have their accents; its mathematics is the same."""
    worked = worked_sheet("languages: es\ntitle: Colas\n\n# ¿Cuánto queda?\n1. 7 2/6 - 3\n")
    read = _read(braille_pupil_page(worked))
    assert read == ["Colas", "Nombre _ Fecha _", "¿Cuánto queda?", "1. 7 2/6 - 3 = ____"]
    assert _read(braille_key_page(worked))[0] == "Respuestas"
