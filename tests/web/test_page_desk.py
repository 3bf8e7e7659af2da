"""The Page desk without a browser: what its acts answer, what they refuse."""

import json
import re
from collections.abc import Iterator
from datetime import timedelta
from html import escape, unescape
from io import BytesIO
from pathlib import Path

import pikepdf
import pytest

from onewhole.desk.classes.class_records import night_pages, set_night, start_room
from onewhole.desk.page.examples import EXAMPLES, STORY, setting_examples, story_buttons
from onewhole.desk.page.kept_pages import kept_versions
from onewhole.desk.page.live_page import laid
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.sheets import newest_sheets
from tests.kit.busy import busy
from tests.kit.doors import NOW, Opened, opened
from tests.kit.waiting import until

AT = "/mine/1/page"
TWINS = "title: Kites\n\n1. 7 2/6 - 3 5/6\n2. 8 1/6 - 4 4/6"


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Opened]:
    """A class of two pupils."""
    with opened(tmp_path) as made:
        start_room(made.door.books["mine"], "Room 12", 2, NOW)
        yield made


def test_an_empty_desk_and_a_kept_page(door: Opened) -> None:
    """What was typed stands in the page as text, and a page that is not there is none."""
    assert "New page" in door.get(AT).text
    told = json.loads(door.post(f"{AT}/saved", typed="title: <b>\n\n1. 5 - 2", sheet="").text)
    assert (told["version"], told["goes"]) == (1, f"{AT}/1")
    page = door.get(f"{AT}/1").text
    assert "title: &lt;b&gt;\n\n1. 5 - 2</textarea>" in page
    assert "<b>" not in page
    assert door.get(f"{AT}/2").status == 404


def test_the_page_is_laid_out(door: Opened) -> None:
    """Pictures, rooms and notes come as JSON; so do mistakes, and neither is a refusal."""
    told = json.loads(door.post(f"{AT}/live", typed=TWINS.replace("\n", "\r\n")).text)
    assert told["mistakes"] == []
    assert told["pages"][0]["picture"].startswith("data:image/svg+xml;base64,")
    assert [one["label"] for one in told["problems"]] == ["1", "2"]
    named = [{"line": 3, "name": "Problem 1"}, {"line": 4, "name": "Problem 2"}]
    assert told["notes"][0]["places"] == named
    part = json.loads(door.post(f"{AT}/live", typed="5 - 2\nKim has 5 cups and drinks 2.\n6 -").text)
    assert [(one["story"], one["places"][0]["name"]) for one in part["mistakes"]] == [
        (True, "Problem 2"),
        (False, "Problem 3"),
    ]
    assert part["mistakes"][0]["remedies"][0] == {
        "act": "story",
        "words": "5 - 2?",
        "labels": [],
        "values": ["2", "Kim has 5 cups and drinks 2.", "5 - 2"],
    }
    assert [one["label"] for one in part["problems"]] == ["1"]
    assert [one["name"] for one in part["counted"]] == ["1", "2", "3"]


def test_a_click_and_a_move(door: Opened) -> None:
    """Both answer with what is typed then."""
    told = json.loads(door.post(f"{AT}/mended", typed=TWINS, act="leave out", label="2").text)
    assert told["typed"] == "title: Kites\n\n1. 7 2/6 - 3 5/6"
    assert door.post(f"{AT}/mended", typed="Look twice.\n6 - 3", act="line", value="1").status == 422
    told = json.loads(door.post(f"{AT}/moved", typed=TWINS, label="2", by="-1").text)
    assert told["typed"] == "title: Kites\n\n1. 8 1/6 - 4 4/6\n2. 7 2/6 - 3 5/6"
    assert (told["place"], told["line"]) == (1, 3)


def test_a_label_is_what_the_reader_takes_for_one(door: Opened) -> None:
    """The page has no grammar of its own: the problem of a line is moved where the server reads one."""
    told = json.loads(door.post(f"{AT}/moved", typed="1)7 2/6 - 3 5/6\n2)5 - 2", line="2", by="-1").text)
    assert (told["typed"], told["place"], told["line"]) == ("1)5 - 2\n2)7 2/6 - 3 5/6", 1, 1)
    told = json.loads(door.post(f"{AT}/moved", typed="# Look.\n1. 5 - 2", line="1", by="1").text)
    assert (told["typed"], told["words"], told["place"]) == (
        "# Look.\n1. 5 - 2",
        "There is no problem on this line.",
        0,
    )


def test_versions_stay(door: Opened) -> None:
    """An earlier one can be read again."""
    door.post(f"{AT}/saved", typed=TWINS, sheet="")
    door.post(f"{AT}/saved", typed="1. 5 - 2", sheet="1", saw="1")
    assert json.loads(door.get(f"{AT}/1/version/1").text)["typed"] == TWINS
    assert door.get(f"{AT}/1/version/3").status == 422
    assert len(kept_versions(door.door.books["mine"], 1)) == 2


def test_set_for_a_night(door: Opened) -> None:
    """It goes to the Week; what cannot be printed stays on the desk."""
    told = json.loads(door.post(f"{AT}/set", typed=TWINS, sheet="", day="2026-09-01").text)
    assert told["goes"] == "/mine/1/week?of=2026-09-01#night-1"
    assert [one.kept.typed for one in night_pages(door.door.books["mine"], 1)] == [TWINS]
    assert door.post(f"{AT}/set", typed="1. 5 -", sheet="1", saw="1", day="2026-09-02").status == 422
    assert door.post(f"{AT}/set", typed=TWINS, sheet="1", day="soon").status == 422


def test_print(door: Opened) -> None:
    """What is typed comes as PDF."""
    with pikepdf.open(BytesIO(door.post(f"{AT}/printed", typed=TWINS, print="key").content)) as pdf:
        assert len(pdf.pages) == 1
    with pikepdf.open(BytesIO(door.post(f"{AT}/printed", typed=TWINS, print="together").content)) as pdf:
        assert len(pdf.pages) == 4


def test_compose(door: Opened) -> None:
    """The problems of the last nights do not come again where that is wished."""
    wishes = {"kind": "subtract", "number": "3", "denominators": "6", "regrouping": "any", "minutes": ""}
    first = made(door, typed="title: Kites", seed="1", **wishes)["typed"]
    assert first.startswith("title: Kites\n")
    door.post(f"{AT}/set", typed=first, sheet="", day="2026-09-01")
    again = made(door, typed="", seed="1", again="no", **wishes)["typed"]
    assert not set(asked(first)) & set(asked(again))


def test_compose_what_is_left_open(door: Opened) -> None:
    """A class without answers leaves nothing open; its recipe is kept with the page that it made."""
    wishes = {"kind": "subtract", "number": "3", "denominators": "6", "regrouping": "any", "left": "yes"}
    told = made(door, typed="", **wishes)
    assert "recipe" not in told["typed"]
    door.post(f"{AT}/saved", typed=told["typed"], sheet="", recipe=told["recipe"])
    (kept,) = newest_sheets(door.door.books["mine"])
    assert kept.recipe == told["recipe"]


WISHES = {"kind": "subtract", "number": "3", "denominators": "6", "regrouping": "any"}


def test_what_was_composed_waits_where_the_page_was_left(door: Opened) -> None:
    """It stands on the desk unsaved when it is looked at; the kept page is as it was."""
    door.post(f"{AT}/saved", typed=TWINS, sheet="")
    with busy(door.door.jobs):
        goes = door.post(f"{AT}/composed", typed=TWINS, sheet="1", **WISHES).goes
        assert f'<a href="{goes}">A page is composed</a>' in door.get("/mine/1/week").text
        assert "Waits for other work to end" in door.get(goes).text
    told = over(door, goes.removeprefix("/under-way/"))
    shown = door.get(goes).text
    assert "The page is composed." in shown
    assert f'href="{told["goes"]}">Look at it' in shown
    desk = door.get(told["goes"]).text
    assert f"{told['typed']}</textarea>" in desk
    assert f'data-saved="{TWINS}" data-recipe="{told["recipe"]}"' in desk
    assert kept_versions(door.door.books["mine"], 1)[0].typed == TWINS
    assert f"{TWINS}</textarea>" in door.get(f"{AT}/1").text
    elsewhere = door.get(f"{AT}?made={told['goes'].partition('=')[2]}").text
    assert "not remembered any more" in elsewhere
    assert told["typed"] not in elsewhere


def test_what_is_due_comes_back_where_it_is_asked_for(door: Opened) -> None:
    """A comparison that was on a page three months ago stands on the composed page, with new numbers."""
    long_ago = door.door.today() - timedelta(days=90)
    set_night(door.door.books["mine"], 1, "1. 3/8 ? 5/8", long_ago, door.door.now())
    wishes = {**WISHES, "typed": "", "sheet": ""}
    without, asked = made(door, **wishes)["typed"], made(door, **wishes, due="yes")["typed"]
    assert " ? " not in without
    (back,) = (problem for problem in read_sheet(asked).problems if " ? " in problem.typed)
    assert back.typed != "3/8 ? 5/8"


@pytest.mark.asvs("V2.2.3")
def test_wishes_that_clash(door: Opened) -> None:
    """Twenty problems in one minute: told in words; it leads back, with nothing to look at."""
    wishes = {**WISHES, "number": "20", "minutes": "1"}
    goes = door.post(f"{AT}/composed", typed=TWINS, sheet="", **wishes).goes
    told = over(door, goes.removeprefix("/under-way/"))
    assert "minute" in str(told["refused"])
    shown = door.get(goes).text
    assert "Not done." in shown
    assert "Look at it" not in shown
    assert f'href="{AT}">Back' in shown


def made(door: Opened, **fields: str) -> dict[str, str]:
    """Compose as the script does, and wait for it."""
    begun = json.loads(door.post(f"{AT}/composed", script="yes", **fields).text)
    told = over(door, begun["work"])
    assert not told["refused"]
    return told


def over(door: Opened, work: str) -> dict[str, str]:
    """Return what is told of work that has ended."""

    def told() -> dict[str, str] | None:
        now: dict[str, str] = json.loads(door.get(f"/under-way/{work}/now").text)
        return now if now["ended"] else None

    return until(told, "the end of the work")


def asked(typed: str) -> list[str]:
    """Return the problems without their labels."""
    return [line.partition(". ")[2] for line in typed.splitlines() if line[:1].isdigit()]


@pytest.mark.parametrize(
    ("act", "fields"),
    [
        ("live", {}),
        ("mended", {"typed": TWINS, "act": "burn"}),
        ("mended", {"typed": TWINS, "act": "leave out", "label": "<script>"}),
        ("mended", {"typed": TWINS, "act": "set", "value": "no setting"}),
        ("mended", {"typed": TWINS, "act": "add", "value": "=HYPERLINK()"}),
        ("mended", {"typed": "1. 5 -", "act": "order"}),
        ("moved", {"typed": TWINS, "label": "9", "by": "1"}),
        ("moved", {"typed": TWINS, "label": "1", "by": "5"}),
        ("moved", {"typed": TWINS, "label": "1", "to": "-1"}),
        ("composed", {"typed": "", "kind": "juggle"}),
        ("composed", {"typed": "", "kind": "subtract", "number": "six"}),
        ("composed", {"typed": "", "kind": "subtract", "sheet": "x"}),
        ("saved", {"typed": "#" * 50_000, "sheet": ""}),
        ("saved", {"typed": "1. 5 - 2", "sheet": "x"}),
        ("saved", {"typed": "1. 5 - 2", "sheet": "", "recipe": "six kites"}),
        ("printed", {"typed": TWINS, "print": "../key"}),
    ],
)
def test_what_is_refused(door: Opened, act: str, fields: dict[str, str]) -> None:
    """Words, no fault."""
    assert door.post(f"{AT}/{act}", **fields).status == 422


def test_a_page_that_is_not_there(door: Opened) -> None:
    """It cannot be saved, and nothing is kept for it."""
    assert door.post(f"{AT}/saved", typed="1. 5 - 2", sheet="7", saw="1").status == 404
    assert door.post(f"{AT}/composed", typed="1. 5 - 2", sheet="7", kind="subtract").status == 404


def test_a_page_begins_with_a_problem_that_comes_back(door: Opened) -> None:
    """It stands on the desk as typed and not saved, also where it cannot be read."""
    shown = door.get("/mine/1/page?with=9%204%2F8%20%2B%209%201%2F8")
    assert "\n9 4/8 + 9 1/8\n</textarea>" in shown.text
    other = door.get("/mine/1/page?with=nine%0A2.%20%3Cb%3E")
    assert "\nnine\n2. &lt;b&gt;\n</textarea>" in other.text


def test_help_is_reached_from_every_page_and_its_examples_are_right(door: Opened) -> None:
    """Each stands there to be copied, is read, and each of its problems is worked; so does every setting."""
    shown = door.get("/mine/1/help").text
    assert unescape(shown).count(STORY) >= 2
    regions = re.findall(r'role="region" aria-label="([^"]+)"|<h2 id="[^"]+">([^<]+)', shown)
    names = [(label or heading).casefold() for label, heading in regions]
    assert len(names) == len(set(names)) > 12, "no two parts of a page are called the same"
    for name, typed in EXAMPLES.items():
        assert f">{escape(typed)}</pre>" in shown, name
        worked = WorkedSheet(read_sheet(typed))
        rows = [one for one in typed.split("\n") if one and "# " not in one]
        asked = [one for one in rows if one.startswith("plot") or ": " not in one]
        assert len(worked.problems) == len(asked)
        assert all(one.answer is not None for one in worked.problems), name
    for one in setting_examples():
        assert f'<td class="typed">{one.typed}</td>' in shown
        before = "languages: en, es\n" if one.name == "whole at home" else ""
        plain = read_sheet(f"{before}\n7 2/6 - 3 5/6").header
        set_so = read_sheet(f"{before}{one.typed}\n\n7 2/6 - 3 5/6").header
        assert set_so != plain or one.name in {"grade", "wholes"}
    (story,) = laid(STORY, NOW).mistakes
    assert [one.words for one in story.remedies] == list(story_buttons())
    assert story.remedies[0].words in shown
    assert '<a href="/help"' in door.get("/welcome").text
    for page in ("/mine/1/week", "/mine/1/class", "/mine/1/page", "/mine/1/help"):
        assert '<a href="/mine/1/help"' in door.get(page).text
    assert 'aria-current="page">Help' in door.get("/help").text
