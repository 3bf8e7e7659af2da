"""Sentences of workings that were said, and were not true of their problem or not in plain words."""

import pytest

from onewhole.desk.page.work import told, work


def _told(problem: str, strategy: str | None = None) -> str:
    """Return a working as it is told, for a class that says strip."""
    return "\n".join(told(work(problem, strategy=strategy), "strip"))


@pytest.mark.parametrize(
    ("problem", "says"),
    [
        ("1000 ? 999", "1 thousand is more than no thousands, and that decides."),
        ("999 ? 1000", "1 thousand is more than no thousands, and that decides."),
        ("4000 ? 3999", "4 thousands are more than 3 thousands, and that decides."),
        ("12.5 ? 3.25", "12 strips are more than 3 strips, and that decides."),
        ("1.2 ? 0.75", "1 strip is more than no strips, and that decides."),
        ("1 1/2 ? 3/4", "1 1/2 is more than one strip. 3/4 is less than one strip."),
        ("5 1/8 ? 4 7/8", "5 strips are more than 4 strips, and that decides."),
        ("4 7/8 ? 5 1/8", "4 strips are fewer than 5 strips, and that decides."),
        ("1 ft 9 in ? 2 ft 1 in", "1 foot is fewer than 2 feet, and that decides."),
    ],
)
def test_the_deciding_unit_is_named(problem: str, says: str) -> None:
    """A number has no thousands; it is not that one of its digits is more than nothing."""
    assert says in _told(problem)


@pytest.mark.parametrize(
    "problem", ["1/4 + 2/4 + 3/4", "24 + 18 + 30", "1 h 20 min + 50 min + 5 min", "5 - 1 + 3 + 2"]
)
def test_in_all_is_said_of_all(problem: str) -> None:
    """While a number is still to come it is so far, and "in all" is said once, last."""
    lines = _told(problem, "units_apart").splitlines()
    ends = [line for line in lines if line.rstrip().endswith("in all.")]
    assert len(ends) <= 1
    assert sum("so far." in line for line in lines) >= 1
    assert all(
        lines.index(line) > max(at for at, one in enumerate(lines) if "so far." in one) for line in ends
    )


def test_one_is_made_in_the_same_form_of_every_unit() -> None:
    """10 tenths make one strip as 10 ones make one ten, and nothing makes 1 strip."""
    said = _told("42.3 + 8.9", "units_apart")
    assert "10 ones make one ten." in said
    assert "make 1 " not in said
    assert "make one strip." in _told("2 4/5 + 1 3/5")
    assert "make 2 strips." in _told("11/4 = ?")


@pytest.mark.parametrize(
    ("problem", "strategy", "says", "never"),
    [
        ("42.3 + 8.9", "jump_on", "lands on the next whole number.", "next strip"),
        ("42.36 + 8.97", "jump_on", "lands on the next tenth.", "next strip"),
        ("42.3 + 8.9", "make_a_whole", "to reach the next whole number", "next strip"),
        ("2 4/5 + 1 3/5", "jump_on", "lands on the next strip.", "whole number"),
        ("28 + 17", "make_a_whole", "to reach the next ten", "strip"),
    ],
)
def test_the_next_of_what_a_small_step_fills(problem: str, strategy: str, says: str, never: str) -> None:
    """A decimal's whole is no strip of paper."""
    said = _told(problem, strategy)
    assert says in said
    assert never not in said


def test_everything_is_counted_in_pieces() -> None:
    """The pieces that are there already are counted with those of the wholes."""
    assert "One strip is 6 sixths, so count everything in sixths." in _told("7 2/6 - 3 5/6", "to_fractions")
