"""What the standards expect, in words."""

from onewhole.findings.standard import GRADE_4, LARGEST_WHOLE, StandardCode
from onewhole.languages.english.standards import rule, standard_met
from onewhole.notations.sentences.text import text_of
from onewhole.number.quantity import Quantity


def _numbers(code: StandardCode) -> list[int]:
    """Return the numbers that a rule speaks of."""
    found = [number for sentence in rule(code) for number in sentence.numbers()]
    return [int(number.value) for number in found if isinstance(number, Quantity)]


def test_every_check_has_a_rule_of_its_own() -> None:
    """Thirteen checks, thirteen rules; each is one sentence."""
    rules = {text_of(rule(code)) for code in StandardCode}
    assert len(rules) == len(StandardCode)
    assert all(len(rule(code)) == 1 for code in StandardCode)


def test_a_rule_tells_the_numbers_that_are_checked() -> None:
    """The denominators and the largest number are those of the check itself."""
    assert _numbers(StandardCode.GRADE_4_DENOMINATORS) == [4, *sorted(GRADE_4)]
    assert _numbers(StandardCode.LARGEST_NUMBER) == [4, LARGEST_WHOLE]
    assert text_of(rule(StandardCode.LARGEST_NUMBER)).endswith(" 1,000,000.")


def test_every_check_tells_what_to_do() -> None:
    """It is an order: it begins with what a teacher does."""
    begins = {text_of(standard_met(code)).partition(" ")[0] for code in StandardCode}
    assert begins == {"Keep", "Put", "Leave", "Set", "Name", "Use", "Multiply", "Mix"}
