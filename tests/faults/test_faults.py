"""Every call of the system fails once, in every act that keeps a class's work: old or new, never a mixture.

`shim.c` stands between the program and the C library. It counts the calls on the files of an act, and fails
the n-th of a kind: with an error, with an error for ever after, with half of it written, or by ending the
process there. `make test` takes a seeded sample; ONEWHOLE_WHOLE_WALK=1 (`make walk`) fails every call in
every way there is. The table is in the report.
"""

import json
import os
import random
import shutil
import subprocess
import sys
import tempfile
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.kit.faults.act import DONE, ENDED, Found
from tests.kit.faults.maker import ACTS
from tests.kit.faults.plan import Call, FaultPlan, plans
from tests.kit.how_much import sample

EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
ROOT = Path(__file__).parents[2]
#: Memory that behaves as a disk, where there is one: putting bytes on it costs nothing.
QUICK = Path("/dev/shm")  # noqa: S108 - what is made there has a name of chance


class Orders:
    """A process that does acts with faults."""

    def __init__(self, shim: Path, folder: Path) -> None:
        """Start it, with the shim loaded first."""
        self._process = subprocess.Popen(
            [sys.executable, "-m", "tests.kit.faults.maker", str(folder)],
            cwd=ROOT,
            env={**os.environ, "LD_PRELOAD": str(shim), "PYTHONPATH": os.pathsep.join(sys.path)},
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )

    def ask(self, order: object) -> dict[str, str]:
        """Give an order and return its answer."""
        assert self._process.stdin is not None
        assert self._process.stdout is not None
        self._process.stdin.write(json.dumps(order) + "\n")
        self._process.stdin.flush()
        line = self._process.stdout.readline()
        assert line, f"the process ended at {order}"
        answer: dict[str, str] = json.loads(line)
        return answer

    def end(self) -> None:
        """There are no more orders."""
        self._process.communicate()


@pytest.fixture(scope="session")
def shim(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The shim, compiled."""
    compiler = shutil.which("cc") or shutil.which("gcc")
    if sys.platform != "linux" or compiler is None:
        pytest.skip(
            "no system call is failed: that needs Linux and a C compiler (apt-get install gcc libc6-dev)"
        )
    made = tmp_path_factory.mktemp("shim") / "shim.so"
    source = str(Path(__file__).with_name("shim.c"))
    flags = ["-Wall", "-Wextra", "-Werror", "-O1", "-shared", "-fPIC"]
    subprocess.run([compiler, *flags, "-o", str(made), source, "-ldl"], check=True)
    return made


@pytest.fixture(scope="module")
def orders(shim: Path) -> Iterator[Orders]:
    """One process for all acts of this module."""
    with tempfile.TemporaryDirectory(dir=QUICK if os.access(QUICK, os.W_OK) else None) as folder:
        asked = Orders(shim, Path(folder))
        yield asked
        asked.end()


def chosen(act: str, call: Call, count: int) -> list[FaultPlan]:
    """Every fault of a kind of call, or a seeded sample."""
    every = list(plans(call, count))
    some = min(ACTS[act].sample, sample(2, 2, 3))
    if EVERYTHING or len(every) <= some:
        return every
    return random.Random(f"{act} {call.name}").sample(every, some)


@pytest.mark.slow
@pytest.mark.parametrize("act", ACTS)
def test_old_or_new_and_never_a_mixture(orders: Orders, act: str) -> None:
    """What is told as done is done; what is refused is refused in words, with what to do next."""
    counts = {Call[name]: int(count) for name, count in orders.ask(act).items()}
    assert all(counts[call] for call in (Call.OPEN, Call.WRITE, Call.SYNC)), "the shim sees no calls"
    table: dict[Call, Counter[str]] = {}
    wrong = []
    for call in Call:
        for plan in chosen(act, call, counts[call]):
            answer = orders.ask([plan.call, plan.at, plan.how, plan.number])
            told = answer["said"].split()[0].rstrip(":")
            table.setdefault(call, Counter()).update(("faults", answer["found"], told))
            found = Found(answer["found"])
            if found is Found.MIXTURE or told == "uncaught" or (told == DONE and found is not Found.NEW):
                wrong.append((plan, answer))
    columns = ("faults", *(one.value for one in Found), DONE, "refused", ENDED, "uncaught")
    print(f"{act:36}{'calls':>9}", *(f"{column:>8}" for column in columns))
    for call, row in table.items():
        print(f"  {call.name.lower():34}{counts[call]:9}", *(f"{row[column]:8}" for column in columns))
    assert not wrong, wrong[:5]
