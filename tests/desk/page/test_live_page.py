"""A page while it is typed: drawn, measured, noted, or refused in words; and moved and mended."""

from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from onewhole.desk.page.clicks import ClickKey, click_sent
from onewhole.desk.page.live_page import MOST_PROBLEMS, _worked_on, laid, moved, remedied
from onewhole.errors import InputError
from onewhole.findings.click import NumberLines
from onewhole.writers.finding_keys import finding_key

ROOM_12 = (Path(__file__).parents[3] / "examples" / "room12" / "sheet.txt").read_text(encoding="utf-8")
NOW = datetime(2026, 11, 24, 18, tzinfo=UTC)


def test_the_page_of_room_12() -> None:
    """It is drawn on two sheets of paper; each says its problems in words, and each problem has its room."""
    page = laid(ROOM_12, NOW)
    assert page.readable
    assert page.told == "2 pages, about 17 minutes, 12 problems, 10 of them with regrouping."
    assert [one.svg[:4] for one in page.pages] == [b"<svg", b"<svg"]
    first, second = (one.words for one in page.pages)
    assert "Problem 1: five and four sixths minus two and one sixth." in first
    assert "The kite club cuts tails" in first
    assert "Problem 12: nine and seven twelfths" in second
    assert all(
        (f"Problem {one.label}:" in first) != (f"Problem {one.label}:" in second) for one in page.problems
    )
    third = page.problems[2]
    assert (third.label, third.line, third.asks, third.room) == (
        "3",
        15,
        "4 1/5 - 1 2/5",
        "4 lines, 64 by 36 mm",
    )
    assert page.notes == ()


@pytest.mark.parametrize(
    "typed",
    [
        ROOM_12.replace("grade: 4\n", ""),
        ROOM_12.replace("2 1/6", "1 1/6"),
        "2. 8 1/6 - 4 4/6\n1. 7 2/6 - 3 5/6",
        "strategy: count up\n\n1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6",
    ],
)
def test_a_keystroke_works_only_what_is_new(typed: str) -> None:
    """What is remembered of the page before changes nothing: all is as for a new page."""
    _worked_on.cache_clear()
    new = laid(typed, NOW)
    _worked_on.cache_clear()
    for before in (ROOM_12, "1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6"):
        laid(before, NOW)
    assert new.readable
    assert laid(typed, NOW) == new
    worked = _worked_on.cache_info().misses
    laid(typed.replace("Kite", "Kites"), NOW)
    assert _worked_on.cache_info().misses == worked, "no problem is worked again for a letter of the title"


def test_the_picture_stands_in_an_address() -> None:
    """A browser needs nothing else to show it."""
    (page,) = laid("1. 5 - 2", NOW).pages
    assert page.address.startswith("data:image/svg+xml;base64,PHN2Zy")


@pytest.mark.parametrize(
    ("typed", "line", "column", "what"),
    [
        ("", 1, 1, "there is no problem on this sheet"),
        ("1. 5 -", 1, 7, "a number is missing: here the line ends"),
        ("titel: Kites\n\n1. 5 - 2", 1, 1, "there is no setting “titel”"),
        ("title: Kites \N{KITE}\n\n1. 5 - 2", 1, None, "No font here has the sign \N{KITE}"),
        ("\0", 1, 1, "this line has no label"),
        ("1. " + "9" * 50_000, None, None, "there are 50003 characters, and a page has 40000 at most"),
    ],
)
def test_what_cannot_be_read_is_told_with_its_place(
    typed: str, line: int | None, column: int | None, what: str
) -> None:
    """The first mistake, where it is, and what to do next; there is no page beside it."""
    page = laid(typed, NOW)
    first = page.mistakes[0]
    assert (first.line, first.column, first.what) == (line, column, what)
    assert first.remedy
    assert (page.pages, page.problems, page.notes) == ((), (), ())


def test_every_mistake_is_told() -> None:
    """Two lines with a mistake are two mistakes."""
    assert [one.line for one in laid("1. 5 -\n2. 52 - 27\n3. x", NOW).mistakes] == [1, 3]


def test_too_many_problems_for_one_night() -> None:
    """The first one too many is named by its line."""
    page = laid("\n".join(f"{at}. {at + 9} - 2" for at in range(1, MOST_PROBLEMS + 3)), NOW)
    assert [one.line for one in page.mistakes] == [MOST_PROBLEMS + 1]


@settings(max_examples=40, deadline=None)
@given(st.text("1234567890/.:)|#-+ ?\n\t\0abz½\N{KITE}<>'&", max_size=60))
def test_nothing_is_raised_whatever_is_typed(typed: str) -> None:
    """There is a page or a mistake, never both and never neither."""
    page = laid(typed, NOW)
    assert bool(page.mistakes) != bool(page.pages)


def test_a_note_stands_beside_its_lines() -> None:
    """Twins are noted beside both, a budget beside its setting, what is true of the page beside none."""
    notes = {
        finding_key(one.found): one
        for one in laid("minutes: 1\n\n1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6", NOW).notes
    }
    assert (notes["twins"].lines, notes["minutes"].lines, notes["K11"].lines) == ((3, 4), (1,), ())
    assert all(one.remedies for one in notes.values())


def test_many_patterns_found_alike_are_one_note() -> None:
    """A bare 5 - 2 hides every pattern of long subtraction: that is said once."""
    hidden = [one.words for one in laid("1. 5 - 2", NOW).notes if finding_key(one.found) == "hidden"]
    assert len(hidden) == 1
    assert hidden[0].endswith("other patterns.")


def test_a_click_takes_the_note_away() -> None:
    """The remedy of a note comes back from the browser as words, and is done."""
    typed = "1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6"
    offered = (
        next(one for one in laid(typed, NOW).notes if finding_key(one.found) == "twins").remedies[0].sent
    )
    click = click_sent(offered.key.value, offered.labels, offered.values)
    now = remedied(typed, click)
    assert now.words.startswith("Problem 2 asks ")
    assert "twins" not in {finding_key(one.found) for one in laid(now.typed, NOW).notes}


@pytest.mark.parametrize(("act", "labels", "values"), [("burn", [], []), ("ask instead", ["1"], [])])
def test_a_remedy_that_no_page_offers(act: str, labels: list[str], values: list[str]) -> None:
    """It is refused."""
    with pytest.raises(InputError, match="no such remedy"):
        click_sent(act, labels, values)


@pytest.mark.parametrize(
    "act",
    [one for one in ClickKey if one not in {ClickKey.ADD, ClickKey.ORDER, ClickKey.SET, ClickKey.NUMBER}],
)
def test_a_remedy_about_a_problem_that_is_not_there(act: ClickKey) -> None:
    """It is refused in words, and nothing is lost."""
    values = ["5 - 2"] if act is ClickKey.ASK_INSTEAD else []
    with pytest.raises(InputError, match="there is no problem 7"):
        remedied("1. 5 - 2", click_sent(act.value, ["7"], values))


def test_moving_tells_what_it_did() -> None:
    """Up, down, beyond an end, and nowhere."""
    typed = "1. 5 - 2\n# Look first.\n2. 6 - 3\n3. 7 - 4"
    up = moved(typed, "3", 2)
    assert (up.typed, up.words) == (
        "1. 5 - 2\n# Look first.\n2. 7 - 4\n3. 6 - 3",
        "Problem 3 is number 2 of 3 now.",
    )
    assert moved(typed, "1", 0).words == "Problem 1 stays."
    assert moved(typed, "1", 99).typed == "1. 6 - 3\n# Look first.\n2. 7 - 4\n3. 5 - 2"
    with pytest.raises(InputError, match="no problem 9"):
        moved(typed, "9", 1)


def test_lines_without_a_label_are_numbered_by_a_click() -> None:
    """Pasted problems become problems, though the sheet cannot be read yet."""
    typed = "title: Kites\n\n# Look first.\n7 2/6 - 3 5/6\n 52 - 27"
    page = laid(typed, NOW)
    assert [[one.click for one in mistake.remedies] for mistake in page.mistakes] == [
        [NumberLines()],
        [NumberLines()],
    ]
    now = remedied(typed, page.mistakes[0].remedies[0].click)
    assert now.typed == "title: Kites\n\n# Look first.\n1. 7 2/6 - 3 5/6\n2. 52 - 27"
    assert laid(now.typed, NOW).readable


def test_a_remedy_does_not_spoil_the_sheet() -> None:
    """A setting that is none, or a problem that is none, is refused."""
    for act, value in (("set", "six kites"), ("add", "six kites")):
        with pytest.raises(InputError):
            remedied("1. 5 - 2", click_sent(act, values=[value]))
