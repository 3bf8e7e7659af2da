"""Measure how well practice and forgetting are foretold: `python -m lab.practice`, or with `--quick`."""

import sys
from argparse import ArgumentParser
from collections.abc import Sequence

from lab.practice.rivals import RIVALS
from lab.practice.scores import Score, bands_held, scored
from lab.practice.sitting import WAYS, foretold, sitting
from lab.practice.terms import WORLDS, term
from lab.table import Part, markdown, percent, plain

#: Classes of each world; their seeds begin where those end on which the courses were chosen.
FULL, QUICK, FIRST_SEED = 20, 1, 1000


def measured(classes: int) -> tuple[Part, ...]:
    """Measure every part of the table."""
    terms = {world: [term(world, FIRST_SEED + seed) for seed in range(classes)] for world in WORLDS}
    later, back, totals = [], [], []
    for name, make in RIVALS.items():
        scores = [scored(make, some) for some in terms.values()]
        later.append((name, *(f"{one.log:.4f} / {one.brier:.4f}" for one, _ in scores)))
        back.append((name, *(f"{one.log:.4f} / {one.brier:.4f}" for _, one in scores)))
        means = [_mean(score) for score in zip(*scores, strict=True)]
        totals.append((name, *(f"{one:.4f}" for mean in means for one in mean)))
    heads = ("foretold by", *(world.name for world in WORLDS))
    note = "Log score / Brier score of an answer; less is better."
    return (
        Part("The later half of the nights", note, heads, tuple(later)),
        Part("Skills that come back after ten days or more", note, heads, tuple(back)),
        Part(
            "Mean over the five worlds",
            "",
            ("foretold by", "later nights: log", "Brier", "coming back: log", "Brier"),
            tuple(totals),
        ),
        Part(
            "The class's band, when a skill came back",
            "How often the share of one answer each lay between its bounds (two standard deviations).",
            ("world", "inside"),
            tuple((world.name, percent(bands_held(some))) for world, some in terms.items()),
        ),
        _sitting(),
    )


def _mean(scores: Sequence[Score]) -> tuple[float, float]:
    return sum(one.log for one in scores) / len(scores), sum(one.brier for one in scores) / len(scores)


def _sitting() -> Part:
    data, heads = sitting(), ("foretold by", "log", "Brier", "answers")
    if data is None:
        return Part("Open data", "The open data do not lie beside the project.", heads, ())
    scores = {name: foretold(way, data) for name, way in WAYS.items()}
    return Part(
        "Open data",
        "536 pupils, 20 problems, one sitting (K. Tatsuoka 1984): a quarter of the pupils held out.",
        heads,
        tuple((name, f"{one.log:.4f}", f"{one.brier:.4f}", str(one.answers)) for name, one in scores.items()),
    )


def main(arguments: Sequence[str] | None = None) -> int:
    """Print the tables, for a terminal or for a page."""
    parser = ArgumentParser(prog="python -m lab.practice", description="Measure practice and forgetting.")
    parser.add_argument("--quick", action="store_true", help="one class a world: shows that it runs")
    parser.add_argument("--markdown", action="store_true", help="print the tables as they stand in a page")
    asked = parser.parse_args(arguments)
    parts = measured(QUICK if asked.quick else FULL)
    print(markdown(parts) if asked.markdown else plain(parts))
    return 0


if __name__ == "__main__":
    sys.exit(main())
