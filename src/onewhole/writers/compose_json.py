"""A composed page as a JSON object."""

from collections.abc import Iterable

from onewhole.notations.text import text
from onewhole.sheets.composed import Composed, Told
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet

Json = dict[str, object]


def composed_object(composed: Composed) -> Json:
    """Return problems, recipe, how good the page is, and what it can and cannot tell apart.

    ``doubt_left`` is the share of all doubt that the page leaves and ``gap`` the share by which a better
    page could at most teach more (exact fractions); ``teaches`` and ``bound`` are what ``gap`` comes from. A
    set of patterns is a list of ids; the empty one is "no pattern".
    """
    sheet = composed.sheet
    return {
        "problems": [
            {"label": one.label, "problem": one.problem.typed, "answer": text(one.answer)}
            for one in WorkedSheet(sheet).problems
        ],
        "recipe": sheet.header.recipe,
        "doubt_left": composed.doubt_left,
        "gap": composed.gap,
        "teaches": composed.taught,
        "bound": composed.bound,
        "chosen_from": composed.listed,
        "drawn": composed.drawn,
        "tells_apart": list(_told(one for one in composed.told if one.labels)),
        "cannot_tell_apart": [[list(one.first), list(one.second)] for one in composed.told if not one.labels],
        "notes": list(composed.notes),
        "sheet": write_sheet(sheet),
    }


def _told(every: Iterable[Told]) -> Iterable[Json]:
    for one in every:
        yield {"patterns": [list(one.first), list(one.second)], "problems": list(one.labels)}
