"""The few things of a night that are most worth knowing."""

from collections.abc import Iterator

from onewhole.desk.marking.mark import Marked
from onewhole.findings.status import Status
from onewhole.languages.english.placing import idea_called
from onewhole.languages.english.words import names_listed
from onewhole.marking.grouping.class_ideas import class_ideas
from onewhole.marking.grouping.see_first import SEEN_FIRST, talk_first
from onewhole.misconceptions.catalogue import by_id
from onewhole.writers.pattern_words import question

MOST = 3


def most_useful(marked: Marked, most: int = MOST) -> tuple[str, ...]:
    """Return the most useful findings of a night in sentences, for the teacher's eyes.

    The idea that most pupils' answers fit, whom to talk with first, the problem to look at again.
    """
    return tuple(_found(marked))[:most]


def _found(marked: Marked) -> Iterator[str]:
    shared = class_ideas(marked.marks.pupils, marked.findings)
    if shared:
        top = shared[0]
        ask = question(
            by_id(top.idea), marked.sheet.problems, marked.sheet.header.words, (top.show,) if top.show else ()
        )
        yield (f"The answers of {names_listed(top.pupils)} fit one idea: {idea_called(top.idea)}. Ask, {ask}")
    unlisted = [found.pupil for found in marked.findings if found.status is Status.UNLISTED]
    if unlisted:
        yield (
            f"The answers of {names_listed(unlisted)} are steady, and not one of our patterns: "
            "ask to be shown how it was done."
        )
    talks = [
        one.pupil
        for one in talk_first(marked.findings, marked.groups)
        if one.status not in {Status.LIKELY, Status.UNLISTED}
    ]
    if talks:
        who = names_listed(talks[:SEEN_FIRST])
        yield f"Talk first with {who}: no steady pattern, so only a talk can tell."
    for item in marked.items:
        if item.check_key:
            yield f"Look at the key of problem {item.label}: pupils who do well elsewhere miss it."
    tried = [item for item in marked.items if item.share is not None]
    if tried:
        hard = min(tried, key=lambda item: (item.share, item.label))
        yield f"Problem {hard.label} was the hardest: {hard.right} of {hard.tried} right."
