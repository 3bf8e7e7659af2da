"""The ideas of a class tonight, that of most pupils first: who has each, and the problem to show."""

from collections import Counter
from collections.abc import Mapping, Sequence

from msgspec import Struct

from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.grouping.idea import shared_ideas
from onewhole.marking.reading.answer import Written
from onewhole.marking.reading.mark import PupilMarks


class ClassIdea(Struct, frozen=True):
    """An idea (the id of its pattern) that the answers of some pupils are likely to fit.

    ``pupils`` are their codes in order, and ``fits`` has by code the labels that fit it. ``show`` is the
    label of the problem that most of them answered so, and ``wrote`` what most of them wrote there; both are
    empty where no answer of tonight fits, so that the idea rests on earlier nights.
    """

    idea: str
    pupils: tuple[str, ...]
    fits: Mapping[str, tuple[str, ...]]
    show: str = ""
    wrote: Written | None = None


def class_ideas(pupils: Sequence[PupilMarks], findings: Sequence[Finding]) -> tuple[ClassIdea, ...]:
    """Return the ideas of a class, that of most pupils first; of equal ones the first id.

    Each pupil with a likely finding is counted once, with the idea that most others share
    (:func:`~.idea.shared_ideas`). ``pupils`` are all whose answers were marked.
    """
    held: dict[str, list[str]] = {}
    for pupil, idea in shared_ideas(findings).items():
        held.setdefault(idea, []).append(pupil)
    found = {one.pupil: one for one in findings}
    marked = {one.pupil: one for one in pupils}
    return tuple(
        _idea(idea, [found[code] for code in sorted(held[idea])], marked)
        for idea in sorted(held, key=lambda idea: (-len(held[idea]), idea))
    )


def _idea(idea: str, findings: Sequence[Finding], marked: Mapping[str, PupilMarks]) -> ClassIdea:
    fits = {
        found.pupil: tuple(
            label
            for one in found.fittings
            if one.pattern == idea
            for label in found.wrong
            if label in one.evidence
        )
        for found in findings
    }
    codes = tuple(fits)
    counted = Counter(label for labels in fits.values() for label in labels)
    if not counted:
        return ClassIdea(idea, codes, fits)
    order = [mark.label for mark in marked[codes[0]].marks]
    show = min(counted, key=lambda label: (-counted[label], order.index(label)))
    written = [
        mark.written
        for code in codes
        if show in fits[code]
        for mark in marked[code].marks
        if mark.label == show
    ]
    texts = Counter(one.text.strip() for one in written)
    return ClassIdea(idea, codes, fits, show, max(written, key=lambda one: texts[one.text.strip()]))
