"""A line of a sheet that is no problem and no setting: what it may be meant as."""

import re

from onewhole.errors import InputError
from onewhole.findings.click import LineUse
from onewhole.notations.text import text
from onewhole.sheets.document import SheetError
from onewhole.sheets.story_readings import StoryReadings, story_readings, without_units
from onewhole.sheets.typed_lines import is_words, label_in, setting_in
from onewhole.statements.reading import read_statement

_NO_READINGS = StoryReadings((), sure=False)
#: What stands between two problems that were typed side by side.
_BESIDE = re.compile(r"\t+|\s{3,}")
_WORDS_REMEDY = (
    "Words to the pupil begin with #. A problem begins with its numbers: 7 2/6 - 3 5/6. "
    "A setting stands at the very top with a colon: title: Kites."
)


class UnreadLine(SheetError):
    """A line that cannot be read as it is; ``story`` is what it may ask, ``uses`` what else it may be."""

    story: StoryReadings
    uses: tuple[LineUse, ...]


def unread(error: InputError, asked: str, line: int, column: int, *, goes_on: bool = False) -> InputError:
    """Return the refusal of a line whose problem cannot be read: a story with what it may ask, or words.

    ``error`` says what is wrong with it as a problem, and stays where it is none of these. ``goes_on`` says
    that the line below it is words without a label.

    >>> unread(InputError("?"), "Maya has 4 1/4 yards and uses 1 3/4. How much is left?", 1, 1).what
    'this is a story, and what it asks is not written yet'
    """
    if beside := problems_beside(asked):
        msg = f"{len(beside)} problems stand on this line"
        return _made(msg, "Write each on a line of its own.", line, column, uses=(LineUse.SPLIT,))
    if units := without_units(asked):
        msg = "this has words or signs that no problem has"
        asks = text(units)
        remedy = f"Its numbers ask {asks}. Write that before it, with a bar: {asks} | {asked.strip()}"
        return _made(msg, remedy, line, column, story=StoryReadings((units,), sure=True))
    if not (is_words(asked) or setting_in(asked)):
        return error
    found = story_readings(asked)
    joined = (LineUse.JOINED,) if goes_on else ()
    if found:
        first = text(found.asked[0])
        told = "Its words tell" if found.sure else "It may be"
        msg = "this is a story, and what it asks is not written yet"
        remedy = f"{told} {first}. Write what it asks before its words, with a bar: {first} | {_begin(asked)}"
        return _made(msg, remedy, line, column, story=found, uses=joined)
    msg = "these are words, and no problem is found in them"
    return _made(msg, _WORDS_REMEDY, line, column, uses=joined + _OTHER_USES)


def no_setting(error: InputError, said: str, line: int, column: int) -> InputError:
    """Return the refusal of a line with a colon that is no setting: it may be words to the pupil."""
    uses = _OTHER_USES if len(said.split()) > 1 else ()
    return _made(error.what, error.remedy or "", line, column, uses=uses)


def problems_beside(asked: str) -> tuple[str, ...]:
    r"""Return the problems that stand side by side on a line, with the labels that they have; else none.

    >>> problems_beside("7 2/6 - 3 5/6\t\t2. 5 1/4 - 2 3/4")
    ('7 2/6 - 3 5/6', '2. 5 1/4 - 2 3/4')
    """
    parts = tuple(part.strip() for part in _BESIDE.split(asked) if part.strip())
    if len(parts) < 2:
        return ()
    return parts if all(map(_reads, parts)) else ()


_OTHER_USES = (LineUse.WORDS, LineUse.TITLE, LineUse.NOTHING)


def _reads(part: str) -> bool:
    label = label_in(part)
    try:
        read_statement(part[label.end() :] if label else part)
    except InputError:
        return False
    return True


def _begin(story: str) -> str:
    words = story.split()
    return " ".join(words[:3]) + " ..."


def _made(
    what: str,
    remedy: str,
    line: int,
    column: int,
    *,
    story: StoryReadings = _NO_READINGS,
    uses: tuple[LineUse, ...] = (),
) -> UnreadLine:
    made = UnreadLine(what, line=line, column=column, remedy=remedy)
    made.story, made.uses = story, uses
    return made
