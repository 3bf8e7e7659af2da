"""Every bench, one after another, each in a process of its own; printed as one report.

Run: `make bench`, or `python bench/all.py heart start` for some of them.
"""

import platform
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).parent

#: In the order of the report; a bench is a script of this folder that prints its own table.
BENCHES = (
    "speed_table",
    "heart",
    "marking",
    "pages",
    "worked_once",
    "compose",
    "film",
    "serve",
    "marking_grid",
    "start",
    "year",
    "year_plan",
    "tomorrow",
    "digests",
    "skills",
    "district",
    "paper",
)


def main() -> None:
    asked = sys.argv[1:] or BENCHES
    if unknown := [name for name in asked if not (HERE / f"{name}.py").is_file()]:
        sys.exit(f"there is no bench called {', '.join(unknown)}. Choose from: {', '.join(BENCHES)}.")
    print(f"Python {platform.python_version()}, {platform.system()} {platform.machine()}", flush=True)
    for name in asked:
        print(f"\n== {name} ==", flush=True)
        subprocess.run([sys.executable, str(HERE / f"{name}.py")], check=True)


if __name__ == "__main__":
    main()
