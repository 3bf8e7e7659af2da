"""What the teacher says instead, and how each is kept as columns: the only file that knows those texts."""

from dataclasses import dataclass
from enum import Enum
from typing import assert_never

import msgspec

from onewhole.store.refusals import NotStorable

#: Between the name of a group and the key of its conversation.
BETWEEN = ": "
#: What is kept where a finding is set aside; an empty text takes it up again.
ASIDE = "set aside"


@dataclass(frozen=True, slots=True)
class GroupKey:
    """What a group is known by when a pupil is moved to it: its name and the key of its conversation.

    >>> GroupKey("Larks", "numerator").text
    'Larks: numerator'
    """

    name: str
    talk: str

    @property
    def text(self) -> str:
        """Return the key as it is kept and sent."""
        return f"{self.name}{BETWEEN}{self.talk}"

    @classmethod
    def read(cls, text: str) -> "GroupKey":
        """Read a key back. One that was never written so has no conversation.

        >>> GroupKey.read("Larks: numerator")
        GroupKey(name='Larks', talk='numerator')
        """
        name, _, talk = text.partition(BETWEEN)
        return cls(name, talk)


@dataclass(frozen=True, slots=True)
class CellReadAs:
    """The cell of a problem is read so where this was typed in it; whatever stands there where None."""

    problem: str
    typed: str | None
    read: str


@dataclass(frozen=True, slots=True)
class FindingAside:
    """The finding of a night is set aside, or taken up again."""

    aside: bool


@dataclass(frozen=True, slots=True)
class PlaceChosen:
    """The pupil sits in this group; where the answers say where None."""

    group: GroupKey | None


#: Everything that a teacher says instead of what the program said.
TeacherWord = CellReadAs | FindingAside | PlaceChosen


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
        case PlaceChosen(group):
            return "", CorrectionKind.PLACE.value, group.text if group else ""
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
            return PlaceChosen(GroupKey.read(text) if text else None)
        case _:
            assert_never(kind)


def _reading(problem: str, text: str) -> CellReadAs:
    try:
        typed, read = msgspec.json.decode(text, type=tuple[str | None, str])
    except (msgspec.DecodeError, RecursionError):
        return CellReadAs(problem, None, text)
    return CellReadAs(problem, typed, read)
