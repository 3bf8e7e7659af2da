"""How much better a class is read with what a district learnt of other classes: `python -m lab.district`.

Invented classes write the example's page. Some are put together by `onewhole district`; others, which it has
not seen, are read without its prior and with it, at several weights. Told are the mean logarithm of the odds
that were given to the truth (higher is better; the true set of ideas, or none), how sure the truth was where
it is a steady idea, and how often a pupil without any steady idea was given one.
"""

import sys
import tempfile
from argparse import ArgumentParser
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date
from hashlib import sha256
from math import log
from pathlib import Path
from random import Random

from lab.pages import room12
from lab.pupils import Pupil, school_class
from lab.rates import USUAL
from lab.steps import page_of
from lab.table import Part, plain
from lab.trials import problems, truth_on
from onewhole.desk.district.running import DistrictWishes, run_district
from onewhole.marking.diagnosis.diagnosis import weigh
from onewhole.marking.diagnosis.prior import NOTHING, Learnt
from onewhole.marking.diagnosis.tables import tables
from onewhole.marking.district.district_prior import DistrictPrior, district_learnt, read_prior
from onewhole.marking.district.shared_paper import SharedPaper, as_answered, paper_lines
from onewhole.marking.reading.class_answers import PupilTexts, read_texts
from onewhole.marking.reading.mark import ClassMarks, mark_class
from onewhole.presses.district.paper_files import paper_bytes

#: Classes put together, classes read, pupils in each; the weights tried, in pupils.
TOGETHER, READ, SIZE = 80, 60, 25
WORTH = (12, 60, 240)
#: An idea that goes round, as one may by a book or a rule told in class; half of the steady pupils have it.
ROUND, HALF = "A08", 0.5
#: Odds below this are not listed: what was given to the truth is then taken as half of it.
LEAST = 1 / 400


def district_part(
    together: int = TOGETHER, read: int = READ, *, goes_round: str = "", seed: str = "fresh"
) -> Part:
    """Measure it; ``goes_round`` is an idea that half of the steady pupils of all these classes have.

    ``seed`` is whose chance the classes are made by: the weight of a prior was chosen on classes of "".
    """
    page = problems(room12())
    with tempfile.TemporaryDirectory() as folder:
        prior = _learnt(Path(folder), together, goes_round, seed)
    seeds = [f"{seed} read {at}".strip() for at in range(read)]
    classes = [_class(one, goes_round) for one in seeds]
    marks = [_marks(pupils, one) for pupils, one in zip(classes, seeds, strict=True)]
    known = tables(marks[0].expected)
    rows = []
    for name, learnt in _tried(prior):
        said = []
        for pupils, one in zip(classes, marks, strict=True):
            found = weigh(one, learnt, known=known).diagnoses
            for pupil, diagnosis in zip(pupils, found, strict=True):
                odds = {frozenset(each.patterns): float(each.probability) for each in diagnosis.odds}
                truth = truth_on(pupil, page)[0]
                given = float(diagnosis.unlisted) if pupil.outside else odds.get(truth, LEAST)
                wrong = not pupil.ideas and not pupil.outside and diagnosis.confident and diagnosis.patterns
                said.append((bool(truth), max(given, LEAST), bool(wrong)))
        steady = [odds for is_steady, odds, _ in said if is_steady]
        rows.append(
            (
                name,
                f"{sum(log(odds) for _, odds, _ in said) / len(said):.4f}",
                f"{sum(steady) / len(steady):.3f}" if steady else "-",
                f"{sum(wrong for _, _, wrong in said)} of {sum(not one for one, _, _ in said)}",
            )
        )
    note = f"{together} classes put together, {read} others of {SIZE} pupils read, one page of 12 problems."
    heads = ("prior", "log of the odds of the truth", "odds of a steady truth", "given one without")
    title = f"where {goes_round} goes round" if goes_round else "where ideas are as usual"
    return Part(f"What a district's prior adds to one class, {title}", note, heads, tuple(rows))


def _class(seed: str, goes_round: str) -> tuple[Pupil, ...]:
    """Return a class; where an idea goes round, half of those with one steady idea have it."""
    pupils, chance = school_class(USUAL, SIZE, seed), Random(f"{seed} round")
    swaps = [bool(goes_round) and len(one.ideas) == 1 and chance.random() < HALF for one in pupils]
    return tuple(
        replace(one, ideas=(goes_round,)) if swap else one for one, swap in zip(pupils, swaps, strict=True)
    )


def _tried(prior: DistrictPrior) -> Iterator[tuple[str, Learnt]]:
    yield "none", NOTHING
    for worth in WORTH:
        yield f"of the district, as {worth} pupils", district_learnt(prior, worth)


def _learnt(folder: Path, classes: int, goes_round: str, seed: str) -> DistrictPrior:
    page = problems(room12())
    asked = paper_lines([one.typed for one in page])
    papers = []
    for at in range(classes):
        here = f"{seed} district {at}".strip()
        for one in _class(here, goes_round):
            wrote = page_of(one, page, here)
            answers = [as_answered(text, problem) for text, problem in zip(wrote, page, strict=True)]
            whose = sha256(f"{at} {one.code}".encode()).hexdigest()[:32]
            papers.append(
                SharedPaper(whose, f"{at}", "Elm", date(2026, 9, 1), 4, asked, paper_lines(answers))
            )
    (folder / "elm").mkdir()
    (folder / "elm" / "night.parquet").write_bytes(paper_bytes(papers))
    run_district([folder / "elm"], folder / "found", DistrictWishes(pupils=False))
    return read_prior((folder / "found" / "prior.json").read_text())


def _marks(pupils: Sequence[Pupil], seed: str) -> ClassMarks:
    page = problems(room12())
    return mark_class(
        read_texts((PupilTexts(one.code, tuple(page_of(one, page, seed))) for one in pupils), page)
    )


def main(arguments: Sequence[str] | None = None) -> int:
    """Print the table."""
    parser = ArgumentParser(prog="python -m lab.district", description=__doc__)
    parser.add_argument("--together", type=int, default=TOGETHER)
    parser.add_argument("--read", type=int, default=READ)
    parser.add_argument("--seed", default="fresh")
    asked = parser.parse_args(arguments)
    for idea in ("", ROUND):
        print(
            plain([district_part(asked.together, asked.read, goes_round=idea, seed=asked.seed)]), flush=True
        )
    return 0


if __name__ == "__main__":
    sys.exit(main())
