"""What open data can decide: 536 pupils, 20 fraction problems, right or wrong, in one sitting.

There is no time in it, so that nothing about forgetting can be learned from it. It can say how answers show a
skill: each problem of a held-out pupil is foretold from the pupil's earlier problems of the same skill. The
files are not part of the project; where they do not lie beside it, nothing is measured.
"""

import csv
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from lab.practice.scores import Score
from lab.practice.terms import Counts, Reals
from onewhole.marking.practice.course import SHOWS
from onewhole.marking.practice.halving import MILLION
from onewhole.problems.skill import skill
from onewhole.statements.reading import read_statement

_DATA = Path(__file__).parents[3] / "shared" / "data"
ITEMS, RESPONSES = _DATA / "fraction_items.csv", _DATA / "tatsuoka_fraction_536x20.csv"
#: Every so manyth pupil is held out.
HELD_OUT = 4
_ROUNDS = 40


@dataclass(frozen=True, slots=True, eq=False)
class Sitting:
    """Right (1) and wrong (0) by pupil and problem, and the skill of each problem, as its place."""

    right: Counts
    skills: tuple[int, ...]


def sitting() -> Sitting | None:
    """Read the open data; None where it does not lie there."""
    if not (ITEMS.exists() and RESPONSES.exists()):
        return None
    with ITEMS.open(encoding="utf-8", newline="") as file:
        named = [skill(read_statement(row["text"])).value for row in csv.DictReader(file)]
    rows = np.genfromtxt(RESPONSES, delimiter=",", skip_header=1, dtype=np.int64)
    return Sitting(rows[:, -len(named) :], tuple(named))


Foretold = Callable[[Counts, Counts], Reals]
#: Foretells the problems of a skill: from the training pupils' answers, then the right and wrong so far.
Way = Callable[[Counts], Foretold]


def skill_share(train: Counts) -> Foretold:
    """Foretell the training pupils' share in the skill."""
    share = train.mean()
    return lambda right, _wrong: np.full(len(right), share)


def pupil_share(train: Counts) -> Foretold:
    """Foretell the pupil's own share so far, leaning on the skill's, which counts as two answers."""
    share = train.mean()
    return lambda right, wrong: (right + 2 * share) / (right + wrong + 2)


def one_show(train: Counts) -> Foretold:
    """Foretell by having the skill or not, with 10 % lapses and 10 % luck."""
    return _traced(train, ((0.1, 0.1),))


def our_shows(train: Counts) -> Foretold:
    """Foretell by having the skill or not, with the lapses and luck of our courses, their shares fitted."""
    return _traced(train, tuple((lapses / MILLION, lucky / MILLION) for lapses, lucky in SHOWS))


WAYS: dict[str, Way] = {
    "the skill's share": skill_share,
    "the pupil's share": pupil_share,
    "has it or not, 10 % lapses and luck": one_show,
    "has it or not, as our courses show it": our_shows,
}


def _traced(train: Counts, shows: Sequence[tuple[float, float]]) -> Foretold:
    lapses, lucky = (np.array(one)[:, None] for one in zip(*shows, strict=True))

    def likely(right: Counts, wrong: Counts) -> tuple[Reals, Reals]:
        there = (1 - lapses) ** right * lapses**wrong
        return there, lucky**right * (1 - lucky) ** wrong

    shares = np.full((2, len(shows), 1), 0.5 / len(shows))
    right = train.sum(1)
    both = np.stack(likely(right, train.shape[1] - right))
    for _ in range(_ROUNDS):
        held = both * shares
        shares = (held / held.sum((0, 1))).mean(-1)[..., None]

    def foretell(right: Counts, wrong: Counts) -> Reals:
        held = np.stack(likely(right, wrong)) * shares
        found: Reals = (held[0] * (1 - lapses) + held[1] * lucky).sum(0) / held.sum((0, 1))
        return found

    return foretell


def foretold(way: Way, data: Sitting) -> Score:
    """Return the scores of the held-out pupils' answers, each skill's first problem among them."""
    out = np.arange(len(data.right)) % HELD_OUT == 0
    log = brier = answers = 0.0
    for named in sorted(set(data.skills)):
        places = [at for at, one in enumerate(data.skills) if one == named]
        foretell = way(data.right[~out][:, places])
        seen = data.right[out][:, places]
        for at in range(len(places)):
            right = seen[:, :at].sum(1)
            said = np.clip(foretell(right, at - right), 1e-6, 1 - 1e-6)
            hit = seen[:, at]
            log -= float(np.log(np.where(hit, said, 1 - said)).sum())
            brier += float(((hit - said) ** 2).sum())
            answers += len(hit)
    return Score(log / answers, brier / answers, int(answers))
