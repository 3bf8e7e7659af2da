"""How long the browser door takes: from the command to the first page, and a page when it is warm.

Run: `python bench/serve.py`. The file is new the first time and holds three weeks of an invented class the
second time. Beside each stands the standard library's own server handing out a file of the very same bytes:
what any Python server costs on this machine. Goals: the first page in less than 2 s, a warm page in less than
200 ms.
"""

import http.client
import os
import re
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from datetime import UTC, datetime
from pathlib import Path
from statistics import median
from time import perf_counter

from measuring import process_megabytes

from onewhole.desk.classes.class_records import open_book
from onewhole.desk.classes.demo import fill_demo

STARTS, ROUNDS = 5, 30
COMMAND = str(Path(sys.executable).with_name("onewhole"))
PAGES = ("week", "class", "page", "night/3/marking", "night/1/tomorrow", "night/3/walkthrough", "pupil/K05")
FIRST, WARM = 2000, 200


def main() -> None:
    print(f"{'first page, from the command on':34} {'median ms':>9} {'most ms':>8} {'times':>6}")
    with tempfile.TemporaryDirectory() as folder:
        usual = first("a file by the standard library", lambda: plain_page(Path(folder)))
        for name, filled in (("an empty class: welcome", False), ("three weeks of a class: week", True)):
            books = [book(Path(folder), filled=filled) for _ in range(STARTS)]
            first(name, lambda books=books: door_page(books.pop()), usual)
    print(f"goal: less than {FIRST} ms\n")
    with tempfile.TemporaryDirectory() as folder:
        warm(Path(folder))
    print(f"goal: less than {WARM} ms")


def first(name: str, page: Callable[[], float], usual: float | None = None) -> float:
    """Print the time to the first page of fresh processes, and return its median in ms."""
    taken = sorted(1000 * page() for _ in range(STARTS))
    middle = median(taken)
    print(f"{name:34} {middle:9.0f} {taken[-1]:8.0f} {middle / (usual or middle):6.1f}")
    return middle


def plain_page(folder: Path) -> float:
    began = perf_counter()
    with file_server(folder) as (_, port, _way):
        load(port, "/page", "")
        return perf_counter() - began


def door_page(path: Path) -> float:
    began = perf_counter()
    with door(path) as (_, port, way):
        cookie = opened(port, way)
        load(port, load(port, "/", cookie)[1], cookie)
        return perf_counter() - began


def warm(folder: Path) -> None:
    """Print how long each page takes when it was looked at before, beside its bytes as a file."""
    print(f"{'warm page':22} {'KB':>5} {'p50 ms':>7} {'p95 ms':>7} {'file ms':>8} {'times':>6}")
    with door(book(folder, filled=True)) as (process, port, way):
        cookie = opened(port, way)
        for page in PAGES:
            content = load(port, f"/mine/1/{page}", cookie)[0]
            taken = rounds(port, f"/mine/1/{page}", cookie)
            with file_server(folder, content) as (_, other, _):
                usual = median(rounds(other, "/page", ""))
            p95 = taken[int(0.95 * len(taken))]
            shown = f"{page:22} {len(content) / 1024:5.0f} {median(taken):7.1f} {p95:7.1f}"
            print(f"{shown} {usual:8.2f} {median(taken) / usual:6.0f}")
        status = Path(f"/proc/{process.pid}/status")
        if status.exists():
            much = re.search(r"VmHWM:\s+(\d+)", status.read_text())
            print(f"memory at most {int(much[1]) / 1024:.0f} MB", end="; ")
    print(f"an empty Python {process_megabytes([sys.executable, '-c', 'pass']):.0f} MB")


def rounds(port: int, path: str, cookie: str) -> list[float]:
    taken = []
    for _ in range(ROUNDS):
        began = perf_counter()
        load(port, path, cookie)
        taken.append(1000 * (perf_counter() - began))
    return sorted(taken)


def book(folder: Path, *, filled: bool) -> Path:
    """Return a class file of its own: one that is not there yet, or one of three weeks."""
    path = Path(tempfile.mkdtemp(dir=folder)) / "room12.class"
    if filled:
        made = open_book(path)
        fill_demo(made, datetime.now(UTC))
        made.close()
    return path


@contextmanager
def door(path: Path) -> Iterator[tuple[subprocess.Popen[str], int, str]]:
    """Run the command on a class file; give its port and the way in."""
    with running([COMMAND, "serve", str(path)], r"http://127\.0\.0\.1:(\d+)(/\S+)") as (process, found):
        yield process, int(found[1]), found[2]


@contextmanager
def file_server(folder: Path, content: bytes = b"six kites") -> Iterator[tuple[object, int, str]]:
    """Run the standard library's server on a folder with one file."""
    (folder / "page").write_bytes(content)
    command = [
        sys.executable,
        "-u",
        "-m",
        "http.server",
        "0",
        "--bind",
        "127.0.0.1",
        "--directory",
        str(folder),
    ]
    with running(command, r"port (\d+)()") as (process, found):
        yield process, int(found[1]), ""


@contextmanager
def running(command: list[str], told: str) -> Iterator[tuple[subprocess.Popen[str], re.Match[str]]]:
    """Run a command until it has told its address; stop it at the end."""
    environment = {**os.environ, "PYTHONUNBUFFERED": "1"}
    quiet = subprocess.DEVNULL
    with subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=quiet, text=True, env=environment
    ) as process:
        try:
            yield process, next(found for line in process.stdout if (found := re.search(told, line)))
        finally:
            process.terminate()


def opened(port: int, way: str) -> str:
    """Open the session and return its cookie."""
    with closing(http.client.HTTPConnection("127.0.0.1", port)) as line:
        line.request("GET", way)
        return line.getresponse().getheader("set-cookie").partition(";")[0]


def load(port: int, path: str, cookie: str) -> tuple[bytes, str]:
    """Load a page; return its bytes and where it leads."""
    with closing(http.client.HTTPConnection("127.0.0.1", port)) as line:
        line.request("GET", path, headers={"Cookie": cookie})
        answer = line.getresponse()
        if answer.status >= 400:
            raise RuntimeError(f"{path}: {answer.status}")
        return answer.read(), answer.getheader("location") or ""


if __name__ == "__main__":
    main()
