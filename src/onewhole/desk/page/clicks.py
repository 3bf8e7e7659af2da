"""Clicks on remedies as a page of the browser sends them back: an act by its key, labels, values."""

from collections.abc import Sequence
from enum import Enum
from typing import assert_never

from msgspec import Struct

from onewhole.errors import InputError
from onewhole.findings.click import (
    AddProblem,
    AskInstead,
    AsStory,
    Click,
    EasyToHard,
    GoTo,
    Help,
    LeaveOut,
    LineUse,
    NewNumbers,
    SettingLine,
    SetTo,
    TellAs,
    UseLine,
    WithoutWords,
)
from onewhole.languages.english.clicks import button
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.sheets.typed_lines import setting_in
from onewhole.statements.reading import read_statement

#: What a click about a line sends: its number, what stood there, and what it becomes.
OF_A_LINE = 3


class ClickKey(Enum):
    """What a click does, as it stands on a button of the page."""

    ADD = "add"
    LEAVE_OUT = "leave out"
    NEW_NUMBERS = "new numbers"
    ASK_INSTEAD = "ask instead"
    NO_WORDS = "no words"
    WORDS = "words"
    OTHER_WORDS = "other words"
    ORDER = "order"
    SET = "set"
    STORY = "story"
    LINE = "line"
    GO = "go"


class Sent(Struct, frozen=True):
    """A click as it is sent: its key, labels of problems, and problems or header lines as typed."""

    key: ClickKey
    labels: tuple[str, ...] = ()
    values: tuple[str, ...] = ()


class Offered(Struct, frozen=True):
    """A click with the words of its button."""

    click: Click

    @property
    def words(self) -> str:
        """Return the words on the button."""
        return text_of(button(self.click))

    @property
    def sent(self) -> Sent:
        """Return the click as it is sent back."""
        return sent(self.click)


def sent(click: Click) -> Sent:
    """Write a click so that it can be sent.

    >>> sent(LeaveOut(("2",)))
    Sent(key=<ClickKey.LEAVE_OUT: 'leave out'>, labels=('2',), values=())
    """
    match click:
        case AddProblem(asked):
            return Sent(ClickKey.ADD, values=(text(asked),))
        case LeaveOut(labels):
            return Sent(ClickKey.LEAVE_OUT, labels)
        case NewNumbers(labels):
            return Sent(ClickKey.NEW_NUMBERS, labels)
        case AskInstead(asked):
            return Sent(ClickKey.ASK_INSTEAD, click.labels, tuple(text(other) for _, other in asked))
        case WithoutWords(labels):
            return Sent(ClickKey.NO_WORDS, labels)
        case AsStory(labels, anew):
            return Sent(ClickKey.OTHER_WORDS if anew else ClickKey.WORDS, labels)
        case EasyToHard():
            return Sent(ClickKey.ORDER)
        case SetTo(lines):
            return Sent(ClickKey.SET, values=tuple(line.typed for line in lines))
        case TellAs(line, seen, asked):
            return Sent(ClickKey.STORY, values=(str(line), seen, text(asked)))
        case UseLine(line, seen, use):
            return Sent(ClickKey.LINE, values=(str(line), seen, use.value))
        case GoTo(label):
            return Sent(ClickKey.GO, () if label is None else (label,))
        case _:
            assert_never(click)


def click_sent(key: str, labels: Sequence[str] = (), values: Sequence[str] = ()) -> Click:
    """Return a click that came back from a page. Raises InputError for one that no page offers.

    >>> click_sent("leave out", ["2"])
    LeaveOut(labels=('2',))
    """
    named = tuple(labels)
    match _key(key):
        case ClickKey.ADD if len(values) == 1:
            return AddProblem(read_statement(values[0]))
        case ClickKey.LEAVE_OUT:
            return LeaveOut(named)
        case ClickKey.NEW_NUMBERS:
            return NewNumbers(named)
        case ClickKey.ASK_INSTEAD if len(labels) == len(values):
            return AskInstead(tuple(zip(named, map(read_statement, values), strict=True)))
        case ClickKey.NO_WORDS:
            return WithoutWords(named)
        case ClickKey.WORDS | ClickKey.OTHER_WORDS as words:
            return AsStory(named, anew=words is ClickKey.OTHER_WORDS)
        case ClickKey.ORDER:
            return EasyToHard()
        case ClickKey.SET:
            return SetTo(tuple(map(_line, values)))
        case ClickKey.STORY if len(values) == OF_A_LINE:
            return TellAs(_number_of(values[0]), values[1], read_statement(values[2]))
        case ClickKey.LINE if len(values) == OF_A_LINE and values[2] in {use.value for use in LineUse}:
            return UseLine(_number_of(values[0]), values[1], LineUse(values[2]))
        case ClickKey.GO if len(labels) <= 1:
            return GoTo(next(iter(named), None), Help.SEE_WHAT_IS_MEANT)
        case _:
            raise _no_such_click()


def _key(key: str) -> ClickKey:
    try:
        return ClickKey(key)
    except ValueError:
        raise _no_such_click() from None


def _number_of(line: str) -> int:
    """Read the number of a line as a page sent it."""
    if not (line.isascii() and line.isdigit() and len(line) <= 5 and int(line)):
        raise _no_such_click()
    return int(line)


def _line(typed: str) -> SettingLine:
    """Read a line of the header as a page sent it."""
    found = setting_in(typed)
    if found is None:
        raise _no_such_click()
    return SettingLine(found["name"], " ".join(found["value"].split()))


def _no_such_click() -> InputError:
    msg = "there is no such remedy"
    return InputError(msg, remedy="Choose one that stands beside a note.")
