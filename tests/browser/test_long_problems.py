"""Problems with long words, long answers and units in a real browser: nothing is cut, nothing runs off."""

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from onewhole.desk.classes.class_records import set_night, start_room
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.sheets.reading import read_sheet
from onewhole.store.answers import KeptAnswer, keep_answers
from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, WIDE, runs_off, window
from tests.kit.doors import NOW, Served, served
from tests.kit.kept import DAY

pytestmark = NEEDS_CHROMIUM

NIGHTS = (
    (
        "order 10/12, 5/8, 7/12, 1/3, 2/3 from greatest to least\norder 345, 354, 1205\n"
        "999999 ? 1000000\n12/18 simplest\nround 4567 to the nearest hundred\n? + 128 = 304\n9 - ? = 3 1/2\n"
        "0.45 ? 0.6\n3/4 = ?/8"
    ),
    "9:45 to 11:20\n75¢ + 50¢\n$5 - $2.35\n26 in = ? ft ? in\n3 lb 9 oz + 2 lb 10 oz\n1000000 - 234567",
)
#: Answers that are wider than their place, and names of pupils that take more than a line.
CUT = """() => {
  const shown = [...document.querySelectorAll("#grid .shown")];
  const heads = [...document.querySelectorAll("#grid tbody th[scope=row]")];
  const cut = shown.filter((one) => one.scrollWidth > one.clientWidth + 1).map((one) => one.textContent);
  return [...cut, ...heads.filter((one) => one.clientHeight > 45).map((one) => one.textContent)];
}"""


@pytest.fixture
def door(tmp_path: Path) -> Iterator[Served]:
    """Three pupils and two nights: one of them had all right, the others each one wrong."""
    with served(tmp_path) as made:
        book = made.door.books["mine"]
        start_room(book, "Room 12", 3, NOW)
        for number, typed in enumerate(NIGHTS, 1):
            page = set_night(book, 1, typed, DAY - timedelta(days=number), NOW)
            keep_answers(book, tuple(_handed_in(page.night.number, typed)))
        yield made


def _handed_in(night: int, typed: str) -> Iterator[KeptAnswer]:
    for pupil in range(1, 4):
        for problem in read_sheet(typed).problems:
            right = text(answer(problem.statement))
            wrong = right.replace("3", "2") if problem.label == str(pupil) else right
            yield KeptAnswer(night, f"K{pupil:02}", problem.label, wrong, NOW, "teacher")


def test_every_answer_is_seen_whole(door: Served, browser: Browser) -> None:
    """On a wide screen no answer is cut, however long its problem's words are, nor a pupil's code in two."""
    with window(browser, door.address, WIDE) as page:
        for night in range(1, len(NIGHTS) + 1):
            page.goto(f"{door.base}/mine/1/night/{night}/marking")
            assert page.evaluate(CUT) == []


def test_nothing_runs_off_a_phone(door: Served, browser: Browser) -> None:
    """The board, the grid and tomorrow's page are as wide as the phone; prices in columns have a board."""
    with window(browser, door.address, PHONE) as page:
        for night in range(1, len(NIGHTS) + 1):
            for step in ("walkthrough", "marking", "tomorrow"):
                page.goto(f"{door.base}/mine/1/night/{night}/{step}")
                page.wait_for_load_state("load")
                assert not runs_off(page), (night, step)


#: Formulas that are pushed along, or stick out of what they stand in.
PUSHED = """() => [...document.querySelectorAll(".ask-about, .wide, .wide math, .ask-about math")]
  .filter((one) => one.clientWidth && one.scrollWidth > one.clientWidth + 1).map((one) => one.textContent)"""


def test_a_long_row_of_numbers_goes_on_in_the_next_line_on_a_phone(door: Served, browser: Browser) -> None:
    """Of the five numbers to be put in order none has to be looked for at the side, nor in the evidence."""
    with window(browser, door.address, PHONE) as page:
        page.goto(f"{door.base}/mine/1/night/1/tomorrow")
        page.wait_for_load_state("load")
        page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })")
        assert page.evaluate(PUSHED) == []
