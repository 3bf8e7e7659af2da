"""Run the laboratory: `make lab`, or `python -m lab --quick` for a table of a few classes."""

import sys
from argparse import ArgumentParser
from collections.abc import Sequence
from concurrent.futures import Executor, ProcessPoolExecutor
from pathlib import Path
from time import perf_counter

from lab.asking import asking
from lab.page import with_rows, written
from lab.parts import FULL, QUICK, Size, compared, growing, grown, other_classes, outside, usual_class
from lab.published import lee_and_corter, siegler
from lab.table import Part, plain
from lab.term_table import term_part
from lab.topics import TOPICS, other_topics

#: So many classes write a whole term.
TERMS = 5
#: So many classes write a page of each other topic.
TOPIC_CLASSES = 40
#: So many classes are asked after each sort of page.
ASKED = 80
DOCS = Path(__file__).parents[1] / "docs" / "lab.md"


def measured(size: Size, pool: Executor | None = None) -> tuple[Part, ...]:
    """Measure every part of the table."""
    seen = grown(size, pool)
    return (
        *usual_class(size, pool),
        outside(size, pool),
        other_classes(size, pool),
        growing(seen),
        compared(seen),
        lee_and_corter(size.steady, pool),
        siegler(),
        other_topics(2 if size is QUICK else TOPIC_CLASSES, pool),
        term_part(1 if size is QUICK else TERMS, pool),
        asking(1 if size is QUICK else ASKED, pool),
    )


def main(arguments: Sequence[str] | None = None) -> int:
    """Print the table; with ``--write`` put it into the page of the docs as well."""
    parser = ArgumentParser(prog="python -m lab", description="Measure the diagnosis on invented classes.")
    parser.add_argument("--quick", action="store_true", help="a few classes only: shows that it runs")
    parser.add_argument("--cores", type=int, default=2, help="processes at work (default 2)")
    parser.add_argument("--write", action="store_true", help="write the table into docs/lab.md")
    parser.add_argument("--topic", action="append", choices=TOPICS, help="only this row of the other topics")
    asked = parser.parse_args(arguments)
    begun = perf_counter()
    with ProcessPoolExecutor(asked.cores) as pool:
        if asked.topic:
            part = other_topics(2 if asked.quick else TOPIC_CLASSES, pool, asked.topic)
            parts: tuple[Part, ...] = (part,)
        else:
            parts = measured(QUICK if asked.quick else FULL, pool)
    print(plain(parts))
    print(f"\n{perf_counter() - begun:.0f} seconds on {asked.cores} cores")
    if asked.write and not asked.quick:
        page = DOCS.read_text(encoding="utf-8")
        page = with_rows(page, parts[0], tuple(TOPICS)) if asked.topic else written(page, parts)
        DOCS.write_text(page, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
