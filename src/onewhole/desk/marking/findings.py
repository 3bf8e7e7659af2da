"""The few things of a night that are most worth knowing."""

from collections import defaultdict
from collections.abc import Iterator

from onewhole.desk.marking.mark import Marked
from onewhole.findings.status import Status
from onewhole.languages.english.words import names_listed
from onewhole.marking.grouping.see_first import see_first
from onewhole.misconceptions.catalogue import by_id
from onewhole.writers.pattern_words import question

MOST = 3


def most_useful(marked: Marked, most: int = MOST) -> tuple[str, ...]:
    """Return the most useful findings of a night in sentences, for the teacher's eyes.

    The idea that most pupils' answers fit, whom to talk with first, the problem to look at again.
    """
    return tuple(_found(marked))[:most]


def _found(marked: Marked) -> Iterator[str]:
    pupils: dict[str, list[str]] = defaultdict(list)
    for found in marked.findings:
        if found.status is Status.LIKELY:
            for pattern in found.patterns:
                pupils[pattern].append(found.pupil)
    shared = sorted(pupils, key=lambda pattern: (-len(pupils[pattern]), pattern))
    if shared:
        top = by_id(shared[0])
        fits = {
            label
            for found in marked.findings
            for one in found.fittings
            if found.status is Status.LIKELY and one.pattern == top.id
            for label in one.evidence
        }
        ask = question(top, marked.sheet.problems, marked.sheet.header.words, fits)
        yield f"The answers of {names_listed(pupils[top.id])} fit one idea: {top.name}. Ask, {ask}"
    unlisted = [found.pupil for found in marked.findings if found.status is Status.UNLISTED]
    if unlisted:
        yield (
            f"The answers of {names_listed(unlisted)} are steady, and not one of our patterns: "
            "ask to be shown how it was done."
        )
    steady = {found.pupil for found in marked.findings if found.status in {Status.LIKELY, Status.UNLISTED}}
    talks = [
        one
        for one in see_first(marked.marks.pupils, marked.findings, marked.groups)
        if one.pupil not in steady
    ]
    if talks:
        who = names_listed([one.pupil for one in talks])
        yield f"Talk first with {who}: no steady pattern, so only a talk can tell."
    for item in marked.items:
        if item.check_key:
            yield f"Look at the key of problem {item.label}: pupils who do well elsewhere miss it."
    tried = [item for item in marked.items if item.share is not None]
    if tried:
        hard = min(tried, key=lambda item: (item.share, item.label))
        yield f"Problem {hard.label} was the hardest: {hard.right} of {hard.tried} right."
