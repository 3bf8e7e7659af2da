"""Column types: what each column of a table may hold, refused when it is written and when it is read.

A file may be damaged where SQLite sees nothing: a text that is a number, a day that is none. Such a value
raises `UnreadableValue` when it is read, and never gets further.
"""

import re
from datetime import UTC, date, datetime
from typing import Annotated, Any, Literal

from msgspec import Meta
from sqlalchemy import Dialect, Integer, LargeBinary, Text
from sqlalchemy.exc import DontWrapMixin
from sqlalchemy.types import TypeDecorator

from onewhole.errors import Fault
from onewhole.store.refusals import NotStorable, UnreadableValue

#: A number of ours is never larger; a text has so many characters at most, a sound so many bytes.
MOST_NUMBER, MOST_TEXT, MOST_SOUND = 2**53, 1_000_000, 64 * 1024 * 1024
#: The picture of a cell, 240 by 96 in grey, has so many bytes at most.
MOST_PICTURE = 128 * 1024

#: Milliseconds in order, parted by one blank each; none at all is an empty text.
_CUES = r"^(?:[0-9]{1,9}(?: [0-9]{1,9})*)?$"


class ZonelessError(ValueError, DontWrapMixin):
    """A moment without a time zone: a fault of the caller."""


def _read(value: object, kind: type, what: str) -> None:
    """Refuse a value of another kind; True and False are no numbers."""
    if type(value) is not kind:
        raise UnreadableValue(f"{what} is kept as something else")


class Number(TypeDecorator[int]):
    """A whole number, 0 or more."""

    impl = Integer
    cache_ok = True
    noun = "a number of 0 or more"
    stored: Any = Annotated[int, Meta(ge=0, le=MOST_NUMBER)]

    def process_result_value(self, value: int | None, dialect: Dialect) -> int | None:  # noqa: ARG002
        """Read it back."""
        if value is not None:
            _read(value, int, "a number")
        return value


class Digest(TypeDecorator[int]):
    """A whole number of 64 bits, below 0 too; it is compared and never read as anything else."""

    impl = Integer
    cache_ok = True
    noun = "a whole number of 64 bits"
    stored: Any = Annotated[int, Meta(ge=-(2**63), le=2**63 - 1)]


class ExactText(TypeDecorator[str]):
    """Text exactly as it was typed; a half of a character (a lone surrogate) raises `NotStorable`."""

    impl = Text
    cache_ok = True
    noun = "a text of at most a million characters"
    stored: Any = Annotated[str, Meta(max_length=MOST_TEXT)]

    def process_bind_param(self, value: str | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """Refuse what UTF-8 cannot hold."""
        try:
            (value or "").encode()
        except UnicodeEncodeError as error:
            raise NotStorable(
                "A character is cut in half", column=error.start + 1, remedy="Type it again."
            ) from error
        return value

    def process_result_value(self, value: str | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """Read it back."""
        if value is not None:
            _read(value, str, "a text")
        return value


class PupilCode(ExactText):
    """The code of a pupil: K and its number, of two figures or more."""

    cache_ok = True
    noun = "a code such as K01"
    stored: Any = Annotated[str, Meta(pattern=r"^K[0-9]{2,9}$")]


class OneOf(ExactText):
    """A text that is one of some fixed ones."""

    cache_ok = True

    def __init__(self, *texts: str) -> None:
        super().__init__()
        self.texts = texts
        self.noun = f"one of: {', '.join(texts)}"
        self.stored = Literal[texts]

    def process_result_value(self, value: str | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """Read it back."""
        if value is not None and value not in self.texts:
            raise UnreadableValue(f"a text is not one of: {', '.join(self.texts)}")
        return value


class Cues(ExactText):
    """Milliseconds at which the board stepped, in order."""

    cache_ok = True
    noun = "milliseconds in order"
    stored: Any = Annotated[str, Meta(pattern=_CUES, max_length=MOST_TEXT)]

    def process_result_value(self, value: str | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """Read it back."""
        if value is not None:
            _read(value, str, "the steps of a board")
        if value is not None and not re.fullmatch(_CUES, value):
            raise UnreadableValue("the steps of a board are not numbers")
        return value


class Moment(TypeDecorator[datetime]):
    """A moment, kept in UTC; one without a time zone raises `ZonelessError`."""

    impl = Text
    cache_ok = True
    noun = "a moment such as 2026-09-01T18:30:00.000000+00:00"
    stored: Any = Annotated[datetime, Meta(tz=True)]

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """Write it as ISO 8601."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ZonelessError(f"a moment needs its time zone, and {value} has none")
        return value.astimezone(UTC).isoformat(timespec="microseconds")

    def process_result_value(self, value: str | None, dialect: Dialect) -> datetime | None:  # noqa: ARG002
        """Read it back."""
        return None if value is None else moment_kept(value)


class Day(TypeDecorator[date]):
    """A day, kept as ISO 8601, so that days sort as text."""

    impl = Text
    cache_ok = True
    noun = "a day such as 2026-09-01"
    stored: Any = date

    def process_bind_param(self, value: date | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """Write it."""
        return None if value is None else value.isoformat()

    def process_result_value(self, value: str | None, dialect: Dialect) -> date | None:  # noqa: ARG002
        """Read it back."""
        return None if value is None else day_kept(value)


class SoundBytes(TypeDecorator[bytes]):
    """The bytes of a sound."""

    impl = LargeBinary
    cache_ok = True
    noun = "a sound"
    stored: Any = Annotated[bytes, Meta(max_length=MOST_SOUND)]

    def process_result_value(self, value: bytes | None, dialect: Dialect) -> bytes | None:  # noqa: ARG002
        """Read it back."""
        if value is not None:
            _read(value, bytes, self.noun)
        return value


class PictureBytes(SoundBytes):
    """The bytes of a small picture; more of them raise `NotStorable`."""

    cache_ok = True
    noun = "a small picture"
    stored: Any = Annotated[bytes, Meta(max_length=MOST_PICTURE)]

    def process_bind_param(self, value: bytes | None, dialect: Dialect) -> bytes | None:  # noqa: ARG002
        """Refuse what is no small picture."""
        if value is not None and len(value) > MOST_PICTURE:
            raise NotStorable("This picture of a cell is too large", remedy="Read the papers again.")
        return value


def held(of: object) -> tuple[Any, str]:
    """Return what a column of a type may hold, as a type of msgspec, and that in words.

    >>> held(OneOf("shown", "marked"))[1]
    'one of: shown, marked'
    """
    if not isinstance(of, Number | Digest | ExactText | Moment | Day | SoundBytes):
        msg = f"a column has a type that says not what it holds: {of!r}"
        raise Fault(msg)
    return of.stored, of.noun


def moment_kept(text: str) -> datetime:
    """Read a moment as it is kept. Raises `UnreadableValue`, also for one without a time zone.

    >>> moment_kept("2026-09-01T18:30:00.000000+00:00").hour
    18
    """
    try:
        found = datetime.fromisoformat(text)
        right = found.isoformat(timespec="microseconds") == text
    except (TypeError, ValueError) as error:
        raise UnreadableValue("a moment cannot be read") from error
    if found.tzinfo is None or not right:
        raise UnreadableValue("a moment is not written as ours are")
    return found


def day_kept(text: str) -> date:
    """Read a day as it is kept. Raises `UnreadableValue`.

    >>> day_kept("2026-09-01").day
    1
    """
    try:
        found = date.fromisoformat(text)
    except (TypeError, ValueError) as error:
        raise UnreadableValue("a day cannot be read") from error
    if found.isoformat() != text:
        raise UnreadableValue("a day is not written as ours are")
    return found
