"""The first tables: classes, pupils, sheets, nights, answers, corrections, settings."""

from alembic import op
from sqlalchemy import Column, ForeignKey, ForeignKeyConstraint, Index, Integer, Text, UniqueConstraint

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the tables in an empty file."""
    op.create_table(
        "classes",
        Column("number", Integer, primary_key=True),
        Column("name", Text, nullable=False),
        Column("codes_given", Integer, nullable=False),
        Column("made", Text, nullable=False),
    )
    op.create_table(
        "pupils",
        Column("number", Integer, primary_key=True),
        Column("class_number", Integer, ForeignKey("classes.number"), nullable=False),
        Column("code", Text, nullable=False),
        Column("name", Text),
        UniqueConstraint("class_number", "code"),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "sheets",
        Column("number", Integer, primary_key=True),
        Column("name", Text, nullable=False),
    )
    op.create_table(
        "sheet_versions",
        Column("sheet_number", Integer, ForeignKey("sheets.number"), primary_key=True),
        Column("version", Integer, primary_key=True),
        Column("typed", Text, nullable=False),
        Column("recipe", Text),
        Column("written", Text, nullable=False),
    )
    op.create_table(
        "nights",
        Column("number", Integer, primary_key=True),
        Column("class_number", Integer, ForeignKey("classes.number"), nullable=False),
        Column("sheet_number", Integer, nullable=False),
        Column("version", Integer, nullable=False),
        Column("day", Text, nullable=False),
        ForeignKeyConstraint(
            ["sheet_number", "version"], ["sheet_versions.sheet_number", "sheet_versions.version"]
        ),
        Index("nights_of_a_class", "class_number", "day"),
    )
    op.create_table(
        "answers",
        Column("number", Integer, primary_key=True),
        Column("night_number", Integer, ForeignKey("nights.number"), nullable=False),
        Column("pupil_number", Integer, ForeignKey("pupils.number"), nullable=False),
        Column("problem", Text, nullable=False),
        Column("text", Text, nullable=False),
        Column("written", Text, nullable=False),
        Column("by", Text, nullable=False),
        Index("answers_of_a_night", "night_number", "pupil_number", "problem", "number"),
        Index("answers_of_a_pupil", "pupil_number"),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "corrections",
        Column("number", Integer, primary_key=True),
        Column("night_number", Integer, ForeignKey("nights.number"), nullable=False),
        Column("pupil_number", Integer, ForeignKey("pupils.number"), nullable=False),
        Column("problem", Text, nullable=False),
        Column("of", Text, nullable=False),
        Column("text", Text, nullable=False),
        Column("written", Text, nullable=False),
        Column("by", Text, nullable=False),
        Index("corrections_of_a_night", "night_number"),
        Index("corrections_of_a_pupil", "pupil_number"),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "settings",
        Column("name", Text, primary_key=True),
        Column("text", Text, nullable=False),
    )
