"""Which one or two problems to ask a pupil next: those expected to give the most information.

Numbers alone do not show what a pupil does in a story, so stories are offered too where that is in doubt.
"""

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from fractions import Fraction
from functools import lru_cache
from itertools import islice
from operator import mul

from msgspec import Struct

from onewhole.findings.status import Status
from onewhole.marking.diagnosis.asked import TalkPage
from onewhole.marking.diagnosis.chances import Chances, chances
from onewhole.marking.diagnosis.diagnosis import Weighed
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.hypothesis import Hypothesis, kind_of
from onewhole.marking.diagnosis.information import doubt, expected
from onewhole.marking.diagnosis.likeliest_sets import LEAST
from onewhole.marking.diagnosis.reply import RIGHT
from onewhole.marking.diagnosis.weighing import WAYS, acting, column
from onewhole.marking.reading.asked import LABEL
from onewhole.marking.reading.expected import Expected, expect
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from onewhole.number.ladder import Style
from onewhole.problems.needs import Needs, Operation, needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

_Rows = tuple[tuple[int, ...], ...]

#: Problems on which the most patterns give an answer of their own, two for each denominator: computed over
#: the whole space by the collection that the patterns come from, and again by us (tests/agreement). The
#: last one tells two published whole-number errors apart that 143 - 28 does not: Brown and Burton (1978),
#: as restated.
TELLING = (
    "9 1/3 - 3 2/3",
    "9 1/3 - 6 2/3",
    "9 1/4 - 6 2/4",
    "6 1/4 - 3 2/4",
    "9 3/5 - 5 4/5",
    "7 3/5 - 3 4/5",
    "9 4/6 - 4 5/6",
    "9 3/6 - 5 4/6",
    "9 5/8 - 6 6/8",
    "9 5/8 - 4 6/8",
    "9 7/10 - 5 8/10",
    "9 6/10 - 7 9/10",
    "9 7/12 - 4 9/12",
    "9 4/12 - 6 5/12",
    "703 - 245",
)
#: So many problems parallel to one of each kind on the page are looked at, and so many kinds.
PARALLELS, KINDS = 2, 5
#: The least expected information, in millionths of a bit, for which a problem is asked; our own.
LEAST_TOLD = 50_000
#: A second problem is asked while the entropy expected after the first is above this; our own.
LEFT_OPEN = 300_000


#: Makes stories that may be asked; it is called only where they would tell something.
Stories = Callable[[], Sequence[Problem]]


class Candidate(Struct, frozen=True):
    """A problem that may be asked, its kind and whether it is told, and the chances of the answers to it."""

    problem: Problem
    kind: tuple[Needs, bool]
    table: Chances


def candidates(asked: Sequence[Expected], stories: Sequence[Problem] = ()) -> tuple[Candidate, ...]:
    """Return a few problems that may be asked after a page, worked out once for a class.

    They are parallel to the first problem of each kind on the page, or tell the most patterns apart with the
    page's denominators, or are some of the ``stories``; none is a twin of a problem on the page.
    """
    seen = {twin_key(one.problem.statement) for one in asked}
    found = []
    plain = (Problem(LABEL, one, text(one)) for one in (*_telling(asked), *_parallels(asked)))
    for problem in (*plain, *stories):
        if (key := twin_key(problem.statement)) not in seen:
            seen.add(key)
            found.append(_candidate(problem))
    return tuple(found)


@lru_cache(maxsize=64)
def _candidate(problem: Problem) -> Candidate:
    """Work a problem out that may be asked; the telling ones come again with every page."""
    told = problem.told is not None
    return Candidate(problem, (kind_of(needs(problem.statement)), told), chances(expect(problem)))


def _telling(asked: Sequence[Expected]) -> Iterator[Statement]:
    """Yield the telling problems whose pieces are those of a difference on the page."""
    taken = [one.problem.statement for one in asked if Operation.SUBTRACT in one.needs.operations]
    pieces = {_pieces(statement) for statement in taken}
    for typed in TELLING:
        statement = read_statement(typed)
        if _pieces(statement) in pieces:
            yield statement


def _pieces(statement: Statement) -> tuple[Style, Fraction]:
    ladder = min((quantity.ladder for quantity in numbers_of(statement)), key=lambda one: one.finest)
    return ladder.style, ladder.finest


def _parallels(asked: Sequence[Expected]) -> Iterator[Statement]:
    """Yield problems parallel to the first one of each kind."""
    first: dict[Needs, Statement] = {}
    for one in asked:
        first.setdefault(kind_of(one.needs), one.problem.statement)
    for statement in islice(first.values(), KINDS):
        yield from islice(parallel(statement), PARALLELS)


def ask_next(
    weighed: Weighed,
    asked: Sequence[Expected],
    pupils: Collection[str] | None = None,
    findings: Sequence[Finding] | None = None,
    stories: Stories = tuple,
) -> tuple[tuple[Problem, ...], ...]:
    """Return for each pupil the one or two problems that are expected to give the most information.

    The measure is Shannon's: how much, on average over the answers that may come, the odds of the sets of
    patterns, of no steady idea and of one that no pattern describes will change, in millionths of a bit and
    whole numbers throughout (:mod:`~.information`). Nothing is asked of a pupil of whom no answer was read,
    nor where one of these reaches the odds asked for by itself; for a set of patterns it must be *likely* in
    the ``findings`` too, where they are given: else a problem is asked on which it shows once more. That
    there is no steady idea stays open while an answer of a talk was wrong. A second problem is of another
    kind. What the pupil was asked already is not asked again. Where ``pupils`` are given, by code, nothing is
    worked out for the others. ``stories`` may be asked too where it is in doubt what a pupil does in one.
    """
    likely = {one.pupil for one in findings or () if one.status is Status.LIKELY}
    cases = [
        _case(weighed, at, likely=None if findings is None else one.pupil in likely)
        if pupils is None or one.pupil in pupils
        else None
        for at, one in enumerate(weighed.diagnoses)
    ]
    union = sorted({place for case in cases if case for place in case.places})
    if not union:
        return ((),) * len(cases)
    ways = [weighed.page.hypotheses[place] for place in union]
    rows_at = {place: row for row, place in enumerate(union)}
    told = stories() if any(by_id(key).of_stories for way in ways for key in way.ids) else ()
    offered = [(one, _rows(one.table, ways)) for one in candidates(asked, told)]
    return tuple(
        _chosen(weighed, at, offered, (case, rows_at)) if case else () for at, case in enumerate(cases)
    )


class _Case(Struct, frozen=True):
    """A case that stays open: for each thing that may be said of it, the places of its hypotheses.

    ``again`` is a set of patterns whose odds are high enough and which too few answers fit; None for none.
    """

    kinds: tuple[tuple[int, ...], ...]
    again: int | None = None

    @property
    def places(self) -> tuple[int, ...]:
        return tuple(place for kind in self.kinds for place in kind)


def _case(weighed: Weighed, at: int, *, likely: bool | None) -> _Case | None:
    """Return what stays open for a pupil; None where nothing does."""
    shares, ways = weighed.weights[at], weighed.page.hypotheses
    whole = sum(shares)
    talk = weighed.talks.get(weighed.diagnoses[at].pupil)
    if all(one is None for one in (*weighed.replies[at], *(talk.given if talk else ()))):
        return None
    kinds: dict[object, list[int]] = {}
    for place, one in enumerate(ways):
        kinds.setdefault(one.ids or one.steady, []).append(place)
    held = {kind: sum(shares[place] for place in places) for kind, places in kinds.items()}
    top = max(held, key=held.__getitem__)
    again = None
    if held[top] >= weighed.confident * whole and not (top is False and talk and _went_wrong(talk)):
        if likely is not False or not isinstance(top, tuple):
            return None
        again = kinds[top][0]
    kept = (
        tuple(places)
        for kind, places in kinds.items()
        if not isinstance(kind, tuple) or held[kind] * LEAST.denominator >= whole
    )
    return _Case(tuple(kept), again)


def _went_wrong(talk: TalkPage) -> bool:
    """Say whether an answer of a talk was wrong: then that there is no steady idea is not settled by it."""
    return any(one is not None and one != RIGHT for one in talk.given)


def _rows(table: Chances, ways: Sequence[Hypothesis]) -> _Rows:
    """Return for each hypothesis the chances of every reply, over all ways of working.

    Hypotheses that mean the same answer here have one row, worked out once.
    """
    meant = acting(ways, table)
    keys = [(key, way.steady, way.reliability) for key, way in zip(meant, ways, strict=True)]
    first = {key: at for at, key in reversed(list(enumerate(keys)))}
    unlike = [ways[at] for at in first.values()]
    columns = [column(unlike, table, given, [key for key, *_ in first]) for given in table.replies]
    rows = {
        key: tuple(sum(one[at * WAYS : at * WAYS + WAYS]) for one in columns) for at, key in enumerate(first)
    }
    return tuple(rows[key] for key in keys)


def _chosen(
    weighed: Weighed,
    at: int,
    offered: Sequence[tuple[Candidate, _Rows]],
    open_case: tuple[_Case, Mapping[int, int]],
) -> tuple[Problem, ...]:
    """Choose for one pupil; beside the case stands the row of each of the page's hypotheses."""
    case, rows_at = open_case
    shares = weighed.weights[at]
    odds = [sum(shares[place] for place in kind) for kind in case.kinds]
    talk = weighed.talks.get(weighed.diagnoses[at].pupil)
    before = {twin_key(one.problem.statement) for one in talk.marks.expected} if talk else set()
    least = LEAST_TOLD if case.again is None else 0
    told = []
    for candidate, rows in offered:
        if twin_key(candidate.problem.statement) in before or not _shows(weighed, case, candidate):
            continue
        mixed = [
            _mixed([rows[rows_at[place]] for place in kind], [shares[place] for place in kind])
            for kind in case.kinds
        ]
        if (gain := expected(odds, mixed)) >= least:
            told.append((gain, candidate))
    told.sort(key=lambda one: (-one[0], one[1].problem.story, one[1].problem.typed))
    if not told:
        return ()
    first = told[0]
    others = (one for one in told if one[1].kind != first[1].kind)
    second = next(others, None) if doubt(odds) - first[0] > LEFT_OPEN else None
    return tuple(one[1].problem for one in (first, second) if one is not None)


def _shows(weighed: Weighed, case: _Case, candidate: Candidate) -> bool:
    """Say whether a set of patterns that wants one fit more shows on a problem; any will do without one."""
    if case.again is None:
        return True
    return weighed.page.hypotheses[case.again].acting(candidate.table.shows) is not None


def _mixed(rows: Sequence[Sequence[int]], weights: Sequence[int]) -> tuple[int, ...]:
    """Return the chances of every reply, averaged over the rows by their weights."""
    whole = sum(weights)
    return tuple(sum(map(mul, weights, column)) // whole for column in zip(*rows, strict=True))
