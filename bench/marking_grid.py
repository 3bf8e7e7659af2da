"""The Marking page at the server: a keystroke's verdict, the grid, one cell kept, two tabs that keep at once.

Run: `python bench/marking_grid.py`. The door runs in a process of its own and is asked over the loopback, one
request after another on an open connection. A keystroke is a text of one to six signs that was never asked
before; the first of each problem works out what every pattern would write there. Beside it stands the same
request for a small file of ours: what a request costs alone. A kept cell is on the disk when it is answered;
beside it stands one row committed by bare SQLite with the same settings (WAL, full sync), in the same run.
Goals: a keystroke's verdict in less than 50 ms, the grid in less than 200 ms.
"""

import http.client
import json
import random
import re
import sqlite3
import tempfile
import threading
from collections.abc import Callable, Iterable, Iterator
from contextlib import closing, contextmanager
from datetime import UTC, date, datetime
from pathlib import Path
from time import perf_counter
from urllib.parse import urlencode

from serve import door, opened

from onewhole.desk.classes.class_records import open_book, set_night, start_room
from onewhole.desk.marking.cells import Change, keep_cells

SHEET = Path(__file__).parents[1] / "examples" / "room12" / "sheet.txt"
SIZES = (25, 30)
PROBLEMS, KEYS, CELLS, LOADS = 12, 3000, 400, 30
NOW = datetime(2026, 9, 1, 18, 0, tzinfo=UTC)


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "room12.class"
        book = open_book(path)
        for at, pupils in enumerate(SIZES, start=1):
            start_room(book, f"Room {at}", pupils, NOW)
            set_night(book, at, SHEET.read_text(encoding="utf-8"), date(2026, 9, 1), NOW)
            keep_cells(book, at, at, filled(pupils), now=NOW, by="teacher")
        book.close()
        with door(path) as (_, port, way):
            cookie = opened(port, way)
            with talk(port, cookie) as ask:
                keystrokes(ask)
                grids(ask)
            kept(port, cookie, Path(folder))


def filled(pupils: int) -> list[Change]:
    """Answers for a whole class, chosen by seeded chance: right ones, wrong ones, some that are no number."""
    chance = random.Random(12)
    texts = ("3 3/6", "4 7/8", "5 1/8", "21/6", "-", "smudge", "3 5/8", "2 4/5")
    return [
        Change(f"K{pupil:02}", str(problem), chance.choice(texts))
        for pupil in range(1, pupils + 1)
        for problem in range(1, PROBLEMS + 1)
    ]


def keystrokes(ask: Callable[..., bytes]) -> None:
    """Print what a verdict takes, beside a request for a small file."""
    chance = random.Random(7)
    texts = dict.fromkeys(
        "".join(chance.choices("0123456789/ ", k=chance.randrange(1, 7))) for _ in range(2 * KEYS)
    )
    keys = [(str(at % PROBLEMS + 1), text) for at, text in enumerate(list(texts)[:KEYS])]
    place = "/mine/1/night/1/marking/judge"
    print(f"{'a keystroke at the server':34} {'p50 ms':>7} {'p95 ms':>7} {'most ms':>8} {'times':>6}")
    files = timed(lambda _: ask("GET", "/static/kit.js"), keys)
    first = timed(lambda key: ask("POST", place, label=key[0], text=key[1]), keys)
    again = timed(lambda key: ask("POST", place, label=key[0], text=key[1]), keys)
    for name, taken in (
        ("a small file", files),
        ("a text never asked before", first),
        ("asked again", again),
    ):
        row(name, taken, files)
    print("goal: less than 50 ms\n")


def grids(ask: Callable[..., bytes]) -> None:
    """Print what the whole page takes, and what a window asks every three seconds."""
    print(f"{'the grid':34} {'p50 ms':>7} {'p95 ms':>7} {'most ms':>8} {'KB':>6}")
    for at, pupils in enumerate(SIZES, start=1):
        place = f"/mine/{at}/night/{at}/marking"
        began = perf_counter()
        size = len(ask("GET", place)) / 1024
        taken = f"{1000 * (perf_counter() - began):7.1f} {'':7} {'':8} {size:6.0f}"
        print(f"{f'{pupils} x {PROBLEMS}, first load':34} {taken}")
        row(f"{pupils} x {PROBLEMS}, again", timed(lambda _, place=place: ask("GET", place), range(LOADS)))
        stamp = json.loads(ask("GET", f"{place}/now"))["stamp"]
        same = timed(
            lambda _, place=place, stamp=stamp: ask("GET", f"{place}/now?since={stamp}"), range(LOADS)
        )
        row(f"{pupils} x {PROBLEMS}, anything new?", same)
    print("goal: less than 200 ms\n")


def kept(port: int, cookie: str, folder: Path) -> None:
    """Print what keeping a cell takes by one tab and by two at once, beside bare SQLite."""
    print(f"{'one cell kept on the disk':34} {'p50 ms':>7} {'p95 ms':>7} {'most ms':>8} {'times':>6}")
    bare = bare_rows(folder)
    row("one row by bare SQLite", bare, bare)
    took: dict[str, float] = {}
    for name, tabs in (("one tab", 1), ("two tabs at once", 2)):
        taken: list[float] = []
        threads = [
            threading.Thread(target=typist, args=(port, cookie, tab, CELLS // tabs, taken))
            for tab in range(tabs)
        ]
        began = perf_counter()
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        took[name] = perf_counter() - began
        row(name, sorted(taken), bare)
    both = took["two tabs at once"] / took["one tab"]
    print(f"{CELLS} cells by two tabs took {both:.2f} of the time that one tab took for as many")


def typist(port: int, cookie: str, tab: int, cells: int, taken: list[float]) -> None:
    """Keep so many cells one after another, each as it was left, in a column of this tab's own."""
    label, was = str(tab + 1), {}
    with talk(port, cookie) as ask:
        for cell in json.loads(ask("GET", "/mine/1/night/1/marking/now"))["cells"]:
            if cell["label"] == label:
                was[cell["code"]] = cell["text"]
        for at in range(cells):
            code, text = f"K{at % SIZES[0] + 1:02}", f"{tab} {at}/{cells}"
            sent = json.dumps([[code, label, text, was[code]]])
            began = perf_counter()
            told = json.loads(ask("POST", "/mine/1/night/1/marking/keep", cells=sent))
            taken.append(1000 * (perf_counter() - began))
            if [cell["text"] for cell in told["kept"]] != [text]:
                raise RuntimeError(f"{code}, {label} was not kept")
            was[code] = text


def bare_rows(folder: Path) -> list[float]:
    with closing(sqlite3.connect(folder / "bare.db", isolation_level=None)) as line:
        line.execute("PRAGMA journal_mode = WAL")
        line.execute("PRAGMA synchronous = FULL")
        line.execute("CREATE TABLE answers (number INTEGER PRIMARY KEY, text TEXT)")
        return timed(
            lambda at: line.execute("INSERT INTO answers (text) VALUES (?)", (str(at),)), range(CELLS)
        )


@contextmanager
def talk(port: int, cookie: str) -> Iterator[Callable[..., bytes]]:
    """Give a way to ask the door on one open connection, forms with the session's CSRF token."""
    with closing(http.client.HTTPConnection("127.0.0.1", port)) as line:

        def ask(method: str, place: str, **fields: str) -> bytes:
            headers = {"Cookie": cookie.partition(";")[0], "Accept": "application/json"}
            if method == "POST":
                headers |= {"Content-Type": "application/x-www-form-urlencoded", "X-CSRF-Token": token}
            line.request(method, place, urlencode(fields) if fields else None, headers)
            answer = line.getresponse()
            content = answer.read()
            if answer.status >= 400:
                raise RuntimeError(f"{place}: {answer.status} {content[:200]!r}")
            return content

        token = ""
        token = re.search(rb'name="csrf_token" content="([^"]+)"', ask("GET", "/mine/1/week"))[1].decode()
        yield ask


def timed(act: Callable[..., object], items: Iterable[object]) -> list[float]:
    """Return the milliseconds of each item, sorted."""
    taken = []
    for item in items:
        began = perf_counter()
        act(item)
        taken.append(1000 * (perf_counter() - began))
    return sorted(taken)


def row(name: str, taken: list[float], usual: list[float] | None = None) -> None:
    middle = taken[len(taken) // 2]
    times = f"{middle / usual[len(usual) // 2]:6.1f}" if usual else ""
    print(f"{name:34} {middle:7.1f} {taken[int(0.95 * len(taken))]:7.1f} {taken[-1]:8.1f} {times}")


if __name__ == "__main__":
    main()
