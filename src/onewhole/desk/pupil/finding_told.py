"""What the answers of a night may show, as one sentence for the teacher."""

from collections.abc import Sequence

from onewhole.findings.status import Status
from onewhole.languages.english.placing import idea_called
from onewhole.languages.english.words import names_listed


def finding_told(status: Status, evidence: Sequence[str], patterns: Sequence[str]) -> str:
    """Say which answers fit which patterns; a possible one only may.

    >>> finding_told(Status.LIKELY, ["1", "3"], ["A02"])
    'Answers to 1 and 3 fit “opens a whole and still counts it”.'
    """
    several = len(evidence) > 1
    fit = ("fit" if several else "fits") if status is Status.LIKELY else "may fit"
    named = "; ".join(f"“{idea_called(key)}”" for key in patterns)
    return f"{'Answers' if several else 'The answer'} to {names_listed(evidence)} {fit} {named}."
