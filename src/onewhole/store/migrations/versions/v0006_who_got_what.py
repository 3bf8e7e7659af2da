"""The days on which a pupil joined and left, and of a night who got the page, was away, or was late."""

from alembic import op
from sqlalchemy import Column, ForeignKey, Index, Integer, Text

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the tables."""
    op.create_table(
        "pupil_days",
        Column("pupil_number", Integer, ForeignKey("pupils.number"), primary_key=True),
        Column("joined", Text),
        Column("left", Text),
        Column("digest", Integer),
    )
    op.create_table(
        "night_words",
        Column("number", Integer, primary_key=True),
        Column("night_number", Integer, ForeignKey("nights.number"), nullable=False),
        Column("pupil_number", Integer, ForeignKey("pupils.number"), nullable=False),
        Column("said", Text, nullable=False),
        Column("written", Text, nullable=False),
        Column("by", Text, nullable=False),
        Column("digest", Integer),
        Index("night_words_of_a_night", "night_number"),
        Index("night_words_of_a_pupil", "pupil_number"),
        sqlite_autoincrement=True,
    )
