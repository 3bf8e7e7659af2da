"""What a term shows: how often an idea is said while it acts, false alarms, how soon it is released."""

from collections.abc import Iterable, Sequence
from concurrent.futures import Executor
from dataclasses import replace
from functools import partial
from itertools import groupby

from lab.measures import SHOWN, Said, Share, calibration_error
from lab.nights import CLASS
from lab.pupils import Kind
from lab.table import Part, held, percent
from lab.term import NIGHTS, TermNight, shelf, term

Nights = Sequence[TermNight]

#: From this night on the odds are held against the truth: the nights before it show little of a pupil yet.
LATE_FROM = 16
RIGHTLY, FALSE, RELEASED = 0.75, 0.05, 1.0
#: The seeds of the pages and of the classes are not those on which the rates of the history were chosen.
PAGES, SEED = 2, "table of terms"


def said_rightly(nights: Iterable[TermNight]) -> Share:
    """Count, of the nights on which an idea of a pupil could act, those on which it is said to fit."""
    acting = [one for one in nights if one.truth]
    return Share(sum(one.likely and one.holds for one in acting), len(acting))


def false_a_pupil(nights: Nights) -> float:
    """Return how many times a term a pupil is said to fit an idea that is not there."""
    return sum(one.likely and not one.holds for one in nights) / len({one.code for one in nights})


def noticed_by(nights: Nights, by: int) -> Share:
    """Count, of the ideas that could act on so many nights or more, those that were said by then."""
    first: dict[str, int] = {}
    most: dict[str, int] = {}
    for one in nights:
        if one.truth:
            most[one.code] = one.acted
            if one.likely and one.holds:
                first.setdefault(one.code, one.acted)
    known = [code for code, count in most.items() if count >= by]
    return Share(sum(first.get(code, by + 1) <= by for code in known), len(known))


def shown_too_long(nights: Nights) -> list[int]:
    """Return for each pupil whose idea went while it was shown, on how many nights it was shown still."""
    found = []
    for _, mine in groupby(sorted(nights, key=lambda one: (one.code, one.night)), key=lambda one: one.code):
        rows = list(mine)
        while rows and not rows[-1].gone:
            rows.pop()
        after = [one.stands for one in rows if one.gone]
        before = [one.stands for one in rows if not one.gone]
        if before and before[-1] and after:
            found.append(after.index(False) if False in after else len(after))
    return found


def late_calibration(nights: Iterable[TermNight]) -> float:
    """Return the calibration error of ideas that are said from odds of 5 % on, late in the term."""
    late = (one for one in nights if one.night >= LATE_FROM and one.together >= SHOWN)
    return calibration_error([Said(one.together, one.holds) for one in late])


def terms(classes: int, nights: int, pool: Executor | None) -> tuple[Nights, ...]:
    """Return the nights of so many classes by each road; codes are told apart by class."""
    work = partial(_term, nights)
    seen = list((pool.map if pool else map)(work, range(classes)))
    return tuple(tuple(one for each in road for one in each) for road in zip(*seen, strict=True))


def _term(nights: int, which: int) -> tuple[Nights, ...]:
    roads = term(shelf(PAGES), f"{SEED} {which}", nights)
    return tuple(tuple(replace(one, code=f"{which} {one.code}") for one in road) for road in roads)


def term_part(classes: int, pool: Executor | None, nights: int = NIGHTS) -> Part:
    """Measure terms: with what earlier nights showed of the class alone, and of each pupil."""
    roads = terms(classes, nights, pool)
    late = [shown_too_long(road) for road in roads]
    own = roads[-1]
    rows = (
        _row(
            "said to fit while it can act",
            [percent(said_rightly(road)) for road in roads],
            "75 %",
            said_rightly(own).value >= RIGHTLY,
        ),
        *(_kind(kind, roads) for kind in (Kind.STEADY, Kind.SWITCHING, Kind.PAIRED)),
        _row(
            "falsely said to fit, times a pupil a term",
            [f"{false_a_pupil(road):.3f}" for road in roads],
            "at most 0.05",
            false_a_pupil(own) <= FALSE,
        ),
        _row(
            "shown still after it is gone, nights",
            [f"{_mean(one):.1f}" for one in late],
            "at most 1",
            _mean(late[-1]) <= RELEASED,
        ),
        _row("  for no more than one night", [percent(_soon(one)) for one in late]),
        _row(
            f"calibration error of ideas, from night {LATE_FROM}",
            [f"{late_calibration(road):.3f}" for road in roads],
        ),
        *(
            _row(
                f"noticed by night {by} on which it could act",
                [percent(noticed_by(road, by)) for road in roads],
            )
            for by in (1, 3)
        ),
    )
    note = (
        f"{classes} classes of {CLASS}. Ideas are there from the start, appear, stay and go; each night has "
        "a page of another make, composed or a teacher's own; weekends and a free week lie between."
    )
    heads = ("what", "by the class alone", "with each pupil's own history", "goal", "")
    return Part(f"A term of {nights} nights", note, heads, rows)


def _row(what: str, cells: Sequence[str], goal: str = "", met: bool | None = None) -> tuple[str, ...]:
    return (what, *cells, goal, "" if met is None else held(met))


def _kind(kind: Kind, roads: Sequence[Nights]) -> tuple[str, ...]:
    some = [[one for one in road if one.kind is kind] for road in roads]
    return _row(f"  of these, {kind} pupils", [percent(said_rightly(one)) for one in some])


def _mean(counts: Sequence[int]) -> float:
    return sum(counts) / max(1, len(counts))


def _soon(counts: Sequence[int]) -> Share:
    return Share(sum(one <= RELEASED for one in counts), len(counts))
