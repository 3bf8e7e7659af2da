"""A typed problem told as a word problem, in every form."""

from fractions import Fraction

import pytest

from onewhole.desk.page.stories import as_object, tell, told
from onewhole.errors import InputError
from onewhole.sheets.reading import read_sheet


def test_a_story_and_its_line() -> None:
    """The line is read on a sheet as it stands, and asks the same problem with the same words."""
    story = tell("5 1/3 - 2 2/3", kind="compare", whole="strip")
    words, about, whole, line = told(story)
    assert words.startswith("All the strips are the same size. The red kite takes 5 1/3 strips.")
    assert about == "  compare; reads below grade 1"
    assert whole == "  for a sheet with “whole: strip”:"
    (problem,) = read_sheet(line.strip()).problems
    assert (problem.typed, problem.story) == ("5 1/3 - 2 2/3", words)


def test_as_an_object() -> None:
    """The grade is exact until a door writes it."""
    found = as_object(tell("52 - 27"))
    assert list(found) == ["problem", "story", "kind", "whole", "stories", "reading_grade", "line"]
    assert (found["problem"], found["kind"], found["whole"]) == (
        "52 - 27",
        "take from",
        "strip of kite paper",
    )
    assert isinstance(found["reading_grade"], Fraction)
    assert found["line"] == f"52 - 27 | {found['story']}"


def test_hard_words_are_told_as_hard() -> None:
    """A long name for the whole makes the words hard, and that is said."""
    whole = "rectangular decorative material"
    assert told(tell("5 - 2", whole=whole))[1].endswith(", above 6: shorter words may help")


@pytest.mark.parametrize(
    ("problem", "kind", "whole"),
    [
        ("7 2/0 - 3", None, None),
        ("5 - 2", "start", None),
        ("5 - 2", "put together", None),
        ("5 - 2", None, " "),
    ],
)
def test_refusals(problem: str, kind: str | None, whole: str | None) -> None:
    """What cannot be told is refused with what to do next."""
    with pytest.raises(InputError) as refused:
        tell(problem, kind=kind, whole=whole)
    assert refused.value.remedy
