"""What every bench measures with: turns of time, kept memory, and the memory of a process."""

import subprocess
import sys
import tracemalloc
from collections.abc import Callable, Iterable, Mapping, Sequence
from statistics import median
from time import perf_counter

#: Something to do with each of some items.
Runner = tuple[Callable[..., object], Sequence[object]]


def microseconds(acts: Mapping[str, Runner], rounds: int) -> dict[str, float]:
    """Return the median microseconds an item, all acts taking turns so that a busy moment hits all alike."""
    taken: dict[str, list[float]] = {name: [] for name in acts}
    for _ in range(rounds):
        for name, (act, items) in acts.items():
            began = perf_counter()
            for item in items:
                act(item)
            taken[name].append((perf_counter() - began) / max(1, len(items)) * 1e6)
    return {name: median(each) for name, each in taken.items()}


def kilobytes(act: Callable[..., object], items: Sequence[object]) -> tuple[float, float]:
    """Return the kilobytes that one result keeps, and the most that stood at once for it."""
    peaks = []
    tracemalloc.start()
    kept = []
    for item in items:
        tracemalloc.reset_peak()
        before, _ = tracemalloc.get_traced_memory()
        kept.append(act(item))
        peaks.append(tracemalloc.get_traced_memory()[1] - before)
    now, _ = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    return now / len(kept) / 1024, max(peaks) / 1024


def process_megabytes(command: Iterable[str]) -> float:
    """Return the largest memory of a command, asked by a small process of its own."""
    return process_told(command)[0]


def process_told(command: Iterable[str]) -> tuple[float, str]:
    """Return the largest memory of a command, and the last line it prints, by a small process of its own.

    Raises CalledProcessError where the command fails; what it said stands in ``stderr``.
    """
    code = (
        "import resource, subprocess, sys;"
        "ran = subprocess.run(sys.argv[1:], capture_output=True, text=True);"
        "sys.stderr.write(ran.stderr);"
        "print(ran.stdout.strip().rpartition(chr(10))[2]);"
        "print(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss);"
        "sys.exit(ran.returncode)"
    )
    ran = subprocess.run([sys.executable, "-c", code, *command], check=True, capture_output=True, text=True)
    said, kilobytes_most = ran.stdout.splitlines()[-2:]
    return int(kilobytes_most) / (1024 * 1024 if sys.platform == "darwin" else 1024), said
