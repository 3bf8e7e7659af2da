"""Ten million papers: grouped, fitted, weighed, written back; Polars, DuckDB and Dask beside each other.

Run: `python bench/district.py [PAPERS [FILES]]`. The papers are made first (bench/district_papers.py) and
kept in the folder for temporary files. The whole command runs in a process of its own on this machine, then
on a Dask cluster of two worker processes, and what they wrote is compared byte by byte. Grouping alone is
timed beside with DuckDB (1 GB at most, two threads, no extension fetched); the ratio is to Polars in the
same run. Goals on two quiet cores: grouping and fit in 10 s, odds in 120 s, memory
under 1 GB, the same bytes.
"""

import os
import resource
import subprocess
import sys
import tempfile
from importlib.util import find_spec
from pathlib import Path
from time import perf_counter

from district_papers import papers
from measuring import process_megabytes

COUNT, FILES = 10_000_000, 40
KEYS = "school, grade, night, problems, answers"
RUN = """
import resource, sys
from pathlib import Path
from onewhole.desk.district.running import DistrictWishes, run_district
if __name__ == "__main__":
    done = run_district([Path(sys.argv[1])], Path(sys.argv[2]), DistrictWishes(workers=int(sys.argv[3])))
    for name, seconds in done.seconds.items():
        print(f"    {name:10} {seconds:8.2f} s")
    first = sum(done.seconds[part] for part in ("count", "group", "fit"))
    print(f"    grouping and fit {first:.2f} s, odds {done.seconds['odds']:.2f} s")
    most = resource.getrusage(resource.RUSAGE_SELF), resource.getrusage(resource.RUSAGE_CHILDREN)
    cpu = sum(one.ru_utime + one.ru_stime for one in most)
    memory = max(one.ru_maxrss for one in most) / 1024
    print(f"    processor {cpu:.1f} s; most memory of a process {memory:.0f} MB")
"""
GROUPERS = {
    "Polars": "import polars as pl, sys; "
    "print(pl.scan_parquet(sys.argv[1] + '/**/*.parquet').group_by({keys}).len()"
    ".select(pl.len()).collect(engine='streaming').item())",
    "DuckDB": "import duckdb, sys; c = duckdb.connect(config={{'memory_limit': '1GB', 'threads': 2, "
    "'autoinstall_known_extensions': 'false'}}); print(c.execute(f\"select count(*) from (select count(*) "
    "from read_parquet('{{sys.argv[1]}}/**/*.parquet') group by {sql})\").fetchone()[0])",
}


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else COUNT
    files = int(sys.argv[2]) if len(sys.argv) > 2 else FILES
    root = Path(tempfile.gettempdir()) / f"onewhole-district-{count}-{files}"
    if not (root / "papers").exists():
        papers(root / "making", count, files)
        (root / "making").rename(root / "papers")
    print(f"{count:,} papers in {files} files; load of the machine {os.getloadavg()[0]:.1f}")
    group(root / "papers")
    for name, workers in (("this process", 0), ("Dask, two workers", 2)):
        goal = Path(tempfile.mkdtemp(dir=root)) / "found"
        begun = perf_counter()
        print(f"{name}; load {os.getloadavg()[0]:.1f}", flush=True)
        script = root / "run.py"
        script.write_text(RUN)
        subprocess.run([sys.executable, script, root / "papers", goal, str(workers)], check=True)
        print(f"    whole      {perf_counter() - begun:8.2f} s", flush=True)
        (root / f"last-{workers}").unlink(missing_ok=True)
        (root / f"last-{workers}").symlink_to(goal)
    print("the same bytes:", all_bytes(root / "last-0") == all_bytes(root / "last-2"))


def group(folder: Path) -> None:
    """Time grouping alone, each in a process of its own."""
    keys = ", ".join(f"'{one}'" for one in KEYS.split(", "))
    usual = usual_cpu = 0.0
    for name, code in GROUPERS.items():
        if find_spec(name.lower()) is None:
            print(f"{name} is not installed here (it is no part of the locks), so it is not timed")
            continue
        command = [sys.executable, "-c", code.format(keys=keys, sql=KEYS), str(folder)]
        begun, worked = perf_counter(), processor()
        megabytes = process_megabytes(command)
        wall, cpu = perf_counter() - begun, processor() - worked
        usual, usual_cpu = usual or wall, usual_cpu or cpu
        times = f"{wall / usual:.1f} and {cpu / usual_cpu:.1f} times"
        print(
            f"  group by {name:8} {wall:7.2f} s, CPU {cpu:6.2f} s, {megabytes:5.0f} MB, {times}", flush=True
        )


def processor() -> float:
    """Return the processor's seconds of all children that ended."""
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def all_bytes(folder: Path) -> dict[str, bytes]:
    found = folder.resolve()
    return {
        f"{one.relative_to(found)}": one.read_bytes() for one in sorted(found.rglob("*")) if one.is_file()
    }


if __name__ == "__main__":
    main()
