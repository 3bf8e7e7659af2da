"""A typed problem told as a word problem, in every form."""

from datetime import UTC, datetime
from fractions import Fraction

import pytest

from onewhole.desk.page.clicks import Sent, click_sent
from onewhole.desk.page.live_page import laid, remedied
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


NOW = datetime(2026, 11, 24, tzinfo=UTC)


def _offered(typed: str) -> list[list[Sent]]:
    """What one click may do about the words of each problem of a page, as it is sent."""
    return [[one.sent for one in problem.remedies] for problem in laid(typed, NOW).problems]


def test_a_problem_is_told_by_one_click() -> None:
    """Beside each problem that can be told stands a click; then there are other words, or none again."""
    plain = "title: Kites\n\n1. 4 x 2/3\n2. 9 - 1 x 4\n3) 26 in = ?\n"
    ((tell_it,), nothing, (third,)) = _offered(plain)
    assert nothing == []
    once = remedied(plain, click_sent(tell_it.key.value, tell_it.labels, tell_it.values))
    assert once.words == "Problem 1 told as a story."
    sheet = read_sheet(once.typed)
    assert sheet.problems[0].story == tell("4 x 2/3").words
    assert sheet.header.words.whole == "strip of kite paper"
    (anew, without), *_ = _offered(once.typed)
    said = {sheet.problems[0].story}
    typed = once.typed
    for _ in range(3):
        typed = remedied(typed, click_sent(anew.key.value, anew.labels)).typed
        said.add(read_sheet(typed).problems[0].story)
    assert len(said) == 3
    assert read_sheet(typed).problems[0].story == sheet.problems[0].story
    back = remedied(typed, click_sent(without.key.value, without.labels)).typed
    assert [one.story for one in read_sheet(back).problems] == ["", "", ""]
    assert "whole:" not in remedied(plain, click_sent(third.key.value, third.labels)).typed


def test_what_is_not_told_is_refused_by_a_click_too() -> None:
    """A page that sends such a click gets the words of the refusal."""
    with pytest.raises(InputError, match="no story is told"):
        remedied("1. 9 - 1 x 4", click_sent("words", ["1"]))
