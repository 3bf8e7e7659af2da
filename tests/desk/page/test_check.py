"""Typed equalities checked and told."""

from onewhole.desk.page.check import as_object, check, told


def test_true_and_false_are_told_with_their_place() -> None:
    """A true chain in two lines; a false sign with both sides, what would be true, and the pattern."""
    assert told(check("1/2 = 2/4")) == ("1/2 = 2/4", "  true, every equals sign")
    assert told(check("9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 7/8")) == (
        "9 5/8 - 4 6/8 = 9 13/8 - 4 6/8 = 5 7/8",
        "  line 1, column 17: 9 5/8 - 4 6/8 is not equal to 9 13/8 - 4 6/8",
        "    true would be: 9 5/8 - 4 6/8 = 8 13/8 - 4 6/8",
        "    fits A02: opens a whole and still counts it",
    )


def test_a_run_on_equals_sign_is_known() -> None:
    """Its acts are written a line each, and no pattern is named."""
    said = told(check("3 + 4 = 7 + 5 = 12"))
    assert said[2].startswith("    Each act makes sense, but the equals sign does not")
    assert said[3:] == ("    3 + 4 = 7", "    7 + 5 = 12")


def test_many_lines_are_many_chains() -> None:
    """Each line that does not begin with = is a chain of its own, and has its own place."""
    found = check("7 2/6 = 6 8/6\n7 2/6\n= 6 7/6")
    assert [one.true for one in found] == [True, False]
    assert (found[1].false[0].line, found[1].false[0].column) == (3, 3)
    assert as_object(found)["true"] is False


def test_the_problem_may_be_named() -> None:
    """Then the patterns are those of the problem that is worked on."""
    typed = "8 13/8 - 4 6/8 = 5 1/8"
    assert check(typed)[0].false[0].patterns == ()
    assert check(typed, problem="9 5/8 - 4 6/8")[0].false[0].patterns == ("A01",)
