"""The ideas of a class: who has each, the problem to show, what was written there."""

from onewhole.marking.diagnosis.finding import findings
from onewhole.marking.grouping.class_ideas import ClassIdea, class_ideas
from tests.kit.answers import all_right, by_pattern, marked, page

PAGE = page()


def _ideas(rows: dict[str, list[str]]) -> tuple[ClassIdea, ...]:
    marks = marked(PAGE, rows)
    return class_ideas(marks.pupils, findings(marks))


def test_that_of_most_pupils_comes_first_with_all_who_have_it() -> None:
    """Each pupil stands in one idea; who is right, or has no steady pattern, in none."""
    found = _ideas(
        {
            "K01": by_pattern("A04", PAGE),
            "K02": by_pattern("A02", PAGE),
            "K03": by_pattern("A02", PAGE),
            "K04": all_right(PAGE),
            "K05": ["9 1/7", "1 1/7", *all_right(PAGE)[2:]],
        }
    )
    assert [(one.idea, one.pupils) for one in found] == [("A02", ("K02", "K03")), ("A04", ("K01",))]


def test_the_problem_to_show_is_one_that_most_of_them_answered_so() -> None:
    """K03 has the third problem right, so that the fourth is shown, with what both wrote there."""
    fits = by_pattern("A02", PAGE)
    right = all_right(PAGE)
    (alone,) = _ideas({"K02": fits})
    assert (alone.show, alone.wrote and alone.wrote.text) == ("3", fits[2])
    (both,) = _ideas({"K02": fits, "K03": [*fits[:2], right[2], *fits[3:]]})
    assert (both.show, both.wrote and both.wrote.text) == ("4", fits[3])
    assert both.fits["K03"] == both.fits["K02"][1:]


def test_a_class_that_is_right_has_no_ideas() -> None:
    """Nothing is told of it."""
    assert _ideas({"K01": all_right(PAGE)}) == ()
