"""Checked chains as JSON objects."""

from onewhole.marking.reading.checking import RUN_ON, check
from onewhole.writers.check_json import checked_object


def test_true_only_when_every_chain_is() -> None:
    """Each chain has its own `true`, and the object is true when all are."""
    found = checked_object(check("7 2/6 = 6 8/6\n7 2/6 = 6 7/6"))
    chains = found["chains"]
    assert isinstance(chains, list)
    assert (found["true"], [chain["true"] for chain in chains]) == (False, [True, False])
    assert checked_object(check("7 2/6 = 6 8/6"))["true"] is True


def test_a_run_on_sign_is_told_and_parted() -> None:
    """It carries the words for it and, under `separate`, the same work a line an act."""
    chains = checked_object(check("3 + 4 = 7 + 5 = 12"))["chains"]
    assert isinstance(chains, list)
    (sign,) = chains[0]["false"]
    assert (sign["runs_on"], sign["told"], sign["would_be"]) == (True, RUN_ON, "7")
    assert chains[0]["separate"] == ["3 + 4 = 7", "7 + 5 = 12"]


def test_a_false_sign_has_its_place() -> None:
    """Line and column are those of the side after it in the typed text; `told` is for run-on signs alone."""
    chains = checked_object(check("2 - 5 + 4 = 2"))["chains"]
    assert isinstance(chains, list)
    (sign,) = chains[0]["false"]
    assert (sign["line"], sign["column"], sign["right"]) == (1, 13, "2")
    assert "told" not in sign
