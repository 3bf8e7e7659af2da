"""Pupils' own answers of a published study, held against the catalogue and against the study's own coding.

Siegler, Thompson & Schneider (2011), Cognitive Psychology 62: 48 pupils of grades 6 and 8, four sums and
differences of fractions, open data of the study, counted by answer. The file is not part of the project;
where it does not lie beside it, this part of the table says so.
"""

import csv
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from lab.measures import Share
from onewhole.findings.in_answer import Remark, Tier
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import expect, is_fact_slip
from onewhole.marking.reading.mark import Mark, Verdict, mark
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement

FILE = Path(__file__).parents[2] / "shared" / "domain" / "observed-answers-2011.csv"

#: How the study coded what a pupil did, and the patterns that do just that. "Independent components":
#: numerators and denominators are each worked by themselves. "Kept the denominator": only numerators are
#: worked, over a denominator that is kept or common (so that it is right where the numerators were renamed).
CODES = {
    "IndepComp": frozenset({"A18", "A19", "B01", "B02", "B06", "B13", "P01", "P02"}),
    "OpNumKeepDen": frozenset({"B03", "B04", "B09", "B10", "P06"}),
}


@dataclass(frozen=True, slots=True)
class Answer:
    """One wrong answer as so many pupils wrote it, with the study's code and our mark."""

    code: str
    pupils: int
    mark: Mark

    @property
    def codes(self) -> frozenset[str]:
        """Return the study's codes whose patterns this answer fits, without the help of a fact slip."""
        if self.mark.tier not in {Tier.EXACT, Tier.AMOUNT}:
            return frozenset()
        return frozenset(code for code, ids in CODES.items() if ids & set(self.mark.patterns))


@dataclass(frozen=True, slots=True)
class Observed:
    """What the wrong answers show: how they are explained, and how our codes agree with the study's.

    ``explained`` counts pupils by how closely an answer fits a pattern. Of the wrong answers that the study
    gave one of the two codes, ``coded`` tells how many fit a pattern of just that code, ``other`` of the
    other code, the rest fit none (or both). ``agree`` is over those where we give one of the two codes.
    """

    wrong: int
    explained: Counter[str]
    coded: Share
    agree: Share


def wrong_answers(file: Path = FILE) -> Iterator[Answer]:
    """Yield the wrong answers of the file; a whole number stands there over 1 and is read without it."""
    with file.open(encoding="utf-8", newline="") as lines:
        for row in csv.DictReader(lines):
            typed = row["problem"].replace("+", " + ").replace("-", " - ")
            asked = expect(Problem("1", read_statement(typed), typed))
            marked = mark(asked, read_written(row["written"].removesuffix("/1")))
            if marked.verdict is Verdict.WRONG:
                yield Answer(row["coded_strategy"], int(row["pupils"]), marked)


def observed(file: Path = FILE) -> Observed | None:
    """Return what the pupils' answers show, or None where the file is not there."""
    if not file.exists():
        return None
    answers = list(wrong_answers(file))
    explained: Counter[str] = Counter()
    for one in answers:
        explained[_how(one.mark)] += one.pupils
    two = [one for one in answers if one.code in CODES]
    clear = [one for one in two if len(one.codes) == 1]
    same = sum(one.pupils for one in clear if one.codes == {one.code})
    return Observed(
        sum(one.pupils for one in answers),
        explained,
        Share(same, sum(one.pupils for one in two)),
        Share(same, sum(one.pupils for one in clear)),
    )


def _how(found: Mark) -> str:
    match found.tier:
        case Tier.LINE | Tier.EXACT | Tier.AMOUNT if all(map(is_fact_slip, found.patterns)):
            return "right with a slip"
        case Tier.LINE | Tier.EXACT:
            return "just as a pattern writes it"
        case Tier.AMOUNT:
            return "as much as a pattern gives"
        case Tier.WITH_SLIP:
            return "a pattern with a slip"
        case None:
            return "right with a slip" if Remark.MAY_BE_SLIP in found.remarks else "not explained"
