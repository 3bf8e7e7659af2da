"""Tomorrow as the first page of a new process, and after a late answer: 27 pupils x 20 problems, 3 nights.

Run: `python bench/tomorrow.py`. Each round starts the door in a process of its own on the same file, opens a
session and asks for Tomorrow of the last night at once, without the Week before it; then a late answer is
kept, and Tomorrow is asked for at once, and once more after a pause as long as a teacher's between typing and
looking. Beside them stands the same page warm. Goal: each under 200 ms; what was never read before is told
apart.
"""

import http.client
import json
import random
import re
import tempfile
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from statistics import median
from time import perf_counter, sleep
from urllib.parse import urlencode

from serve import door, opened

from onewhole.desk.classes.class_records import Store, open_book, set_night, start_room
from onewhole.desk.page.patterns import patterns
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.store.answers import KeptAnswer, keep_answers

NIGHTS, PUPILS, ROUNDS = 3, 27, 5
NOW = datetime(2026, 9, 1, 18, 0, tzinfo=UTC)
#: Seconds between the last answer typed and a look at Tomorrow.
PAUSE = 4
TYPED = """title: Twenty
class: Room 12
strategy: regroup first
1. 4 1/4 - 1 3/4 | Maya has 4 1/4 meters of ribbon. She cuts off 1 3/4. How much is left?
2. 3 2/6 - 1 5/6 | A rope is 3 2/6 yards long. 1 5/6 yards are used. How much is left?
3. 2 4/5 + 1 3/5
4. 1 5/8 + 2 6/8
5. 5 - 1 3/8
6. 6 - 2 3/4
7. 3 1/2 - 1 3/4
8. 5 1/3 - 2 5/6
9. 5.2 - 2.7
10. 8.1 - 3.4
11. 52 - 27
12. 703 - 245
13. 5 ft 2 in - 2 ft 7 in
14. 6 ft 1 in - 3 ft 8 in
15. 7 1/6 - 3 5/6
16. 9 5/8 - 4 6/8
17. 8 3/8 - 4 5/8
18. 9 4/12 - 6 7/12
19. 6 7/8 - 3 2/8
20. 5 4/6 - 2 1/6
"""


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "room12.class"
        book = open_book(path)
        fill(book)
        book.close()
        taken: dict[str, list[float]] = {}
        for at in range(ROUNDS + 1):
            with door(path) as (_, port, way), window(port, opened(port, way)) as teacher:
                taken.setdefault("first page of a process" if at else "nothing read before", []).append(
                    teacher.looks()
                )
                taken.setdefault("warm", []).append(teacher.looks())
                teacher.types("K05", f"{2 * at} 5/8")
                taken.setdefault("at once after an answer", []).append(teacher.looks())
                teacher.types("K06", f"{2 * at + 1} 5/8")
                sleep(PAUSE)
                taken.setdefault(f"{PAUSE} s after an answer", []).append(teacher.looks())
                sleep(PAUSE)
        print(f"{'Tomorrow':26} {'median ms':>9} {'most ms':>8}")
        for name, found in taken.items():
            print(f"{name:26} {median(found):9.0f} {max(found):8.0f}")


@dataclass(slots=True)
class Window:
    """A teacher's window: it looks at Tomorrow, and types answers on Marking."""

    line: http.client.HTTPConnection
    cookie: str
    token: str = ""

    def looks(self) -> float:
        """Load Tomorrow; return the milliseconds it took."""
        began = perf_counter()
        said = self.ask("GET", "tomorrow")
        took = 1000 * (perf_counter() - began)
        self.token = re.search(rb'name="csrf_token" content="([^"]+)"', said)[1].decode()
        return took

    def types(self, code: str, typed: str) -> None:
        """Keep an answer to the fifth problem."""
        cells = json.loads(self.ask("GET", "marking/now"))["cells"]
        was = next(cell["text"] for cell in cells if (cell["code"], cell["label"]) == (code, "5"))
        kept = self.ask("POST", "marking/keep", cells=json.dumps([[code, "5", typed, was]]))
        if [cell["text"] for cell in json.loads(kept)["kept"]] != [typed]:
            raise RuntimeError(kept)

    def ask(self, method: str, place: str, **fields: str) -> bytes:
        """Ask the door for a page of the night, or send it a form."""
        headers = {"Cookie": self.cookie}
        if method == "POST":
            headers |= {"Content-Type": "application/x-www-form-urlencoded", "X-CSRF-Token": self.token}
        body = urlencode(fields) if fields else None
        self.line.request(method, f"/mine/1/night/{NIGHTS}/{place}", body, headers)
        answer = self.line.getresponse()
        content = answer.read()
        if answer.status >= 400:
            raise RuntimeError(f"{place}: {answer.status} {content[:200]!r}")
        return content


@contextmanager
def window(port: int, cookie: str) -> Iterator[Window]:
    with closing(http.client.HTTPConnection("127.0.0.1", port)) as line:
        yield Window(line, cookie)


def fill(book: Store) -> None:
    """Keep three nights: two of three answers right, the others as one of a pupil's two patterns writes."""
    chance = random.Random(12)
    of = start_room(book, "Room 12", PUPILS, NOW)
    for night in range(NIGHTS):
        made = set_night(book, of.number, TYPED, date(2026, 8, 29) + timedelta(days=night), NOW)
        kept = []
        for problem in made.sheet.problems:
            right = text(answer(problem.statement))
            wrong = [text(slip.wrote) for slip in patterns(problem.typed)] or [right]
            for at, pupil in enumerate(of.pupils):
                said = right if chance.random() < 2 / 3 else wrong[at % 4 % len(wrong)]
                kept.append(KeptAnswer(made.night.number, pupil.code, problem.label, said, NOW, "teacher"))
        keep_answers(book, kept)


if __name__ == "__main__":
    main()
