"""Write the answers of very many invented pupils into a file: `python -m lab.answers 100000 answers.csv`."""

import csv
import sys
from argparse import ArgumentParser
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from functools import partial
from pathlib import Path

from lab.nights import CLASS
from lab.pages import room12
from lab.pupils import school_class
from lab.rates import USUAL
from lab.steps import page_of
from lab.trials import problems

Row = tuple[str, ...]


def class_rows(page: tuple[str, ...], which: int) -> tuple[Row, ...]:
    """Return what one class writes on a page: a row a pupil, the pupil's code first."""
    seed, asked = f"answers {which}", problems(page)
    pupils = school_class(USUAL, CLASS, seed)
    return tuple((f"C{which}-{one.code}", *page_of(one, asked, seed)) for one in pupils)


def write_answers(to: Path, classes: int, cores: int = 2) -> None:
    """Write the answers of so many classes on the example's page, class by class, as a CSV file."""
    page = room12()
    with to.open("w", encoding="utf-8", newline="") as file, ProcessPoolExecutor(cores) as pool:
        rows = csv.writer(file, lineterminator="\n")
        rows.writerow(("pupil", *(problem.label for problem in problems(page))))
        for found in pool.map(partial(class_rows, page), range(classes), chunksize=20):
            rows.writerows(found)


def main(arguments: Sequence[str] | None = None) -> int:
    """Write the file that was asked for."""
    parser = ArgumentParser(prog="python -m lab.answers", description=__doc__)
    parser.add_argument("pupils", type=int, help=f"how many; they come in classes of {CLASS}")
    parser.add_argument("file", type=Path)
    asked = parser.parse_args(arguments)
    write_answers(asked.file, -(-asked.pupils // CLASS))
    return 0


if __name__ == "__main__":
    sys.exit(main())
