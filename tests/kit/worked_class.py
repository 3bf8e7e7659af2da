"""A class worked through a whole round, so that a child stands in every place where one can stand."""

import gc
import json
import shutil
from pathlib import Path
from types import FrameType

from msgspec.structs import replace

from onewhole.desk.classes.class_records import set_night
from onewhole.desk.keep.backups import back_up_daily, backups_folder
from onewhole.desk.keep.way_back import moved_aside
from onewhole.desk.pupil.pupil_export import put_export
from tests.kit.doors import NOW, Opened
from tests.kit.memory import every_object
from tests.kit.paper_cells import UNSURE, keep_cell, paper_cell
from tests.kit.waiting import until

TYPED = "title: Kite tails\n\n1. 9 5/8 - 4 6/8\n2. 8 1/6 - 3 5/6\n3. 6 1/4 - 3 2/4\n"
CHILD, OTHER = "/mine/1/pupil/K01", "K02"
NIGHT = "/mine/1/night/1"


def child_name() -> str:
    """Return the child's name, which no other test uses, put together each time: no code holds it."""
    return "".join(reversed("alledaripS"))


def child_answer() -> str:
    """Return an answer that nobody else writes, in the same way."""
    return "".join(reversed("79/19 38"))


def tells(content: bytes | str) -> bool:
    """Say whether a text or some bytes tell the child's name or answer."""
    if isinstance(content, str):
        return child_name() in content or child_answer() in content
    return child_name().encode() in content or child_answer().encode() in content


def work_through(door: Opened, folder: Path) -> None:
    """Begin a class; set, mark, look, move, print, give out, save, back up; leave what kills leave."""
    _ok(door.post("/welcome", name="Room 12", pupils="", names=f"{child_name()}\nLark\nKestrel"))
    book = door.door.books["mine"]
    set_night(book, 1, TYPED, NOW.date(), NOW)
    cells = [
        *(("K01", label, text) for label, text in (("1", child_answer()), ("2", "5 4/6"), ("3", "3 1/4"))),
        *((OTHER, label, text) for label, text in (("1", "5 1/8"), ("2", "5 4/6"), ("3", "3 1/4"))),
        *(("K03", label, text) for label, text in (("1", "4 7/8"), ("2", "4 2/6"), ("3", "2 3/4"))),
    ]
    _ok(door.post(f"{NIGHT}/marking/keep", cells=json.dumps([[*cell, ""] for cell in cells])))
    _ok(door.post(f"{NIGHT}/marking/judge", label="1", text=child_answer()))
    _ok(
        door.post(
            f"{NIGHT}/marking/read-as",
            code="K01",
            label="1",
            typed=child_answer(),
            read=child_answer(),
            saw=child_answer(),
        )
    )
    _ok(door.post(f"{NIGHT}/tomorrow/aside", code="K01", aside="yes"))
    _ok(door.post(f"{NIGHT}/tomorrow/aside", code="K01", aside="no"))
    talk = {"asked": "9 1/3 - 6 2/3", "wrote": child_answer(), "word": "slip"}
    _ok(door.post(f"{NIGHT}/tomorrow/asked", code="K01", **talk))
    _ok(door.post(f"{CHILD}/asked/back", night="1", line="1"))
    _ok(door.post("/mine/1/class/days", code="K01", joined="2026-08-20", left="", saw="|"))
    _ok(door.post("/mine/1/class/forms", code="K01", form="braille", saw=""))
    _ok(door.post(f"{NIGHT}/papers", code="K01", said="late", saw="here"))
    line = {"what": f"the table of {child_name()}", "to": "the family", "why": "", "day": "2026-09-01"}
    _ok(door.post(f"{CHILD}/given", **line))
    read = replace(UNSURE, text=child_answer(), choices=(child_answer(),))
    keep_cell(book, paper_cell(1, "K01", "1", read))
    for page in (f"{NIGHT}/marking", f"{NIGHT}/tomorrow", "/mine/1/week", "/mine/1/class", "/mine/keep"):
        _ok(door.get(page))
    for more in ("", "/held", "/held.json", "/held.csv", "/erase"):
        _ok(door.get(f"{CHILD}{more}"))
    _ok(door.post(f"{NIGHT}/tomorrow/paper", every="yes"))
    until(lambda: not door.door.jobs.under_way(), "tomorrow's pages")
    put_export(book, 1, "K01", folder / "given")
    _ok(door.get("/mine/keep/backup"))
    back_up_daily(book, backups_folder(book.path), NOW)
    _what_kills_leave(book.path)


def _what_kills_leave(path: Path) -> None:
    """A damaged file aside, half made copies in both folders, a hidden folder of pages."""
    copy = path.with_name("copy.class")
    (saved,) = backups_folder(path).iterdir()
    shutil.copy(saved, copy)
    aside = moved_aside(copy, NOW)
    aside.rename(aside.with_name(aside.name.replace("copy.class", path.name)))
    for folder in (path.parent, saved.parent):
        shutil.copy(saved, folder / f".{path.name}.abcdefgh.making")
    hidden = path.parent / "room12-made/mine/.night-1.ab12cd.0123.pages-ready/tomorrow"
    hidden.mkdir(parents=True)
    (hidden / "morning.pdf").write_bytes(child_name().encode())


def _ok(came: object) -> None:
    assert getattr(came, "status") in {200, 303}, getattr(came, "text")  # noqa: B009 - the answer's own type


def files_that_tell(folder: Path) -> set[str]:
    """Return the files under a folder that tell of the child."""
    return {
        file.relative_to(folder).as_posix()
        for file in folder.rglob("*")
        if file.is_file() and not file.is_symlink() and tells(file.read_bytes())
    }


def objects_that_tell() -> list[str]:
    """Return what holds the child's name or answer in this process: the type of each holder."""
    return _holders(every_object())


def _holders(stack: list[object]) -> list[str]:
    """Go from object to object; what a running function holds in its variables is passed over."""
    seen = {id(one) for one in stack} | {id(stack)}
    found = []
    while stack:
        one = stack.pop()
        if isinstance(one, FrameType):
            continue
        for inner in gc.get_referents(one):
            if isinstance(inner, str | bytes | bytearray):
                if tells(inner if isinstance(inner, str) else bytes(inner)):
                    found.append(type(one).__qualname__)
            elif id(inner) not in seen:
                seen.add(id(inner))
                stack.append(inner)
    return found
