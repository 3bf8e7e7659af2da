"""Answers that alone decide whether a pattern is likely, and so into which group a pupil comes."""

from collections import defaultdict
from collections.abc import Hashable, Mapping, Sequence
from types import MappingProxyType

from onewhole.findings.in_answer import Tier
from onewhole.marking.diagnosis.finding import LIKELY_FROM
from onewhole.marking.reading.expected import Expected, is_fact_slip
from onewhole.marking.reading.mark import Mark


def decisive(
    expected: Sequence[Expected],
    marks: Sequence[Mark],
    recent: Mapping[str, int] = MappingProxyType({}),
) -> frozenset[str]:
    """Return the labels of the answers without which none of the patterns that they fit would be likely.

    A pattern puts a pupil into a group from two answers on that are exactly what it writes, on differently
    built problems; ``recent`` are those of recent nights, by pattern (:func:`~.finding.finding`). Slips with
    facts make no group.

    >>> from onewhole.marking.reading.answer import read_written
    >>> from onewhole.marking.reading.expected import expect
    >>> from onewhole.marking.reading.mark import mark_row
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> typed = ("9 5/8 - 4 6/8", "7 - 2 3/4", "5 4/6 - 2 1/6")
    >>> asked = [expect(Problem(str(at), read_statement(one), one)) for at, one in enumerate(typed, 1)]
    >>> alone, together = (
    ...     mark_row(asked, tuple(map(read_written, row)))
    ...     for row in (("5 1/8", "4 1/4", "3 3/6"), ("5 1/8", "5 3/4", "3 3/6"))
    ... )
    >>> sorted(decisive(asked, alone)), sorted(decisive(asked, together))
    ([], ['1', '2'])
    """
    fits = {
        mark.label: (asked.built, [key for key in mark.patterns if not is_fact_slip(key)])
        for asked, mark in zip(expected, marks, strict=True)
        if mark.tier in {Tier.LINE, Tier.EXACT}
    }
    built: dict[str, dict[str, Hashable]] = defaultdict(dict)
    for label, (how, patterns) in fits.items():
        for pattern in patterns:
            built[pattern][label] = how

    def likely(pattern: str, without: str | None = None) -> bool:
        tonight = len({how for label, how in built[pattern].items() if label != without})
        return tonight > 0 and tonight + recent.get(pattern, 0) >= LIKELY_FROM

    return frozenset(
        label
        for label, (_, patterns) in fits.items()
        if any(map(likely, patterns)) and not any(likely(pattern, label) for pattern in patterns)
    )
