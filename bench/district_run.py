"""One run of a district, told part by part: seconds on the clock, of the processor, and memory.

Run by bench/district.py: `python bench/district_run.py FOLDER GOAL WORKERS SCHEDULER`.
"""

import resource
import sys
from pathlib import Path
from time import process_time

from onewhole.desk.district import running

PARTS = ("start", "count", "group", "fit", "learn", "odds", "tables", "pupils", "report")
STATUS, FORGET = Path("/proc/self/status"), Path("/proc/self/clear_refs")
#: What the processor did and the most memory that there was, by part of the run.
worked: dict[str, float] = {}
most: dict[str, float] = {}


class Watched(running._Clock):  # noqa: SLF001
    """A clock that looks at the processor and at memory, too; the system's own peak is set back each time."""

    def __init__(self) -> None:
        super().__init__()
        self._worked = process_time()

    def lap(self, name: str) -> None:
        """Say that a part is done."""
        super().lap(name)
        now = process_time()
        worked[name] = worked.get(name, 0) + now - self._worked
        most[name] = max(most.get(name, 0), _peak())
        self._worked = process_time()


def _peak() -> float:
    """Return the most megabytes since it was asked last; 0 where the system does not tell."""
    if not STATUS.exists():
        return 0
    [line] = [one for one in STATUS.read_text().splitlines() if one.startswith("VmHWM")]
    FORGET.write_text("5")
    return int(line.split()[1]) / 1024


def main() -> None:
    """Run it and print a line a part."""
    folder, goal, workers, scheduler = sys.argv[1:]
    running._Clock = Watched  # type: ignore[misc]  # noqa: SLF001
    wishes = running.DistrictWishes(workers=int(workers), scheduler=scheduler)
    done = running.run_district([Path(folder)], Path(goal), wishes)
    whole = sum(done.seconds.values())
    for name in PARTS:
        clock = done.seconds[name]
        print(
            f"    {name:8} {clock:8.2f} s, {100 * clock / whole:3.0f} %, processor {worked[name]:7.2f} s, "
            f"most {most[name]:5.0f} MB"
        )
    first = [done.seconds[part] for part in ("count", "group", "fit")]
    odds = [done.seconds[part] for part in ("learn", "odds")]
    print(f"    grouping and fit {sum(first):.2f} s (goal 10), odds {sum(odds):.2f} s (goal 120)")
    children = resource.getrusage(resource.RUSAGE_CHILDREN)
    cpu = sum(worked.values()) + children.ru_utime + children.ru_stime
    print(
        f"    whole {whole:.2f} s, processor {cpu:.1f} s with its workers; most memory of this process "
        f"{max(most.values()):.0f} MB (goal 1000), of a worker {children.ru_maxrss / 1024:.0f} MB",
        flush=True,
    )


if __name__ == "__main__":
    main()
