"""Two doors and a terminal on one file, in any order: what was told as kept is where the teacher was told.

Hypothesis chooses what is done, by whom and when; processes are killed, files torn and moved by hand. After
every step each answer told as kept is in the file under its name, or in a file that was named to the teacher:
the backup of what stood before another was brought back, or one that was moved aside. `make walk` does more.
"""

import os
import re
import signal
import sqlite3
from collections.abc import Callable, Iterable
from contextlib import closing, suppress
from datetime import datetime, timedelta
from itertools import count
from pathlib import Path
from shutil import rmtree
from tempfile import mkdtemp
from threading import Thread

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import (
    RuleBasedStateMachine,
    initialize,
    invariant,
    precondition,
    rule,
    run_state_machine_as_test,
)

from onewhole.desk.classes.class_records import Store, set_night, start_room
from onewhole.desk.classes.night_changes import move_night, rename_night
from onewhole.desk.keep.backups import back_up, back_up_daily, backups_folder, backups_of, erase_everywhere
from onewhole.desk.keep.deleting import delete_night
from onewhole.desk.keep.restoring import Restored, restore_backup
from onewhole.desk.marking.cells import Change, keep_cells
from onewhole.errors import OnewholeError
from onewhole.store import swapping
from onewhole.store.copying import copy_beside
from onewhole.store.nights import nights_of
from onewhole.store.opening import open_store
from onewhole.web.app import MINE, Books
from tests.kit.doors import NOW
from tests.kit.how_much import sample
from tests.kit.kept import DAY

EXAMPLES, STEPS = sample((5, 25), (6, 20), (60, 50))
CODES, LABELS, ENDS = ("K01", "K02", "K03"), ("1", "2"), ("", "-wal", "-shm", "-journal")
PAGE = "1. 5 1/8 - 2 5/8\n2. 7 2/6 - 3 5/6\n"

doors, codes = st.integers(0, 1), st.sampled_from(CODES)


class ToldKept(RuleBasedStateMachine):
    """What was told, by the text that was told as kept, and the files that were named to the teacher."""

    steps = tellings = 0

    @initialize()
    def begin(self) -> None:
        """Make a class with a backup put elsewhere, and open two doors on it."""
        self.folder = Path(mkdtemp(prefix="told-kept-"))
        (self.folder / "school").mkdir()
        (self.folder / "elsewhere").mkdir()
        self.path = self.folder / "school" / "room12.class"
        self.doors = [Books({MINE: self.path}) for _ in range(2)]
        self.told: dict[str, str] = {}  # whose each text is
        self.written: dict[str, set[str]] = {code: set() for code in CODES}
        self.named: set[Path] = set()
        self.numbers = count()
        with closing(open_store(self.path)) as book:
            start_room(book, "Room 12", len(CODES), NOW)
            set_night(book, 1, PAGE, DAY, NOW)
            back_up(book, self._elsewhere())

    def teardown(self) -> None:
        """Close the doors."""
        if hasattr(self, "doors"):
            for one in self.doors:
                one.close()
            rmtree(self.folder, ignore_errors=True)

    # What is done -------------------------------------------------------------------------------------------

    @rule(door=doors, code=codes, label=st.sampled_from(LABELS))
    def answer(self, door: int, code: str, label: str) -> None:
        """Type an answer over whatever stands."""
        self._answered(lambda: self.doors[door][MINE], code, label)

    @rule(door=doors, code=codes, label=st.sampled_from(LABELS))
    def clear(self, door: int, code: str, label: str) -> None:
        """Clear a cell: what was written there stays in its history."""
        with suppress(OnewholeError):
            book = self.doors[door][MINE]
            keep_cells(book, 1, _night(book), [Change(code, label, "")], now=NOW, by="t")

    @rule(door=doors, name=st.sampled_from(("", "Wind", "Calm")), later=st.integers(0, 3))
    def change_the_night(self, door: int, name: str, later: int) -> None:
        """Call the night otherwise, and move it to another day: what was written stays with it."""
        with suppress(OnewholeError):
            book = self.doors[door][MINE]
            rename_night(book, 1, _night(book), name)
            move_night(book, 1, _night(book), DAY + timedelta(days=later))

    @rule(door=doors)
    def delete_the_night(self, door: int) -> None:
        """Delete the night and set another: what was told is in the backup that was named."""
        self._deleted(self.doors[door])

    @rule(door=doors, code=codes)
    def delete_while_marking(self, door: int, code: str) -> None:
        """Delete the night at one door while answers are typed into it at the other."""
        other = Thread(target=self._deleted, args=(self.doors[1 - door],))
        other.start()
        for _ in range(8):
            self._answered(lambda: self.doors[door][MINE], code, "1")
        other.join()

    @rule(door=doors, which=st.integers(0, 9))
    def restore(self, door: int, which: int) -> None:
        """Bring a backup back at a door."""
        saved = self._backup(which)

        def make(path: Path) -> Store:
            self._name(restore_backup(saved, path, self._now()))
            return open_store(path)

        with suppress(OnewholeError):
            self.doors[door].put_in(MINE, make)

    @rule(which=st.integers(0, 9))
    def restore_at_the_terminal(self, which: int) -> None:
        """Bring a backup back while both doors have the file open."""
        with suppress(OnewholeError):
            self._name(restore_backup(self._backup(which), self.path, self._now()))

    @rule(door=doors, which=st.integers(0, 9), code=codes)
    def restore_while_marking(self, door: int, which: int, code: str) -> None:
        """Bring a backup back in one thread while answers are typed in another."""
        saved, now = self._backup(which), self._now()
        done: list[Restored] = []

        def restored() -> None:
            with suppress(OnewholeError):
                done.append(restore_backup(saved, self.path, now))

        other = Thread(target=restored)
        other.start()
        for _ in range(8):
            self._answered(lambda: self.doors[door][MINE], code, "1")
        other.join()
        for one in done:
            self._name(one)

    @rule(door=doors, code=codes, backups=st.booleans())
    def erase(self, door: int, code: str, backups: bool) -> None:
        """Erase a child: it is nowhere but where the teacher is told, or put it."""
        try:
            done = erase_everywhere(self.doors[door][MINE], 1, code, backups=backups)
        except OnewholeError:
            return
        told = {*done.left, *self._by_hand(), *([self.path] if done.traces else [])}
        assert [one for one in self._holding(self.written[code]) if _whose(one) not in told] == []
        self.told = {text: whose for text, whose in self.told.items() if whose != code}

    @rule(door=doors)
    def backup(self, door: int) -> None:
        """Make a backup elsewhere, and today's."""
        with suppress(OnewholeError):
            book = self.doors[door][MINE]
            back_up(book, self._elsewhere())
            back_up_daily(book, backups_folder(book.path), self._now())

    @rule(door=doors, code=codes)
    def move_while_an_answer_is_kept(self, door: int, code: str) -> None:
        """Somebody moves the file and its log by hand after an answer was written, and before it was kept."""
        if self.path.exists():
            self._answered(lambda: self.doors[door][MINE], code, "1", meanwhile=self._move)

    @precondition(lambda self: self.path.exists())
    @rule()
    def move(self) -> None:
        """Somebody moves the file and its log away by hand."""
        self._move()

    @precondition(lambda self: self.path.exists())
    @rule()
    def tear(self) -> None:
        """The head of the file is torn while no door has it open."""
        for one in self.doors:
            one.close()
        with self.path.open("r+b") as file:
            file.write(b"torn")

    @rule(door=doors)
    def close(self, door: int) -> None:
        """A door is closed, and opened anew when it is next asked."""
        self.doors[door].close()

    @rule(code=codes, told=st.integers(0, 5))
    def killed_while_marking(self, code: str, told: int) -> None:
        """A third door is killed after it told some answers as kept."""
        texts = [self._text(code) for _ in range(told + 1)]
        ours, theirs = os.pipe()
        child = os.fork()
        if child == 0:
            with suppress(BaseException):
                book = open_store(self.path)
                for text in texts:
                    if keep_cells(book, 1, _night(book), [Change(code, "2", text)], now=NOW, by="t").kept:
                        os.write(theirs, f"{text}\n".encode())
                os.write(theirs, b"end\n")
                signal.pause()
            os._exit(0)
        os.close(theirs)
        with os.fdopen(ours) as lines:
            for number, line in enumerate(lines):
                if line.strip() in texts:
                    self._tell(line.strip(), code)
                if number >= told or line == "end\n":
                    break
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)

    @rule(which=st.integers(0, 9), late=st.booleans())
    def killed_while_restoring(self, which: int, late: bool) -> None:
        """A terminal is killed when it begins the backup of what stands, or when that is made."""
        saved, now = self._backup(which), self._now()
        child = os.fork()
        if child == 0:
            with suppress(BaseException):
                copied = copy_beside

                def killed(*given: object) -> None:
                    if late:
                        copied(*given)  # type: ignore[arg-type]
                    os.kill(os.getpid(), signal.SIGKILL)

                setattr(swapping, "copy_beside", killed)  # noqa: B010 - the child's own
                restore_backup(saved, self.path, now)
            os._exit(0)
        os.waitpid(child, 0)
        self.named |= set(self.path.parent.glob("*.damaged"))  # the list on the page Keep

    # What holds ---------------------------------------------------------------------------------------------

    @invariant()
    def what_was_told_is_where_it_was_told(self) -> None:
        """In the file under its name, or in a file that was named."""
        type(self).steps += 1
        if not hasattr(self, "told"):
            return
        found = _texts([self.path, *self.named])
        assert {text for text in self.told if text not in found} == set()

    # How ----------------------------------------------------------------------------------------------------

    def _answered(
        self,
        book: Callable[[], Store],
        code: str,
        label: str,
        meanwhile: Callable[[], object] = lambda: None,
    ) -> None:
        text = self._text(code)
        try:
            with book().transaction() as within:
                done = keep_cells(within, 1, _night(within), [Change(code, label, text)], now=NOW, by="t")
                meanwhile()
        except OnewholeError:
            return
        if done.kept:
            self._tell(text, code)

    def _deleted(self, door: Books) -> None:
        with suppress(OnewholeError):
            book = door[MINE]
            done = delete_night(book, 1, _night(book), self._now())
            self.named.add(done.before)
        with suppress(OnewholeError):
            if not nights_of(door[MINE], 1):
                set_night(door[MINE], 1, PAGE, DAY, NOW)

    def _tell(self, text: str, code: str) -> None:
        type(self).tellings += 1
        self.told[text] = code

    def _text(self, code: str) -> str:
        text = f"<{next(self.numbers)}>"
        self.written[code].add(text)
        return text

    def _now(self) -> datetime:
        return NOW + timedelta(minutes=next(self.numbers))

    def _elsewhere(self) -> Path:
        return self.folder / "elsewhere" / f"{next(self.numbers)}.backup"

    def _backup(self, which: int) -> Path:
        every = [*sorted(self._backups_elsewhere()), *(one.path for one in backups_of(self.path))]
        return every[which % len(every)]

    def _backups_elsewhere(self) -> list[Path]:
        return list((self.folder / "elsewhere").glob("*.backup"))

    def _by_hand(self) -> set[Path]:
        return {self.path.parent / one.name for one in self.path.parent.glob("by-hand-*")} | set(
            self._backups_elsewhere()
        )

    def _name(self, done: Restored) -> None:
        self.named |= {one for one in (done.before, done.aside) if one}

    def _move(self) -> None:
        aside = self.path.with_name(f"by-hand-{next(self.numbers)}")
        for end in ENDS:
            with suppress(FileNotFoundError):
                Path(f"{self.path}{end}").rename(f"{aside}{end}")
        self.named.add(aside)

    def _holding(self, texts: Iterable[str]) -> list[Path]:
        """Return the files that hold a text. A process of its own reads: it drops no lock of a door's."""
        ours, theirs = os.pipe()
        child = os.fork()
        if child == 0:
            with suppress(BaseException):
                sought = [text.encode() for text in texts]
                files = [one for one in self.folder.rglob("*") if one.is_file()]
                found = [one for one in files if any(text in one.read_bytes() for text in sought)]
                os.write(theirs, "\n".join(map(str, [*found, "read"])).encode())
            os._exit(0)
        os.close(theirs)
        with os.fdopen(ours) as lines:
            *names, end = lines.read().split("\n")
        os.waitpid(child, 0)
        assert end == "read"
        return [Path(name) for name in names]


def _night(book: Store) -> int:
    """Return the last night of the class."""
    nights = [night.number for night in nights_of(book, 1)]
    return max(nights, default=1)


def _whose(path: Path) -> Path:
    """Return the file whose log this is."""
    for end in ENDS[1:]:
        if path.name.endswith(end):
            return path.with_name(path.name.removesuffix(end))
    return path


def _texts(paths: Iterable[Path]) -> set[str]:
    """Return every text that was written into these files; of a torn one, those that are still in it."""
    found: set[str] = set()
    for path in paths:
        try:
            with closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as file:
                found.update(text for (text,) in file.execute("SELECT text FROM answers"))
        except sqlite3.OperationalError:
            assert not path.exists(), "a file that is there can be opened"
        except sqlite3.DatabaseError:
            found.update(text.decode() for text in re.findall(rb"<\d+>", path.read_bytes()))
    return found


@pytest.mark.more("store/test_kills.py")
@pytest.mark.slow
def test_told_as_kept_is_kept_whatever_is_done() -> None:
    """In so many orders of answers, erasings, backups brought back, files moved and torn, and kills."""
    run_state_machine_as_test(
        ToldKept,
        settings=settings(
            max_examples=EXAMPLES,
            stateful_step_count=STEPS,
            deadline=None,
            suppress_health_check=list(HealthCheck),
        ),
    )
    print(f"{ToldKept.steps} steps, {ToldKept.tellings} answers told as kept")
    assert ToldKept.tellings > ToldKept.steps / 4
