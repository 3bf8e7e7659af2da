"""What holds for the wrong worked example of every pattern that has one."""

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Pattern
from onewhole.notations.text import text
from onewhole.sheets.document import Instruction, Sheet
from onewhole.sheets.find_the_slip import false_signs, find_the_slip
from onewhole.sheets.header import Header
from onewhole.sheets.practice import Practice
from onewhole.sheets.reading import read_sheet
from onewhole.statements.reading import read_chains, read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import STRATEGIES
from onewhole.writers.pattern_words import question_on, thought_on
from onewhole.writers.pupil_page import practice_page


@pytest.mark.parametrize("pattern", patterns(), ids=lambda pattern: pattern.id)
def test_one_sign_is_false_and_the_page_does_not_say_which(pattern: Pattern) -> None:
    """Read again as a chain, exactly one equals sign is false; the page names no pattern."""
    model = read_statement(pattern.example.problem)
    for taught in STRATEGIES:
        slip = find_the_slip([model], [pattern.id], taught, label="2")
        if slip is None:
            return
        (chain,) = read_chains(" = ".join(map(text, slip.lines)))
        false = [at + 1 for at in range(len(chain.links) - 1) if not chain.true_at(at)]
        assert false == [slip.sign]
        assert false_signs((slip.lines[slip.sign - 1], slip.would_be)) == ()
        assert slip.problem != model
    slip = find_the_slip([model], [pattern.id], REGROUP_FIRST, label="2")
    sheet = Sheet((Instruction("Work."), *read_sheet("1. 52 - 27").problems), Header())
    said = practice_page(Practice(sheet, None, slip), "Swifts", "delta").content.decode().lower()
    for kept in (
        pattern.name,
        pattern.rule,
        thought_on(pattern, pattern.example_case, ClassWords()),
        question_on(pattern, pattern.example_case, ClassWords()),
        f'"{pattern.id}"',
        pattern.family.value,
    ):
        assert kept.lower() not in said


def test_most_patterns_have_an_example() -> None:
    """Of all patterns, those whose example is a chain with something to find: at least 90."""
    have = [
        pattern.id
        for pattern in patterns()
        if find_the_slip([read_statement(pattern.example.problem)], [pattern.id], REGROUP_FIRST, label="1")
    ]
    print(f"{len(have)} of {len(patterns())}")
    assert len(have) >= 90
