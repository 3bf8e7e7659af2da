"""A rule outside the catalogue in a sentence."""

import pytest

from onewhole.findings.simple_rule import PartMade, SimpleRule
from onewhole.languages.english.simple_rule import simple_rule_told
from onewhole.notations.sentences.text import text_of


@pytest.mark.parametrize("makes", PartMade)
def test_every_way_has_words_of_its_own(makes: PartMade) -> None:
    """In each of the three places, and no two ways alike."""
    told = [text_of(simple_rule_told(SimpleRule(one, one, one))) for one in PartMade]
    assert len(set(told)) == len(PartMade)
    assert text_of(simple_rule_told(SimpleRule(makes, makes, makes))).startswith(
        "One rule would write all of"
    )


def test_the_denominator_of_the_first_number_is_kept() -> None:
    """As a teacher would say it."""
    told = text_of(simple_rule_told(SimpleRule(PartMade.WORKED, PartMade.ADDED, PartMade.FIRST)))
    assert told == (
        "One rule would write all of them: wholes worked as asked; pieces added; denominator kept."
    )
