"""What one click does to a page, and what it did: closed families."""

from enum import Enum, auto

from msgspec import Struct

from onewhole.statements.statement import Statement

Labels = tuple[str, ...]


class SettingLine(Struct, frozen=True):
    """A line of a sheet's header: the name of a setting, and what is typed behind it."""

    name: str
    value: str

    @property
    def typed(self) -> str:
        """Return the line as it stands in a sheet.

        >>> SettingLine("picture", "strip").typed
        'picture: strip'
        """
        return f"{self.name}: {self.value}"


class Help(Enum):
    """What only the teacher can do at a problem."""

    SHOW_THE_PIECES = auto()
    WRITE_THE_WORDS = auto()
    SEE_WHAT_IS_MEANT = auto()
    CHOOSE_NUMBERS = auto()


class AddProblem(Struct, frozen=True):
    """One problem more."""

    asked: Statement


class LeaveOut(Struct, frozen=True):
    """Some problems fewer."""

    labels: Labels


class NewNumbers(Struct, frozen=True):
    """Numbers for these problems that make none of them a twin."""

    labels: Labels


class AskInstead(Struct, frozen=True):
    """Other problems under some labels."""

    asked: tuple[tuple[str, Statement], ...]

    @property
    def labels(self) -> Labels:
        """Return the labels."""
        return tuple(label for label, _ in self.asked)


class WithoutWords(Struct, frozen=True):
    """Word problems asked without their words."""

    labels: Labels


class AsStory(Struct, frozen=True):
    """Problems told in words; ``anew``: in other words than they have."""

    labels: Labels
    anew: bool = False


class EasyToHard(Struct, frozen=True):
    """The page put in order."""


class SetTo(Struct, frozen=True):
    """Lines of the header."""

    lines: tuple[SettingLine, ...]


class TellAs(Struct, frozen=True):
    """A story and what it asks: both become a word problem. It stood on a line (from 1) as ``seen``."""

    line: int
    seen: str
    asked: Statement


class LineUse(Enum):
    """What a line is meant as: joined goes on in the line after it, split is several problems."""

    WORDS = "words"
    TITLE = "title"
    NOTHING = "nothing"
    JOINED = "joined"
    SPLIT = "split"


class UseLine(Struct, frozen=True):
    """A line as what it is meant as. It stood in a place (from 1) as ``seen``."""

    line: int
    seen: str
    use: LineUse


class GoTo(Struct, frozen=True):
    """Nothing is changed: it leads to a problem (None: to the page), where only the teacher can help."""

    label: str | None
    help: Help


#: Everything that one click may do.
Click = (
    AddProblem
    | LeaveOut
    | NewNumbers
    | AskInstead
    | WithoutWords
    | AsStory
    | EasyToHard
    | SetTo
    | TellAs
    | UseLine
    | GoTo
)


class NewlyNumbered(Struct, frozen=True):
    """Some problems ask something new; for those ``left`` there were no other numbers."""

    asked: tuple[tuple[str, Statement], ...]
    left: Labels


class NoOtherNumbers(Struct, frozen=True):
    """There were no other numbers for any of these: they are left out."""

    labels: Labels


#: What a click did: what it does, or how new numbers came out.
Done = (
    AddProblem
    | LeaveOut
    | AskInstead
    | WithoutWords
    | AsStory
    | EasyToHard
    | SetTo
    | TellAs
    | UseLine
    | GoTo
    | NewlyNumbered
    | NoOtherNumbers
)
