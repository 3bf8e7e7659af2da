"""Acts on the file of a class: an answer kept, backups, bringing them back, a child erased, an older file."""

import shutil
import sqlite3
from contextlib import closing
from datetime import timedelta
from pathlib import Path

from onewhole.desk.keep.backups import (
    back_up,
    back_up_daily,
    backups_folder,
    erase_everywhere,
)
from onewhole.desk.keep.restoring import restore_backup
from onewhole.desk.keep.way_back import damaged_of
from onewhole.desk.paper.keep_papers import keep_seen_papers
from onewhole.errors import OnewholeError
from onewhole.store.backups import daily_name
from onewhole.store.keeping import backup
from onewhole.store.migrations.env import VERSION_TABLE
from onewhole.store.opening import Store, open_store
from tests.kit.faults.act import DONE, Act, Found, Judged
from tests.kit.kept import DAY, NOW, first_round, write
from tests.kit.page_folders import put_night
from tests.kit.seen_papers import seen, sure, unsure

OLDER = Path(__file__).parents[2] / "store" / "examples" / "v0001.class"
#: What K01 wrote: no trace of it may be left.
REMARKABLE = "remarkable 7/8"

Rows = dict[str, list[tuple[object, ...]]]


def rows_of(path: Path) -> Rows:
    """Return every row of every table of a whole file, as SQLite gives them. Raises sqlite3.Error."""
    with closing(sqlite3.connect(path)) as file:
        ((whole,),) = file.execute("PRAGMA integrity_check(1)")
        if whole != "ok":
            raise sqlite3.DatabaseError(whole)
        tables = [name for (name,) in file.execute("SELECT name FROM sqlite_master WHERE type = 'table'")]
        return {
            name: sorted(file.execute(f"SELECT * FROM {name}"), key=repr)  # noqa: S608 - our own names
            for name in tables
        }


def make_class(path: Path, *, answers: int = 3) -> None:
    """Make the file of a class: two pupils, a night, some answers of each."""
    store = open_store(path)
    night = first_round(store).night
    for number in range(answers):
        write(store, night, REMARKABLE, code="K01", problem=f"{number}")
        write(store, night, f"{number} 1/8", code="K02", problem=f"{number}")
    store.close()


def back_up_before(path: Path, days: int) -> None:
    """Make the daily backups of so many days before."""
    backups_folder(path).mkdir()
    store = open_store(path)
    for ago in range(1, days + 1):
        backup(store, backups_folder(path) / daily_name(path, DAY - timedelta(days=ago)))
    store.close()


class ClassAct(Act):
    """An act on the file of a class, which has its old rows or its new ones."""

    def __init__(self, folder: Path) -> None:
        """The file lies in the folder."""
        super().__init__(folder)
        self.path = folder / "room.class"
        self.old: Rows = {}
        self.new: Rows = {}
        self.store: Store | None = None

    def prepare(self) -> None:
        """Make the file."""
        make_class(self.path)
        self.old = self.new = rows_of(self.path)

    def open(self) -> None:
        """Open the file, as a door has it open."""
        self.store = open_store(self.path)

    @property
    def book(self) -> Store:
        """The open file."""
        assert self.store is not None
        return self.store

    def learn(self) -> None:
        """Remember its new rows."""
        self.new = rows_of(self.path)
        assert self.new != self.old, self.name

    def judge(self) -> Judged:
        """It opens as a teacher opens it, and has its old rows or its new ones."""
        if not self.path.exists():
            return Found.MIXTURE, "the file is gone"
        try:
            open_store(self.path).close()
        except OnewholeError as refused:
            return Found.MIXTURE, str(refused)
        return self.judged(self.path)

    def judged(self, path: Path) -> Judged:
        """Say which rows a file has."""
        try:
            rows = rows_of(path)
        except sqlite3.Error as error:
            return Found.MIXTURE, f"{path.name}: {error}"
        if rows == self.new:
            return Found.NEW, ""
        return (Found.OLD, "") if rows == self.old else (Found.MIXTURE, f"{path.name}: {self._unlike(rows)}")

    def _unlike(self, rows: Rows) -> str:
        names = sorted(rows.keys() | self.old.keys() | self.new.keys())
        return "; ".join(f"{name} {rows.get(name)}" for name in names if rows.get(name) != self.old.get(name))


class KeepAnswer(ClassAct):
    """An answer is kept."""

    name = "keep an answer"

    def do(self) -> str:
        """Keep it."""
        write(self.book, 1, "5 5/8", code="K02", problem="9")
        return ""


class KeepPapers(ClassAct):
    """Papers are read: an answer that is sure, with its picture, and a cell that waits."""

    name = "keep papers"

    def prepare(self) -> None:
        """Nobody has written anything yet."""
        make_class(self.path, answers=0)
        self.old = self.new = rows_of(self.path)

    def do(self) -> str:
        """Keep what was seen in the pictures."""
        papers = seen({"K01": {"1": sure("2 4/8")}, "K02": {"1": unsure("3 4/8", "2 4/8")}})
        keep_seen_papers(self.book, 1, 1, papers, now=NOW)
        return ""


class BackUp(ClassAct):
    """A backup is made under a name of the teacher's."""

    name = "back up"

    def do(self) -> str:
        """Back it up."""
        back_up(self.book, self.folder / "mine.backup")
        return ""

    def learn(self) -> None:
        """The class is as it was."""
        assert rows_of(self.path) == self.old

    def judge(self) -> Judged:
        """The class is as it was; the backup is not there, or is whole."""
        found = super().judge()
        made = self.folder / "mine.backup"
        if found[0] is Found.MIXTURE:
            return found
        return self.judged(made) if made.exists() else (Found.OLD, "")


class BackUpDaily(BackUp):
    """Today's backup is made, and the oldest of eight goes."""

    name = "back up daily"

    def prepare(self) -> None:
        """Make the backups of seven days before."""
        super().prepare()
        back_up_before(self.path, 7)

    def do(self) -> str:
        """Back it up."""
        back_up_daily(self.book, backups_folder(self.path), NOW)
        return ""

    def judge(self) -> Judged:
        """The class is as it was; every backup is whole, and there are seven at least."""
        found = ClassAct.judge(self)
        saved = sorted(backups_folder(self.path).glob("room.class.*.backup"))
        for one in saved:
            found = found if found[0] is Found.MIXTURE else self.judged(one)
        if found[0] is Found.MIXTURE or len(saved) < 7:
            return Found.MIXTURE, found[1] or f"{len(saved)} backups"
        return (Found.NEW if daily_name(self.path, DAY) in {one.name for one in saved} else Found.OLD), ""


class Restore(ClassAct):
    """A backup is brought back where a class stands."""

    name = "restore over a class"
    sample = 1  # a process of its own reads the backup

    def prepare(self) -> None:
        """Make the class and a backup of another evening."""
        super().prepare()
        make_class(self.folder / "saved.class", answers=5)
        store = open_store(self.folder / "saved.class")
        backup(store, self.folder / "saved.backup")
        store.close()
        (self.folder / "saved.class").unlink()

    def open(self) -> None:
        """Nothing is open."""

    def do(self) -> str:
        """Bring it back."""
        done = restore_backup(self.folder / "saved.backup", self.path, NOW)
        return f"{done.before.relative_to(self.folder)}" if done.before else ""

    def judge(self) -> Judged:
        """What stood there is there, or the backup; told as done, the old is in the backup that is named.

        Where it is not done, doing it again brings the backup back.
        """
        found = self.found()
        before = self.said.removeprefix(DONE).strip() if self.said.startswith(DONE) else ""
        if before and rows_of(self.folder / before) != self.old:
            return Found.MIXTURE, "what stood there is lost"
        if found[0] is Found.NEW and self.said.startswith("refused"):
            return Found.MIXTURE, "it is told as refused and stands"
        if found[0] in {Found.OLD, Found.ASIDE}:
            restore_backup(self.folder / "saved.backup", self.path, NOW)
            again = super().judge()
            return found if again[0] is Found.NEW else (Found.MIXTURE, f"done again: {again[1]}")
        return found

    def found(self) -> Judged:
        """What is there."""
        return super().judge()


class RestoreNew(Restore):
    """A backup is brought back where nothing stands."""

    name = "restore where nothing is"

    def prepare(self) -> None:
        """Take the class away."""
        super().prepare()
        self.path.unlink()
        self.old = {}

    def found(self) -> Judged:
        """Nothing is there, or the backup."""
        return super().found() if self.path.exists() else (Found.OLD, "")


class RestoreDamaged(Restore):
    """A backup is brought back where a damaged file stands."""

    name = "restore over a damaged file"
    damaged = b"kites" * 1000

    def prepare(self) -> None:
        """Damage the class."""
        super().prepare()
        self.path.write_bytes(self.damaged)
        self.path.with_name("room.class-wal").write_bytes(self.damaged)
        self.old = {}

    def found(self) -> Judged:
        """The damaged file is there or lies aside, and then the backup or nothing stands under the name."""
        if self.path.exists() and self.path.read_bytes() == self.damaged:
            return Found.OLD, ""
        if self.damaged not in [one.read_bytes() for one in damaged_of(self.path)]:
            return Found.MIXTURE, "the damaged file is lost"
        return super().found() if self.path.exists() else (Found.ASIDE, "")


class Erase(ClassAct):
    """A child is erased from the file, from a backup and from the pages made."""

    name = "erase a child"

    def prepare(self) -> None:
        """Make the class, a backup and a printed page."""
        super().prepare()
        back_up_before(self.path, 1)
        put_night(self.folder / "made" / "night-1" / "tomorrow" / "ab12", "monday", {"pupil-k01.pdf": b"K01"})

    def do(self) -> str:
        """Erase K01."""
        done = erase_everywhere(self.book, 1, "K01", made=self.folder / "made")
        self.book.close()
        cleaned, left = (",".join(one.name for one in names) for names in (done.cleaned, done.left))
        return f"{'traces' if done.traces else ''}|{cleaned}|{left}"

    def judge(self) -> Judged:
        """The child is whole or gone, in the file and in the backup; told as gone, no byte of it is left."""
        trace = self._told_gone() if self.said.startswith(DONE) else ""
        found = super().judge()
        for one in sorted(backups_folder(self.path).glob("room.class.*.backup")):
            found = (
                found
                if found[0] is Found.MIXTURE or self.judged(one)[0] is not Found.MIXTURE
                else self.judged(one)
            )
        return (Found.MIXTURE, trace) if trace else found

    def _told_gone(self) -> str:
        """Return where a trace is that was told as gone."""
        traces, cleaned, left = self.said.removeprefix(DONE).strip().split("|")
        pages = self.folder / "made" / "night-1" / "tomorrow"
        if pages.exists() and pages.name not in left.split(","):
            return "pages that are not named"
        gone = [backups_folder(self.path) / name for name in cleaned.split(",") if name]
        for one in (*gone, *(() if traces else (self.path,))):
            for end in ("", "-wal", "-journal"):
                file = one.with_name(f"{one.name}{end}")
                if file.exists() and REMARKABLE.encode() in file.read_bytes():
                    return f"a trace in {file.name}"
        return ""


class OpenOlder(ClassAct):
    """A file of the first release is opened, and so brought forward."""

    name = "open an older file"

    def prepare(self) -> None:
        """Take the example."""
        shutil.copy(OLDER, self.path)
        self.old = rows_of(self.path)

    def open(self) -> None:
        """Nothing is open."""

    def do(self) -> str:
        """Open it."""
        self.store = open_store(self.path)
        return ""

    def judge(self) -> Judged:
        """It is of the first release or of today's, with every row; opened again it is today's."""
        found = self.judged(self.path)
        after, why = super().judge()
        if after is not Found.NEW:
            return Found.MIXTURE, why or f"it stays {self.old[VERSION_TABLE]}"
        return found
