"""Which one idea each pupil's answers are taken to fit: the one that most of the class share."""

from collections import Counter
from collections.abc import Mapping, Sequence
from fractions import Fraction

from onewhole.findings.status import Status
from onewhole.marking.diagnosis.diagnosis import Diagnosis
from onewhole.marking.diagnosis.finding import Finding
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family

#: From these odds on a pupil without a likely pattern may sit with those of an idea; our own.
MAY_SIT = Fraction(1, 2)


def shared_ideas(findings: Sequence[Finding]) -> Mapping[str, str]:
    """Return by pupil the id of the pattern that each likely finding is taken to be about.

    A finding may have several patterns: alternatives that the answers do not tell apart, or two that live
    together. The pattern that most pupils' findings have comes first (of equal ones, the first id), then the
    one that most of the others have, and so on: pupils who may share an idea are not told apart by chance.
    The order of pupils makes no difference.
    """
    waiting = {found.pupil: fitted(found) for found in findings if found.status is Status.LIKELY}
    chosen: dict[str, str] = {}
    while waiting:
        counted = Counter(pattern for patterns in waiting.values() for pattern in patterns)
        top = min(counted, key=lambda pattern: (-counted[pattern], pattern))
        have = [pupil for pupil, patterns in waiting.items() if top in patterns]
        chosen |= dict.fromkeys(have, top)
        waiting = {pupil: patterns for pupil, patterns in waiting.items() if pupil not in chosen}
    return chosen


def fitted(found: Finding) -> tuple[str, ...]:
    """Return the patterns of a finding that some answer fits; all of them where none does."""
    return tuple(one.pattern for one in found.fittings if one.evidence) or found.patterns


def may_sit_with(found: Finding) -> tuple[Family, ...]:
    """Return the families that are likelier than not, the likeliest first, for an open finding."""
    shares = {family: share_of(found.diagnosis, (family,)) for family in Family}
    likely = [family for family, share in shares.items() if share >= MAY_SIT]
    return tuple(sorted(likely, key=lambda family: -shares[family]))


def share_of(diagnosis: Diagnosis, families: Sequence[Family]) -> Fraction:
    """Return the odds of all sets with a pattern of one of these families."""
    held = (
        one.probability
        for one in diagnosis.odds
        if any(by_id(key).family in families for key in one.patterns)
    )
    return sum(held, Fraction(0))
