"""Composing a page of 12 problems from the whole space of the grade: seconds and the proven gap.

Run: `python bench/compose.py`. The goals: 2 seconds, and a gap of less than 1 percent. Cold is a process of
its own from the Enter key to its end; warm is the same act again in one process, over several seeds and
wishes. The gap is (bound - taught) / bound, where the bound is proven in whole numbers for the wishes and
habits of a page.

Beside it stands how much of the doubt is left (each telling halves it) by composed pages of 12 and of 6
problems, and by the middle one of pages of 12 drawn by lot from the same space, traps and all, without twins
and with the same share of regrouping.

The other skills follow: their problems are drawn by the seed, anew for each page, and worked by the whole
catalogue, which is most of the time.
"""

import random
import subprocess
import sys
from collections.abc import Callable, Iterator
from functools import partial
from resource import RUSAGE_CHILDREN, getrusage
from statistics import median
from time import perf_counter

from measuring import process_megabytes
from msgspec.structs import replace

from onewhole.desk.page.compose import compose
from onewhole.findings.wished_skill import LIKE, WishedSkill
from onewhole.presses.space_at_once import likes, table
from onewhole.sheets.candidates import LikePair
from onewhole.sheets.composed import Composed
from onewhole.sheets.learning import doubts, learnt, most, settles
from onewhole.sheets.wishes import USUAL_DENOMINATORS, OpenQuestion, Wishes

COLD = (sys.executable, "-c", "from onewhole.cli.main import main; raise SystemExit(main(['compose']))")
ROUNDS = 5
SEEDS = range(1, 8)
FEW_SEEDS = range(1, 4)
BY_LOT = 40
GOAL_SECONDS, GOAL_PERCENT = 2, 1
ASKED = tuple(
    OpenQuestion((first,), (second,), 100)
    for first, second in (("A01", "A02"), ("A02", "A21"), ("A20", "A23"), ("A04", "A05"), ("A09", "A14"))
)
WISHES = {
    "subtract": Wishes(),
    "subtract, 15 minutes": Wishes(minutes=15, regrouping=None),
    "subtract, open questions": Wishes(questions=ASKED),
    "subtract, 20 problems": Wishes(number=20),
    "subtract, hundredths too": Wishes(denominators=(*USUAL_DENOMINATORS, 100)),
    "add": Wishes(skill=WishedSkill.ADD),
    "both": Wishes(skill=WishedSkill.BOTH),
}


def main() -> None:
    cold = sorted(
        _seconds(partial(subprocess.run, COLD, check=True, capture_output=True)) for _ in range(ROUNDS)
    )
    used = getrusage(RUSAGE_CHILDREN)
    work = (used.ru_utime + used.ru_stime) / ROUNDS
    print(f"cold: {median(cold):.2f} s (least {cold[0]:.2f}; {work:.2f} s of one processor's work)", end="")
    print(f", {process_megabytes(COLD):.0f} MB\n")
    print(f"{'':38}{'seconds':>15} {'largest':>9}   doubt left")
    print(f"{'warm':26} {'chosen from':>11} {'middle':>7} {'most':>7} {'gap':>9}  composed of 6  by lot")
    for name, wishes in WISHES.items():
        taken, pages = zip(*(_timed(replace(wishes, seed=seed)) for seed in SEEDS), strict=True)
        gap, left = max(page.gap for page in pages), max(page.doubt_left for page in pages)
        few = compose(replace(wishes, number=6, minutes=None)).doubt_left
        print(
            f"{name:26} {pages[0].listed:11} {median(taken):7.2f} {max(taken):7.2f} {float(gap):9.4%}"
            f"    {float(left):6.2%} {float(few):6.2%} {_by_lot(wishes):6.2%}"
        )
    print(f"\n{'drawn by the seed':26} {'chosen from':>11} {'middle':>7} {'most':>7} {'gap':>9}  doubt left")
    for skill in (one for one in WishedSkill if one not in LIKE):
        wishes = Wishes(skill=skill)
        taken, pages = zip(*(_timed(replace(wishes, seed=seed)) for seed in FEW_SEEDS), strict=True)
        gap, left = max(page.gap for page in pages), max(page.doubt_left for page in pages)
        print(
            f"{skill.value:26} {pages[0].listed:11} {median(taken):7.2f} {max(taken):7.2f} {float(gap):9.4%}"
            f"    {float(left):6.2%}"
        )
    print(f"\ngoal: {GOAL_SECONDS} s cold and warm, gap below {GOAL_PERCENT} %")


def _timed(wishes: Wishes) -> tuple[float, Composed]:
    began = perf_counter()
    page = compose(wishes)
    return perf_counter() - began, page


def _seconds(act: Callable[[], object]) -> float:
    began = perf_counter()
    act()
    return perf_counter() - began


def _by_lot(wishes: Wishes) -> float:
    """Return the share of doubt that the middle one of pages drawn by lot leaves."""
    open_doubts = doubts(wishes)
    ways = {WishedSkill.SUBTRACT: (True,), WishedSkill.ADD: (False,), WishedSkill.BOTH: (True, False)}[
        wishes.skill
    ]
    tables = (table(d, wishes.largest, taken=way) for way in ways for d in USUAL_DENOMINATORS)
    every = [one for each in tables for one in likes(each)]
    chance = random.Random(1)
    taught = sorted(
        learnt(open_doubts, [settles(one.statement, open_doubts) for one in _drawn(every, wishes, chance)])
        for _ in range(BY_LOT)
    )
    return 1 - taught[BY_LOT // 2] / most(open_doubts)


def _drawn(members: list[LikePair], wishes: Wishes, chance: random.Random) -> Iterator[LikePair]:
    wanted = wishes.kept_regrouping
    left = {True: wanted, False: wishes.number - wanted} if wanted is not None else {}
    twins: set[object] = set()
    for one in chance.sample(members, len(members)):
        if len(twins) == wishes.number:
            return
        if one.twin not in twins and left.get(_regroups(one), 1):
            twins.add(one.twin)
            if left:
                left[_regroups(one)] -= 1
            yield one


def _regroups(one: LikePair) -> bool:
    return one.n1 < one.n2 if one.taken else one.n1 + one.n2 >= one.d


if __name__ == "__main__":
    main()
