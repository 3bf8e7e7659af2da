"""Acts that write pages and single files."""

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from types import MappingProxyType

from onewhole.presses import page_folder, settling
from onewhole.presses.files import write
from tests.kit.faults.act import Act, Found, Judged
from tests.kit.page_folders import found_in, hidden_beside, put_night

Files = Mapping[str, bytes]
MONDAY: Files = MappingProxyType({f"page-{at}.pdf": bytes([at]) * 3000 for at in range(6)})
TUESDAY: Files = MappingProxyType({f"page-{at}.pdf": bytes([at + 100]) * 4000 for at in range(4)})
WEDNESDAY: Files = MappingProxyType({"page.pdf": b"wednesday"})
MINE: Files = MappingProxyType({"letter.txt": b"mine", "kites/red.txt": b"mine too"})


class PutNight(Act):
    """Tonight's pages come into the folder of last night's, in which things of the teacher's lie."""

    name = "put a night's pages"
    old: Files | None = MONDAY
    mine: Files = MINE

    @property
    def out(self) -> Path:
        """The folder of pages."""
        return self.folder / "out"

    def prepare(self) -> None:
        """Put last night's pages; lay a letter and a folder of the teacher's beside them."""
        put_night(self.out, "monday", MONDAY)
        (self.out / "kites").mkdir()
        for name, content in self.mine.items():
            (self.out / name).write_bytes(content)

    def do(self) -> str:
        """Put tonight's."""
        put_night(self.out, "tuesday", TUESDAY)
        return ""

    def judge(self) -> Judged:
        """Old or new, and the teacher's own in either; the next run leaves nothing hidden."""
        found = found_in(self.out) if self.out.exists() else None
        hidden = hidden_beside(self.out)
        put_night(self.out, "wednesday", WEDNESDAY)
        after = found_in(self.out)
        if after != {**WEDNESDAY, **self.mine} or hidden_beside(self.out):
            return Found.MIXTURE, f"the next run leaves {sorted(after)} {hidden_beside(self.out)}"
        return self.named(found, hidden)

    def named(self, found: dict[str, bytes] | None, hidden: list[str]) -> Judged:
        """Say which night was found, with all that is the teacher's; what is refused tells where it is."""
        if found == {**TUESDAY, **self.mine}:
            honest = not self.said.startswith("refused") or "The new pages are in their place" in self.said
            return (Found.NEW, "") if honest else (Found.MIXTURE, "the new stands and is told as not there")
        if found == (None if self.old is None else {**self.old, **self.mine}):
            return Found.OLD, ""
        return Found.MIXTURE, f"{None if found is None else sorted(found)} {hidden}"


class PutFirstNight(PutNight):
    """Pages come into a folder that is not there yet."""

    name = "put pages into a new folder"
    old = None
    mine = MappingProxyType({})

    def prepare(self) -> None:
        """There is nothing."""


class PutNightInTwoSteps(PutNight):
    """The same as the first on a disk where names cannot trade places.

    Between its two steps nothing stands under the name, and both nights lie hidden beside; folders of the
    teacher's are moved after them.
    """

    name = "put a night's pages in two steps"

    def do(self) -> str:
        """Put tonight's."""
        with _no_trade():
            return super().do()

    def named(self, found: dict[str, bytes] | None, hidden: list[str]) -> Judged:
        """Say which night was found, and whether anything lies aside."""
        pages = {name: content for name, content in (found or {}).items() if name not in self.mine}
        state, why = super().named(found, hidden)
        return (
            (Found.ASIDE, "")
            if hidden and pages in ({}, MONDAY, TUESDAY) and state is Found.MIXTURE
            else (state, why)
        )


@contextmanager
def _no_trade() -> Iterator[None]:
    """Let no two names trade places."""
    kept = vars(page_folder)["swapped"]
    never: Callable[[Path, Path], bool] = lambda _one, _other: False  # noqa: E731 - a name for its type
    for module in (page_folder, settling):
        vars(module)["swapped"] = never
    try:
        yield
    finally:
        for module in (page_folder, settling):
            vars(module)["swapped"] = kept


class WriteFile(Act):
    """One file is written over another."""

    name = "write one file"
    old, new = b"old" * 2000, b"new" * 3000

    @property
    def path(self) -> Path:
        """The file."""
        return self.folder / "notebook.json"

    def prepare(self) -> None:
        """Write the old one."""
        self.path.write_bytes(self.old)

    def do(self) -> str:
        """Write the new one."""
        write(self.path, self.new, private=True)
        return ""

    def judge(self) -> Judged:
        """Old or new."""
        content = self.path.read_bytes()
        if content not in (self.old, self.new):
            return Found.MIXTURE, f"{len(content)} bytes"
        return (Found.OLD if content == self.old else Found.NEW), ""
