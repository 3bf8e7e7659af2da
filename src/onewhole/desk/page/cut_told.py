"""Which problems of a printed page have less room than their workings need, in one line."""

from contextlib import suppress

from onewhole.sheets.document import Sheet
from onewhole.sheets.room import RoomError
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.labels import runs


def cut(sheet: Sheet) -> tuple[str, ...]:
    """Return the labels of the problems that miss lines or a picture on the pupils' page.

    A page that is fitted says itself how much room it leaves.

    >>> from onewhole.sheets.reading import read_sheet
    >>> cut(read_sheet("1. 52 - 27"))
    ()
    """
    if sheet.header.fit:
        return ()
    with suppress(RoomError):
        return tuple([label for label, room in WorkedSheet(sheet).rooms.items() if not room.whole])
    return ()


def cut_told(sheet: Sheet, labels: tuple[str, ...]) -> str:
    """Return a line on these problems, and where more is said.

    >>> from onewhole.sheets.reading import read_sheet
    >>> cut_told(read_sheet("1. 52 - 27"), ("1",))
    'Problem 1 needs more room than its page has; onewhole audit says what is left out.'
    """
    one = len(labels) == 1
    named = runs(labels, [problem.label for problem in sheet.problems])
    needs = "needs more room than its page has" if one else "need more room than their pages have"
    return f"Problem{'s' * (not one)} {named} {needs}; onewhole audit says what is left out."
