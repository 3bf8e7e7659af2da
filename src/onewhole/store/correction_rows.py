"""What the teacher says instead, and how each is kept as columns: the only file that knows those texts."""

from enum import Enum
from typing import assert_never

import msgspec
from msgspec import Struct

from onewhole.store.refusals import NotStorable

#: Between the name of a group and the key of what it is about, and after its identity.
BETWEEN, AT = ": ", "@"
#: What a kept place begins with where the pupil stays there until let go, and where the program put it.
STAYS, KEPT = "stays ", "kept "
#: What is kept where a finding is set aside; an empty text takes it up again.
ASIDE = "set aside"


class GroupKey(Struct, frozen=True):
    """What a group is known by when a pupil sits in it: its name, the key of what it is about, its identity.

    The identity counts; files of earlier releases have none.

    >>> GroupKey("Larks", "numerator", "2026-11-24.1").text
    '2026-11-24.1@Larks: numerator'
    """

    name: str
    talk: str
    id: str = ""

    @property
    def text(self) -> str:
        """Return the key as it is kept and sent."""
        named = f"{self.name}{BETWEEN}{self.talk}"
        return f"{self.id}{AT}{named}" if self.id else named

    @classmethod
    def read(cls, text: str) -> "GroupKey":
        """Read a key back. One that was never written so is not about anything.

        >>> GroupKey.read("Larks: numerator")
        GroupKey(name='Larks', talk='numerator', id='')
        """
        named, _, talk = text.partition(BETWEEN)
        identity, at, name = named.rpartition(AT)
        return cls(name, talk, identity) if at else cls(named, talk)


class CellReadAs(Struct, frozen=True):
    """The cell of a problem is read so where this was typed in it; whatever stands there where None."""

    problem: str
    typed: str | None
    read: str


class FindingAside(Struct, frozen=True):
    """The finding of a night is set aside, or taken up again."""

    aside: bool


class PlaceChosen(Struct, frozen=True):
    """The pupil sits in this group; where the answers say where None. ``stays``: on later nights too."""

    group: GroupKey | None
    stays: bool = False


class SeatKept(Struct, frozen=True):
    """The pupil sits in this group as the teacher was shown it: other answers move nobody from it.

    ``stays`` says that it is where the teacher said, on an earlier night, that the pupil stays.
    """

    group: GroupKey
    stays: bool = False


#: Everything that stands instead of what the program would say now.
TeacherWord = CellReadAs | FindingAside | PlaceChosen | SeatKept


class CorrectionKind(Enum):
    """What a correction is of, as it is kept."""

    READING = "reading"
    FINDING = "finding"
    PLACE = "place"


def row_of(word: TeacherWord) -> tuple[str, str, str]:
    """Return the columns of a word: its problem (none: the whole night), what it is of, and its text.

    Raises `NotStorable` for a reading with half a character.

    >>> row_of(PlaceChosen(GroupKey("Larks", "numerator")))
    ('', 'place', 'Larks: numerator')
    """
    match word:
        case CellReadAs(problem, typed, read):
            try:
                return problem, CorrectionKind.READING.value, msgspec.json.encode((typed, read)).decode()
            except UnicodeEncodeError as error:
                raise NotStorable("A character is cut in half", remedy="Type it again.") from error
        case FindingAside(aside):
            return "", CorrectionKind.FINDING.value, ASIDE if aside else ""
        case PlaceChosen(group, stays):
            begins = STAYS if stays else ""
            return "", CorrectionKind.PLACE.value, f"{begins}{group.text}" if group else ""
        case SeatKept(group, stays):
            return "", CorrectionKind.PLACE.value, f"{KEPT}{STAYS if stays else ''}{group.text}"
        case _:
            assert_never(word)


def word_of(problem: str, of: str, text: str) -> TeacherWord:
    """Read the columns of a word back; a reading kept as plain words is of whatever stands in its cell.

    >>> word_of("", "finding", "set aside")
    FindingAside(aside=True)
    """
    kind = CorrectionKind(of)
    match kind:
        case CorrectionKind.READING:
            return _reading(problem, text)
        case CorrectionKind.FINDING:
            return FindingAside(bool(text))
        case CorrectionKind.PLACE:
            return _place(text)
        case _:
            assert_never(kind)


def _place(text: str) -> PlaceChosen | SeatKept:
    if not text:
        return PlaceChosen(None)
    named = text.removeprefix(KEPT)
    group, stays = GroupKey.read(named.removeprefix(STAYS)), named.startswith(STAYS)
    return SeatKept(group, stays) if text.startswith(KEPT) else PlaceChosen(group, stays)


def _reading(problem: str, text: str) -> CellReadAs:
    try:
        typed, read = msgspec.json.decode(text, type=tuple[str | None, str])
    except (msgspec.DecodeError, RecursionError):
        return CellReadAs(problem, None, text)
    return CellReadAs(problem, typed, read)
