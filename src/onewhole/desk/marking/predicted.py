"""What the likeliest patterns would write on a problem, to be taken instead of typed."""

from collections import Counter
from collections.abc import Mapping

from msgspec import Struct

from onewhole.desk.classes.class_records import NightPage
from onewhole.desk.marking.verdicts import asked, expected, judged
from onewhole.marking.reading.expected import is_fact_slip
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from onewhole.problems.traps import is_core

#: More than this nobody looks through.
MOST = 9


class Predicted(Struct, frozen=True):
    """A pattern (id and plain name) and the answer that it writes, as it is typed."""

    id: str
    name: str
    text: str


def predicted(page: NightPage, label: str, beside: Mapping[str, str] | None = None) -> tuple[Predicted, ...]:
    """Return what patterns would write on a problem, the likeliest first, no answer twice, nine at most.

    ``beside`` are the pupil's other answers of the night by label: patterns that more of them fit come first.
    Then come the core patterns (regrouping and the pieces), then the rest as in the catalogue; patterns that
    only leave a form and slips with facts are left out. The order is our own. Raises InputError for an
    unknown label.
    """
    fitting = Counter(
        fit.id
        for other, written in (beside or {}).items()
        if other != label
        for fit in judged(page, other, written).fits
    )
    slips = [slip for slip in expected(asked(page, label)).slips if not is_fact_slip(slip.pattern)]
    slips.sort(key=lambda slip: (-fitting[slip.pattern], not is_core(slip.pattern)))
    found: dict[str, Predicted] = {}
    for slip in slips:
        answer = text(slip.wrote)
        found.setdefault(answer, Predicted(slip.pattern, by_id(slip.pattern).name, answer))
    return tuple(found.values())[:MOST]
