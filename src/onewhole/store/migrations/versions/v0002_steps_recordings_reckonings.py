"""Steps of a night, recordings of a walkthrough, and reckonings (a cache)."""

from alembic import op
from sqlalchemy import Column, ForeignKey, Integer, LargeBinary, Text

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the tables."""
    op.create_table(
        "steps",
        Column("night_number", Integer, ForeignKey("nights.number"), primary_key=True),
        Column("step", Text, primary_key=True),
        Column("written", Text, nullable=False),
    )
    op.create_table(
        "recordings",
        Column("night_number", Integer, ForeignKey("nights.number"), primary_key=True),
        Column("label", Text, primary_key=True),
        Column("kind", Text, nullable=False),
        Column("cues", Text, nullable=False),
        Column("written", Text, nullable=False),
        Column("sound", LargeBinary, nullable=False),
    )
    op.create_table(
        "reckonings",
        Column("night_number", Integer, ForeignKey("nights.number"), primary_key=True),
        Column("stamp", Text, nullable=False),
        Column("text", Text, nullable=False),
    )
