"""A simple rule that would write a pupil's wrong answers, for the teacher's eyes."""

from typing import assert_never

from onewhole.findings.simple_rule import PartMade, SimpleRule
from onewhole.languages.english.making import told
from onewhole.sentences.sentence import Sentences


def simple_rule_told(rule: SimpleRule) -> Sentences:
    """Say how all the wrong answers would come about.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(simple_rule_told(SimpleRule(PartMade.WORKED, PartMade.LARGER, PartMade.FIRST)))
    'One rule would write all of them: wholes worked as asked; pieces the larger number; denominator kept.'
    """
    wholes, pieces = map(_made, (rule.wholes, rule.pieces))
    size = "kept" if rule.size is PartMade.FIRST else _made(rule.size)
    return told(
        ("One rule would write all of them: wholes", f"{wholes}; pieces", f"{pieces}; denominator", size)
    )


def _made(makes: PartMade) -> str:
    match makes:
        case PartMade.WORKED:
            return "worked as asked"
        case PartMade.ADDED:
            return "added"
        case PartMade.APART:
            return "the smaller number taken from the larger"
        case PartMade.FIRST:
            return "of the first number"
        case PartMade.SECOND:
            return "of the second number"
        case PartMade.LARGER:
            return "the larger number"
        case PartMade.SMALLER:
            return "the smaller number"
        case PartMade.TIMES:
            return "multiplied"
        case PartMade.ONE_FEWER:
            return "worked as asked and one fewer"
        case PartMade.TWO_FEWER:
            return "worked as asked and two fewer"
        case PartMade.TWICE_FIRST:
            return "twice those of the first number"
        case PartMade.MISSING:
            return "as many as both lack to a whole"
        case PartMade.SIZE:
            return "as many as the denominator says"
        case PartMade.PIECES_ADDED:
            return "as many as both have pieces"
        case PartMade.WHOLE:
            return "the first whole number"
        case PartMade.NOTHING:
            return "left out"
        case _:
            assert_never(makes)
