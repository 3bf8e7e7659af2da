"""Everything about a page that is worked out once for a class, and the class's answers as kinds of reply."""

from collections.abc import Collection, Hashable, Sequence

from msgspec import Struct

from onewhole.findings.in_answer import Tier
from onewhole.marking.diagnosis.chances import MEANS_UNLISTED, Chances, Intention, akin_to, as_line, chances
from onewhole.marking.diagnosis.hypothesis import Hypothesis, hypotheses
from onewhole.marking.diagnosis.reply import Reply, reply
from onewhole.marking.diagnosis.weighing import acting, column, likelihoods
from onewhole.marking.reading.answer import Blank, Unreadable
from onewhole.marking.reading.expected import Expected
from onewhole.marking.reading.mark import ClassMarks, Mark, PupilMarks

#: The value for a missing reply, which is no evidence either way.
Replies = tuple[Reply | None, ...]


class Tables(Struct, frozen=True):
    """The tables of a page.

    ``meaning`` has for each problem what every hypothesis means to answer (:func:`.weighing.acting`).
    ``looks`` has for each hypothesis one number a problem: equal for patterns that write the same answer
    there, and 0 where the answer is meant to be right.
    """

    hypotheses: tuple[Hypothesis, ...]
    chances: tuple[Chances, ...]
    meaning: tuple[tuple[Intention | None, ...], ...]
    looks: tuple[tuple[int, ...], ...]


def tables(expected: Sequence[Expected], lines: Collection[int] = ()) -> Tables:
    """Work out the tables of a page.

    ``lines`` are the places of the problems for which some pupil's lines were typed: every pattern is seen
    there for itself, as two that write one answer may write different lines.
    """
    rows = tuple(chances(asked) for asked in expected)
    found = hypotheses(expected)
    meaning = tuple(acting(found, table) for table in rows)
    columns = [
        looks_of(table, meant, lines=at in lines)
        for at, (table, meant) in enumerate(zip(rows, meaning, strict=True))
    ]
    return Tables(found, rows, meaning, tuple(zip(*columns, strict=True)) if columns else ((),) * len(found))


def typed_lines(marks: ClassMarks) -> frozenset[int]:
    """Return the places of the problems for which some pupil's lines say which pattern is followed."""
    places = (at for pupil in marks.pupils for at, mark in enumerate(pupil.marks) if mark.tier is Tier.LINE)
    return frozenset(places)


def replies(marks: ClassMarks, pupil: PupilMarks) -> Replies:
    """Return the kind of each reply of a pupil; None where nothing was written or it cannot be read."""
    return tuple(_reply(asked, mark) for asked, mark in zip(marks.expected, pupil.marks, strict=True))


def _reply(asked: Expected, mark: Mark) -> Reply | None:
    if mark.tier is Tier.LINE:
        return as_line(mark.patterns)
    read = mark.written.read
    return None if isinstance(read, Blank | Unreadable) else reply(asked, read)


def looks_of(table: Chances, meaning: Sequence[Intention | None], *, lines: bool) -> list[int]:
    """Return one number a hypothesis, equal where the same is meant; ``lines`` says that lines tell more."""
    number: dict[Hashable, int] = {}
    seen: dict[Intention | None, int] = {None: 0}
    for key in sorted(table.shows):
        what: Hashable = key if lines else frozenset(table.meant[key].items())
        seen[key] = number.setdefault(what, len(number) + 1)
    for key in sorted(table.ideas):
        seen[akin_to(key)] = number.setdefault(("akin", seen[key]), len(number) + 1)
    seen[MEANS_UNLISTED] = len(number) + 1
    return [seen[key] for key in meaning]


def all_likelihoods(page: Tables, given: Sequence[Replies]) -> tuple[tuple[int, ...], ...]:
    """Return for each pupil how likely the replies are under every hypothesis, up to a factor.

    Hypotheses with equal ``looks`` are weighed once, and so is a reply that several pupils gave.
    """
    first: dict[Hashable, int] = {}
    keys = [(one.reliability, look) for one, look in zip(page.hypotheses, page.looks, strict=True)]
    of = [first.setdefault(key, at) for at, key in enumerate(keys)]
    kept = list(first.values())
    place = {at: number for number, at in enumerate(kept)}
    ways = [page.hypotheses[at] for at in kept]
    known: dict[tuple[int, Reply], tuple[int, ...]] = {}
    rows = []
    for row in given:
        answered = [(at, one) for at, one in enumerate(row) if one is not None]
        for at, one in answered:
            if (at, one) not in known:
                meant = [page.meaning[at][which] for which in kept]
                known[at, one] = column(ways, page.chances[at], one, meant)
        likely = likelihoods([known[each] for each in answered], len(kept))
        rows.append(tuple(likely[place[at]] for at in of))
    return tuple(rows)
