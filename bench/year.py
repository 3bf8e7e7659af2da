"""A year of a class: 180 nights, 30 pupils, 12 answers each, and every page of the browser door.

Run: `python bench/year.py`. Invented answers, chosen by seeded chance from what the patterns would write.
Each page is loaded 9 times without a network (the door's own code, the file and the templates are in it, the
browser is not); told are the first load in a new process, the median and the slowest after it. The Week is
loaded first and looked at for two seconds, as a teacher does; meanwhile it makes the next page ready. "Two
tabs" is one answer kept by two threads at once, 200 each, beside 400 by one. Goal: every page under 200 ms.
"""

import random
import tempfile
import threading
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from statistics import median
from time import perf_counter, sleep

from starlette.testclient import TestClient

from onewhole.desk.classes.class_records import Classroom, NightPage, Store, room, set_night, start_room
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.page.patterns import patterns
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.sheets.mastery import again
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.writing import write_sheet
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.steps import NightStep, keep_step
from onewhole.web.access.guard import Access
from onewhole.web.access.sessions import Sessions
from onewhole.web.app import App, app_for
from onewhole.web.asgi import asgi_app

NIGHTS, PUPILS, PROBLEMS = 180, 30, 12
START = date(2025, 9, 1)
NOW = datetime(2026, 5, 11, 18, 0, tzinfo=UTC)
SHEET = Path(__file__).parents[1] / "examples" / "room12" / "sheet.txt"
HOST = "127.0.0.1:8000"
LOADS = 9
#: Seconds for which a teacher looks at the Week.
LOOKING = 2


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        door = app_for(Path(folder) / "room.class", lambda: NOW)
        book = door.books["mine"]
        began = perf_counter()
        last = fill(book)
        print(
            f"{NIGHTS} nights x {PUPILS} pupils x {PROBLEMS} answers written: {perf_counter() - began:.1f} s"
        )
        print(f"the file: {book.path.stat().st_size / 1e6:.1f} MB")
        began = perf_counter()
        mark_missing(book, 1, lambda _done, _of: None)
        print(f"all nights read for the first time (long work): {perf_counter() - began:.1f} s")
        began = perf_counter()
        mark_missing(book, 1, lambda _done, _of: None)
        print(f"and again, nothing new: {perf_counter() - began:.3f} s\n")
        pages(door, last)
        tabs(book, last)
        door.close()


def fill(book: Store) -> NightPage:
    """Keep a year, and tonight's page, which goes home; return the last night that came back."""
    chance = random.Random(12)
    typed = SHEET.read_text(encoding="utf-8")
    of = start_room(book, "Room 12", PUPILS, NOW)
    sheet = read_sheet(typed)
    pages = [write_sheet(again(sheet, count=PROBLEMS, turn=turn)) for turn in range(12)]
    made: NightPage | None = None
    for night in range(NIGHTS):
        day = START + timedelta(days=night + 2 * (night // 5))
        made = set_night(book, of.number, pages[night % len(pages)], day, NOW)
        keep_answers(book, answers(made, of, chance))
    assert made is not None
    tonight = set_night(book, of.number, pages[0], NOW.date(), NOW)
    keep_step(book, tonight.night.number, NightStep.PRINTED, NOW)
    return made


def answers(page: NightPage, of: Classroom, chance: random.Random) -> list[KeptAnswer]:
    """Return a night's answers: two of three right, the others one that a pattern writes."""
    found = []
    for problem in page.sheet.problems:
        right = text(answer(problem.statement))
        wrong = [text(slip.wrote) for slip in patterns(problem.typed)]
        for pupil in of.pupils:
            said = right if chance.random() < 2 / 3 else chance.choice(wrong)
            found.append(KeptAnswer(page.night.number, pupil.code, problem.label, said, NOW, "teacher"))
    return found


def pages(door: App, last: NightPage) -> None:
    """Print how long each page takes."""
    sessions = Sessions(perf_counter)
    client = TestClient(asgi_app(door, Access(frozenset({HOST}), sessions, 8000)), base_url=f"http://{HOST}")
    client.get(f"/open?key={sessions.new_key()}", follow_redirects=False)
    night = last.night.number
    print(f"{'page':22} {'first ms':>9} {'median':>7} {'slowest':>8} {'kB':>6}")
    for name, address in (
        ("Week", "/mine/1/week"),
        ("Class", "/mine/1/class"),
        ("Page desk", f"/mine/1/page/{last.kept.number}"),
        ("Walkthrough", f"/mine/1/night/{night + 1}/walkthrough"),
        ("Marking", f"/mine/1/night/{night}/marking"),
        ("Tomorrow", f"/mine/1/night/{night}/tomorrow"),
        ("Pupil", "/mine/1/pupil/K07"),
        ("Keep", "/mine/keep"),
    ):
        taken = []
        for _ in range(LOADS + 1):
            began = perf_counter()
            answered = client.get(address)
            taken.append((perf_counter() - began) * 1000)
            assert answered.status_code == 200, (address, answered.status_code)
            if name == "Week" and len(taken) == 1:
                sleep(LOOKING)
        size = len(answered.content) / 1000
        print(f"{name:22} {taken[0]:9.1f} {median(taken[1:]):7.1f} {max(taken[1:]):8.1f} {size:6.1f}")


def tabs(book: Store, page: NightPage) -> None:
    """Print what an answer kept takes, by one tab and by two at once."""
    of = room(book, 1)

    def keep(code: str, count: int) -> None:
        for at in range(count):
            label = page.labels[at % PROBLEMS]
            keep_answers(book, (KeptAnswer(page.night.number, code, label, str(at), NOW, "teacher"),))

    first, second = (pupil.code for pupil in of.pupils[:2])
    one = seconds(lambda: keep(first, 400))
    two = seconds(lambda: at_once(lambda: keep(first, 200), lambda: keep(second, 200)))
    print(f"\nan answer kept, on the disk: {one / 400 * 1000:.2f} ms by one tab,", end=" ")
    print(f"{two / 400 * 1000:.2f} ms by two at once: ratio {two / one:.2f}")


def seconds(act: Callable[[], None]) -> float:
    began = perf_counter()
    act()
    return perf_counter() - began


def at_once(*acts: Callable[[], None]) -> None:
    threads = [threading.Thread(target=act) for act in acts]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()


if __name__ == "__main__":
    main()
