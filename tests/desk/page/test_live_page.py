"""A page while it is typed: drawn, measured, noted, or refused in words; and moved and mended."""

from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.desk.page.clicks import ClickKey, click_sent
from onewhole.desk.page.live_page import MOST_PROBLEMS, Laid, _worked_on, laid, remedied
from onewhole.errors import InputError
from onewhole.findings.click import LineUse, TellAs, UseLine
from onewhole.statements.reading import read_statement
from onewhole.writers.finding_keys import finding_key

ROOM_12 = (Path(__file__).parents[3] / "examples" / "room12" / "sheet.txt").read_text(encoding="utf-8")
NOW = datetime(2026, 11, 24, 18, tzinfo=UTC)


def test_the_page_of_room_12() -> None:
    """It is drawn on two sheets of paper; each says its problems in words, and each problem has its room."""
    page = laid(ROOM_12, NOW)
    assert page.mistakes == ()
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
        "4 lines, 64 by 36 mm; 4.NF.B.3.c",
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
    assert new.mistakes == ()
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
        ("1. 5 -", 1, 7, "a number is missing: here the line ends"),
        ("titel: Kites\n\n1. 5 - 2", 1, 1, "there is no setting “titel”"),
        ("title: Kites \N{KITE}\n\n1. 5 - 2", 1, None, "No font here has the sign \N{KITE}"),
        ("\0", 1, 1, "a hidden sign stands here: character number 0"),
        ("1. " + "9" * 50_000, None, None, "there are 50003 characters, and a page has 40000 at most"),
    ],
)
def test_what_cannot_be_read_is_told_with_its_place(
    typed: str, line: int | None, column: int | None, what: str
) -> None:
    """The first mistake, where it is, and what to do next; there is a page where a problem can be read."""
    page = laid(typed, NOW)
    first = page.mistakes[0]
    assert (first.line, first.column, first.what) == (line, column, what)
    assert first.remedy
    readable = typed.endswith("1. 5 - 2")
    assert (len(page.pages), [one.label for one in page.problems]) == ((1, ["1"]) if readable else (0, []))


def test_one_unreadable_line_leaves_the_page_of_the_others() -> None:
    """Two lines with a mistake are two mistakes; the third is laid out under its own number."""
    page = laid("1. 5 -\n52 - 27\n3. x", NOW)
    assert [one.line for one in page.mistakes] == [1, 3]
    assert [one.label for one in page.problems] == ["2"]
    assert "Problem 2: fifty-two minus twenty-seven." in page.pages[0].words
    assert page.told.endswith("Not on it yet: Problem 1, Problem 3.")
    assert [(one.line, one.name) for one in page.counted] == [(2, "2")]


@pytest.mark.parametrize("typed", ["", "title: Kites\nwhole: strip\n", "class: Room 12\n\n# Look.\n"])
def test_a_page_without_a_problem_is_as_quiet_as_an_empty_one(typed: str) -> None:
    """A new page begins with the settings of its class: nothing is wrong with it."""
    assert laid(typed, NOW) == Laid()


def test_what_no_press_can_set_leaves_the_others() -> None:
    """A sign that no font has, in a story, in words to the pupil and in the title."""
    typed = "title: \N{KITE}\n\n# Look \N{KITE}\n1. 5 - 2 | Five \N{KITE} less two.\n2. 52 - 27"
    page = laid(typed, NOW)
    assert [one.line for one in page.mistakes] == [1, 3, 4]
    assert [one.label for one in page.problems] == ["2"]
    assert laid("1. 5 - 2 | \N{KITE}", NOW).pages == ()


def test_too_many_problems_for_one_night() -> None:
    """The first one too many is named by its line."""
    page = laid("\n".join(f"{at}. {at + 9} - 2" for at in range(1, MOST_PROBLEMS + 3)), NOW)
    assert [one.line for one in page.mistakes] == [MOST_PROBLEMS + 1]


@given(st.text("1234567890/.:)|#-+ ?\n\t\0abz½\N{KITE}<>'&", max_size=60))
def test_nothing_is_raised_whatever_is_typed(typed: str) -> None:
    """There is a page or a mistake, and a page for every problem that can be read."""
    page = laid(typed, NOW)
    assert page.mistakes or page.pages or page == Laid()
    assert bool(page.problems) == bool(page.pages)


def test_a_note_stands_beside_its_lines() -> None:
    """Twins are noted beside both, a budget beside its setting, what is true of the page beside none."""
    notes = {
        finding_key(one.found): one
        for one in laid("minutes: 1\n\n1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6", NOW).notes
    }
    places = {key: [(one.line, one.name) for one in note.places] for key, note in notes.items()}
    assert places["twins"] == [(3, "Problem 1"), (4, "Problem 2")]
    assert (places["minutes"], places["K11"]) == ([(1, "“minutes”")], [])
    assert all(one.remedies for one in notes.values())


def test_many_patterns_found_alike_are_one_note() -> None:
    """8 - 3 1/2 hides two patterns on one line, with one thing to do about both: that is said once."""
    hidden = [one.words for one in laid("1. 8 - 3 1/2", NOW).notes if finding_key(one.found) == "hidden"]
    assert len(hidden) == 1
    assert hidden[0].endswith("The same is true of one other pattern.")


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
    [
        one
        for one in ClickKey
        if one not in {ClickKey.ADD, ClickKey.ORDER, ClickKey.SET, ClickKey.STORY, ClickKey.LINE}
    ],
)
def test_a_remedy_about_a_problem_that_is_not_there(act: ClickKey) -> None:
    """It is refused in words, and nothing is lost."""
    values = ["5 - 2"] if act is ClickKey.ASK_INSTEAD else []
    with pytest.raises(InputError, match="there is no problem 7"):
        remedied("1. 5 - 2", click_sent(act.value, ["7"], values))


def test_a_story_becomes_a_word_problem_by_one_click() -> None:
    """What it asks is offered and never taken by itself; the click writes it before the story."""
    maya = "Maya has 4 1/4 yards of ribbon. She uses 1 3/4 yards. How much is left?"
    typed = f"title: Ribbons\n\n7 2/6 - 3 5/6\n{maya}"
    page = laid(typed, NOW)
    (story,) = page.mistakes
    assert story.is_story
    assert story.place is not None
    assert story.place.name == "Problem 2"
    assert [one.words for one in story.remedies] == ["4 1/4 - 1 3/4?", "4 1/4 + 1 3/4?"]
    sent = story.remedies[0].sent
    now = remedied(typed, click_sent(sent.key.value, sent.labels, sent.values))
    assert now.typed.splitlines()[3].startswith("4 1/4 - 1 3/4 | Maya has 4 1/4 yards of ribbon.")
    assert now.words == "The story asks 4 1/4 - 1 3/4 now."
    mended = laid(now.typed, NOW)
    assert (mended.mistakes, len(mended.problems)) == ((), 2)


@pytest.mark.parametrize(
    ("typed", "click", "now"),
    [
        (
            "Kites and tails\n5 - 2",
            UseLine(1, "Kites and tails", LineUse.TITLE),
            "title: Kites and tails\n\n5 - 2",
        ),
        ("1. 5 - 2\nLook at both.", UseLine(2, "Look at both.", LineUse.WORDS), "1. 5 - 2\n# Look at both."),
        ("Name: ____\n1. 5 - 2", UseLine(1, "Name: ____", LineUse.NOTHING), "1. 5 - 2"),
        (
            "1. Maya has 5 kites.\nTwo fly off.",
            UseLine(1, "1. Maya has 5 kites.", LineUse.JOINED),
            "1. Maya has 5 kites. Two fly off.",
        ),
        ("1) 5 - 2\t\t2) 6 - 3", UseLine(1, "1) 5 - 2\t\t2) 6 - 3", LineUse.SPLIT), "1) 5 - 2\n2) 6 - 3"),
        (
            "2. Kim has 5 cups and 2 more.",
            TellAs(1, "2. Kim has 5 cups and 2 more.", read_statement("5 + 2")),
            "2. 5 + 2 | Kim has 5 cups and 2 more.",
        ),
    ],
)
def test_a_line_is_what_the_teacher_says(typed: str, click: TellAs | UseLine, now: str) -> None:
    """It is offered beside the line, comes back from the browser, and is done."""
    mistake = laid(typed, NOW).mistakes[0 if click.line == 1 else -1]
    assert click in [one.click for one in mistake.remedies]
    sent = next(one for one in mistake.remedies if one.click == click).sent
    assert remedied(typed, click_sent(sent.key.value, sent.labels, sent.values)).typed == now


@pytest.mark.parametrize(
    "values", [["0", "", "words"], ["1", "", "kite"], ["x", "", "words"], ["1", "words"]]
)
def test_a_line_is_nothing_that_no_page_offers(values: list[str]) -> None:
    """It is refused; so is a line that is not there or was changed."""
    with pytest.raises(InputError, match="no such remedy"):
        click_sent("line", values=values)
    with pytest.raises(InputError, match="changed meanwhile"):
        remedied("1. 5 - 2", UseLine(9, "Look.", LineUse.WORDS))
    with pytest.raises(InputError, match="changed meanwhile"):
        remedied("Kim has 6 cups.", TellAs(1, "Kim has 5 cups.", read_statement("5 - 2")))
    with pytest.raises(InputError, match="no story"):
        remedied("# Look.", TellAs(1, "# Look.", read_statement("5 - 2")))


def test_a_click_finds_its_line_where_it_went() -> None:
    """The title was made of a line above it before the click came."""
    click = TellAs(2, "Kim has 5 cups and drinks 2.", read_statement("5 - 2"))
    now = remedied("title: Cups\n\n6 - 2\nKim has 5 cups and drinks 2.", click).typed
    assert now.splitlines()[2:] == ["6 - 2", "5 - 2 | Kim has 5 cups and drinks 2."]


def test_a_remedy_leaves_lines_that_cannot_be_read_yet() -> None:
    """A note about the others is mended, and the unreadable line stands as it was."""
    assert remedied("1. 5 -\n2. 9 - 4", click_sent("new numbers", ["2"])).typed.splitlines()[0] == "1. 5 -"


def test_a_remedy_does_not_spoil_the_sheet() -> None:
    """A setting that is none, or a problem that is none, is refused."""
    for act, value in (("set", "six kites"), ("add", "six kites")):
        with pytest.raises(InputError):
            remedied("1. 5 - 2", click_sent(act, values=[value]))
