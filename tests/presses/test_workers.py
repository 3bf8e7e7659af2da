"""A process that we started is there no longer than the process that started it."""

import os
import select
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from onewhole.presses import workers
from tests.kit.waiting import GIVE_UP

#: Three ways to start a process that has something to wait for; each prints its numbers, and then waits too.
POOL = """
import os
from multiprocessing.forkserver import _forkserver
from onewhole.presses.workers import workers
if __name__ == "__main__":
    with workers(2) as pool:
        for _ in range(2):
            pool.submit(os.getpid).result()
        print(*pool._processes, _forkserver._forkserver_pid, flush=True)
        os.read(0, 1)
"""
BUSY = """
import os, time
from onewhole.presses.workers import workers
if __name__ == "__main__":
    with workers(1) as pool:
        print(pool.submit(os.getpid).result(), flush=True)
        pool.submit(time.sleep, 10_000)
        os.read(0, 1)
"""
DECODER = """
import os
from onewhole.presses.decoder import decode_for_parent
from onewhole.presses.limited import limited
with limited(decode_for_parent, 1, memory=1 << 30, seconds=9_999) as process:
    print(process.pid, flush=True)
    os.read(0, 1)
"""


@pytest.mark.skipif(not hasattr(os, "pidfd_open"), reason="another way to see a process end is needed here")
@pytest.mark.parametrize("how", [signal.SIGKILL, signal.SIGTERM])
@pytest.mark.parametrize("code", [POOL, BUSY, DECODER])
def test_a_process_ends_with_its_parent(code: str, how: signal.Signals, tmp_path: Path) -> None:
    """Whatever ends the parent, and whether the process works or waits for work."""
    program = tmp_path / "program.py"
    program.write_text(code)
    with subprocess.Popen(
        [sys.executable, program], stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL
    ) as parent:
        assert parent.stdout is not None
        started = [os.pidfd_open(int(number)) for number in parent.stdout.readline().split()]
        assert started
        parent.send_signal(how)
        parent.wait()
        for handle in started:
            assert select.select([handle], [], [], GIVE_UP)[0]
            os.close(handle)


def test_without_fork_each_process_begins_anew(monkeypatch: pytest.MonkeyPatch) -> None:
    """As on Windows: the pool is told so, and gives what was asked."""
    monkeypatch.setattr(workers, "get_all_start_methods", lambda: ["spawn"])
    with workers.workers(1) as pool:
        assert pool._mp_context is not None
        assert pool._mp_context.get_start_method() == "spawn"
        assert pool.submit(abs, -7).result() == 7
