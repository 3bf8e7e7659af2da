"""The docs page on practice says what the code does."""

import re
from pathlib import Path

from onewhole.languages.english.word_problems.frames import FRAMES
from onewhole.languages.table import SPOKEN
from onewhole.marking.reading.pass_mark import USUAL
from onewhole.notations.text import text
from onewhole.problems.story_structure import Structure
from onewhole.sheets.earlier_skill import earlier_skill
from onewhole.sheets.find_the_slip import false_signs
from onewhole.sheets.mastery import PROBLEMS
from onewhole.sheets.practice import BESIDE_A_SLIP, PRACTICE
from onewhole.sheets.reading_level import AIM
from onewhole.statements.reading import read_chains, read_statement

DOCS = Path(__file__).parents[2] / "docs"
TYPED = (DOCS / "practice.md").read_text(encoding="utf-8")
PAGE = " ".join(re.sub(r"^> ?", "", TYPED, flags=re.MULTILINE).split())
COUNTED = {4: "four", 5: "five", 6: "six"}


def test_the_kinds_of_stories_are_all_there() -> None:
    """A row each, and no other."""
    rows = re.findall(r"\| `([a-z-]+)` \|", PAGE)
    assert rows == [structure.value.replace(" ", "-") for structure in Structure]


def test_the_numbers_are_those_of_the_code() -> None:
    """How many problems, how many beside a slip, how many in a check, the grade and the bar."""
    assert f"A page holds {COUNTED[PRACTICE]} problems" in PAGE
    assert f"a page has {COUNTED[BESIDE_A_SLIP]} problems and then one wrong answer" in PAGE
    assert f"new numbers, {COUNTED[PROBLEMS]} problems" in PAGE
    assert f"above grade {AIM}" in PAGE
    assert USUAL.shown in PAGE
    decision = (DOCS / "decisions" / "0010-practice-stories-and-slips.md").read_text(encoding="utf-8")
    assert f"{len(FRAMES)} written frames" in decision


def test_the_wrong_answer_is_wrong_in_one_place() -> None:
    """The sample has the words of the page and exactly one false equals sign."""
    assert f"**{SPOKEN.page.wrong}.** {SPOKEN.page.find_the_slip}" in PAGE
    (typed,) = re.findall(rf"{re.escape(SPOKEN.page.find_the_slip)} ([0-9/ =-]+[0-9])", PAGE)
    (chain,) = read_chains(typed)
    assert len(false_signs([link.says for link in chain.links])) == 1


def test_the_step_easier_is_the_one_that_is_named() -> None:
    """9 6/8 - 4 5/8 for 9 5/8 - 4 6/8."""
    (easier, asked) = re.findall(r"(9 \S+ - 4 \S+) comes back where (9 \S+ - 4 \S+) was missed", PAGE)[0]
    found = earlier_skill(read_statement(asked))
    assert found is not None
    assert text(found) == easier
