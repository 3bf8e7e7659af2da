"""Ten million papers: grouped, fitted, weighed, written back, on this machine and on Dask; peers beside it.

Run: `python bench/district.py [--papers N] [--files N] [--peers PYTHON]`. One command makes the papers
(kept in the folder for temporary files), groups them by each engine in a process of its own, runs the whole
district in one process, on two worker processes of Dask, and on a scheduler with two workers started from the
command line, and compares all bytes; then it fits DINA to one page beside other Python packages. Those are in
no lock: PYTHON is one in which `pip install mirt psy knowledgespaces` was done; what is not there is said.
Ratios are to Polars in the same run. Goals on two quiet cores: grouping and fit in 10 s, odds in 120 s,
memory under 1 GB, the same bytes.
"""

import os
import resource
import subprocess
import sys
import tempfile
from argparse import ArgumentParser
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from time import perf_counter, process_time

import numpy as np
from district_groups import ENGINES
from district_skills import DRAWN, PACKAGES
from measuring import process_told

from onewhole.marking.district.page_asked import page_asked
from onewhole.mastery.needed_skills import needed_skills
from onewhole.mastery.right_wrong import RightWrong
from onewhole.mastery.skill_model import SkillModel
from onewhole.presses.district.distinct import distinct_rows
from onewhole.presses.district.page_rows import page_rows, pages_of
from onewhole.presses.skills.fit import fit_skills

HERE = Path(__file__).parent
COUNT, FILES = 10_000_000, 40
DASK = (sys.executable, "-m", "dask")
#: The workers are a process each, and see the same folders.
ONE_THREAD = {**os.environ, "POLARS_MAX_THREADS": "1"}


def main() -> None:
    """Make the papers, run everything, print the table."""
    parser = ArgumentParser(description=__doc__)
    parser.add_argument("--papers", type=int, default=COUNT)
    parser.add_argument("--files", type=int, default=FILES)
    parser.add_argument("--peers", default=sys.executable)
    asked = parser.parse_args()
    root = Path(tempfile.gettempdir()) / f"onewhole-district-{asked.papers}-{asked.files}-hashed"
    papers = root / "papers"
    if not papers.exists():
        making = [HERE / "district_papers.py", root / "making", str(asked.papers), str(asked.files)]
        timed("papers made", [sys.executable, *making])
        (root / "making").rename(papers)
    size = sum(one.stat().st_size for one in papers.rglob("*.parquet")) / 1e6
    print(f"{asked.papers:,} papers in {asked.files} files, {size:.0f} MB; {os.cpu_count()} processors")
    group(papers)
    found = {name: run(name, papers, root, *how) for name, how in {"here": (0,), "workers": (2,)}.items()}
    with scheduler(root) as address:
        found["scheduler"] = run("scheduler", papers, root, 0, address)
    for name in ("workers", "scheduler"):
        print(f"{name}: the same bytes as here: {all_bytes(found[name]) == all_bytes(found['here'])}")
    skills(found["here"] / "counts", root / "rows.npz", asked.peers)


def run(name: str, papers: Path, root: Path, workers: int, address: str = "") -> Path:
    """Run the whole district in a process of its own, and return where what it found is."""
    goal = Path(tempfile.mkdtemp(dir=root)) / "found"
    print(f"{name}; load of the machine {os.getloadavg()[0]:.1f}", flush=True)
    command = [sys.executable, HERE / "district_run.py", papers, goal, str(workers), address]
    subprocess.run(command, check=True)
    return goal


@contextmanager
def scheduler(root: Path) -> Iterator[str]:
    """Start a scheduler and two workers from the command line, as on a cluster, and give its address."""
    address = "tcp://127.0.0.1:18786"
    quiet = {"stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL, "env": ONE_THREAD, "cwd": root}
    worker = [*DASK, "worker", address, "--nthreads", "1", "--no-dashboard", "--host", "127.0.0.1"]
    start = [*DASK, "scheduler", "--host", "127.0.0.1", "--port", "18786", "--no-dashboard"]
    started = [subprocess.Popen(command, **quiet) for command in (start, worker, worker)]  # type: ignore[call-overload]
    try:
        yield address
    finally:
        for one in reversed(started):
            one.terminate()
        for one in started:
            one.wait(30)


def group(folder: Path) -> None:
    """Time grouping alone, each engine in a process of its own."""
    usual = None
    for name in ENGINES:
        usual = timed(f"group by {name}", [sys.executable, HERE / "district_groups.py", name, folder], usual)


def skills(counts: Path, rows: Path, peers: str) -> None:
    """Fit DINA to the first page: ours to all papers and to those drawn, and the other packages."""
    files = sorted(counts.glob("*.parquet"))
    page = page_rows(files, page_asked(pages_of(files)[0]))
    labels = tuple(str(at) for at in range(page.codes.shape[1]))
    signs = np.stack([page.signs(at)[page.codes[:, at]] for at in range(len(labels))], axis=1)
    whole = (signs != ord(".")).all(axis=1)
    first, place = distinct_rows(signs[whole])
    right = (signs[whole][first] == ord("1")).astype(np.int64)
    times = np.rint(np.bincount(place, page.papers[whole]))
    q = needed_skills(labels, page.asked.skills)
    assert q is not None
    needs = np.array([[mask >> at & 1 for at in range(len(q.skills))] for mask in q.needs])
    np.savez(rows, right=right, needs=needs, times=times)
    drawn = np.random.default_rng(1).choice(len(right), DRAWN, p=times / times.sum())
    for some in (times, np.bincount(drawn, minlength=len(right))):
        kept = np.flatnonzero(some)
        texts = tuple("".join(map(str, row)) for row in right[kept].tolist())
        table = RightWrong(labels, texts, tuple(int(one) for one in some[kept]))
        begun = process_time()
        fitted = fit_skills(table, q, SkillModel.DINA, climbs=1, seed=1)
        told = f"{table.pupils:,} papers, log-likelihood {float(fitted.climbed.log_likelihood):.3f}"
        print(f"  DINA by ours     CPU {process_time() - begun:8.2f} s: {told}", flush=True)
    for name in PACKAGES:
        timed(f"DINA by {name}", [peers, HERE / "district_skills.py", name, rows])


def timed(name: str, command: list[str | Path], usual: float | None = None) -> float | None:
    """Run a command, print its time, its processor seconds beside the usual ones, and its memory."""
    begun, worked = perf_counter(), processor()
    try:
        megabytes, said = process_told(map(str, command))
    except subprocess.CalledProcessError as failed:
        why = (failed.stderr or "").strip().splitlines()[-1:]
        print(f"  {name:22} could not be run: {''.join(why)}", flush=True)
        return usual
    cpu = processor() - worked
    beside = f", {cpu / usual:.1f} times" if usual else ""
    print(
        f"  {name:22} {perf_counter() - begun:7.2f} s, CPU {cpu:7.2f} s{beside}, {megabytes:5.0f} MB: {said}",
        flush=True,
    )
    return usual or cpu


def processor() -> float:
    """Return the processor's seconds of all children that ended."""
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def all_bytes(folder: Path) -> dict[str, bytes]:
    """Return what a run left, file by file."""
    return {
        f"{one.relative_to(folder)}": one.read_bytes() for one in sorted(folder.rglob("*")) if one.is_file()
    }


if __name__ == "__main__":
    main()
