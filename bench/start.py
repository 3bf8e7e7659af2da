"""How long the command takes to start, beside an empty Python, and what the slowest parts are.

Run: `python bench/start.py`. The goal is at most 4 times `python -c pass` for the command itself.
"""

import re
import subprocess
import sys
from pathlib import Path
from statistics import median
from time import perf_counter

from measuring import process_megabytes

COMMAND = str(Path(sys.executable).with_name("onewhole"))
ROOM = str(Path(__file__).parents[1] / "examples" / "room12")
ROUNDS = 15
GOAL = 4
STARTS = {
    "python -c pass": [sys.executable, "-c", "pass"],
    "onewhole --version": [COMMAND, "--version"],
    "onewhole --help": [COMMAND, "--help"],
    "onewhole work": [COMMAND, "work", "7 2/6 - 3 5/6"],
    "onewhole check": [COMMAND, "check", "7 2/6 = 6 8/6"],
    "onewhole patterns": [COMMAND, "patterns", "9 5/8 - 4 6/8"],
    "onewhole audit": [COMMAND, "audit", f"{ROOM}/sheet.txt"],
    "onewhole mark": [COMMAND, "mark", f"{ROOM}/sheet.txt", f"{ROOM}/answers.csv"],
}
IMPORT = re.compile(r"import time:\s+(\d+) \|\s+(\d+) \|\s+(\S+)")


def main() -> None:
    usual = None
    print(f"{'start':22} {'median ms':>9} {'least ms':>9} {'times':>6} {'MB':>5}")
    for name, command in STARTS.items():
        taken = sorted(seconds(command) for _ in range(ROUNDS))
        usual = usual or median(taken)
        middle, least, much = 1000 * median(taken), 1000 * taken[0], process_megabytes(command)
        print(f"{name:22} {middle:9.1f} {least:9.1f} {median(taken) / usual:6.1f} {much:5.0f}")
    print(f"goal: onewhole --version at most {GOAL} times python -c pass")
    print("\nslowest to load in onewhole work, each without what it loads (ms):")
    for own, name in slowest(STARTS["onewhole work"])[:8]:
        print(f"{own / 1000:8.1f}  {name}")


def seconds(command: list[str]) -> float:
    began = perf_counter()
    subprocess.run(command, check=True, capture_output=True)
    return perf_counter() - began


def slowest(command: list[str]) -> list[tuple[int, str]]:
    """Return the modules that a command loads by their own microseconds, the slowest first."""
    traced = [sys.executable, "-X", "importtime", *command]
    told = subprocess.run(traced, check=True, capture_output=True, text=True).stderr
    return sorted(((int(own), name) for own, _, name in IMPORT.findall(told)), reverse=True)


if __name__ == "__main__":
    main()
