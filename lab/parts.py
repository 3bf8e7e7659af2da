"""The parts of the table: what is measured, and which goals are held against it."""

from collections.abc import Callable, Mapping, Sequence
from concurrent.futures import Executor
from dataclasses import dataclass, replace

from lab.curves import certainty, needed
from lab.measures import (
    FAIR,
    Share,
    calibration_error,
    first_said,
    ideas_said,
    named_first,
    other_named,
    reliability,
    share,
    shown,
    wrongly_given,
)
from lab.nights import Night, Typed, all_seen
from lab.outside import HELD_OUT, RULES
from lab.pages import composed, look_alikes, random_page, room12
from lab.pupils import Kind
from lab.rates import OTHERWISE, USUAL
from lab.table import Part, held, percent
from lab.trials import Trial

WRONGLY, ECE, NAMED, ECE_OUTSIDE = 0.02, 0.05, 0.03, 0.08
SURE_OF, LIKELIER = 0.9, 0.5
TEN = 10


@dataclass(frozen=True, slots=True)
class Size:
    """How much is measured: classes of 25 for each part, steady pupils, pages of each sort, their sizes.

    Every sort of page is drawn or composed several times, so that no single page decides.
    """

    usual: int
    otherwise: int
    growing: int
    steady: int
    pages: int
    problems: tuple[int, ...]


FULL = Size(100, 60, 30, 400, 4, (3, 5, 8, 10, 12, 16))
QUICK = Size(4, 1, 1, 32, 1, (3, 5, 10))


def usual_class(size: Size, pool: Executor | None) -> tuple[Part, ...]:
    """Measure the usual class on the example's page: naming, the goals, calibration."""
    trials = all_seen(Night((room12(),), size.usual, seed="table"), pool)
    return naming(trials), goals(trials), calibration(trials)


def naming(trials: Sequence[Trial]) -> Part:
    """Tell how often the truth is named, by kind of pupil."""
    rows = []
    for kind in (Kind.STEADY, Kind.SWITCHING, Kind.PAIRED):
        for least, words in ((1, "all"), (FAIR, f"idea can show on {FAIR} or more problems")):
            some = [one for one in trials if one.kind is kind and one.truth and one.acts >= least]
            sure = share(some, lambda one: one.likely and one.holds)
            rows.append(
                (
                    f"{kind}: {words}",
                    str(len(some)),
                    percent(share(some, named_first)),
                    percent(share(some, shown)),
                    percent(sure),
                )
            )
    return Part(
        "Pupils with a steady idea, on the example's page of 12 problems",
        "Named first: the true idea (of a pair, both) is said first. Shown: it has odds of 5 % or more.",
        ("pupils", "how many", "named first", "shown", "said to fit, and true"),
        tuple(rows),
    )


def goals(trials: Sequence[Trial]) -> Part:
    """Hold the goals against the usual class."""
    wrongly, first, ideas = wrongly_given(trials), first_said(trials), ideas_said(trials)
    sure = [one for one in trials if one.likely]
    true = share(sure, lambda one: one.holds)
    said = sum(one.together for one in sure) / max(1, len(sure))
    kinds = [
        (
            f"  of these, {kind} pupils",
            percent(wrongly_given([one for one in trials if one.kind is kind])),
            "",
            "",
        )
        for kind in (Kind.SOUND, Kind.SHAKY, Kind.SCATTERED)
    ]
    sound = [one for one in trials if one.kind is Kind.SOUND]
    rows = (
        (
            "sound pupils who are shown any named pattern",
            percent(share(sound, lambda one: one.names)),
            "3 % at most",
            held(share(sound, lambda one: one.names).value <= NAMED),
        ),
        (
            "without a steady idea, said to fit one",
            percent(wrongly),
            "under 2 %",
            held(wrongly.value < WRONGLY),
        ),
        *kinds,
        ("with a steady idea, said to fit another", percent(other_named(trials)), "", ""),
        (f"said to fit (mean odds {percent(said)}), and true", percent(true), "", ""),
        (
            "calibration error of all that is said first",
            f"{calibration_error(first):.3f}",
            "under 0.05",
            held(calibration_error(first) < ECE),
        ),
        (
            "the same of ideas alone, from odds of 5 % on",
            f"{calibration_error(ideas):.3f}",
            "under 0.05",
            held(calibration_error(ideas) < ECE),
        ),
    )
    return Part("Wrongly named, and calibration", "", ("what", "measured", "goal", ""), rows)


def calibration(trials: Sequence[Trial]) -> Part:
    """Tell, of ideas said with about the same odds, how many are true."""
    rows = tuple(
        (f"{one.low:.1f} to {one.low + 0.1:.1f}", str(one.count), percent(one.said), percent(one.true))
        for one in reliability(ideas_said(trials))
    )
    note = "Of the ideas that are said with such odds, so many are true."
    return Part("Odds and truth", note, ("odds", "how many", "mean odds", "true"), rows)


def other_classes(size: Size, pool: Executor | None) -> Part:
    """Measure classes that are not as the marking supposes."""
    rows = []
    for words, rates in {"as supposed": USUAL, **OTHERWISE}.items():
        trials = all_seen(Night((room12(),), size.otherwise, rates, "other"), pool)
        fair = [one for one in trials if one.truth and one.acts >= FAIR]
        rows.append(
            (
                words,
                str(len(trials)),
                percent(share(fair, lambda one: one.holds and one.together >= one.none)),
                percent(wrongly_given(trials)),
                percent(other_named(trials)),
                f"{calibration_error(first_said(trials)):.3f}",
                f"{calibration_error(ideas_said(trials)):.3f}",
            )
        )
    heads = ("class", "pupils", "first", "wrongly given", "another given", "calibration", "of ideas")
    note = (
        "The marking is the same and knows nothing of it. Named first: where the idea can show three times."
    )
    return Part("If the class is not as supposed", note, heads, tuple(rows))


def outside(size: Size, pool: Executor | None) -> Part:
    """Measure classes in which one pupil in ten has a steady rule that no pattern describes."""
    rates = OTHERWISE["10 % outside the catalogue"]
    trials = all_seen(Night((room12(),), size.otherwise, rates, "outside"), pool)
    fresh = all_seen(
        Night((room12(),), size.otherwise, replace(rates, rules=tuple(HELD_OUT)), "held out"), pool
    )
    out = [one for one in trials if one.kind is Kind.OUTSIDE]
    wrongly, error = share(out, lambda one: one.likely), calibration_error(ideas_said(trials))
    modelled = calibration_error(ideas_said([one for one in trials if one.kind is not Kind.OUTSIDE]))
    rows = (
        ("said to fit a listed pattern", percent(wrongly), "3 % at most", held(wrongly.value <= NAMED)),
        (
            "odds of 0.9 or more for a listed pattern",
            percent(share(out, lambda one: one.together >= SURE_OF)),
            "",
            "",
        ),
        ("a listed pattern named at all", percent(share(out, lambda one: one.names)), "", ""),
        ("a steady idea that is not listed likelier than not", percent(share(out, _unlisted)), "", ""),
        (
            "the same of pupils without any steady idea",
            percent(share([one for one in trials if not one.steady and one not in out], _unlisted)),
            "",
            "",
        ),
        (
            "calibration error of ideas, all pupils",
            f"{error:.3f}",
            "0.08 at most",
            held(error <= ECE_OUTSIDE),
        ),
        (
            "calibration error of ideas, pupils of the kinds modelled",
            f"{modelled:.3f}",
            "0.05 at most",
            held(modelled <= ECE),
        ),
        *_fresh(fresh),
    )
    note = f"{len(out)} pupils who follow one of {len(RULES)} rules of our own making (lab/outside.py)."
    return Part("Pupils with a steady idea that is not listed", note, ("what", "measured", "goal", ""), rows)


def _fresh(trials: Sequence[Trial]) -> tuple[tuple[str, ...], ...]:
    """Tell the same of pupils whose rules nothing was set by."""
    out = [one for one in trials if one.kind is Kind.OUTSIDE]
    wrongly, error = share(out, lambda one: one.likely), calibration_error(ideas_said(trials))
    return (
        (f"{len(out)} pupils of {len(HELD_OUT)} rules that nothing was set by", "", "", ""),
        (
            "  said to fit a listed pattern",
            percent(wrongly),
            "3 % at most",
            held(wrongly.value <= NAMED),
        ),
        (
            "  odds of 0.9 or more for a listed pattern",
            percent(share(out, lambda one: one.together >= SURE_OF)),
            "",
            "",
        ),
        ("  a listed pattern named at all", percent(share(out, lambda one: one.names)), "", ""),
        (
            "  calibration error of ideas, all pupils",
            f"{error:.3f}",
            "0.08 at most",
            held(error <= ECE_OUTSIDE),
        ),
    )


def _unlisted(one: Trial) -> bool:
    return one.unlisted >= LIKELIER


#: For the comparison of pages: subtracting only, and many steady pupils, so that fewer classes are enough.
COMPARED = replace(USUAL, subtracting=0.3, adding=0.0, paired=0.0)
SORTS: Mapping[str, Callable[[int, int], Typed]] = {
    "composed": composed,
    "random": random_page,
    "look-alikes": look_alikes,
}


@dataclass(frozen=True, slots=True)
class Asked:
    """A page that is wanted: its sort, how many problems, its seed."""

    sort: str
    problems: int
    seed: int


def made(asked: Asked) -> Typed:
    """Make a page of some sort."""
    return SORTS[asked.sort](asked.problems, asked.seed)


Seen = Mapping[str, Mapping[int, Sequence[Trial]]]


def grown(size: Size, pool: Executor | None) -> Seen:
    """Let the same classes write every sort of page at every size."""
    wanted = [
        Asked(sort, n, seed) for sort in SORTS for n in size.problems for seed in range(1, size.pages + 1)
    ]
    pages = dict(zip(wanted, (pool.map if pool else map)(made, wanted), strict=True))
    return {
        sort: {
            n: all_seen(
                Night(
                    tuple(page for asked, page in pages.items() if (asked.sort, asked.problems) == (sort, n)),
                    size.growing,
                    COMPARED,
                    "compared",
                ),
                pool,
            )
            for n in size.problems
        }
        for sort in SORTS
    }


def growing(seen: Seen) -> Part:
    """Tell what more problems give: the certainty, what is likely and true, what is wrongly given."""
    rows = []
    for sort, by_size in seen.items():
        each = by_size.values()
        rows += [
            (f"{sort}: certainty", *(f"{certainty(trials):.2f}" for trials in each)),
            (f"{sort}: said to fit, and true", *(percent(_likely(trials).value) for trials in each)),
            (f"{sort}: wrongly given", *(percent(wrongly_given(trials).value) for trials in each)),
            (
                f"{sort}: calibration error",
                *(f"{calibration_error(first_said(trials)):.3f}" for trials in each),
            ),
        ]
    sizes = next(iter(seen.values()))
    return Part(
        "By number of problems",
        "Certainty: mean odds given to just the true idea, of pupils with any idea in subtracting, whether "
        "or not the page can show it.",
        ("page", *(f"{n} problems" for n in sizes)),
        tuple(rows),
    )


def _error(trials: Sequence[Trial]) -> float:
    return calibration_error(first_said(trials))


def _likely(trials: Sequence[Trial]) -> Share:
    return share([one for one in trials if one.steady], lambda one: one.likely and one.holds)


def compared(seen: Seen) -> Part:
    """Tell how many problems each sort of page needs for what ten of another give."""
    curves = {sort: {n: certainty(trials) for n, trials in by_size.items()} for sort, by_size in seen.items()}
    rows = []
    for other in ("look-alikes", "random"):
        wanted = curves[other][TEN]
        for sort, curve in curves.items():
            if sort != other:
                found = needed(curve, wanted)
                rows.append(
                    (
                        f"{sort}, for what {TEN} {other} give ({wanted:.2f})",
                        _number(found),
                        *_half(sort, found),
                    )
                )
    heads = ("page", "problems needed", "goal", "")
    return Part("Problems needed for the same certainty", "", heads, tuple(rows))


def _number(found: float | None) -> str:
    return "not reached" if found is None else f"{found:.1f}"


def _half(sort: str, found: float | None) -> tuple[str, str]:
    if sort != "composed":
        return "", ""
    return f"{TEN // 2}", held(found is not None and found <= TEN / 2)
