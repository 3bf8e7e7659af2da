"""A cluster of Dask: two workers give the same bytes, and one that is killed loses nothing."""

import subprocess
import sys
from pathlib import Path

import pytest

from onewhole.desk.district.running import run_district
from onewhole.errors import InputError
from onewhole.presses.district.engine import Cluster
from tests.kit.district_papers import small_district

#: Whoever counts, and whoever weighs, first is killed in the middle of it, as by the system, once.
KILLED = """
import faulthandler, sys
from pathlib import Path
from onewhole.desk.district.running import DistrictWishes, run_district
from onewhole.presses.district import counting, page_work

if __name__ == "__main__":
    faulthandler.dump_traceback_later(150, exit=True)  # whatever happens, it ends, and says where it stood
    papers, goal, marks = map(Path, sys.argv[1:])
    count, weigh = counting.count, page_work.weigh_part
    def first(act, name):
        mark = str(marks / name)
        def worker(asked):
            import os, signal
            try:
                os.close(os.open(mark, os.O_CREAT | os.O_EXCL))
            except FileExistsError:
                return act(asked)
            os.kill(os.getpid(), signal.SIGKILL)
        return worker
    counting.count, page_work.weigh_part = first(count, "counted"), first(weigh, "weighed")
    run_district([papers], goal, DistrictWishes(workers=2))
"""


def files(folder: Path) -> dict[str, bytes]:
    """Every file of a run."""
    return {f"{one.relative_to(folder)}": one.read_bytes() for one in folder.rglob("*") if one.is_file()}


@pytest.mark.more("desk/district/test_running.py")
def test_a_worker_that_is_killed_loses_nothing(tmp_path: Path) -> None:
    """Two of them die, one while it counts and one while it weighs: every file is as from one process."""
    papers = small_district(tmp_path / "papers")
    script = tmp_path / "killed.py"
    script.write_text(KILLED)
    marks = tmp_path / "marks"
    marks.mkdir()
    places = [tmp_path / "cluster", tmp_path / "here"]
    subprocess.run([sys.executable, script, papers, places[0], marks], check=True, timeout=200)
    run_district([papers], places[1])
    assert sorted(path.name for path in marks.iterdir()) == ["counted", "weighed"]
    assert files(places[0]) == files(places[1])


class Lazy:
    """A cluster where nobody works: its parts are done only when they are begun for the second time."""

    status = "pending"

    def __init__(self, begun: int) -> None:
        """Say after how many beginnings again a part is done."""
        self.begun = begun

    def map(self, _act: object, parts: list[object], *, pure: bool) -> list["Lazy"]:
        """Take parts, and do nothing."""
        assert not pure
        return [self for _ in parts]

    def submit(self, _act: object, _part: object, *, pure: bool) -> "Lazy":
        """Take a part again."""
        assert not pure
        self.begun -= 1
        return self

    def call_stack(self) -> dict[str, object]:
        """Say who works."""
        return {}

    def gather(self, futures: list[object]) -> list[str]:
        """Give what was made."""
        return ["made" for _ in futures]

    def wait(self, _futures: object, *, timeout: int) -> None:
        """Be done, or not in time."""
        if self.begun > 0:
            raise TimeoutError(timeout)


def test_what_nobody_works_at_is_begun_again() -> None:
    """Parts that hang are given out again; a cluster that is gone is not waited for."""
    lazy, gone = Lazy(begun=2), Lazy(begun=1000)
    assert Cluster(lazy, lazy.wait).of_all(str, [1]) == ["made"]
    with pytest.raises(InputError, match="No worker is left"):
        Cluster(gone, gone.wait).of_all(str, [1])
