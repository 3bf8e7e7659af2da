"""Word problems against what the standards ask of them."""

import pytest

from onewhole.languages.english.words import words_for
from onewhole.problems.needs import needs
from onewhole.problems.story_structure import Structure
from onewhole.sheets.audit import audit
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Header, PictureSetting
from onewhole.sheets.stories import story
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.reading import read_statement
from onewhole.writers.finding_keys import finding_key

#: Like denominators, add and subtract, one whole: 4.NF.B.3.d, CCSSM 2010 (read).
LIKE = ("5 1/3 - 2 2/3", "2 4/5 + 1 3/5", "5/6 - 1/6", "3/8 + 4/8", "4 - 1 3/8")


@pytest.mark.parametrize("typed", LIKE)
def test_word_problems_of_grade_4(typed: str) -> None:
    """Fractions of the same whole, like denominators, add and take away, with picture and equation.

    Source: 4.NF.B.3.d, CCSSM 2010 (read). With a picture set, none of our notes about them speaks.
    """
    strip = words_for("strip")
    for seed in range(8):
        told = story(read_statement(typed), seed=seed, words=strip).problem("1")
        assert len(needs(told.statement).denominators) == 1
        found = audit(WorkedSheet(Sheet((told,), Header(words=strip, picture=PictureSetting.STRIP))))
        keys = set(map(finding_key, found.findings))
        assert not keys & {"K1", "K2", "K3", "K4", "K6", "K7", "K9", "reading", "story"}


def test_the_structures_of_the_trade() -> None:
    """A difference and a sum are told in every situation that has them, compared in both wordings.

    Source: table 1 of the glossary, CCSSM 2010, after Carpenter and Moser (1984); both from memory.
    """
    differences = {story(read_statement("5 1/3 - 2 2/3"), seed=seed).structure for seed in range(9)}
    sums = {story(read_statement("2 4/5 + 1 3/5"), seed=seed).structure for seed in range(9)}
    compared = {Structure.COMPARE, Structure.SMALLER_UNKNOWN, Structure.TURNED}
    assert differences == {Structure.TAKE_FROM, Structure.PART_UNKNOWN, *compared}
    added = {Structure.ADD_TO, Structure.PUT_TOGETHER, Structure.TAKE_FROM}
    assert sums == {*added, Structure.COMPARE, Structure.TURNED}


def test_the_unknown_may_stand_anywhere() -> None:
    """Result, change and start unknown are each told. Source: as above, from memory."""
    for typed in ("9 - 3 1/2", "9 - ? = 3 1/2", "? - 3 1/2 = 5 1/2", "? + 3 1/2 = 9", "3 1/2 + ? = 9"):
        assert story(read_statement(typed)).words.endswith("?")
