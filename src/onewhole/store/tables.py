"""The tables as the code of today sees them; `migrations` brings every file to this shape.

Findings and groups are computed from answers; `reckonings` is a cache of them and never their truth.
"""

from datetime import UTC, date, datetime

from sqlalchemy import (
    Column,
    Dialect,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    Table,
    Text,
    UniqueConstraint,
)
from sqlalchemy.exc import DontWrapMixin
from sqlalchemy.types import TypeDecorator

from onewhole.store.refusals import NotStorable


class ExactText(TypeDecorator[str]):
    """Text exactly as it was typed; a half of a character (a lone surrogate) raises `NotStorable`."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: str | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """Refuse what UTF-8 cannot hold."""
        try:
            (value or "").encode()
        except UnicodeEncodeError as error:
            raise NotStorable(
                "A character is cut in half", column=error.start + 1, remedy="Type it again."
            ) from error
        return value


class ZonelessError(ValueError, DontWrapMixin):
    """A moment without a time zone: a fault of the caller."""


class Moment(TypeDecorator[datetime]):
    """A moment, kept in UTC; one without a time zone raises `ZonelessError`."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """Write it as ISO 8601."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ZonelessError(f"a moment needs its time zone, and {value} has none")
        return value.astimezone(UTC).isoformat(timespec="microseconds")

    def process_result_value(self, value: str | None, dialect: Dialect) -> datetime | None:  # noqa: ARG002
        """Read it back."""
        return None if value is None else datetime.fromisoformat(value)


class Day(TypeDecorator[date]):
    """A day, kept as ISO 8601, so that days sort as text."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: date | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """Write it."""
        return None if value is None else value.isoformat()

    def process_result_value(self, value: str | None, dialect: Dialect) -> date | None:  # noqa: ARG002
        """Read it back."""
        return None if value is None else date.fromisoformat(value)


METADATA = MetaData()

classes = Table(
    "classes",
    METADATA,
    Column("number", Integer, primary_key=True),
    Column("name", ExactText, nullable=False),
    Column("codes_given", Integer, nullable=False),
    Column("made", Moment, nullable=False),
)

pupils = Table(
    "pupils",
    METADATA,
    Column("number", Integer, primary_key=True),
    Column("class_number", Integer, ForeignKey("classes.number"), nullable=False),
    Column("code", ExactText, nullable=False),
    Column("name", ExactText),
    UniqueConstraint("class_number", "code"),
    sqlite_autoincrement=True,
)

sheets = Table(
    "sheets",
    METADATA,
    Column("number", Integer, primary_key=True),
    Column("name", ExactText, nullable=False),
)

sheet_versions = Table(
    "sheet_versions",
    METADATA,
    Column("sheet_number", Integer, ForeignKey("sheets.number"), primary_key=True),
    Column("version", Integer, primary_key=True),
    Column("typed", ExactText, nullable=False),
    Column("recipe", ExactText),
    Column("written", Moment, nullable=False),
)

nights = Table(
    "nights",
    METADATA,
    Column("number", Integer, primary_key=True),
    Column("class_number", Integer, ForeignKey("classes.number"), nullable=False),
    Column("sheet_number", Integer, nullable=False),
    Column("version", Integer, nullable=False),
    Column("day", Day, nullable=False),
    ForeignKeyConstraint(
        ["sheet_number", "version"], ["sheet_versions.sheet_number", "sheet_versions.version"]
    ),
    Index("nights_of_a_class", "class_number", "day"),
)

#: Every writing of an answer is a row; the last one of a cell is the answer, the earlier ones its history.
answers = Table(
    "answers",
    METADATA,
    Column("number", Integer, primary_key=True),
    Column("night_number", Integer, ForeignKey("nights.number"), nullable=False),
    Column("pupil_number", Integer, ForeignKey("pupils.number"), nullable=False),
    Column("problem", ExactText, nullable=False),
    Column("text", ExactText, nullable=False),
    Column("written", Moment, nullable=False),
    Column("by", ExactText, nullable=False),
    Index("answers_of_a_night", "night_number", "pupil_number", "problem", "number"),
    Index("answers_of_a_pupil", "pupil_number"),
    sqlite_autoincrement=True,
)

corrections = Table(
    "corrections",
    METADATA,
    Column("number", Integer, primary_key=True),
    Column("night_number", Integer, ForeignKey("nights.number"), nullable=False),
    Column("pupil_number", Integer, ForeignKey("pupils.number"), nullable=False),
    Column("problem", ExactText, nullable=False),
    Column("of", ExactText, nullable=False),
    Column("text", ExactText, nullable=False),
    Column("written", Moment, nullable=False),
    Column("by", ExactText, nullable=False),
    Index("corrections_of_a_night", "night_number"),
    Index("corrections_of_a_pupil", "pupil_number"),
    sqlite_autoincrement=True,
)

steps = Table(
    "steps",
    METADATA,
    Column("night_number", Integer, ForeignKey("nights.number"), primary_key=True),
    Column("step", ExactText, primary_key=True),
    Column("written", Moment, nullable=False),
)

recordings = Table(
    "recordings",
    METADATA,
    Column("night_number", Integer, ForeignKey("nights.number"), primary_key=True),
    Column("label", ExactText, primary_key=True),
    Column("kind", ExactText, nullable=False),
    Column("cues", ExactText, nullable=False),
    Column("written", Moment, nullable=False),
    Column("sound", LargeBinary, nullable=False),
)

#: A cache of what was computed of a night: it may be emptied at any moment.
night_cache = Table(
    "reckonings",
    METADATA,
    Column("night_number", Integer, ForeignKey("nights.number"), primary_key=True),
    Column("stamp", ExactText, nullable=False),
    Column("text", ExactText, nullable=False),
)

#: What was given out on a pupil, to whom and when. A record of disclosures is kept as long as the pupil's own
#: (FERPA, 34 CFR 99.32(a)(2), from memory): it goes with the pupil.
given_out = Table(
    "given_out",
    METADATA,
    Column("number", Integer, primary_key=True),
    Column("pupil_number", Integer, ForeignKey("pupils.number"), nullable=False),
    Column("what", ExactText, nullable=False),
    Column("to", ExactText, nullable=False),
    Column("why", ExactText, nullable=False),
    Column("day", Day, nullable=False),
    Column("written", Moment, nullable=False),
    Column("by", ExactText, nullable=False),
    Index("given_out_of_a_pupil", "pupil_number"),
    sqlite_autoincrement=True,
)

settings = Table(
    "settings",
    METADATA,
    Column("name", ExactText, primary_key=True),
    Column("text", ExactText, nullable=False),
)
